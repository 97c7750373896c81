#include "core/handbook/change_gears.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Diameter;
using quantity::Length;
using testing::HasSubstr;
namespace unit = quantity::unit;

Length mm(double length) {
  return Length::of(length, unit::millimetre);
}
Length tpi(double threads) {
  return Length::of(1.0 / threads, unit::inch);
}

// Module 1 gears, 110 mm from the stud to the lead screw, one slot from 30 to 120 mm.
Banjo bench_banjo() {
  Banjo banjo;
  banjo.module = mm(1.0);
  banjo.centres = mm(110.0);
  banjo.slots = {{mm(30.0), mm(120.0), {}}};
  banjo.fixed_collar = Diameter::of(18.0, unit::millimetre);
  banjo.screw_collar = Diameter::of(20.0, unit::millimetre);
  banjo.stud_collar = Diameter::of(22.0, unit::millimetre);
  return banjo;
}

template <class Value>
std::string refusal(const base::Result<Value>& result) {
  return result ? "" : base::report(result.error());
}

TEST(ChangeGears, ShorterTrainFirstWhereBothAreExact) {
  const auto found = change_gears({tpi(8), {20, 30, 40, 60, 80}, {}}, {tpi(16), 4, 10}).value();
  ASSERT_GE(found.size(), 3U);
  EXPECT_TRUE(found[0].exact);
  EXPECT_EQ(to_string(found[0].train), "40 : 80");
  EXPECT_EQ(found[0].lead.in(unit::inch), 0.0625);
  EXPECT_EQ(found[0].error_over(mm(25.4)), Length());
  EXPECT_EQ(found[3].train.gears(), 4U);
}

TEST(ChangeGears, NearestSaysItsErrorOverALength) {
  // 63 in the place of 127: 1.5 mm from 8 threads per inch
  const auto found = change_gears({tpi(8), {30, 63, 80, 50}, {}}, {mm(1.5), 4, 1}).value();
  EXPECT_EQ(to_string(found[0].train), "30 x 63 : 50 x 80");
  EXPECT_FALSE(found[0].exact);
  EXPECT_NEAR(found[0].error, 1.25e-4, 1e-6);
  EXPECT_NEAR(found[0].error_over(mm(25.4)).in(unit::micrometre), 3.2, 0.05);
}

TEST(ChangeGears, WormsAreNeverExact) {
  EXPECT_NEAR(worm_lead(mm(1.0), 2).in(unit::millimetre), 2 * std::numbers::pi, 1e-12);
  const auto found =
      change_gears({mm(3.0), {20, 22, 21, 30, 40, 55, 60, 65, 127}, {}}, {worm_lead(mm(1.0), 1), 6, 3});
  EXPECT_FALSE(found->at(0).exact);
  EXPECT_LT(std::abs(found->at(0).error), 5e-4);
  EXPECT_NE(found->at(0).error, 0.0);
}

TEST(ChangeGears, WishesThatCannotBe) {
  const std::vector<int> box{20, 40, 60};
  EXPECT_THAT(refusal(change_gears({tpi(8), {40}, {}}, {mm(1.0)})), HasSubstr("one gear of 40 teeth"));
  EXPECT_THAT(refusal(change_gears({tpi(8), {}, {}}, {mm(1.0)})),
              HasSubstr("2 to 64 gears of 8 to 400 teeth"));
  EXPECT_THAT(refusal(change_gears({tpi(8), {20, 7}, {}}, {mm(1.0)})), HasSubstr("a gear of 7 teeth"));
  EXPECT_THAT(refusal(change_gears({tpi(8), std::vector<int>(65, 20), {}}, {mm(1.0)})),
              HasSubstr("65 gears"));
  EXPECT_THAT(refusal(change_gears({tpi(8), box, {}}, {mm(0.0)})), HasSubstr("the lead of the thread"));
  EXPECT_THAT(refusal(change_gears({tpi(8), box, {}}, {mm(-1.0)})), HasSubstr("more than zero"));
  EXPECT_THAT(refusal(change_gears({mm(900.0), box, {}}, {mm(1.0)})), HasSubstr("0.01 to 500 mm"));
  EXPECT_FALSE(change_gears({tpi(8), box, {}}, {mm(std::nan(""))}));
  EXPECT_TRUE(change_gears({tpi(8), {20, 40}, {}}, {mm(1.0), 6, 5})->size() == 2U);  // no four gears there
}

