#include "core/part/form_sizes.hpp"

#include <cmath>

#include <fmt/format.h>

#include "core/part/writing.hpp"

namespace sparewright::part {

using shape::Frame;
using shape::Open;
using shape::Vector;

double Sizes::of(std::string_view local) const {
  return ask(fmt::format("{}/{}", feature_path(feature.name), local));
}
double Sizes::side(Face face) const {
  return ask(blank_side_path(face));
}
double Sizes::across(Axis axis) const {
  return side(face_at(axis, true)) - side(face_at(axis, false));
}
double Sizes::middle(Axis axis) const {
  return side(face_at(axis, false)) + across(axis) / 2.0;
}
double Sizes::at(Axis axis) const {
  return of(fmt::format("at {}", name_of(axis)));
}
double Sizes::above() const {
  return std::abs(side(formed.side) - of("starts at"));
}
double Sizes::hole(std::string_view local) const {
  return ask(fmt::format("{}/{}", feature_path(formed.of), local));
}

Vector axis_vector(Axis axis) {
  Vector v;
  component(v, axis) = 1.0;
  return v;
}

shape::Cutter as_cutter(const Sizes& s, shape::Primitive nominal, Open open) {
  return {s.feature.name, std::move(nominal), open};
}

Frame on_side(const Sizes& s, Axis along) {
  Vector at;
  component(at, axis_of(s.formed.side)) = s.side(s.formed.side);
  for (const Axis axis : axes_in(s.formed.side))
    component(at, axis) = s.formed.at.contains(axis) ? s.at(axis) : s.middle(axis);
  return Frame::along({at.x, at.y, at.z}, -outward(s.formed.side), axis_vector(along));
}

Frame on_end(const Sizes& s) {
  return Frame::along({s.side(s.formed.side), s.middle(Axis::kY), s.middle(Axis::kZ)},
                      -outward(s.formed.side));
}

double outside(const Sizes& s) {
  return std::hypot(s.across(Axis::kY), s.across(Axis::kZ)) / 2 + shape::kOverrun_mm;
}

double depth_of(const Sizes& s) {
  return s.has("depth") ? s.above() + s.of("depth") : s.across(axis_of(s.formed.side));
}

Open open_of(const Sizes& s) {
  return s.has("depth") ? Open::kStart : Open::kThrough;
}

}  // namespace sparewright::part
