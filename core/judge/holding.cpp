#include <cmath>

#include <fmt/format.h>

#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

// A vise holds milled work by at least this height. Common practice: a quarter of an inch.
constexpr double kLeastGrip_mm = 0.25 * 25.4;
// A cutter or a drill is kept this far from hardened jaws and parallels. Common practice.
constexpr double kKeepOff_mm = 0.020 * 25.4;

void judge_holding(Pen& pen, const Subject& subject, const route::Setup& setup, const shop::Vise& vise,
                   part::Face fixed_jaw) {
  const route::Printing print(subject.route.system);
  const std::string op = route::setup_path(setup);
  const Figure& gripped = pen.ask(op + "/hold/gripped");
  pen.judge({.check = "grip",
             .subject = op,
             .figure = &gripped,
             .low = &limit(pen, "least grip", kLeastGrip_mm, Origin::kDefault, "common practice"),
             .reason = fmt::format("{} of the work is between the jaws; at least {} is wanted",
                                   route::or_not_known(gripped, print.plain(gripped.value)),
                                   print.plain(kLeastGrip_mm)),
             .source = "common practice; friction is not worked out",
             .todo = "use lower parallels",
             .margin = "grip margin"});
  const part::Axis across = part::axis_of(fixed_jaw);
  const Figure& width = pen.ask(part::blank_path(subject.route.part.blank, across));
  pen.judge({.check = "jaws open far enough",
             .subject = op,
             .figure = &width,
             .high = &limit(pen, "jaws open", vise.opens.base(), Origin::kChoice, "the shop's " + vise.name),
             .reason = fmt::format("the work is {} across and the jaws open {}",
                                   route::or_not_known(width, print.plain(width.value)),
                                   print.plain(vise.opens.base())),
             .source = "the shop",
             .todo = "hold it the other way round, or in a larger vise",
             .margin = "opening margin"});
}

void judge_above_jaws(Pen& pen, const Subject& subject, const route::Setup& setup,
                      const std::string& feature) {
  const route::Printing print(subject.route.system);
  const Figure& above = pen.ask(fmt::format("{}/{}/above jaws", route::setup_path(setup), feature));
  pen.judge({.check = "cutter clears the jaws",
             .subject = feature,
             .figure = &above,
             .low = &limit(pen, "keep off", kKeepOff_mm, Origin::kDefault, "common practice"),
             .reason = above.value < 0 ? fmt::format("the floor of the cut lies {} below the jaws",
                                                     route::or_not_known(above, print.plain(-above.value)))
                                       : fmt::format("the floor of the cut lies {} above the jaws",
                                                     route::or_not_known(above, print.plain(above.value))),
             .source = "common practice",
             .todo = "use higher parallels"});
}

// What a cutter runs over the jaws for: flats, saw cuts, slots that are open towards the jaws.
bool runs_over_jaws(const Made& made) {
  if (std::holds_alternative<part::Flat>(made.feature.shape)) return true;
  const auto* formed = std::get_if<part::Formed>(&made.feature.shape);
  if (formed == nullptr || !route::cuts_are_worked_out(made.setup, made.feature)) return false;
  if (formed->form == part::Form::kSlit || formed->form == part::Form::kSplit) return true;
  const part::Axis across_jaws = part::axis_of(std::get<route::OnMill>(made.setup.held).holding.away);
  return formed->form == part::Form::kSlot && !formed->sizes.contains("length") &&
         formed->along.value_or(part::axes_in(formed->side)[0]) == across_jaws;
}

}  // namespace

void add_holding_checks(const Shared& subject, Stages& stages) {
  for (const route::Setup& setup : subject->route.plan.setups) {
    const auto* on = std::get_if<route::OnMill>(&setup.held);
    if (on == nullptr || on->holding.vise() == nullptr) continue;
    stages.push_back(check_stage(subject, "holding", route::setup_path(setup),
                                 [subject, setup, vise = *on->holding.vise(), jaw = on->holding.away](
                                     Pen& pen) { judge_holding(pen, *subject, setup, vise, jaw); }));
  }
  for (const Made& made : all_made(*subject)) {
    const auto* on = std::get_if<route::OnMill>(&made.setup.held);
    if (on == nullptr || on->holding.vise() == nullptr || !runs_over_jaws(made)) continue;
    stages.push_back(check_stage(subject, "above jaws", made.work.feature,
                                 [subject, &setup = made.setup, work = made.work](Pen& pen) {
                                   judge_above_jaws(pen, *subject, setup, work.feature);
                                 }));
  }
}

}  // namespace sparewright::judge
