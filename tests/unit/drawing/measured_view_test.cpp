#include "drawing/measured_view.hpp"

#include <gtest/gtest.h>

#include "drawing_faults.hpp"
#include "fixed_ruler.hpp"

namespace sparewright {
namespace {

using survey::Sketch;

// Two holes of 12 and 8 mm, 50 mm apart, the edge 20 mm before the first, and readings that cross one another.
Sketch two_holes() {
  Sketch sketch;
  sketch.dimension = "centres";
  sketch.rounds = {{"one", 0.0, 12.0}, {"other", 50.0, 8.0}};
  sketch.edges_mm = {-20.0};
  sketch.spans = {{"over", -6.0, 54.0},       {"between", 6.0, 46.0},   {"same sides", -6.0, 46.0},
                  {"edge near", -20.0, -6.0}, {"edge far", -20.0, 6.0}, {"thin", 46.0, 46.5}};
  return sketch;
}

const std::vector<std::string> kSays{"60.01, 60.02", "39.98", "52.00, 52.01, 51.99",
                                     "13.99",        "26.02", "0.50"};

TEST(MeasuredView, HasEveryReadingAndNoTextOverAnother) {
  const tests::FixedRuler ruler;
  const auto picture = drawing::measured_view(two_holes(), kSays, 90.0, ruler);
  EXPECT_EQ(tests::drawing_faults(picture.list, {0.0, 0.0, 90.0, picture.height_mm}),
            std::vector<std::string>{});
  std::vector<std::string> said;
  for (const drawing::Element& element : picture.list) {
    if (const auto* text = std::get_if<drawing::Text>(&element)) said.push_back(text->says);
  }
  EXPECT_EQ(said.size(), kSays.size());
}

// 80 mm of work, metal behind its edge and 90 mm of paper: 1:1 does not leave 5 mm at both ends for the metal only where
// the paper is narrower.
TEST(MeasuredView, TakesTheLargestScaleThatFits) {
  const tests::FixedRuler ruler;
  EXPECT_EQ(drawing::measured_view(two_holes(), kSays, 90.0, ruler).scale, "1:1");
  EXPECT_EQ(drawing::measured_view(two_holes(), kSays, 80.0, ruler).scale, "1:2");
  Sketch wheel;
  wheel.rounds = {{"rim", 40.0, 80.0}};
  wheel.spans = {{"rim", 0.0, 80.0}};
  EXPECT_EQ(drawing::measured_view(wheel, {"80.0"}, 200.0, ruler).scale, "1:4")
      << "no higher than kMeasuredHigh_mm";
}

TEST(MeasuredView, DrawsASpanAsLongAsItIs) {
  const tests::FixedRuler ruler;
  const auto picture = drawing::measured_view(two_holes(), kSays, 90.0, ruler);
  bool has_between = false;
  for (const drawing::Element& element : picture.list) {
    const auto* line = std::get_if<drawing::Line>(&element);
    if (line == nullptr || line->from.y_mm != line->to.y_mm || line->weight != drawing::Weight::kThin)
      continue;
    has_between = has_between || std::abs(line->to.x_mm - line->from.x_mm - 40.0) < 1e-9;
  }
  EXPECT_TRUE(has_between);
}

class PlainSketches : public testing::TestWithParam<Sketch::Between> {};

TEST_P(PlainSketches, StayOnTheirPaper) {
  const tests::FixedRuler ruler;
  Sketch sketch;
  sketch.between = GetParam();
  sketch.edges_mm = {0.0, 31.0};
  sketch.spans = {{"it", 0.0, 31.0}, {"again", 0.0, 31.0}};
  const auto picture = drawing::measured_view(sketch, {"31.0", "31.1, 31.0"}, 88.0, ruler);
  EXPECT_EQ(tests::drawing_faults(picture.list, {0.0, 0.0, 88.0, picture.height_mm}),
            std::vector<std::string>{});
}

INSTANTIATE_TEST_SUITE_P(All, PlainSketches,
                         testing::Values(Sketch::Between::kMetal, Sketch::Between::kAir,
                                         Sketch::Between::kStep));

}  // namespace
}  // namespace sparewright
