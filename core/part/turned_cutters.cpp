// Diameters, tapers, grooves, knurls, crowned ends and centres: turned from an end of a bar.
#include <array>
#include <cmath>
#include <numbers>
#include <span>

#include "core/part/form_sizes.hpp"

namespace sparewright::part {
namespace {

using shape::Cutter;
using shape::Frame;
using shape::kOverrun_mm;
using shape::Open;

constexpr double kCentre_rad = std::numbers::pi / 3.0;  // 60 degrees included: common practice

// From the blank's end: in the air before it, or behind the chucking piece that is still there.
double start_of(const Sizes& s) {
  return s.formed.behind_piece ? s.above() : -kOverrun_mm;
}

// A half section between the outside air and a line of (radius, from the blank's end) that starts at the end.
Cutter turned_off(const Sizes& s, std::span<const shape::RoundedCorner> line) {
  const double far = outside(s);
  // Counterclockwise: out along the end, in from the far side, and back to the end along the line.
  std::vector<shape::RoundedCorner> corners;
  corners.push_back({{line.front().at.u, start_of(s)}});
  corners.push_back({{far, start_of(s)}});
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

Cutter ring(const Sizes& s, double from, double length, double radius) {
  return as_cutter(
      s, shape::TurnedBody{on_end(s), shape::rectangle({radius, from}, {outside(s), from + length})});
}

// What is turned for it; the ridges it raises are no cut.
std::vector<Cutter> knurl(const Sizes& s) {
  const double radius = s.of("diameter") / 2;
  const bool as_the_bar_is = 2.0 * radius >= s.across(Axis::kY) - shape::kShortestSide_mm;
  if (as_the_bar_is) return {};
  return {ring(s, s.above() + s.of("from end"), s.of("length"), radius)};
}

Cutter eccentric(const Sizes& s) {
  const double thrown = s.of("throw");
  Frame frame = on_end(s);
  frame.origin = frame.origin + thrown * outward(*s.formed.edge);
  const double far = outside(s) + thrown;
  return as_cutter(s, shape::TurnedBody{frame, shape::rectangle({s.of("diameter") / 2, start_of(s)},
                                                                {far, s.above() + s.of("length")})});
}

// Between the end's air and the ball, whose crown is the finished end.
Cutter crowned_end(const Sizes& s) {
  const double ball = s.of("radius");
  const double far = outside(s);
  const double start = s.above();
  const double rim = std::min(ball, far);
  const double drop = ball - std::sqrt(std::max(0.0, ball * ball - rim * rim));
  // Hollow towards the metal: the ball bulges out of it.
  const double bow = -std::tan(std::asin(rim / ball) / 4.0);
  shape::Contour contour;
  contour.push_back({{0.0, start - kOverrun_mm}, 0.0});
  contour.push_back({{far, start - kOverrun_mm}, 0.0});
  if (far > ball) contour.push_back({{far, start + drop}, 0.0});
  contour.push_back({{rim, start + drop}, bow});
  contour.push_back({{0.0, start}, 0.0});
  return as_cutter(s, shape::TurnedBody{on_end(s), contour});
}

}  // namespace

std::vector<Cutter> turned_cutters(const Sizes& s) {
  switch (s.formed.form) {
    case Form::kGroove:
      return {groove(s)};
    case Form::kTaper:
      return {taper(s)};
    case Form::kCentreHole:
      return centre_hole(s);
    case Form::kKnurl:
      return knurl(s);
    case Form::kEccentric:
      return {eccentric(s)};
    case Form::kCrownedEnd:
      return {crowned_end(s)};
    default:
      return {turned(s)};
  }
}

}  // namespace sparewright::part
