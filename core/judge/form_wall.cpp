// Least metal beside slots, pockets, keyseats, grooves and the like, at nominal size.
#include <algorithm>
#include <cmath>
#include <limits>

#include <fmt/format.h>

#include "core/judge/ground.hpp"
#include "core/judge/least_wall.hpp"
#include "core/shape/cut_faults.hpp"
#include "core/shape/wall.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Pen;
using part::Form;

// The sides a form is meant to open to; none said: it opens where it will, and the outside says nothing.
std::optional<std::vector<part::Face>> opens_to(const part::Formed& formed) {
  switch (formed.form) {
    case Form::kSlot:
    case Form::kPocket:
    case Form::kKeyseat: {
      if (formed.form == Form::kSlot && !formed.sizes.contains("length")) return std::nullopt;
      std::vector<part::Face> faces{formed.side};
      if (!formed.sizes.contains("depth")) faces.push_back(part::opposite(formed.side));
      if (formed.form == Form::kKeyseat) {  // it may run out at an end
        faces.push_back(part::Face::kLeftEnd);
        faces.push_back(part::Face::kRightEnd);
      }
      return faces;
    }
    case Form::kTaperPinHole:
    case Form::kSpringPinHole:
      return std::vector<part::Face>{formed.side, part::opposite(formed.side)};
    case Form::kDimple:
      return std::vector<part::Face>{formed.side};
    case Form::kRecess:
      return std::vector<part::Face>{};
    case Form::kKeyway:
      return std::vector{formed.of_into, part::opposite(formed.of_into)};
    default:
      return std::nullopt;
  }
}

struct Least {
  double wall_mm = std::numeric_limits<double>::infinity();
  std::string towards;
  bool open = false;
};

void take(Least& least, const shape::Wall& wall, const std::string& towards, bool may_be_open) {
  const bool is_wall = wall.kind == shape::WallKind::kMetal || wall.kind == shape::WallKind::kTangent;
  const bool breaks_out = wall.kind == shape::WallKind::kOpen && !may_be_open;
  if (!is_wall && !breaks_out) return;
  const double wall_mm = is_wall ? wall.least_mm : 0.0;
  if (wall_mm < least.wall_mm || breaks_out) least = {wall_mm, towards, breaks_out};
}

// Both its ends open along a curve: what counts is the metal beside it where it is thickest along it.
bool is_pin_through_a_bar(const Ground& ground, const part::Formed& formed) {
  const bool is_pin = formed.form == Form::kTaperPinHole || formed.form == Form::kSpringPinHole;
  return is_pin && part::axis_of(formed.side) != part::Axis::kX &&
         std::holds_alternative<shape::Cylinder>(ground.recipe->blank().body);
}

void take_beside(Least& least, const shape::Work& work, std::size_t cut) {
  const auto side = shape::side_metal(work, cut);
  if (side && side->least_mm < least.wall_mm)
    least = {std::max(0.0, side->least_mm), "the outside", side->least_mm < -shape::kTouch_mm};
}

Least least_beside(const Ground& ground, const part::Feature& feature, const part::Formed& formed,
                   double of_interest) {
  Least least;
  const auto open_sides = opens_to(formed);
  const auto cuts = ground.recipe->cuts();
  for (std::size_t cut = 0; cut < cuts.size(); ++cut) {
    if (cuts[cut].feature != feature.name) continue;
    for (const auto& [other, gap_mm] : ground.near.within(cut, of_interest)) {
      if (gap_mm >= least.wall_mm) break;
      take(least, ground.wall_of_pair(cut, other, of_interest), cuts[other].feature, true);
    }
    if (!open_sides) continue;
    if (is_pin_through_a_bar(ground, formed)) {
      take_beside(least, ground.recipe->work(), cut);
      continue;
    }
    for (const shape::FaceWall& outside : ground.near.walls_to_outside(cut, of_interest)) {
      const auto face = part::find_blank_face(outside.face);
      // A keyseat opens to the round side it is cut into.
      const bool meant = face ? std::find(open_sides->begin(), open_sides->end(), *face) != open_sides->end()
                              : !open_sides->empty();
      if (!meant) take(least, outside.wall, face ? std::string(part::name_of(*face)) : "the outside", false);
    }
  }
  return least;
}

void judge_form_wall(Pen& pen, const Subject& subject, const part::Feature& feature,
                     const part::Formed& formed) {
  const auto& ground = pen.need_value<Ground>(kGround);
  const route::Printing print(subject.route.system);
  const Figure& allowed = least_wall_allowed(pen, subject);
  const Least least = least_beside(ground, feature, formed, kOfInterest * allowed.value);
  if (!std::isfinite(least.wall_mm)) return;  // nothing thin lies beside it
  ledger::Root root;
  root.kind = quantity::Kind::kLength;
  root.origin = ledger::Origin::kStandard;
  root.value = least.wall_mm;
  root.source = "by rays through the exact shapes at nominal size";
  const Figure& wall = pen.root("least wall", root);
  pen.judge({.check = "least wall",
             .subject = feature.name,
             .figure = &wall,
             .low = &allowed,
             .reason = least.open ? fmt::format("it breaks out at {}", least.towards)
                                  : fmt::format("{} of metal to {}, at nominal size", print.plain(wall.value),
                                                least.towards),
             .source = least_wall_source(subject),
             .todo = fmt::format("move it away from {}, or make it smaller", least.towards)});
}

}  // namespace

void add_form_wall_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* formed = std::get_if<part::Formed>(&feature.shape);
    if (formed == nullptr) continue;
    stages.push_back(check_stage(
        subject, "wall", feature.name,
        [subject, feature, formed = *formed](Pen& pen) { judge_form_wall(pen, *subject, feature, formed); }));
  }
}

}  // namespace sparewright::judge
