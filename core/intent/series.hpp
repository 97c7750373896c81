// The standard sizes nearest to a measured one, series by series, and how striking it is to lie so near. Used inside this
// room only.
#pragma once

#include <string>
#include <vector>

#include "core/intent/original.hpp"

namespace sparewright::intent {

// The nearest size of one series.
struct Nearest {
  std::string name;    // "3/4 in", "19 mm", "#7"
  std::string series;  // "a whole inch", "bore of bearing 6204"
  double size_mm = 0.0;
  double spacing_mm = 0.0;  // from one size of the series to the next, there
  std::string source;
};

// Every series that may be meant: fractions and decimals of an inch, millimetres and preferred numbers for all; drills for
// what is a hole; bearing bores for a shaft, outsides for a hole; key widths for what is no diameter. measured_mm > 0.
[[nodiscard]] std::vector<Nearest> nearest_of_each_series(double measured_mm, quantity::Kind kind, Role role);

}  // namespace sparewright::intent
