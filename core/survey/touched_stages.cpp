#include "core/survey/touched_stages.hpp"

#include <algorithm>
#include <map>
#include <memory>
#include <numbers>
#include <utility>

#include <fmt/format.h>

#include "core/quantity/typed_system.hpp"
#include "core/survey/between.hpp"
#include "core/survey/corrected.hpp"
#include "core/survey/pattern_work.hpp"
#include "core/survey/touched_form.hpp"

namespace sparewright::survey {
namespace {

using ledger::Pen;
using ledger::Root;
using ledger::Stage;

constexpr std::string_view kAxes = "xyz";

template <typename Named>
std::vector<Named> by_name(std::vector<Named> list) {
  std::sort(list.begin(), list.end(), [](const Named& a, const Named& b) { return a.name < b.name; });
  return list;
}

template <typename Named>
const Named& named(const std::vector<Named>& list, std::string_view name) {
  return *std::find_if(list.begin(), list.end(), [&](const Named& one) { return one.name == name; });
}

// JCGM 100:2008, 4.3.7: a rectangular distribution of half-width a has the standard deviation a/sqrt(3).
double of_rectangle(double half_width) {
  return half_width * std::numbers::inv_sqrt3;
}

std::optional<double> turn_of(const Instrument& instrument) {
  return instrument.turn ? std::optional(instrument.turn->base) : std::nullopt;
}

// One stage that writes roots.
Stage roots_stage(std::string name, std::map<std::string, Root> roots) {
  base::Hasher h;
  h.add(name);
  for (const auto& [local, root] : roots) {
    h.add(local).add(static_cast<int>(root.kind)).add(*root.value).add(root.typed).add(root.source);
    h.add(static_cast<std::uint64_t>(root.shares.size()));
    for (const ledger::Share& share : root.shares)
      h.add(share.cause.text()).add(share.amount).add(share.degrees_of_freedom);
  }
  return {std::move(name), h.done(), [roots = std::move(roots)](Pen& pen) {
            for (const auto& [local, root] : roots)
              pen.root(local, root);
          }};
}

std::string touch_name(const Touched& touched, std::size_t touch, std::size_t axis) {
  return fmt::format("{}/{} {}", touched.name, touch + 1, kAxes[axis]);
}

Root touch_root(const Touched& touched, const Instrument& instrument, std::size_t touch, std::size_t axis) {
  const quantity::Typed& at = touched.touches[touch][axis];
  const ZeroError zero = zero_error_of(instrument, Jaws::kOutside);
  const std::string own = "touch/" + touch_name(touched, touch, axis);
  Root root;
  root.kind = quantity::Kind::kLength;
  root.value = at.base - zero.found;
  root.shares = {{own + "/good to", of_rectangle(instrument.good_to.base)},
                 {own + "/resolution", of_rectangle(instrument.reads.base / 2.0)},
                 {axis_zero_cause(instrument.name, axis), of_rectangle(zero.within)}};
  if (touched.tip.finds)
    root.shares.push_back({own + "/found by the tip", of_rectangle(touched.tip.finds->base())});
  root.typed = at.typed;
  root.source =
      fmt::format("{}, {} where the tip stood at touch {}", instrument.name, kAxes[axis], touch + 1);
  if (!touched.place.empty()) root.source += ", at: " + touched.place;
  if (zero.found != 0.0) root.source += "; less " + zero.typed + ", its reading at zero";
  return root;
}

Root tip_root(const Tip& tip) {
  Root root;
  root.kind = quantity::Kind::kDiameter;
  root.value = tip.diameter.base;
  if (tip.within) root.shares = {{"tip/" + tip.name + "/diameter", of_rectangle(tip.within->base)}};
  root.typed = tip.diameter.typed;
  root.source = tip.within
                    ? fmt::format("diameter of the tip, good to {}", tip.within->typed)
                    : std::string("diameter of the tip, taken as exact: nobody stated what it is good to");
  return root;
}

FormPlan plan_of(const Touched& touched, const Instrument& instrument, quantity::UnitSystem system) {
  FormPlan plan{touched.name, touched.form, touched.side,     told_of(touched), "tip/" + touched.tip.name,
                {},           system,       touched.condition};
  for (std::size_t i = 0; i < touched.touches.size(); ++i) {
    auto& at = plan.coordinates.emplace_back();
    for (std::size_t axis = 0; axis < touched.touches[i].size(); ++axis)
      at.push_back("touch/" + touch_name(touched, i, axis));
  }
  const bool is_metric =
      quantity::system_of(touched.touches.front().front()) == quantity::UnitSystem::kMetric;
  plan.turns = usual_turns(instrument.kind, turn_of(instrument), is_metric);
  return plan;
}

Stage form_stage(const Touched& touched, const Instrument& instrument, quantity::UnitSystem system) {
  FormPlan plan = plan_of(touched, instrument, system);
  base::Hasher h;
  h.add("touched").add(plan.name).add(static_cast<int>(plan.form)).add(static_cast<int>(plan.side));
  h.add(plan.tip).add(static_cast<std::uint64_t>(plan.coordinates.size())).add(static_cast<int>(system));
  h.add(static_cast<int>(plan.condition));
  for (const Turn& turn : plan.turns)
    h.add(turn.of).add(turn.by).add(turn.rank);
  return {"touched/" + touched.name, h.done(), [plan = std::move(plan)](Pen& pen) { write_form(plan, pen); }};
}

Stage between_stage(const Between& between, const std::vector<Touched>& forms) {
  const auto form_of = [&](const std::string& name) {
    const Touched& form = named(forms, name);
    return BetweenForm{form.name, form.form, form.side};
  };
  const BetweenForm first = form_of(between.first);
  const BetweenForm second = form_of(between.second);
  base::Hasher h;
  h.add("between").add(between.name);
  for (const BetweenForm& form : {first, second})
    h.add(form.name).add(static_cast<int>(form.form)).add(static_cast<int>(form.side));
  return {"between/" + between.name, h.done(),
          [first, second](Pen& pen) { write_between(first, second, pen); }};
}

Stage pattern_stage(const HolePattern& pattern, quantity::UnitSystem system) {
  PatternPlan plan{pattern.name, pattern.layout, pattern.of, system};
  base::Hasher h;
  h.add("pattern").add(plan.name).add(static_cast<int>(plan.layout)).add(static_cast<int>(system));
  for (const std::string& hole : plan.of)
    h.add(hole);
  return {"pattern/" + pattern.name, h.done(),
          [plan = std::move(plan)](Pen& pen) { write_pattern(plan, pen); }};
}

void add_told(std::vector<ToldReading>& all, std::string_view name, std::string_view path,
              const std::vector<Gives>& gives) {
  for (const Gives& given : gives) {
    const ToldRow& row = row_of(given.told);
    all.push_back({fmt::format("{} {}", name, row.figure), fmt::format("{}/{}/{}", path, name, row.figure),
                   given.dimension, row.kind});
  }
}

}  // namespace

std::string axis_zero_cause(std::string_view instrument, std::size_t axis) {
  return fmt::format("instrument/{}/{} axis/zero", instrument, kAxes[axis]);
}

std::vector<Stage> touched_stages(const Survey& survey) {
  std::vector<Stage> stages;
  if (survey.touched.empty()) return stages;
  std::map<std::string, Root> touches;
  std::map<std::string, Root> tips;
  for (const Touched& touched : by_name(survey.touched)) {
    const Instrument& instrument = named(survey.instruments, touched.instrument);
    for (std::size_t i = 0; i < touched.touches.size(); ++i) {
      for (std::size_t axis = 0; axis < touched.touches[i].size(); ++axis)
        touches.emplace(touch_name(touched, i, axis), touch_root(touched, instrument, i, axis));
    }
    tips.emplace(touched.tip.name, tip_root(touched.tip));
    stages.push_back(form_stage(touched, instrument, survey.system));
  }
  stages.push_back(roots_stage("touch", std::move(touches)));
  stages.push_back(roots_stage("tip", std::move(tips)));
  for (const Between& between : survey.between)
    stages.push_back(between_stage(between, survey.touched));
  for (const HolePattern& pattern : survey.patterns)
    stages.push_back(pattern_stage(pattern, survey.system));
  return stages;
}

std::vector<ToldReading> told_readings(const Survey& survey) {
  std::vector<ToldReading> all;
  for (const Touched& touched : survey.touched)
    add_told(all, touched.name, "touched", touched.gives);
  for (const Between& between : survey.between)
    add_told(all, between.name, "between", between.gives);
  for (const HolePattern& pattern : survey.patterns)
    add_told(all, pattern.name, "pattern", pattern.gives);
  return by_name(std::move(all));
}

}  // namespace sparewright::survey
