#include "core/shape/recipe.hpp"

#include <gtest/gtest.h>

#include "core/shape/clearance.hpp"
#include "core/shape/cutters.hpp"
#include "core/shape/support.hpp"
#include "shape_samples.hpp"

namespace sparewright::shape {
namespace {

using base::Code;
using tests::dia;
using tests::kDown;
using tests::mm;
namespace unit = quantity::unit;

Blank plate() {
  return {"plate", Box{{}, {100.0, 50.0, 10.0}}};
}

std::vector<Cutter> three_cuts() {
  return {through_hole("bore", {20.0, 25.0, 10.0}, kDown, dia(12.0), mm(10.0)),
          drilled_hole("oil hole", {60.0, 25.0, 10.0}, kDown, dia(3.0), mm(6.0)),
          milled_box("step", {}, {80.0, 0.0, 5.0}, {100.0, 50.0, 10.0},
                     Open::kXHigh | Open::kYLow | Open::kYHigh | Open::kZHigh)};
}

Recipe recipe_of(const std::vector<Cutter>& cutters) {
  const auto made = Recipe::make(plate(), cutters);
  EXPECT_TRUE(made);
  return made.value();
}

TEST(Overrun, GoesOneMillimetrePastOpenEndsOnly) {
  const Recipe recipe = recipe_of(three_cuts());
  const auto cuts = recipe.cuts();
  EXPECT_EQ(bounds(cuts[0].body), (Bounds{{14.0, 19.0, -1.0}, {26.0, 31.0, 11.0}}));
  const Bounds oil = bounds(cuts[1].body);
  EXPECT_DOUBLE_EQ(oil.high.z, 11.0);
  EXPECT_NEAR(oil.low.z, 4.0 - point_length_mm(1.5, kUsualPoint_rad), 1e-9);
  EXPECT_EQ(bounds(cuts[2].body), (Bounds{{80.0, -1.0, 5.0}, {101.0, 51.0, 11.0}}));
  EXPECT_EQ(bounds(cuts[2].nominal), (Bounds{{80.0, 0.0, 5.0}, {100.0, 50.0, 10.0}}));
}

TEST(Overrun, KeepsTheSlopeOfAConeAndStopsAtItsPoint) {
  const Cone sharp{{}, 4.0, 0.5, 3.5};
  const auto grown = std::get<Cone>(with_overrun(sharp, Open::kThrough));
  EXPECT_DOUBLE_EQ(grown.start_radius_mm, 5.0);
  EXPECT_DOUBLE_EQ(grown.end_radius_mm, 0.0);
  EXPECT_DOUBLE_EQ(grown.height_mm, 5.0);  // 1 before the start, 0.5 to the point
  EXPECT_EQ(grown.frame.origin, (Point{0.0, 0.0, -1.0}));
}

TEST(Overrun, OfACountersinkWidensItInTheAir) {
  const Cutter sink =
      countersink("sink", {0.0, 0.0, 10.0}, kDown, dia(10.0), quantity::Angle::of(90.0, unit::degree));
  const Bounds box = bounds(with_overrun(sink.nominal, sink.open));
  EXPECT_NEAR(box.high.x, 6.0, 1e-9);
  EXPECT_NEAR(box.high.z, 11.0, 1e-9);
  EXPECT_NEAR(box.low.z, 5.0, 1e-9);
}

TEST(Recipe, IsOnTheGrid) {
  auto cutters = three_cuts();
  std::get<Cylinder>(cutters[0].nominal).radius_mm = 6.0000004;
  cutters[0].nominal = placed(cutters[0].nominal, Frame::at({1e-8, -1e-8, 0.0}));
  EXPECT_EQ(recipe_of(cutters).fingerprint(), recipe_of(three_cuts()).fingerprint());
}

TEST(Recipe, PrefixIsTheRecipeOfTheFirstCutters) {
  const Recipe whole = recipe_of(three_cuts());
  for (std::size_t k = 0; k <= 3; ++k) {
    auto cutters = three_cuts();
    cutters.resize(k);
    EXPECT_EQ(whole.first(k).fingerprint(), recipe_of(cutters).fingerprint());
    EXPECT_EQ(whole.fingerprint_after(k), whole.first(k).fingerprint());
    EXPECT_EQ(whole.work_after(k).cuts.size(), k);
  }
  EXPECT_EQ(whole.first(99).fingerprint(), whole.fingerprint());
}

TEST(Recipe, FingerprintSeesEveryChange) {
  const base::Fingerprint before = recipe_of(three_cuts()).fingerprint();
  const auto differs = [&](auto change) {
    auto cutters = three_cuts();
    change(cutters);
    return recipe_of(cutters).fingerprint() != before;
  };
  EXPECT_TRUE(differs([](auto& c) { std::swap(c[0], c[1]); }));
  EXPECT_TRUE(differs([](auto& c) { c[0].feature = "bore 2"; }));
  EXPECT_TRUE(differs([](auto& c) { c[0].open = Open::kStart; }));
  EXPECT_TRUE(differs([](auto& c) { std::get<Cylinder>(c[0].nominal).radius_mm += kGrid_mm; }));
  EXPECT_TRUE(differs([](auto& c) { std::get<DrilledHole>(c[1].nominal).point_rad = 2.0; }));
}

TEST(Recipe, RefusesWithTheNameOfTheFeature) {
  auto cutters = three_cuts();
  std::get<Cylinder>(cutters[0].nominal).radius_mm = 0.0;
  const auto made = Recipe::make(plate(), cutters);
  ASSERT_FALSE(made);
  EXPECT_EQ(made.error().code, Code::kSizeNotPositive);
  EXPECT_NE(made.error().subject.find("bore"), std::string::npos);
}

TEST(Recipe, RefusesBlanksWithoutAnEnd) {
  EXPECT_EQ(Recipe::make({"air", HalfSpace{}}, {}).error().code, Code::kValueNotAccepted);
  EXPECT_EQ(Recipe::make({"hole", DrilledHole{{}, 1.0, 1.0}}, {}).error().code, Code::kValueNotAccepted);
}

TEST(Recipe, RefusesMoreCuttersThanAPartHas) {
  const std::vector<Cutter> many(kMostCutters + 1, three_cuts()[0]);
  EXPECT_EQ(Recipe::make(plate(), many).error().code, Code::kTooMany);
}

TEST(MilledBox, TakesItsCornersInAnyOrder) {
  const Cutter one = milled_box("a", {}, {0.0, 0.0, 0.0}, {1.0, 2.0, 3.0}, Open::kNone);
  const Cutter other = milled_box("a", {}, {1.0, 0.0, 3.0}, {0.0, 2.0, 0.0}, Open::kNone);
  EXPECT_EQ(one.nominal, other.nominal);
}

}  // namespace
}  // namespace sparewright::shape
