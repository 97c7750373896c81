// Edges taken off straight or round: along the side of a block, or round the rim of a bar.
#include <array>
#include <cmath>
#include <numbers>

#include "core/part/form_sizes.hpp"

namespace sparewright::part {
namespace {

using shape::Cutter;
using shape::FlatPoint;
using shape::Frame;
using shape::kOverrun_mm;
using shape::Open;
using shape::Vector;

// The corner of a section, taken off straight or round: u and v lead away from the edge into the metal.
shape::Contour corner_off(double size, bool round) {
  const double far = -kOverrun_mm;
  if (!round) {
    const double cut = size + kOverrun_mm;
    return shape::straight_contour(std::array{FlatPoint{far, far}, FlatPoint{cut, far}, FlatPoint{far, cut}});
  }
  // Hollow towards the metal: the quarter circle bulges to the left of the way along.
  return {{{far, far}, 0.0},
          {{size, far}, 0.0},
          {{size, 0.0}, -std::tan(std::numbers::pi / 8)},
          {{0.0, size}, 0.0},
          {{far, size}, 0.0}};
}

Cutter along_edge(const Sizes& s, double size, bool round) {
  const Face side = s.formed.side;
  const Face edge = *s.formed.edge;
  Vector corner;
  component(corner, axis_of(side)) = s.of("starts at");
  component(corner, axis_of(edge)) = s.of("edge at");
  const Axis along = axis_of(side) == Axis::kX || axis_of(edge) == Axis::kX
                         ? (axis_of(side) == Axis::kY || axis_of(edge) == Axis::kY ? Axis::kZ : Axis::kY)
                         : Axis::kX;
  const Vector u = -outward(side);
  const Vector v = -outward(edge);
  const Vector z = shape::cross(u, v);
  component(corner, along) =
      component(z, along) > 0 ? s.side(face_at(along, false)) : s.side(face_at(along, true));
  const Frame frame{{corner.x, corner.y, corner.z}, u, v, z};
  return as_cutter(s, shape::ProfiledBody{frame, corner_off(size, round), s.across(along)}, Open::kThrough);
}

// The rim of an end: u runs inwards from the bar's outside, v from the end.
Cutter round_rim(const Sizes& s, double size, bool round) {
  const double radius = (s.has("diameter") ? s.of("diameter") : s.across(Axis::kY)) / 2;
  shape::Contour contour = corner_off(size, round);
  for (shape::Corner& corner : contour)
    corner.at = {radius - corner.at.u, s.above() + corner.at.v};
  // Mirrored, it runs the other way round: turned about, with each bow on the edge that now leads on.
  shape::Contour about;
  for (std::size_t i = contour.size(); i-- > 0;)
    about.push_back({contour[i].at, contour[i == 0 ? contour.size() - 1 : i - 1].bow});
  return as_cutter(s, shape::TurnedBody{on_end(s), about});
}

}  // namespace

std::vector<Cutter> edge_cutters(const Sizes& s) {
  const bool round = s.formed.form == Form::kRoundedEdge;
  const double size = s.of(round ? "radius" : "size");
  return {s.formed.edge ? along_edge(s, size, round) : round_rim(s, size, round)};
}

}  // namespace sparewright::part
