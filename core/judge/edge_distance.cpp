// How far the middle of a hole that takes a screw or a pin is from the nearest free edge, in diameters of the hole.
#include <cmath>
#include <limits>
#include <string>

#include <fmt/format.h>

#include "core/judge/ground.hpp"
#include "core/shape/wall.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

// Common practice in metal: one and a half diameters and nothing is thought of it; under one, the edge bulges or tears.
constexpr double kEasy = 1.5;
constexpr double kLeast = 1.0;
constexpr double kRim = 0.5;  // the hole's own: a pin is never refused for its edge, only for none
constexpr const char* kSource =
    "common practice: 1-1/2 diameters from middle to edge, 1 diameter at the least; the load is not known "
    "here";
// A bored hole is a bearing's or a shaft's, held in a ring and not by its edge. Common practice: a boss is one and a half
// times its bore at the least.
constexpr double kEasyBoss = 0.75;
constexpr const char* kBossSource =
    "common practice: a boss is 1-1/2 times its bore, 3/4 of a diameter from middle to edge; the load is not "
    "known here";

bool takes_something(const part::Hole& hole) {
  return hole.screw || !hole.thread.empty() || !hole.mate.empty() ||
         std::holds_alternative<part::OnMate>(hole.diameter.size);
}

// A screw's hole is worth its own strength; how light a ring round a pin may be is for the load to say. A screw that pulls a
// slit or a split together pulls along itself: nothing pushes it at the edge.
bool takes_a_screw(const part::Hole& hole) {
  if (hole.beyond) return false;
  return hole.screw || !hole.thread.empty();
}

struct Rule {
  double easy = kEasy;  // nothing is thought of it from so many diameters on
  double least = kRim;
  const char* source = kSource;
};

Rule rule_of(const part::Hole& hole) {
  if (takes_a_screw(hole)) return {kEasy, kLeast, kSource};
  if (hole.make == part::HoleMake::kBored) return {kEasyBoss, kRim, kBossSource};
  return {kEasy, kRim, kSource};
}

struct Edge {
  double to_middle_mm = std::numeric_limits<double>::infinity();
  std::string of;
};

void take(Edge& edge, const shape::Wall& wall, double radius_mm, const std::string& of) {
  const bool is_wall = wall.kind == shape::WallKind::kMetal || wall.kind == shape::WallKind::kTangent;
  if (is_wall && wall.least_mm + radius_mm < edge.to_middle_mm) edge = {wall.least_mm + radius_mm, of};
}

// Beside the hole the outside and every cut that is no hole are edges; a wall that leads along the hole is a floor.
bool lies_beside(const shape::Wall& wall, const part::Hole& hole) {
  if (!(shape::distance_mm(wall.from, wall.to) > 0.0)) return true;
  constexpr double kFortyFive = 0.7071067811865476;
  return std::abs(shape::dot(shape::direction(wall.to - wall.from), part::outward(hole.into))) < kFortyFive;
}

// What is cut off square to the hole, over the whole side: its mouth or its far end, and no edge beside it.
bool is_an_end_of(const part::Hole& hole, const part::Feature& feature) {
  const auto along = part::axis_of(hole.into);
  if (const auto* flat = std::get_if<part::Flat>(&feature.shape))
    return !flat->region && part::axis_of(flat->side) == along;
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  return formed != nullptr && formed->form == part::Form::kChuckingPiece &&
         part::axis_of(formed->side) == along;
}

Edge nearest_edge(const part::Part& part, const Ground& ground, std::size_t cut, const part::Hole& hole,
                  double radius_mm) {
  const double of_interest = 2 * kEasy * radius_mm;
  Edge edge;
  for (const shape::FaceWall& outside : ground.near.walls_to_outside(cut, of_interest)) {
    const auto face = part::find_blank_face(outside.face);
    if (face && part::axis_of(*face) == part::axis_of(hole.into)) continue;  // its mouth or its far end
    if (lies_beside(outside.wall, hole))
      take(edge, outside.wall, radius_mm, face ? std::string(part::name_of(*face)) : "the outside");
  }
  for (const auto& [other, gap_mm] : ground.near.within(cut, of_interest)) {
    const part::Feature* feature = part::find_feature(part, ground.recipe->cuts()[other].feature);
    if (feature == nullptr || std::holds_alternative<part::Hole>(feature->shape)) continue;
    if (is_an_end_of(hole, *feature)) continue;
    const shape::Wall wall = ground.near.wall_between(cut, other, of_interest);
    if (lies_beside(wall, hole)) take(edge, wall, radius_mm, feature->name);
  }
  return edge;
}

void judge_distance(Pen& pen, const Subject& subject, const part::Feature& feature, const part::Hole& hole) {
  const auto& ground = pen.need_value<Ground>(kGround);
  const shape::Recipe& recipe = *ground.recipe;
  const Figure& diameter = pen.need(part::feature_path(feature.name) + "/diameter");
  std::size_t cut = 0;
  while (cut < recipe.cuts().size() && recipe.cuts()[cut].feature != feature.name)
    ++cut;
  if (cut == recipe.cuts().size()) return;
  const Edge edge = nearest_edge(subject.route.part, ground, cut, hole, diameter.value / 2);
  if (std::isinf(edge.to_middle_mm)) return;  // nothing near, or it breaks out, which the walls tell
  const route::Printing print(subject.route.system);
  const Figure& way = limit(pen, "to edge", edge.to_middle_mm, Origin::kStandard,
                            fmt::format("by rays from its middle to {}, at nominal size", edge.of));
  const Rule rule = rule_of(hole);
  const bool is_easy = edge.to_middle_mm >= rule.easy * diameter.value;
  const double asked = is_easy ? rule.easy : rule.least;
  const Figure& least = pen.work(
      "least to edge", Kind::kLength, fmt::format("{} diameters", asked),
      [asked](auto d) { return asked * d; }, diameter);
  pen.judge(
      {.check = "edge distance",
       .subject = feature.name,
       .figure = &way,
       .low = &least,
       .reason = fmt::format("{} from its middle to {}, {:.2f} diameters", print.plain(edge.to_middle_mm),
                             edge.of, edge.to_middle_mm / diameter.value),
       .source = rule.source,
       .todo = fmt::format("move it {} further in, or leave more metal there",
                           print.plain(rule.easy * diameter.value - edge.to_middle_mm)),
       .close_at_best = !is_easy});
}

}  // namespace

void add_edge_distance_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    if (hole == nullptr || !takes_something(*hole)) continue;
    if (part::is_on_axis(*hole)) continue;  // metal all round it: that is a wall
    stages.push_back(check_stage(subject, "edge distance", feature.name, [subject, feature](Pen& pen) {
      judge_distance(pen, *subject, feature, std::get<part::Hole>(feature.shape));
    }));
  }
}

}  // namespace sparewright::judge
