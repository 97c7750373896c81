#include "core/handbook/single_point_threads.hpp"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/thread_dial.hpp"
#include "core/handbook/thread_reliefs.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Length;
using testing::ElementsAre;
using testing::HasSubstr;
namespace unit = quantity::unit;

AnyThread thread(std::string_view text) {
  return read_thread(text).value();
}
Length inch(double count) {
  return Length::of(count, unit::inch);
}
Angle degrees(double count) {
  return Angle::of(count, unit::degree);
}

TEST(ThreadDepths, OfEveryForm) {
  const auto per_pitch = [](std::string_view text, ThreadSide side) {
    const ThreadDepth depth = thread_depth(thread(text), side);
    return depth.depth / depth.pitch;
  };
  EXPECT_NEAR(per_pitch("3/8-16 UNC", ThreadSide::kScrew), 0.61343, 1e-5);
  EXPECT_NEAR(per_pitch("3/8-16 UNC", ThreadSide::kHole), 0.54127, 1e-5);
  EXPECT_NEAR(per_pitch("M10", ThreadSide::kScrew), 0.61343, 1e-5);
  EXPECT_NEAR(per_pitch("1/4-20 BSW", ThreadSide::kScrew), 0.640327, 1e-9);
  EXPECT_NEAR(per_pitch("2 BA", ThreadSide::kScrew), 0.6, 1e-9);
  EXPECT_NEAR(thread_depth(thread("1-5 ACME"), ThreadSide::kScrew).depth.in(unit::inch), 0.110, 1e-9);
  EXPECT_NEAR(thread_depth(thread("Tr20x4"), ThreadSide::kHole).depth.base(), 2.25, 1e-9);
  EXPECT_NEAR(thread_depth(shape_of(thread("3/8-16")), ThreadSide::kScrew).nose.base(), 25.4 / 16 / 6, 1e-4);
}

TEST(ThreadDepths, ASharperToolGoesDeeperToTheSamePitchDiameter) {
  const ThreadDepth usual = thread_depth(thread("1/2-13 UNC"), ThreadSide::kScrew);
  const ThreadDepth sharp = depth_for_tool(usual, Length()).value();
  EXPECT_NEAR(sharp.depth / sharp.pitch, 0.7578, 1e-4);  // 7/8 H
  const ThreadDepth eighth = depth_for_tool(usual, usual.pitch / 8.0).value();
  EXPECT_NEAR(eighth.depth / eighth.pitch, 0.6495, 1e-4);  // 3/4 H
  EXPECT_NEAR(depth_for_tool(usual, usual.nose)->depth.base(), usual.depth.base(), 1e-9);
  EXPECT_TRUE(depth_for_tool(usual, usual.pitch / 4.0));
  const auto wide = depth_for_tool(usual, usual.pitch / 3.0);
  ASSERT_FALSE(wide);
  EXPECT_THAT(base::report(wide.error()), HasSubstr("accepted: 0 to 0.0192 in (0.488 mm)"));
  EXPECT_FALSE(depth_for_tool(usual, inch(-0.001)));
  for (const char* text : {"1-5 ACME", "Tr20x4", "1/4-20 BSW", "2 BA", "1/4-26 BSC", "M8"}) {
    for (const ThreadSide side : {ThreadSide::kScrew, ThreadSide::kHole}) {
      const ThreadDepth depth = thread_depth(thread(text), side);
      EXPECT_TRUE(depth_for_tool(depth, depth.nose)) << text;
    }
  }
}

PassPlan plan(std::string_view text, const PassOptions& options) {
  return plan_passes(thread_depth(thread(text), ThreadSide::kScrew), options).value();
}

