#include "drawing/display_list.hpp"

#include <cmath>

#include <gtest/gtest.h>

#include "drawing/json.hpp"
#include "fixed_ruler.hpp"

namespace sparewright::drawing {
namespace {

const tests::FixedRuler kRuler;
constexpr TextStyle kStyle{2.5, Face::kBold};  // 2 mm a character, 2.75 above, 0.75 below

TEST(Text, StandsAtItsAnchor) {
  EXPECT_EQ(text(kRuler, "stop", {10.0, 20.0}, kStyle).box, (Box{10.0, 17.25, 18.0, 20.75}));
  EXPECT_EQ(text(kRuler, "stop", {10.0, 20.0}, kStyle, Anchor::kMiddle).box, (Box{6.0, 17.25, 14.0, 20.75}));
  EXPECT_EQ(text(kRuler, "stop", {10.0, 20.0}, kStyle, Anchor::kRight).box, (Box{2.0, 17.25, 10.0, 20.75}));
}

TEST(DisplayList, MovesEveryKindOfElement) {
  const DisplayList list{Line{{0.0, 1.0}, {2.0, 3.0}, Weight::kBold}, Circle{{1.0, 1.0}, 5.0, Weight::kThin},
                         Arc{{1.0, 1.0}, 5.0, 0.0, 1.0, Weight::kThin},
                         Filled{{{0.0, 0.0}, {1.0, 0.0}, {0.0, 1.0}}}, text(kRuler, "a", {0.0, 0.0}, kStyle)};
  DisplayList there;
  append(there, list, {10.0, -4.0});
  DisplayList back;
  append(back, there, {-10.0, 4.0});
  EXPECT_EQ(back, list);
  EXPECT_EQ(std::get<Line>(there[0]).to, (Point{12.0, -1.0}));
  EXPECT_EQ(std::get<Circle>(there[1]).centre, (Point{11.0, -3.0}));
  EXPECT_EQ(std::get<Arc>(there[2]).centre, (Point{11.0, -3.0}));
  EXPECT_EQ(std::get<Filled>(there[3]).corners[1], (Point{11.0, -4.0}));
  EXPECT_EQ(std::get<Text>(there[4]).box, moved(std::get<Text>(list[4]).box, {10.0, -4.0}));
}

TEST(Arrowhead, PointsAwayFromWhereItComes) {
  DisplayList list;
  add_arrowhead(list, {0.0, 5.0}, {10.0, 5.0}, 2.0);
  const auto& corners = std::get<Filled>(list.front()).corners;
  ASSERT_EQ(corners.size(), 3U);
  EXPECT_EQ(corners[0], (Point{10.0, 5.0}));
  EXPECT_DOUBLE_EQ(corners[1].x_mm, 8.0);
  EXPECT_DOUBLE_EQ(corners[2].x_mm, 8.0);
  EXPECT_DOUBLE_EQ(corners[1].y_mm + corners[2].y_mm, 10.0);
  EXPECT_NE(corners[1].y_mm, corners[2].y_mm);
  add_arrowhead(list, {1.0, 1.0}, {1.0, 1.0}, 2.0);
  EXPECT_EQ(list.size(), 1U);
}

TEST(Stroke, OnlyHiddenAndCentreLinesAreBroken) {
  for (const Weight weight :
       {Weight::kFrame, Weight::kBold, Weight::kVisible, Weight::kThin, Weight::kHatch}) {
    EXPECT_TRUE(stroke_of(weight).dashes_mm.empty());
  }
  EXPECT_EQ(stroke_of(Weight::kHidden).dashes_mm.size(), 2U);
  EXPECT_EQ(stroke_of(Weight::kCentre).dashes_mm.size(), 4U);
  EXPECT_GT(stroke_of(Weight::kBold).width_mm, stroke_of(Weight::kVisible).width_mm);
  EXPECT_GT(stroke_of(Weight::kVisible).width_mm, stroke_of(Weight::kThin).width_mm);
}

TEST(Json, WritesOneElementALine) {
  const DisplayList list{Line{{10.0, 20.004}, {-0.001, 2.5}, Weight::kHidden},
                         Circle{{1.0, 2.0}, 3.0, Weight::kBold},
                         Arc{{1.0, 2.0}, 3.0, -0.5, 1.5, Weight::kVisible},
                         Filled{{{0.0, 0.0}, {1.0, 0.0}, {0.0, 1.0}}, Ink::kWhite},
                         text(kRuler, "a \"b\" \\ \u00bd\x01", {10.0, 20.0}, kStyle, Anchor::kRight)};
  EXPECT_EQ(to_json(list), R"([
{"line":[10.00,20.00,0.00,2.50],"weight":"hidden"},
{"circle":[1.00,2.00,3.00],"weight":"bold"},
{"arc":[1.00,2.00,3.00],"angles":[-0.5000,1.5000],"weight":"visible"},
{"filled":[0.00,0.00,1.00,0.00,0.00,1.00],"ink":"white"},
{"text":"a \"b\" \\ ½\u0001","at":[10.00,20.00],"anchor":"right","cap":2.50,"face":"bold","ink":"black","box":[-10.00,17.25,10.00,20.75]}
]
)");
  EXPECT_EQ(to_json({}), "[\n]\n");
}

}  // namespace
}  // namespace sparewright::drawing
