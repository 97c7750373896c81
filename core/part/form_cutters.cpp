// The cutters of formed features. Every contour that leaves the metal is carried on into the air by the overrun.
#include "core/part/form_cutters.hpp"

#include <array>
#include <cmath>
#include <numbers>
#include <span>

#include <fmt/format.h>

#include "core/part/part.hpp"

namespace sparewright::part {
namespace {

using shape::Cutter;
using shape::FlatPoint;
using shape::Frame;
using shape::kOverrun_mm;
using shape::Open;
using shape::Point;
using shape::Vector;

constexpr double kCentre_rad = std::numbers::pi / 3.0;  // 60 degrees included: common practice

// What the figures say of one feature, and of the blank it is cut from.
struct Sizes {
  const Feature& feature;
  const Formed& formed;
  const Ask& ask;

  [[nodiscard]] double of(std::string_view local) const {
    return ask(fmt::format("{}/{}", feature_path(feature.name), local));
  }
  [[nodiscard]] bool has(std::string_view size) const { return formed.sizes.contains(size); }
  [[nodiscard]] double side(Face face) const { return ask(fmt::format("blank/{}", name_of(face))); }
  [[nodiscard]] double across(Axis axis) const {
    return side(face_at(axis, true)) - side(face_at(axis, false));
  }
  [[nodiscard]] double at(Axis axis) const { return of(fmt::format("at {}", name_of(axis))); }
  // From the blank's outside to the surface the feature is measured from.
  [[nodiscard]] double above() const { return std::abs(side(formed.side) - of("starts at")); }
  [[nodiscard]] double hole(std::string_view local) const {
    return ask(fmt::format("{}/{}", feature_path(formed.of), local));
  }
};

Vector axis_vector(Axis axis) {
  Vector v;
  component(v, axis) = 1.0;
  return v;
}

Cutter as_cutter(const Sizes& s, shape::Primitive nominal, Open open = Open::kNone) {
  return {s.feature.name, std::move(nominal), open};
}

// --- milled from a side ------------------------------------------------------------------------------------------

// Local z leads into the metal, local x along the given axis; the origin lies on the blank's side, over the place.
Frame on_side(const Sizes& s, Axis along) {
  Vector at;
  component(at, axis_of(s.formed.side)) = s.side(s.formed.side);
  for (const Axis axis : axes_in(s.formed.side))
    component(at, axis) =
        s.formed.at.contains(axis) ? s.at(axis) : (s.side(face_at(axis, false)) + s.across(axis) / 2);
  return Frame::along({at.x, at.y, at.z}, -outward(s.formed.side), axis_vector(along));
}

double depth_of(const Sizes& s) {
  return s.has("depth") ? s.above() + s.of("depth") : s.across(axis_of(s.formed.side));
}
Open open_of(const Sizes& s) {
  return s.has("depth") ? Open::kStart : Open::kThrough;
}
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

// --- turned ------------------------------------------------------------------------------------------------------

// Local z leads along the bar's axis into the metal; the origin lies in the middle of the blank's end.
Frame on_end(const Sizes& s) {
  return Frame::along({s.side(s.formed.side), s.across(Axis::kY) / 2, s.across(Axis::kZ) / 2},
                      -outward(s.formed.side));
}

// Past the corners of any bar.
double outside(const Sizes& s) {
  return std::hypot(s.across(Axis::kY), s.across(Axis::kZ)) / 2 + kOverrun_mm;
}

// A half section between the outside air and a line of (radius, from the blank's end) that starts at the end.
Cutter turned_off(const Sizes& s, std::span<const shape::RoundedCorner> line) {
  const double far = outside(s);
  // Counterclockwise: out along the end, in from the far side, and back to the end along the line.
  std::vector<shape::RoundedCorner> corners;
  corners.push_back({{line.front().at.u, -kOverrun_mm}});
  corners.push_back({{far, -kOverrun_mm}});
  corners.push_back({{far, line.back().at.v}});
  for (std::size_t i = line.size(); i-- > 0;)
    corners.push_back(line[i]);
  return as_cutter(s, shape::TurnedBody{on_end(s), shape::rounded_contour(corners)});
}

Cutter turned(const Sizes& s) {
  const double fillet = s.has("fillet") ? s.of("fillet") : 0.0;
  const std::array line{shape::RoundedCorner{{s.of("diameter") / 2, s.above() + s.of("length")}, fillet}};
  return turned_off(s, line);
}

Cutter taper(const Sizes& s) {
  const double start = s.above();
  const std::array line{shape::RoundedCorner{{s.of("small diameter") / 2, start}},
                        shape::RoundedCorner{{s.of("large diameter") / 2, start + s.of("length")}}};
  return turned_off(s, line);
}

Cutter groove(const Sizes& s) {
  const double from = s.above() + s.of("from end");
  const double to = from + s.of("width");
  const double radius = s.of("diameter") / 2;
  return as_cutter(s, shape::TurnedBody{on_end(s), shape::rectangle({radius, from}, {outside(s), to})});
}

std::vector<Cutter> centre_hole(const Sizes& s) {
  const Frame frame = on_end(s);
  const double depth = s.of("diameter") / 2 / std::tan(kCentre_rad / 2);
  const double pilot = s.of("pilot") / 2;
  return {as_cutter(s,
                    shape::Cone{frame, s.of("diameter") / 2 + s.above() * std::tan(kCentre_rad / 2), 0.0,
                                s.above() + depth},
                    Open::kStart),
          as_cutter(s, shape::DrilledHole{frame, pilot, s.above() + depth}, Open::kStart)};
}

// --- edges -------------------------------------------------------------------------------------------------------

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

Cutter edge_off(const Sizes& s, double size, bool round) {
  return s.formed.edge ? along_edge(s, size, round) : round_rim(s, size, round);
}

// --- in a hole ---------------------------------------------------------------------------------------------------

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

}  // namespace

std::vector<Cutter> form_cutters(const Feature& feature, const Formed& formed, const Ask& ask) {
  const Sizes s{feature, formed, ask};
  switch (formed.form) {
    case Form::kSlot:
    case Form::kKeyseat:
      return {slot(s)};
    case Form::kPocket:
      return {pocket(s)};
    case Form::kChamfer:
      return {edge_off(s, s.of("size"), false)};
    case Form::kRoundedEdge:
      return {edge_off(s, s.of("radius"), true)};
    case Form::kTurned:
    case Form::kThread:
      return {turned(s)};
    case Form::kGroove:
      return {groove(s)};
    case Form::kTaper:
      return {taper(s)};
    case Form::kCentreHole:
      return centre_hole(s);
    case Form::kRecess:
      return {recess(s)};
    case Form::kKeyway:
      return {keyway(s)};
    case Form::kSlit:
      return {slit(s)};
  }
  return {};
}

}  // namespace sparewright::part
