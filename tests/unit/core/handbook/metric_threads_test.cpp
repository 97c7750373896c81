#include "core/handbook/metric_threads.hpp"

#include <algorithm>
#include <fstream>
#include <sstream>
#include <utility>

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
              HasSubstr("the tolerance of grade 6 is not tabled here for M8x0.6"));
  EXPECT_THAT(base::report(fine.error()), HasSubstr("accepted: pitches 0.75, 1, 1.25, 1.5 mm on M8"));
  EXPECT_FALSE(hole_limits_6h(read_metric_thread("M0.9x0.2").value()));
  EXPECT_FALSE(screw_limits_6g(read_metric_thread("M2.5x0.5").value()));  // 2.8 mm and below
}

TEST(MetricThread, WhatIsFromMemoryIsSaid) {
  EXPECT_EQ(screw_limits_6g(read_metric_thread("M8").value())->source.basis, Basis::kPublished);
  EXPECT_EQ(screw_limits_6g(read_metric_thread("M24").value())->source.basis,
            Basis::kFromMemory);  // its allowance
  EXPECT_EQ(hole_limits_6h(read_metric_thread("M20").value())->source.basis,
            Basis::kFromMemory);  // its minor limit
}

MetricClass class_of(std::string_view text) {
  return read_metric_class(text).value();
}

TEST(MetricClass, IsReadAndWritten) {
  EXPECT_EQ(to_string(class_of("6g")), "6g");
  EXPECT_EQ(to_string(class_of("6g6g")), "6g");
  EXPECT_EQ(to_string(class_of("4g6g")), "4g6g");
  EXPECT_TRUE(class_of("5h6h").is_screw());
  EXPECT_FALSE(class_of("6G").is_screw());
  for (const char* text : {"", "6", "6E", "2g", "6gg", "6g6", "5g6H", "6g 6g", "6z", "66"})
    EXPECT_FALSE(read_metric_class(text)) << text;
  EXPECT_FALSE(read_metric_thread("M8-6E")) << "holes have G and H alone";
  EXPECT_FALSE(read_metric_thread("M8-5g6H"));
}

TEST(MetricClass, TheOneWrittenCountsForItsSide) {
  const MetricThread screw = read_metric_thread("M8-4h").value();
  EXPECT_EQ(screw_class(screw).thread_class, class_of("4h"));
  EXPECT_EQ(hole_class(screw).thread_class, kClass6h);
  EXPECT_EQ(hole_class(screw).assumed, "no class of a hole written: 6H, the usual one");
  EXPECT_EQ(screw_class(screw).assumed, "");
}

TEST(MetricClass, ZonesOfTheirOwnForPitchAndCrest) {
  const MetricThread thread = read_metric_thread("M10x1.5").value();
  const auto mixed = screw_limits(thread, class_of("4g6g")).value();
  const auto plain = screw_limits(thread, kClass6g).value();
  EXPECT_EQ(mixed.major, plain.major);
  EXPECT_EQ(mixed.pitch.high, plain.pitch.high);
  EXPECT_GT(mixed.pitch.low, plain.pitch.low);
  const auto basic = screw_limits(thread, class_of("6h")).value();
  EXPECT_EQ(basic.major.high, thread.major);
  EXPECT_EQ(basic.allowance, quantity::Length());
}

TEST(MetricClass, AHoleOfPositionGIsAboveTheBasicProfile) {
  const MetricThread thread = read_metric_thread("M10x1.5").value();
  const auto above = hole_limits(thread, class_of("6G")).value();
  const auto on = hole_limits(thread, kClass6h).value();
  EXPECT_NEAR((above.pitch.low - on.pitch.low).base(), 0.032, 1e-9);
  EXPECT_NEAR((above.minor.high - on.minor.high).base(), 0.032, 1e-9);
  EXPECT_NEAR((above.major_min - on.major_min).base(), 0.032, 1e-9);
}

TEST(MetricClass, WhatTheStandardLacksNamesWhatItHas) {
  const auto says = [](std::string_view thread, std::string_view thread_class) {
    const auto limits = screw_limits(read_metric_thread(thread).value(), class_of(thread_class));
    return limits ? std::string("has limits") : base::report(limits.error());
  };
  EXPECT_THAT(says("M3x0.5", "9g"), HasSubstr("grades 3, 4, 5, 6, 7"));
  EXPECT_THAT(says("M2x0.4", "6e"), HasSubstr("positions f, g and h at this pitch"));
  EXPECT_THAT(says("M1.2x0.25", "6f"), HasSubstr("positions g and h at this pitch"));
  EXPECT_EQ(says("M64x6", "8e"), "has limits");
}

// The cells of a table's lines, remarks and head left out; no cell has a comma in it.
std::vector<std::vector<std::string>> cells_of(const std::string& table) {
  std::ifstream in(std::string(SPAREWRIGHT_SOURCE_DIR) + "/core/handbook/data/" + table + ".csv");
  std::vector<std::vector<std::string>> out;
  bool head = true;
  for (std::string line; std::getline(in, line);) {
    if (line.starts_with("#") || std::exchange(head, false)) continue;
    std::istringstream cells(line);
    out.emplace_back();
    for (std::string cell; std::getline(cells, cell, ',');)
      out.back().push_back(cell);
  }
  return out;
}

TEST(MetricGrades, GradeSixFromMemoryIsThePrintedOne) {
  constexpr std::size_t kGradeSix = 7;
  int compared = 0;
  const auto grades = cells_of("metric_thread_grades");
  for (const auto& printed : cells_of("metric_thread_tolerances")) {
    for (const auto& row : grades) {
      if (!std::equal(row.begin(), row.begin() + 4, printed.begin())) continue;
      EXPECT_EQ(row.at(kGradeSix), printed.at(4)) << printed.at(0) << " " << printed.at(1);
      ++compared;
    }
  }
  for (const auto& row : cells_of("metric_thread_positions")) {
    for (const auto& printed : cells_of("metric_thread_tolerances")) {
      if (printed.at(0) != "allowance g" || printed.at(1) != row.at(0)) continue;
      EXPECT_EQ(row.at(3), printed.at(4)) << row.at(0);
      ++compared;
    }
  }
  EXPECT_EQ(compared, 67) << "every printed figure has its place in the grid";
}

TEST(MetricEngagement, IsAboutTheDiameter) {
  const auto normal = normal_engagement(read_metric_thread("M10x1.5").value()).value();
  EXPECT_NEAR(normal.over.base(), 4.74, 0.01);    // the standard prints 5
  EXPECT_NEAR(normal.up_to.base(), 14.18, 0.01);  // the standard prints 15
  EXPECT_FALSE(normal_engagement(read_metric_thread("M0.8x0.2").value()));
}

TEST(MetricThread, LimitsHoldForM27LikeForM24) {  // the same cells of the grid, 22.4 to 45 mm
  const auto m27 = hole_limits_6h(read_metric_thread("M27x3").value());
  const auto m24 = hole_limits_6h(read_metric_thread("M24x3").value());
  EXPECT_NEAR((m27->pitch.high - m27->pitch.low).base(), (m24->pitch.high - m24->pitch.low).base(), 1e-9);
}

}  // namespace
}  // namespace sparewright::handbook
