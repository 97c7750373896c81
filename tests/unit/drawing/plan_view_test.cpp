#include "drawing/plan_view.hpp"

#include <cmath>
#include <limits>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "drawing/json.hpp"
#include "drawing_faults.hpp"
#include "fixed_ruler.hpp"
#include "golden.hpp"

namespace sparewright::drawing {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Not;

const tests::FixedRuler kRuler;
constexpr PictureRoom kRoom{90.0, 80.0};

// 4 x 2 in between 6 in jaws, zero at the left front corner; one hole cut here, one not, a step cut here.
route::PlanView bracket() {
  route::PlanView v;
  v.work = {"work", 0.0, 0.0, 101.6, 50.8, false};
  v.holes = {{"bore", 25.4, 25.4, 11.1, true}, {"stud", 63.5, 25.4, 4.0, false}};
  v.flats = {{"step", 76.2, 0.0, 101.6, 50.8, true}};
  v.jaw_left_mm = -25.4;
  v.jaw_right_mm = 127.0;
  v.parallel_mm = 6.35;
  v.left_side = "left end";
  v.right_side = "right end";
  v.near_side = "front";
  v.far_side = "back";
  return v;
}

std::vector<std::string> words(const Picture& picture) {
  std::vector<std::string> all;
  for (const Element& element : picture.list) {
    if (const auto* text = std::get_if<Text>(&element)) all.push_back(text->says);
  }
  return all;
}

template <typename Kind>
std::vector<Kind> of_weight(const Picture& picture, Weight weight) {
  std::vector<Kind> found;
  for (const Element& element : picture.list) {
    const auto* one = std::get_if<Kind>(&element);
    if (one != nullptr && one->weight == weight) found.push_back(*one);
  }
  return found;
}

Text the_text(const Picture& picture, const std::string& says) {
  for (const Element& element : picture.list) {
    const auto* text = std::get_if<Text>(&element);
    if (text != nullptr && text->says == says) return *text;
  }
  ADD_FAILURE() << "no " << says;
  return {};
}

// The arrows point the way the collar readings rise. The picture's y runs down: away from the operator is less.
TEST(PlanView, DirectionsAreThoseOfTheCollars) {
  for (const bool right : {true, false}) {
    for (const bool away : {true, false}) {
      route::PlanView view = bracket();
      view.x_rises_right = right;
      view.y_rises_away = away;
      const auto picture = plan_view(view, nullptr, kRoom, kRuler);
      ASSERT_TRUE(picture.has_value());
      const Point x = the_text(*picture, "+X").at;
      const Point y = the_text(*picture, "+Y").at;
      EXPECT_EQ(x.x_mm > y.x_mm, right);
      EXPECT_EQ(y.y_mm < x.y_mm, away);
      EXPECT_THAT(tests::drawing_faults(picture->list, {0.0, 0.0, kRoom.width_mm, picture->height_mm}),
                  IsEmpty());
    }
  }
}

TEST(PlanView, IsTheGoldenOne) {
  const auto picture = plan_view(bracket(), nullptr, kRoom, kRuler);
  ASSERT_TRUE(picture.has_value());
  EXPECT_TRUE(tests::golden("drawing/plan_view.json", to_json(picture->list)));
}

TEST(PlanView, NamesJawsSidesZeroHolesAndWays) {
  const auto picture = plan_view(bracket(), nullptr, kRoom, kRuler);
  ASSERT_TRUE(picture.has_value());
  for (const char* word : {"back to FIXED JAW", "front to moving jaw", "left", "end", "right", "ZERO", "bore",
                           "stud", "step", "+X", "+Y"}) {
    EXPECT_THAT(words(*picture), Contains(word));
  }
  EXPECT_THAT(picture->not_named, IsEmpty());
  EXPECT_THAT(picture->not_shown, IsEmpty());
}

TEST(PlanView, DrawsWhatIsCutHereThickWithCentreLines) {
  const auto picture = plan_view(bracket(), nullptr, kRoom, kRuler);
  ASSERT_TRUE(picture.has_value());
  EXPECT_EQ(of_weight<Circle>(*picture, Weight::kVisible).size(), 1U);  // bore
  EXPECT_EQ(of_weight<Circle>(*picture, Weight::kThin).size(), 1U);     // stud
  EXPECT_EQ(of_weight<Line>(*picture, Weight::kCentre).size(), 2U);     // of the bore
  EXPECT_EQ(of_weight<Line>(*picture, Weight::kVisible).size(), 6U);    // the step, and the ways of X and Y
  EXPECT_EQ(of_weight<Line>(*picture, Weight::kHidden).size(), 2U);     // parallels
}

TEST(PlanView, KeepsPlaceAndProportion) {
  const auto picture = plan_view(bracket(), nullptr, kRoom, kRuler);
  ASSERT_TRUE(picture.has_value());
  const Circle bore = of_weight<Circle>(*picture, Weight::kVisible).front();
  const Circle stud = of_weight<Circle>(*picture, Weight::kThin).front();
  const double scale = bore.radius_mm / 11.1;
  EXPECT_NEAR(stud.centre.x_mm - bore.centre.x_mm, 38.1 * scale, 1e-9);
  EXPECT_NEAR(stud.centre.y_mm, bore.centre.y_mm, 1e-9);
  EXPECT_NEAR(stud.radius_mm, 4.0 * scale, 1e-9);
  const auto hidden = of_weight<Line>(*picture, Weight::kHidden);
  EXPECT_NEAR(std::abs(hidden[0].from.y_mm - hidden[1].from.y_mm), (50.8 - 2.0 * 6.35) * scale, 1e-9);
}

// One wide enough for its name, one that is not: a leader ends in it.
TEST(PlanView, NamesSlotsAndKeyseats) {
  route::PlanView v = bracket();
  v.flats.clear();
  v.forms = {{"pocket", 60.0, 10.0, 95.0, 40.0, true}, {"a keyseat", 20.0, 44.0, 44.0, 47.0, true}};
  const auto picture = plan_view(v, nullptr, kRoom, kRuler);
  ASSERT_TRUE(picture.has_value());
  EXPECT_THAT(picture->not_named, IsEmpty());
  EXPECT_THAT(tests::drawing_faults(picture->list, {0.0, 0.0, kRoom.width_mm, picture->height_mm}),
              IsEmpty());
  EXPECT_THAT(words(*picture), Contains("pocket"));
  EXPECT_THAT(words(*picture), Contains("a keyseat"));
  EXPECT_EQ(of_weight<Line>(*picture, Weight::kVisible).size(), 10U);  // two boxes, and the ways of X and Y
}

TEST(PlanView, PutsAwayUpOnPaper) {
  route::PlanView v = bracket();
  v.holes = {{"near", 30.0, 10.0, 3.0, true}, {"far", 30.0, 40.0, 3.0, true}};
  const auto picture = plan_view(v, nullptr, kRoom, kRuler);
  ASSERT_TRUE(picture.has_value());
  const auto circles = of_weight<Circle>(*picture, Weight::kVisible);
  ASSERT_EQ(circles.size(), 2U);
  EXPECT_GT(circles[0].centre.y_mm, circles[1].centre.y_mm);
}

TEST(PlanView, FailsWithoutAnOutline) {
  route::PlanView v = bracket();
  for (const double right :
       {0.0, -5.0, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
    v.work.right_mm = right;
    const auto picture = plan_view(v, nullptr, kRoom, kRuler);
    ASSERT_FALSE(picture.has_value());
    EXPECT_EQ(picture.error().code, base::Code::kSizeNotPositive);
  }
}

TEST(PlanView, ListsWhatIsNotKnownOrOutside) {
  route::PlanView v = bracket();
  const double unknown = std::numeric_limits<double>::quiet_NaN();
  v.holes = {{"where", unknown, 10.0, 3.0, true},
             {"how wide", 30.0, 10.0, unknown, true},
             {"gone", 900.0, 10.0, 3.0, true}};
  v.flats = {{"no depth", unknown, 0.0, 10.0, 10.0, true}, {"turned round", 20.0, 0.0, 10.0, 10.0, true}};
  const auto picture = plan_view(v, nullptr, kRoom, kRuler);
  ASSERT_TRUE(picture.has_value());
  EXPECT_THAT(picture->not_shown, ElementsAre("no depth", "turned round", "where", "how wide", "gone"));
  EXPECT_TRUE(of_weight<Circle>(*picture, Weight::kVisible).empty());
}

TEST(PlanView, ListsTheZeroWhereItIsFarAway) {
  route::PlanView v = bracket();
  v.work = {"work", 500.0, 0.0, 601.6, 50.8, false};
  v.holes.clear();
  v.flats.clear();
  const auto picture = plan_view(v, nullptr, kRoom, kRuler);
  ASSERT_TRUE(picture.has_value());
  EXPECT_THAT(picture->not_shown, ElementsAre("the zero"));
  EXPECT_THAT(words(*picture), Not(Contains("ZERO")));
}

TEST(PlanView, ListsNamesThatHaveNoRoom) {
  route::PlanView v = bracket();
  v.holes.clear();
  for (int i = 0; i < 200; ++i) {
    v.holes.push_back({"a hole with a long name", 5.0 + 4.5 * (i % 20), 3.0 + 4.7 * (i / 20), 2.0, true});
  }
  const auto picture = plan_view(v, nullptr, kRoom, kRuler);
  ASSERT_TRUE(picture.has_value());
  EXPECT_GT(picture->not_named.size(), 100U);
  EXPECT_THAT(tests::drawing_faults(picture->list, {0.0, 0.0, kRoom.width_mm, picture->height_mm}),
              IsEmpty());
}

TEST(PlanView, DrawsNoJawsAndParallelsThatAreNot) {
  route::PlanView v = bracket();
  v.jaw_left_mm = v.jaw_right_mm = 0.0;
  const auto picture = plan_view(v, nullptr, kRoom, kRuler);
  ASSERT_TRUE(picture.has_value());
  EXPECT_THAT(words(*picture), Not(Contains("back to FIXED JAW")));
  EXPECT_TRUE(of_weight<Line>(*picture, Weight::kHidden).empty());
  v = bracket();
  v.parallel_mm = 30.0;  // two of them would not go under 50.8
  const auto fat = plan_view(v, nullptr, kRoom, kRuler);
  ASSERT_TRUE(fat.has_value());
  EXPECT_TRUE(of_weight<Line>(*fat, Weight::kHidden).empty());
}

TEST(PlanView, BreaksOffJawsThatRunOn) {
  route::PlanView v = bracket();
  v.jaw_left_mm = -400.0;
  v.jaw_right_mm = 500.0;
  const auto picture = plan_view(v, nullptr, kRoom, kRuler);
  ASSERT_TRUE(picture.has_value());
  EXPECT_EQ(of_weight<Arc>(*picture, Weight::kThin).size(), 8U);  // two a break
}

}  // namespace
}  // namespace sparewright::drawing
