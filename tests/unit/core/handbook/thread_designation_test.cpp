#include "core/handbook/thread_designation.hpp"

#include <cmath>
#include <stdexcept>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"

namespace sparewright::handbook {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;
namespace unit = quantity::unit;

std::string read_as(std::string_view text) {
  const auto thread = read_thread(text);
  return thread ? to_string(*thread) : base::sentence(thread.error());
}

std::string report_of(std::string_view text) {
  const auto thread = read_thread(text);
  return thread ? "read as " + to_string(*thread) : base::report(thread.error());
}

TEST(AnyThread, EveryFamilyIsRead) {
  EXPECT_EQ(read_as("3/8-16 UNC-2A"), "3/8-16 UNC-2A");
  EXPECT_EQ(read_as("#10-32"), "#10-32 UNF");
  EXPECT_EQ(read_as("1/4-20 UNRC-2A"), "'1/4-20 UNRC-2A' is not a known Unified thread");
  EXPECT_EQ(read_as("M8x1"), "M8x1");
  EXPECT_EQ(read_as("m10 x 1.5 - 6g"), "M10x1.5-6g");
  EXPECT_EQ(read_as("8x1.25"), "M8x1.25");
  EXPECT_EQ(read_as("8 x 1.25 mm"), "M8x1.25");
  EXPECT_EQ(read_as("1/2-14 NPT"), "1/2-14 NPT");
  EXPECT_EQ(read_as("NPT 1/2"), "1/2-14 NPT");
  EXPECT_EQ(read_as("1-11.5 npt"), "1-11.5 NPT");
  EXPECT_EQ(read_as("1-11-1/2 NPT"), "'1-11-1/2 NPT' is not a known pipe thread");
  EXPECT_EQ(read_as("1/8-27 NPTF"), "1/8-27 NPTF");
  EXPECT_EQ(read_as("G1/2"), "G1/2");
  EXPECT_EQ(read_as("G 1/2 A"), "G1/2");
  EXPECT_EQ(read_as("G1/2B-LH"), "G1/2B-LH");
  EXPECT_EQ(read_as("R 1/2"), "R1/2");
  EXPECT_EQ(read_as("Rc1/2"), "Rc1/2");
  EXPECT_EQ(read_as("1/2-14 BSPP"), "G1/2");
  EXPECT_EQ(read_as("1/2 BSPT"), "R1/2");
  EXPECT_EQ(read_as("1 1/4 BSP"), "G1-1/4");
  EXPECT_EQ(read_as("1-5 ACME"), "1-5 ACME-2G");
  EXPECT_EQ(read_as("1-1/2-4 acme-3g-lh"), "1-1/2-4 ACME-3G-LH");
  EXPECT_EQ(read_as("1-10 ACME 2 START"), "1-10 ACME-2G 2 START");
  EXPECT_EQ(read_as("1.000-0.1P-0.2L-ACME-2G"), "1-10 ACME-2G 2 START");
  EXPECT_EQ(read_as("Tr 20x4"), "Tr20x4");
  EXPECT_EQ(read_as("TR20×4-7e LH"), "Tr20x4-7e-LH");
  EXPECT_EQ(read_as("Tr 20 x 8 (P4)"), "Tr20x8P4");
  EXPECT_EQ(read_as("Tr20x8P4-7H"), "Tr20x8P4-7H");
  EXPECT_EQ(read_as("1/4-20 BSW"), "1/4-20 BSW");
  EXPECT_EQ(read_as("BSF 1/4"), "1/4-26 BSF");
  EXPECT_EQ(read_as("1/4x26 BSC"), "1/4-26 BSC");
  EXPECT_EQ(read_as("3/8-24 Whit"), "3/8-24 WHIT");
  EXPECT_EQ(read_as("W 1/4"), "1/4-20 BSW");
  EXPECT_EQ(read_as("2 BA"), "2 BA");
  EXPECT_EQ(read_as("2BA"), "2 BA");
  EXPECT_EQ(read_as("No. 2 BA LH"), "2 BA-LH");
  EXPECT_EQ(read_as("BA 0"), "0 BA");
}

TEST(AnyThread, WhatWasNotWrittenIsTold) {
  const auto assumed = [](std::string_view text) { return assumed_of(read_thread(text).value()); };
  EXPECT_THAT(assumed("1/4-20"),
              ElementsAre("no series written: UNC, the standard thread of this size and pitch",
                          "taken as Unified, 60 degrees; 1/4-20 BSW has the same size and pitch"));
  EXPECT_THAT(assumed("1/4-20 UNC"), IsEmpty());
  EXPECT_THAT(assumed("8x1.25"), ElementsAre("no M written: taken as a metric thread"));
  EXPECT_THAT(assumed("1/2 BSP"), ElementsAre("BSP read as the parallel thread G; the taper one is R or BSPT",
                                              "no class written: A, if it is the outside thread"));
  EXPECT_THAT(assumed("1/2-14 NPT"), IsEmpty());
  EXPECT_THAT(assumed("1 ACME"), ElementsAre("no class written: 2G, the usual one",
                                             "no pitch written: 5 per inch, the standard one"));
  EXPECT_THAT(assumed("1-8 ACME-2G"), ElementsAre("the standard thread of this size is 1-5 ACME"));
  EXPECT_THAT(assumed("Tr 20"), ElementsAre("no pitch written: 4 mm, the preferred one"));
  EXPECT_THAT(assumed("Tr20x3"), ElementsAre("the preferred thread of this size is Tr20x4"));
  EXPECT_THAT(assumed("1/4 BSW"), ElementsAre("no pitch written: 20 per inch, that of BSW"));
  EXPECT_THAT(assumed("2 BA"), IsEmpty());
}

TEST(AnyThread, AFailureNamesTheNearestThreadOfItsFamily) {
  EXPECT_EQ(report_of("3/4-11 UNC"),
            "'3/4-11 UNC' is not a known Unified thread\n"
            "    accepted: 3/4-10 UNC, 3/4-16 UNF, 3/4-20 UNEF (did you mean '3/4-10 UNC'?)");
  EXPECT_THAT(report_of("1/4-2"), HasSubstr("1/4-20 UNC, 1/4-28 UNF, 1/4-32 UNEF"));
  EXPECT_THAT(report_of("M8x9"), HasSubstr("accepted: M8x1.25, M8x1, M8x0.75"));
  EXPECT_THAT(report_of("1/4-24 BSW"), HasSubstr("accepted: 1/4-20 BSW, 1/4-26 BSF, 1/4-26 BSC"));
  EXPECT_THAT(report_of("9/16 NPT"), HasSubstr("1/2-14 NPT"));
  EXPECT_THAT(report_of("1/2-18 NPT"), HasSubstr("accepted: 1/2-14 NPT"));
  EXPECT_THAT(report_of("R5/8"), HasSubstr("R1/2"));
  EXPECT_THAT(report_of("26 BA"), HasSubstr("accepted: 0 BA to 25 BA"));
  EXPECT_THAT(report_of("1-5 STUB ACME"), HasSubstr("stub Acme thread is not tabled here"));
  EXPECT_THAT(report_of("1-50 ACME"), StartsWith("'1-50 ACME' is not a known Acme thread"));
  EXPECT_THAT(report_of("Tr20x40"), HasSubstr("Tr20x4"));
  EXPECT_THAT(report_of("a thread"), HasSubstr("1-5 ACME, Tr 20x4, 1/4-20 BSW or 2 BA"));
  EXPECT_THAT(report_of(""), HasSubstr("'' is not a known thread"));
}

TEST(AnyThread, WhatIsNoThreadFails) {
  for (const char* text : {"G",
                           "G0",
                           "G1/2AB",
                           "G1/2 A B",
                           "R",
                           "RC4x",
                           "1/2 NPT NPT",
                           "NPT",
                           "1/2-14-3 NPT",
                           "1-5 ACME 2G 3G",
                           "ACME",
                           "1-0 ACME",
                           "1-5 ACME 0 START",
                           "1-5 ACME 99 START",
                           "1-0.2P-0.5L-ACME",
                           "Tr",
                           "Tr x4",
                           "Tr20x",
                           "Tr20x0",
                           "Tr20x8P3",
                           "Tr20x4 4",
                           "Tr-20x4",
                           "1/4 BSX",
                           "BSW",
                           "1/4-20 BSW BSF",
                           "3/8-1 WHIT",
                           "BA",
                           "-1 BA",
                           "2 BA 3",
                           "nan BA",
                           "Mx",
                           "8x0",
                           "x1.25",
                           "1e5x1"}) {
    EXPECT_FALSE(read_thread(text)) << text << " was read as " << read_as(text);
  }
}

TEST(AnyThread, EveryStandardThreadIsReadAsItself) {
  const auto expect_itself = [](const std::string& written) { EXPECT_EQ(read_as(written), written); };
  for (const StandardThread& row : standard_unified_threads())
    expect_itself(fmt::format("{}-{} {}", row.size, row.threads_per_inch, name_of(row.series)));
  for (const auto rows : {coarse_metric_threads(), fine_metric_threads()}) {
    for (const StandardMetricThread& row : rows)
      expect_itself(to_string(MetricThread{row.nominal, row.pitch, {}, false, {}}));
  }
  for (const StandardWhitworthThread& row : standard_whitworth_threads())
    expect_itself(fmt::format("{}-{} {}", row.size, row.threads_per_inch, name_of(row.series)));
  for (const StandardAcmeThread& row : standard_acme_threads())
    expect_itself(fmt::format("{}-{} ACME-2G", row.size, row.threads_per_inch));
  for (const StandardTrapezoidalThread& row : standard_trapezoidal_threads())
    expect_itself(to_string(TrapezoidalThread{row.nominal, row.pitch, 1, {}, false, {}}));
  for (int number = 0; number <= kFinestAssociation; ++number)
    expect_itself(fmt::format("{} BA", number));
}

TEST(ThreadShapes, HaveWhatTheToolsAskFor) {
  const ThreadShape acme = shape_of(read_thread("1-10 ACME 2 START").value());
  EXPECT_NEAR(acme.lead().in(unit::inch), 0.2, 1e-12);
  EXPECT_NEAR(acme.pitch_diameter.in(unit::inch), 0.95, 1e-12);
  EXPECT_EQ(acme.form, ThreadForm::kAcme);
  const ThreadShape pipe = shape_of(read_thread("1/2-14 NPT").value());
  EXPECT_TRUE(pipe.tapered);
  EXPECT_NEAR(pipe.pitch_diameter.in(unit::inch), 0.77843, 1e-5);
  const ThreadShape whitworth = shape_of(read_thread("1/2-12 BSW").value());
  EXPECT_NEAR(whitworth.minor.in(unit::inch), 0.5 - 1.280654 / 12.0, 1e-9);
  EXPECT_EQ(shape_of(read_thread("1/4-26 BSC").value()).form, ThreadForm::kBritishCycle);
  EXPECT_TRUE(shape_of(read_thread("M8x1-LH").value()).left_hand);
}

TEST(ThreadForms, ATheToolsFlatAndTheDepthAreInverses) {
  for (int i = 0; i <= static_cast<int>(ThreadForm::kTrapezoidal); ++i) {
    const ThreadProfile& profile = profile_of(static_cast<ThreadForm>(i));
    const double angle = profile.flank_angle.base();
    const double nose = groove_width_mm(profile.screw.depth, profile.screw.addendum, 1.0, angle);
    EXPECT_GE(nose, -1e-9) << profile.name;
    EXPECT_LT(nose, 0.5) << profile.name;
    EXPECT_NEAR(depth_for_nose_mm(nose, profile.screw.addendum, 1.0, angle), profile.screw.depth, 1e-12);
  }
}

TEST(ThreadForms, ARoundRootOfTheRadiusEndsAtTheDepth) {
  for (const ThreadForm form : {ThreadForm::kUnified, ThreadForm::kMetric, ThreadForm::kWhitworth,
                                ThreadForm::kBritishAssociation, ThreadForm::kBritishCycle}) {
    const ThreadProfile& profile = profile_of(form);
    const double half = profile.flank_angle.base() / 2.0;
    const double to_the_point = profile.screw.addendum + 0.25 / std::tan(half);
    const double rounded_off = profile.screw.root_radius * (1.0 / std::sin(half) - 1.0);
    EXPECT_NEAR(to_the_point - rounded_off, profile.screw.depth, 0.002) << profile.name;  // 2/11 is rounded
  }
}

TEST(PipeThreads, EverySystemHasItsSizes) {
  EXPECT_EQ(pipe_threads(PipeSystem::kNpt).size(), 14U);
  EXPECT_EQ(pipe_threads(PipeSystem::kG).size(), 20U);
  EXPECT_EQ(pipe_threads(PipeSystem::kR).size(), 13U);
  for (const PipeSystem system :
       {PipeSystem::kNpt, PipeSystem::kNptf, PipeSystem::kG, PipeSystem::kR, PipeSystem::kRc}) {
    for (const PipeThread& thread : pipe_threads(system)) {
      EXPECT_EQ(read_as(to_string(thread)), to_string(thread));
      const ThreadShape shape = shape_of(thread);
      EXPECT_GT(shape.major, shape.pitch_diameter);
      EXPECT_GT(shape.pitch_diameter, shape.minor);
    }
  }
}

TEST(PipeThreads, TheDrillLeavesThread) {
  for (const PipeSystem system : {PipeSystem::kNpt, PipeSystem::kG, PipeSystem::kRc}) {
    for (const PipeThread& thread : pipe_threads(system)) {
      const ThreadShape shape = shape_of(thread);
      const auto drill =
          thread.is_american() ? std::optional(npt_sizes(thread).drill) : bsp_sizes(thread).drill;
      if (!drill) continue;
      EXPECT_LT(drill->diameter, shape.pitch_diameter) << to_string(thread);
      EXPECT_GT(drill->diameter.base(), shape.minor.base() - 0.35 * shape.pitch.base()) << to_string(thread);
    }
  }
}

TEST(PipeThreads, ASizePutTogetherByHandHasNoNumbers) {
  PipeThread thread;
  thread.size = "9/16";
  thread.threads_per_inch = 14.0;
  EXPECT_THROW((void)shape_of(thread), std::logic_error);
  thread.system = PipeSystem::kG;
  EXPECT_THROW((void)g_hole_limits(thread), std::logic_error);
}

TEST(PipeThreads, LimitsOfTheParallelThread) {
  const PipeThread thread = read_pipe_thread("G1/2A").value();
  EXPECT_NEAR(g_hole_limits(thread).pitch.high.base(), 19.935, 1e-9);  // 19.793 + 0.142
  EXPECT_NEAR(g_hole_limits(thread).minor.high.base(), 19.172, 1e-9);  // 18.631 + 0.541
  EXPECT_NEAR(g_screw_limits(thread).major.low.base(), 20.671, 1e-9);
  EXPECT_NEAR(g_screw_limits(read_pipe_thread("G1/2B").value()).pitch.low.base(), 19.509, 1e-9);
}

TEST(AcmeThreads, LimitsLieOnTheRightSides) {
  for (const StandardAcmeThread& one : standard_acme_threads()) {
    for (const int thread_class : {2, 3, 4}) {
      AcmeThread thread = read_acme_thread(std::string(one.size) + " ACME").value();
      thread.thread_class = thread_class;
      const PowerThreadLimits screw = screw_limits(thread);
      const PowerThreadLimits hole = hole_limits(thread);
      EXPECT_LT(screw.pitch.high, hole.pitch.low) << one.size;
      EXPECT_LT(screw.minor.high, hole.minor.low) << one.size;
      EXPECT_LT(screw.major.high, hole.major.low) << one.size;
      EXPECT_LT(screw.minor.low, screw.minor.high);
    }
  }
}

TEST(TrapezoidalThreads, LimitsLieOnTheRightSides) {
  int with_limits = 0;
  for (const StandardTrapezoidalThread& one : standard_trapezoidal_threads()) {
    TrapezoidalThread thread;
    thread.major = one.nominal;
    thread.pitch = one.pitch;
    const auto screw = screw_limits(thread);
    const auto hole = hole_limits(thread);
    ASSERT_EQ(screw.has_value(), hole.has_value());
    if (!screw) continue;
    ++with_limits;
    EXPECT_LT(screw->pitch.high, hole->pitch.low);
    EXPECT_LT(screw->minor.high, hole->minor.low);
    EXPECT_LE(screw->major.high, thread.major);
  }
  EXPECT_GE(with_limits, 80);
  const auto other = screw_limits(read_trapezoidal_thread("Tr20x4-8e").value());
  ASSERT_FALSE(other);
  EXPECT_THAT(base::report(other.error()), HasSubstr("7e for screws and 7H for holes"));
  EXPECT_TRUE(hole_limits(read_trapezoidal_thread("Tr20x4-8e").value()));
}

}  // namespace
}  // namespace sparewright::handbook
