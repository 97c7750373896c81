#include "app/measuring_words.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace sparewright::app {
namespace {

constexpr std::size_t kMostDoubts = 4;

// Of a face: where the tip stood.
std::string side_words(const std::string& side) {
  if (side == "below" || side == "above") return side;
  return "the " + side;
}

}  // namespace

std::string doubts_words(const std::vector<DoubtRow>& doubts) {
  std::string words;
  double rest = 1.0;
  for (std::size_t i = 0; i < std::min(doubts.size(), kMostDoubts); ++i) {
    words += fmt::format("{}{:.0f} % {}", words.empty() ? "" : "; ", 100.0 * doubts[i].part, doubts[i].cause);
    rest -= doubts[i].part;
  }
  if (doubts.size() > kMostDoubts) words += fmt::format("; {:.0f} % the rest", 100.0 * rest);
  return words;
}

std::string wear_words(const MeasuredRow& row) {
  if (!row.now) return "";
  std::string words = "worn to " + row.now->shown;
  if (!row.wear) return words;
  if (!row.wear->value) return words + "; how much is gone: NOT KNOWN";
  if (*row.wear->value <= 0.0)
    return words + ", no less metal than the rest: no wear that these readings could tell";
  words += fmt::format(", {} gone", row.wear->shown);
  if (!row.wear->good_to.empty()) words += fmt::format(" (good to {})", row.wear->good_to);
  constexpr double kCovers = 2.0;  // about 19 times in 20
  if (row.wear->u && *row.wear->value <= kCovers * *row.wear->u)
    words += ": no more than these readings could tell";
  return words;
}

std::string without_words(const NumberRow& without) {
  return fmt::format("{}: {}", without.formula, without.shown);
}

std::string question_words(const std::vector<std::string>& in_question) {
  return fmt::format("IN QUESTION: see the quer{} '{}'", in_question.size() == 1 ? "y" : "ies",
                     fmt::join(in_question, "' and '"));
}

std::string touched_words(const TouchedRow& row) {
  const bool is_round = row.form == "circle";
  std::string words =
      fmt::format("{} of {} touches {}, {}, {}", row.form, row.touches.size(),
                  is_round ? row.side : "from " + side_words(row.side), row.instrument, row.tip);
  if (!row.place.empty()) words += ", " + row.place;
  std::vector<std::string> gives;
  for (const GivesRow& one : row.gives)
    gives.push_back(fmt::format("{} ({})", one.dimension, one.what));
  return words + (gives.empty() ? "; gives no size" : fmt::format("; gives {}", fmt::join(gives, ", ")));
}

std::string touches_fit_words(const TouchedRow& row) {
  if (!row.furthest_off || !row.form_error || !row.form_error->value)
    return "form error NOT KNOWN: no touch to spare";
  return fmt::format("form error {}; furthest off {}, {}", row.form_error->shown, row.furthest_off->shown,
                     row.furthest_off->formula);
}

std::string checked_words(const MeasuredRow& row) {
  if (row.is_checked) return "checked by another reading";
  std::string words;
  if (!row.without.empty()) words = "it hangs on readings at odds";
  if (words.empty() && !row.in_question.empty()) words = "it hangs on a reading in question";
  if (!row.unchecked.empty()) {
    words += fmt::format("{}a slip in '{}' would not show", words.empty() ? "" : "; ",
                         fmt::join(row.unchecked, "' or '"));
  }
  return words.empty() ? "not checked by another reading" : words;
}

std::string agreement_words(const Measured& measured) {
  if (measured.spare_readings <= 0 || !measured.total || !measured.limit)
    return "No reading more than needed: a slip in any would not show. Take some sizes a second time, "
           "another way.";
  const bool agree = *measured.total <= *measured.limit;
  return fmt::format("{} reading{} more than needed; their misfits add up to {:.2f}, {} {:.2f}: they {}.",
                     measured.spare_readings, measured.spare_readings == 1 ? "" : "s", *measured.total,
                     agree ? "below" : "above", *measured.limit, agree ? "agree" : "do NOT agree");
}

}  // namespace sparewright::app
