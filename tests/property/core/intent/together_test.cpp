// What must hold of any part, whatever was measured on it.
#include "core/intent/together.hpp"

#include <cmath>

#include <gtest/gtest.h>

#include "generated_parts.hpp"

namespace sparewright::intent {
namespace {

constexpr std::uint64_t kSeed = 1896;
constexpr double kSum = 1e-9;  // of some hundred terms

std::vector<Sized> sized_of(const tests::GeneratedPart& part) {
  std::vector<Sized> sized;
  for (std::size_t i = 0; i < part.sizes.size(); ++i)
    sized.push_back({part.sizes[i].measured, std::nullopt, std::min(i, part.sizes[i].mate.value_or(i))});
  return sized;
}

double sum_of(const Chances& chances) {
  double sum = chances.none;
  for (const Chance& one : chances.all)
    sum += one.chance;
  return sum;
}

TEST(Together, ChancesOfASizeAddUpToOne) {
  tests::SplitMix random(kSeed);
  int sizes = 0;
  for (int i = 0; i < 40; ++i) {
    const auto sized = sized_of(tests::generate_part(random));
    const Together together(sized, 0.6);
    for (std::size_t s = 0; s < sized.size(); ++s, ++sizes)
      EXPECT_NEAR(sum_of(together.chances(s)), 1.0, kSum);
  }
  EXPECT_GT(sizes, 100);
}

TEST(Together, TheOrderOfTheSizesDoesNotMatter) {
  tests::SplitMix random(kSeed + 1);
  for (int i = 0; i < 20; ++i) {
    const auto sized = sized_of(tests::generate_part(random));
    const std::vector<Sized> turned(sized.rbegin(), sized.rend());
    const Together one(sized, 0.4);
    const Together other(turned, 0.4);
    EXPECT_NEAR(one.chance_of_inch(), other.chance_of_inch(), kSum);
    for (std::size_t s = 0; s < sized.size(); ++s) {
      const Chances a = one.chances(s);
      const Chances b = other.chances(sized.size() - 1 - s);
      ASSERT_EQ(a.all.size(), b.all.size());
      EXPECT_NEAR(a.none, b.none, kSum);
      EXPECT_NEAR(a.all.front().chance, b.all.front().chance, kSum);
    }
  }
}

// The chance of inch mixes what would hold if it were known.
TEST(Together, KnownSystemsMixByTheirChance) {
  tests::SplitMix random(kSeed + 2);
  for (int i = 0; i < 20; ++i) {
    const auto sized = sized_of(tests::generate_part(random));
    const Together together(sized, 0.5);
    const double inch = together.chance_of_inch();
    const double none =
        inch * together.chances_if(0, true).none + (1.0 - inch) * together.chances_if(0, false).none;
    EXPECT_NEAR(together.chances(0).none, none, kSum);
  }
}

// A like reading is one that is likely: over all readings of a size made so the likelihoods add up to 1.
TEST(Likelihood, AddsUpToOneOverReadings) {
  for (const ledger::Bound bound : {ledger::Bound::kExact, ledger::Bound::kAtLeast, ledger::Bound::kAtMost}) {
    for (const double unknown : {0.002, 0.05, 0.4}) {
      MeasuredUp measured{20.0, unknown, bound, quantity::Kind::kDiameter, Role::kShaft};
      const Made made = usually_made(20.0, measured);
      double sum = 0.0;
      constexpr double kStep = 0.0005;
      for (double size = 14.0; size < 26.0; size += kStep) {
        measured.size_mm = size;
        sum += kStep * likelihood(made, 20.0, measured);
      }
      EXPECT_NEAR(sum, 1.0, 2e-4) << ledger::name_of(bound) << " " << unknown;
    }
  }
}

TEST(Made, WeightsAddUpToOne) {
  const auto expect_whole = [](const Made& made, const std::string& name) {
    double sum = 0.0;
    for (const Zone& zone : made) {
      sum += zone.weight;
      EXPECT_LT(zone.low_mm, zone.high_mm) << name;
    }
    EXPECT_NEAR(sum, 1.0, 1e-12) << name;
  };
  int seen = 0;
  for (const Role role : {Role::kHole, Role::kShaft, Role::kOther, Role::kPitch, Role::kModule}) {
    for (const quantity::Kind kind : {quantity::Kind::kLength, quantity::Kind::kDiameter}) {
      for (const double size : {0.7, 2.0, 6.35, 25.0, 110.0, 700.0}) {
        for (const Nominal& one : nominals_near({size, 0.05, ledger::Bound::kExact, kind, role}).all) {
          expect_whole(one.made, one.name + ", " + one.series);
          EXPECT_GT(one.common.inch, 0.0) << one.name;
          EXPECT_GT(one.common.metric, 0.0) << one.name;
          ++seen;
        }
      }
    }
  }
  EXPECT_GT(seen, 500);
}

}  // namespace
}  // namespace sparewright::intent
