// The usual slips of reading an instrument, tried on a reading that does not fit the others.
#pragma once

#include <string>
#include <vector>

#include "core/quantity/kind.hpp"
#include "core/quantity/unit.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// A reading that is out, by what the others say of it. Lengths and angles in their base unit.
struct Misread {
  std::string typed;     // the first repeat as typed
  double reading = 0.0;  // as it counts
  double error = 0.0;    // reading less true
  double error_u = 0.0;  // standard uncertainty of that, more than 0
  quantity::Kind kind = quantity::Kind::kLength;
  bool is_metric = false;       // what was typed
  std::string instrument_kind;  // "outside micrometer", as the shop says
  double zero_found = 0.0;      // taken off the reading
};

// One slip and how well it explains the error.
struct Slip {
  std::string says;    // "one turn of the thimble (0.025 in) was missed"
  double shift = 0.0;  // what it makes of the reading: as read less true
  double rest = 0.0;   // |error less shift|
  double odds = 0.0;   // the rest over the error's standard uncertainty
};

// Slips that leave no more than twice the error's doubt, the likeliest first: the usual ones before the rare, of those
// equally usual the one that leaves less. At most three. Empty where none explains it, or where the doubt is so large that
// no error at all would do as well.
//
//   a turn of the thimble: 0.025 in or 0.5 mm            a micrometer
//   a figure of the scale: 0.1 in or 1 mm                a micrometer, a dial or vernier caliper
//   its zero taken off twice, or not at all              where one was found
//   radius for diameter and back; inch for millimetre and back; the point a place out; two figures swapped
// How often each happens is a guess of the trade (common practice); the sizes of the turns are those of the instruments.
[[nodiscard]] std::vector<Slip> slips(const Misread& misread);

}  // namespace sparewright::survey
