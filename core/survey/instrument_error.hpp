// How far an instrument may be out at one size, and what it can measure at all.
#pragma once

#include <string>

#include "core/survey/reading.hpp"

namespace sparewright::survey {

struct ErrorLimit {
  double half_width = 0.0;  // base unit, of what it shows
  std::string typed;        // "0.001", "0.0200 mm"
  std::string source;       // "DIN 862, ..."; empty where the shop states it
};

// As the shop states it; else the row of `allowed` for these faces and a size of that magnitude.
[[nodiscard]] ErrorLimit error_limit(const Instrument& instrument, Jaws jaws, double size);

// Half of what it shows, or twice, is the size: 1, 2 or a half.
[[nodiscard]] double size_of_shown(Shows shows);

// Whether it measures a size (base unit, of what it shows): within its range and half a hundredth of that more, which
// thimbles and dials go past their ends (a choice made here, without a source). An end that is not said is no limit.
[[nodiscard]] bool in_range(const Instrument& instrument, double shown);

// "0 to 1 in"; "from 1 in", "up to 1 in" where one end is not said; empty where neither is.
[[nodiscard]] std::string range_words(const Instrument& instrument);

}  // namespace sparewright::survey
