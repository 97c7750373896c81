// Fits read as they are written: the clearances ANSI B4.1 prints (inch_clearances.csv) and the worked
// examples of a design textbook; fits found again from sizes within the printed limits.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/handbook/fit_found.hpp"
#include "core/handbook/fits.hpp"
#include "published.hpp"

namespace sparewright::handbook {
namespace {

using published::Row;
using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

void expect_clearance(const Row& row) {
  constexpr double kExactThou = 1e-9;
  const Fit fit = read_fit(fmt::format("{:.4f} in {}", row.number("up_to"), row["fit"])).value();
  EXPECT_NEAR(fit.least_clearance().in(unit::thou), row.number("least"), kExactThou) << row;
  EXPECT_NEAR(fit.most_clearance().in(unit::thou), row.number("most"), kExactThou) << row;
  EXPECT_EQ(fit.kind(), FitKind::kClearance) << row;
}

class OutsideInchClearance : public testing::TestWithParam<Row> {};
TEST_P(OutsideInchClearance, IsThePrintedOne) {
  expect_clearance(GetParam());
}
const std::vector<Row> kTable8a = published::rows_of("inch_clearances.csv", "Table 8a");
const std::vector<Row> kTable8b = published::rows_of("inch_clearances.csv", "Table 8b");
INSTANTIATE_TEST_SUITE_P(Outside8a, OutsideInchClearance, testing::ValuesIn(published::counted(kTable8a)));
INSTANTIATE_TEST_SUITE_P(Outside8b, OutsideInchClearance, testing::ValuesIn(published::counted(kTable8b)));

TEST(OutsideInchClearances, AllOfRc1ToRc9AreThePrintedOnes) {
  EXPECT_EQ(kTable8a.size() + kTable8b.size(), 81U);
  for (const std::vector<Row>& all : {kTable8a, kTable8b}) {
    for (const Row& row : all)
      expect_clearance(row);
  }
}

// Mechanical Engineering Design (textbook), Example 7-7: 34 H11/c11, hole 34.000 to 34.160, shaft 33.720 to
// 33.880.
TEST(OutsideFitText, LooseRunningFitOfTheTextbook) {
  const Fit fit = read_fit("34 mm H11/c11").value();
  EXPECT_NEAR(fit.hole.lower.in(unit::millimetre), 34.000, 1e-9);
  EXPECT_NEAR(fit.hole.upper.in(unit::millimetre), 34.160, 1e-9);
  EXPECT_NEAR(fit.shaft.lower.in(unit::millimetre), 33.720, 1e-9);
  EXPECT_NEAR(fit.shaft.upper.in(unit::millimetre), 33.880, 1e-9);
}

// The same book, Example 7-8: a 2 in medium drive is 2.0000-2.0010 and 2.0017-2.0023: H7/s6 of the range up
// to 50 mm, which the book's inch tables carry to 2 in, rounded to 0.0001 in. (ISO 286 itself puts 50.8 mm in
// the next range.) FN2 of ANSI B4.1 at 2 in is another fit and must not be mixed with it.
TEST(OutsideFitText, MediumDriveFitOfTheTextbookIsIsoNotAnsi) {
  const Fit iso = read_fit("50 mm H7/s6").value();
  constexpr double kRounded = 0.00005;
  EXPECT_NEAR((iso.hole.upper - iso.nominal).in(unit::inch), 0.0010, kRounded);
  EXPECT_NEAR((iso.shaft.lower - iso.nominal).in(unit::inch), 0.0017, kRounded);
  EXPECT_NEAR((iso.shaft.upper - iso.nominal).in(unit::inch), 0.0023, kRounded);
  const Fit ansi = read_fit("2 in FN2").value();
  EXPECT_NEAR(ansi.hole.upper.in(unit::inch), 2.0012, 1e-9);
  EXPECT_NEAR(ansi.shaft.lower.in(unit::inch), 2.0020, 1e-9);
  EXPECT_NEAR(ansi.shaft.upper.in(unit::inch), 2.0027, 1e-9);
}

// A pair in the middle of the printed limits is found again among the possible fits. The same zones recur in
// other classes (RC2 and LC1 share a hole), so the fit itself, or one of the same limits, must be there.
TEST(OutsideFitText, EveryRunningFitIsFoundAgainFromItsMiddle) {
  constexpr std::size_t kAll = 200;
  for (const Row& row : published::rows("inch_clearances.csv")) {
    const double over = row.number("over");
    const double up_to = row.number("up_to");
    // an eighth of an inch near the middle of the range, where there is one
    const double size = std::floor((over + up_to) / 2.0 * 8.0) / 8.0;
    if (size <= over || size > up_to) continue;
    const Fit fit = fit_at(row["fit"], Diameter::of(size, unit::inch)).value();
    const MeasuredSize hole{quantity::as_diameter((fit.hole.lower + fit.hole.upper) / 2.0), Length()};
    const MeasuredSize shaft{quantity::as_diameter((fit.shaft.lower + fit.shaft.upper) / 2.0), Length()};
    const FitsFound found = fits_found(hole, shaft, kAll).value();
    const bool there = std::any_of(found.ansi_b41.begin(), found.ansi_b41.end(), [&](const FoundFit& one) {
      return one.possible && one.fit.name == fit.name && one.hole_off == Length() &&
             one.shaft_off == Length();
    });
    EXPECT_TRUE(there) << row;
  }
}

}  // namespace
}  // namespace sparewright::handbook
