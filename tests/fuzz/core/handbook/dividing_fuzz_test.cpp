// Numbers no sane person types, into indexing, gears, stacks and the trig of the shop: every answer is a
// value or a failure with words, nothing crashes, nothing runs for ever.
#include <array>
#include <cmath>
#include <iostream>
#include <limits>
#include <random>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/arcs.hpp"
#include "core/handbook/bolt_circle.hpp"
#include "core/handbook/change_gears.hpp"
#include "core/handbook/compound_indexing.hpp"
#include "core/handbook/differential_indexing.hpp"
#include "core/handbook/eccentric_packing.hpp"
#include "core/handbook/rotary_table.hpp"
#include "core/handbook/sine_bar.hpp"
#include "core/handbook/spur_gears.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Coordinate;
using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr unsigned kSeed = 20240613;
constexpr int kTrials = 3000;

class Bag {
 public:
  double number() {
    constexpr double kInfinity = std::numeric_limits<double>::infinity();
    constexpr std::array kOdd{0.0,
                              -0.0,
                              1e-300,
                              1e-12,
                              1e-7,
                              -1.0,
                              1e6,
                              1e300,
                              kInfinity,
                              -kInfinity,
                              std::numeric_limits<double>::quiet_NaN()};
    if (random_() % 3 == 0) return kOdd.at(random_() % kOdd.size());
    const double digits = static_cast<double>(random_() % 1000000) / 1000.0;
    return random_() % 2 == 0 ? digits : digits + std::sqrt(digits) * 1e-7;
  }
  int count() {
    constexpr std::array kOdd{
        0, -1, 1, 2, 3, std::numeric_limits<int>::max(), std::numeric_limits<int>::min(), 99999};
    return random_() % 3 == 0 ? kOdd.at(random_() % kOdd.size()) : static_cast<int>(random_() % 400);
  }
  Length length() { return Length::of(number(), unit::millimetre); }
  Diameter diameter() { return Diameter::of(number(), unit::millimetre); }
  Coordinate coordinate() { return Coordinate::of(number(), unit::millimetre); }
  Angle angle() { return Angle::of(number(), unit::degree); }
  std::vector<int> counts(std::size_t most) {
    std::vector<int> out(random_() % (most + 1));
    for (int& one : out)
      one = random_() % 20 == 0 ? count() : 15 + static_cast<int>(random_() % 60);
    return out;
  }
  DividingHead head() {
    DividingHead head{random_() % 4 == 0 ? count() : 40, {}};
    for (std::size_t plates = random_() % 3; plates > 0; --plates)
      head.plates.push_back({"plate", counts(4)});
    return head;
  }
  bool yes() { return random_() % 2 == 0; }

 private:
  std::mt19937 random_{kSeed};
};

template <class Value>
bool is_told(const base::Result<Value>& result) {
  return result || !base::report(result.error()).empty();
}

TEST(DividingFuzz, HeadsAndTables) {
  std::cout << "seed " << kSeed << ", " << kTrials << " trials\n";
  Bag bag;
  int indexed = 0;
  for (int trial = 0; trial < kTrials; ++trial) {
    const DividingHead head = bag.head();
    const auto part = bag.yes() ? part_for_angle(bag.angle()) : part_for_divisions(bag.count());
    ASSERT_TRUE(is_told(part));
    if (part) {
      const auto plain = plain_indexing(head, *part);
      ASSERT_TRUE(is_told(plain));
      ASSERT_TRUE(is_told(compound_indexing(head, *part)));
      indexed += plain ? 1 : 0;
    }
    ASSERT_TRUE(is_told(compound_divisions(head, bag.count(), bag.count())));
    if (trial % 20 == 0) {
      ASSERT_TRUE(is_told(differential_indexing(head, bag.count(), bag.counts(8))));
    }
    const RotaryTable table{bag.yes() ? 90 : bag.count(),
                            bag.yes() ? Angle::of(1, unit::arc_minute) : bag.angle()};
    ASSERT_TRUE(is_told(rotary_reading(table, bag.angle())));
    const auto holes = rotary_divisions(table, bag.count() % 500, bag.angle());
    ASSERT_TRUE(is_told(holes));
    if (!holes) continue;
    for (const RotaryReading& one : *holes)
      ASSERT_LE(std::abs(one.error.base()), table.mark.base() / 2.0 + 1e-12);
  }
  EXPECT_GT(indexed, 200);
}

