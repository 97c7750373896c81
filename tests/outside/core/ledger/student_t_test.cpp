// Student's t against the table of the GUM and against SciPy.
#include "core/ledger/student_t.hpp"

#include <array>
#include <cmath>
#include <cstdio>
#include <limits>
#include <numbers>
#include <ostream>
#include <string>
#include <vector>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "judge.hpp"

namespace sparewright::ledger {
namespace {

constexpr double kMany = std::numeric_limits<double>::infinity();

// JCGM 100:2008, table G.2: t for a fraction p of the distribution, as printed (from memory). The columns of
// 68.27, 95.45 and 99.73 percent are those of 1, 2 and 3 standard deviations of the normal distribution.
const std::array<double, 6> kFractions{
    std::erf(1.0 / std::numbers::sqrt2), 0.90, 0.95,
    std::erf(2.0 / std::numbers::sqrt2), 0.99, std::erf(3.0 / std::numbers::sqrt2)};
struct Row {
  double degrees_of_freedom;
  std::array<double, 6> printed;
  double half_place = 0.005;
};

void PrintTo(const Row& row, std::ostream* out) {
  *out << row.degrees_of_freedom << " degrees of freedom";
}

class RememberedTableG2 : public testing::TestWithParam<Row> {};

TEST_P(RememberedTableG2, IsMetToThePrintedPlace) {
  for (std::size_t i = 0; i < kFractions.size(); ++i) {
    EXPECT_NEAR(student_t_two_sided(kFractions.at(i), GetParam().degrees_of_freedom),
                GetParam().printed.at(i), GetParam().half_place)
        << kFractions.at(i);
  }
}

const Row kTableG2[] = {
    {1, {1.84, 6.31, 12.71, 13.97, 63.66, 235.80}},
    {2, {1.32, 2.92, 4.30, 4.53, 9.92, 19.21}},
    {3, {1.20, 2.35, 3.18, 3.31, 5.84, 9.22}},
    {4, {1.14, 2.13, 2.78, 2.87, 4.60, 6.62}},
    {5, {1.11, 2.02, 2.57, 2.65, 4.03, 5.51}},
    {6, {1.09, 1.94, 2.45, 2.52, 3.71, 4.90}},
    {7, {1.08, 1.89, 2.36, 2.43, 3.50, 4.53}},
    {8, {1.07, 1.86, 2.31, 2.37, 3.36, 4.28}},
    {9, {1.06, 1.83, 2.26, 2.32, 3.25, 4.09}},
    {10, {1.05, 1.81, 2.23, 2.28, 3.17, 3.96}},
    {11, {1.05, 1.80, 2.20, 2.25, 3.11, 3.85}},
    {12, {1.04, 1.78, 2.18, 2.23, 3.05, 3.76}},
    {13, {1.04, 1.77, 2.16, 2.21, 3.01, 3.69}},
    {14, {1.04, 1.76, 2.14, 2.20, 2.98, 3.64}},
    {15, {1.03, 1.75, 2.13, 2.18, 2.95, 3.59}},
    {16, {1.03, 1.75, 2.12, 2.17, 2.92, 3.54}},
    {18, {1.03, 1.73, 2.10, 2.15, 2.88, 3.48}},
    {20, {1.03, 1.72, 2.09, 2.13, 2.85, 3.42}},
    {50, {1.01, 1.68, 2.01, 2.05, 2.68, 3.16}},
    {kMany, {1.000, 1.645, 1.960, 2.000, 2.576, 3.000}, 0.0005},
};
INSTANTIATE_TEST_SUITE_P(Rows, RememberedTableG2, testing::ValuesIn(kTableG2));

// SciPy 1.10 finds its quantiles by a search that stops early: where closed forms are known they are in error
// by up to 4e-9. Its probabilities are better, so our quantiles are also put into them.
constexpr double kQuantileError = 1e-8;  // relative
constexpr double kProbabilityError = 1e-12;

TEST(OutsideSciPy, AgreesOnQuantilesAndProbabilities) {
  constexpr std::string_view kScript = R"(
import sys
from scipy.stats import t, norm
for line in open(sys.argv[1]):
    p, nu, q = (float(x) for x in line.split())
    d = norm if nu == float("inf") else t(nu)
    numbers = [d.ppf((1.0 + p) / 2.0), 1.0 - 2.0 * d.sf(q), 1.0 - 2.0 * d.sf(4.0 * p)]
    print(" ".join(repr(float(x)) for x in numbers))
)";
  struct Case {
    double p;
    double nu;
  };
  std::vector<Case> cases;
  for (const double nu : {1.0,  1.5,  2.0,   3.0, 4.5, 7.0, 10.0, 16.7, 19.0, 25.6, 39.0,
                          41.0, 64.0, 100.0, 1e3, 1e4, 1e5, 1e6,  1e8,  1e10, 1e12, kMany}) {
    for (const double p : {0.1, 0.5, 0.6827, 0.9, 0.95, 0.99, 0.999})
      cases.push_back({p, nu});
  }
  std::string input;
  for (const Case& c : cases)
    input += fmt::format("{:.17g} {} {:.17g}\n", c.p, c.nu, student_t_two_sided(c.p, c.nu));
  const std::vector<std::string> lines = tests::judged(kScript, input);
  ASSERT_EQ(lines.size(), cases.size());
  for (std::size_t i = 0; i < cases.size(); ++i) {
    double quantile = 0.0;
    double at_ours = 0.0;
    double inside = 0.0;
    ASSERT_EQ(std::sscanf(lines[i].c_str(), "%lf %lf %lf", &quantile, &at_ours, &inside), 3) << lines[i];
    SCOPED_TRACE(fmt::format("p = {}, nu = {}", cases[i].p, cases[i].nu));
    EXPECT_NEAR(student_t_two_sided(cases[i].p, cases[i].nu), quantile, kQuantileError * quantile);
    EXPECT_NEAR(at_ours, cases[i].p, kProbabilityError);
    EXPECT_NEAR(student_t_inside(4.0 * cases[i].p, cases[i].nu), inside, kProbabilityError);
  }
}

}  // namespace
}  // namespace sparewright::ledger
