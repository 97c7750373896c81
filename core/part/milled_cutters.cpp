// Slots, pockets, keyseats, dovetails, seats and splits: cut from a side of the work.
#include <array>
#include <cmath>

#include "core/part/form_sizes.hpp"

namespace sparewright::part {
namespace {

using shape::Cutter;
using shape::FlatPoint;
using shape::Frame;
using shape::kOverrun_mm;
using shape::Open;
using shape::Point;
using shape::Vector;

Axis along_of(const Sizes& s) {
  return s.formed.along.value_or(axes_in(s.formed.side)[0]);
}

Cutter slot(const Sizes& s) {
  const Axis along = along_of(s);
  const Frame frame = on_side(s, along);
  const double width = s.of("width");
  if (!s.has("length")) {  // open at both ends: from side to side of the blank
    const double reach = s.across(along) + kOverrun_mm;
    return as_cutter(
        s,
        shape::ProfiledBody{frame, shape::rectangle({-reach, -width / 2}, {reach, width / 2}), depth_of(s)},
        open_of(s));
  }
  const double half = (s.of("length") - width) / 2;
  const shape::Contour contour = half > 0.0 ? shape::slot_contour({-half, 0.0}, {half, 0.0}, width)
                                            : shape::circle({0.0, 0.0}, width / 2);
  return as_cutter(s, shape::ProfiledBody{frame, contour, depth_of(s)}, open_of(s));
}

Cutter pocket(const Sizes& s) {
  const double u = s.of("length") / 2;
  const double v = s.of("width") / 2;
  const double r = s.of("corner radius");
  const std::array corners{shape::RoundedCorner{{-u, -v}, r}, shape::RoundedCorner{{u, -v}, r},
                           shape::RoundedCorner{{u, v}, r}, shape::RoundedCorner{{-u, v}, r}};
  return as_cutter(s,
                   shape::ProfiledBody{on_side(s, along_of(s)), shape::rounded_contour(corners), depth_of(s)},
                   open_of(s));
}

// The mouth is the narrow end.
Cutter dovetail(const Sizes& s) {
  const Axis along = along_of(s);
  const double depth = depth_of(s);
  const double mouth = s.of("width") / 2;
  const double slope = 1.0 / std::tan(s.of("angle"));  // sideways for each mm of depth
  const double bottom = mouth + s.of("depth") * slope;
  const double top = bottom - (depth + kOverrun_mm) * slope;
  // u across, v into the metal, z along the way.
  const Frame side = on_side(s, along);
  const double length = s.across(along);
  Vector start = side.origin - Point{};
  component(start, along) = s.side(face_at(along, false));
  const Frame frame =
      Frame::along({start.x, start.y, start.z}, axis_vector(along), shape::cross(side.z, axis_vector(along)));
  const std::array section{FlatPoint{-top, -kOverrun_mm}, FlatPoint{top, -kOverrun_mm},
                           FlatPoint{bottom, depth}, FlatPoint{-bottom, depth}};
  return as_cutter(s, shape::ProfiledBody{frame, shape::straight_contour(section), length}, Open::kThrough);
}

Cutter dimple(const Sizes& s) {
  const double depth = s.above() + s.of("depth");
  return as_cutter(s, shape::Cone{on_side(s, along_of(s)), depth * std::tan(s.of("angle") / 2), 0.0, depth},
                   Open::kStart);
}

Cutter pin_hole(const Sizes& s, double taper) {
  const double through = s.across(axis_of(s.formed.side));
  const double large = s.of("diameter") / 2 + s.above() * taper / 2;
  return as_cutter(s, shape::Cone{on_side(s, along_of(s)), large, large - through * taper / 2, through},
                   Open::kThrough);
}

Cutter straight_pin_hole(const Sizes& s) {
  return as_cutter(
      s, shape::Cylinder{on_side(s, along_of(s)), s.of("diameter") / 2, s.across(axis_of(s.formed.side))},
      Open::kThrough);
}

// A slab through the whole blank. far: from the blank's side to its far face; near: to the near one.
Cutter slab(const Sizes& s, double near, double far, Open open) {
  const Axis axis = axis_of(s.formed.side);
  const Vector in = -outward(s.formed.side);
  Vector low;
  Vector high;
  for (const Axis one : kAxes) {
    component(low, one) = s.side(face_at(one, false));
    component(high, one) = s.side(face_at(one, true));
    if (one != axis) open = open | open_side(face_at(one, false)) | open_side(face_at(one, true));
  }
  const double a = s.side(s.formed.side) + near * component(in, axis);
  const double b = s.side(s.formed.side) + far * component(in, axis);
  component(low, axis) = std::min(a, b);
  component(high, axis) = std::max(a, b);
  return as_cutter(s, shape::Box{Frame{}.shifted(low), high - low}, open);
}

Cutter split(const Sizes& s) {
  const double near = s.above() + s.of("from side");
  return slab(s, near, near + s.of("width"), Open::kNone);
}

Cutter chucking_piece(const Sizes& s) {
  return slab(s, 0.0, s.of("length"), open_side(s.formed.side));
}

}  // namespace

std::vector<Cutter> milled_cutters(const Sizes& s) {
  switch (s.formed.form) {
    case Form::kPocket:
      return {pocket(s)};
    case Form::kDovetail:
      return {dovetail(s)};
    case Form::kDimple:
      return {dimple(s)};
    case Form::kTaperPinHole:
      return {pin_hole(s, s.of("taper"))};
    case Form::kSpringPinHole:
      return {straight_pin_hole(s)};
    case Form::kSplit:
      return {split(s)};
    case Form::kChuckingPiece:
      return {chucking_piece(s)};
    default:
      return {slot(s)};
  }
}

}  // namespace sparewright::part
