// SciPy 1.10.1 (Debian python3-scipy), scipy.stats.chi2, is the judge.
#include "core/survey/chi_square.hpp"

#include <cstdio>
#include <string>

#include <gtest/gtest.h>

#include "judge.hpp"

namespace sparewright::survey {
namespace {

constexpr double kAccuracy = 1e-10;  // as the header promises

TEST(OutsideChiSquare, LimitsAreThoseOfSciPy) {
  const int degrees[] = {1, 2, 3, 4, 9, 10, 30, 100, 1000, 2000, 10000};
  std::string input;
  for (const int d : degrees)
    input += std::to_string(d) + "\n";
  const auto lines = tests::judged(
      "import sys\nfrom scipy.stats import chi2\n"
      "for line in open(sys.argv[1]):\n  d = int(line)\n  print(repr(chi2.ppf(0.95, d)), "
      "repr(chi2.ppf(0.001, d)))\n",
      input);
  ASSERT_EQ(lines.size(), std::size(degrees));
  for (std::size_t i = 0; i < lines.size(); ++i) {
    double upper = 0.0;
    double lower = 0.0;
    ASSERT_EQ(std::sscanf(lines[i].c_str(), "%lf %lf", &upper, &lower), 2);
    EXPECT_NEAR(chi_square_limit(0.95, degrees[i]) / upper, 1.0, kAccuracy) << degrees[i];
    EXPECT_NEAR(chi_square_limit(0.001, degrees[i]) / lower, 1.0, 1e-7) << degrees[i];
    EXPECT_NEAR(chi_square_below(upper, degrees[i]), 0.95, kAccuracy) << degrees[i];
  }
}

// The 95 % limit for 3 degrees of freedom, as every printed table has it: 7.815 (also NIST/SEMATECH
// e-Handbook, 1.3.6.7.4); the two-sided 95 % limits 0.216 and 9.348 are those of Ghilani and Wolf, Adjustment
// Computations.
TEST(OutsideChiSquare, LimitsForThreeDegreesArePrinted) {
  EXPECT_NEAR(chi_square_limit(0.95, 3), 7.815, 0.0005);
  EXPECT_NEAR(chi_square_limit(0.025, 3), 0.216, 0.0005);
  EXPECT_NEAR(chi_square_limit(0.975, 3), 9.348, 0.0005);
}

TEST(OutsideChiSquare, FarOutIsCertain) {
  EXPECT_EQ(chi_square_below(0.0, 3), 0.0);
  EXPECT_EQ(chi_square_below(1e9, 3), 1.0);
  EXPECT_EQ(chi_square_below(1e9, 1000), 1.0);
}

}  // namespace
}  // namespace sparewright::survey
