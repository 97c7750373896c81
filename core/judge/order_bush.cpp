// A bush is put in after its hole is finished, and its own bore is finished after it is in.
#include <algorithm>

#include <fmt/format.h>

#include "core/judge/order.hpp"

namespace sparewright::judge {
namespace {

using ledger::Pen;
using ledger::State;
using shop::ToolKind;

std::optional<std::size_t> place_of(const route::Work& work, ToolKind kind) {
  for (std::size_t i = 0; i < work.tools.size(); ++i) {
    if (work.tools[i].kind == kind) return i;
  }
  return std::nullopt;
}

void judge_hole_first(Pen& pen, const std::vector<Step>& steps, std::size_t bush, const part::Formed& form) {
  const auto hole = made_at(steps, form.of);
  if (hole && *hole < bush) return;
  say(pen,
      {"its hole is there first", steps[bush].feature->name, State::kNo,
       hole ? fmt::format("it goes into {}, which is made only later, in {}", form.of, op_of(steps[*hole]))
            : fmt::format("it goes into {}, which no setup makes", form.of),
       fmt::format("make {} before", form.of)});
}

void judge_bore_after(Pen& pen, const Step& step, const part::Formed& form) {
  if (form.is_bonded) return;
  const auto press = place_of(*step.work, ToolKind::kPress);
  const auto reamer = place_of(*step.work, ToolKind::kReamer);
  if (!press) return;  // that the press is missing is said elsewhere
  const std::string& name = step.feature->name;
  if (reamer && *reamer < *press) {
    say(pen, {"its bore is finished after it is in", name, State::kNo,
              "it is reamed and then pressed in: it closes as it goes in, and the bore is too small",
              "press it in first, then ream"});
  } else if (!reamer && part::has_aim(form.sizes.at("bore"))) {
    say(pen, {"its bore is finished after it is in", name, State::kClose,
              "it closes as it goes in, and nothing finishes its bore after that",
              "leave its bore small and add a reamer after the press, or bore it in place"});
  } else {
    say(pen, {"its bore is finished after it is in", name, State::kOk,
              "it is pressed in, then its bore is finished", ""});
  }
}

// The reamer that finishes its bore makes it its own size.
void judge_reamer(Pen& pen, const Subject& subject, const Step& step) {
  const auto place = place_of(*step.work, ToolKind::kReamer);
  if (!place || !route::cuts_are_worked_out(*step.setup, *step.feature)) return;
  const route::Printing print(subject.route.system);
  const std::string& name = step.feature->name;
  const shop::Tool& reamer = step.work->tools[*place];
  const ledger::Figure& size = pen.ask(fmt::format("{}/{}/{} diameter", op_of(step), name, reamer.name));
  const ledger::Figure& least = pen.ask(part::feature_path(name) + "/bore/least");
  const ledger::Figure& most = pen.ask(part::feature_path(name) + "/bore/most");
  pen.judge({.check = "the reamer has its bore",
             .subject = name,
             .figure = &size,
             .low = &least,
             .high = &most,
             .reason = fmt::format("{} is {} and its bore {}", reamer.name,
                                   route::or_not_known(size, print.fine(size.value)),
                                   route::or_not_known(least, print.limits(least.value, most.value, true))),
             .source = "the shop, the tool as it is",
             .todo = "take a reamer of its size",
             .margin = "reamer margin"});
}

}  // namespace

void add_order_bush_checks(const Shared& subject, Stages& stages) {
  const std::vector<Step> steps = steps_of(*subject);
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const auto* formed = std::get_if<part::Formed>(&steps[i].feature->shape);
    if (formed == nullptr || formed->form != part::Form::kBush || steps[i].joins()) continue;
    stages.push_back(check_stage(subject, "bush order", steps[i].feature->name,
                                 [subject, steps, i, bush = *formed](Pen& pen) {
                                   judge_hole_first(pen, steps, i, bush);
                                   judge_bore_after(pen, steps[i], bush);
                                   judge_reamer(pen, *subject, steps[i]);
                                 }));
  }
}

}  // namespace sparewright::judge
