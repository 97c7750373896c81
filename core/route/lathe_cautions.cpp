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

bool has_chuck_key(shop::HolderKind kind) {
  return kind == shop::HolderKind::kThreeJawChuck || kind == shop::HolderKind::kFourJawChuck;
}

std::vector<std::string> holder_cautions(shop::HolderKind kind) {
  std::vector<std::string> all;
  all.push_back(fmt::format(
      "{}No file and no emery held in the hand while it turns; stringy chips: a hook, never fingers.",
      has_chuck_key(kind) ? "Chuck key out before the hand goes to the switch. " : ""));
  if (kind == shop::HolderKind::kFourJawChuck || kind == shop::HolderKind::kFaceplate)
    all.emplace_back(
        "Turn it round once by hand before power: jaws and bolts stand out, and must pass tool, [carriage] "
        "and bed. "
        "Out of balance: slow.");
  if (kind == shop::HolderKind::kMandrel)
    all.emplace_back("On a mandrel it holds by friction alone: light cuts, towards the headstock.");
  if (kind == shop::HolderKind::kCentres)
    all.emplace_back("The dog swings: sleeves away, its screw not standing out, driven before the cut.");
  return all;
}

std::vector<std::string> tool_cautions(const LatheBench& bench) {
  using shop::ToolKind;
  std::vector<std::string> all;
  if (uses(bench, ToolKind::kPartingTool))
    all.emplace_back(
        "Parting off: [carriage] locked, tool square at [center] height, close to the chuck. Feed without a "
        "pause, oil; no hand under the part.");
  if (uses(bench, ToolKind::kBoringBar))
    all.emplace_back("Boring: it turns where nobody sees it. Stopped before a gauge or a finger goes in.");
  if (uses(bench, ToolKind::kThreadingTool))
    all.emplace_back(
        "Threading: slowest speed, one hand on the half-nut lever, out before the shoulder. Fresh threads "
        "cut "
        "fingers.");
  if (uses(bench, ToolKind::kKnurlingTool))
    all.emplace_back("Knurling: slow, plenty of oil, no brush and no rag near the wheels.");
  return all;
}

}  // namespace

void write_lathe_cautions(LatheBench& bench) {
  const auto say = [&](std::string says) { bench.sheet.cautions.push_back(std::move(says)); };
  for (std::string& one : holder_cautions(bench.on.holder.kind))
    say(std::move(one));
  for (std::string& one : tool_cautions(bench))
    say(std::move(one));
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
