// Whether there is still metal to cut when a feature's turn comes.
#include <algorithm>

#include <fmt/format.h>

#include "core/judge/order.hpp"
#include "core/shape/cut_faults.hpp"

namespace sparewright::judge {
namespace {

using ledger::Pen;

// Whether any of its cuts takes metal, as the recipe stands.
bool bites(const shape::Recipe& recipe, const std::string& feature) {
  bool has_cuts = false;
  for (std::size_t cut = 0; cut < recipe.cuts().size(); ++cut) {
    if (recipe.cuts()[cut].feature != feature) continue;
    has_cuts = true;
    if (shape::bite_of(recipe.work(), cut).taken == shape::Taken::kMetal) return true;
  }
  return !has_cuts;
}

void judge_turn(Pen& pen, const Subject& subject, const Step& step) {
  const auto path = route::recipe_path_after(subject.route.plan, step.setup->op);
  if (!path) return;
  const std::string& name = step.feature->name;
  if (bites(pen.need_value<shape::Recipe>(*path), name)) return;
  // Where it takes nothing in any order another check says so.
  if (!bites(pen.need_value<shape::Recipe>(part::kRecipe), name)) return;
  say(pen, {"it takes metal when its turn comes", name, ledger::State::kNo,
            fmt::format("in {} what it would cut is cut already", op_of(step)),
            "make it earlier, or leave it out"});
}

}  // namespace

void add_order_cut_checks(const Shared& subject, Stages& stages) {
  for (const Step& step : steps_of(*subject)) {
    if (step.joins()) continue;
    stages.push_back(check_stage(subject, "turn", step.feature->name,
                                 [subject, step](Pen& pen) { judge_turn(pen, *subject, step); }));
  }
}

}  // namespace sparewright::judge
