// How often a size of no meaning comes as near to a series, by trying: the slow twin of once_in.
#include <cmath>

#include <gtest/gtest.h>

#include "core/intent/series.hpp"
#include "splitmix.hpp"

namespace sparewright::intent {
namespace {

constexpr std::uint64_t kSeed = 1896;
constexpr int kTries = 200000;

TEST(Striking, IsTheShareOfSizesThatComeAsNear) {
  tests::SplitMix random(kSeed);
  int compared = 0;
  for (const double measured_mm : {152.4635, 19.0449, 24.998, 16.02, 44.47}) {
    const MeasuredUp measured{measured_mm, 0.02, ledger::Bound::kExact, quantity::Kind::kLength,
                              Role::kOther};
    for (const Candidate& c : candidates(measured)) {
      const std::string& series = c.series.front();
      double step_mm = 0.0;
      for (const Nearest& near : nearest_of_each_series(measured_mm, measured.kind, measured.role)) {
        if (near.series == series) step_mm = near.spacing_mm;
      }
      ASSERT_GT(step_mm, 0.0);
      if (series.find("preferred") != std::string::npos || series.find("key") != std::string::npos) continue;
      const double within_mm = std::max(std::abs(c.off_mm), measured.unknown_mm);
      int hits = 0;
      for (int i = 0; i < kTries; ++i) {
        const double size = random.between(0.0, 1000.0 * step_mm);  // a whole number of steps
        hits += std::abs(size - std::round(size / step_mm) * step_mm) <= within_mm ? 1 : 0;
      }
      const double share = static_cast<double>(hits) / kTries;
      const double wanted = 1.0 / c.once_in;
      // Four standard deviations of a count.
      EXPECT_NEAR(share, wanted, 4.0 * std::sqrt(wanted * (1.0 - wanted) / kTries))
          << c.name << " " << series;
      ++compared;
    }
  }
  EXPECT_GE(compared, 5);  // not vacuous
}

// The nearest of a grid is nowhere further than half a step, and on it.
TEST(Striking, NearestIsWithinHalfAStep) {
  tests::SplitMix random(kSeed + 1);
  for (int i = 0; i < 500; ++i) {
    const double size = random.between(1.0, 300.0);
    for (const Nearest& near : nearest_of_each_series(size, quantity::Kind::kLength, Role::kHole)) {
      if (near.source.find("steps") != std::string::npos) {
        EXPECT_LE(std::abs(size - near.size_mm), near.spacing_mm / 2.0 + 1e-9) << near.series;
      }
      EXPECT_LE(std::abs(size - near.size_mm), near.spacing_mm * 1.5) << near.series << " " << near.name;
    }
  }
}

}  // namespace
}  // namespace sparewright::intent
