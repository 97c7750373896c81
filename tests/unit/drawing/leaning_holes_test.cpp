// A hole that leans is round where one looks along it.
#include "drawing/leaning_holes.hpp"

#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "dimensions.hpp"
#include "solid/make_solid.hpp"

namespace sparewright::drawing {
namespace {

using part::Face;
using quantity::Kind;
using tests::sized;
using tests::typed;

part::Hole leaning(double x, double lean_rad) {
  part::Hole hole;
  hole.diameter = sized(Kind::kDiameter, 6.0);
  hole.at[part::Axis::kX] = {sized(Kind::kLength, x), Face::kLeftEnd, false};
  hole.at[part::Axis::kY] = {sized(Kind::kLength, 20.0), Face::kFront, false};
  hole.lean = part::Lean{Face::kRightEnd, sized(Kind::kAngle, lean_rad)};
  return hole;
}

// In a plate 100 x 40 x 10.
std::vector<LeaningHole> seen(std::vector<part::Feature> features) {
  part::Part part;
  part.blank.shape = part::BlankShape::kPlate;
  part.blank.material = "1018 cold drawn";
  part.blank.sizes[0].nominal = typed(Kind::kLength, 100.0);
  part.blank.sizes[1].nominal = typed(Kind::kLength, 40.0);
  part.blank.sizes[2].nominal = typed(Kind::kLength, 10.0);
  part.surroundings.general = part::usual_general_tolerances(quantity::UnitSystem::kInch);
  part.features = std::move(features);
  ledger::Ledger ledger;
  ledger.declare(part::stages(part));
  const auto recipe = ledger.value<shape::Recipe>(part::kRecipe);
  EXPECT_TRUE(recipe);
  const auto made = solid::make_solid(*recipe);
  EXPECT_TRUE(made);
  const auto edges = solid::edges_of(made->solid);
  EXPECT_TRUE(edges);
  return leaning_holes(part, ledger.keep(), recipe->work(), *edges);
}

TEST(LeaningHoles, AreRoundAlongThemselves) {
  const double lean = std::numbers::pi / 6.0;
  const auto all = seen({{"oil hole", leaning(40.0, lean)}});
  ASSERT_EQ(all.size(), 1U);
  EXPECT_EQ(all[0].name, "oil hole");
  EXPECT_NEAR(all[0].at.x, 40.0, 1e-9);
  EXPECT_NEAR(all[0].at.z, 10.0, 1e-9);
  int on_the_rim = 0;
  for (const ViewPath& path : all[0].view.paths) {
    for (const shape::FlatPoint& p : path.points) {
      const double apart = std::hypot(p.u - all[0].mouth.u, p.v - all[0].mouth.v);
      if (apart > 4.0) continue;
      EXPECT_NEAR(apart, 3.0, 0.01);
      ++on_the_rim;
    }
  }
  EXPECT_GT(on_the_rim, 40);
}

TEST(LeaningHoles, AlikeHaveOneViewForAll) {
  const auto all = seen({{"oil hole 1", leaning(30.0, 0.3)},
                         {"oil hole 2", leaning(60.0, 0.3)},
                         {"steep", leaning(80.0, 0.5)}});
  ASSERT_EQ(all.size(), 2U);
  EXPECT_EQ(all[1].name, "steep");
}

}  // namespace
}  // namespace sparewright::drawing
