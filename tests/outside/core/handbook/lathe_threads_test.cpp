// Depths, infeeds and thread dials against printed rules and worked examples.
#include <cmath>

#include <gtest/gtest.h>

#include "core/handbook/single_point_threads.hpp"
#include "core/handbook/tap_holes.hpp"
#include "core/handbook/thread_dial.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::handbook {
namespace {

using quantity::fixed;
using quantity::Length;
namespace unit = quantity::unit;

// A shop's internal Acme of 1/2-10 (www.madmodder.net/index.php/topic,10542.725.html): 0.060 on a side, so
// the compound at 14.5 degrees goes 0.062 in.
TEST(OutsideCompound, InternalAcme) {
  const ThreadDepth depth = thread_depth(read_thread("1/2-10 ACME").value(), ThreadSide::kHole);
  EXPECT_EQ(fixed(depth.depth.in(unit::inch), 3), "0.060");
  EXPECT_EQ(fixed(slide_travel_mm(0.060, 14.5 * 0.017453292519943295), 3), "0.062");
  EXPECT_EQ(fixed(depth.nose.in(unit::inch), 3), "0.032");
}

// A broken thumb screw of 3 x 0.6 mm (metalworkforums.com/showthread.php?t=180076): minor diameter about 2.26
// mm, drill 2.4.
TEST(OutsideThreadDepth, ThumbScrew3By06) {
  const AnyThread thread = read_thread("M3x0.6").value();
  const ThreadDepth depth = thread_depth(thread, ThreadSide::kScrew);
  EXPECT_NEAR(3.0 - 2.0 * depth.depth.base(), 2.26, 0.005);
  const auto percent = percent_of_drill(shape_of(thread), find_drill("2.4 mm").value()).value();
  EXPECT_GT(percent.percent, 70.0);
  EXPECT_LT(percent.percent, 80.0);
}

// Depths over the pitch as machinists' handbooks print them (from memory).
struct PrintedDepth {
  ThreadForm form;
  ThreadSide side;
  double per_pitch;
};
class RememberedDepth : public testing::TestWithParam<PrintedDepth> {};
TEST_P(RememberedDepth, IsThePrintedShareOfThePitch) {
  ThreadShape shape;
  shape.form = GetParam().form;
  shape.pitch = Length::of(1.0, unit::millimetre);
  EXPECT_NEAR(thread_depth(shape, GetParam().side).depth.base(), GetParam().per_pitch, 0.00005);
}
INSTANTIATE_TEST_SUITE_P(
    RememberedForms, RememberedDepth,
    testing::Values(PrintedDepth{ThreadForm::kSharpV, ThreadSide::kScrew, 0.8660},
                    PrintedDepth{ThreadForm::kAmericanNational, ThreadSide::kScrew, 0.6495},
                    PrintedDepth{ThreadForm::kUnified, ThreadSide::kScrew, 0.6134},
                    PrintedDepth{ThreadForm::kUnified, ThreadSide::kHole, 0.5413},
                    PrintedDepth{ThreadForm::kMetric, ThreadSide::kScrew, 0.6134},
                    PrintedDepth{ThreadForm::kWhitworth, ThreadSide::kScrew, 0.6403},
                    PrintedDepth{ThreadForm::kBritishAssociation, ThreadSide::kScrew, 0.6000}));

// Threading guides of insert makers, 1.5 mm pitch, 0.94 mm deep in six passes (from memory).
struct InsertPass {
  int pass;
  const char* depth;
};
class RememberedInsertPasses : public testing::TestWithParam<InsertPass> {};
TEST_P(RememberedInsertPasses, AreThePrintedDepths) {
  EXPECT_EQ(fixed(insert_depth_after_pass_mm(0.94, GetParam().pass, 6), 2), GetParam().depth);
}
INSTANTIATE_TEST_SUITE_P(RememberedGuide, RememberedInsertPasses,
                         testing::Values(InsertPass{1, "0.23"}, InsertPass{2, "0.42"}, InsertPass{3, "0.59"},
                                         InsertPass{4, "0.73"}, InsertPass{5, "0.84"},
                                         InsertPass{6, "0.94"}));

// The rules printed beside lathes with a lead screw of 8 per inch and a dial that turns once in 4 in (8
// lines, every other one numbered; from memory of lathe manuals): even numbers at any line, odd ones at any
// numbered line, halves at every other numbered line, quarters at the line started on, multiples of 8
// anywhere.
struct DialRule {
  double per_inch;
  int every;
  bool any_place;
};
class RememberedThreadDial : public testing::TestWithParam<DialRule> {};
TEST_P(RememberedThreadDial, IsThePrintedRule) {
  const DialLines found =
      dial_lines(Length::of(1.0 / 8.0, unit::inch), Length::of(1.0 / GetParam().per_inch, unit::inch))
          .value();
  EXPECT_EQ(found.every, GetParam().every);
  EXPECT_EQ(found.any_place, GetParam().any_place);
}
INSTANTIATE_TEST_SUITE_P(RememberedManual, RememberedThreadDial,
                         testing::Values(DialRule{8, 1, true}, DialRule{16, 1, true}, DialRule{24, 1, true},
                                         DialRule{10, 1, false}, DialRule{12, 1, false},
                                         DialRule{18, 1, false}, DialRule{20, 1, false},
                                         DialRule{28, 1, false}, DialRule{9, 2, false},
                                         DialRule{11, 2, false}, DialRule{13, 2, false},
                                         DialRule{27, 2, false}, DialRule{4.5, 4, false},
                                         DialRule{5.5, 4, false}, DialRule{11.5, 4, false},
                                         DialRule{2.75, 8, false}, DialRule{5.75, 8, false}));

// The wheels printed beside lathes with a lead screw of 3 mm: 14 teeth for 1.75 and 3.5 mm, 15 for 1.25 and
// 2.5, 16 for 0.8 and 4 (from memory); each comes round to its one line.
struct MetricWheel {
  int teeth;
  double pitch_mm;
};
class RememberedMetricDial : public testing::TestWithParam<MetricWheel> {};
TEST_P(RememberedMetricDial, ComesRoundToItsLine) {
  const DialLines found = dial_lines(Length::of(3.0, unit::millimetre),
                                     Length::of(GetParam().pitch_mm, unit::millimetre), {GetParam().teeth, 1})
                              .value();
  EXPECT_EQ(found.every, 1);
}
INSTANTIATE_TEST_SUITE_P(RememberedManual, RememberedMetricDial,
                         testing::Values(MetricWheel{14, 1.75}, MetricWheel{14, 3.5}, MetricWheel{15, 1.25},
                                         MetricWheel{15, 2.5}, MetricWheel{16, 0.8}, MetricWheel{16, 4.0}));

// Form taps: 1/4-20 and M6 at 65 % (drills #1 and 5.55 mm in makers' charts, from memory).
TEST(RememberedFormTap, QuarterInch20) {
  const ThreadShape thread = shape_of(read_thread("1/4-20 UNC").value());
  EXPECT_EQ(fixed(form_tap_hole(thread, 65.0, {})->hole.in(unit::inch), 4), "0.2279");
}
TEST(RememberedFormTap, M6) {
  const ThreadShape thread = shape_of(read_thread("M6").value());
  EXPECT_NEAR(form_tap_hole(thread, 65.0, {})->hole.base(), 5.55, 0.01);
}

}  // namespace
}  // namespace sparewright::handbook
