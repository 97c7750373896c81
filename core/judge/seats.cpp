#include <fmt/format.h>

#include "core/judge/seat_checks.hpp"

namespace sparewright::judge {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;

void add_to(base::Hasher& h, const Seat& seat) {
  h.add(seat.name).add(static_cast<int>(seat.takes)).add(seat.on).add(seat.shaft).add(seat.bearing);
  h.add(seat.ring_least_mm).add(seat.ring_most_mm).add(seat.ring_nominal_mm).add(seat.ring_source);
  h.add(seat.turning ? static_cast<int>(*seat.turning) : -1)
      .add(seat.load ? static_cast<int>(*seat.load) : -1);
  for (const auto& size : {seat.section, seat.seals_in})
    h.add(size.has_value()).add(size ? size->base : 0.0).add(size ? size->typed : std::string());
  h.add(static_cast<int>(seat.duty));
}

std::string diameter_path(const std::string& on) {
  return on == kBareBar ? "blank/diameter" : part::feature_path(on) + "/diameter";
}

void judge_limits(Pen& pen, const Subject& subject, const Seat& seat, const Asked& asked) {
  const route::Printing print(subject.route.system);
  const Figure& least = pen.ask(asked.figure + "/least");
  const Figure& most = pen.ask(asked.figure + "/most");
  const auto end = [&](std::string_view which, const std::optional<double>& mm) -> const Figure* {
    if (!mm) return nullptr;
    return &limit(pen, fmt::format("{} {}", asked.check, which), *mm, Origin::kStandard, asked.source);
  };
  const Figure* low = end("least", asked.low_mm);
  const Figure* high = end("most", asked.high_mm);
  const bool is_large = high != nullptr && most.known() && most.value > high->value;
  const bool only_high = low == nullptr;
  const bool use_most = only_high || (is_large && high != nullptr);
  const std::string wanted = low != nullptr && high != nullptr ? print.limits(low->value, high->value, true)
                             : low != nullptr                  ? print.least(low->value, true) + " or more"
                                                               : print.most(high->value, true) + " or less";
  pen.judge({.check = asked.check,
             .subject = seat.name,
             .figure = use_most ? &most : &least,
             .low = use_most ? nullptr : low,
             .high = use_most ? high : nullptr,
             .reason = fmt::format("it is {} and should be {}: {}",
                                   route::or_not_known(least, print.limits(least.value, most.value, true)),
                                   wanted, asked.why),
             .source = asked.source,
             .todo = fmt::format("make it {}", wanted),
             .margin = asked.check + " margin"});
}

void add_seat_checks(const Shared& subject, Stages& stages) {
  for (const Seat& seat : subject->seats) {
    stages.push_back(check_stage(subject, "seat", seat.name, [subject, &seat](Pen& pen) {
      switch (seat.takes) {
        case SeatFor::kBearing:
          return judge_bearing_seat(pen, *subject, seat);
        case SeatFor::kKey:
          return judge_key_seat(pen, *subject, seat);
        case SeatFor::kRetainingRing:
          return judge_ring_seat(pen, *subject, seat);
        case SeatFor::kORing:
          return judge_o_ring_seat(pen, *subject, seat);
      }
    }));
  }
}

}  // namespace sparewright::judge
