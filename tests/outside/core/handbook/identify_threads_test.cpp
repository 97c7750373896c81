// Threads that are taken for one another (look_alikes.csv): each is found from its nominal sizes, the other
// stands among the candidates, as far off as printed, and told apart by what the table names.
#include "core/handbook/identify_threads.hpp"

#include <algorithm>
#include <cmath>

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
TEST(LookAlikesFile, IsWhole) {
  EXPECT_EQ(kPairs.size(), 68U);
}

}  // namespace
}  // namespace sparewright::handbook
