#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/survey/circle_fit.hpp"
#include "core/survey/flat_fit.hpp"
#include "core/survey/touched_numbers.hpp"

namespace sparewright::survey {
namespace {

using base::Code;

constexpr double kExact = 1e-12;

TEST(CircleFits, ThreeTouchesAreMetAndTellNothingOfTheForm) {
  const std::vector<Point2> touches{{5, 0}, {0, 5}, {-5, 0}};
  const auto fit = fit_circle(touches);
  ASSERT_TRUE(fit.has_value());
  EXPECT_NEAR(fit->x, 0.0, kExact);
  EXPECT_NEAR(fit->y, 0.0, kExact);
  EXPECT_NEAR(fit->radius, 5.0, kExact);
  EXPECT_EQ(fit->spare(), 0);
  EXPECT_EQ(fit->form_error(), 0.0);
  for (std::size_t i = 0; i < 3; ++i)
    EXPECT_NEAR(fit->redundancy(i), 0.0, 1e-9);
  EXPECT_NEAR(fit->arc_rad, std::numbers::pi, kExact);
}

// Four touches at right angles: J'J is diag(2, 2, 4), so the doubts are 1/sqrt(2), 1/sqrt(2), 1/2. The radius is the mean of
// the four distances, and each touch keeps a quarter of its error.
TEST(CircleFits, FourTouchesAtRightAnglesAreWorkedByHand) {
  const double out = 0.01;
  const std::vector<Point2> touches{{10 + out, 0}, {0, 10 - out}, {-10 - out, 0}, {0, -10 + out}};
  const auto fit = fit_circle(touches);
  ASSERT_TRUE(fit.has_value());
  EXPECT_NEAR(fit->radius, 10.0, 1e-9);
  EXPECT_NEAR(fit->form_error(), 2.0 * out, 1e-9);
  EXPECT_EQ(fit->spare(), 1);
  const Matrix c = fit->covariance();
  EXPECT_NEAR(c.at(0, 0), 0.5, 1e-9);
  EXPECT_NEAR(c.at(1, 1), 0.5, 1e-9);
  EXPECT_NEAR(c.at(2, 2), 0.25, 1e-9);
  EXPECT_NEAR(c.at(0, 2), 0.0, 1e-9);
  for (std::size_t i = 0; i < 4; ++i)
    EXPECT_NEAR(fit->redundancy(i), 0.25, 1e-9);
}

// The radius of a short arc comes of its height: touches at -a, 0, a give the radius with 1.5^0.5/(1 - cos a) times the doubt
// of one (worked here: r follows the middle touch by cos a/(1 - cos a) less the ends by 1/(1 - cos a)/2 each, and itself).
TEST(CircleFits, AShortArcBlowsUpTheRadius) {
  const double a = 5.0 * std::numbers::pi / 180.0;
  std::vector<Point2> touches;
  for (const double angle : {-a, 0.0, a})
    touches.push_back({100.0 * std::cos(angle), 100.0 * std::sin(angle)});
  const auto fit = fit_circle(touches);
  ASSERT_TRUE(fit.has_value());
  EXPECT_NEAR(fit->radius, 100.0, 1e-8);
  EXPECT_NEAR(fit->arc_rad, 2.0 * a, 1e-9);
  const double ends = 0.5 / (1.0 - std::cos(a));
  const double middle = std::cos(a) / (1.0 - std::cos(a));
  EXPECT_NEAR(std::sqrt(fit->covariance().at(2, 2)) / std::sqrt(2.0 * ends * ends + middle * middle), 1.0,
              1e-6);
}

TEST(CircleFits, RefuseWhatIsNoCircle) {
  const auto code = [](const std::vector<Point2>& touches) { return fit_circle(touches).error().code; };
  EXPECT_EQ(code({{0, 0}, {1, 1}}), Code::kReadingsTooFew);
  EXPECT_EQ(code({{0, 0}, {1, 1}, {2, 2}}), Code::kReadingsTooFew);  // on a line
  EXPECT_EQ(code({{0.1, 0.1}, {0.2, 0.2}, {0.3, 0.3}, {0.7, 0.7}}), Code::kReadingsTooFew);
  EXPECT_EQ(code({{0, 0}, {3, 1}, {3, 1}}), Code::kReadingsTooFew);          // two at one place
  EXPECT_EQ(code({{4, 4}, {4, 4}, {4, 4}, {4, 4}}), Code::kReadingsTooFew);  // all at one place
  EXPECT_EQ(code(std::vector<Point2>(kMostTouches + 1)), Code::kTooMany);
  // Along a line, to and fro across it: no circle of a finite size lies nearest.
  EXPECT_EQ(code({{0, 0.001}, {1, -0.001}, {2, 0.001}, {3, -0.001}}), Code::kReadingsDisagree);
  EXPECT_EQ(base::sentence(fit_circle(std::vector<Point2>{{0, 0}, {1, 1}, {2, 2}}).error()),
            "the readings do not fix a circle");
}

TEST(CircleFits, TwoTouchesAtOnePlaceAmongFourAreFine) {
  const auto fit = fit_circle(std::vector<Point2>{{5, 0}, {5, 0}, {0, 5}, {-5, 0}});
  ASSERT_TRUE(fit.has_value());
  EXPECT_NEAR(fit->radius, 5.0, 1e-9);
}

TEST(FlatFits, ALineIsWorkedByHand) {
  // y = 2 + x/2, touched at x = 0, 2, 4: at 3 in the middle, rise 1/2.
  const auto fit = fit_flat({{0, 2}, {2, 3}, {4, 4}}, 1);
  ASSERT_TRUE(fit.has_value());
  EXPECT_NEAR(fit->at, 3.0, kExact);
  EXPECT_NEAR(fit->rises.at(0), 0.5, kExact);
  EXPECT_NEAR(fit->middles.at(0), 2.0, kExact);
  EXPECT_NEAR(fit->normal.at(1), 2.0 / std::sqrt(5.0), kExact);
  EXPECT_NEAR(fit->normal.at(0), -1.0 / std::sqrt(5.0), kExact);
  // `at` follows the mean of three touches, seen slanting: (5/4)/3.
  EXPECT_NEAR(fit->covariance().at(0, 0), 1.25 / 3.0, 1e-9);
}

TEST(FlatFits, RefuseWhatIsNoFace) {
  const auto code = [](const std::vector<std::vector<double>>& touches, std::size_t along) {
    const auto fit = fit_flat(touches, along);
    return fit ? Code::kLast : fit.error().code;
  };
  EXPECT_EQ(code({{0, 2}}, 1), Code::kReadingsTooFew);
  EXPECT_EQ(code({{1, 2}, {1, 2.1}}, 1), Code::kReadingsTooFew);  // one place along it
  EXPECT_EQ(code({{0, 0, 1}, {1, 0, 1}}, 2), Code::kReadingsTooFew);
  EXPECT_EQ(code({{0, 0, 1}, {1, 1, 1}, {2, 2, 1}, {3, 3, 1}}, 2), Code::kReadingsTooFew);  // in one line
  EXPECT_EQ(code({{0, 0}, {1, 1.1}, {2, 2.2}}, 1), Code::kValueNotAccepted);  // leans more than 45 degrees
  EXPECT_EQ(code({{0, 0}, {1, 0.9}, {2, 1.8}}, 1), Code::kLast);
}

const ToldNumber& number(const TouchedNumbers& numbers, Told told) {
  for (const ToldNumber& one : numbers.numbers) {
    if (one.told == told) return one;
  }
  throw std::runtime_error("not told");
}

TEST(TouchedNumbers, TheTipIsTakenOffABossAndPutOnAHole) {
  const std::vector<std::vector<double>> round{{5, 0}, {0, 5}, {-5, 0}, {0, -5}};
  const auto hole = touched_numbers(TouchedForm::kCircle, TipSide::kInside, round, 2.0);
  const auto boss = touched_numbers(TouchedForm::kCircle, TipSide::kOutside, round, 2.0);
  ASSERT_TRUE(hole.has_value() && boss.has_value());
  EXPECT_NEAR(number(*hole, Told::kDiameter).value, 12.0, kExact);
  EXPECT_EQ(number(*hole, Told::kDiameter).tip, 1.0);
  EXPECT_NEAR(number(*boss, Told::kDiameter).value, 8.0, kExact);
  EXPECT_EQ(number(*boss, Told::kDiameter).tip, -1.0);
  EXPECT_NEAR(number(*boss, Told::kRadius).value, 4.0, kExact);
  EXPECT_EQ(touched_numbers(TouchedForm::kCircle, TipSide::kOutside, round, 10.0).error().code,
            Code::kSizeNotPositive);
}

TEST(TouchedNumbers, AFaceStandsHalfATipFromWhereTheTipStood) {
  const std::vector<std::vector<double>> touches{{10, 0}, {10, 20}, {10, 40}};
  const auto from_left = touched_numbers(TouchedForm::kLine, TipSide::kLeft, touches, 2.0);
  const auto from_right = touched_numbers(TouchedForm::kLine, TipSide::kRight, touches, 2.0);
  ASSERT_TRUE(from_left.has_value() && from_right.has_value());
  EXPECT_NEAR(number(*from_left, Told::kAt).value, 11.0, kExact);
  EXPECT_NEAR(number(*from_left, Told::kAt).tip, 0.5, kExact);
  EXPECT_NEAR(number(*from_right, Told::kAt).value, 9.0, kExact);
  // A face that leans 30 degrees: along the axis the surface is half a tip over cos 30 away.
  const double rise = std::tan(std::numbers::pi / 6.0);
  const auto leaning =
      touched_numbers(TouchedForm::kLine, TipSide::kBack, {{0, 0}, {10, 10 * rise}, {20, 20 * rise}}, 2.0);
  ASSERT_TRUE(leaning.has_value());
  EXPECT_NEAR(number(*leaning, Told::kAt).value, 10 * rise - 1.0 / std::cos(std::numbers::pi / 6.0), 1e-9);
  EXPECT_NEAR(number(*leaning, Told::kLean).value, std::numbers::pi / 6.0, 1e-9);
}

// Slopes of `at` by a touch, the tip's part in it too, against moving the touch.
TEST(TouchedNumbers, FollowTheTouchesWithTheTipInThem) {
  std::vector<std::vector<double>> touches{{0, 0, 1.0}, {20, 0, 9.0}, {0, 20, -4.0}, {20, 20, 4.0}};
  const auto before = touched_numbers(TouchedForm::kPlane, TipSide::kAbove, touches, 6.0);
  ASSERT_TRUE(before.has_value());
  const double by = 1e-5;
  for (std::size_t axis = 0; axis < 3; ++axis)
    touches[1][axis] += by * before->normals[1][axis];
  auto after = touched_numbers(TouchedForm::kPlane, TipSide::kAbove, touches, 6.0);
  // `at` is told at the mean of the touches, which the touch took with it; what follows is told at one place.
  auto& at = after->numbers[0].value;
  at -= std::tan(after->numbers[1].value) * by * before->normals[1][0] / 4.0;
  at -= std::tan(after->numbers[2].value) * by * before->normals[1][1] / 4.0;
  for (std::size_t k = 0; k < before->numbers.size(); ++k) {
    EXPECT_NEAR((after->numbers[k].value - before->numbers[k].value) / by, before->numbers[k].follows[1],
                1e-5)
        << row_of(before->numbers[k].told).figure;
  }
  EXPECT_EQ(before->numbers[1].told, Told::kLeanX);
  EXPECT_EQ(before->numbers[2].told, Told::kLeanY);
  EXPECT_NEAR(before->numbers[1].value, std::atan(0.4), 1e-9);
  EXPECT_NEAR(before->numbers[2].value, std::atan(-0.25), 1e-9);
}

}  // namespace
}  // namespace sparewright::survey
