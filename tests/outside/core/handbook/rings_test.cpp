// Retaining-ring grooves (ring_grooves.csv) and O-ring glands (o_ring_squeeze.csv) against printed rows.
#include <cmath>

#include <gtest/gtest.h>

#include "core/handbook/iso286.hpp"
#include "core/handbook/o_rings.hpp"
#include "core/handbook/retaining_rings.hpp"
#include "published.hpp"

namespace sparewright::handbook {
namespace {

using published::Row;
using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

// The tolerance of a metric groove is that of its ISO 286 zone at its diameter; the depth is half the
// difference of the diameters.
bool is_metric(const Row& row) {
  return row["kind"].ends_with("metric");
}
RingKind kind_of(const Row& row) {
  if (row["kind"] == "external metric") return RingKind::kExternalMetric;
  if (row["kind"] == "internal metric") return RingKind::kInternalMetric;
  return row["kind"] == "external inch" ? RingKind::kExternalInch : RingKind::kInternalInch;
}
double in_unit(const Row& row, double mm) {
  return is_metric(row) ? mm : mm / 25.4;
}

void expect_groove(const Row& row) {
  const Diameter nominal = is_metric(row) ? Diameter::of(row.number("nominal"), unit::millimetre)
                                          : Diameter::of(row.number("nominal"), unit::inch);
  const auto groove = ring_groove(kind_of(row), nominal);
  ASSERT_TRUE(groove) << row;
  EXPECT_NEAR(in_unit(row, groove->ring.groove.base()), row.number("groove"), 1e-12) << row;
  EXPECT_NEAR(in_unit(row, groove->depth.base()), row.number("depth"), 1e-9) << row;
  ASSERT_EQ(groove->deviations.has_value(), row.has("tolerance")) << row;
  if (!groove->deviations) return;
  const std::string& printed = row["tolerance"];  // 0/-0.11, +0.21/0, or plus and minus one figure
  const double figure = std::stod(printed.substr(printed.find_first_of(".") - 1));
  const double lower = in_unit(row, groove->deviations->lower.base());
  const double upper = in_unit(row, groove->deviations->upper.base());
  EXPECT_NEAR(upper, printed.starts_with("0/") ? 0.0 : figure, 1e-9) << row;
  EXPECT_NEAR(lower, printed.ends_with("/0") ? 0.0 : -figure, 1e-9) << row;
}

std::vector<Row> grooves(const std::string& kind, bool known) {
  std::vector<Row> out;
  for (const Row& row : published::rows("ring_grooves.csv")) {
    if (row["kind"] == kind && (row["known"] == "printed") == known) out.push_back(row);
  }
  return out;
}

class OutsideRingGroove : public testing::TestWithParam<Row> {};
TEST_P(OutsideRingGroove, IsThePrintedOne) {
  expect_groove(GetParam());
}
INSTANTIATE_TEST_SUITE_P(OutsideDin471, OutsideRingGroove,
                         testing::ValuesIn(published::counted(grooves("external metric", true))));
INSTANTIATE_TEST_SUITE_P(OutsideDin472, OutsideRingGroove,
                         testing::ValuesIn(published::counted(grooves("internal metric", true))));
INSTANTIATE_TEST_SUITE_P(OutsideExternalInch, OutsideRingGroove,
                         testing::ValuesIn(published::counted(grooves("external inch", true))));
INSTANTIATE_TEST_SUITE_P(OutsideInternalInch, OutsideRingGroove,
                         testing::ValuesIn(published::counted(grooves("internal inch", true))));
TEST(OutsideRingGrooves, AllRowsAreRecomputed) {
  const auto rows = published::rows("ring_grooves.csv");
  EXPECT_EQ(rows.size(), retaining_rings().size());
  for (const Row& row : rows)
    expect_groove(row);
}

// Squeeze is printed to half a per cent. For 0.275 in the guide prints 10.5 where thinnest ring and deepest
// gland give 10.8 per cent.
class OutsideORingSqueeze : public testing::TestWithParam<Row> {};
TEST_P(OutsideORingSqueeze, IsThePrintedOne) {
  const Row& row = GetParam();
  const auto fit = o_ring_gland(SealDuty::kReciprocating, Length::of(row.number("section"), unit::inch));
  ASSERT_TRUE(fit);
  EXPECT_NEAR(fit->gland.depth_least.in(unit::inch), row.number("depth_least"), 1e-12);
  EXPECT_NEAR(fit->gland.depth_most.in(unit::inch), row.number("depth_most"), 1e-12);
  EXPECT_NEAR(fit->squeeze_least, row.number("squeeze_least"), 0.4);
  EXPECT_NEAR(fit->squeeze_most, row.number("squeeze_most"), 0.4);
}
INSTANTIATE_TEST_SUITE_P(OutsideGuide, OutsideORingSqueeze,
                         testing::ValuesIn(published::rows("o_ring_squeeze.csv")));

}  // namespace
}  // namespace sparewright::handbook
