#include "core/survey/reading.hpp"

#include "core/survey/ways.hpp"

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
  return row_of(way).name;
}

std::string_view name_of(Trial trial) {
  switch (trial) {
    case Trial::kGoes:
      return "goes";
    case Trial::kGoesWithAPush:
      return "goes with a push";
    case Trial::kWillNotGo:
      return "will not go";
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
  if (reading.trial) return Jaws::kOutside;  // the plug was measured, not the hole
  return row_of(reading.way).jaws;
}

namespace {

// What was tried in a hole tells the least of it where it goes; over metal the most.
Bound bound_of_trial(Trial trial, Way way) {
  if (trial == Trial::kGoesWithAPush) return Bound::kExact;
  const bool in_a_gap = way == Way::kInside;
  return in_a_gap == (trial == Trial::kGoes) ? Bound::kAtLeast : Bound::kAtMost;
}

}  // namespace

Bound bound_of(const Reading& reading) {
  if (reading.trial && reading.condition == Condition::kSound)
    return bound_of_trial(*reading.trial, reading.way);
  if (reading.condition == Condition::kSound) return Bound::kExact;
  if (reading.condition != Condition::kWorn) return Bound::kNeither;
  if (reading.way == Way::kExpression && !reading.jaws) return Bound::kNeither;
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
