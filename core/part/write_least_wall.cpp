#include <fmt/format.h>

#include "core/part/writing.hpp"
#include "core/shape/least_wall.hpp"

namespace sparewright::part {
namespace {

using ledger::Pen;

std::string face_words(std::string_view shape_face) {
  const auto face = find_blank_face(shape_face);
  return face ? std::string(name_of(*face)) : "the outside";
}

// "between pivot bore and front"
std::string ends_in_words(const shape::Recipe& recipe, const shape::LeastWall& wall) {
  if (!wall.cut) return "from one side of the blank to the other";
  const std::string& cut = recipe.cuts()[*wall.cut].feature;
  return fmt::format("between {} and {}", cut,
                     wall.other ? recipe.cuts()[*wall.other].feature : face_words(wall.face));
}

ledger::Root by_shapes(std::string source) {
  ledger::Root root;
  root.kind = quantity::Kind::kLength;
  root.origin = ledger::Origin::kStandard;
  root.source = std::move(source);
  return root;
}

// Where an end lies, as it is measured on the finished part.
void write_end(Pen& pen, const Part& part, std::string_view end, const shape::Point& at) {
  const shape::Vector from_corner = at - shape::Point{};
  for (const Axis axis : kAxes) {
    const Face side = face_at(axis, false);
    ledger::Root root = by_shapes(fmt::format("from the {}", name_of(side)));
    root.value = component(from_corner, axis) - pen.need(side_path(part, side)).value;
    pen.root(fmt::format("{} {}", end, name_of(axis)), std::move(root));
  }
}

}  // namespace

void write_least_wall(Pen& pen, const Part& part) {
  const auto& recipe = pen.need_value<shape::Recipe>(kRecipe);
  const auto wall = shape::least_wall(recipe.work());
  if (!wall) {
    pen.root("thickness", by_shapes("not computed: no metal is left, or too many cuts run into each other"));
    return;
  }
  ledger::Root thickness = by_shapes(
      fmt::format("{}, by rays through the exact shapes at nominal size", ends_in_words(recipe, *wall)));
  thickness.value = wall->least_mm;
  pen.root("thickness", std::move(thickness));
  write_end(pen, part, "from", wall->from);
  write_end(pen, part, "to", wall->to);
}

}  // namespace sparewright::part
