// What the stage "pattern/<name>" does with its Pen.
#pragma once

#include <string>
#include <vector>

#include "core/ledger/pen.hpp"
#include "core/survey/touched.hpp"

namespace sparewright::survey {

// What the stage knows without asking.
struct PatternPlan {
  std::string name;
  HoleLayout layout = HoleLayout::kCircle;
  std::vector<std::string> of;  // touched circles
  quantity::UnitSystem system = quantity::UnitSystem::kInch;
};

[[nodiscard]] std::vector<Told> told_of(
    HoleLayout layout);  // circle: x, y, diameter, start; row: pitch, angle

// A hole is put where it was meant with this standard deviation, for choosing how many places there are: half of the 0.010 in
// that laying out by scriber and punch is commonly trusted to (common practice).
inline constexpr double kHolesMade_mm = 0.127;

// Figures
//   places                     how many there are, holes or not
//   x, y, diameter, start      circle: placed_pattern.hpp
//   pitch, angle               row
//   <hole> along               how far it is from its place, along the circle or the row
//   <hole> across              how far outside the circle, or to the left of the row
// Queries: a hole that is off its place by more than the touches could be out; a count of places that is not sure.
void write_pattern(const PatternPlan& plan, ledger::Pen& pen);

}  // namespace sparewright::survey
