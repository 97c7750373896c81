// Which table an instrument falls under, by what it is called.
#include "core/handbook/instrument_errors.hpp"

#include <string>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Length;
namespace unit = quantity::unit;

std::string source_of(const char* kind) {
  const auto rows = usual_errors({.kind = kind, .reads = Length::of(0.01, unit::millimetre)});
  return rows ? cite(rows->front().source) : base::report(rows.error());
}

TEST(InstrumentErrors, EachSaysWhereItIsFrom) {
  EXPECT_EQ(source_of("digital caliper").substr(0, 7), "DIN 862");
  EXPECT_EQ(source_of("Depth Gauge").substr(0, 7), "DIN 862");
  EXPECT_EQ(source_of("outside micrometer").substr(0, 7), "DIN 863");
  EXPECT_EQ(source_of("dial indicator on a stand").substr(0, 10), "JIS B 7503");
  EXPECT_NE(source_of("telescoping gauge").find("(from memory)"), std::string::npos);
}

TEST(InstrumentErrors, OfOtherKindsNothingIsKnown) {
  for (const char* kind : {"dial bore gauge, set in a ring", "depth micrometer", "bore micrometer",
                           "test indicator", "height gauge", "something"}) {
    EXPECT_NE(source_of(kind).find("is not tabled here for " + std::string(kind)), std::string::npos) << kind;
    EXPECT_NE(source_of(kind).find("good_to"), std::string::npos);
  }
  EXPECT_FALSE(
      usual_errors({.kind = "dial indicator", .reads = Length::of(0.001, unit::inch), .in_inches = true}));
  // A graduation and a range the table has not.
  EXPECT_FALSE(usual_errors({.kind = "dial indicator",
                             .reads = Length::of(0.001, unit::millimetre),
                             .range = Length::of(30, unit::millimetre)}));
}

TEST(InstrumentErrors, OfAnIndicatorTheRangeNotSaidIsTen) {
  const auto rows = usual_errors({.kind = "dial indicator", .reads = Length::of(0.01, unit::millimetre)});
  ASSERT_TRUE(rows);
  EXPECT_NEAR(rows->back().outside.in(unit::micrometre), 15.0, 1e-9);
  // 0.001 mm indicators end at 5 mm: that one is taken.
  const auto fine = usual_errors({.kind = "dial indicator", .reads = Length::of(0.001, unit::millimetre)});
  ASSERT_TRUE(fine);
  EXPECT_NEAR(fine->back().outside.in(unit::micrometre), 10.0, 1e-9);
}

}  // namespace
}  // namespace sparewright::handbook