TEST(DividingFuzz, Gears) {
  Bag bag;
  int found = 0;
  for (int trial = 0; trial < kTrials / 3; ++trial) {
    LatheGearing lathe{bag.length(), bag.counts(9), {}};
    if (bag.yes()) {
      Banjo banjo{bag.length(), bag.length(), {}, bag.diameter(), bag.diameter(), bag.diameter()};
      banjo.slots.push_back({bag.length(), bag.length(), bag.angle()});
      if (bag.yes()) banjo.least_swing = bag.angle();
      lathe.banjo = banjo;
    }
    const auto gears = change_gears(lathe, {bag.length(), bag.yes() ? 4U : 6U, 3});
    ASSERT_TRUE(is_told(gears));
    found += gears && !gears->empty() ? 1 : 0;
    OldGear old{bag.count(), {}, {}, {}, {}, {}, {}};
    if (bag.yes()) old.outside = bag.diameter();
    if (bag.yes()) old.mate_teeth = bag.count();
    if (bag.yes()) old.centres = bag.length();
    if (bag.yes()) old.whole_depth = bag.length();
    if (bag.yes()) old.span = bag.length();
    if (bag.yes()) old.span_one_more = bag.length();
    ASSERT_TRUE(is_told(identify_spur_gear(old)));
    ASSERT_TRUE(is_told(pressure_angle_hint(bag.length(), bag.length(), bag.length())));
    ASSERT_TRUE(is_told(spur_gear(bag.count(), gear_pitches()[0], tooth_forms()[0])));
  }
  EXPECT_GT(found, 25);
}

TEST(DividingFuzz, ShopTrig) {
  Bag bag;
  const auto sets = gauge_block_sets();
  for (int trial = 0; trial < kTrials / 3; ++trial) {
    const GaugeBlockSet& set = sets.at(static_cast<std::size_t>(trial) % sets.size());
    ASSERT_TRUE(
        is_told(gauge_stacks(set, bag.length(), bag.yes() ? std::optional(bag.length()) : std::nullopt)));
    ASSERT_TRUE(is_told(gauge_stacks({"odd", {bag.length(), bag.length(), bag.length()}, {}}, bag.length())));
    ASSERT_TRUE(is_told(sine_bar_setting(bag.length(), bag.angle(), set)));
    ASSERT_TRUE(is_told(sine_bar_angle(bag.length(), bag.length())));
    ASSERT_TRUE(
        is_told(bolt_circle({bag.diameter(), bag.count(), bag.angle(), bag.coordinate(), bag.coordinate()})));
    ASSERT_TRUE(is_told(bolt_circle_for_chord(bag.length(), bag.count())));
    ASSERT_TRUE(
        is_told(hole_grid({bag.count(), bag.count(), bag.length(), bag.length(), bag.angle(), {}, {}})));
    const std::array<Touch, 3> touches{{{bag.coordinate(), bag.coordinate()},
                                        {bag.coordinate(), bag.coordinate()},
                                        {bag.coordinate(), bag.coordinate()}}};
    ASSERT_TRUE(is_told(
        circle_from_touches(touches, bag.diameter(), bag.yes() ? TouchedSide::kHole : TouchedSide::kBoss)));
    ASSERT_TRUE(is_told(eccentric_packing(bag.length(), bag.diameter(), bag.length())));
    ASSERT_TRUE(is_told(throw_of_packing(bag.length(), bag.diameter(), bag.length())));
  }
}

}  // namespace
}  // namespace sparewright::handbook
