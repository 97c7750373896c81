// Least metal between each hole and everything it must not meet.
#include "core/shape/wall.hpp"

#include <cmath>
#include <limits>
#include <optional>
#include <variant>

#include <fmt/format.h>

#include "core/judge/ground.hpp"
#include "core/judge/least_wall.hpp"
#include "core/shape/cut_faults.hpp"
#include "core/shape/ray.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

// The thinnest place found so far.
struct Thinnest {
  double least_mm = std::numeric_limits<double>::infinity();
  bool only_at_least = true;  // proven thicker, not measured
  bool open = false;          // no wall: it runs out or into something
  std::size_t cut = 0;
  std::optional<std::size_t> other;  // the cut at the far end; none: the outside
  std::string towards;
  shape::Vector direction;  // from the hole towards the other surface, length 1; zero where not measured
};

// Which sides of the blank a hole is meant to open to.
bool meant_to_open(const part::Hole& hole, part::Face face) {
  return face == hole.into || (!hole.depth && face == part::opposite(hole.into));
}

void take(Thinnest& thinnest, const shape::Wall& wall, std::size_t cut, std::optional<std::size_t> other,
          std::string towards) {
  Thinnest found{std::numeric_limits<double>::infinity(), false, false, cut, other, std::move(towards), {}};
  switch (wall.kind) {
    case shape::WallKind::kNothingBetween:
      return;
    case shape::WallKind::kThickEnough:
      found.least_mm = wall.at_least_mm;
      found.only_at_least = true;
      break;
    case shape::WallKind::kMetal:
      found.least_mm = wall.least_mm;
      found.direction = shape::direction(wall.to - wall.from);
      break;
    case shape::WallKind::kTangent:
      found.least_mm = 0.0;
      break;
    case shape::WallKind::kOpen:
      found.least_mm = 0.0;
      found.open = true;
      break;
  }
  if (found.least_mm < thinnest.least_mm || found.open) thinnest = std::move(found);
}

// Where a hole goes in or comes out of a side that is not square to it, or of a flat of a hex bar, that side is open along
// a curve or in part: what counts is the metal beside the hole where it is thickest along it.
bool is_open_along_a_curve(const part::Part& part, const part::Hole& hole) {
  const bool sides_lean = part::is_bar(part.blank.shape) && part.blank.shape != part::BlankShape::kSquareBar;
  return hole.lean.has_value() || (sides_lean && part::axis_of(hole.into) != part::Axis::kX);
}

void look_beside(Thinnest& thinnest, const shape::Work& work, std::size_t cut) {
  const auto side = shape::side_metal(work, cut);
  if (!side || side->least_mm >= thinnest.least_mm) return;
  const shape::Frame& frame = shape::frame_of(work.cuts[cut].nominal);
  const shape::Vector from_axis =
      (side->at - frame.origin) - shape::dot(side->at - frame.origin, frame.z) * frame.z;
  const bool beside = shape::length_mm(from_axis) > shape::kTouch_mm;
  thinnest = {side->least_mm,
              false,
              side->least_mm < -shape::kTouch_mm,
              cut,
              std::nullopt,
              "the outside",
              beside ? shape::direction(from_axis) : shape::Vector{}};
}

// The side that a place on a cutter lies furthest beyond.
std::string side_most_broken(const shape::Recipe& recipe, const shape::Point& at,
                             const std::string& otherwise) {
  if (!std::holds_alternative<shape::Box>(recipe.blank().body)) return otherwise;
  const shape::Bounds blank = shape::bounds(recipe.blank().body);
  std::string side = otherwise;
  double furthest = 0.0;
  for (const part::Face face : part::kFaces) {
    const shape::Point& corner = part::at_greater_end(face) ? blank.high : blank.low;
    const double beyond = shape::dot(at - corner, part::outward(face));
    if (beyond <= furthest) continue;
    furthest = beyond;
    side = part::name_of(face);
  }
  return side;
}

