#include "core/ledger/share.hpp"

#include <cmath>
#include <limits>

#include <gtest/gtest.h>

#include "core/ledger/student_t.hpp"

namespace sparewright::ledger {
namespace {

TEST(Shares, InOrderSortsJoinsAndLeavesOutZeros) {
  const Shares ordered =
      in_order({{"zero", 0.0}, {"b", 2.0, 9.0}, {"a", 1.0}, {"b", 3.0, 4.0}, {"c", 1.0}, {"c", -1.0}});
  EXPECT_EQ(ordered, (Shares{{"a", 1.0}, {"b", 5.0, 4.0}}));
  EXPECT_TRUE(in_order({}).empty());
}

TEST(Shares, AddScaledMergesByCause) {
  Shares sum{{"a", 1.0}, {"c", 2.0}};
  add_scaled(sum, {{"a", 3.0}, {"b", 4.0}, {"d", 5.0, 7.0}}, -2.0);
  EXPECT_EQ(sum, (Shares{{"a", -5.0}, {"b", -8.0}, {"c", 2.0}, {"d", -10.0, 7.0}}));
}

TEST(Shares, ACauseThatCancelsIsGone) {
  Shares sum{{"a", 1.5}, {"b", 1.0}};
  add_scaled(sum, {{"a", 1.5}}, -1.0);
  EXPECT_EQ(sum, (Shares{{"b", 1.0}}));
  add_scaled(sum, {{"b", 5.0}}, 0.0);
  EXPECT_EQ(sum, (Shares{{"b", 1.0}}));
}

TEST(Shares, OfOneCauseTheFewerDegreesOfFreedomCount) {
  Shares sum{{"a", 1.0, 9.0}};
  add_scaled(sum, {{"a", 1.0, 4.0}}, 1.0);
  EXPECT_EQ(sum, (Shares{{"a", 2.0, 4.0}}));
}

TEST(Shares, UncertaintyIsTheirNormAndCovarianceTheirProduct) {
  const Shares a{{"scatter", 3.0}, {"zero", 4.0}};
  const Shares b{{"other", 12.0}, {"zero", -5.0}};
  EXPECT_EQ(standard_uncertainty(a), 5.0);
  EXPECT_EQ(standard_uncertainty(b), 13.0);
  EXPECT_EQ(standard_uncertainty({}), 0.0);
  EXPECT_EQ(covariance(a, b), -20.0);
  EXPECT_EQ(covariance(b, a), -20.0);
  EXPECT_EQ(covariance(a, a), 25.0);
  EXPECT_EQ(covariance(a, {}), 0.0);
}

TEST(Shares, EffectiveDegreesOfFreedom) {
  EXPECT_EQ(effective_degrees_of_freedom({}), kManyDegreesOfFreedom);
  EXPECT_EQ(effective_degrees_of_freedom({{"a", 2.0}}), kManyDegreesOfFreedom);
  EXPECT_DOUBLE_EQ(effective_degrees_of_freedom({{"a", -2.0, 7.0}}), 7.0);
  // two equal shares: 4 nu / (1 + 1)
  EXPECT_DOUBLE_EQ(effective_degrees_of_freedom({{"a", 1.0, 5.0}, {"b", 1.0, 5.0}}), 10.0);
  // u^4 = 4, only one of the two has few: 4 / (1/5)
  EXPECT_DOUBLE_EQ(effective_degrees_of_freedom({{"a", 1.0, 5.0}, {"b", 1.0}}), 20.0);
}

TEST(Shares, ExpandedUncertaintyTakesStudentsTForWholeDegreesOfFreedom) {
  const auto t = [](double nu) { return student_t_two_sided(0.95, nu); };
  EXPECT_EQ(expanded_uncertainty({}), 0.0);
  EXPECT_NEAR(expanded_uncertainty({{"a", 2.0}}), 2.0 * 1.959963984540054, 1e-11);
  EXPECT_DOUBLE_EQ(expanded_uncertainty({{"a", 2.0, 7.0}}), 2.0 * t(7.0));
  EXPECT_DOUBLE_EQ(expanded_uncertainty({{"a", 2.0, 7.9}}), 2.0 * t(7.0));  // rounded down
  EXPECT_DOUBLE_EQ(expanded_uncertainty({{"a", 2.0, 0.5}}), 2.0 * t(1.0));  // never under 1
  // 10 degrees of freedom that come out as 9.999999999999998 are 10
  EXPECT_DOUBLE_EQ(expanded_uncertainty({{"a", 0.1, 5.0}, {"b", 0.1, 5.0}}), std::sqrt(0.02) * t(10.0));
}

TEST(StudentT, ClosedForms) {
  constexpr double kPi = 3.14159265358979323846;
  for (const double p : {0.0, 0.5, 0.6827, 0.9, 0.95, 0.99, 0.9973, 0.9999}) {
    // one degree of freedom: tan(p pi/2); two: p sqrt(2 / (1 - p^2))
    EXPECT_NEAR(student_t_two_sided(p, 1.0), std::tan(p * kPi / 2.0),
                kStudentTError * std::tan(p * kPi / 2.0))
        << p;
    const double two = p * std::sqrt(2.0 / (1.0 - p * p));
    EXPECT_NEAR(student_t_two_sided(p, 2.0), two, kStudentTError * two) << p;
  }
  for (const double t : {0.0, 0.1, 1.0, 2.0, 10.0, 1000.0}) {
    EXPECT_NEAR(student_t_inside(t, 1.0), 2.0 / kPi * std::atan(t), kStudentTError) << t;
    EXPECT_NEAR(student_t_inside(t, 2.0), t / std::sqrt(2.0 + t * t), kStudentTError) << t;
  }
}

TEST(StudentT, FarOutNothingIsLeft) {
  EXPECT_EQ(student_t_inside(1e6, 1e15), 1.0);
  EXPECT_EQ(student_t_inside(50.0, kManyDegreesOfFreedom), 1.0);
  EXPECT_EQ(student_t_inside(0.0, 5.0), 0.0);
}

TEST(StudentT, ManyDegreesOfFreedomRunIntoTheNormalDistribution) {
  const double normal = student_t_two_sided(0.95, kManyDegreesOfFreedom);
  double before = student_t_two_sided(0.95, 1.0);
  for (double nu = 2.0; nu < 1e16; nu *= 1.7) {
    const double t = student_t_two_sided(0.95, nu);
    EXPECT_LE(t, before * (1.0 + kStudentTError)) << nu;
    EXPECT_GE(t, normal * (1.0 - kStudentTError)) << nu;
    before = t;
  }
  EXPECT_NEAR(before, normal, kStudentTError * normal);
}

}  // namespace
}  // namespace sparewright::ledger
