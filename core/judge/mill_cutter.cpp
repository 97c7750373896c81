// Whether the cutters named for slots, pockets, keyseats, edges, seats and pin holes can make them on a mill.
#include <cmath>

#include <fmt/format.h>

#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using part::Form;
using shop::Tool;
using shop::ToolKind;

struct Cutting {
  const Subject& subject;
  const route::Setup& setup;
  const route::Work& work;
  const part::Formed* formed;  // none: a hole
  route::Printing print;

  [[nodiscard]] std::string size_path(const std::string& local) const {
    return fmt::format("{}/{}", part::feature_path(work.feature), local);
  }
  [[nodiscard]] const Figure& diameter_of(Pen& pen, const Tool& tool) const {
    return pen.ask(fmt::format("{}/{}/{} diameter", route::setup_path(setup), work.feature, tool.name));
  }
};

// A cutter wider than what it is to cut cannot come out right: it takes metal that is to stay.
void judge_goes_in(Pen& pen, const Cutting& c, const Tool& mill, const std::string& what) {
  const Figure& size = c.diameter_of(pen, mill);
  const Figure& most = pen.ask(c.size_path(what + "/most"));
  pen.judge({.check = fmt::format("the cutter is no larger than the {}", what),
             .subject = c.work.feature,
             .figure = &size,
             .high = &most,
             .reason = fmt::format("{} is {} and the {} {} at most", mill.name,
                                   route::or_not_known(size, c.print.fine(size.value)), what,
                                   route::or_not_known(most, c.print.fine(most.value))),
             .source = "the shop, the cutter as it is",
             .todo = "take a smaller cutter and widen",
             .margin = what + " margin"});
}

// A smaller one leaves its own, sharper corner: said, never better than CLOSE.
void judge_corner(Pen& pen, const Cutting& c, const Tool& mill) {
  const Figure& radius = pen.work(
      "radius of the cutter", quantity::Kind::kRadius, "half the cutter", [](auto d) { return d / 2.0; },
      c.diameter_of(pen, mill));
  const Figure& least = pen.ask(c.size_path("corner radius/least"));
  const Figure& most = pen.ask(c.size_path("corner radius/most"));
  const bool sharper = radius.known() && least.known() && radius.value < least.value;
  pen.judge({.check = "the cutter gets into the corners",
             .subject = c.work.feature,
             .figure = &radius,
             .high = &most,
             .reason = fmt::format("{} leaves corners of {} and they are to be {}{}", mill.name,
                                   route::or_not_known(radius, c.print.plain(radius.value)),
                                   route::or_not_known(least, c.print.limits(least.value, most.value, false)),
                                   sharper ? ": they come out sharper" : ""),
             .source = "plain geometry",
             .todo = sharper ? "take a larger cutter for the corners, or give the part the cutter's corner"
                             : "take a smaller cutter, or give the part a larger corner",
             .margin = "corner margin",
             .close_at_best = sharper});
}

// --- saws -----------------------------------------------------------------------------------------------------------
void judge_saw_depth(Pen& pen, const Cutting& c, const Tool& saw) {
  const Figure& in = pen.ask(fmt::format("{}/{}/in", route::setup_path(c.setup), c.work.feature));
  if (!saw.reach && saw.diameter && in.known() && in.value < saw.diameter->base / 2.0) {
    pen.state(
        {.check = "the saw goes deep enough",
         .subject = c.work.feature,
         .state = ledger::State::kNotKnown,
         .figure = in.name,
         .reason = fmt::format("it goes {} in; how far {} does, from its teeth to the washers, is not said",
                               c.print.plain(in.value), saw.name),
         .source = "the shop",
         .todo = "say its reach in the shop text",
         .missing = {fmt::format("reach of {}", saw.name)}});
    return;
  }
  const double reach_mm = saw.reach      ? saw.reach->base()
                          : saw.diameter ? saw.diameter->base / 2.0
                                         : std::nan("");
  pen.judge({.check = "the saw goes deep enough",
             .subject = c.work.feature,
             .figure = &in,
             .high = &limit(pen, "reach of the saw", reach_mm, Origin::kChoice,
                            saw.reach ? "the shop: teeth to washers" : "half the saw, with no arbor at all"),
             .reason = fmt::format("it goes {} in and {} reaches {}",
                                   route::or_not_known(in, c.print.plain(in.value)), saw.name,
                                   c.print.plain(reach_mm)),
             .source = "the shop",
             .todo = "take a larger saw, or saw from both sides",
             .margin = "saw reach margin"});
}

