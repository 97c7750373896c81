// python3-uncertainties differentiates the same random formulas: its own chain rule, its own functions.
#include <array>
#include <cmath>
#include <sstream>
#include <string>
#include <vector>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/formula/expression.hpp"
#include "judge.hpp"
#include "random_formula.hpp"
#include "splitmix.hpp"

namespace sparewright::formula {
namespace {

using quantity::Kind;
using tests::FormulaTree;
using tests::kFormulaNames;

constexpr std::uint64_t kSeed = 20080731;
constexpr int kFormulas = 300;
constexpr double kValueError = 1e-12;  // relative: other libraries' sin and pow round otherwise
constexpr double kSlopeError = 1e-9;   // relative to the larger of 1 and the slope: sums cancel
constexpr double kLargest = 1e6;

constexpr std::string_view kScript = R"(
import sys
from uncertainties import ufloat
from uncertainties.umath import sqrt, sin, cos, tan, asin, acos, atan
lines = open(sys.argv[1]).read().split("\n")
v = [ufloat(float(x), 1.0) for x in lines[0].split()]
for line in lines[1:]:
    y = eval(line)
    if hasattr(y, "derivatives"):
        slopes = [y.derivatives.get(x, 0.0) for x in v]
        print(" ".join(repr(float(n)) for n in [y.nominal_value] + slopes))
    else:
        print(" ".join([repr(float(y))] + ["0.0"] * len(v)))
)";

std::optional<Kind> kind_of(std::string_view name) {
  for (const tests::FormulaName& known : kFormulaNames) {
    if (known.name == name) return known.kind;
  }
  return std::nullopt;
}

struct Case {
  std::string typed;
  std::string python;
};

std::vector<Case> random_cases() {
  tests::SplitMix random(kSeed);
  std::vector<Case> cases;
  while (cases.size() < kFormulas) {
    std::vector<std::uint32_t> drawn(160);
    for (std::uint32_t& number : drawn)
      number = static_cast<std::uint32_t>(random.next() >> 40U);
    tests::Choices choices(drawn);
    const FormulaTree tree(choices, FormulaTree::Gives::kLength, 6);
    std::string typed = tree.typed(choices);
    const bool sound = tree.sound(kLargest) && typed.size() <= kLongestFormula;
    if (sound && typed.size() > 20) cases.push_back({std::move(typed), tree.python()});
  }
  return cases;
}

TEST(OutsideUncertainties, AgreesOnValuesAndSlopes) {
  const std::vector<Case> cases = random_cases();
  std::string input;
  for (const tests::FormulaName& name : kFormulaNames)
    input += fmt::format("{:.17g} ", name.value);
  for (const Case& c : cases)
    input += "\n" + c.python;
  const std::vector<std::string> lines = tests::judged(kScript, input);
  ASSERT_EQ(lines.size(), cases.size());
  for (std::size_t c = 0; c < cases.size(); ++c) {
    SCOPED_TRACE(cases[c].typed);
    const auto expression = Expression::read(cases[c].typed);
    ASSERT_TRUE(expression) << base::report(expression.error());
    const auto formula = expression->bind(kind_of, Kind::kLength, quantity::UnitSystem::kInch);
    ASSERT_TRUE(formula) << base::report(formula.error());
    std::vector<double> values;
    for (const std::string& name : formula->names()) {
      for (const tests::FormulaName& known : kFormulaNames) {
        if (known.name == name) values.push_back(known.value);
      }
    }
    const auto y = formula->at(values);
    ASSERT_TRUE(y) << base::report(y.error());
    std::istringstream line(lines[c]);
    double value = 0.0;
    line >> value;
    EXPECT_NEAR(y->value, value, kValueError * std::max(1.0, std::abs(value)));
    for (const tests::FormulaName& known : kFormulaNames) {
      double slope = 0.0;
      line >> slope;
      const auto at = std::find(formula->names().begin(), formula->names().end(), known.name);
      const double own = at == formula->names().end()
                             ? 0.0
                             : y->slopes[static_cast<std::size_t>(at - formula->names().begin())];
      EXPECT_NEAR(own, slope, kSlopeError * std::max(1.0, std::abs(slope))) << known.name;
    }
    EXPECT_TRUE(line);
  }
}

}  // namespace
}  // namespace sparewright::formula
