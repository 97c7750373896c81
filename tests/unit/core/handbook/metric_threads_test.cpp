#include "core/handbook/metric_threads.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"

namespace sparewright::handbook {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
namespace unit = quantity::unit;

std::string read_as(std::string_view text) {
  const auto thread = read_metric_thread(text);
  return thread ? to_string(*thread) : base::sentence(thread.error());
}

TEST(MetricThread, DesignationsAreRead) {
  EXPECT_EQ(read_as("M8x1.25"), "M8x1.25");
  EXPECT_EQ(read_as("M8"), "M8x1.25");
  EXPECT_EQ(read_as("m 8 X 1"), "M8x1");
  EXPECT_EQ(read_as("M10×1.5-6g"), "M10x1.5-6g");
  EXPECT_EQ(read_as("M10x1.5 - 6H - LH"), "M10x1.5-6H-LH");
  EXPECT_EQ(read_as("M8-6g"), "M8x1.25-6g");
  EXPECT_EQ(read_as("M8x1-4g6g"), "M8x1-4g6g");
  EXPECT_EQ(read_as("M2.5"), "M2.5x0.45");
  EXPECT_TRUE(read_metric_thread("M8 LH")->left_hand);
}

TEST(MetricThread, AMissingPitchIsTheCoarseOneAndSaid) {
  EXPECT_THAT(read_metric_thread("M8")->assumed, ElementsAre("no pitch written: coarse, 1.25 mm"));
  EXPECT_THAT(read_metric_thread("M8x1.25")->assumed, IsEmpty());
  const auto odd = read_metric_thread("M13");
  ASSERT_FALSE(odd);
  EXPECT_EQ(odd.error().code, base::Code::kNotTabled);
  EXPECT_EQ(base::sentence(odd.error()), "the coarse pitch is not tabled here for M13");
}

TEST(MetricThread, WhatIsNoThreadFails) {
  for (const char* text : {"", "M", "8x1.25", "M0", "Mx1", "M8x", "M8x0", "M8x9", "M8x1.25-", "M8-9z",
                           "M8 6g 6g", "M8 LH LH", "M8x1x1", "Mnan", "Minf", "M1e2", "M999"}) {
    const auto thread = read_metric_thread(text);
    if (std::string_view(text) == "M8x1.25-") {
      EXPECT_TRUE(thread) << "a dash at the end is dropped";
      continue;
    }
    ASSERT_FALSE(thread) << text << " was read as " << to_string(*thread);
    EXPECT_EQ(thread.error().code, base::Code::kNameUnknown) << text;
  }
}

TEST(MetricThread, LimitsOutsideTheGridAreNotTabled) {
  const auto fine = screw_limits_6g(read_metric_thread("M8x0.6").value());
  ASSERT_FALSE(fine);
  EXPECT_EQ(fine.error().code, base::Code::kNotTabled);
  EXPECT_THAT(base::report(fine.error()),
              HasSubstr("tolerance 6g/6H of a metric thread is not tabled here for M8x0.6"));
  EXPECT_FALSE(hole_limits_6h(read_metric_thread("M48x3").value()));      // over 45 mm
  EXPECT_FALSE(screw_limits_6g(read_metric_thread("M2.5x0.5").value()));  // 2.8 mm and below
}

TEST(MetricThread, WhatIsFromMemoryIsSaid) {
  EXPECT_EQ(screw_limits_6g(read_metric_thread("M8").value())->source.basis, Basis::kPublished);
  EXPECT_EQ(screw_limits_6g(read_metric_thread("M24").value())->source.basis,
            Basis::kFromMemory);  // its allowance
  EXPECT_EQ(hole_limits_6h(read_metric_thread("M20").value())->source.basis,
            Basis::kFromMemory);  // its minor limit
}

TEST(MetricThread, LimitsHoldForM27LikeForM24) {  // the same cells of the grid, 22.4 to 45 mm
  const auto m27 = hole_limits_6h(read_metric_thread("M27x3").value());
  const auto m24 = hole_limits_6h(read_metric_thread("M24x3").value());
  EXPECT_NEAR((m27->pitch.high - m27->pitch.low).base(), (m24->pitch.high - m24->pitch.low).base(), 1e-9);
}

}  // namespace
}  // namespace sparewright::handbook
