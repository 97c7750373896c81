// The dangers of a setup on a lathe, each where it sits. Common practice throughout; the sizes are choices made here,
// without a source.
#include <algorithm>

#include <fmt/format.h>

#include "core/route/lathe_bench.hpp"

namespace sparewright::route {
namespace {

constexpr double kSlender = 6.0;             // diameters that stand out without the tail
constexpr double kBehindSpindle_mm = 300.0;  // a bar gripped so long comes out behind most small headstocks

bool uses(const LatheBench& bench, shop::ToolKind kind) {
  return std::any_of(bench.setup.works.begin(), bench.setup.works.end(),
                     [&](const Work& work) { return tool_of_kind(work, kind) != nullptr; });
}

}  // namespace

void write_lathe_cautions(LatheBench& bench) {
  const auto say = [&](std::string says) { bench.sheet.cautions.push_back(std::move(says)); };
  say("Chuck key out before the hand goes to the switch. No file and no emery held in the hand; stringy "
      "chips: a "
      "hook, never fingers.");
  if (uses(bench, shop::ToolKind::kPartingTool))
    say("Parting off: [carriage] locked, tool square at [center] height, close to the chuck. Feed without a "
        "pause, oil; "
        "no hand under the part.");
  const auto figure = [&](const char* local) -> const ledger::Figure& {
    return bench.pen.ask(fmt::format("{}/hold/{}", bench.pen.stage(), local));
  };
  const ledger::Figure& slender = figure("diameters standing out");
  if (slender.known() && slender.value > kSlender && bench.on.tail == TailSupport::kNone)
    say(fmt::format(
        "{} diameters stand out with nothing at the tail: it can climb over the tool or whip. [Center] or "
        "steady.",
        quantity::fixed(slender.value, 1)));
  const ledger::Figure& gripped = figure("gripped");
  if (gripped.known() && gripped.value > kBehindSpindle_mm)
    say("Bar out of the back of the spindle whips: a support for it, slow, nobody beside it.");
  if (bench.on.tail == TailSupport::kDeadCentre)
    say("A dead [center] run dry welds: grease it, and ease it as the work grows warm.");
}

}  // namespace sparewright::route
