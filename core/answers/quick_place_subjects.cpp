#include "core/answers/groups.hpp"

namespace sparewright::answers {

std::vector<Subject> quick_place_subjects() {
  return {};
}

}  // namespace sparewright::answers
