#include "core/part/hole_cutters.hpp"

#include <cmath>

#include <fmt/format.h>

#include "core/part/writing.hpp"
#include "core/shape/cutters.hpp"

namespace sparewright::part {
namespace {

using quantity::Diameter;
using quantity::Length;
using shape::Point;
using shape::Vector;

// The figures of one hole, and of the blank it goes into.
struct Figures {
  const Feature& feature;
  const Hole& hole;
  const Ask& ask;

  [[nodiscard]] double of(std::string_view local) const {
    return ask(fmt::format("{}/{}", feature_path(feature.name), local));
  }
  [[nodiscard]] double side(Face face) const { return ask(blank_side_path(face)); }
};

// The line a hole lies on: where it meets the side of the blank, and the way into the metal, length 1.
struct Line {
  Point entry;
  Vector into;
};

Vector turned(const Vector& v, const Vector& one, const Vector& other, double angle) {
  const double u = shape::dot(v, one);
  const double w = shape::dot(v, other);
  const double c = std::cos(angle);
  const double s = std::sin(angle);
  return v + (u * (c - 1.0) - w * s) * one + (w * (c - 1.0) + u * s) * other;
}

// Round the bar: from its top towards its back, always towards its middle.
Line round_the_bar(const Figures& f) {
  const Vector middle{0.0, (f.side(Face::kFront) + f.side(Face::kBack)) / 2.0,
                      (f.side(Face::kUnderside) + f.side(Face::kTop)) / 2.0};
  const double radius = f.side(Face::kTop) - middle.z;
  const Vector out = turned({0.0, 0.0, 1.0}, outward(Face::kTop), outward(Face::kBack), f.of("around bar"));
  const Vector at = middle + Vector{f.of("at x"), 0.0, 0.0} + radius * out;
  return {{at.x, at.y, at.z}, -out};
}

Line line_of(const Figures& f) {
  if (f.hole.around_bar) return round_the_bar(f);
  Vector at;
  component(at, axis_of(f.hole.into)) = f.side(f.hole.into);
  for (const Axis axis : axes_in(f.hole.into))
    component(at, axis) = f.of(fmt::format("at {}", name_of(axis)));
  Vector into = -outward(f.hole.into);
  if (f.hole.lean) into = turned(into, into, outward(f.hole.lean->towards), f.of("lean"));
  return {{at.x, at.y, at.z}, into};
}

// How far back along a leaning line a cutter has to start so that all of its width starts in air.
double run_up(const Figures& f, double diameter) {
  return f.hole.lean ? std::abs(std::tan(f.of("lean"))) * diameter / 2.0 : 0.0;
}

// From the entry, along the line, to where all of the cutter is out of the blank: no further than it is long.
double way_out(const Figures& f, const Line& line, double diameter) {
  if (!f.hole.lean) return std::abs(f.side(f.hole.into) - f.side(opposite(f.hole.into)));
  double reach = 0.0;
  for (const Face face : kFaces) {
    const double along = shape::dot(outward(face), line.into);
    if (along <= 1e-9) continue;
    const Vector entry = line.entry - Point{};
    const double away = std::abs(f.side(face) - component(entry, axis_of(face)));
    const double slope = std::sqrt(std::max(0.0, 1.0 - along * along)) / along;
    const double out = away / along + slope * diameter / 2.0;
    reach = reach == 0.0 ? out : std::min(reach, out);
  }
  return reach;
}

Point back_along(const Line& line, double distance) {
  return line.entry - distance * line.into;
}

shape::Cutter body(const Figures& f, const Line& line, double above) {
  const double diameter = f.of("diameter");
  const auto wide = Diameter::from_base(diameter);
  const double start = run_up(f, diameter);
  const Point from = back_along(line, start);
  if (!f.hole.depth)
    return shape::through_hole(f.feature.name, from, line.into, wide,
                               Length::from_base(start + way_out(f, line, diameter)));
  const auto depth = Length::from_base(start + above + f.of("depth"));
  return f.hole.make == HoleMake::kBored
             ? shape::flat_bottomed_hole(f.feature.name, from, line.into, wide, depth)
             : shape::drilled_hole(f.feature.name, from, line.into, wide, depth);
}

shape::Cutter counterbore(const Figures& f, const Line& line, double above) {
  const double diameter = f.of("counterbore diameter");
  const double start = run_up(f, diameter);
  return shape::flat_bottomed_hole(f.feature.name, back_along(line, start), line.into,
                                   Diameter::from_base(diameter),
                                   Length::from_base(start + above + f.of("counterbore depth")));
}

// Clearance up to the middle of the slit or split, where both drills run into air.
shape::Cutter near_part(const Figures& f, const Line& line) {
  const double way = std::abs(f.side(f.hole.into) - f.of("gap/middle"));
  return shape::flat_bottomed_hole(f.feature.name, line.entry, line.into,
                                   Diameter::from_base(f.of("diameter")), Length::from_base(way));
}

// The tap drill goes all the way; in the near part it lies in the clearance.
shape::Cutter far_part(const Figures& f, const Line& line, double above) {
  const auto drill = Diameter::from_base(f.of("tap drill"));
  if (!f.hole.depth)
    return shape::through_hole(f.feature.name, line.entry, line.into, drill,
                               Length::from_base(way_out(f, line, drill.base())));
  return shape::drilled_hole(f.feature.name, line.entry, line.into, drill,
                             Length::from_base(above + f.of("depth")));
}

// The cone goes on at its own slope up to the outside of the blank.
shape::Cutter countersink(const Figures& f, const Line& line, double above) {
  const double angle = f.of("countersink angle");
  const double start = above + run_up(f, f.of("countersink diameter"));
  return shape::countersink(
      f.feature.name, back_along(line, start - above), line.into,
      Diameter::from_base(f.of("countersink diameter") + 2.0 * start * std::tan(angle / 2.0)),
      quantity::Angle::from_base(angle));
}

}  // namespace

std::vector<shape::Cutter> hole_cutters(const Feature& feature, const Hole& hole, const Ask& ask) {
  const Figures f{feature, hole, ask};
  const Line line = line_of(f);
  // Along the line, from the outside of the blank to the surface the hole is measured from.
  const double square = std::abs(f.side(hole.into) - f.of("starts at"));
  const double above = hole.lean ? square / std::cos(f.of("lean")) : square;
  std::vector<shape::Cutter> cutters;
  cutters.push_back(hole.beyond ? near_part(f, line) : body(f, line, above));
  if (hole.counterbore) cutters.push_back(counterbore(f, line, above));
  if (hole.countersink) cutters.push_back(countersink(f, line, above));
  if (hole.beyond) cutters.push_back(far_part(f, line, above));
  return cutters;
}

}  // namespace sparewright::part
