#include <algorithm>

#include <fmt/format.h>

#include "core/judge/checks.hpp"
#include "core/judge/finishing_tools.hpp"

namespace sparewright::judge {
namespace {

using ledger::Pen;

// "a keyway", "a hole that leans"
std::string what_it_is(const part::Feature& feature, bool off_axis) {
  const auto* hole = std::get_if<part::Hole>(&feature.shape);
  if (off_axis) return "a hole off the axis, on a lathe";
  if (hole == nullptr) return fmt::format("a {}", part::kind_of(feature));
  if (hole->placed_by != part::PlacedBy::kCoordinates)
    return fmt::format("a hole {}", part::name_of(hole->placed_by));
  if (hole->lean) return "a hole that leans";
  return hole->around_bar ? "a hole round a bar" : fmt::format("a {} hole", part::name_of(hole->make));
}

// What is not worked out is not OK.
void judge_form_cut(Pen& pen, const part::Feature& feature, bool off_axis) {
  pen.state({.check = "how it is cut",
             .subject = feature.name,
             .state = ledger::State::kNotKnown,
             .reason = fmt::format("cuts and collar readings of {} are not worked out",
                                   what_it_is(feature, off_axis)),
             .source = "what this version does not do",
             .todo = "work them out by hand, or leave it out of the setup",
             .missing = {fmt::format("the cuts of {}", feature.name)}});
}

// Of a hole on a lathe.
bool is_off_axis(Pen& pen, const route::Setup& setup, const part::Feature& feature) {
  if (!std::holds_alternative<route::OnLathe>(setup.held)) return false;
  const ledger::Figure& off =
      pen.ask(fmt::format("{}/{}/off the axis", route::setup_path(setup), feature.name));
  return off.known() && off.value > route::kOnAxis_mm;
}

void judge_tools(Pen& pen, const route::Setup& setup, const route::Work& work, const part::Feature& feature) {
  const auto kinds = finishing_tools(setup, feature);
  const bool there = std::any_of(work.tools.begin(), work.tools.end(), [&](const shop::Tool& tool) {
    return std::find(kinds.begin(), kinds.end(), tool.kind) != kinds.end();
  });
  if (there || kinds.empty()) return;
  pen.state({.check = "a tool makes it",
             .subject = feature.name,
             .state = ledger::State::kNo,
             .reason = fmt::format("no {} is among its tools", shop::name_of(kinds.front())),
             .source = "the job's order of work",
             .todo = fmt::format("add a {} to its tools", shop::name_of(kinds.front()))});
}

void judge_speeds(Pen& pen, const Subject& subject, const route::Setup& setup) {
  if (setup.machine.speeds_rpm.empty()) return;
  const double slowest = quantity::unit::rpm.to_base(setup.machine.speeds_rpm.front());
  const std::string below = route::setup_path(setup) + "/";
  for (const std::string& name : pen.names(route::setup_path(setup))) {
    constexpr std::string_view kWanted = " rpm wanted";
    if (!name.ends_with(kWanted)) continue;
    const ledger::Figure& wanted = pen.ask(name);
    if (wanted.known() && wanted.value >= slowest) continue;
    // "op 20/bore/drill 3 rpm wanted" is about "bore/drill 3"; a tool's name may hold a slash itself.
    const std::string tool = name.substr(below.size(), name.size() - below.size() - kWanted.size());
    pen.state(
        {.check = "the machine has the speed",
         .subject = tool,
         .state = wanted.known() ? ledger::State::kNo : ledger::State::kNotKnown,
         .figure = name,
         .reason = wanted.known()
                       ? fmt::format("{} wants {} and the slowest is {}", tool,
                                     quantity::shown(wanted.value, wanted.kind, subject.route.system, 0),
                                     quantity::shown(slowest, wanted.kind, subject.route.system, 0))
                       : fmt::format("no speed is known for {}", tool),
         .source = "the handbook's starting speeds",
         .todo = wanted.known() ? "use a machine with a slower speed" : "name a material the handbook knows",
         .missing = wanted.missing});
  }
}

}  // namespace

void add_tooling_checks(const Shared& subject, Stages& stages) {
  for (const Made& made : all_made(*subject)) {
    stages.push_back(check_stage(subject, "tools", made.work.feature,
                                 [setup = made.setup, work = made.work, feature = made.feature](Pen& pen) {
                                   const bool off_axis = is_off_axis(pen, setup, feature);
                                   route::cuts_are_worked_out(setup, feature) && !off_axis
                                       ? judge_tools(pen, setup, work, feature)
                                       : judge_form_cut(pen, feature, off_axis);
                                 }));
  }
  for (const route::Setup& setup : subject->route.plan.setups) {
    stages.push_back(check_stage(subject, "speeds", route::setup_path(setup),
                                 [subject, setup](Pen& pen) { judge_speeds(pen, *subject, setup); }));
  }
}

}  // namespace sparewright::judge
