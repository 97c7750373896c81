#include "core/answers/groups.hpp"

namespace sparewright::answers {

std::vector<Subject> thread_subjects() {
  return {};
}

}  // namespace sparewright::answers
