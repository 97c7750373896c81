// The one reading more that would fix the most of what the readings leave open.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/ledger/ledger.hpp"
#include "core/survey/measure_up.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

struct NextReading {
  Way way = Way::kOutside;
  std::vector<std::string> of;
  std::string instrument;          // the finest of the shop that has the jaws for it; empty where none has
  std::vector<std::string> fixes;  // the dimensions it would fix, in their order
};

// "'over holes' of centres, left and right with caliper 8"
[[nodiscard]] std::string words_of(const NextReading& next);

// Tried are
//   each reading there is that has a dimension that is not fixed, in its other ways: over holes for between holes, the far
//   edge for the near one
//   each such dimension read by itself: an angle by a protractor; a diameter, a radius or a length inside or outside as the
//   other readings tell (a hole or metal), else outside. Centre distances and what else lies between middles are not read
//   by themselves
// The best fixes the most dimensions; of those, one of fewer dimensions; of those, the one whose instrument is finest; of
// those the first. None where everything is fixed or nothing tried helps.
// survey: its dimensions in the order of measured.adjustment.unknowns.
[[nodiscard]] std::optional<NextReading> next_reading(const Survey& survey, const MeasuredUp& measured);

// "next reading", for a survey that is sound (troubles()) and sorted as survey_stages() sorts it
//   next reading/fixes   how many dimensions the best one would fix, itself in words; not there where everything is fixed
//                        or nothing helps
//   queries              "one more reading/<the dimensions it is of>"
[[nodiscard]] ledger::Stage next_reading_stage(const Survey& survey);

}  // namespace sparewright::survey
