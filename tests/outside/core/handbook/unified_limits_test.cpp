// Limits of size of Unified threads against printed tables (unified_limits.csv, unf_nut_pitch_mm.csv) and the
// worked tables of the handbook.
#include <cmath>

#include <gtest/gtest.h>

#include "core/handbook/unified_threads.hpp"
#include "core/quantity/display.hpp"
#include "published.hpp"

namespace sparewright::handbook {
namespace {

using published::Row;
using quantity::fixed;
namespace unit = quantity::unit;

UnifiedThread thread_of(const Row& row) {
  return read_unified_thread(row["thread"] + " " + row["series"] + "-" + row["class"]).value();
}

double computed_in(const Row& row) {
  const UnifiedThread thread = thread_of(row);
  const UnifiedClass one = *thread.thread_class;
  const std::string& limit = row["limit"];
  if (is_screw_class(one)) {
    const ExternalThreadLimits limits = screw_limits(thread, one);
    const DiameterRange& range = limit.starts_with("major") ? limits.major : limits.pitch;
    return (limit.ends_with("max") ? range.high : range.low).in(unit::inch);
  }
  const InternalThreadLimits limits = hole_limits(thread, one);
  const DiameterRange& range = limit.starts_with("minor") ? limits.minor : limits.pitch;
  return (limit.ends_with("max") ? range.high : range.low).in(unit::inch);
}

// Equal to the printed digit, or, where the file says that it differs, 0.0001 in away and no more.
testing::AssertionResult agrees(const Row& row) {
  constexpr double kOneDigit = 0.0001;
  const double computed = computed_in(row);
  const bool equal = fixed(computed, 4) == fixed(row.number("printed"), 4);
  if (equal != row["differs"].empty()) {
    return testing::AssertionFailure() << "computed " << fixed(computed, 5) << " for " << row;
  }
  if (!equal && std::abs(computed - row.number("printed")) > kOneDigit * 1.001) {
    return testing::AssertionFailure() << "more than a digit away: " << fixed(computed, 5) << " for " << row;
  }
  return testing::AssertionSuccess();
}

class OutsideUnifiedLimits : public testing::TestWithParam<Row> {};
TEST_P(OutsideUnifiedLimits, AreThePrintedOnes) {
  EXPECT_TRUE(agrees(GetParam()));
}

const std::vector<Row> kScrews = published::rows_of("unified_limits.csv", "data package, screws");
const std::vector<Row> kHoles = published::rows_of("unified_limits.csv", "data package, holes");
const std::vector<Row> kSite = published::rows_of("unified_limits.csv", "engineering site");
INSTANTIATE_TEST_SUITE_P(OutsideScrews, OutsideUnifiedLimits, testing::ValuesIn(published::counted(kScrews)));
INSTANTIATE_TEST_SUITE_P(OutsideHoles, OutsideUnifiedLimits, testing::ValuesIn(published::counted(kHoles)));
INSTANTIATE_TEST_SUITE_P(OutsideSite, OutsideUnifiedLimits, testing::ValuesIn(published::counted(kSite)));

TEST(OutsideUnifiedLimitsRest, Screws) {
  for (const Row& row : published::others(kScrews))
    EXPECT_TRUE(agrees(row));
}
TEST(OutsideUnifiedLimitsRest, Holes) {
  for (const Row& row : published::others(kHoles))
    EXPECT_TRUE(agrees(row));
}
TEST(OutsideUnifiedLimitsRest, Site) {
  for (const Row& row : published::others(kSite))
    EXPECT_TRUE(agrees(row));
}

// 596 limits, and no more than 22 of them a digit away.
TEST(UnifiedLimitsFile, IsWhole) {
  std::size_t differing = 0;
  const std::vector<Row> all = published::rows("unified_limits.csv");
  for (const Row& row : all)
    differing += row["differs"].empty() ? 0U : 1U;
  EXPECT_EQ(all.size(), 596U);
  EXPECT_EQ(all.size(), kScrews.size() + kHoles.size() + kSite.size());
  EXPECT_EQ(differing, 22U);
}

// Classes 1A and 1B. The data package prints 0.2248 where the greatest pitch diameter of 1/4-20 UNC-2B should
// stand; it is that of 1B. The other limits are from memory of the table of limits in Machinery's Handbook
// (ASME B1.1).
struct ClassOne {
  const char* thread;
  const char* limit;
  const char* printed;
};
class UnifiedClassOne : public testing::TestWithParam<ClassOne> {};
TEST_P(UnifiedClassOne, IsTheOneGiven) {
  Row row{0, {{"thread", GetParam().thread}, {"limit", GetParam().limit}, {"printed", GetParam().printed}}};
  const UnifiedThread thread = read_unified_thread(row["thread"]).value();
  row.cells["thread"] = thread.size + "-" + quantity::fixed(thread.threads_per_inch, 0);
  row.cells["series"] = name_of(thread.series);
  row.cells["class"] = name_of(*thread.thread_class);
  EXPECT_EQ(fixed(computed_in(row), 4), GetParam().printed) << GetParam().thread << " " << GetParam().limit;
}
INSTANTIATE_TEST_SUITE_P(OutsideClassOne, UnifiedClassOne,
                         testing::Values(ClassOne{"1/4-20 UNC-1B", "pitch_max", "0.2248"}));
INSTANTIATE_TEST_SUITE_P(
    RememberedClassOne, UnifiedClassOne,
    testing::Values(
        ClassOne{"1/4-20 UNC-1A", "major_max", "0.2489"}, ClassOne{"1/4-20 UNC-1A", "major_min", "0.2367"},
        ClassOne{"1/4-20 UNC-1A", "pitch_max", "0.2164"}, ClassOne{"1/4-20 UNC-1A", "pitch_min", "0.2108"},
        ClassOne{"1/4-28 UNF-1A", "major_min", "0.2392"}, ClassOne{"1/4-28 UNF-1A", "pitch_min", "0.2208"},
        ClassOne{"1/4-28 UNF-1B", "pitch_max", "0.2333"}, ClassOne{"5/16-18 UNC-1A", "major_min", "0.2982"},
        ClassOne{"5/16-18 UNC-1A", "pitch_min", "0.2691"}, ClassOne{"5/16-18 UNC-1B", "pitch_max", "0.2843"},
        ClassOne{"3/8-16 UNC-1A", "major_min", "0.3595"}, ClassOne{"3/8-16 UNC-1A", "pitch_min", "0.3266"},
        ClassOne{"3/8-16 UNC-1B", "pitch_max", "0.3429"}, ClassOne{"1/2-13 UNC-1A", "major_min", "0.4822"},
        ClassOne{"1/2-13 UNC-1A", "pitch_min", "0.4411"}, ClassOne{"1/2-13 UNC-1B", "pitch_max", "0.4597"}));

// Greatest pitch diameter of UNF holes, printed in millimetres by a tap maker: the inch limit turned into mm.
testing::AssertionResult agrees_in_mm(const Row& row) {
  constexpr double kRoundedMm = 0.0005 + 25.4 * 0.00005;  // the guide's last digit, and the inch limit's
  const UnifiedThread thread = read_unified_thread(row["thread"] + " UNF-" + row["class"]).value();
  const double computed = hole_limits(thread, *thread.thread_class).pitch.high.in(unit::millimetre);
  if (std::abs(computed - row.number("pitch_max_mm")) <= kRoundedMm) return testing::AssertionSuccess();
  return testing::AssertionFailure() << "computed " << fixed(computed, 4) << " for " << row;
}

class OutsideUnfNutGuide : public testing::TestWithParam<Row> {};
TEST_P(OutsideUnfNutGuide, HasThePitchLimit) {
  EXPECT_TRUE(agrees_in_mm(GetParam()));
}

const std::vector<Row> kNuts = published::rows("unf_nut_pitch_mm.csv");
INSTANTIATE_TEST_SUITE_P(OutsideTapGuide, OutsideUnfNutGuide, testing::ValuesIn(published::counted(kNuts)));
TEST(OutsideUnfNutGuideRest, HasThePitchLimit) {
  for (const Row& row : published::others(kNuts))
    EXPECT_TRUE(agrees_in_mm(row));
}

// Machinery's Handbook 31st ed., Table 3 (view 624): 1/2-28 UNEF-2A worked step by step. Length of engagement
// 9 P: with the diameter instead the pitch tolerance would be 0.0039.
TEST(OutsideHandbookWorkedThread, HalfInch28Unef2A) {
  const UnifiedThread thread = read_unified_thread("1/2-28 UNEF-2A").value();
  const ExternalThreadLimits limits = screw_limits(thread, UnifiedClass::k2A);
  EXPECT_EQ(fixed(limits.allowance.in(unit::inch), 4), "0.0011");
  EXPECT_EQ(fixed(limits.major.high.in(unit::inch), 4), "0.4989");
  EXPECT_EQ(fixed(limits.major.low.in(unit::inch), 4), "0.4924");
  EXPECT_EQ(fixed(limits.pitch.high.in(unit::inch), 4), "0.4757");
  EXPECT_EQ(fixed(limits.pitch.low.in(unit::inch), 4), "0.4720");
  EXPECT_EQ(fixed(limits.flat_root_max.in(unit::inch), 4), "0.4602");
  EXPECT_EQ(fixed(limits.round_root_max->in(unit::inch), 4), "0.4564");
}

// The same, Table 4: least minor diameter of 1/2-28 UNEF-2B.
TEST(OutsideHandbookWorkedThread, HalfInch28Unef2B) {
  const UnifiedThread thread = read_unified_thread("1/2-28 UNEF-2B").value();
  EXPECT_EQ(fixed(hole_limits(thread, UnifiedClass::k2B).minor.low.in(unit::inch), 3), "0.461");
}

// The same, Table 6 (its heading says 19/64-28, its numbers use P = 1/36: a misprint of the heading).
TEST(OutsideHandbookWorkedThread, NineteenSixtyFourths36Uns2B) {
  const UnifiedThread thread = read_unified_thread("19/64-36 UNS-2B").value();
  const InternalThreadLimits limits = hole_limits(thread, UnifiedClass::k2B);
  EXPECT_EQ(fixed(limits.minor.low.in(unit::inch), 3), "0.267");
  EXPECT_EQ(fixed(limits.minor.high.in(unit::inch), 3), "0.273");
  EXPECT_EQ(fixed(limits.pitch.low.in(unit::inch), 4), "0.2789");
}

}  // namespace
}  // namespace sparewright::handbook
