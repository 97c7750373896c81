#include "drawing/held_views.hpp"

#include <algorithm>
#include <cmath>

namespace sparewright::drawing {
namespace {

using shape::FlatPoint;

FlatPoint less(const FlatPoint& p, const FlatPoint& by) {
  return {p.u - by.u, p.v - by.v};
}

// Reckoned from another place.
View from(View view, const FlatPoint& origin) {
  for (ViewLine& line : view.lines) {
    line.from = less(line.from, origin);
    line.to = less(line.to, origin);
  }
  for (ViewArc& arc : view.arcs)
    arc.centre = less(arc.centre, origin);
  for (ViewPath& path : view.paths) {
    for (FlatPoint& p : path.points)
      p = less(p, origin);
  }
  view.low = less(view.low, origin);
  view.high = less(view.high, origin);
  return view;
}

}  // namespace

base::Result<HeldViews> held_views(const route::PlanView& held, const shape::Recipe& after,
                                   std::size_t cuts_before, const EdgesOf& edges_of) {
  const route::Stance& stance = held.stance;
  const FlatPoint zero{stance.zero_right_mm, stance.zero_away_mm};
  const FlatPoint bed{stance.zero_away_mm, stance.sits_at_mm - held.parallel_high_mm};
  if (!std::isfinite(zero.u) || !std::isfinite(zero.v) || !std::isfinite(bed.v))
    return base::fail(base::Code::kSizeNotPositive, "not known", {}, "where the work lies in the picture");
  const auto edges = edges_of(after);
  if (!edges) return tl::unexpected(edges.error());
  const shape::Work work = after.work();
  const auto here = after.cuts().subspan(std::min(cuts_before, after.cuts().size()));
  const shape::Vector right = part::outward(stance.right);
  const shape::Vector away = part::outward(stance.away);
  const shape::Vector up = part::outward(stance.up);
  return HeldViews{from(view_of(work, *edges, Sight{right, away, up}, here), zero),
                   from(view_of(work, *edges, Sight{away, up, right}, here), bed)};
}

}  // namespace sparewright::drawing