TEST(Passes, TakeEqualAreasAndEndInSpringPasses) {
  PassOptions options;
  options.compound_angle = degrees(29.5);
  for (const char* text : {"3/8-16 UNC", "M6", "1-8 UNC", "1/2-12 BSW", "1-5 ACME", "Tr40x7"}) {
    if (profile_of(shape_of(thread(text)).form).flank_angle < degrees(50))
      options.compound_angle = degrees(14.0);
    options.least_infeed = Length::of(0.0001, unit::millimetre);
    const PassPlan found = plan(text, options);
    ASSERT_GE(found.passes.size(), 4U) << text;
    const std::size_t cutting = found.passes.size() - 2;
    double area = 0.0;
    for (std::size_t i = 0; i < cutting; ++i) {
      const ThreadPass& pass = found.passes[i];
      EXPECT_FALSE(pass.spring);
      EXPECT_NEAR(pass.area.base(), found.passes[0].area.base(), 1e-9) << text << " pass " << pass.number;
      EXPECT_NEAR(pass.slide.base() * std::cos(options.compound_angle.base()), pass.infeed.base(), 1e-12);
      area += pass.area.base();
    }
    EXPECT_LE(found.passes[0].infeed.base(), options.most_first.base() + 1e-9) << text;
    EXPECT_EQ(found.passes[cutting - 1].depth, found.depth.depth) << text;
    EXPECT_TRUE(found.passes[cutting].spring && found.passes[cutting + 1].spring);
    EXPECT_EQ(found.passes[cutting].infeed, Length());
    const double whole = found.depth.depth.base();
    const double nose = found.depth.nose.base();
    EXPECT_NEAR(area, nose * whole + std::tan(found.depth.flank_angle.base() / 2) * whole * whole, 1e-9)
        << text;
    options.compound_angle = degrees(29.5);
    if (std::string_view(text) == "1-8 UNC") options.compound_angle = degrees(27.0);
  }
}

TEST(Passes, NoneIsThinnerThanTheToolCuts) {
  PassOptions options;
  options.most_first = inch(0.005);
  options.least_infeed = inch(0.003);
  const PassPlan found = plan("1/2-13 UNC", options);
  EXPECT_THAT(found.note, HasSubstr("the infeed is 0.0030 in (0.076 mm)"));
  double depth = 0.0;
  for (const ThreadPass& pass : found.passes) {
    if (pass.spring) continue;
    EXPECT_GE(pass.infeed.in(unit::inch), 0.0015) << pass.number;
    EXPECT_GT(pass.depth.base(), depth);
    depth = pass.depth.base();
  }
  EXPECT_EQ(depth, found.depth.depth.base());
  options.most_first = inch(0.2);  // deeper than the thread: one pass
  EXPECT_EQ(plan("M6", options).passes.size(), 3U);
}

TEST(Passes, BadOptions) {
  const ThreadDepth depth = thread_depth(thread("M10"), ThreadSide::kScrew);
  const auto says = [&](auto change) {
    PassOptions options;
    change(options);
    const auto found = plan_passes(depth, options);
    return found ? std::string("planned") : base::report(found.error());
  };
  EXPECT_EQ(says([](PassOptions&) {}), "planned");
  EXPECT_THAT(says([](PassOptions& o) { o.most_first = Length(); }), HasSubstr("'first infeed' cannot be"));
  EXPECT_THAT(says([](PassOptions& o) { o.least_infeed = inch(-1); }), HasSubstr("'least infeed' cannot be"));
  EXPECT_THAT(says([](PassOptions& o) { o.spring_passes = -1; }), HasSubstr("0 to 10"));
  EXPECT_THAT(says([](PassOptions& o) { o.compound_angle = degrees(45); }),
              HasSubstr("0 (straight in) to 30 degrees; 29.5 is usual"));
  EXPECT_THAT(says([](PassOptions& o) { o.compound_angle = degrees(std::nan("")); }),
              HasSubstr("compound angle"));
  EXPECT_THAT(says([](PassOptions& o) {
                o.most_first = inch(1e-6);
                o.least_infeed = inch(1e-7);
              }),
              HasSubstr("more than 200 passes"));
  EXPECT_NEAR(usual_compound_angle(depth).in(unit::degree), 29.5, 1e-9);
}

