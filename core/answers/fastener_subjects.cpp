#include "core/answers/groups.hpp"

namespace sparewright::answers {

std::vector<Subject> fastener_subjects() {
  return {};
}

}  // namespace sparewright::answers
