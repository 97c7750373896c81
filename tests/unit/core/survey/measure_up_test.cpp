#include "core/survey/measure_up.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "networks.hpp"

namespace sparewright::survey {
namespace {

using ledger::Bound;
using testing::ElementsAre;
using testing::IsEmpty;
using tests::lengths;
using tests::network_of;

MeasuredUp measured(const Network& network) {
  auto out = measure_up(network);
  if (!out) throw std::runtime_error(base::report(out.error()));
  return std::move(*out);
}

TEST(MeasureUp, UsesSoundReadingsAndSetsTheWornAside) {
  auto network = network_of(lengths({"pin"}), {{"pin", 19.05, 0.01}, {"pin", 18.90, 0.01}});
  network.readings[1].bound = Bound::kAtLeast;
  const auto report = measured(network);
  EXPECT_THAT(report.used, ElementsAre(0));
  ASSERT_EQ(report.set_aside.size(), 1U);
  EXPECT_EQ(report.set_aside[0].reading, 1U);
  EXPECT_EQ(report.set_aside[0].name, "r1");
  EXPECT_NEAR(report.set_aside[0].fitted, 19.05, 1e-12);
  EXPECT_THAT(report.set_aside[0].slopes, ElementsAre(1.0));
  EXPECT_NEAR(report.adjustment.unknowns[0].value, 19.05, 1e-12);
}

TEST(MeasureUp, TakesTheTightestBoundWhereNothingElseFixesIt) {
  auto network = network_of(lengths({"pin", "bore"}), {{"pin", 18.90, 0.01},
                                                       {"pin", 18.98, 0.01},
                                                       {"pin", 18.95, 0.01},
                                                       {"bore", 20.10, 0.01},
                                                       {"bore", 20.04, 0.01}});
  for (std::size_t i = 0; i < 3; ++i)
    network.readings[i].bound = Bound::kAtLeast;
  for (std::size_t i = 3; i < 5; ++i)
    network.readings[i].bound = Bound::kAtMost;
  const auto report = measured(network);
  EXPECT_THAT(report.used, ElementsAre(1, 4));
  EXPECT_NEAR(report.adjustment.unknowns[0].value, 18.98, 1e-12);
  EXPECT_NEAR(report.adjustment.unknowns[1].value, 20.04, 1e-12);
  EXPECT_EQ(report.adjustment.degrees_of_freedom, 0);
  EXPECT_EQ(report.set_aside.size(), 3U);
}

TEST(MeasureUp, PrefersABoundToAReadingThatSaysNeither) {
  auto network = network_of(lengths({"pin"}), {{"pin", 19.20, 0.01}, {"pin", 18.98, 0.01}});
  network.readings[0].bound = Bound::kNeither;
  network.readings[1].bound = Bound::kAtLeast;
  EXPECT_THAT(measured(network).used, ElementsAre(1));
}

TEST(MeasureUp, AWornReadingClosesTheGapAndMovesNothingElse) {
  // x + y is read soundly, y is worn; the sound rest is as if the worn reading were not there.
  auto network = network_of(lengths({"x", "y", "z"}), {{"x + y", 30.0, 0.01},
                                                       {"z", 5.0, 0.01},
                                                       {"z", 5.01, 0.02},
                                                       {"y", 12.0, 0.01},
                                                       {"x + z", 23.3, 0.01},
                                                       {"x - y", 6.4, 0.01}});
  tests::share(network, {0, 1, 3}, 0.02);
  for (std::size_t i = 3; i < 6; ++i)
    network.readings[i].bound = Bound::kAtLeast;
  const auto report = measured(network);
  EXPECT_EQ(report.used.size(), 4U);
  EXPECT_TRUE(report.adjustment.unknowns[0].fixed);
  EXPECT_TRUE(report.adjustment.unknowns[1].fixed);
  Network sound =
      network_of(lengths({"x", "y", "z"}), {{"x + y", 30.0, 0.01}, {"z", 5.0, 0.01}, {"z", 5.01, 0.02}});
  tests::share(sound, {0, 1}, 0.02);
  const auto before = tests::adjusted(sound);
  EXPECT_NEAR(report.adjustment.unknowns[2].value, before.unknowns[2].value, 1e-12);
  EXPECT_NEAR(report.adjustment.chi_square, before.chi_square, 1e-9);
}

TEST(MeasureUp, AWornReadingThatFixesNothingNewIsNotUsed) {
  // Neither x nor y is fixed, but the worn reading is of their sum again.
  auto network = network_of(lengths({"x", "y"}), {{"x + y", 30.0, 0.01}, {"x + y", 29.8, 0.01}});
  network.readings[1].bound = Bound::kAtLeast;
  const auto report = measured(network);
  EXPECT_THAT(report.used, ElementsAre(0));
  EXPECT_FALSE(report.adjustment.unknowns[0].fixed);
  EXPECT_NEAR(report.set_aside[0].fitted, 30.0, 1e-9);
}

TEST(MeasureUp, OnlyWornReadingsWorkToo) {
  auto network = network_of(lengths({"x", "y"}), {{"x", 10.0, 0.01}, {"x - y", 4.0, 0.01}});
  network.readings[0].bound = Bound::kAtLeast;
  network.readings[1].bound = Bound::kNeither;
  const auto report = measured(network);
  EXPECT_THAT(report.used, ElementsAre(0, 1));
  EXPECT_THAT(report.set_aside, IsEmpty());
  EXPECT_NEAR(report.adjustment.unknowns[1].value, 6.0, 1e-12);
}

TEST(MeasureUp, FingerprintsTellReportsApart) {
  auto network = network_of(lengths({"pin"}), {{"pin", 19.05, 0.01}, {"pin", 18.90, 0.01}});
  network.readings[1].bound = Bound::kAtLeast;
  const auto one = fingerprint(measured(network));
  EXPECT_EQ(one, fingerprint(measured(network)));
  network.readings[0].value += 1e-15;
  const auto moved = fingerprint(measured(network));
  network.readings[0].value = 19.06;
  EXPECT_NE(one, fingerprint(measured(network)));
  EXPECT_EQ(one == moved, 19.05 + 1e-15 == 19.05);
}

}  // namespace
}  // namespace sparewright::survey
