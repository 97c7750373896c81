// Socket head cap screws against printed rows (socket_heads.csv): the rules of ASME B18.3 and ISO 4762 that the
// head is as high as the body is thick and, from 1/4 in up, half as wide again, recomputed beside the rows.
#include <cmath>

#include <gtest/gtest.h>

#include "core/handbook/screw_size.hpp"
#include "core/handbook/socket_head_screws.hpp"
#include "published.hpp"

namespace sparewright::handbook {
namespace {

using published::Row;
namespace unit = quantity::unit;

class OutsideSocketHead : public testing::TestWithParam<Row> {};
TEST_P(OutsideSocketHead, IsThePrintedOneAndFollowsTheBody) {
  const Row& row = GetParam();
  const bool metric = row["source"] == "iso 4762";
  const auto shown = [metric](auto size) { return metric ? size.in(unit::millimetre) : size.in(unit::inch); };
  const auto screw = socket_head_screw(row["size"]);
  ASSERT_TRUE(screw);
  const double nominal = shown(read_screw_size(row["size"])->nominal);
  const double last = metric ? 0.01 : 0.001;  // of what is printed
  EXPECT_NEAR(row.number("height_max"), nominal, 0.5000001 * last);
  EXPECT_NEAR(shown(screw->head_height_max), row.number("height_max"), 1e-9);
  EXPECT_NEAR(shown(screw->head_height_min), row.number("height_min"), 1e-9);
  EXPECT_NEAR(shown(screw->body_max), row.number("body"), 1e-9);
  EXPECT_NEAR(shown(screw->head_max), row.number("head"), 1e-9);
  EXPECT_EQ(screw->key_name, row["key"] + (metric ? " mm" : " in"));
  if (!metric && nominal >= 0.25) {
    EXPECT_NEAR(row.number("head"), 1.5 * nominal, 0.0011)
        << "9/16 is printed 0.843, half as wide again 0.844";
  }
}
INSTANTIATE_TEST_SUITE_P(OutsideB183, OutsideSocketHead,
                         testing::ValuesIn(published::rows_of("socket_heads.csv", "b18.3")));
INSTANTIATE_TEST_SUITE_P(OutsideIso4762, OutsideSocketHead,
                         testing::ValuesIn(published::rows_of("socket_heads.csv", "iso 4762")));

}  // namespace
}  // namespace sparewright::handbook
