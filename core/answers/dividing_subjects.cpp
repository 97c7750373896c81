#include "core/answers/groups.hpp"

namespace sparewright::answers {

std::vector<Subject> dividing_subjects() {
  return {};
}

}  // namespace sparewright::answers
