// Whether every tool that is used at one place on a mill reaches as deep as it has to there. What the shop does not say of
// a tool's reach is not judged.
#include <fmt/format.h>

#include "core/handbook/drill_points.hpp"
#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using shop::Tool;
using shop::ToolKind;

struct Place {
  const Subject& subject;
  const route::Setup& setup;
  const route::Work& work;
  const part::Feature& feature;

  [[nodiscard]] std::string local(const char* name) const {
    return fmt::format("{}/{}", part::feature_path(feature.name), name);
  }
};

const Figure& through(Pen& pen, const Place& p, part::Face from, const std::string& tool) {
  return pen.work(
      tool + " all there is", quantity::Kind::kLength, "from where it starts to the far side",
      [](auto a, auto b) {
        using std::abs;
        return abs(a - b);
      },
      pen.ask(p.local("starts at")), pen.ask(part::side_path(p.subject.route.part, part::opposite(from))));
}

const Figure& with_point(Pen& pen, const Tool& tool, const Figure& deep) {
  if (tool.kind != ToolKind::kTwistDrill || !tool.diameter) return deep;
  const Figure& point =
      limit(pen, "point of " + tool.name, handbook::point_length(tool.diameter->diameter()).base(),
            Origin::kStandard, "118 degree point, common practice");
  return pen.work(
      "depth for " + tool.name, quantity::Kind::kLength, "at full diameter and the point",
      [](auto d, auto t) { return d + t; }, deep, point);
}

// How deep a tool goes in a hole; nothing for what only marks or works at its mouth.
const Figure* deep_in_hole(Pen& pen, const Place& p, const part::Hole& hole, const Tool& tool) {
  switch (tool.kind) {
    case ToolKind::kTwistDrill:
    case ToolKind::kReamer:
    case ToolKind::kTap:
    case ToolKind::kBoringHead:
      return &with_point(pen, tool,
                         hole.depth ? pen.ask(p.local("depth")) : through(pen, p, hole.into, tool.name));
    case ToolKind::kCounterbore:
    case ToolKind::kEndMill:
      return hole.counterbore ? &pen.ask(p.local("counterbore depth")) : nullptr;
    default:
      return nullptr;
  }
}

const Figure* deep_in_form(Pen& pen, const Place& p, const part::Formed& formed, const Tool& tool) {
  const bool mills = tool.kind == ToolKind::kEndMill;
  const bool pin = tool.kind == ToolKind::kTwistDrill || tool.kind == ToolKind::kReamer;
  if (!mills && !pin) return nullptr;
  if (formed.form == part::Form::kDimple) return nullptr;
  if (formed.sizes.contains("depth")) return &pen.ask(p.local("depth"));
  const Figure& all = through(pen, p, formed.side, tool.name);
  return &(mills ? all : with_point(pen, tool, all));
}

void judge_tool(Pen& pen, const Place& p, const Tool& tool) {
  if (!tool.reach) return;
  const auto* hole = std::get_if<part::Hole>(&p.feature.shape);
  const auto* formed = std::get_if<part::Formed>(&p.feature.shape);
  const Figure* deep = hole != nullptr     ? deep_in_hole(pen, p, *hole, tool)
                       : formed != nullptr ? deep_in_form(pen, p, *formed, tool)
                                           : nullptr;
  if (deep == nullptr) return;
  const route::Printing print(p.subject.route.system);
  pen.judge({.check = fmt::format("{} reaches", tool.name),
             .subject = p.feature.name,
             .figure = deep,
             .high = &limit(pen, "reach of " + tool.name, tool.reach->base(), Origin::kChoice, "the shop"),
             .reason = fmt::format("it goes {} deep and {} reaches {}",
                                   route::or_not_known(*deep, print.plain(deep->value)), tool.name,
                                   print.plain(tool.reach->base())),
             .source = "the shop; a drill's point: (D/2)/tan 59 degrees",
             .todo = "take a longer one, or come from the other side",
             .margin = tool.name + " reach margin"});
}

}  // namespace

void add_tool_reach_checks(const Shared& subject, Stages& stages) {
  for (const Made& made : all_made(*subject)) {
    if (!made.on_mill() || !route::cuts_are_worked_out(made.setup, made.feature)) continue;
    stages.push_back(
        check_stage(subject, "tool reach in " + route::setup_path(made.setup), made.work.feature,
                    [subject, &setup = made.setup, work = made.work, &feature = made.feature](Pen& pen) {
                      for (const Tool& tool : work.tools)
                        judge_tool(pen, {*subject, setup, work, feature}, tool);
                    }));
  }
}

}  // namespace sparewright::judge
