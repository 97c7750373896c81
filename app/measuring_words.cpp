#include "app/measuring_words.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace sparewright::app {
namespace {

constexpr std::size_t kMostDoubts = 4;

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
  return words;
}

std::string checked_words(const MeasuredRow& row) {
  if (row.is_checked) return "checked by another reading";
  if (row.unchecked.empty()) return "not checked by another reading";
  return fmt::format("a slip in '{}' would not show", fmt::join(row.unchecked, "' or '"));
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
