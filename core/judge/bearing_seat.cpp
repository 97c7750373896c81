// The seat of a rolling bearing: its limits against those printed for how it turns and is loaded, and a drawn bar with the
// lobes that a micrometer does not see.
#include <algorithm>

#include <fmt/format.h>

#include "core/handbook/stock_sizes.hpp"
#include "core/judge/seat_checks.hpp"

namespace sparewright::judge {
namespace {

using handbook::BearingSeat;
using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

// What compounds for bearings fill on the diameter at the most: common practice, the maker's sheet comes first.
constexpr double kBridged_mm = 0.10;

// The zones printed for the case; the seat to make is the widest of those that leave no clearance at all.
struct Printed {
  std::vector<BearingSeat> seats;
  handbook::FitSide side = handbook::FitSide::kShaft;

  [[nodiscard]] const BearingSeat* always_tight() const {
    const BearingSeat* best = nullptr;
    for (const BearingSeat& seat : seats) {
      if (seat.most_clearance > quantity::Length{}) continue;
      if (best == nullptr || seat.limits.width() > best->limits.width()) best = &seat;
    }
    return best;
  }
  // The zone that the size lies in from end to end; none where there is none.
  [[nodiscard]] const BearingSeat* holds(double least_mm, double most_mm) const {
    constexpr double kRounding_mm = 1e-6;
    for (const BearingSeat& seat : seats) {
      if (least_mm >= seat.limits.lower.base() - kRounding_mm &&
          most_mm <= seat.limits.upper.base() + kRounding_mm)
        return &seat;
    }
    return nullptr;
  }
};

bool is_hole(const part::Part& part, const std::string& on) {
  const part::Feature* feature = part::find_feature(part, on);
  return feature != nullptr && std::holds_alternative<part::Hole>(feature->shape);
}

std::string names_of(const Printed& printed) {
  std::string names;
  for (const BearingSeat& seat : printed.seats) {
    const std::string zone = to_string(seat.zone);
    if (names.find(zone) == std::string::npos) names += (names.empty() ? "" : ", ") + zone;
  }
  return names;
}

std::string case_of(const Seat& seat) {
  const bool assumed = !seat.turning || !seat.load;
  constexpr std::array<std::string_view, 3> kTurns{"the inner ring turns", "the outer ring turns",
                                                   "either turns"};
  constexpr std::array<std::string_view, 3> kLoads{"light load", "normal load", "heavy load"};
  return fmt::format(
      "{}, {}{}", kTurns.at(static_cast<std::size_t>(seat.turning.value_or(handbook::RingTurning::kInner))),
      kLoads.at(static_cast<std::size_t>(seat.load.value_or(handbook::BearingLoad::kNormal))),
      assumed ? " (assumed)" : "");
}

// The next bar that a seat can be turned on.
std::string next_bar(const Subject& subject, double seat_most_mm) {
  const bool inch = subject.route.system == quantity::UnitSystem::kInch;
  constexpr double kToClean_mm = 25.4 / 16.0;  // on the diameter, for skin, lobes and bow; common practice
  const auto around = handbook::stock_around(
      inch ? handbook::StockKind::kInchRoundSteel : handbook::StockKind::kMetricRoundSteel,
      quantity::Length::from_base(seat_most_mm + kToClean_mm));
  return around.at_or_above ? around.at_or_above->name + " bar" : "a larger bar";
}

std::string what_to_do(const Subject& subject, const Seat& seat, const Printed& printed, double loose_mm) {
  const route::Printing print(subject.route.system);
  const BearingSeat* tight = printed.always_tight();
  if (tight == nullptr) tight = &printed.seats.front();
  const std::string size =
      fmt::format("{} ({})", print.limits(tight->limits.lower.base(), tight->limits.upper.base(), true),
                  to_string(tight->zone));
  std::string todo = seat.on == kBareBar ? fmt::format("turn the seat to {} from {}", size,
                                                       next_bar(subject, tight->limits.upper.base()))
                                         : fmt::format("make the seat {}", size);
  if (loose_mm > 0.0 && loose_mm <= kBridged_mm)
    todo += fmt::format("; or retaining compound, which bridges {}", print.fine(loose_mm));
  return todo;
}

// "loose by 0.0011 to 0.0016 by micrometer, 0.0006 to 0.0010 over its lobes"
std::string how_loose(const Subject& subject, const Seat& seat, const Figure& least, const Figure& most,
                      const Figure* over_lobes) {
  const route::Printing print(subject.route.system);
  const auto range = [&](double tight, double loose) {
    return fmt::format("{} to {}", print.fine(tight), print.fine(loose));
  };
  std::string words =
      fmt::format("loose by {}", range(seat.ring_least_mm - most.value, seat.ring_most_mm - least.value));
  if (over_lobes != nullptr)
    words += fmt::format(" by micrometer, {} over its lobes", range(seat.ring_least_mm - over_lobes->value,
                                                                    seat.ring_most_mm - over_lobes->value));
  return words;
}

std::string sold_as(const part::Blank& blank) {
  const part::BlankSize& size = blank.sizes.at(1);
  if (size.mill_source.empty() || !size.found) return "";
  const double off = size.found->base - size.nominal.base;
  const bool within =
      off - size.found_below_mm >= size.mill_lower_mm && off + size.found_above_mm <= size.mill_upper_mm;
  return fmt::format("; the bar is {} the limits it is sold to", within ? "within" : "outside");
}

// On a bar as it is drawn a bearing sits on the lobes: what counts is what it measures over them.
const Figure* write_over_lobes(Pen& pen, const part::Part& part, const Seat& seat, const Figure& most) {
  if (seat.on != kBareBar || !part.blank.lobing) return nullptr;
  return &pen.work(
      "over its lobes", Kind::kDiameter, "the greatest reading and how far it is out of round",
      [](auto d, auto out) { return d + out; }, most, pen.need("blank/lobing"));
}

void judge_shaft(Pen& pen, const Subject& subject, const Seat& seat, const Printed& printed) {
  const route::Printing print(subject.route.system);
  const part::Part& part = subject.route.part;
  const Figure& least = pen.need(diameter_path(seat.on) + "/least");
  const Figure& most = pen.need(diameter_path(seat.on) + "/most");
  const Figure* over_lobes = write_over_lobes(pen, part, seat, most);
  const auto [loosest, tightest] = std::minmax_element(
      printed.seats.begin(), printed.seats.end(),
      [](const BearingSeat& a, const BearingSeat& b) { return a.limits.lower < b.limits.lower; });
  const std::string source = handbook::cite(printed.seats.front().source);
  const Figure& low = limit(pen, "least seat", loosest->limits.lower.base(), Origin::kStandard, source);
  const Figure& high = limit(pen, "most seat", tightest->limits.upper.base(), Origin::kStandard, source);
  const BearingSeat* zone = printed.holds(least.value, most.value);
  const bool too_large = most.value > high.value;
  const Figure& worst = too_large ? most : over_lobes != nullptr ? *over_lobes : least;
  const double loose = seat.ring_most_mm - least.value;
  const std::string is =
      fmt::format("{} on the seat of {}", print.limits(least.value, most.value, true), seat.bearing);
  const bool is_loose = !too_large && worst.value < low.value;
  pen.judge(
      {.check = "bearing seat",
       .subject = seat.name,
       .figure = &worst,
       .low = too_large ? nullptr : &low,
       .high = too_large ? &high : nullptr,
       .reason = is_loose ? fmt::format("{}: no press holds it{}",
                                        how_loose(subject, seat, least, most, over_lobes),
                                        seat.on == kBareBar ? sold_as(part.blank) : "")
                 : zone != nullptr
                     ? fmt::format("{}: within {} ({})", is, to_string(zone->zone), case_of(seat))
                     : fmt::format("{}; printed for it are {} ({})", is, names_of(printed), case_of(seat)),
       .source = source,
       .todo = what_to_do(subject, seat, printed, is_loose ? loose : 0.0),
       .close_at_best = zone == nullptr});
}

void judge_housing(Pen& pen, const Subject& subject, const Seat& seat, const Printed& printed) {
  const route::Printing print(subject.route.system);
  const Figure& least = pen.need(diameter_path(seat.on) + "/least");
  const Figure& most = pen.need(diameter_path(seat.on) + "/most");
  const BearingSeat* zone = printed.holds(least.value, most.value);
  const BearingSeat& shown = zone != nullptr ? *zone : printed.seats.front();
  judge_limits(pen, subject, seat,
               {.check = "bearing seat",
                .figure = diameter_path(seat.on),
                .low_mm = shown.limits.lower.base(),
                .high_mm = shown.limits.upper.base(),
                .source = handbook::cite(shown.source),
                .why = fmt::format("{} for {} ({})", to_string(shown.zone), seat.bearing, case_of(seat))});
}

}  // namespace

void judge_bearing_seat(Pen& pen, const Subject& subject, const Seat& seat) {
  Printed printed;
  printed.side = is_hole(subject.route.part, seat.on) ? handbook::FitSide::kHole : handbook::FitSide::kShaft;
  const auto seats =
      handbook::bearing_seats(printed.side, quantity::Diameter::from_base(seat.ring_nominal_mm),
                              seat.turning.value_or(handbook::RingTurning::kInner),
                              seat.load.value_or(handbook::BearingLoad::kNormal));
  if (!seats) {
    return pen.state({.check = "bearing seat",
                      .subject = seat.name,
                      .state = ledger::State::kNotKnown,
                      .reason = "no seat is printed for this load and size",
                      .source = "seats of rolling bearings as tabled",
                      .todo = "ask the bearing's maker",
                      .missing = {"a seat printed for the case"}});
  }
  printed.seats = *seats;
  printed.side == handbook::FitSide::kHole ? judge_housing(pen, subject, seat, printed)
                                           : judge_shaft(pen, subject, seat, printed);
}

}  // namespace sparewright::judge
