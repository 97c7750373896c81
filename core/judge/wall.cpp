// Least metal between each hole and everything it must not meet.
#include "core/shape/wall.hpp"

#include <cmath>
#include <limits>

#include <fmt/format.h>

#include "core/judge/checks.hpp"
#include "core/shape/cut_faults.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

// Thinner walls bulge, break into burrs or collapse under a drill. Common practice: 1/16 in in metal.
constexpr double kLeastWall_mm = 25.4 / 16.0;
// Walls thicker than this many limits are only proven to be thicker.
constexpr double kOfInterest = 8.0;

// The thinnest place found so far.
struct Thinnest {
  double least_mm = std::numeric_limits<double>::infinity();
  bool only_at_least = true;  // proven thicker, not measured
  bool open = false;          // no wall: it runs out or into something
  std::size_t cut = 0;
  std::string towards;
  shape::Vector direction;  // from the hole towards the other surface, length 1; zero where not measured
};

// Which sides of the blank a hole is meant to open to.
bool meant_to_open(const part::Hole& hole, part::Face face) {
  return face == hole.into || (!hole.depth && face == part::opposite(hole.into));
}

// The shape room names a box's faces by axis.
std::optional<part::Face> face_of(std::string_view name) {
  constexpr std::array<std::string_view, 6> kNames{"x low", "x high", "y low", "y high", "z low", "z high"};
  for (std::size_t i = 0; i < kNames.size(); ++i) {
    if (kNames.at(i) == name) return part::kFaces.at(i);
  }
  return std::nullopt;
}

void take(Thinnest& thinnest, const shape::Wall& wall, std::size_t cut, std::string towards) {
  Thinnest found{std::numeric_limits<double>::infinity(), false, false, cut, std::move(towards), {}};
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

void look_outside(Thinnest& thinnest, const shape::Work& work, std::size_t cut, const part::Hole& hole,
                  double limit) {
  for (const shape::FaceWall& towards : shape::walls_to_outside(work, cut, limit)) {
    const auto face = face_of(towards.face);
    if (face && meant_to_open(hole, *face)) continue;
    if (thinnest.open) return;
    take(thinnest, towards.wall, cut, face ? std::string(part::name_of(*face)) : "the outside");
    if (!thinnest.open) continue;
    if (const auto side = shape::side_metal(work, cut)) thinnest.least_mm = std::min(0.0, side->least_mm);
  }
}

void look_at_others(Thinnest& thinnest, Pen& pen, const part::Part& part, const part::Feature& feature,
                    const part::Hole& hole, const shape::Work& work, std::size_t cut, double limit) {
  for (std::size_t other = 0; other < work.cuts.size() && !thinnest.open; ++other) {
    const std::string& name = work.cuts[other].feature;
    if (name == feature.name) continue;
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
    take(thinnest, shape::wall_between(work, cut, other, limit), cut, name);
  }
}

// The wall with the hole at its largest and out of place by its tolerance, towards the thin side.
const Figure& wall_figure(Pen& pen, const part::Feature& feature, const part::Hole& hole, const Thinnest& t,
                          bool is_counterbore) {
  const std::string path = part::feature_path(feature.name);
  const std::string size = is_counterbore ? path + "/counterbore diameter" : path + "/diameter";
  const Figure& nominal = pen.need(size);
  const Figure& most = pen.need(size + "/most");
  const double along = std::abs(shape::dot(t.direction, part::outward(hole.into)));
  const double sideways = std::sqrt(std::max(0.0, 1.0 - along * along));
  double value = t.least_mm - sideways * (most.value - nominal.value) / 2.0;
  std::vector<ledger::Term> terms{{&most, -sideways / 2.0}};
  for (const auto& [axis, position] : hole.at) {
    const std::string place = fmt::format("{}/{}", path, part::name_of(axis));
    const double lean = std::abs(part::component(t.direction, axis));
    value -= lean * (pen.need(place + "/most").value - pen.need(place + "/least").value) / 2.0;
    terms.push_back({&pen.need(part::at_path(feature.name, axis)), -part::component(t.direction, axis)});
  }
  return pen.linear("least wall", Kind::kLength,
                    fmt::format("least metal to {}, hole at its largest and out by its tolerance", t.towards),
                    value, terms);
}

const Figure& thick_figure(Pen& pen, const Thinnest& t) {
  ledger::Root root;
  root.kind = Kind::kLength;
  root.origin = Origin::kStandard;
  root.bound = t.only_at_least ? ledger::Bound::kAtLeast : ledger::Bound::kExact;
  root.value = t.least_mm;
  root.source = t.only_at_least ? "no wall is thinner, by the distance between the exact shapes"
                                : "by rays through the exact shapes";
  return pen.root("least wall", root);
}

void judge_wall(Pen& pen, const Subject& subject, const part::Feature& feature, const part::Hole& hole) {
  const auto& recipe = pen.need_value<shape::Recipe>(part::kRecipe);
  const route::Printing print(subject.route.system);
  const double least = subject.least_wall ? subject.least_wall->base : kLeastWall_mm;
  const Figure& allowed =
      limit(pen, "least allowed", least, subject.least_wall ? Origin::kChoice : Origin::kDefault,
            subject.least_wall ? "the job's least wall" : "1/16 in, common practice",
            subject.least_wall ? subject.least_wall->typed : std::string());
  Thinnest thinnest;
  std::size_t first = recipe.cuts().size();
  for (std::size_t cut = 0; cut < recipe.cuts().size() && !thinnest.open; ++cut) {
    if (recipe.cuts()[cut].feature != feature.name) continue;
    first = std::min(first, cut);
    look_outside(thinnest, recipe.work(), cut, hole, kOfInterest * least);
    if (!thinnest.open) {
      look_at_others(thinnest, pen, subject.route.part, feature, hole, recipe.work(), cut,
                     kOfInterest * least);
    }
  }
  if (!std::isfinite(thinnest.least_mm)) return;  // nothing lies beside it
  const bool measured =
      !thinnest.only_at_least && !thinnest.open && shape::length_mm(thinnest.direction) > 0.0;
  const Figure& wall = measured ? wall_figure(pen, feature, hole, thinnest, thinnest.cut != first)
                                : thick_figure(pen, thinnest);
  const std::string size = route::or_not_known(wall, print.plain(std::abs(wall.value)));
  std::string reason =
      fmt::format("{}{} of metal to {}", thinnest.only_at_least ? "at least " : "", size, thinnest.towards);
  if (thinnest.open) reason = fmt::format("it breaks out at {} by {}", thinnest.towards, size);
  pen.judge({.check = "least wall",
             .subject = feature.name,
             .figure = &wall,
             .low = &allowed,
             .reason = std::move(reason),
             .source = subject.least_wall ? "the job's least wall" : "common practice: 1/16 in",
             .todo = fmt::format("move it away from {}, or make it smaller", thinnest.towards)});
}

}  // namespace

void add_wall_checks(const Subject& subject, Stages& stages) {
  for (const part::Feature& feature : subject.route.part.features) {
    if (!std::holds_alternative<part::Hole>(feature.shape)) continue;
    stages.push_back(check_stage(subject, "wall", feature.name, [subject, feature](Pen& pen) {
      judge_wall(pen, subject, feature, std::get<part::Hole>(feature.shape));
    }));
  }
}

}  // namespace sparewright::judge
