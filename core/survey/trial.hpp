// A size that trials enclose: one plug goes and a larger one will not; a ring goes over and a smaller one will not.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/hash.hpp"
#include "core/ledger/ledger.hpp"
#include "core/quantity/unit.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// The trials of one dimension that bound its size: what goes, and what will not go; at sound places, or at worn ones. What
// goes with a push is a reading like any other.
struct Trials {
  struct One {
    std::string reading;
    bool goes = false;
    bool in_a_gap = true;  // in a hole or a gap, not over metal
  };
  std::string dimension;
  std::vector<One> all;
  bool at_worn_places = false;
};

// In the order of the dimensions, of each the sound places first; the readings in theirs. Only where there are such trials.
[[nodiscard]] std::vector<Trials> trials_of(const Survey& survey);

// What became of the trials of all dimensions.
struct TrialOutcome {
  std::vector<std::string> enclosed;  // dimensions whose figure trial/<dimension> is there, by sound places
  std::vector<std::string> contradicting;  // readings that cannot all be true: nothing is taken from them
};
[[nodiscard]] base::Fingerprint fingerprint(const TrialOutcome& outcome);

// "trial"
//   trial/<dimension>           the middle between the largest that bounds it from below and the smallest that bounds
//                               it from above; exact. Of a radius it is across
//   trial/<dimension>/between   a root of value 0: the middle may be out by half of the gap, either way
//   trial/<dimension>/worn place, .../worn place/between
//                               the same of what was tried at worn places: the size as it is now
//   value trial/outcome         TrialOutcome
//   queries                     "trials contradict/<dimension>", "trials contradict/<dimension>/worn place"
//
// With low L and high U, the size is L + t (U - L) with t anywhere between 0 and 1. Its middle has the doubts of L and U, half
// of each; t adds the variance ((U - L)^2 + u^2(U - L))/12, the second part because the ends of the gap are themselves
// in doubt (JCGM 101:2008, 6.4.2 and 6.4.3, from memory: a rectangle, and one with inexact limits; written here for any L and U by the
// law of total variance).
// Trials contradict where L is above U by more than the doubt of L - U, 19 times in 20; where it is above by less, the gap
// is taken as 0.
[[nodiscard]] ledger::Stage trial_stage(std::vector<Trials> trials, quantity::UnitSystem system);

[[nodiscard]] std::string trial_path(std::string_view dimension);       // "trial/bore"
[[nodiscard]] std::string worn_trial_path(std::string_view dimension);  // "trial/bore/worn place"

}  // namespace sparewright::survey
