// How far a measuring instrument may be out where nobody has stated it: what the standards allow its kind.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::handbook {

// A size of dial: large is 50 mm across and more; small is less, or a plunger at the back.
enum class IndicatorBezel { kLarge, kSmall };

struct AskedInstrument {
  std::string_view kind;   // in words as people write them: "dial caliper", "outside micrometer"
  quantity::Length reads;  // its finest step, more than 0
  bool in_inches = false;  // graduated in inches
  std::optional<quantity::Length> range;  // the most it measures; of an indicator, its travel
};

// Half-widths, either way, for sizes up to `up_to` (none: any size). Of an indicator the size is what its hand moved.
struct UsualError {
  std::optional<quantity::Length> up_to;
  quantity::Length outside;
  quantity::Length inside;
  quantity::Length depth;
  Source source;
};

// Rows by rising `up_to`. By the words of the kind, in small or capital letters:
//   caliper, depth gauge                  DIN 862 by the step (over 0.03 mm: coarse; 0.015 mm and less: digital; between: fine);
//                                         0.02 mm more for inside jaws and depth rod. In inches up to 6 in: ASME B89.1.14
//   micrometer, outside micrometer        DIN 863; in inches up to 1 in: ASME B89.1.13
//   dial indicator                        JIS B 7503 by graduation and range; a range not said is taken as 10 mm. With a hand
//                                         that goes 1 mm a turn (0.01 mm graduations; from memory) by the part of a turn.
//                                         "small" or "back" in its words: the small dial
//   telescoping gauge, small hole gauge, inside micrometer, spring or firm-joint calipers (set to a rule, or felt against a
//   micrometer where the words say so)    from memory, the greater of the figures in use
//   rule                                  half a step (from memory)
// Fails with kNotTabled where nothing is known of the kind: bore gauges, depth micrometers, test indicators, indicators in
// inches.
[[nodiscard]] base::Result<std::vector<UsualError>> usual_errors(const AskedInstrument& asked);

// A vernier protractor, either way (from memory).
inline constexpr quantity::Angle kProtractorError = quantity::Angle::of(5, quantity::unit::arc_minute);
inline constexpr Source kProtractorSource{"vernier protractors", "", Basis::kFromMemory};

}  // namespace sparewright::handbook
