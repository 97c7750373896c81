#include "core/judge/order.hpp"

#include <utility>

namespace sparewright::judge {
namespace {

std::optional<std::size_t> find_step(const std::vector<Step>& steps, std::string_view feature, bool joins) {
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (steps[i].joins() == joins && steps[i].feature->name == feature) return i;
  }
  return std::nullopt;
}

}  // namespace

std::vector<Step> steps_of(const Subject& subject) {
  std::vector<Step> steps;
  for (const route::Setup& setup : subject.route.plan.setups) {
    for (const route::Work& work : setup.works) {
      if (const part::Feature* feature = part::find_feature(subject.route.part, work.feature))
        steps.push_back({&setup, &work, feature});
    }
  }
  return steps;
}

std::optional<std::size_t> made_at(const std::vector<Step>& steps, std::string_view feature) {
  return find_step(steps, feature, false);
}

std::optional<std::size_t> joined_at(const std::vector<Step>& steps, std::string_view split) {
  return find_step(steps, split, true);
}

std::string op_of(const Step& step) {
  return route::setup_path(*step.setup);
}

void say(ledger::Pen& pen, OrderVerdict verdict) {
  pen.state({.check = std::move(verdict.check),
             .subject = std::move(verdict.subject),
             .state = verdict.state,
             .reason = std::move(verdict.reason),
             .source = "the job's order of work; common practice",
             .todo = std::move(verdict.todo),
             .missing = {}});
}

}  // namespace sparewright::judge
