#include "core/survey/condition.hpp"

namespace sparewright::survey {

std::string_view name_of(Condition condition) {
  switch (condition) {
    case Condition::kSound:
      return "sound";
    case Condition::kWorn:
      return "worn";
    case Condition::kBent:
      return "bent";
    case Condition::kAcrossABreak:
      return "across a break";
  }
  return "";
}

}  // namespace sparewright::survey
