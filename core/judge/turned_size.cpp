// Diameters turned or bored on a lathe: whether its collars and its headstock can hold the limits, whether there is metal,
// and whether the tool goes in.
#include <cmath>

#include <fmt/format.h>

#include "core/cutting/compound.hpp"
#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using ledger::State;

// One diameter that a setup on a lathe makes.
struct Turned {
  const Subject& subject;
  const route::Setup& setup;
  const route::OnLathe& on;
  std::string feature;
  std::string local;
  const part::Dimension& dimension;
  bool inside = false;
  route::Printing print;

  [[nodiscard]] const Figure& own(Pen& pen, std::string_view name) const {
    return pen.ask(fmt::format("{}/{}/{}", route::setup_path(setup), feature, name));
  }
  [[nodiscard]] const Figure& limit_of(Pen& pen, std::string_view which) const {
    return pen.ask(fmt::format("{}/{}/{}", part::feature_path(feature), local, which));
  }
};

double on_diameter(const shop::Collar& collar) {
  return collar.division().base() * (collar.reads == shop::CollarReads::kDiameter ? 1.0 : 2.0);
}

const shop::Collar* collar_of(const route::Setup& setup, const char* wheel) {
  const auto found = setup.machine.collars.find(wheel);
  return found == setup.machine.collars.end() ? nullptr : &found->second;
}

// The compound at the angle where ten of its divisions are one of the cross slide; empty text where its collar is another.
std::string what_to_do(const Turned& t, const shop::Collar& cross) {
  const shop::Collar* compound = collar_of(t.setup, "compound");
  constexpr double kSame = 1e-6;
  if (t.inside || compound == nullptr || std::abs(on_diameter(*compound) / on_diameter(cross) - 1.0) > kSame)
    return "come up by halves of a division and measure each time, or lap or ream it to size";
  const double angle = quantity::unit::degree.from_base(cutting::tenth_angle_rad());
  return fmt::format(
      "set the compound to {:.2f} degrees to the axis and say compound = \"{:.2f} deg\" in the setup: ten "
      "of its "
      "divisions are then one of the cross slide",
      angle, angle);
}

// Silent where the size is free and a division does.
void judge_collar(Pen& pen, const Turned& t) {
  const shop::Collar* cross = collar_of(t.setup, "cross slide");
  const Figure& least = t.limit_of(pen, "least");
  const Figure& most = t.limit_of(pen, "most");
  if (cross == nullptr || !least.known() || !most.known()) return;
  const Figure& fine = t.own(pen, "compound fine division");
  const double window = most.value - least.value;
  const double division = fine.known() ? fine.value : on_diameter(*cross);
  const bool coarse = division > window;
  if (!coarse && !part::has_aim(t.dimension)) return;
  pen.state({.check = "collar against tolerance",
             .subject = t.feature,
             .state = coarse ? State::kClose : State::kOk,
             .figure = fine.known() ? std::string(fine.name) : std::string(least.name),
             .reason = fmt::format("one division of the {} is {} on diameter and the limits are {} apart",
                                   fine.known() ? "compound" : "cross slide", t.print.fine(division),
                                   t.print.fine(window)),
             .source = "the shop's " + t.setup.machine.name,
             .todo = coarse ? what_to_do(t, *cross) : ""});
}

void judge_headstock(Pen& pen, const Turned& t) {
  const Figure& taper = t.own(pen, "headstock taper");
  const Figure& least = t.limit_of(pen, "least");
  const Figure& most = t.limit_of(pen, "most");
  if (!taper.known() || !least.known() || !most.known() || !part::has_aim(t.dimension)) return;
  pen.judge({.check = "the headstock turns it straight enough",
             .subject = t.feature,
             .figure = &taper,
             .high = &limit(pen, "limits apart", most.value - least.value, Origin::kChoice, "its limits"),
             .reason = fmt::format(
                 "over its length it comes out {} larger towards the chuck and its limits are {} apart",
                 t.print.fine(taper.value), t.print.fine(most.value - least.value)),
             .source = "the shop's " + t.setup.machine.name,
             .todo = "true the headstock on a test bar, turn between centres with the tail set over, or turn "
                     "it shorter",
             .margin = "headstock margin"});
}

