// Limits of size 6g and 6H of metric threads against printed tables (metric_limits.csv).
#include <gtest/gtest.h>

#include "core/handbook/metric_threads.hpp"
#include "core/quantity/display.hpp"
#include "published.hpp"

namespace sparewright::handbook {
namespace {

using published::Row;
using quantity::Diameter;
using quantity::fixed;
namespace unit = quantity::unit;

void expect_printed(const Row& row, const std::string& column, Diameter computed) {
  if (!row.has(column)) return;
  EXPECT_EQ(fixed(computed.in(unit::millimetre), 3), fixed(row.number(column), 3)) << column << ", " << row;
}

void expect_printed(const Row& row) {
  const MetricThread thread = read_metric_thread(row["thread"] + "-" + row["class"]).value();
  if (row["class"] == "6g") {
    const ExternalThreadLimits limits = screw_limits_6g(thread).value();
    expect_printed(row, "major_max", limits.major.high);
    expect_printed(row, "major_min", limits.major.low);
    expect_printed(row, "pitch_max", limits.pitch.high);
    expect_printed(row, "pitch_min", limits.pitch.low);
  } else {
    const InternalThreadLimits limits = hole_limits_6h(thread).value();
    expect_printed(row, "pitch_max", limits.pitch.high);
    expect_printed(row, "pitch_min", limits.pitch.low);
    expect_printed(row, "minor_min", limits.minor.low);
    expect_printed(row, "minor_max", limits.minor.high);
  }
}

class OutsideMetricLimits : public testing::TestWithParam<Row> {};
TEST_P(OutsideMetricLimits, AreThePrintedOnes) {
  expect_printed(GetParam());
}

INSTANTIATE_TEST_SUITE_P(Outside6g, OutsideMetricLimits,
                         testing::ValuesIn(published::rows_of("metric_limits.csv", "charts, 6g")));
INSTANTIATE_TEST_SUITE_P(Outside6h, OutsideMetricLimits,
                         testing::ValuesIn(published::rows_of("metric_limits.csv", "tables, 6H")));

// CRC Press handbook, engagement of an M10x1.5-6g bolt (taylorfrancis.com 10.1201/9781482273786-99):
// uses 9.206 for the greatest pitch diameter of the hole and 9.968 for the major diameter of the screw, which
// is its greatest.
TEST(OutsideMetricExample, M10InAluminium) {
  const MetricThread thread = read_metric_thread("M10x1.5").value();
  EXPECT_EQ(fixed(hole_limits_6h(thread)->pitch.high.in(unit::millimetre), 3), "9.206");
  EXPECT_EQ(fixed(screw_limits_6g(thread)->major.high.in(unit::millimetre), 3), "9.968");
  EXPECT_EQ(fixed(screw_limits_6g(thread)->major.low.in(unit::millimetre), 3), "9.732");
}

}  // namespace
}  // namespace sparewright::handbook
