#include "core/answers/groups.hpp"

namespace sparewright::answers {

std::vector<Subject> machine_subjects() {
  return {};
}

}  // namespace sparewright::answers
