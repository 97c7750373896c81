#include "core/judge/drill_work.hpp"

#include <algorithm>
#include <utility>

#include "core/judge/order.hpp"

namespace sparewright::judge {
namespace {

// The splits whose pieces are together again when a hole is made.
std::vector<std::string> joined_before(const Subject& subject, const std::string& feature) {
  std::vector<std::string> joined;
  for (const Step& step : steps_of(subject)) {
    if (!step.joins() && step.feature->name == feature) break;
    if (step.joins()) joined.push_back(step.feature->name);
  }
  return joined;
}

// A recipe without the cuts of some features.
std::shared_ptr<const shape::Recipe> without(const shape::Recipe& recipe,
                                             const std::vector<std::string>& names) {
  std::vector<shape::Cutter> cutters;
  for (const shape::Cut& cut : recipe.cuts()) {
    if (std::find(names.begin(), names.end(), cut.feature) == names.end())
      cutters.push_back({cut.feature, cut.nominal, cut.open});
  }
  auto made = shape::Recipe::make(recipe.blank(), cutters);
  return made ? std::make_shared<const shape::Recipe>(std::move(*made)) : nullptr;
}

std::shared_ptr<const shape::Recipe> recipe_with(ledger::Pen& pen, const Subject& subject,
                                                 const Drilling& drilling) {
  // The ledger keeps what it has published until the stage returns.
  const auto kept = [](const shape::Recipe& recipe) {
    return std::shared_ptr<const shape::Recipe>(std::shared_ptr<void>(), &recipe);
  };
  if (!drilling.setup) return kept(pen.need_value<shape::Recipe>(part::kRecipe));
  const auto path = route::recipe_path_after(subject.route.plan, drilling.setup->op);
  const auto& recipe = pen.need_value<shape::Recipe>(path ? *path : std::string(part::kRecipe));
  const std::vector<std::string> joined = joined_before(subject, drilling.feature.name);
  if (joined.empty()) return kept(recipe);
  const auto closed = without(recipe, joined);
  return closed ? closed : kept(recipe);
}

// From the other side of the work, the same way along.
shape::Frame from_behind(const shape::Frame& frame, double length_mm) {
  return shape::Frame::along(frame.origin + length_mm * frame.z, -frame.z);
}

bool comes_from_behind(const Drilling& drilling) {
  if (!drilling.setup || drilling.hole().depth) return false;
  return route::worked_side(*drilling.setup) == part::opposite(drilling.hole().into);
}

}  // namespace

std::span<const shop::Tool> Drilling::tools() const {
  if (work == nullptr) return {};
  return work->tools;
}

bool Drilling::uses(shop::ToolKind kind) const {
  const auto all = tools();
  return std::any_of(all.begin(), all.end(), [&](const shop::Tool& tool) { return tool.kind == kind; });
}

std::vector<Drilling> all_drillings(const Subject& subject) {
  std::vector<Drilling> all;
  for (const part::Feature& feature : subject.route.part.features) {
    if (std::holds_alternative<part::Hole>(feature.shape)) all.push_back({feature});
  }
  for (const Made& made : all_made(subject)) {
    const auto drilling =
        std::find_if(all.begin(), all.end(), [&](const Drilling& d) { return &d.feature == &made.feature; });
    if (drilling == all.end()) continue;
    drilling->setup = &made.setup;
    drilling->work = &made.work;
  }
  return all;
}

std::optional<DrillWork> drill_work(ledger::Pen& pen, const Subject& subject, const Drilling& drilling) {
  const std::shared_ptr<const shape::Recipe> recipe = recipe_with(pen, subject, drilling);
  const auto cuts = recipe->cuts();
  const auto own = std::find_if(cuts.begin(), cuts.end(),
                                [&](const shape::Cut& cut) { return cut.feature == drilling.feature.name; });
  if (own == cuts.end()) return std::nullopt;
  DrillWork work;
  work.recipe = recipe;
  work.cut = static_cast<std::size_t>(own - cuts.begin());
  work.frame = shape::frame_of(own->nominal);
  if (const auto* cylinder = std::get_if<shape::Cylinder>(&own->nominal)) {
    work.radius_mm = cylinder->radius_mm;
    work.length_mm = cylinder->height_mm;
  } else if (const auto* drilled = std::get_if<shape::DrilledHole>(&own->nominal)) {
    work.radius_mm = drilled->radius_mm;
    work.length_mm = drilled->depth_mm;
  } else {
    return std::nullopt;
  }
  if (comes_from_behind(drilling)) work.frame = from_behind(work.frame, work.length_mm);
  return work;
}

}  // namespace sparewright::judge
