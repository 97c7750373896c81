// Which instrument reaches a tolerance, and which doubt has to become smaller.
#include "core/survey/planning.hpp"

#include <cmath>

#include <gtest/gtest.h>

#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using tests::instrument;
using tests::typed;

constexpr double kInch = 25.4;

Instrument checked(std::string name, std::string kind, std::string_view good_to, std::string_view reads,
                   std::string_view from, std::string_view to) {
  Instrument out = instrument(std::move(name), good_to, reads);
  out.kind = std::move(kind);
  out.zero_found = typed("0");
  out.from = typed(from);
  out.to = typed(to);
  return out;
}
std::vector<Instrument> shop() {
  return {checked("caliper 6", "dial caliper", "0.001", "0.001", "0", "6"),
          checked("micrometer 1-2", "outside micrometer", "0.0001", "0.0001", "1", "2"),
          checked("micrometer 0-1", "outside micrometer", "0.0001", "0.0001", "0", "1")};
}

// Of the micrometer: error 0.0001, half a step 0.00005 for reading and zero each, all rectangular:
// sqrt(1e-8 + 2 * 0.25e-8)/sqrt 3 = 0.0000707; 1.96 times that is 0.0001386 in.
const double kMicrometerUnknown = 1.959964 * std::sqrt(1.5e-8 / 3.0) * kInch;

TEST(Reaches, TheFinestThatGoesThereFirst) {
  const auto all = reaches(shop(), {Jaws::kOutside, 0.75 * kInch, 0.002 * kInch});
  ASSERT_EQ(all.size(), 3U);
  EXPECT_EQ(all[0].instrument, "micrometer 0-1");
  EXPECT_EQ(all[0].reaches, Reaches::kYes);
  EXPECT_TRUE(all[0].range_known);
  EXPECT_NEAR(all[0].unknown, kMicrometerUnknown, 1e-7);
  EXPECT_EQ(all[1].instrument, "caliper 6");
  EXPECT_EQ(all[1].reaches, Reaches::kTooCoarse);  // 0.0014 either way, of 0.002
  EXPECT_EQ(all[2].instrument, "micrometer 1-2");
  EXPECT_EQ(all[2].reaches, Reaches::kDoesNotGo);
  EXPECT_EQ(all[2].why, "measures 1 in to 2 in");
}

TEST(Reaches, HalfOfTheToleranceIsYesAndAllOfItBarely) {
  const auto at = [](double tolerance) {
    return reaches(shop(), {Jaws::kOutside, 0.75 * kInch, tolerance}).front().reaches;
  };
  EXPECT_EQ(at(4.001 * kMicrometerUnknown), Reaches::kYes);
  EXPECT_EQ(at(3.999 * kMicrometerUnknown), Reaches::kBarely);
  EXPECT_EQ(at(2.001 * kMicrometerUnknown), Reaches::kBarely);
  EXPECT_EQ(at(1.999 * kMicrometerUnknown), Reaches::kTooCoarse);
}

TEST(Reaches, GoesByTheFacesAndByWhatIsKnown) {
  const auto inside = reaches(shop(), {Jaws::kInside, 0.75 * kInch, 0.010 * kInch});
  EXPECT_EQ(inside[0].instrument, "caliper 6");
  EXPECT_EQ(inside[1].reaches, Reaches::kDoesNotGo);
  EXPECT_EQ(inside[1].why, "has no inside jaws");
  const auto unsized = reaches(shop(), {Jaws::kOutside, std::nullopt, std::nullopt});
  EXPECT_EQ(unsized[0].reaches, Reaches::kYes);
  EXPECT_FALSE(unsized[0].range_known);
  EXPECT_TRUE(reaches(shop(), {Jaws::kOutside, 0.5, 0.1, quantity::Kind::kAngle}).empty());
}

TEST(Doubts, AreGroupedByWhatMakesThemSmallerTheLargestFirst) {
  const ledger::Shares shares = ledger::in_order({{"reading/bore/good to", 0.3},
                                                  {"reading/bore/scatter", 0.4, 4.0},
                                                  {"reading/pin/good to", 0.2},
                                                  {"instrument/mic/outside jaws/zero", 0.1}});
  const auto all = doubts(shares, 100.0);
  ASSERT_EQ(all.size(), 3U);
  EXPECT_EQ(all[0].of, "reading/bore");
  EXPECT_EQ(all[0].largest, "reading/bore/scatter");
  EXPECT_DOUBLE_EQ(all[0].largest_now, 0.4);
  EXPECT_NEAR(all[0].now, 0.5, 1e-15);
  EXPECT_NEAR(all[0].part, 0.25 / 0.30, 1e-15);
  EXPECT_EQ(all[1].of, "reading/pin");
  EXPECT_EQ(all[2].of, "instrument/mic/outside jaws/zero");
  for (const Doubt& doubt : all)
    EXPECT_EQ(doubt.keep, 1.0);  // 100 is wide enough as it is
}

TEST(Doubts, SayHowMuchSmallerEachHasToBecome) {
  const ledger::Shares shares = ledger::in_order({{"reading/a/good to", 0.3}, {"reading/b/good to", 0.4}});
  // All of it: 1.96 * 0.5. Wanted 1.96 * 0.35: b may be sqrt(0.35^2 - 0.3^2) = 0.18028, 0.4507 of what it is; a alone cannot.
  const auto all = doubts(shares, 1.959964 * 0.35);
  EXPECT_EQ(all[0].of, "reading/b");
  ASSERT_TRUE(all[0].keep);
  EXPECT_NEAR(*all[0].keep, std::sqrt(0.35 * 0.35 - 0.09) / 0.4, 1e-6);
  EXPECT_FALSE(all[1].keep);
}

}  // namespace
}  // namespace sparewright::survey
