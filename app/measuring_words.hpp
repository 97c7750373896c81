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

// "as it comes out without over both: 5.2500 in"
[[nodiscard]] std::string without_words(const NumberRow& without);

// "IN QUESTION: see the query 'repeats apart/lug'"
[[nodiscard]] std::string question_words(const std::vector<std::string>& in_question);

// What was touched and how: "circle of 4 touches inside, mill collars, edge finder 0.200; gives bore (diameter)"
[[nodiscard]] std::string touched_words(const TouchedRow& row);
// "form error 0.0005 in; touch 3 the furthest off, 0.0003 in"
[[nodiscard]] std::string touches_fit_words(const TouchedRow& row);

// Whether a slip would show; of a size that hangs on readings at odds, that.
[[nodiscard]] std::string checked_words(const MeasuredRow& row);

// How the readings fit one another.
[[nodiscard]] std::string agreement_words(const Measured& measured);

}  // namespace sparewright::app
