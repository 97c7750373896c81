// The tools of one hole in an order in which each finds what it needs.
#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/judge/order.hpp"

namespace sparewright::judge {
namespace {

using ledger::Pen;
using ledger::State;
using shop::ToolKind;

// `first` has to come before `then`.
struct Before {
  ToolKind first;
  ToolKind then;
  State state;
  const char* why;
};
constexpr std::array kBefore{
    Before{ToolKind::kSpotDrill, ToolKind::kTwistDrill, State::kNo,
           "a dimple guides the drill, not the other way"},
    Before{ToolKind::kTwistDrill, ToolKind::kTap, State::kNo, "a tap wants a hole"},
    Before{ToolKind::kTwistDrill, ToolKind::kReamer, State::kNo, "a drill after the reamer spoils its hole"},
    Before{ToolKind::kTwistDrill, ToolKind::kBoringHead, State::kNo,
           "a drill after the boring head spoils its hole"},
    Before{ToolKind::kTwistDrill, ToolKind::kCounterbore, State::kNo, "its pilot runs in the hole"},
    Before{ToolKind::kCounterbore, ToolKind::kTap, State::kClose, "its pilot spoils a thread that is there"},
    Before{ToolKind::kTwistDrill, ToolKind::kCountersink, State::kClose, "it is led by the hole"},
    Before{ToolKind::kCountersink, ToolKind::kTap, State::kClose,
           "a thread starts better in a countersunk hole and raises no burr"}};

// The last of the one kind stands behind the first of the other.
bool is_wrong(const std::vector<shop::Tool>& tools, const Before& rule) {
  const auto is = [](ToolKind kind) { return [kind](const shop::Tool& t) { return t.kind == kind; }; };
  const auto then = std::find_if(tools.begin(), tools.end(), is(rule.then));
  return std::find_if(then, tools.end(), is(rule.first)) != tools.end();
}

// A twist drill after a larger one; of a hole of one diameter it cuts nothing.
struct Smaller {
  const shop::Tool* before = nullptr;
  const shop::Tool* drill = nullptr;
};
Smaller smaller_after_larger(const route::Work& work) {
  const shop::Tool* largest = nullptr;
  for (const shop::Tool& tool : work.tools) {
    if (tool.kind != ToolKind::kTwistDrill || !tool.diameter) continue;
    if (largest != nullptr && tool.diameter->base < largest->diameter->base) return {largest, &tool};
    largest = &tool;
  }
  return {};
}

void judge_tools(Pen& pen, const Step& step) {
  for (const Before& rule : kBefore) {
    if (!is_wrong(step.work->tools, rule)) continue;
    say(pen, {"its tools are in order", step.feature->name, rule.state,
              fmt::format("the {} comes before the {}: {}", shop::name_of(rule.then),
                          shop::name_of(rule.first), rule.why),
              fmt::format("name the {} first", shop::name_of(rule.first))});
    return;
  }
  const auto& hole = std::get<part::Hole>(step.feature->shape);
  const Smaller wrong = smaller_after_larger(*step.work);
  // Through a mate the larger drill only spots what the smaller one drills.
  const bool one_diameter = !hole.beyond && !hole.through && hole.placed_by == part::PlacedBy::kCoordinates;
  if (wrong.drill == nullptr || !one_diameter) return;
  say(pen,
      {"its tools are in order", step.feature->name, State::kNo,
       fmt::format("{} comes after {} and finds nothing left to cut", wrong.drill->name, wrong.before->name),
       fmt::format("name {} first", wrong.drill->name)});
}

}  // namespace

void add_order_tools_checks(const Shared& subject, Stages& stages) {
  for (const Step& step : steps_of(*subject)) {
    if (step.joins() || !std::holds_alternative<part::Hole>(step.feature->shape)) continue;
    stages.push_back(check_stage(subject, "tools in order", step.feature->name,
                                 [subject, step](Pen& pen) { judge_tools(pen, step); }));
  }
}

}  // namespace sparewright::judge
