// Whether a blind hole comes out in a slot, a pocket or another cut that is no hole. (The outside: wall.cpp; other holes:
// drill_meets.cpp.)
#include <algorithm>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/judge/drill_work.hpp"
#include "core/shape/ray.hpp"
#include "core/shape/wall.hpp"

namespace sparewright::judge {
namespace {

using ledger::Origin;
using ledger::Pen;

constexpr const char* kSource = "drill point: (D/2)/tan 59 degrees; the exact shapes at nominal size";

// The blind end, measured along the middle line from the blank's outside.
struct End {
  shape::Ray middle;
  double full_mm = 0.0;  // as far as it has its full diameter
  double tip_mm = 0.0;
};

std::optional<End> end_of(const shape::Primitive& body) {
  const shape::Frame& frame = shape::frame_of(body);
  if (const auto* drilled = std::get_if<shape::DrilledHole>(&body)) {
    const double point = shape::point_length_mm(drilled->radius_mm, drilled->point_rad);
    return End{{frame.origin, frame.z}, drilled->depth_mm, drilled->depth_mm + point};
  }
  if (const auto* bored = std::get_if<shape::Cylinder>(&body))
    return End{{frame.origin, frame.z}, bored->height_mm, bored->height_mm};
  return std::nullopt;
}

// How far along the middle line the other cut begins, where the end lies in it.
std::optional<double> comes_out_at_mm(const End& end, const shape::Primitive& other) {
  std::optional<double> at;
  shape::for_each_inside(other, end.middle, [&](const shape::Interval& in) {
    if (in.enter_mm < end.tip_mm - shape::kTouch_mm && in.exit_mm > end.tip_mm - shape::kTouch_mm)
      at = in.enter_mm;
  });
  return at;
}

void judge_out(Pen& pen, const route::Printing& print, const part::Feature& feature, const End& end,
               const std::string& other, double at_mm) {
  const auto& full = limit(pen, "full diameter to", end.full_mm, Origin::kStandard, "depth from the outside");
  const auto& opening =
      limit(pen, "comes out at", at_mm, Origin::kStandard, "by a ray along its middle line");
  const bool only_point = end.full_mm < at_mm;
  pen.judge({.check = "blind hole ends in metal",
             .subject = feature.name,
             .figure = &full,
             .low = &opening,
             .reason = only_point ? fmt::format("only its point comes out in {}, by {}", other,
                                                print.plain(end.tip_mm - at_mm))
                                  : fmt::format("it comes out in {}: see that it is meant to", other),
             .source = kSource,
             .todo = only_point ? fmt::format("drill {} less deep, or through into {}",
                                              print.plain(end.tip_mm - at_mm), other)
                                : "if it is not meant to, make it less deep",
             .close_at_best = true});
}

void judge_end(Pen& pen, const Subject& subject, const part::Feature& feature) {
  const auto& recipe = pen.need_value<shape::Recipe>(part::kRecipe);
  const auto own = std::find_if(recipe.cuts().begin(), recipe.cuts().end(),
                                [&](const shape::Cut& cut) { return cut.feature == feature.name; });
  const auto end = own == recipe.cuts().end() ? std::nullopt : end_of(own->nominal);
  if (!end) return;
  for (const shape::Cut& other : recipe.cuts()) {
    const auto at_mm = comes_out_at_mm(*end, other.body);
    // A cut it lies in from the very start is what it is drilled in.
    if (!at_mm || *at_mm <= shape::kTouch_mm) continue;
    const part::Feature* neighbour = part::find_feature(subject.route.part, other.feature);
    const bool is_hole = neighbour == nullptr || std::holds_alternative<part::Hole>(neighbour->shape);
    const auto* formed = is_hole ? nullptr : std::get_if<part::Formed>(&neighbour->shape);
    if (is_hole || (formed != nullptr && formed->of == feature.name)) continue;
    return judge_out(pen, route::Printing(subject.route.system), feature, *end, other.feature, *at_mm);
  }
}

}  // namespace

void add_blind_end_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    if (hole == nullptr || !hole->depth) continue;
    stages.push_back(check_stage(subject, "blind end", feature.name,
                                 [subject, feature](Pen& pen) { judge_end(pen, *subject, feature); }));
  }
}

}  // namespace sparewright::judge
