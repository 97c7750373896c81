// Measurements over wires and best wires against printed figures (three_wires.csv).
#include "core/handbook/thread_wires.hpp"

#include <cmath>

#include <gtest/gtest.h>

#include "core/handbook/thread_designation.hpp"
#include "core/quantity/display.hpp"
#include "published.hpp"

namespace sparewright::handbook {
namespace {

using published::Row;
using quantity::Diameter;
using quantity::fixed;
using quantity::Length;
namespace unit = quantity::unit;

constexpr double kDegree = 0.017453292519943295;

// A thread of the table: the form of its column, the lead angle left out as the table does.
double computed_in(const Row& row, ThreadForm form) {
  const double pitch = 1.0 / row.number("tpi");
  const ThreadProfile& profile = profile_of(form);
  const double pitch_diameter = row.number("major") - 2.0 * profile.screw.addendum * pitch;
  return over_three_wires_mm(pitch_diameter, pitch, 0.0, profile.flank_angle.base() / 2.0,
                             row.number("wire"));
}

// The table is rounded from constants of four figures: a few rows end 0.0001 in off.
testing::AssertionResult agrees(const Row& row, ThreadForm form) {
  const double off = computed_in(row, form) - row.number("over");
  if (std::abs(off) <= 0.000101) return testing::AssertionSuccess();
  return testing::AssertionFailure() << "off by " << off << " in: " << row;
}

class OutsideThreeWires : public testing::TestWithParam<Row> {};
TEST_P(OutsideThreeWires, NationalForm) {
  EXPECT_TRUE(agrees(GetParam(), ThreadForm::kAmericanNational));
}
const std::vector<Row> kNational = published::rows_of("three_wires.csv", "table national");
INSTANTIATE_TEST_SUITE_P(OutsideHandbook2130, OutsideThreeWires,
                         testing::ValuesIn(published::counted(kNational)));
TEST(OutsideThreeWiresRest, NationalForm) {
  for (const Row& row : published::others(kNational))
    EXPECT_TRUE(agrees(row, ThreadForm::kAmericanNational));
}
TEST(ThreeWiresFile, IsWhole) {
  EXPECT_EQ(published::rows("three_wires.csv").size(), 52U);
}

class OutsideThreeWiresSharp : public testing::TestWithParam<Row> {};
TEST_P(OutsideThreeWiresSharp, SharpV) {
  EXPECT_TRUE(agrees(GetParam(), ThreadForm::kSharpV));
}
INSTANTIATE_TEST_SUITE_P(OutsideHandbook2130, OutsideThreeWiresSharp,
                         testing::ValuesIn(published::rows_of("three_wires.csv", "table sharp")));

struct Example {
  const char* thread;
  double wire_in;
  double over_in;  // as printed
  double lead;     // 1: with the lead-angle term
  double within_in;
  int places = 8;  // of the pitch diameter the source takes
};
void expect_example(const Example& example) {
  const ThreadShape thread = shape_of(read_thread(example.thread).value());
  const double half = profile_of(thread.form).flank_angle.base() / 2.0;
  const double over = over_three_wires_mm(
      quantity::rounded(thread.pitch_diameter.in(unit::inch), example.places), thread.pitch.in(unit::inch),
      example.lead * thread.lead().in(unit::inch), half, example.wire_in);
  EXPECT_NEAR(over, example.over_in, example.within_in) << example.thread;
}

// Model engineering club note on three-wire measuring (neme-s.org), answer to three places; Turning and
// Boring (treatise), three-wire section.
TEST(OutsideThreeWireExample, ClubNote7Sixteenths14) {
  expect_example({"7/16-14 UNC", 0.045, 0.464, 0.0, 0.0005});
}
TEST(OutsideThreeWireExample, Treatise1AndAHalf6) {
  expect_example({"1-1/2-6 UNC", 0.140, 1.6674, 0.0, 0.00005});
}
// The lead-angle term, worked out from the formula (from memory) at the basic pitch diameter to four places;
// the lead angle of 4-40, 4 deg 45 min, is printed in Machinery's Handbook 31st ed., p. 1978.
TEST(RememberedThreeWireExample, LeadAngleTerm) {
  expect_example({"#4-40 UNC", 0.57735 / 40, 0.11753, 1.0, 0.00001, 4});
  expect_example({"1/4-20 UNC", 0.57735 / 20, 0.26092, 1.0, 0.00001, 4});
  expect_example({"1/2-13 UNC", 0.57735 / 13, 0.51672, 1.0, 0.00001, 4});
  expect_example({"1-8 UNC", 0.57735 / 8, 1.02715, 1.0, 0.00001, 4});
}
TEST(OutsideThreeWireExample, LeadAngleOf4By40) {
  const ThreadShape thread = shape_of(read_thread("#4-40 UNC").value());
  const auto over = over_three_wires(thread, thread.pitch_diameter, wires_for(thread).best).value();
  EXPECT_NEAR(over.lead_angle.in(unit::degree), 4.75, 0.005);
  EXPECT_NEAR(over.lead_correction.in(unit::inch), 0.000075, 0.000001);
}

// Turning and Boring: M = D - 1.6008 P + 3.1657 W for the Whitworth form.
TEST(OutsideThreeWireExample, WhitworthFormula) {
  for (const auto& [text, wire] : {std::pair{"1/4-20 BSW", 0.032}, std::pair{"1/2-12 BSW", 0.050}}) {
    const ThreadShape thread = shape_of(read_thread(text).value());
    const double by_formula =
        thread.major.in(unit::inch)-1.6008 * thread.pitch.in(unit::inch) + 3.1657 * wire;
    expect_example({text, wire, by_formula, 0.0, 0.00001});
  }
}

// Best wires: 0.57735 P; 0.072 for 8 per inch (US Army ordnance course OD1645), 0.041 for 14 (club note);
// 0.51645 P for Acme with 0.48726 and 0.65001 P as the ends of the range, 0.5637 P for Whitworth (from memory
// of Machinery's Handbook).
struct Best {
  const char* thread;
  double per_pitch;
};
class BestWire : public testing::TestWithParam<Best> {};
TEST_P(BestWire, IsThePrintedShareOfThePitch) {
  const ThreadShape thread = shape_of(read_thread(GetParam().thread).value());
  EXPECT_NEAR(wires_for(thread).best.base() / thread.pitch.base(), GetParam().per_pitch, 0.00001);
}
INSTANTIATE_TEST_SUITE_P(RememberedShares, BestWire,
                         testing::Values(Best{"1/2-13 UNC", 0.57735}, Best{"1/2-12 BSW", 0.56370},
                                         Best{"1-5 ACME", 0.51645}));
TEST(RememberedWireRange, Acme) {
  const ThreadShape thread = shape_of(read_thread("1-5 ACME").value());
  EXPECT_NEAR(wires_for(thread).least.base() / thread.pitch.base(), 0.48726, 0.00001);
  EXPECT_NEAR(wires_for(thread).most.base() / thread.pitch.base(), 0.65001, 0.00001);
}
TEST(OutsideBestWire, InInches) {
  EXPECT_EQ(fixed(best_wire_mm(1.0 / 8.0, 30.0 * kDegree), 3), "0.072");
  EXPECT_EQ(fixed(best_wire_mm(1.0 / 14.0, 30.0 * kDegree), 3), "0.041");
}

// The numbers of the screw sizes of a shop's card, 0.57735 P to the last digit.
TEST(OutsideBestWire, CardOfPitches) {
  struct {
    double per_inch;
    const char* wire;
  } constexpr kCard[] = {{80, "0.00722"}, {56, "0.01031"},   {40, "0.01443"}, {32, "0.01804"},
                         {24, "0.02406"}, {20, "0.02887"},   {18, "0.03208"}, {16, "0.03608"},
                         {13, "0.04441"}, {11.5, "0.05020"}, {10, "0.05774"}, {9, "0.06415"},
                         {8, "0.07217"},  {7, "0.08248"},    {4.5, "0.12830"}};
  for (const auto& one : kCard)
    EXPECT_EQ(fixed(best_wire_mm(1.0 / one.per_inch, 30.0 * kDegree), 5), one.wire);
}

}  // namespace
}  // namespace sparewright::handbook
