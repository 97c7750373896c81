// A bush pressed into its hole: what the press does to the boss and to the bush. Calculated, so that it may say NO and never
// OK: press_fits.hpp says why.
#include <algorithm>

#include <fmt/format.h>

#include "core/handbook/materials.hpp"
#include "core/handbook/press_fits.hpp"
#include "core/judge/round_hole.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using ledger::State;
using quantity::Kind;

// Metals and friction of one press.
struct Metals {
  handbook::ElasticPart boss;
  handbook::ElasticPart bush;
  double friction_low = 0.0;
  double friction_high = 0.0;
};

std::optional<Metals> metals_of(const std::string& boss, const std::string& bush) {
  const auto boss_material = handbook::find_material(boss);
  const auto bush_material = handbook::find_material(bush);
  if (!boss_material || !bush_material) return std::nullopt;
  const auto boss_part = handbook::elastic_part(boss_material->material);
  const auto bush_part = handbook::elastic_part(bush_material->material);
  const auto friction =
      handbook::press_friction(boss_material->material.group, handbook::PressAssembly::kPressed);
  if (!boss_part || !bush_part || !friction) return std::nullopt;
  return Metals{*boss_part, *bush_part, friction->low, friction->high};
}

void not_known(Pen& pen, const part::Feature& feature, std::string reason, std::string missing,
               std::string todo) {
  pen.state({.check = "what pressing does",
             .subject = feature.name,
             .state = State::kNotKnown,
             .reason = std::move(reason),
             .source = handbook::cite(handbook::kLamePressure),
             .todo = std::move(todo),
             .missing = {std::move(missing)}});
}

const Figure& root(Pen& pen, std::string_view local, Kind kind, double base, std::string source) {
  ledger::Root one;
  one.kind = kind;
  one.value = base;
  one.origin = Origin::kStandard;
  one.source = std::move(source);
  return pen.root(local, one);
}

// The pressure of an interference, by Lame.
const Figure& write_pressure(Pen& pen, const std::string& end, const Figure& interference,
                             const handbook::PressFit& fit) {
  const double joint = fit.joint.base();
  const double opening =
      handbook::hub_opening(joint, fit.hub_outside.base(), fit.hub.poisson) / fit.hub.modulus.base();
  const double shrinking =
      handbook::shaft_shrinking(joint, fit.shaft_bore.base(), fit.shaft.poisson) / fit.shaft.modulus.base();
  return pen.work(
      "pressure at " + end, Kind::kPressure, "interference over the joint and what both give, Lame",
      [=](auto i) { return i / (joint * (opening + shrinking)); }, interference);
}

const Figure& write_closing(Pen& pen, const std::string& end, const Figure& pressure,
                            const handbook::PressFit& fit) {
  const double joint = fit.joint.base();
  const double bore = fit.shaft_bore.base();
  const double modulus = fit.shaft.modulus.base();
  return pen.work(
      "closes at " + end, Kind::kLength, "hoop strain at the bore of the bush times the bore, Lame",
      [=](auto p) { return 2.0 * p * joint * joint * bore / (modulus * (joint * joint - bore * bore)); },
      pressure);
}

void judge_boss(Pen& pen, const Subject& subject, const part::Feature& feature, const handbook::PressFit& fit,
                const handbook::PressFitAnswer& answer) {
  if (!fit.hub.yield) return;
  const auto shown = [&](double base) {
    return quantity::shown(base, Kind::kPressure, subject.route.system, 0);
  };
  const std::string source = handbook::cite(handbook::kLameStress);
  const Figure& hoop = root(pen, "hoop stress in the boss", Kind::kPressure, answer.hub_hoop.base(), source);
  const Figure& stress =
      root(pen, "stress in the boss", Kind::kPressure, answer.hub_equivalent.base(), source);
  const Figure& yield = root(pen, "yield of the boss", Kind::kPressure, fit.hub.yield->base(),
                             "the blank's material, low end in print");
  pen.judge(
      {.check = "boss stands the press",
       .subject = feature.name,
       .figure = &stress,
       .high = &yield,
       .reason = fmt::format("at most {} of hoop stress in the boss, {} with the pressure; it yields at {}",
                             shown(hoop.value), shown(stress.value), shown(yield.value)),
       .source = source,
       .todo = "a lighter press, more metal round the hole, or bond the bush",
       .margin = "boss margin",
       .close_at_best = true});
}