void look_outside(Thinnest& thinnest, const part::Part& part, const Ground& ground, std::size_t cut,
                  const part::Hole& hole, double limit) {
  if (is_open_along_a_curve(part, hole)) return look_beside(thinnest, ground.recipe->work(), cut);
  for (const shape::FaceWall& towards : ground.near.walls_to_outside(cut, limit)) {
    const auto face = part::find_blank_face(towards.face);
    if (face && meant_to_open(hole, *face)) continue;
    if (thinnest.open) return;
    take(thinnest, towards.wall, cut, std::nullopt, face ? std::string(part::name_of(*face)) : "the outside");
    if (!thinnest.open) continue;
    if (const auto side = shape::side_metal(ground.recipe->work(), cut)) {
      thinnest.least_mm = std::min(0.0, side->least_mm);
      thinnest.towards = side_most_broken(*ground.recipe, side->at, thinnest.towards);
    }
  }
}

// A form that is cut in the hole, or that the middle of the hole goes through, is meant to meet it.
bool runs_through(const shape::Primitive& hole, const shape::Primitive& other, const part::Formed& formed,
                  const part::Feature& feature) {
  if (formed.of == feature.name) return true;
  const shape::Frame& frame = shape::frame_of(hole);
  bool through = false;
  shape::for_each_inside(hole, {frame.origin, frame.z}, [&](const shape::Interval& in_hole) {
    shape::for_each_inside(other, {frame.origin, frame.z}, [&](const shape::Interval& in_other) {
      through = through || (in_other.enter_mm < in_hole.exit_mm && in_hole.enter_mm < in_other.exit_mm);
    });
  });
  return through;
}

void look_at_others(Thinnest& thinnest, Pen& pen, const part::Part& part, const part::Feature& feature,
                    const part::Hole& hole, const Ground& ground, std::size_t cut, double limit) {
  const auto cuts = ground.recipe->cuts();
  for (const auto& [other, gap_mm] : ground.near.within(cut, limit)) {
    if (thinnest.open || gap_mm >= thinnest.least_mm) return;
    const std::string& name = cuts[other].feature;
    const part::Feature* neighbour = part::find_feature(part, name);
    const auto* flat = neighbour == nullptr ? nullptr : std::get_if<part::Flat>(&neighbour->shape);
    // A flat the hole starts or ends on is meant to meet it.
    if (flat != nullptr && !flat->region && meant_to_open(hole, flat->side)) continue;
    if (flat != nullptr && flat->region && meant_to_open(hole, flat->side)) {
      const part::Axis along = flat->region->along;
      const double wall = pen.need(part::at_path(name, along)).value;
      const double place = pen.need(part::at_path(feature.name, along)).value;
      if (flat->region->towards_greater == (place > wall)) continue;
    }
    if (neighbour != nullptr && std::holds_alternative<part::Formed>(neighbour->shape) &&
        runs_through(cuts[cut].body, cuts[other].body, std::get<part::Formed>(neighbour->shape), feature))
      continue;
    const shape::Wall wall = ground.near.wall_between(cut, other, std::min(limit, thinnest.least_mm));
    const bool is_hole = neighbour != nullptr && std::holds_alternative<part::Hole>(neighbour->shape);
    // Air that was in the blank is there to be met; of other holes drill_meets.cpp tells.
    if ((neighbour == nullptr || is_hole) && wall.kind == shape::WallKind::kOpen) continue;
    take(thinnest, wall, cut, other, name);
  }
}

// A measured wall, as it can turn out at worst. What is not known of the places is not known of the wall.
const Figure& wall_figure(Pen& pen, const HoleEnd& end, const std::optional<HoleEnd>& other,
                          const Thinnest& t) {
  const double value = t.least_mm - thinner_by_mm(pen, end, other, t.direction);
  std::vector<ledger::Term> terms{{&pen.need(end.size() + "/most"), -0.5}};
  for (const auto& [axis, position] : end.hole.at) {
    terms.push_back({&pen.need(part::at_path(end.name, axis)), -part::component(t.direction, axis)});
    if (other && other->hole.at.contains(axis))
      terms.push_back({&pen.need(part::at_path(other->name, axis)), part::component(t.direction, axis)});
  }
  return pen.linear(
      "least wall", Kind::kLength,
      fmt::format("least metal to {}, holes at their largest and out by their tolerances", t.towards), value,
      terms);
}

