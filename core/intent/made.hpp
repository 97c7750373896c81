// How a size comes out about the one it is made to: what runs in a hole lies below it, a reamed hole above, a drilled one
// further. Used inside this room and by its tests.
//
// Which zones there are goes by the fits of the trade; how usual each is is a choice made here, without a source.
#pragma once

#include <string_view>
#include <vector>

#include "core/intent/original.hpp"

namespace sparewright::intent {

// One way to make it: anywhere between two deviations from the nominal size, each as likely. low_mm < high_mm.
struct Zone {
  double weight = 0.0;  // how usual; of one Made they add up to 1
  double low_mm = 0.0;
  double high_mm = 0.0;
  std::string_view words;  // "as what runs is made"
};
using Made = std::vector<Zone>;

// Widths of the tolerance grades 6 to 13 and distances of shafts d, e, f, g and p from the nominal size, in mm, without steps
// of size. Source: the formulas behind the tables of ISO 286-1 (from memory).
[[nodiscard]] double grade_mm(int grade, double nominal_mm);

// What goes in a hole, what takes a shaft, a length or width over metal (kShaft), between metal (kHole) or neither.
[[nodiscard]] Made made_as_shaft(double nominal_mm);
[[nodiscard]] Made made_as_hole(double nominal_mm);
[[nodiscard]] Made made_as_length(double nominal_mm, Role role);
// By what was measured: of a diameter the first two; of a length over or between metal, which may be round, both that and
// the length.
[[nodiscard]] Made usually_made(double nominal_mm, const MeasuredUp& measured);

[[nodiscard]] Made made_within(double low_mm, double high_mm, std::string_view words);

// How likely a reading is of a size made so, per mm: the zones, what the reading leaves open (19 times in 20 of a normal
// error) and, where the place is worn, what wear takes off: half of it with a mean of 0.04 mm on the size, half with 0.25 (a
// choice made here, without a source). 0 where the place is bent or broken.
[[nodiscard]] double likelihood(const Made& made, double nominal_mm, const MeasuredUp& measured);

// The zone that has the largest part in that.
[[nodiscard]] const Zone& likeliest_zone(const Made& made, double nominal_mm, const MeasuredUp& measured);

// No reading of a shop goes below this; in mm, a standard uncertainty.
inline constexpr double kFinestReading_mm = 0.0003;
[[nodiscard]] double standard_uncertainty_mm(const MeasuredUp& measured);

}  // namespace sparewright::intent
