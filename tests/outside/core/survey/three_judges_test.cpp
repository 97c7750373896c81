// Three independent judges (Debian python3-scipy, python3-uncertainties, python3-openturns) adjust the same random
// networks, linear and bent, their readings correlated, in one process:
//   SciPy            scipy.optimize.least_squares on readings whitened by a Cholesky factor of the full covariance, slopes
//                    by complex steps, covariance by inverting the normal matrix
//   uncertainties    slopes by its own differentiation, normal equations with the inverse covariance; the uncertainties by
//                    sending correlated readings through the solution
//   OpenTURNS        slopes by symbolic differentiation, its own Cholesky factor and singular values, the inverse of its Gram
//                    matrix
#include <cmath>
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
constexpr int kLinear = 80;
constexpr int kBent = 120;

constexpr std::string_view kScript = R"(
import sys, json
import numpy as np
import openturns as ot
import uncertainties as un
from uncertainties import umath
from scipy.linalg import cholesky, solve_triangular
from scipy.optimize import least_squares

def scipy_says(y, texts, S, start):
    codes = [compile(t.replace("^", "**"), "e", "eval") for t in texts]
    L = cholesky(S, lower=True)
    def fitted(x):
        names = {"x%d" % j: x[j] for j in range(len(x))}
        names["sqrt"] = np.sqrt
        return np.array([eval(c, names) for c in codes])
    def slopes(x):
        J = np.empty((len(y), len(x)))
        for j in range(len(x)):
            z = x.astype(complex)
            z[j] += 1e-30j
            J[:, j] = fitted(z).imag / 1e-30
        return J
    misfit = lambda x: solve_triangular(L, fitted(x) - y, lower=True)
    jacobian = lambda x: solve_triangular(L, slopes(x), lower=True)
    best = least_squares(misfit, start, jac=jacobian, method="lm", xtol=1e-15, ftol=1e-15, gtol=1e-15)
    A = jacobian(best.x)
    return best.x, np.sqrt(np.diag(np.linalg.inv(A.T @ A))), 2 * best.cost

def uncertainties_says(y, texts, S, start):
    codes = [compile(t.replace("^", "**"), "e", "eval") for t in texts]
    W = np.linalg.inv(S)
    x = np.array(start)
    for _ in range(60):
        own = [un.ufloat(v, 1.0) for v in x]
        names = {"x%d" % j: v for j, v in enumerate(own)}
        names["sqrt"] = umath.sqrt
        read = [eval(c, names) for c in codes]
        J = np.array([[r.derivatives.get(v, 0.0) for v in own] for r in read])
        N = J.T @ W @ J
        step = np.linalg.solve(N, J.T @ W @ (y - [r.nominal_value for r in read]))
        x = x + step
        if np.max(np.abs(step) / np.abs(x)) < 1e-14:
            break
    K = np.linalg.solve(N, J.T @ W)
    readings = un.correlated_values(y, S)
    found = [sum(k * r for k, r in zip(row, readings)) for row in K]
    return x, np.array([f.std_dev for f in found])

def openturns_says(y, texts, S, start):
    m = len(start)
    f = ot.SymbolicFunction(["x%d" % j for j in range(m)], texts)
    L = ot.CovarianceMatrix(S.tolist()).computeCholesky()
    white = lambda right: L.solveLinearSystem(right)
    x = ot.Point(start)
    for _ in range(60):
        A = white(ot.Matrix(f.gradient(x).transpose()))
        b = white(ot.Point(y) - f(x))
        method = ot.SVDMethod(A)
        step = method.solve(b)
        x += step
        if max(abs(s / v) for s, v in zip(step, x)) < 1e-14:
            break
    G = method.getGramInverse()
    return np.array(x), np.array([G[j, j] ** 0.5 for j in range(m)])

