// The dangers of a drill press, a saw and a bench. Common practice.
#include <algorithm>

#include <fmt/format.h>

#include "core/route/marks.hpp"

namespace sparewright::route {
namespace {

using shop::ToolKind;

bool uses(const Setup& setup, ToolKind kind) {
  return std::any_of(setup.works.begin(), setup.works.end(),
                     [&](const Work& work) { return tool_of_kind(work, kind) != nullptr; });
}

// Sheet that a drill goes through before its lips are all in.
bool is_thin(MarksBench& bench) {
  const part::Axis axis = part::axis_of(bench.by.up);
  const ledger::Figure& thick = bench.pen.ask(part::blank_path(bench.route.part.blank, axis));
  if (!thick.known()) return false;
  double widest = 0.0;
  for (const Work& work : bench.setup.works) {
    for (const shop::Tool& tool : work.tools) {
      if (tool.kind == ToolKind::kTwistDrill && tool.diameter) widest = std::max(widest, tool.diameter->base);
    }
  }
  return thick.value < widest / 2.0;
}

void say_drill_press(MarksBench& bench) {
  auto& cautions = bench.sheet.cautions;
  cautions.emplace_back(
      "Never hold the work by hand: clamp it, or let a bolt in the table's slot stop it on its left. A drill "
      "that "
      "grabs whips it round.");
  cautions.emplace_back(
      "Glasses on, long hair and sleeves tied back, no gloves. Chuck key out before the switch. Belt changed "
      "with "
      "the plug out.");
  cautions.emplace_back(
      "Ease the feed as the point comes through; wood under the work, or a hole in the table.");
  if (is_thin(bench))
    cautions.emplace_back(
        "Thin work: clamp it flat between two boards. The drill comes through before it is guided and lifts "
        "the "
        "sheet like a screw.");
}

void say_saw(MarksBench& bench) {
  auto& cautions = bench.sheet.cautions;
  cautions.emplace_back(
      "Hands out of the line of the blade; guard down to just above the work; a stick for the last of it. "
      "Blade "
      "stopped before the work is moved.");
  cautions.emplace_back(
      "Three teeth in the metal at least. Round work in a V-block: the blade rolls it. Hold up the end that "
      "falls "
      "off.");
}

// Whether a bush is put in with retaining compound.
bool bonds(const MarksBench& bench) {
  return std::any_of(bench.setup.works.begin(), bench.setup.works.end(), [&](const Work& work) {
    const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
    const auto* formed = feature == nullptr ? nullptr : std::get_if<part::Formed>(&feature->shape);
    return formed != nullptr && formed->form == part::Form::kBush && formed->is_bonded;
  });
}

void say_bench(MarksBench& bench) {
  auto& cautions = bench.sheet.cautions;
  if (uses(bench.setup, ToolKind::kPress))
    cautions.emplace_back(
        "At the press: glasses on, fingers out, stand beside it. What goes in askew jumps out. Never over "
        "what the "
        "press is rated for.");
  if (bonds(bench))
    cautions.emplace_back(
        "Retaining compound: gloves, fresh air, none in the eyes. Taken apart by heat it gives off fumes.");
  if (uses(bench.setup, ToolKind::kFile))
    cautions.emplace_back(
        "A handle on every file. Filings are brushed off, not blown or wiped with the hand.");
  if (uses(bench.setup, ToolKind::kTap) || uses(bench.setup, ToolKind::kReamer))
    cautions.emplace_back("Tap and reamer break when they are pushed sideways: both hands, even pull.");
}

}  // namespace

void write_marks_cautions(MarksBench& bench) {
  switch (bench.setup.machine.kind) {
    case shop::MachineKind::kDrillPress:
      return say_drill_press(bench);
    case shop::MachineKind::kSaw:
      return say_saw(bench);
    default:
      return say_bench(bench);
  }
}

}  // namespace sparewright::route