void judge_saw_width(Pen& pen, const Cutting& c, const Tool& saw) {
  const Figure& thick =
      pen.ask(fmt::format("{}/{}/{} width", route::setup_path(c.setup), c.work.feature, saw.name));
  const Figure& most = pen.ask(c.size_path("width/most"));
  pen.judge({.check = "the saw is no thicker than the cut",
             .subject = c.work.feature,
             .figure = &thick,
             .high = &most,
             .reason = fmt::format("{} is {} thick and the cut {} wide at most", saw.name,
                                   route::or_not_known(thick, c.print.fine(thick.value)),
                                   route::or_not_known(most, c.print.fine(most.value))),
             .source = "the shop",
             .todo = "take a thinner saw",
             .margin = "saw width margin"});
}

// --- points ---------------------------------------------------------------------------------------------------------
// 118 degrees where the shop does not say a twist drill's (common practice).
std::optional<double> point_of(const Tool& tool) {
  constexpr double kUsualPoint_deg = 118.0;
  if (tool.angle) return tool.angle->base();
  if (tool.kind == ToolKind::kTwistDrill)
    return quantity::Angle::of(kUsualPoint_deg, quantity::unit::degree).base();
  return std::nullopt;
}

void judge_angle(Pen& pen, const Cutting& c, const Tool& tool, const Figure& least, const Figure& most) {
  const auto angle = point_of(tool);
  ledger::Root root;
  root.kind = quantity::Kind::kAngle;
  root.value = angle;
  root.origin = tool.angle ? Origin::kChoice : Origin::kDefault;
  root.source = tool.angle ? "the shop" : "a twist drill's usual point, common practice";
  const Figure& point = pen.root(fmt::format("angle of {}", tool.name), root);
  const auto degrees = [](double rad) { return quantity::fixed(quantity::unit::degree.from_base(rad), 0); };
  pen.judge({.check = "the point has the angle",
             .subject = c.work.feature,
             .figure = &point,
             .low = &least,
             .high = &most,
             .reason = angle ? fmt::format("{} has {} degrees and {} to {} are wanted", tool.name,
                                           degrees(*angle), degrees(least.value), degrees(most.value))
                             : fmt::format("what angle {} has is not said", tool.name),
             .source = "the shop",
             .todo = angle ? "take one with that angle" : "say its angle in the shop text",
             .margin = "angle margin"});
}

void judge_point(Pen& pen, const Cutting& c, const Tool& tool, const std::string& local) {
  judge_angle(pen, c, tool, pen.ask(c.size_path(local + "/least")), pen.ask(c.size_path(local + "/most")));
}

// The flank makes the chamfer: 45 degrees, so 90 included, within the usual degree.
void judge_chamfer(Pen& pen, const Cutting& c, const Tool& tool) {
  const auto degrees = [&](const char* local, double value) -> const Figure& {
    ledger::Root root;
    root.kind = quantity::Kind::kAngle;
    root.value = quantity::Angle::of(value, quantity::unit::degree).base();
    root.origin = Origin::kStandard;
    root.source = "a chamfer of 45 degrees is made by 90 included; one degree either way, common practice";
    return pen.root(local, root);
  };
  judge_angle(pen, c, tool, degrees("least angle", 89.0), degrees("most angle", 91.0));
  const Figure& size = pen.ask(c.size_path("size"));
  const double half_mm = tool.diameter ? tool.diameter->base / 2.0 : std::nan("");
  pen.judge({.check = "the flank is long enough",
             .subject = c.work.feature,
             .figure = &size,
             .high = &limit(pen, "half the countersink", half_mm, Origin::kChoice, "the shop, " + tool.name),
             .reason = fmt::format("the chamfer is {} and half of {} {}",
                                   route::or_not_known(size, c.print.plain(size.value)), tool.name,
                                   c.print.plain(half_mm)),
             .source = "plain geometry",
             .todo = "take a larger countersink",
             .margin = "flank margin"});
}

