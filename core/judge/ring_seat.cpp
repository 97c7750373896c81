// The groove of a retaining ring, against the handbook's for the shaft or bore it is in.
#include <fmt/format.h>

#include "core/handbook/retaining_rings.hpp"
#include "core/judge/seat_checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;

// The metal between groove and end, which has to stand the ring's push.
void judge_edge(Pen& pen, const Subject& subject, const Seat& seat, const handbook::RingGroove& groove) {
  const route::Printing print(subject.route.system);
  const Figure& edge = pen.need(part::feature_path(seat.on) + "/from end/least");
  const std::string source = handbook::cite(groove.edge_source);
  pen.judge(
      {.check = "metal beyond the groove",
       .subject = seat.name,
       .figure = &edge,
       .low = &limit(pen, "least edge", groove.least_edge.base(), Origin::kStandard, source),
       .reason = fmt::format("{} of metal stand between groove and end, and the ring wants {}",
                             print.plain(edge.value), print.plain(groove.least_edge.base())),
       .source = source,
       .todo = fmt::format("move the groove {} or more from the end", print.plain(groove.least_edge.base())),
       .margin = "edge margin"});
}

}  // namespace

void judge_ring_seat(Pen& pen, const Subject& subject, const Seat& seat) {
  const part::Feature* on = part::find_feature(subject.route.part, seat.on);
  const auto* formed = on == nullptr ? nullptr : std::get_if<part::Formed>(&on->shape);
  const bool in_bore = formed != nullptr && formed->form == part::Form::kRecess;
  const double nominal = pen.need(diameter_path(seat.shaft)).value;
  const bool inch = subject.route.system == quantity::UnitSystem::kInch;
  const auto kind = in_bore
                        ? (inch ? handbook::RingKind::kInternalInch : handbook::RingKind::kInternalMetric)
                        : (inch ? handbook::RingKind::kExternalInch : handbook::RingKind::kExternalMetric);
  const auto groove = handbook::ring_groove(kind, quantity::Diameter::from_base(nominal));
  if (!groove) {
    return pen.state({.check = "ring's groove",
                      .subject = seat.name,
                      .state = ledger::State::kNotKnown,
                      .reason = fmt::format("no {} is tabled for this size", handbook::name_of(kind)),
                      .source = "retaining rings as tabled",
                      .todo = groove.error().accepted,
                      .missing = {"a ring for the size"}});
  }
  const handbook::RetainingRing& ring = groove->ring;
  const std::string source = handbook::cite(ring.source);
  const std::string why = std::string(handbook::name_of(kind));
  if (groove->deviations) {
    judge_limits(pen, subject, seat,
                 {.check = "ring's groove has the diameter",
                  .figure = diameter_path(seat.on),
                  .low_mm = ring.groove.base() + groove->deviations->lower.base(),
                  .high_mm = ring.groove.base() + groove->deviations->upper.base(),
                  .source = source,
                  .why = why});
  }
  judge_limits(pen, subject, seat,
               {.check = "ring's groove has the width",
                .figure = part::feature_path(seat.on) + "/width",
                .low_mm = ring.groove_width.base(),
                .high_mm = ring.width_more ? std::optional(ring.groove_width.base() + ring.width_more->base())
                                           : std::nullopt,
                .source = source,
                .why = why});
  judge_edge(pen, subject, seat, *groove);
}

}  // namespace sparewright::judge
