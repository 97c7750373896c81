// Change gears in print (change_gears.csv): the trains cut what is said, and the search finds one at least as
// good.
#include "core/handbook/change_gears.hpp"

#include <cmath>
#include <sstream>

#include <gtest/gtest.h>

#include "published.hpp"

namespace sparewright::handbook {
namespace {

using published::Row;
using quantity::Length;
namespace unit = quantity::unit;

// Charts work with rounded figures: their errors agree with the exact ones to this many per cent.
constexpr double kChartPct = 0.006;

Length lead(const Row& row, const std::string& column) {
  const bool inch = row[column + "_unit"] == "tpi";
  return inch ? Length::of(1.0 / row.number(column), unit::inch)
              : Length::of(row.number(column), unit::millimetre);
}

std::vector<int> teeth(const std::string& cell) {
  std::vector<int> out;
  std::istringstream in(cell);
  int count = 0;
  for (std::string cross; in >> count; in >> cross)
    out.push_back(count);
  return out;
}

void expect_train(const Row& row) {
  const GearTrain train{teeth(row["drivers"]), teeth(row["drivens"])};
  const Length wanted = lead(row, "thread");
  const double error_pct = 100.0 * (lead_of(lead(row, "screw"), train) / wanted - 1.0);
  if (row.has("obtained_mm")) {
    EXPECT_NEAR(lead_of(lead(row, "screw"), train).in(unit::millimetre), row.number("obtained_mm"), 6e-7)
        << row;
    EXPECT_NEAR(error_pct, 0.0125, 0.00005) << row;
  } else {
    const double printed = row.number("error_pct");
    EXPECT_NEAR(std::abs(error_pct), printed, printed == 0.0 ? 1e-12 : kChartPct) << row;
  }
  // Out of the gears of the row alone the search makes that train or a better one, and knows it exact where
  // it is.
  std::vector<int> box = train.drivers;
  box.insert(box.end(), train.drivens.begin(), train.drivens.end());
  const auto found = change_gears({lead(row, "screw"), box, {}}, {wanted, train.gears(), 3}).value();
  EXPECT_LE(std::abs(found.at(0).error), std::abs(error_pct) / 100.0 + 1e-15) << row;
  if (row["error_pct"] == "0") {
    EXPECT_TRUE(found[0].exact) << row;
    EXPECT_EQ(found[0].error, 0.0) << row;
  }
}

std::vector<Row> of_source(std::string_view source) {
  return published::rows_of("change_gears.csv", source);
}
class OutsideChangeGears : public testing::TestWithParam<Row> {};
TEST_P(OutsideChangeGears, CutWhatIsPrinted) {
  expect_train(GetParam());
}
const std::vector<Row> kBench = of_source("chart for a 7x bench lathe");
INSTANTIATE_TEST_SUITE_P(OutsideTreatise, OutsideChangeGears,
                         testing::ValuesIn(of_source("Turning and Boring")));
INSTANTIATE_TEST_SUITE_P(OutsidePractice, OutsideChangeGears,
                         testing::ValuesIn(of_source("Modern Machine-Shop Practice")));
INSTANTIATE_TEST_SUITE_P(OutsideAmerican, OutsideChangeGears,
                         testing::ValuesIn(of_source("American Mechanic")));
INSTANTIATE_TEST_SUITE_P(OutsideMechanician, OutsideChangeGears,
                         testing::ValuesIn(of_source("Mechanician and Constructor")));
INSTANTIATE_TEST_SUITE_P(OutsideNote, OutsideChangeGears,
                         testing::ValuesIn(of_source("note on transposing gears")));
INSTANTIATE_TEST_SUITE_P(OutsideExam, OutsideChangeGears, testing::ValuesIn(of_source("engineering exam")));
INSTANTIATE_TEST_SUITE_P(OutsideForum, OutsideChangeGears,
                         testing::ValuesIn(of_source("forum chart with 80/63")));
INSTANTIATE_TEST_SUITE_P(OutsideBench, OutsideChangeGears, testing::ValuesIn(published::counted(kBench)));
TEST(OutsideChangeGearsRest, CutWhatIsPrinted) {
  for (const Row& row : published::others(kBench))
    expect_train(row);
  EXPECT_EQ(published::rows("change_gears.csv").size(), 58U);
}
TEST(ChangeGearRule, MetricThreadsOnAnInchScrew) {
  const auto rows = of_source("rule applied");
  EXPECT_EQ(rows.size(), 6U);
  for (const Row& row : rows)
    expect_train(row);
}

// Turning and Boring: a nut that shrinks from 0.200 to 0.198 in of pitch; 83 and 84 added to the train give
// 0.19762.
TEST(OutsideShrunkNut, HasThePrintedPitch) {
  const Length pitch = lead_of(Length::of(0.200, unit::inch), {{83}, {84}});
  EXPECT_NEAR(pitch.in(unit::inch), 0.19762, 0.000005);
}

// Forum figures: ratios for 1.27, and 63 for 63.5.
TEST(OutsideRatiosFor127, AreThePrintedOnes) {
  EXPECT_NEAR(Ratio::of(80, 63).value(), 1.2698, 0.00005);
  EXPECT_NEAR(100.0 * (80.0 / 63.0 / 1.27 - 1.0), -0.0125, 0.00005);
  EXPECT_NEAR(Ratio::of(47, 37).value(), 1.2702, 0.00011);  // printed cut short, not rounded: 1.27027
  EXPECT_NEAR(100.0 * (47.0 / 37.0 / 1.27 - 1.0), 0.0213, 0.00005);
  EXPECT_NEAR(100.0 * (126.0 / 127.0 - 1.0), -0.79, 0.005);
}

}  // namespace
}  // namespace sparewright::handbook