void judge_metal(Pen& pen, const Turned& t) {
  const Figure& metal = t.own(pen, "metal");
  if (!metal.known() || metal.value > 0.0) return;
  pen.state({.check = "there is metal to cut",
             .subject = t.feature,
             .state = State::kNo,
             .figure = metal.name,
             .reason = fmt::format("what stands there is {} {} than the size to make",
                                   t.print.fine(-metal.value), t.inside ? "larger" : "smaller"),
             .source = "the order of work, as it is written",
             .todo = t.inside ? "drill smaller first" : "take larger stock, or look at the order of work"});
}

void judge_turned(Pen& pen, const Turned& t) {
  judge_collar(pen, t);
  judge_headstock(pen, t);
  judge_metal(pen, t);
}

// The diameter that the cross slide brings to size; none where the feature has none.
struct Sized {
  const char* local = nullptr;
  const part::Dimension* dimension = nullptr;
  bool inside = false;
};
Sized sized(const Made& made) {
  if (const auto* hole = std::get_if<part::Hole>(&made.feature.shape)) {
    const bool is_bored = hole->make == part::HoleMake::kBored;
    return is_bored ? Sized{"diameter", &hole->diameter, true} : Sized{};
  }
  const auto* formed = std::get_if<part::Formed>(&made.feature.shape);
  if (formed == nullptr || (formed->form != part::Form::kTurned && formed->form != part::Form::kThread &&
                            formed->form != part::Form::kKnurl && formed->form != part::Form::kTaper))
    return {};
  const char* local = formed->form == part::Form::kTaper ? "small diameter" : "diameter";
  const auto size = formed->sizes.find(std::string_view(local));
  return size == formed->sizes.end() ? Sized{} : Sized{local, &size->second, false};
}

// A tool wider than the groove cannot make it.
void judge_width(Pen& pen, const Subject& subject, const Made& made) {
  const route::Printing print(subject.route.system);
  const Figure& most = pen.ask(part::feature_path(made.feature.name) + "/width/most");
  for (const shop::Tool& tool : made.work.tools) {
    if (tool.kind != shop::ToolKind::kGroovingTool && tool.kind != shop::ToolKind::kPartingTool) continue;
    if (!tool.width) {
      pen.state({.check = "the tool goes into the groove",
                 .subject = made.feature.name,
                 .state = State::kNotKnown,
                 .reason = fmt::format("how wide {} is, is not said", tool.name),
                 .source = "the shop",
                 .todo = "say its width in the shop text",
                 .missing = {"width of " + tool.name}});
      return;
    }
    pen.judge(
        {.check = "the tool goes into the groove",
         .subject = made.feature.name,
         .figure = &limit(pen, "width of " + tool.name, tool.width->base(), Origin::kChoice, "the shop"),
         .high = &most,
         .reason =
             fmt::format("{} is {} wide and the groove at most {}", tool.name, print.fine(tool.width->base()),
                         route::or_not_known(most, print.fine(most.value))),
         .source = "the shop",
         .todo = "grind a narrower tool"});
    return;
  }
}

}  // namespace

void add_turned_size_checks(const Shared& subject, Stages& stages) {
  for (const Made& made : all_made(*subject)) {
    const auto* on = std::get_if<route::OnLathe>(&made.setup.held);
    if (on == nullptr || !route::cuts_are_worked_out(made.setup, made.feature)) continue;
    const auto* formed = std::get_if<part::Formed>(&made.feature.shape);
    if (formed != nullptr && formed->form == part::Form::kGroove)
      stages.push_back(check_stage(subject, "groove", made.feature.name,
                                   [subject, made](Pen& pen) { judge_width(pen, *subject, made); }));
    const Sized size = sized(made);
    if (size.dimension == nullptr) continue;
    stages.push_back(check_stage(subject, "turned", made.feature.name, [subject, made, on, size](Pen& pen) {
      judge_turned(pen, {*subject, made.setup, *on, made.feature.name, size.local, *size.dimension,
                         size.inside, route::Printing(subject->route.system)});
    }));
  }
}

}  // namespace sparewright::judge
