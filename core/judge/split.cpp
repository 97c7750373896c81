// A split: whether metal stands on both sides of the saw cut.
#include <array>

#include <fmt/format.h>

#include "core/judge/checks.hpp"
#include "core/shape/support.hpp"
#include "core/shape/volume.hpp"

namespace sparewright::judge {
namespace {

using ledger::Pen;

// The blank on one side of a slab through all of it.
shape::Primitive beyond(const shape::Bounds& blank, const shape::Bounds& slab, part::Face side) {
  shape::Vector low = blank.low - shape::Point{};
  shape::Vector high = blank.high - shape::Point{};
  const part::Axis axis = part::axis_of(side);
  shape::Vector& inner = part::at_greater_end(side) ? low : high;
  part::component(inner, axis) =
      part::component((part::at_greater_end(side) ? slab.high : slab.low) - shape::Point{}, axis);
  return shape::Box{shape::Frame{}.shifted(low), high - low};
}

const ledger::Figure& write_piece(Pen& pen, const shape::Work& work, const shape::Primitive& room,
                                  part::Face side) {
  const shape::RayVolume metal = shape::metal_within(work, room);
  ledger::Root root;
  root.kind = quantity::Kind::kVolume;
  root.origin = ledger::Origin::kStandard;
  root.value = metal.volume_mm3;
  root.source = fmt::format("by {} rays through the exact shapes at nominal size", metal.rays);
  return pen.root(fmt::format("piece towards {}", part::name_of(side)), root);
}

void judge_split(Pen& pen, const part::Feature& feature, const part::Formed& split) {
  const auto& recipe = pen.need_value<shape::Recipe>(part::kRecipe);
  for (const shape::Cut& cut : recipe.cuts()) {
    if (cut.feature != feature.name) continue;
    const shape::Bounds blank = shape::bounds(recipe.blank().body);
    const shape::Bounds slab = shape::bounds(cut.nominal);
    for (const part::Face side : {split.side, part::opposite(split.side)}) {
      const ledger::Figure& piece = write_piece(pen, recipe.work(), beyond(blank, slab, side), side);
      if (piece.value > 0.0) continue;
      pen.state({.check = "split leaves two pieces",
                 .subject = feature.name,
                 .state = ledger::State::kNo,
                 .figure = piece.name,
                 .reason = fmt::format("no metal is left on its side towards the {}", part::name_of(side)),
                 .source = "the exact shapes",
                 .todo = "look at its place, and at the side it is measured from"});
    }
  }
}

}  // namespace

void add_split_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* formed = std::get_if<part::Formed>(&feature.shape);
    if (formed == nullptr || formed->form != part::Form::kSplit) continue;
    stages.push_back(check_stage(subject, "split", feature.name, [&feature, split = *formed](Pen& pen) {
      judge_split(pen, feature, split);
    }));
  }
}

}  // namespace sparewright::judge
