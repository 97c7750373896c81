// SciPy (Debian python3-scipy) adjusts the same random networks: scipy.optimize.least_squares on readings
// whitened by a Cholesky factor of the full covariance, slopes by complex steps, covariance by inverting the
// normal matrix.
#include <cstdio>
#include <map>
#include <sstream>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/survey/adjust.hpp"
#include "judge.hpp"
#include "networks.hpp"

namespace sparewright::survey {
namespace {

constexpr double kValues = 1e-9;         // relative
constexpr double kUncertainties = 1e-6;  // relative
constexpr std::uint64_t kFirstSeed = 19500;
constexpr int kLinear = 30;
constexpr int kBent = 40;

constexpr std::string_view kScript = R"(
import sys, json
import numpy as np
from scipy.linalg import cholesky, solve_triangular
from scipy.optimize import least_squares
for line in open(sys.argv[1]):
    job = json.loads(line)
    y = np.array(job["values"])
    codes = [compile(e.replace("^", "**").replace(" mm", ""), "e", "eval") for e in job["equations"]]
    L = cholesky(np.array(job["covariance"]), lower=True)
    def fitted(x):
        names = {"x%d" % j: x[j] for j in range(len(x))}
        names["sqrt"] = np.sqrt
        return np.array([eval(c, names) for c in codes])
    def slopes(x):
        m = len(x)
        J = np.empty((len(y), m))
        for j in range(m):
            z = x.astype(complex)
            z[j] += 1e-30j
            J[:, j] = fitted(z).imag / 1e-30
        return J
    misfit = lambda x: solve_triangular(L, fitted(x) - y, lower=True)
    jacobian = lambda x: solve_triangular(L, slopes(x), lower=True)
    best = least_squares(misfit, np.array(job["truth"]), jac=jacobian, method="lm", xtol=1e-15, ftol=1e-15, gtol=1e-15)
    A = jacobian(best.x)
    C = np.linalg.inv(A.T @ A)
    print(json.dumps({"values": list(best.x), "u": list(np.sqrt(np.diag(C))), "chi": 2 * best.cost}))
)";

std::string line_of(const tests::RandomNetwork& random) {
  std::string values;
  std::string equations;
  for (std::size_t i = 0; i < random.equations.size(); ++i) {
    values += fmt::format("{}{:.17g}", i > 0 ? ", " : "", random.network.readings[i].value);
    equations += fmt::format("{}\"{}\"", i > 0 ? ", " : "", random.equations[i]);
  }
  std::string rows;
  for (std::size_t i = 0; i < random.network.covariance.rows; ++i) {
    std::string row;
    for (const double cell : random.network.covariance.row(i))
      row += fmt::format("{}{:.17g}", row.empty() ? "" : ", ", cell);
    rows += (i > 0 ? ", [" : "[") + row + "]";
  }
  return fmt::format(
      "{{\"values\": [{}], \"equations\": [{}], \"covariance\": [{}], \"truth\": [{:.17g}]}}\n", values,
      equations, rows, fmt::join(random.truth, ", "));
}

tests::RandomNetwork network_number(int number) {
  return tests::random_network(kFirstSeed + static_cast<std::uint64_t>(number), number >= kLinear);
}

// One call of Python for all networks; what it says of each.
const std::vector<std::string>& verdicts() {
  static const std::vector<std::string> kLines = [] {
    std::string input;
    for (int i = 0; i < kLinear + kBent; ++i)
      input += line_of(network_number(i));
    return tests::judged(kScript, input);
  }();
  return kLines;
}

// The numbers behind "key": [ or "key": in a flat JSON line.
std::vector<double> numbers(const std::string& line, const std::string& key) {
  std::string rest = line.substr(line.find("\"" + key + "\":") + key.size() + 3);
  rest = rest.substr(0, rest.find_first_of("]}"));
  for (char& c : rest) {
    if (c == '[' || c == ',') c = ' ';
  }
  std::istringstream in(rest.substr(0, rest.find('"')));
  std::vector<double> out;
  for (double number = 0.0; in >> number;)
    out.push_back(number);
  return out;
}

class OutsideSciPy : public testing::TestWithParam<int> {};
TEST_P(OutsideSciPy, AdjustsAlike) {
  SCOPED_TRACE(fmt::format("seed {}", kFirstSeed + static_cast<std::uint64_t>(GetParam())));
  const auto report = tests::adjusted(network_number(GetParam()).network);
  const std::string& verdict = verdicts().at(static_cast<std::size_t>(GetParam()));
  const auto values = numbers(verdict, "values");
  const auto u = numbers(verdict, "u");
  ASSERT_EQ(values.size(), report.unknowns.size());
  for (std::size_t j = 0; j < values.size(); ++j) {
    EXPECT_TRUE(report.unknowns[j].fixed);
    EXPECT_NEAR(report.unknowns[j].value / values[j], 1.0, kValues);
    EXPECT_NEAR(report.unknowns[j].u / u[j], 1.0, kUncertainties);
  }
  EXPECT_NEAR(report.chi_square / numbers(verdict, "chi").at(0), 1.0, kUncertainties);
}
INSTANTIATE_TEST_SUITE_P(RandomNetworks, OutsideSciPy, testing::Range(0, kLinear + kBent));

}  // namespace
}  // namespace sparewright::survey