for line in open(sys.argv[1]):
    job = json.loads(line)
    y = np.array(job["values"])
    S = np.array(job["covariance"])
    texts = [t.replace(" mm", "") for t in job["equations"]]
    start = np.array(job["truth"])
    values, u, chi = scipy_says(y, texts, S, start)
    said = {"values": list(values), "u": list(u), "chi": chi}
    for name, judge in (("uncertainties", uncertainties_says), ("openturns", openturns_says)):
        values, u = judge(y, texts, S, start)
        said[name + " values"] = list(values)
        said[name + " u"] = list(u)
    print(json.dumps(said))
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

// What one judge says of a network, under the names its numbers have in the verdict.
void compare(int number, const std::string& values_key, const std::string& u_key) {
  SCOPED_TRACE(fmt::format("seed {}", kFirstSeed + static_cast<std::uint64_t>(number)));
  const auto report = tests::adjusted(network_number(number).network);
  const std::string& verdict = verdicts().at(static_cast<std::size_t>(number));
  const auto values = numbers(verdict, values_key);
  const auto u = numbers(verdict, u_key);
  ASSERT_EQ(values.size(), report.unknowns.size());
  ASSERT_EQ(u.size(), report.unknowns.size());
  for (std::size_t j = 0; j < values.size(); ++j) {
    EXPECT_TRUE(report.unknowns[j].fixed);
    EXPECT_NEAR(report.unknowns[j].value / values[j], 1.0, kValues);
    EXPECT_NEAR(report.unknowns[j].u / u[j], 1.0, kUncertainties);
  }
}

// The worst of all networks and judges, printed.
TEST(ThreeJudges, WorstAgreement) {
  for (const char* judge : {"", "uncertainties ", "openturns "}) {
    double worst_value = 0.0;
    double worst_u = 0.0;
    for (int number = 0; number < kLinear + kBent; ++number) {
      const auto report = tests::adjusted(network_number(number).network);
      const std::string& verdict = verdicts().at(static_cast<std::size_t>(number));
      const auto values = numbers(verdict, std::string(judge) + "values");
      const auto u = numbers(verdict, std::string(judge) + "u");
      for (std::size_t j = 0; j < values.size(); ++j) {
        worst_value = std::fmax(worst_value, std::abs(report.unknowns[j].value / values[j] - 1.0));
        worst_u = std::fmax(worst_u, std::abs(report.unknowns[j].u / u[j] - 1.0));
      }
    }
    fmt::print("{}: worst of {} networks: values {:.1e}, uncertainties {:.1e} relative\n",
               judge[0] == '\0' ? "SciPy " : judge, kLinear + kBent, worst_value, worst_u);
    EXPECT_LT(worst_value, kValues);
    EXPECT_LT(worst_u, kUncertainties);
  }
}

class OutsideSciPy : public testing::TestWithParam<int> {};
TEST_P(OutsideSciPy, AdjustsAlike) {
  compare(GetParam(), "values", "u");
  const auto report = tests::adjusted(network_number(GetParam()).network);
  const auto chi = numbers(verdicts().at(static_cast<std::size_t>(GetParam())), "chi").at(0);
  EXPECT_NEAR(report.chi_square / chi, 1.0, kUncertainties);
}
INSTANTIATE_TEST_SUITE_P(RandomNetworks, OutsideSciPy, testing::Range(0, kLinear + kBent));

class OutsideUncertainties : public testing::TestWithParam<int> {};
TEST_P(OutsideUncertainties, AdjustsAlike) {
  compare(GetParam(), "uncertainties values", "uncertainties u");
}
INSTANTIATE_TEST_SUITE_P(RandomNetworks, OutsideUncertainties, testing::Range(0, kLinear + kBent));

class OutsideOpenTurns : public testing::TestWithParam<int> {};
TEST_P(OutsideOpenTurns, AdjustsAlike) {
  compare(GetParam(), "openturns values", "openturns u");
}
INSTANTIATE_TEST_SUITE_P(RandomNetworks, OutsideOpenTurns, testing::Range(0, kLinear + kBent));

}  // namespace
}  // namespace sparewright::survey
