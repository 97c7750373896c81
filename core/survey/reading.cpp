#include "core/survey/reading.hpp"

namespace sparewright::survey {

using ledger::Bound;

std::string_view name_of(Jaws jaws) {
  switch (jaws) {
    case Jaws::kOutside:
      return "outside jaws";
    case Jaws::kInside:
      return "inside jaws";
    case Jaws::kDepth:
      return "depth rod";
  }
  return "";
}

std::string_view name_of(Way way) {
  switch (way) {
    case Way::kOutside:
      return "outside";
    case Way::kInside:
      return "inside";
    case Way::kDepth:
      return "depth";
    case Way::kEdgeToHoleNear:
      return "edge to hole edge, near";
    case Way::kEdgeToHoleFar:
      return "edge to hole edge, far";
    case Way::kOverPins:
      return "over pins";
    case Way::kBetweenPins:
      return "between pins";
    case Way::kExpression:
      return "expression";
  }
  return "";
}

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

Jaws jaws_of(const Reading& reading) {
  if (reading.jaws) return *reading.jaws;
  switch (reading.way) {
    case Way::kInside:
    case Way::kBetweenPins:
      return Jaws::kInside;
    case Way::kDepth:
    case Way::kEdgeToHoleFar:
      return Jaws::kDepth;
    default:
      return Jaws::kOutside;
  }
}

Bound bound_of(const Reading& reading) {
  if (reading.condition == Condition::kSound) return Bound::kExact;
  if (reading.condition != Condition::kWorn) return Bound::kNeither;
  if (reading.way == Way::kExpression && !reading.jaws) return Bound::kNeither;
  if (reading.way == Way::kInside)
    return Bound::kAtMost;  // also by outside jaws over a gauge that was set in it
  switch (jaws_of(reading)) {
    case Jaws::kOutside:
      return Bound::kAtLeast;
    case Jaws::kInside:
      return Bound::kAtMost;
    case Jaws::kDepth:
      return Bound::kNeither;
  }
  return Bound::kNeither;
}

}  // namespace sparewright::survey
