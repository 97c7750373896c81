// Recesses, keyways, slits and oil grooves: cut in a hole.
#include <cmath>

#include "core/part/form_sizes.hpp"

namespace sparewright::part {
namespace {

using shape::Cutter;
using shape::Frame;
using shape::kOverrun_mm;
using shape::Open;
using shape::Vector;

// Local z leads along the hole into the metal, from the blank's side it starts on; local x towards this feature's side.
Frame in_hole(const Sizes& s) {
  const Face into = s.formed.of_into;
  Vector at;
  component(at, axis_of(into)) = s.side(into);
  for (const Axis axis : axes_in(into))
    component(at, axis) = s.hole(fmt::format("at {}", name_of(axis)));
  if (axis_of(s.formed.side) == axis_of(into)) return Frame::along({at.x, at.y, at.z}, -outward(into));
  return Frame::along({at.x, at.y, at.z}, -outward(into), outward(s.formed.side));
}

Cutter recess(const Sizes& s) {
  const double from = std::abs(s.side(s.formed.of_into) - s.hole("starts at")) + s.of("from end");
  const double radius = s.of("diameter") / 2;
  const double to = from + s.of("width");
  return as_cutter(s, shape::TurnedBody{in_hole(s), shape::rectangle({0.0, from}, {radius, to})});
}

// A straight way along a hole, from its axis outwards.
Cutter way_along_hole(const Sizes& s, double reach, double width) {
  return as_cutter(s,
                   shape::ProfiledBody{in_hole(s), shape::rectangle({0.0, -width / 2}, {reach, width / 2}),
                                       s.across(axis_of(s.formed.of_into))},
                   Open::kThrough);
}

Cutter keyway(const Sizes& s) {
  return way_along_hole(s, s.of("over") - s.hole("diameter") / 2, s.of("width"));
}

Cutter slit(const Sizes& s) {
  const Axis axis = axis_of(s.formed.side);
  const double reach = std::abs(s.side(s.formed.side) - s.hole(fmt::format("at {}", name_of(axis))));
  return way_along_hole(s, reach + kOverrun_mm, s.of("width"));
}

// Its round bottom runs along the hole.
Cutter oil_groove(const Sizes& s) {
  const double radius = s.of("radius");
  const Frame hole = in_hole(s);
  const double from =
      s.has("from end") ? std::abs(s.side(s.formed.of_into) - s.hole("starts at")) + s.of("from end") : 0.0;
  const double whole = s.across(axis_of(s.formed.of_into));
  const double length = s.has("length") ? s.of("length") : whole - from;
  const Vector off{s.hole("diameter") / 2 + s.of("depth") - radius, 0.0, from};
  const Open start = s.has("from end") ? Open::kNone : Open::kStart;
  return as_cutter(s, shape::Cylinder{hole.shifted(off), radius, length},
                   s.has("length") ? start : start | Open::kEnd);
}

}  // namespace

std::vector<Cutter> cutters_in_hole(const Sizes& s) {
  switch (s.formed.form) {
    case Form::kRecess:
      return {recess(s)};
    case Form::kKeyway:
      return {keyway(s)};
    case Form::kOilGroove:
      return {oil_groove(s)};
    default:
      return {slit(s)};
  }
}

}  // namespace sparewright::part
