// Sections: the metal cut, by plain geometry and by rays in the plane; hatching only over metal.
#include "drawing/section.hpp"

#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "core/shape/cutters.hpp"
#include "core/shape/material.hpp"
#include "solid/make_solid.hpp"
#include "splitmix.hpp"

namespace sparewright::drawing {
namespace {

using quantity::Diameter;
using quantity::Length;
using shape::Cutter;

base::Result<std::vector<solid::Edge>> edges_of(const shape::Recipe& recipe) {
  const auto made = solid::make_solid(recipe);
  if (!made) return tl::unexpected(made.error());
  return solid::edges_of(made->solid);
}

// A plate 60 x 40 x 10.
shape::Recipe plate(const std::vector<Cutter>& cutters) {
  return *shape::Recipe::make({"plate", shape::Box{shape::Frame{}, {60, 40, 10}}}, cutters);
}
Cutter hole(double x, double y, double diameter, double depth) {
  return shape::flat_bottomed_hole("hole", {x, y, 10}, {0, 0, -1}, Diameter::from_base(diameter),
                                   Length::from_base(depth));
}
Cutter through(double x, double y, double diameter) {
  return shape::through_hole("hole", {x, y, 10}, {0, 0, -1}, Diameter::from_base(diameter),
                             Length::from_base(10));
}

TEST(Section, CutsTheMetalOnly) {
  // Through the middle of a counterbored hole: 8 through, 14 by 4.
  const auto section = section_at(plate({through(20, 15, 8), hole(20, 15, 14, 4)}), 15.0, 1.0, edges_of);
  ASSERT_TRUE(section);
  EXPECT_NEAR(section->area_mm2, 600.0 - 80.0 - 6.0 * 4.0, 0.5);
  // Beside the middle the hole is narrower: 3 off, sqrt(16 - 9) each way.
  const auto beside = section_at(plate({through(20, 15, 8)}), 18.0, 1.0, edges_of);
  ASSERT_TRUE(beside);
  EXPECT_NEAR(beside->area_mm2, 600.0 - 2.0 * std::sqrt(7.0) * 10.0, 0.5);
}

TEST(Section, HatchingStaysInTheMetal) {
  const shape::Recipe recipe = plate({through(20, 15, 8), hole(45, 15, 10, 6)});
  const auto section = section_at(recipe, 15.0, 1.0, edges_of);
  ASSERT_TRUE(section);
  EXPECT_GT(section->hatched.size(), 20U);
  for (const ViewLine& line : section->hatched) {
    for (const double t : {0.02, 0.5, 0.98}) {
      const double x = line.from.u + t * (line.to.u - line.from.u);
      const double z = line.from.v + t * (line.to.v - line.from.v);
      EXPECT_TRUE(shape::is_metal(recipe.work(), {x, 15.0, z})) << x << ", " << z;
    }
  }
}

TEST(Section, ShowsNothingHidden) {
  const auto section = section_at(plate({through(20, 15, 8), through(40, 30, 6)}), 15.0, 1.0, edges_of);
  ASSERT_TRUE(section);
  for (const ViewLine& line : section->view.lines)
    EXPECT_EQ(line.seen, Seen::kVisible);
}

// The area of the metal in the plane, by rays along x at many heights.
double ray_area(const shape::Work& work, double y, double height) {
  constexpr int kRays = 4000;
  double sum = 0.0;
  for (int i = 0; i < kRays; ++i) {
    const double z = height * (i + 0.5) / kRays;
    for (const shape::Interval& metal : shape::metal_along(work, {{0.0, y, z}, {1.0, 0.0, 0.0}}))
      sum += metal.length_mm() * height / kRays;
  }
  return sum;
}

TEST(Section, HasTheAreaThatRaysFind) {
  for (std::uint64_t seed = 1; seed <= 25; ++seed) {
    tests::SplitMix random(seed);
    std::vector<Cutter> cutters;
    for (std::size_t i = 0; i < 4; ++i) {
      const double x = 8.0 + 14.0 * static_cast<double>(i) + random.unit();
      const double y = random.between(8.0, 32.0);
      const double d = random.between(3.0, 9.0);
      cutters.push_back(random.one_in(2) ? through(x, y, d) : hole(x, y, d, random.between(2.0, 8.0)));
    }
    const shape::Recipe recipe = plate(cutters);
    const double y = random.between(8.0, 32.0);
    const auto section = section_at(recipe, y, 1.0, edges_of);
    ASSERT_TRUE(section) << seed;
    EXPECT_NEAR(section->area_mm2, ray_area(recipe.work(), y, 10.0), 1.0) << seed;
  }
}

TEST(Hatched, CountsCrossings) {
  // A square with a square hole: 100 - 16 of metal.
  const auto square = [](double low, double high) {
    return std::vector<ViewLine>{{{low, low}, {high, low}},
                                 {{high, low}, {high, high}},
                                 {{high, high}, {low, high}},
                                 {{low, high}, {low, low}}};
  };
  std::vector<ViewLine> outline = square(0, 10);
  for (const ViewLine& line : square(3, 7))
    outline.push_back(line);
  double length = 0.0;
  for (const ViewLine& line : hatched(outline, 0.1))
    length += std::hypot(line.to.u - line.from.u, line.to.v - line.from.v);
  EXPECT_NEAR(length * 0.1, 84.0, 0.5);
  EXPECT_TRUE(hatched({}, 1.0).empty());
}

}  // namespace
}  // namespace sparewright::drawing
