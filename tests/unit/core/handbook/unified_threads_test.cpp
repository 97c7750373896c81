#include "core/handbook/unified_threads.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/inch_size.hpp"
#include "core/handbook/screw_size.hpp"

namespace sparewright::handbook {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
namespace unit = quantity::unit;

std::string read_as(std::string_view text) {
  const auto thread = read_unified_thread(text);
  return thread ? to_string(*thread) : base::sentence(thread.error());
}

TEST(UnifiedThread, DesignationsAreRead) {
  EXPECT_EQ(read_as("1/4-20 UNC-2B"), "1/4-20 UNC-2B");
  EXPECT_EQ(read_as("3/8-16 UNC-2A"), "3/8-16 UNC-2A");
  EXPECT_EQ(read_as("1/4-20"), "1/4-20 UNC");
  EXPECT_EQ(read_as("1/4-20unc-2b"), "1/4-20 UNC-2B");
  EXPECT_EQ(read_as("1/4 - 28 UNF 3A"), "1/4-28 UNF-3A");
  EXPECT_EQ(read_as("1-1/8-7 UNC-2A-LH"), "1-1/8-7 UNC-2A-LH");
  EXPECT_EQ(read_as("1 1/8-7"), "1-1/8-7 UNC");
  EXPECT_EQ(read_as(".250-28"), "1/4-28 UNF");
  EXPECT_EQ(read_as("0.190-32"), "#10-32 UNF");
  EXPECT_EQ(read_as("1/4 UNC"), "1/4-20 UNC");
  EXPECT_EQ(read_as("3/8-16 NC"), "3/8-16 UNC");
  EXPECT_EQ(read_as("2-4-1/2 UNC"), "2-4.5 UNC");
  EXPECT_EQ(read_as("19/64-36 UNS"), "19/64-36 UNS");
  EXPECT_EQ(read_as("No. 10-24"), "#10-24 UNC");
  EXPECT_EQ(read_as("1/4–20"), "1/4-20 UNC");  // an en dash from a printed page
}

TEST(UnifiedThread, WhatIsWrittenInFullIsNotAssumed) {
  EXPECT_THAT(read_unified_thread("#10-24 UNC-2B")->assumed, IsEmpty());
  EXPECT_THAT(read_unified_thread("1/4-20 UNC")->assumed, IsEmpty());
}

TEST(UnifiedThread, WhatIsLeftOutIsToldHowItWasTaken) {
  EXPECT_THAT(read_unified_thread("1/4-20")->assumed,
              ElementsAre("no series written: UNC, the standard thread of this size and pitch"));
  EXPECT_THAT(read_unified_thread("10-24 UNC")->assumed,
              ElementsAre("10 read as the numbered size #10 (0.1900 in)"));
  EXPECT_THAT(read_unified_thread("1-8 UNC")->assumed, ElementsAre("1 read as 1 in, not as a numbered size"));
  EXPECT_THAT(read_unified_thread("1-64 UNC")->assumed,
              ElementsAre("1 read as the numbered size #1 (0.0730 in)"));
  EXPECT_THAT(read_unified_thread("1/2-16")->assumed,
              ElementsAre("no series written: UN, as no coarse, fine or extra-fine thread has this pitch"));
  EXPECT_THAT(read_unified_thread("1/2-18")->assumed,
              ElementsAre("no series written: UNS, as no coarse, fine or extra-fine thread has this pitch"));
}

TEST(UnifiedThread, ANumberWithoutItsSignIsTheThreadThatThereIs) {
  EXPECT_DOUBLE_EQ(read_unified_thread("10-24")->major.in(unit::inch), 0.190);
  EXPECT_DOUBLE_EQ(read_unified_thread("1-8")->major.in(unit::inch), 1.0);
  EXPECT_DOUBLE_EQ(read_unified_thread("1-12")->major.in(unit::inch), 1.0);
  EXPECT_DOUBLE_EQ(read_unified_thread("1-72")->major.in(unit::inch), 0.073);
  EXPECT_DOUBLE_EQ(read_unified_thread("4-40")->major.in(unit::inch), 0.112);
  EXPECT_DOUBLE_EQ(read_unified_thread("4-4")->major.in(unit::inch), 4.0);
  EXPECT_DOUBLE_EQ(read_unified_thread("2-4.5")->major.in(unit::inch), 2.0);
  EXPECT_DOUBLE_EQ(read_unified_thread("1-32")->major.in(unit::inch), 1.0);
  EXPECT_DOUBLE_EQ(read_unified_thread("4-36")->major.in(unit::inch), 0.112);
  EXPECT_DOUBLE_EQ(read_unified_thread("2-12")->major.in(unit::inch), 2.0);
  EXPECT_DOUBLE_EQ(read_unified_thread("10-28")->major.in(unit::inch), 0.190);
}

TEST(UnifiedThread, WhatIsNoThreadFails) {
  for (const char* text : {"",
                           "abc",
                           "1/4",
                           "1/4-",
                           "1/4-20 XYZ",
                           "1/4-20-1/2",
                           "1/4-20 UNC UNC",
                           "1/4-20 2A-2B",
                           "1/3-20",
                           "5/4-7",
                           "#7-32",
                           "1/4-2",
                           "1/4-500",
                           "0-0",
                           "4 UNC",
                           "1/4 UNS",
                           "1/4-20 LH RH",
                           "-1/4-20",
                           "1/4-nan",
                           "1/4-inf",
                           "99-20",
                           "10-10",
                           "M8x1.25"}) {
    const auto thread = read_unified_thread(text);
    ASSERT_FALSE(thread) << text << " was read as " << to_string(*thread);
    EXPECT_EQ(thread.error().code, base::Code::kNameUnknown) << text;
  }
}

TEST(UnifiedThread, ASeriesThatContradictsTheStandardNamesTheStandardThreads) {
  const auto thread = read_unified_thread("1/4-20 UNF");
  ASSERT_FALSE(thread);
  EXPECT_THAT(base::report(thread.error()), HasSubstr("1/4-20 UNC, 1/4-28 UNF, 1/4-32 UNEF"));
  EXPECT_FALSE(read_unified_thread("19/64-36 UNC"));
}

TEST(UnifiedThread, TheClassFollowsTheSide) {
  const UnifiedThread open = read_unified_thread("1/2-13 UNC").value();
  EXPECT_EQ(screw_class(open).thread_class, UnifiedClass::k2A);
  EXPECT_EQ(screw_class(open).assumed, "no class written: 2A, the usual one");
  EXPECT_EQ(hole_class(open).thread_class, UnifiedClass::k2B);
  const UnifiedThread tapped = read_unified_thread("1/2-13 UNC-3B").value();
  EXPECT_EQ(hole_class(tapped).thread_class, UnifiedClass::k3B);
  EXPECT_EQ(hole_class(tapped).assumed, "");
  EXPECT_EQ(screw_class(tapped).thread_class, UnifiedClass::k3A);
}

TEST(UnifiedThread, ClassOneIsForCoarseAndFineThreadsOfAQuarterInchAndMore) {
  EXPECT_EQ(read_as("1/4-20 UNC-1A"), "1/4-20 UNC-1A");
  EXPECT_EQ(read_as("1-12 UNF-1B"), "1-12 UNF-1B");
  for (const char* text : {"#10-24 UNC-1A", "1/4-32 UNEF-1B", "1/2-16 UN-1A", "19/64-36 UNS-1B"}) {
    const auto thread = read_unified_thread(text);
    ASSERT_FALSE(thread) << text;
    EXPECT_EQ(thread.error().code, base::Code::kNotTabled);
    EXPECT_THAT(base::report(thread.error()), HasSubstr("2A, 3A, 2B and 3B for all"));
  }
  const UnifiedThread loose = read_unified_thread("1/4-20 UNC-1B").value();
  EXPECT_EQ(screw_class(loose).thread_class, UnifiedClass::k1A);
  EXPECT_EQ(screw_limits(loose, UnifiedClass::k1A).allowance,
            screw_limits(loose, UnifiedClass::k2A).allowance);
}

TEST(UnifiedThread, ALongerEngagementWidensThePitchTolerance) {
  const UnifiedThread thread = read_unified_thread("1/2-13 UNC").value();
  const EngagementRange range = usual_engagement(thread);
  EXPECT_DOUBLE_EQ(range.usual.in(unit::inch), 0.5);
  EXPECT_DOUBLE_EQ(range.most.in(unit::inch), 0.75);
  const auto width = [&](double inches) {
    const auto limits =
        screw_limits(thread, UnifiedClass::k2A, quantity::Length::of(inches, unit::inch)).value();
    return (limits.pitch.high - limits.pitch.low).in(unit::inch);
  };
  EXPECT_NEAR(width(0.5), 0.0050, 1e-9);  // as tabled
  EXPECT_NEAR(width(1.0), 0.0054, 1e-9);  // 0.0015 (sqrt(1) - sqrt(0.5)) = 0.00044 more
  EXPECT_NEAR(width(0.125), 0.0044, 1e-9);
  EXPECT_DOUBLE_EQ(usual_engagement(read_unified_thread("1/2-28 UNEF").value()).usual.in(unit::inch),
                   9.0 / 28);
  EXPECT_DOUBLE_EQ(usual_engagement(read_unified_thread("2-8 UN").value()).usual.in(unit::inch), 2.0);
  for (const double bad : {0.0, -1.0}) {
    const auto limits = hole_limits(thread, UnifiedClass::k2B, quantity::Length::of(bad, unit::inch));
    ASSERT_FALSE(limits);
    EXPECT_EQ(limits.error().code, base::Code::kSizeNotPositive);
  }
}

TEST(UnifiedThread, BasicSizes) {
  const BasicThread basic = basic_sizes(read_unified_thread("1/4-20").value());
  EXPECT_NEAR(basic.pitch.in(unit::inch), 0.2175, 0.00005);  // B1.1: 0.2175
  EXPECT_NEAR(basic.minor.in(unit::inch), 0.1959, 0.00005);
}

TEST(UnifiedThread, AClass3ScrewStartsAtTheBasicSize) {
  const ExternalThreadLimits limits = screw_limits(read_unified_thread("1/4-20").value(), UnifiedClass::k3A);
  EXPECT_DOUBLE_EQ(limits.major.high.in(unit::inch), 0.25);
  EXPECT_EQ(limits.allowance, quantity::Length());
  EXPECT_EQ(limits.thread_class, "3A");
  EXPECT_EQ(cite(limits.source), "ASME B1.1, limits of size by formula; coefficients (from memory)");
}

TEST(InchSize, NumbersFractionsAndDecimals) {
  EXPECT_EQ(inch_size_at("#10 hole")->name, "#10");
  EXPECT_EQ(inch_size_at("#10 hole")->taken, 3U);
  EXPECT_EQ(inch_size_at("6/32")->name, "3/16");
  EXPECT_EQ(inch_size_at("1-1/8-7")->taken, 5U);
  EXPECT_EQ(inch_size_at(".3500")->name, "0.3500");
  EXPECT_EQ(inch_size_at("10")->bare, 10);
  EXPECT_FALSE(inch_size_at("#7"));
  EXPECT_FALSE(inch_size_at("7/8/9x") && inch_size_at("7/8/9x")->taken > 3);
  EXPECT_FALSE(inch_size_at("..5"));
  EXPECT_FALSE(inch_size_at("x"));
}

TEST(ScrewSize, SizesAndThreads) {
  const auto name = [](std::string_view text) {
    const auto size = read_screw_size(text);
    return size ? size->name + (size->assumed.empty() ? "" : " (" + size->assumed + ")")
                : base::sentence(size.error());
  };
  EXPECT_EQ(name("#10"), "#10");
  EXPECT_EQ(name("10"), "#10 (10 read as the numbered size #10)");
  EXPECT_EQ(name("1"), "1 (1 read as 1 in, not as a numbered size)");
  EXPECT_EQ(name("0"), "#0 (0 read as the numbered size #0)");
  EXPECT_EQ(name("5/16 in"), "5/16");
  EXPECT_EQ(name("5/16-18"), "5/16");
  EXPECT_EQ(name("5/16-18 UNC-2A"), "5/16");
  EXPECT_EQ(name("1-1/8"), "1-1/8");
  EXPECT_EQ(name("M8"), "M8");
  EXPECT_EQ(name("m8x1.25"), "M8");
  EXPECT_EQ(name("10-24 UNC"), "#10 (10 read as the numbered size #10 (0.1900 in))");
  EXPECT_EQ(name("ten"), "'ten' is not a known screw size");
  EXPECT_EQ(name("1/4 x"), "'1/4 x' is not a known Unified thread");
}

}  // namespace
}  // namespace sparewright::handbook
