// A bush in its hole: whether it stays there, and what is left of its wall.
#include <algorithm>

#include <fmt/format.h>

#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;

// Thinner ones buckle as they are pressed in, and there is nothing to ream.
constexpr double kLeastBushWall_mm = 0.5;

void judge_grip(Pen& pen, const Subject& subject, const part::Feature& feature, bool is_bonded) {
  const route::Printing print(subject.route.system);
  const std::string path = part::feature_path(feature.name) + "/interference";
  const Figure& least = pen.ask(path + (is_bonded ? "/most" : "/least"));
  const Figure& nothing =
      limit(pen, "no interference", 0.0, Origin::kStandard, "the bush and its hole of one size");
  const std::string by = route::or_not_known(least, print.fine(std::abs(least.value)));
  const bool larger = least.value > 0.0;
  pen.judge({.check = is_bonded ? "bush leaves room for the compound" : "bush stays in its hole",
             .subject = feature.name,
             .figure = &least,
             .low = is_bonded ? nullptr : &nothing,
             .high = is_bonded ? &nothing : nullptr,
             .reason = fmt::format("at the limits the bush is {} {} than its hole", by,
                                   larger ? "larger" : "smaller"),
             .source = "plain geometry, at the limits of both sizes",
             .todo = is_bonded ? "make the bush smaller or the hole larger"
                               : "make the bush larger or the hole smaller",
             .margin = "grip margin"});
}

void judge_bush_wall(Pen& pen, const Subject& subject, const part::Feature& feature) {
  const route::Printing print(subject.route.system);
  const Figure& wall = pen.ask(part::feature_path(feature.name) + "/wall");
  pen.judge({.check = "bush has a wall",
             .subject = feature.name,
             .figure = &wall,
             .low = &limit(pen, "least wall allowed", kLeastBushWall_mm, Origin::kDefault,
                           "0.5 mm: a choice made here, without a source"),
             .reason = fmt::format("its wall is {} at the limits",
                                   route::or_not_known(wall, print.plain(wall.value))),
             .source = "plain geometry; 0.5 mm at least, a choice made here, without a source",
             .todo = "make its bore smaller or its outside larger",
             .margin = "wall margin"});
}

// A slit boss opens under a press fit instead of gripping.
void judge_slit_boss(Pen& pen, const part::Part& part, const part::Feature& feature,
                     const part::Formed& bush) {
  const auto slit = std::find_if(part.features.begin(), part.features.end(), [&](const part::Feature& other) {
    const auto* formed = std::get_if<part::Formed>(&other.shape);
    return formed != nullptr && formed->form == part::Form::kSlit && formed->of == bush.of;
  });
  if (slit == part.features.end()) return;
  pen.state({.check = "no press in a slit boss",
             .subject = feature.name,
             .state = ledger::State::kNo,
             .reason = fmt::format("{} cuts into {}: pressed in, the bush opens it and does not hold",
                                   slit->name, bush.of),
             .source = "common practice",
             .todo = "bond the bush, or let the clamp hold it",
             .missing = {}});
}

}  // namespace

void add_bush_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* formed = std::get_if<part::Formed>(&feature.shape);
    if (formed == nullptr || formed->form != part::Form::kBush) continue;
    stages.push_back(check_stage(subject, "bush", feature.name, [subject, feature, bush = *formed](Pen& pen) {
      judge_grip(pen, *subject, feature, bush.is_bonded);
      judge_bush_wall(pen, *subject, feature);
      if (!bush.is_bonded) judge_slit_boss(pen, subject->route.part, feature, bush);
    }));
  }
}

}  // namespace sparewright::judge
