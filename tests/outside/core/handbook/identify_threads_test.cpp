// Threads that are taken for one another (look_alikes.csv): each is found from its nominal sizes, the other
// stands among the candidates, as far off as printed, and told apart by what the table names.
#include "core/handbook/identify_threads.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/quantity/display.hpp"
#include "published.hpp"

namespace sparewright::handbook {
namespace {

using published::Row;
using quantity::Diameter;
using quantity::fixed;
using quantity::Length;
namespace unit = quantity::unit;

const ThreadCandidate* find(const std::vector<ThreadCandidate>& candidates, const std::string& designation) {
  const std::string wanted = to_string(read_thread(designation).value());
  const auto found = std::find_if(candidates.begin(), candidates.end(), [&](const ThreadCandidate& one) {
    return to_string(one.thread) == wanted;
  });
  return found == candidates.end() ? nullptr : &*found;
}

// Sizes are printed in mm to three places, pitches to four, some halves cut off.
constexpr double kMajorDigit = 0.00051;
constexpr double kPitchDigit = 0.00006;

void expect_found(const Row& row) {
  MeasuredThread measured;
  measured.major = Diameter::of(row.number("major_a"), unit::millimetre);
  measured.pitch = Length::of(row.number("pitch_a"), unit::millimetre);
  const auto candidates = identify_thread(measured, 60).value();
  const ThreadCandidate* a = find(candidates, row["a"]);
  const ThreadCandidate* b = find(candidates, row["b"]);
  ASSERT_TRUE(a != nullptr && b != nullptr) << row;
  EXPECT_LT(a->misfit, 0.05) << row;
  EXPECT_LT(candidates.front().misfit, 0.05) << row;
  EXPECT_NEAR(a->major.base(), row.number("major_a"), kMajorDigit) << row;
  EXPECT_NEAR(b->pitch.base(), row.number("pitch_b"), kPitchDigit) << row;
  EXPECT_NEAR(b->major_off.base(), -row.number("major_off"), 2 * kMajorDigit) << row;
  EXPECT_NEAR(b->pitch_off.base(), -row.number("pitch_off"), 2 * kPitchDigit) << row;
  EXPECT_NEAR(b->over_ten.base(), -row.number("over_ten"), 20 * kPitchDigit) << row;
  EXPECT_EQ(fixed(profile_of(shape_of(a->thread).form).flank_angle.in(unit::degree), 1),
            fixed(row.number("angle_a"), 1))
      << row;
  EXPECT_EQ(to_string(tell_apart(a->thread, b->thread)), row["told_apart"]) << row;
}

class OutsideLookAlikes : public testing::TestWithParam<Row> {};
TEST_P(OutsideLookAlikes, AreFoundAndToldApart) {
  expect_found(GetParam());
}
const std::vector<Row> kPairs = published::rows("look_alikes.csv");
INSTANTIATE_TEST_SUITE_P(OutsidePairs, OutsideLookAlikes, testing::ValuesIn(published::counted(kPairs)));
TEST(OutsideLookAlikesRest, AreFoundAndToldApart) {
  for (const Row& row : published::others(kPairs))
    expect_found(row);
}
// A good screw of one as it is measured: its crests in the middle of their limits, the pitch over ten threads by a calliper.
MeasuredThread measured_screw(const ThreadCandidate& one) {
  MeasuredThread measured;
  measured.major = as_diameter(0.5 * (across(one.made.low) + across(one.made.high)));
  measured.pitch = one.pitch;
  return measured;
}

// The reading that was asked for, taken on that screw.
MeasuredThread read_again(MeasuredThread measured, const ThreadCandidate& one, const WhatDecides& decides) {
  const ThreadShape shape = shape_of(one.thread);
  if (decides.by == ThreadDecider::kFlankAngle) measured.flank_angle = profile_of(shape.form).flank_angle;
  if (decides.by == ThreadDecider::kTaper) measured.tapered = shape.tapered;
  if (decides.by == ThreadDecider::kCrests) measured.rounded = has_rounded_crests(shape.form);
  if (decides.by == ThreadDecider::kMajor) measured.major_good_to = Length::of(0.005, unit::millimetre);
  constexpr double kUsualThreads = 10.0;
  if (decides.by == ThreadDecider::kPitch)
    measured.pitch_good_to = (kUsualThreads / decides.threads) * MeasuredThread{}.pitch_good_to;
  return measured;
}

// What the table calls the reading; crests it does not name, and tells nothing apart by them.
std::string printed_as(ThreadDecider by) {
  switch (by) {
    case ThreadDecider::kFlankAngle:
      return "flank angle";
    case ThreadDecider::kPitch:
      return "pitch over 10 threads";
    case ThreadDecider::kTaper:
      return "taper";
    case ThreadDecider::kMajor:
      return "major diameter";
    case ThreadDecider::kCrests:
      return "nothing";
    case ThreadDecider::kNothing:
      break;
  }
  return "no such reading";
}

int told_at_once = 0;
std::map<ThreadDecider, int> decided_by;

// Roughly: the diameter of a worn screw, the pitch over two threads by a rule.
MeasuredThread roughly(MeasuredThread measured) {
  measured.major_good_to = Length::of(0.3, unit::millimetre);
  measured.pitch_good_to = Length::of(0.05, unit::millimetre);
  return measured;
}

void expect_decided(const Row& row, const std::string& mine, const std::string& others,
                    bool is_rough = false) {
  const auto all = [](const MeasuredThread& measured) { return identify_thread(measured, 60).value(); };
  MeasuredThread nominal;
  nominal.major = Diameter::of(row.number("major_a"), unit::millimetre);
  nominal.pitch = Length::of(row.number("pitch_a"), unit::millimetre);
  const auto candidates = all(nominal);
  const ThreadCandidate* screw = find(candidates, row[mine]);
  ASSERT_NE(screw, nullptr) << row;
  const MeasuredThread measured = is_rough ? roughly(measured_screw(*screw)) : measured_screw(*screw);
  const auto left = not_ruled_out(all(measured));
  const ThreadCandidate* one = find(left, row[mine]);
  const ThreadCandidate* other = find(left, row[others]);
  ASSERT_NE(one, nullptr) << row;
  if (other == nullptr) {
    ++told_at_once;
    EXPECT_NE(row["told_apart"], "nothing") << row;
    EXPECT_NE(row["told_apart"], "flank angle") << row;
    return;
  }
  const WhatDecides decides = what_decides(measured, *one, *other);
  ++decided_by[decides.by];
  if (!is_rough) {
    EXPECT_NE(row["told_apart"].find(printed_as(decides.by)), std::string::npos)
        << row << words_of(decides, *one, *other);
  }
  const auto again = not_ruled_out(all(read_again(measured, *one, decides)));
  EXPECT_NE(find(again, row[mine]), nullptr) << row;
  EXPECT_EQ(find(again, row[others]), nullptr) << row << words_of(decides, *one, *other);
}

class OutsideLookAlikesOnAScrew : public testing::TestWithParam<Row> {};
TEST_P(OutsideLookAlikesOnAScrew, AreToldApartOrWhatDecidesIsNamed) {
  expect_decided(GetParam(), "a", "b");
  expect_decided(GetParam(), "b", "a");
}
INSTANTIATE_TEST_SUITE_P(OutsideScrews, OutsideLookAlikesOnAScrew,
                         testing::ValuesIn(published::counted(kPairs)));
TEST(OutsideLookAlikesOnAScrewRest, AreToldApartOrWhatDecidesIsNamed) {
  for (const bool is_rough : {false, true}) {
    told_at_once = 0;
    decided_by.clear();
    for (const Row& row : kPairs) {
      expect_decided(row, "a", "b", is_rough);
      expect_decided(row, "b", "a", is_rough);
    }
    const auto by = [](ThreadDecider decider) { return decided_by[decider]; };
    fmt::print(
        "{} screws of {} pairs, {}: {} told at once, by flanks {}, pitch {}, taper {}, crests {}, diameter "
        "{}, nothing {}\n",
        2 * kPairs.size(), kPairs.size(), is_rough ? "roughly" : "by a calliper", told_at_once,
        by(ThreadDecider::kFlankAngle), by(ThreadDecider::kPitch), by(ThreadDecider::kTaper),
        by(ThreadDecider::kCrests), by(ThreadDecider::kMajor), by(ThreadDecider::kNothing));
    EXPECT_EQ(by(ThreadDecider::kNothing), 0);
  }
}

TEST(LookAlikesFile, IsWhole) {
  EXPECT_EQ(kPairs.size(), 68U);
}

}  // namespace
}  // namespace sparewright::handbook