TEST(ThreadReliefs, LieBeyondTheRootAndGrowWithThePitch) {
  const auto metric = thread_relief(thread("M10x1.5"), ThreadSide::kScrew).value();
  EXPECT_NEAR(metric.diameter.base(), 7.7, 1e-9);
  EXPECT_NEAR(metric.width_most.base(), 5.2, 1e-9);
  EXPECT_EQ(metric.source.basis, Basis::kFromMemory);
  const auto inch_thread = thread_relief(thread("1/2-13 UNC"), ThreadSide::kScrew).value();
  EXPECT_EQ(inch_thread.source.basis, Basis::kDerived);
  EXPECT_GT(inch_thread.width_least.base(), 3.9);
  EXPECT_LT(inch_thread.width_least.base(), 4.5);
  for (const char* text : {"M4", "1/4-20 UNC", "3/4-10 BSW", "1-5 ACME", "Tr20x4", "2 BA"}) {
    const ThreadShape shape = shape_of(thread(text));
    const auto screw = thread_relief(thread(text), ThreadSide::kScrew);
    const auto hole = thread_relief(thread(text), ThreadSide::kHole);
    ASSERT_TRUE(screw && hole) << text;
    const double root = thread_depth(thread(text), ThreadSide::kScrew).depth.base();
    EXPECT_LT(screw->diameter.base(), shape.major.base() - 2.0 * root) << text;
    EXPECT_GT(hole->diameter, shape.major) << text;
    EXPECT_GT(screw->width_least.base(), 1.9 * shape.pitch.base()) << text;
  }
  EXPECT_FALSE(thread_relief(thread("M2"), ThreadSide::kScrew));
  EXPECT_FALSE(thread_relief(thread("Tr60x9"), ThreadSide::kHole));
  EXPECT_FALSE(thread_relief(thread("1/2 NPT"), ThreadSide::kHole));
}

DialLines lines(double per_inch, const ThreadDial& dial = {}) {
  return dial_lines(inch(1.0 / 8.0), inch(1.0 / per_inch), dial).value();
}

TEST(ThreadDials, GroupsOfLines) {
  EXPECT_THAT(lines(13).groups, ElementsAre(ElementsAre(1, 3, 5, 7), ElementsAre(2, 4, 6, 8)));
  EXPECT_EQ(lines(20).groups.size(), 1U);
  EXPECT_TRUE(lines(16).any_place);
  EXPECT_FALSE(lines(20).any_place);
  EXPECT_NEAR(lines(13).travel_per_line.in(unit::inch), 0.5, 1e-12);
}

TEST(ThreadDials, WhereLinesDoNotTellTurnsDoOrNothing) {
  const DialLines third = lines(4.0 + 1.0 / 3.0);  // 4-1/3 per inch comes round after 3 in
  EXPECT_FALSE(third.every);
  EXPECT_EQ(third.turns, 3);
  const auto metric = dial_lines(inch(1.0 / 8.0), Length::of(1.5, unit::millimetre), {}).value();
  EXPECT_FALSE(metric.every);
  EXPECT_EQ(metric.turns, 15);  // 101.6 mm a turn: 15 turns are 1016 threads
  const auto odd = dial_lines(inch(1.0 / 8.0), Length::of(std::sqrt(2.0), unit::millimetre), {}).value();
  EXPECT_FALSE(odd.every || odd.turns);
  EXPECT_TRUE(odd.groups.empty());
}

TEST(ThreadDials, BadInput) {
  EXPECT_FALSE(dial_lines(Length(), inch(0.1)));
  EXPECT_FALSE(dial_lines(inch(0.1), inch(-0.1)));
  EXPECT_FALSE(dial_lines(inch(0.1), Length::from_base(std::nan(""))));
  const auto off = dial_lines(inch(0.125), inch(0.1), {32, 5});
  ASSERT_FALSE(off);
  EXPECT_THAT(base::report(off.error()), HasSubstr("a number that divides its 32 teeth"));
  EXPECT_FALSE(dial_lines(inch(0.125), inch(0.1), {0, 1}));
}

}  // namespace
}  // namespace sparewright::handbook