const Figure& thick_figure(Pen& pen, const HoleEnd& end, const std::optional<HoleEnd>& other,
                           const Thinnest& t) {
  ledger::Root root;
  root.kind = Kind::kLength;
  root.origin = Origin::kStandard;
  root.bound = t.only_at_least ? ledger::Bound::kAtLeast : ledger::Bound::kExact;
  root.value = t.open ? t.least_mm : t.least_mm - thinner_by_mm(pen, end, other, std::nullopt);
  root.source = t.only_at_least
                    ? "no wall is thinner, by the distance between the exact shapes less all tolerances"
                    : "by rays through the exact shapes";
  return pen.root("least wall", root);
}

// The hole at the far end of the wall; none where a flat or the outside is there.
std::optional<HoleEnd> far_end(const part::Part& part, const shape::Recipe& recipe, const Thinnest& t) {
  if (!t.other) return std::nullopt;
  const part::Feature* feature = part::find_feature(part, recipe.cuts()[*t.other].feature);
  const auto* hole = feature == nullptr ? nullptr : std::get_if<part::Hole>(&feature->shape);
  if (hole == nullptr) return std::nullopt;
  std::size_t first = *t.other;
  while (first > 0 && recipe.cuts()[first - 1].feature == feature->name)
    --first;
  return HoleEnd{feature->name, *hole, local_of_cut(*hole, *t.other - first)};
}

void judge_wall(Pen& pen, const Subject& subject, const part::Feature& feature, const part::Hole& hole) {
  const auto& ground = pen.need_value<Ground>(kGround);
  const shape::Recipe& recipe = *ground.recipe;
  const route::Printing print(subject.route.system);
  const Figure& allowed = least_wall_allowed(pen, subject);
  const double least = allowed.value;
  const HoleEnd end{feature.name, hole};
  // Proven thicker must mean thicker at the worst of all tolerances.
  const double of_interest =
      kOfInterest * least + thinner_by_mm(pen, end, std::nullopt, std::nullopt) + ground.most_out_mm;
  Thinnest thinnest;
  std::size_t first = recipe.cuts().size();
  for (std::size_t cut = 0; cut < recipe.cuts().size() && !thinnest.open; ++cut) {
    if (recipe.cuts()[cut].feature != feature.name) continue;
    if (!shape::reaches(recipe.blank().body, recipe.cuts()[cut].body))
      continue;  // `bite` says it cuts nothing
    first = std::min(first, cut);
    // What is thin beside it rules out most of the outside; but breaking out there counts more.
    look_at_others(thinnest, pen, subject.route.part, feature, hole, ground, cut, of_interest);
    Thinnest outside = thinnest.open ? Thinnest{} : thinnest;
    look_outside(outside, subject.route.part, ground, cut, hole, std::min(of_interest, outside.least_mm));
    if (outside.open || !thinnest.open) thinnest = outside;
  }
  if (!std::isfinite(thinnest.least_mm)) return;  // nothing lies beside it
  const bool measured =
      !thinnest.only_at_least && !thinnest.open && shape::length_mm(thinnest.direction) > 0.0;
  const HoleEnd here{feature.name, hole, local_of_cut(hole, thinnest.cut - first)};
  const std::optional<HoleEnd> there = far_end(subject.route.part, recipe, thinnest);
  const Figure& wall =
      measured ? wall_figure(pen, here, there, thinnest) : thick_figure(pen, here, there, thinnest);
  const std::string size = route::or_not_known(wall, print.plain(std::abs(wall.value)));
  std::string reason =
      fmt::format("{}{} of metal to {}", thinnest.only_at_least ? "at least " : "", size, thinnest.towards);
  if (thinnest.open) reason = fmt::format("it breaks out at {} by {}", thinnest.towards, size);
  pen.judge({.check = "least wall",
             .subject = feature.name,
             .figure = &wall,
             .low = &allowed,
             .reason = std::move(reason),
             .source = least_wall_source(subject),
             .todo = fmt::format("move it away from {}, or make it smaller", thinnest.towards)});
}

}  // namespace

void add_wall_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    if (!std::holds_alternative<part::Hole>(feature.shape)) continue;
    stages.push_back(check_stage(subject, "wall", feature.name, [subject, feature](Pen& pen) {
      judge_wall(pen, *subject, feature, std::get<part::Hole>(feature.shape));
    }));
  }
}

}  // namespace sparewright::judge