// --- pin holes ------------------------------------------------------------------------------------------------------
// What goes through must leave the small end for the reamer; what goes in steps must be smaller than the large end.
void judge_pin_drills(Pen& pen, const Cutting& c) {
  const bool tapers = c.formed->form == Form::kTaperPinHole;
  const bool reamed = std::any_of(c.work.tools.begin(), c.work.tools.end(),
                                  [](const Tool& t) { return t.kind == ToolKind::kReamer; });
  const Tool* smallest = nullptr;
  const Tool* last = nullptr;
  for (const Tool& tool : c.work.tools) {
    if (tool.kind != ToolKind::kTwistDrill) continue;
    last = &tool;
    if (tool.diameter && (smallest == nullptr || tool.diameter->base < smallest->diameter->base))
      smallest = &tool;
  }
  const Tool* sizes = reamed && !tapers ? nullptr : tapers ? smallest : last;
  if (sizes == nullptr) return;
  const Figure& drill = c.diameter_of(pen, *sizes);
  const std::string op = fmt::format("{}/{}/", route::setup_path(c.setup), c.work.feature);
  const Figure& most = tapers ? pen.ask(op + "drill through at most") : pen.ask(c.size_path("diameter/most"));
  const Figure* least = tapers ? nullptr : &pen.ask(c.size_path("diameter/least"));
  pen.judge(
      {.check = tapers ? "a drill goes through the small end" : "the drill has the size",
       .subject = c.work.feature,
       .figure = &drill,
       .low = least,
       .high = &most,
       .reason = fmt::format(
           "{} is {} and {} {}", sizes->name, route::or_not_known(drill, c.print.fine(drill.value)),
           tapers ? "what goes through its small end, with 0.1 mm left to ream, at most" : "the hole at most",
           route::or_not_known(most, c.print.fine(most.value))),
       .source = "the shop, the tool as it is; plain geometry",
       .todo = tapers ? "drill through with a smaller one first" : "take a drill of the hole's size",
       .margin = "pin drill margin"});
}

void judge_tool(Pen& pen, const Cutting& c, const Tool& tool) {
  const Form form = c.formed->form;
  const bool opening = form == Form::kSlot || form == Form::kPocket || form == Form::kKeyseat;
  if (opening && tool.kind == ToolKind::kEndMill) {
    judge_goes_in(pen, c, tool, "width");
    if (c.formed->sizes.contains("length")) judge_goes_in(pen, c, tool, "length");
    if (form == Form::kPocket) judge_corner(pen, c, tool);
  }
  if ((form == Form::kSlit || form == Form::kSplit) && tool.kind == ToolKind::kSlittingSaw) {
    judge_saw_depth(pen, c, tool);
    judge_saw_width(pen, c, tool);
  }
  if (form == Form::kChamfer) judge_chamfer(pen, c, tool);
  if (form == Form::kDimple) judge_point(pen, c, tool, "angle");
}

// The first tool of a kind makes it; others of the list are looked over.
void judge_form(Pen& pen, const Cutting& c) {
  const Form form = c.formed->form;
  if (form == Form::kTaperPinHole || form == Form::kSpringPinHole) return judge_pin_drills(pen, c);
  for (const ToolKind kind : {ToolKind::kEndMill, ToolKind::kSlittingSaw, ToolKind::kCountersink,
                              ToolKind::kSpotDrill, ToolKind::kTwistDrill}) {
    const auto tool =
        std::find_if(c.work.tools.begin(), c.work.tools.end(), [&](const Tool& t) { return t.kind == kind; });
    if (tool != c.work.tools.end()) return judge_tool(pen, c, *tool);
  }
}

void judge_countersink(Pen& pen, const Cutting& c) {
  for (const Tool& tool : c.work.tools) {
    if (tool.kind == ToolKind::kCountersink) return judge_point(pen, c, tool, "countersink angle");
  }
}

}  // namespace

void add_mill_cutter_checks(const Shared& subject, Stages& stages) {
  for (const Made& made : all_made(*subject)) {
    if (!made.on_mill() || !route::cuts_are_worked_out(made.setup, made.feature)) continue;
    const auto* formed = std::get_if<part::Formed>(&made.feature.shape);
    const part::Hole* hole = made.hole();
    if (formed == nullptr && (hole == nullptr || !hole->countersink)) continue;
    stages.push_back(
        check_stage(subject, "cutters in " + route::setup_path(made.setup), made.work.feature,
                    [subject, &setup = made.setup, work = made.work, formed](Pen& pen) {
                      const Cutting c{*subject, setup, work, formed, route::Printing(subject->route.system)};
                      formed != nullptr ? judge_form(pen, c) : judge_countersink(pen, c);
                    }));
  }
}

}  // namespace sparewright::judge
