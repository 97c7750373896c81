// The groove of an O-ring on a piston, against the handbook's gland for its section and what it does.
#include <fmt/format.h>

#include "core/judge/seat_checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

// From the bore to the bottom of the groove, the piston in the middle.
void judge_depth(Pen& pen, const Subject& subject, const Seat& seat, const handbook::ORingGland& gland) {
  const route::Printing print(subject.route.system);
  const Figure& bore =
      limit(pen, "seals in", seat.seals_in->base, Origin::kChoice, "the job", seat.seals_in->typed);
  const auto half = [](auto in, auto out) { return (in - out) / 2.0; };
  const Figure& least =
      pen.work("gland depth at least", Kind::kLength, "half of bore less the largest groove", half, bore,
               pen.need(diameter_path(seat.on) + "/most"));
  const Figure& most = pen.work("gland depth at most", Kind::kLength, "half of bore less the least groove",
                                half, bore, pen.need(diameter_path(seat.on) + "/least"));
  const std::string source = handbook::cite(gland.source);
  const Figure& low = limit(pen, "least depth", gland.depth_least.base(), Origin::kStandard, source);
  const Figure& high = limit(pen, "most depth", gland.depth_most.base(), Origin::kStandard, source);
  const bool deep = most.value > high.value;
  pen.judge({.check = "O-ring is squeezed enough and not too much",
             .subject = seat.name,
             .figure = deep ? &most : &least,
             .low = deep ? nullptr : &low,
             .high = deep ? &high : nullptr,
             .reason = fmt::format("from bore to bottom {} to {}; for {} it should be {}",
                                   print.fine(least.value), print.fine(most.value),
                                   handbook::name_of(gland.duty), print.limits(low.value, high.value, true)),
             .source = source,
             .todo = fmt::format("turn the groove to {}", print.limits(bore.value - 2.0 * high.value,
                                                                       bore.value - 2.0 * low.value, true)),
             .margin = "depth margin"});
}

}  // namespace

void judge_o_ring_seat(Pen& pen, const Subject& subject, const Seat& seat) {
  const auto fit = handbook::o_ring_gland(seat.duty, seat.section->length());
  if (!fit) return;  // the text's reader has refused it
  judge_depth(pen, subject, seat, fit->gland);
  judge_limits(pen, subject, seat,
               {.check = "O-ring's groove has the width",
                .figure = part::feature_path(seat.on) + "/width",
                .low_mm = (fit->gland.width - fit->gland.width_plus_minus).base(),
                .high_mm = (fit->gland.width + fit->gland.width_plus_minus).base(),
                .source = handbook::cite(fit->gland.source),
                .why = fmt::format("without back-up rings, for {}", handbook::name_of(fit->gland.duty))});
}

}  // namespace sparewright::judge
