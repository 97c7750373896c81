#include "core/part/blank.hpp"

namespace sparewright::part {
namespace {

struct Row {
  BlankShape shape;
  std::string_view name;
};
constexpr std::array kShapes{
    Row{BlankShape::kFlatBar, "flat bar"},   Row{BlankShape::kBlock, "block"},
    Row{BlankShape::kPlate, "plate"},        Row{BlankShape::kSquareBar, "square bar"},
    Row{BlankShape::kRoundBar, "round bar"}, Row{BlankShape::kHexBar, "hex bar"},
    Row{BlankShape::kTube, "tube"},          Row{BlankShape::kCasting, "casting"}};

}  // namespace

std::string_view name_of(BlankShape shape) {
  for (const Row& row : kShapes) {
    if (row.shape == shape) return row.name;
  }
  return "";
}

std::optional<BlankShape> find_blank_shape(std::string_view name) {
  for (const Row& row : kShapes) {
    if (row.name == name) return row.shape;
  }
  return std::nullopt;
}

bool is_one_across(BlankShape shape) {
  return is_round(shape) || shape == BlankShape::kSquareBar;
}

bool is_round(BlankShape shape) {
  return shape == BlankShape::kRoundBar || shape == BlankShape::kTube;
}

bool is_bar(BlankShape shape) {
  return is_one_across(shape) || shape == BlankShape::kHexBar;
}

base::Fingerprint fingerprint(const Blank& blank) {
  base::Hasher h;
  const auto add = [&](const BlankSize& size) {
    h.add(size.nominal.base).add(size.nominal.typed).add(size.found.has_value());
    if (size.found) h.add(size.found->base).add(size.found->typed);
    h.add(size.found_below_mm).add(size.found_above_mm);
    h.add(size.found_with).add(size.mill_lower_mm).add(size.mill_upper_mm).add(size.mill_source);
  };
  h.add(static_cast<int>(blank.shape))
      .add(blank.material)
      .add(blank.density_kg_per_mm3)
      .add(blank.density_source);
  for (const BlankSize& size : blank.sizes)
    add(size);
  h.add(blank.bore.has_value());
  if (blank.bore) add(*blank.bore);
  const auto add_typed = [&](const quantity::Typed& typed) { h.add(typed.base).add(typed.typed); };
  h.add(blank.lobing.has_value());
  if (blank.lobing) {
    h.add(blank.lobing->lobes).add(blank.lobing->found_with);
    add_typed(blank.lobing->v_block);
    add_typed(blank.lobing->swing);
  }
  for (const RoughFace& face : blank.rough) {
    h.add(static_cast<int>(face.side));
    add_typed(face.uneven);
  }
  for (const CoredHole& hole : blank.cored) {
    h.add(hole.name).add(static_cast<int>(hole.into)).add(hole.finished_by);
    for (const auto& [axis, at] : hole.at) {
      h.add(static_cast<int>(axis));
      add_typed(at);
    }
    add_typed(hole.diameter);
  }
  return h.done();
}

}  // namespace sparewright::part
