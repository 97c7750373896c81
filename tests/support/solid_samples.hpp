// Parts for tests of solids, their meshes and files.
#pragma once

#include <vector>

#include <gtest/gtest.h>

#include "core/shape/cutters.hpp"
#include "shape_samples.hpp"
#include "solid/make_solid.hpp"
#include "solid/mesh.hpp"

namespace sparewright::tests {

// A plate with a step, a bore, two counterbored holes, a drilled one, a countersink and a cross hole: flat, round and
// conical faces, points of cones, edges between rounds.
inline std::vector<shape::Cutter> bracket_cutters() {
  const auto hole = [](double x, double y) { return shape::Point{x, y, 20.0}; };
  return {
      shape::milled_box("step", {}, {70.0, 0.0, 12.0}, {100.0, 60.0, 20.0},
                        shape::Open::kXHigh | shape::Open::kYLow | shape::Open::kYHigh | shape::Open::kZHigh),
      shape::through_hole("bore", hole(25.0, 30.0), kDown, dia(16.0), mm(20.0)),
      shape::through_hole("screw 1", hole(55.0, 15.0), kDown, dia(7.0), mm(20.0)),
      shape::flat_bottomed_hole("screw 1", hole(55.0, 15.0), kDown, dia(11.0), mm(7.0)),
      shape::through_hole("screw 2", hole(55.0, 45.0), kDown, dia(7.0), mm(20.0)),
      shape::countersink("screw 2", hole(55.0, 45.0), kDown, dia(12.0),
                         quantity::Angle::of(90.0, quantity::unit::degree)),
      shape::drilled_hole("dowel", hole(85.0, 30.0), kDown, dia(6.0), mm(14.0)),
      shape::through_hole("oil", {0.0, 30.0, 10.0}, {1.0, 0.0, 0.0}, dia(4.0), mm(25.0))};
}
inline shape::Recipe bracket() {
  return plate(bracket_cutters());
}

inline shape::Recipe round_bar(const std::vector<shape::Cutter>& cutters) {
  const shape::Frame along = shape::Frame::along({}, {1.0, 0.0, 0.0});
  const auto made = shape::Recipe::make({"bar", shape::Cylinder{along, 25.0, 80.0}}, cutters);
  EXPECT_TRUE(made);
  return made.value();
}

// The plate sawn through across x, the kerf from `from` to `to`.
inline shape::Cutter saw_cut(double from, double to) {
  return shape::milled_box(
      "saw cut", {}, {from, 0.0, 0.0}, {to, 60.0, 20.0},
      shape::Open::kYLow | shape::Open::kYHigh | shape::Open::kZLow | shape::Open::kZHigh);
}

inline solid::Solid solid_of(const shape::Recipe& recipe) {
  const auto made = solid::make_solid(recipe);
  EXPECT_TRUE(made);
  return made->solid;
}

inline solid::Mesh mesh_of(const shape::Recipe& recipe, const solid::Fineness& fineness = {}) {
  const auto mesh = solid::mesh_of(solid_of(recipe), fineness);
  EXPECT_TRUE(mesh) << (mesh ? "" : mesh.error().found);
  return mesh.value();
}

}  // namespace sparewright::tests