// Its bore is finished after pressing, so that what it closes by does not spoil it; a bush that yields grips less.
void judge_bush(Pen& pen, const Subject& subject, const part::Feature& feature, const part::Formed& bush,
                const handbook::PressFit& fit, const handbook::PressFitAnswer& answer) {
  const route::Printing print(subject.route.system);
  const std::string path = part::feature_path(feature.name);
  const Figure& low = pen.need(path + "/interference/least");
  const Figure& high = pen.need(path + "/interference/most");
  const Figure& least = write_closing(pen, "least", write_pressure(pen, "least", low, fit), fit);
  const Figure& most = write_closing(pen, "most", write_pressure(pen, "most", high, fit), fit);
  const bool yields = answer.shaft_yields.value_or(false);
  pen.state({.check = "bore closes in pressing",
             .subject = feature.name,
             .state = State::kClose,
             .figure = most.name,
             .reason = fmt::format("{} to {} tight in {}, its bore closes by {} to {}{}",
                                   print.fine(low.value), print.fine(high.value), bush.of,
                                   print.fine(std::max(0.0, least.value)), print.fine(most.value),
                                   yields ? "; at its tightest it yields and grips less than was meant" : ""),
             .source = handbook::cite(handbook::kLamePressure),
             .todo = fmt::format("finish the bore after pressing; leave {} or more in it before",
                                 print.fine(most.value))});
}

void judge_force(Pen& pen, const Subject& subject, const part::Feature& feature,
                 const handbook::PressFitAnswer& answer) {
  const auto shown = [&](quantity::Force force) {
    return quantity::shown(force.base(), Kind::kForce, subject.route.system, 0);
  };
  const bool slips = !(answer.holds_at_least.base() > 0.0);
  const Figure& holds = root(pen, "holds at least", Kind::kForce, answer.holds_at_least.base(),
                             handbook::cite(answer.pressure_source));
  root(pen, "force at most", Kind::kForce, answer.pressing_at_most.base(),
       handbook::cite(answer.pressure_source));
  pen.state({.check = "press holds",
             .subject = feature.name,
             .state = slips ? State::kNo : State::kClose,
             .figure = holds.name,
             .reason = fmt::format("pushed in with up to {}, it holds {} along the bore at the least",
                                   shown(answer.pressing_at_most), shown(answer.holds_at_least)),
             .source = handbook::cite(answer.pressure_source),
             .todo = slips ? "make the bush larger or the hole smaller, or bond it"
                           : "calculated: friction is known to a factor of two at best; try it, and pin it "
                             "if it matters"});
}

void judge_press(Pen& pen, const Subject& subject, const part::Feature& feature, const part::Formed& bush) {
  const part::Part& part = subject.route.part;
  const part::Feature* hole = part::find_feature(part, bush.of);
  const auto metals = metals_of(part.blank.material, bush.material);
  if (!metals) {
    return not_known(pen, feature,
                     bush.material.empty() ? "what the bush is made of is not given"
                                           : "how much the two metals give is not known",
                     bush.material.empty()
                         ? fmt::format("the material of {}", feature.name)
                         : fmt::format("modulus of {} and {}", part.blank.material, bush.material),
                     "name metals the handbook knows");
  }
  const auto wall = metal_round_mm(pen, part, *hole, std::get<part::Hole>(hole->shape));
  if (!wall) {
    return not_known(pen, feature, fmt::format("{} is not closed all round", bush.of), "a closed boss",
                     "see what the other checks say of this boss");
  }
  const std::string path = part::feature_path(feature.name);
  const double joint = pen.need(part::feature_path(bush.of) + "/diameter").value;
  handbook::PressFit fit;
  fit.joint = quantity::Diameter::from_base(joint);
  fit.shaft_bore = quantity::Diameter::from_base(pen.need(path + "/bore").value);
  fit.hub_outside = quantity::Diameter::from_base(joint + 2.0 * *wall);
  fit.length = quantity::Length::from_base(pen.need(path + "/length").value);
  fit.least_interference = quantity::Length::from_base(pen.need(path + "/interference/least").value);
  fit.most_interference = quantity::Length::from_base(pen.need(path + "/interference/most").value);
  fit.hub = metals->boss;
  fit.shaft = metals->bush;
  fit.friction_low = metals->friction_low;
  fit.friction_high = metals->friction_high;
  const auto answer = handbook::press_fit(fit);
  if (!answer) return;  // there is no interference at all: "bush stays in its hole" says so
  judge_bush(pen, subject, feature, bush, fit, *answer);
  judge_boss(pen, subject, feature, fit, *answer);
  judge_force(pen, subject, feature, *answer);
}

bool is_slit(const part::Part& part, const std::string& hole) {
  return std::any_of(part.features.begin(), part.features.end(), [&](const part::Feature& other) {
    const auto* formed = std::get_if<part::Formed>(&other.shape);
    return formed != nullptr && formed->form == part::Form::kSlit && formed->of == hole;
  });
}

}  // namespace

void add_press_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* bush = std::get_if<part::Formed>(&feature.shape);
    if (bush == nullptr || bush->form != part::Form::kBush || bush->is_bonded) continue;
    if (is_slit(subject->route.part, bush->of)) continue;  // it has no hoop: bush.cpp says NO
    stages.push_back(check_stage(subject, "press", feature.name, [subject, feature, bush = *bush](Pen& pen) {
      judge_press(pen, *subject, feature, bush);
    }));
  }
}

}  // namespace sparewright::judge