TEST(Banjo, SimpleTrainNeedsAnIdlerOfTheBox) {
  const LatheGearing lathe{tpi(8), {30, 40, 60, 80, 100, 127}, bench_banjo()};
  const auto found = change_gears(lathe, {tpi(16), 2, 10}).value();
  ASSERT_FALSE(found.empty());
  const ChangeGears& best = found[0];
  EXPECT_TRUE(best.exact);
  ASSERT_EQ(best.fit->studs.size(), 1U);
  const BanjoStud& stud = best.fit->studs[0];
  EXPECT_TRUE(stud.idler);
  EXPECT_EQ(stud.in, stud.out);
  EXPECT_NEAR(stud.along.base(), (stud.out + best.train.drivens[0]) / 2.0, 1e-9);
  // the triangle closes: the stud is as far from S as its gears want
  const double p = stud.along.base();
  const double to_s = std::sqrt(p * p + 110.0 * 110.0 - 2 * p * 110.0 * std::cos(best.fit->swing.base()));
  EXPECT_NEAR(to_s, (best.train.drivers[0] + stud.in) / 2.0, 1e-9);
}

TEST(Banjo, TwoGearsOnTheirFixedAxes) {
  const Banjo banjo = bench_banjo();
  EXPECT_TRUE(fit_on_banjo(banjo, {{100}, {120}}, {}));
  EXPECT_TRUE(fit_on_banjo(banjo, {{100}, {120}}, {})->studs.empty());
  EXPECT_FALSE(fit_on_banjo(banjo, {{100}, {121}}, {}));  // half a millimetre too near
  EXPECT_FALSE(fit_on_banjo(banjo, {{100}, {119}}, {}));  // too far
}

TEST(Banjo, CompoundGearsMustClearTheShafts) {
  Banjo banjo = bench_banjo();
  const GearTrain train{{30, 80}, {60, 50}};  // 30 drives 60, 80 beside it drives 50
  const auto fit = fit_on_banjo(banjo, train, {});
  ASSERT_TRUE(fit);
  EXPECT_GE(fit->least_gap.base(), 1.0);
  // An 80 on the stud reaches 41 mm from it, too far for a hub of 90 mm on S: then the 30 goes on the stud.
  banjo.fixed_collar = Diameter::of(90.0, unit::millimetre);
  const auto turned = fit_on_banjo(banjo, train, {});
  ASSERT_TRUE(turned);
  EXPECT_EQ(turned->studs.at(0).out, 30);
  banjo.fixed_collar = Diameter::of(200.0, unit::millimetre);
  EXPECT_FALSE(fit_on_banjo(banjo, train, {}));
}

TEST(Banjo, SlotAndSwingLimit) {
  Banjo banjo = bench_banjo();
  const GearTrain train{{40, 45}, {80, 90}};
  ASSERT_TRUE(fit_on_banjo(banjo, train, {}));
  const BanjoFit fit = *fit_on_banjo(banjo, train, {});
  const double along = fit.studs[0].along.base();
  banjo.slots[0].farthest = mm(along - 0.5);
  const auto other = fit_on_banjo(banjo, train, {});
  if (other) {
    EXPECT_LT(other->studs[0].along.base(), along - 0.4);
  }
  banjo = bench_banjo();
  banjo.least_swing = Angle::of(170.0, unit::degree);
  EXPECT_FALSE(fit_on_banjo(banjo, train, {}));
}

TEST(Banjo, BanjosThatCannotBe) {
  Banjo banjo = bench_banjo();
  banjo.slots.clear();
  EXPECT_THAT(refusal(checked(banjo)), HasSubstr("at least one slot"));
  banjo = bench_banjo();
  banjo.module = mm(0.0);
  EXPECT_THAT(refusal(checked(banjo)), HasSubstr("the module of the change gears is 0 mm"));
  banjo = bench_banjo();
  banjo.slots[0].farthest = mm(20.0);
  EXPECT_THAT(refusal(checked(banjo)), HasSubstr("'30 to 20 mm'"));
  banjo = bench_banjo();
  banjo.clearance = mm(-1.0);
  EXPECT_FALSE(checked(banjo));
  banjo = bench_banjo();
  banjo.least_swing = Angle::of(10.0, unit::degree);
  banjo.most_swing = Angle::of(-10.0, unit::degree);
  EXPECT_FALSE(change_gears({tpi(8), {20, 40}, banjo}, {mm(1.0)}));
}

}  // namespace
}  // namespace sparewright::handbook
