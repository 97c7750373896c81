// What is said of a size that was proposed.
#include <cmath>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/intent/original.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::intent {
namespace {

std::string length(double mm, quantity::UnitSystem system) {
  const quantity::Unit unit = quantity::display_unit(quantity::Kind::kLength, system);
  return quantity::fixed(unit.from_base(mm), quantity::usual_places(quantity::Kind::kLength, system));
}

}  // namespace

std::string reason_of(const Candidate& c, const MeasuredUp& measured, quantity::UnitSystem system) {
  std::string words = c.as_mate ? "its mate's size; " : "";
  words += fmt::format("{}", fmt::join(c.series, ", "));
  const std::string off = length(std::abs(c.off_mm), system);
  words += fmt::format("; {} {}", off, c.off_mm < 0.0 ? "under" : "over");
  if (c.may_be_it) return words + ", within what the readings leave open";
  const bool is_wear = (measured.bound == ledger::Bound::kAtLeast && c.off_mm < 0.0) ||
                       (measured.bound == ledger::Bound::kAtMost && c.off_mm > 0.0);
  if (is_wear) return words + ", by wear";
  words += ", " + c.made;
  if (measured.unknown_mm > 0.0)
    words +=
        fmt::format("; {:.1f} times what the readings leave open", std::abs(c.off_mm) / measured.unknown_mm);
  return words;
}

std::string odds_of(double chance) {
  constexpr double kMost = 1000.0;
  constexpr double kEven = 1.25;
  const double on = chance / (1.0 - chance);
  if (!(on < kMost)) return "more than 1000 to 1 on";
  if (on * kMost <= 1.0) return "more than 1000 to 1 against";
  if (on < kEven && on * kEven > 1.0) return "even";
  const double odds = on > 1.0 ? on : 1.0 / on;
  return fmt::format("{:.{}f} to 1 {}", odds, odds < 3.0 ? 1 : 0, on > 1.0 ? "on" : "against");
}

std::string decider_of(const Proposals& p, quantity::UnitSystem system) {
  if (p.is_settled) return "";
  const quantity::Unit unit = quantity::display_unit(quantity::Kind::kLength, system);
  switch (p.decider) {
    case Decider::kFinerReading:
      return fmt::format("the same reading, good to {} {}, would decide", length(p.good_to_mm, system),
                         unit.symbol);
    case Decider::kUnwornPlace:
      return "a reading of a place that is not worn would decide: beside the worn band, under a collar";
    case Decider::kOtherPlace:
      return "it was read across a break or where it is bent, which says nothing of its size: read it on the "
             "machine it "
             "goes back into";
    case Decider::kInchOrMetric:
      return "whether the machine is inch or metric would decide: the pitch of any of its screws, or made_in";
    case Decider::kMate:
      return "what goes with it, measured and named as its mate, may decide";
    case Decider::kNothing:
      break;
  }
  return "no reading of it would decide: go by the drawing, or by a part that is not worn";
}

}  // namespace sparewright::intent
