// Round work in a mill's vise: that the jaws take it past its middle, and that a keyseat stands over the middle of the bar as
// it was found.
#include <cmath>

#include <fmt/format.h>

#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;

// Below its middle a bar is squeezed out upwards.
void judge_grip(Pen& pen, const Subject& subject, const route::Setup& setup) {
  const route::Printing print(subject.route.system);
  const std::string op = route::setup_path(setup);
  const Figure& gripped = pen.ask(op + "/hold/gripped");
  const Figure& middle = pen.work(
      "middle of the bar", quantity::Kind::kLength, "half of what stands there",
      [](auto tall) { return tall / 2.0; }, pen.ask(op + "/hold/height of work"));
  pen.judge({.check = "jaws take the bar past its middle",
             .subject = op,
             .figure = &gripped,
             .low = &middle,
             .reason = fmt::format("the jaws reach {} up the bar and its middle lies {} up",
                                   route::or_not_known(gripped, print.plain(gripped.value)),
                                   route::or_not_known(middle, print.plain(middle.value))),
             .source = "plain geometry: below its middle a bar is squeezed out upwards",
             .todo = "use lower parallels",
             .margin = "middle margin"});
}

// A keyseat beside the middle holds the key askew to the hub's. ASME B17.1 lets it be 0.010 in off (from memory).
constexpr double kOffMiddle_mm = 0.010 * 25.4;
// Less is not said: rounding on paper. A choice made here, without a source.
constexpr double kSilent_mm = 0.001;

void judge_middle(Pen& pen, const Subject& subject, const std::string& feature, part::Axis axis) {
  const route::Printing print(subject.route.system);
  const Figure& at = pen.ask(fmt::format("{}/at {}", part::feature_path(feature), part::name_of(axis)));
  const auto side = [&](bool greater) -> const Figure& {
    return pen.ask(fmt::format("blank/{}", part::name_of(part::face_at(axis, greater))));
  };
  const Figure& low = side(false);
  const Figure& high = side(true);
  const Figure& off = pen.work(
      "off the middle", quantity::Kind::kLength, "its place less the middle of the bar as found",
      [](auto place, auto a, auto b) {
        using std::abs;
        return abs(place - (a + b) / 2.0);
      },
      at, low, high);
  if (off.known() && off.value < kSilent_mm) return;
  pen.judge({.check = "the keyseat stands over the middle of the bar",
             .subject = feature,
             .figure = &off,
             .high = &limit(pen, "off the middle at most", kOffMiddle_mm, Origin::kDefault,
                            "ASME B17.1, from memory"),
             .reason = fmt::format("its place is {} and the middle of the bar as it is lies at {}: {} off",
                                   route::or_not_known(at, print.plain(at.value)),
                                   route::or_not_known(low, print.plain((low.value + high.value) / 2.0)),
                                   route::or_not_known(off, print.plain(off.value))),
             .source = "plain geometry; ASME B17.1, 0.010 in, from memory",
             .todo = fmt::format("leave at.{} out: the middle of the bar as found is taken then",
                                 part::name_of(axis)),
             .margin = "middle margin",
             .close_at_best = true});
}

}  // namespace

void add_bar_in_vise_checks(const Shared& subject, Stages& stages) {
  if (!part::is_round(subject->route.part.blank.shape)) return;
  for (const route::Setup& setup : subject->route.plan.setups) {
    const auto* on = std::get_if<route::OnMill>(&setup.held);
    if (on == nullptr || on->holding.vise() == nullptr) continue;
    if (part::axis_of(on->holding.sits_on) == part::Axis::kX) continue;
    stages.push_back(check_stage(subject, "bar in vise", route::setup_path(setup),
                                 [subject, setup](Pen& pen) { judge_grip(pen, *subject, setup); }));
  }
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* formed = std::get_if<part::Formed>(&feature.shape);
    if (formed == nullptr || formed->form != part::Form::kKeyseat) continue;
    const part::Axis axis = part::axis_of(formed->side) == part::Axis::kY ? part::Axis::kZ : part::Axis::kY;
    if (part::axis_of(formed->side) == part::Axis::kX || !formed->at.contains(axis)) continue;
    stages.push_back(check_stage(
        subject, "keyseat middle", feature.name,
        [subject, name = feature.name, axis](Pen& pen) { judge_middle(pen, *subject, name, axis); }));
  }
}

}  // namespace sparewright::judge
