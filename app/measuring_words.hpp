// What came of measuring up, in words: the same on the screen and on paper.
#pragma once

#include <string>
#include <vector>

#include "app/rows.hpp"

namespace sparewright::app {

// "57 % zero of micrometer 0-1, outside jaws; 43 % 'idler pin', good to"; the few that count most, then the rest.
[[nodiscard]] std::string doubts_words(const std::vector<DoubtRow>& doubts);

// "worn to 0.6231 in, 0.0018 in gone"; empty where no worn place was read.
[[nodiscard]] std::string wear_words(const MeasuredRow& row);

// Of a size that hangs on readings which do not agree.
inline constexpr const char* kDisputed =
    "DISPUTED: the readings do not agree, and this size is no better than the wrong one of them";

// Whether a slip would show.
[[nodiscard]] std::string checked_words(const MeasuredRow& row);

// How the readings fit one another.
[[nodiscard]] std::string agreement_words(const Measured& measured);

}  // namespace sparewright::app
