// The usual slips of reading an instrument, and what each makes of a reading. explanations.hpp tries them.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/kind.hpp"

namespace sparewright::survey {

// How a reading was taken. Lengths and angles in their base unit.
struct AsRead {
  std::string name;      // of the reading
  std::string typed;     // the first repeat as typed
  double reading = 0.0;  // as it counts
  quantity::Kind kind = quantity::Kind::kLength;
  bool is_metric = false;       // what was typed
  std::string instrument_kind;  // "outside micrometer", as the shop says
  std::optional<double> turn;   // what one turn of its thimble, collar or dial shows; where it is said
  double zero_found = 0.0;      // taken off the reading
  std::string zero;             // whose zero: "caliper 8, outside jaws"; empty where it cancels
};

// What an instrument counts whole: a turn that a reading can be out by.
struct Turn {
  std::string of;    // "turn of the thimble", "figure of the scale"
  double by = 0.0;   // base unit, more than 0
  std::string size;  // "0.025 in"
  int rank = 0;      // as of a slip
};

// Of an instrument of that kind, as the shop says it; turn: what one turn shows, where it is said.
//   0  the thimble: 0.025 in or 0.5 mm                 a micrometer
//   0  the collar or dial: as the instrument says      any that says it
//   1  the collar, where none is said: the usual       "collar" or "handwheel" in its kind
//   1  a figure of the scale: 0.1 in or 1 mm           a micrometer, a dial or vernier caliper
[[nodiscard]] std::vector<Turn> usual_turns(std::string_view kind, std::optional<double> turn,
                                            bool is_metric);

// One slip.
struct Slip {
  std::string says;    // "one turn of the thimble (0.025 in) was missed"
  double shift = 0.0;  // what it makes of the reading: as read less true
  int rank = 0;        // how usual it is: 0 the most, each more kRarer times as rare
};

inline constexpr double kRarer = 3.0;

// Every slip that the reading may hold; none of what was not read off anything (nothing typed).
//      a turn missed or counted too many: usual_turns()
//   1  its zero taken off twice, or with the wrong sign        where one was found
//   2  radius for diameter and back; inch for millimetre and back
//   3  the point a place out; two neighbouring figures swapped
// How often each happens is a guess of the trade (common practice); the sizes of the turns are those of the instruments.
[[nodiscard]] std::vector<Slip> usual_slips(const AsRead& read);

}  // namespace sparewright::survey
