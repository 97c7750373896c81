#include "core/answers/groups.hpp"

namespace sparewright::answers {

std::vector<Subject> quick_part_subjects() {
  return {};
}

}  // namespace sparewright::answers
