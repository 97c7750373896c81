#include "core/route/cautions.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/route/bench.hpp"
#include "core/route/hole_tools.hpp"

namespace sparewright::route {
namespace {

bool is_on_table(const Setup& setup) {
  const auto* on = std::get_if<OnMill>(&setup.held);
  return on != nullptr && on->holding.vise() == nullptr;
}

using handbook::WorkGroup;
using shop::ToolKind;

// From here on a twist drill takes hold of the work as its point comes out (common practice; the size is a choice made
// here, without a source).
constexpr double kGrabbing_mm = 9.5;

// Alloys with lead in them, by the names of the materials table (12L14 ASTM A29; C360, C932: UNS).
constexpr std::array kLeaded{"12L14", "C360", "C932"};

bool grabs_everywhere(const std::optional<handbook::Work>& work) {
  return work && (work->group == WorkGroup::kBrass || work->group == WorkGroup::kBronze ||
                  work->group == WorkGroup::kCopper || work->group == WorkGroup::kPlastic);
}

bool goes_through(const part::Hole& hole) {
  return !hole.depth.has_value();
}

// One for each tool that is a danger of its own.
void add_for(Bench& bench, const Work& work, const part::Hole& hole) {
  const auto say = [&](std::string says) { bench.sheet.cautions.push_back(std::move(says)); };
  const shop::Tool* largest = nullptr;
  for (const shop::Tool& tool : work.tools) {
    if (tool.kind == ToolKind::kBoringHead)
      say(
          fmt::format("{}: the boring head swings wide and out of balance. Turn it round by hand first, "
                      "slowest speed that cuts, "
                      "stand clear, spindle stopped before a gauge goes in.",
                      work.feature));
    const bool is_drill = tool.kind == ToolKind::kTwistDrill && tool.diameter.has_value();
    if (is_drill && (largest == nullptr || tool.diameter->base > largest->diameter->base)) largest = &tool;
  }
  if (largest == nullptr || !goes_through(hole)) return;
  // On a lathe it may stop in the metal behind the part.
  if (bench.pen.ask(fmt::format("{}/{}/{} travel", bench.pen.stage(), work.feature, largest->name)).known())
    return;
  if (grabs_everywhere(bench.route.work))
    say(fmt::format("{}: {} grabs in this metal. Dub its lips, hold the feed back as it breaks through.",
                    work.feature, largest->name));
  else if (largest->diameter->base >= kGrabbing_mm)
    say(fmt::format(
        "{}: {} grabs as it breaks through. Ease the feed there; {}.", work.feature, largest->name,
        std::holds_alternative<OnLathe>(bench.setup.held) ? "it can pull the tailstock along: lock it"
        : is_on_table(bench.setup)                        ? "look to the clamps first"
                                                          : "the [vise] stays bolted down"));
}

}  // namespace

std::string spindle_caution() {
  return "At the spindle: glasses on; no gloves, rings or loose sleeves; drawbar wrench and chuck key off "
         "before it "
         "turns. Stop it to measure and to brush chips away.";
}

std::vector<std::string> material_cautions(WorkGroup group, std::string_view name) {
  std::vector<std::string> all;
  if (group == WorkGroup::kMagnesium)
    all.emplace_back(
        "Magnesium chips burn, and water feeds the fire. Sharp tools, no rubbing, chips swept up as they "
        "come, dry "
        "sand at hand.");
  if (group == WorkGroup::kTitanium)
    all.emplace_back("Fine titanium chips burn. Sharp tools, no rubbing, dry sand at hand, never water.");
  if (group == WorkGroup::kGreyIron || group == WorkGroup::kDuctileIron || group == WorkGroup::kMalleableIron)
    all.emplace_back("Iron dust: draw it off or wear a mask; no air line.");
  if (name.find("PTFE") != std::string_view::npos)
    all.emplace_back("PTFE gives off poisonous fumes when it burns: no smoking, no chips on a hot surface.");
  const bool leaded = std::any_of(kLeaded.begin(), kLeaded.end(), [&](const char* alloy) {
    return name.find(alloy) != std::string_view::npos;
  });
  if (leaded) all.emplace_back("There is lead in this metal: no air line; wash hands before eating.");
  return all;
}

// A thin saw in a mill bites and bursts.
void add_saws(Bench& bench) {
  for (const Work& work : bench.setup.works) {
    if (tool_of_kind(work, ToolKind::kSlittingSaw) == nullptr) continue;
    bench.sheet.cautions.push_back(fmt::format(
        "{}: a slitting saw that jams bursts. Slow, feed against its turning, the other slides locked, "
        "nobody in line with it; stopped before it is wiped.",
        work.feature));
  }
}

void write_cautions(Bench& bench) {
  add_saws(bench);
  for (const Work& work : bench.setup.works) {
    const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
    if (feature == nullptr) continue;  // refused when the text was read
    if (const auto* hole = std::get_if<part::Hole>(&feature->shape)) add_for(bench, work, *hole);
  }
}

}  // namespace sparewright::route
