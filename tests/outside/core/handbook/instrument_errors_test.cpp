// What the standards allow measuring instruments, row by row as printed.
#include "core/handbook/instrument_errors.hpp"

#include <string>

#include <gtest/gtest.h>

namespace sparewright::handbook {
namespace {

using quantity::Length;
namespace unit = quantity::unit;

constexpr double kHand = 1e-9;  // um

Length mm(double size) {
  return Length::of(size, unit::millimetre);
}

// The row that a size of that many mm falls in; the last where it is larger than all.
UsualError row_at(const AskedInstrument& asked, double size_mm) {
  const auto rows = usual_errors(asked);
  if (!rows) {
    ADD_FAILURE() << "nothing of " << asked.kind;
    return {};
  }
  for (const UsualError& row : *rows) {
    if (!row.up_to || mm(size_mm) <= *row.up_to) return row;
  }
  return rows->back();
}

double um(Length error) {
  return error.in(unit::micrometre);
}

// DIN 862, one-page extract (scribd.com/document/564783692): up to mm, then um for steps of 0.05, 0.02 and 0.01 mm; 0: not
// given. Inside and depth: 20 um more.
struct CaliperRow {
  double up_to;
  double coarse;
  double fine;
  double digital;
};
class OutsideCaliperErrors : public testing::TestWithParam<CaliperRow> {};

TEST_P(OutsideCaliperErrors, AreThoseOfDin862) {
  const CaliperRow& row = GetParam();
  const auto at = [&](double step) {
    return row_at({.kind = "vernier caliper", .reads = mm(step)}, row.up_to);
  };
  EXPECT_NEAR(um(at(0.05).outside), row.coarse, kHand);
  EXPECT_NEAR(um(at(0.01).outside), row.digital, kHand);
  if (row.fine > 0.0) {
    EXPECT_NEAR(um(at(0.02).outside), row.fine, kHand);
  }
  EXPECT_NEAR(um(at(0.05).inside), row.coarse + 20.0, kHand);
  EXPECT_NEAR(um(at(0.01).depth), row.digital + 20.0, kHand);
}

INSTANTIATE_TEST_SUITE_P(Din862, OutsideCaliperErrors,
                         testing::Values(CaliperRow{200, 50, 20, 20}, CaliperRow{300, 50, 30, 30},
                                         CaliperRow{400, 60, 30, 30}, CaliperRow{500, 70, 30, 30},
                                         CaliperRow{600, 80, 30, 30}, CaliperRow{700, 90, 40, 40},
                                         CaliperRow{800, 100, 40, 40}, CaliperRow{900, 110, 40, 40},
                                         CaliperRow{1000, 120, 40, 40}, CaliperRow{1200, 140, 50, 50},
                                         CaliperRow{1400, 160, 50, 50}, CaliperRow{1600, 180, 0, 60}));

// DIN 863, the same extract: range of the micrometer, um.
struct MicrometerRow {
  double from;
  double to;
  double error;
};
class OutsideMicrometerErrors : public testing::TestWithParam<MicrometerRow> {};

TEST_P(OutsideMicrometerErrors, AreThoseOfDin863) {
  const MicrometerRow& row = GetParam();
  const AskedInstrument asked{.kind = "outside micrometer", .reads = mm(0.01)};
  EXPECT_NEAR(um(row_at(asked, row.to).outside), row.error, kHand);
  EXPECT_NEAR(um(row_at(asked, (row.from + row.to) / 2.0).outside), row.error, kHand);
}

INSTANTIATE_TEST_SUITE_P(
    Din863, OutsideMicrometerErrors,
    testing::Values(MicrometerRow{0, 25, 4}, MicrometerRow{25, 50, 4}, MicrometerRow{50, 75, 5},
                    MicrometerRow{75, 100, 5}, MicrometerRow{100, 125, 6}, MicrometerRow{125, 150, 6},
                    MicrometerRow{150, 175, 7}, MicrometerRow{175, 200, 7}, MicrometerRow{200, 225, 8},
                    MicrometerRow{225, 250, 8}, MicrometerRow{250, 275, 9}, MicrometerRow{275, 300, 9},
                    MicrometerRow{300, 325, 10}, MicrometerRow{325, 350, 10}, MicrometerRow{350, 375, 11},
                    MicrometerRow{375, 400, 11}, MicrometerRow{400, 425, 12}, MicrometerRow{425, 450, 12},
                    MicrometerRow{450, 475, 13}, MicrometerRow{475, 500, 13}));

// JIS B 7503:2011, maximum permissible errors (maker's catalogue of 2016, p. 429): graduation and range in mm; um over the whole
// range and, of a hand that goes 1 mm a turn, within a tenth, a half and one turn.
struct IndicatorRow {
  const char* kind;
  double graduation;
  double range;
  double whole;
  double tenth = 0.0;
  double half = 0.0;
  double one = 0.0;
};
class OutsideIndicatorErrors : public testing::TestWithParam<IndicatorRow> {};

TEST_P(OutsideIndicatorErrors, AreThoseOfJisB7503) {
  const IndicatorRow& row = GetParam();
  const AskedInstrument asked{.kind = row.kind, .reads = mm(row.graduation), .range = mm(row.range)};
  EXPECT_NEAR(um(row_at(asked, 100.0).outside), row.whole, kHand);
  if (row.tenth == 0.0) return;
  EXPECT_NEAR(um(row_at(asked, 0.1).outside), row.tenth, kHand);
  EXPECT_NEAR(um(row_at(asked, 0.5).outside), row.half, kHand);
  EXPECT_NEAR(um(row_at(asked, 1.0).outside), row.one, kHand);
}

constexpr const char* kLarge = "dial indicator";
constexpr const char* kSmall = "small dial indicator";
INSTANTIATE_TEST_SUITE_P(
    JisB7503, OutsideIndicatorErrors,
    testing::Values(IndicatorRow{kLarge, 0.01, 1, 8, 5, 8, 8}, IndicatorRow{kLarge, 0.01, 3, 10, 5, 8, 9},
                    IndicatorRow{kLarge, 0.01, 5, 12, 5, 9, 10}, IndicatorRow{kLarge, 0.01, 10, 15, 5, 9, 10},
                    IndicatorRow{kLarge, 0.01, 20, 25, 8, 10, 15},
                    IndicatorRow{kLarge, 0.01, 30, 30, 10, 12, 15},
                    IndicatorRow{kLarge, 0.01, 50, 40, 10, 12, 15},
                    IndicatorRow{kLarge, 0.01, 100, 50, 12, 17, 20}, IndicatorRow{kLarge, 0.005, 5, 12},
                    IndicatorRow{kLarge, 0.001, 1, 5}, IndicatorRow{kLarge, 0.001, 2, 7},
                    IndicatorRow{kLarge, 0.001, 5, 10}, IndicatorRow{kSmall, 0.01, 1, 15, 8, 11, 12},
                    IndicatorRow{kSmall, 0.01, 3, 16, 8, 11, 12},
                    IndicatorRow{kSmall, 0.01, 5, 18, 8, 12, 14},
                    IndicatorRow{kSmall, 0.01, 10, 20, 9, 12, 14}, IndicatorRow{kSmall, 0.005, 5, 12},
                    IndicatorRow{kSmall, 0.002, 1, 6}, IndicatorRow{kSmall, 0.001, 1, 5}));

// --- held from memory ---------------------------------------------------------------------------------------------
TEST(RememberedInstrumentErrors, OfInchMicrometersAndCalipers) {
  // ASME B89.1.13: 0 to 1 in, 0.0001 in; ASME B89.1.14: 0.001 in on short ranges.
  const AskedInstrument micrometer{
      .kind = "micrometer", .reads = Length::of(0.0001, unit::inch), .in_inches = true};
  EXPECT_NEAR(row_at(micrometer, 25.4).outside.in(unit::inch), 0.0001, 1e-12);
  EXPECT_NEAR(um(row_at(micrometer, 25.5).outside), 4.0, kHand);
  const AskedInstrument caliper{
      .kind = "Dial Caliper", .reads = Length::of(0.001, unit::inch), .in_inches = true};
  EXPECT_NEAR(row_at(caliper, 150.0).outside.in(unit::inch), 0.001, 1e-12);
  EXPECT_NEAR(um(row_at(caliper, 150.0).inside), 45.4, kHand);
  EXPECT_NEAR(um(row_at(caliper, 200.0).outside), 20.0, kHand);
}

TEST(RememberedInstrumentErrors, OfWhatIsFelt) {
  const auto inches = [](const char* kind) {
    return row_at({.kind = kind, .reads = Length::of(0.001, unit::inch)}, 10.0).inside.in(unit::inch);
  };
  EXPECT_NEAR(inches("telescoping gauge, read with a micrometer"), 0.002, 1e-12);
  EXPECT_NEAR(inches("small hole gauge"), 0.001, 1e-12);
  EXPECT_NEAR(inches("inside micrometer"), 0.001, 1e-12);
  EXPECT_NEAR(inches("inside calipers set to a rule"), 1.0 / 64, 1e-12);
  EXPECT_NEAR(inches("spring calipers, felt against a micrometer"), 0.002, 1e-12);
  // Half of a division: 1/64 in rule, 1/128 in; 0.5 mm rule, 0.25 mm.
  EXPECT_NEAR(
      row_at({.kind = "steel rule", .reads = Length::of(1.0 / 64, unit::inch)}, 10.0).outside.in(unit::inch),
      1.0 / 128, 1e-12);
  EXPECT_NEAR(um(row_at({.kind = "steel rule", .reads = mm(0.5)}, 10.0).outside), 250.0, kHand);
}

}  // namespace
}  // namespace sparewright::handbook
