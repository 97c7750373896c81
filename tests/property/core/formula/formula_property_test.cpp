// Random formulas: printed, read back and run, they give what the tree gives, value and slopes.
#include <array>
#include <cmath>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/formula/dual.hpp"
#include "core/formula/expression.hpp"
#include "property.hpp"
#include "random_formula.hpp"

namespace sparewright::formula {
namespace {

using quantity::Kind;
using tests::FormulaTree;
using tests::kFormulaNames;

constexpr std::size_t kNames = kFormulaNames.size();
constexpr double kLargest = 1e6;  // larger numbers are left out: their differences say nothing

// The tape differentiates backwards and Dual forwards: the same products in another order.
constexpr double kSlopeError = 1e-10;

std::array<double, kNames> plain_values() {
  std::array<double, kNames> values{};
  for (std::size_t i = 0; i < kNames; ++i)
    values.at(i) = kFormulaNames.at(i).value;
  return values;
}

std::array<Dual<kNames>, kNames> dual_values() {
  std::array<Dual<kNames>, kNames> values;
  for (std::size_t i = 0; i < kNames; ++i) {
    values.at(i).value = kFormulaNames.at(i).value;
    values.at(i).slopes.at(i) = 1.0;
  }
  return values;
}

std::optional<Kind> kind_of(std::string_view name) {
  for (const tests::FormulaName& known : kFormulaNames) {
    if (known.name == name) return known.kind;
  }
  return std::nullopt;
}

// What the product makes of the text.
struct ReadBack {
  Formula formula;
  std::vector<std::size_t> index;  // of its names among kFormulaNames
};

ReadBack read_back(const std::string& text) {
  auto expression = Expression::read(text);
  RC_ASSERT(expression.has_value());
  auto formula = expression->bind(kind_of, Kind::kLength, quantity::UnitSystem::kInch);
  if (!formula) RC_FAIL(base::report(formula.error()));
  ReadBack run{std::move(*formula), {}};
  for (const std::string& name : run.formula.names()) {
    std::size_t i = 0;
    while (kFormulaNames.at(i).name != name)
      ++i;
    run.index.push_back(i);
  }
  return run;
}

base::Result<Formula::Value> at(const ReadBack& run, const std::array<double, kNames>& values) {
  std::vector<double> own;
  for (const std::size_t i : run.index)
    own.push_back(values.at(i));
  return run.formula.at(own);
}

struct Drawn {
  FormulaTree tree;
  std::string text;
};

Drawn draw() {
  tests::Choices choices(
      *rc::gen::container<std::vector<std::uint32_t>>(120, rc::gen::inRange<std::uint32_t>(0, 100000)));
  FormulaTree tree(choices, FormulaTree::Gives::kLength, 5);
  std::string text = tree.typed(choices);
  return {std::move(tree), std::move(text)};
}

TEST(FormulaProperty, ReadBackItGivesWhatTheTreeGives) {
  int compared = 0;
  int with_slopes = 0;
  EXPECT_TRUE(tests::holds("a printed formula gives what its tree gives", [&] {
    const Drawn drawn = draw();
    if (!drawn.tree.sound(kLargest) || drawn.text.size() > kLongestFormula) return;
    const Dual<kNames> wanted = drawn.tree.at(dual_values());
    RC_LOG(drawn.text);
    const ReadBack run = read_back(drawn.text);
    const auto y = at(run, plain_values());
    RC_ASSERT(y.has_value());
    RC_ASSERT(y->value == drawn.tree.at(plain_values()));
    std::array<double, kNames> slopes{};
    for (std::size_t i = 0; i < run.index.size(); ++i)
      slopes.at(run.index[i]) = y->slopes[i];
    for (std::size_t i = 0; i < kNames; ++i) {
      RC_ASSERT(std::abs(slopes.at(i) - wanted.slopes.at(i)) <=
                kSlopeError * (1.0 + std::abs(wanted.slopes.at(i))));
    }
    ++compared;
    with_slopes += run.index.empty() ? 0 : 1;
  }));
  EXPECT_GT(compared, 200);
  EXPECT_GT(with_slopes, 100);
}

// D(h) is in error by about c h^2 and by rounding. D(h) - D(h/2) is 3/4 of the first; the second is below
// 1e-16 * |f| / h = 1e-5 for |f| up to kLargest.
TEST(FormulaProperty, SlopesAreThoseOfCentralDifferences) {
  constexpr double kStep = 1e-5;
  constexpr double kRounding = 1e-5;
  int compared = 0;
  EXPECT_TRUE(tests::holds("slopes are limits of differences", [&] {
    const Drawn drawn = draw();
    if (!drawn.tree.sound(kLargest) || drawn.text.size() > kLongestFormula) return;
    RC_LOG(drawn.text);
    const ReadBack run = read_back(drawn.text);
    const auto y = at(run, plain_values());
    RC_ASSERT(y.has_value());
    for (std::size_t i = 0; i < run.index.size(); ++i) {
      const auto difference = [&](double step) {
        auto up = plain_values();
        auto down = plain_values();
        up.at(run.index[i]) += step;
        down.at(run.index[i]) -= step;
        return (drawn.tree.at(up) - drawn.tree.at(down)) / (2.0 * step);
      };
      const double coarse = difference(kStep);
      const double fine = difference(kStep / 2.0);
      if (!std::isfinite(coarse) || !std::isfinite(fine)) continue;
      RC_ASSERT(std::abs(y->slopes[i] - fine) <=
                std::abs(coarse - fine) + kRounding * (1.0 + std::abs(fine)));
      ++compared;
    }
  }));
  EXPECT_GT(compared, 300);
}

// Many lanes at once against one after the other: the same steps, the slopes in another order.
TEST(FormulaProperty, ManyAtOnceGiveWhatEachGives) {
  constexpr std::size_t kLanes = 5;
  int compared = 0;
  Formula::Room room;
  EXPECT_TRUE(tests::holds("lanes do not heed one another", [&] {
    const Drawn drawn = draw();
    if (!drawn.tree.sound(kLargest) || drawn.text.size() > kLongestFormula) return;
    RC_LOG(drawn.text);
    const ReadBack run = read_back(drawn.text);
    const std::size_t names = run.index.size();
    std::vector<double> values(names * kLanes);
    for (std::size_t k = 0; k < names; ++k) {
      for (std::size_t l = 0; l < kLanes; ++l)
        values[k * kLanes + l] = kFormulaNames.at(run.index[k]).value * (1.0 + 0.01 * static_cast<double>(l));
    }
    std::vector<double> out(kLanes);
    std::vector<double> slopes(names * kLanes);
    run.formula.at_many(values, kLanes, room, out, slopes);
    for (std::size_t l = 0; l < kLanes; ++l) {
      std::vector<double> own(names);
      for (std::size_t k = 0; k < names; ++k)
        own[k] = values[k * kLanes + l];
      const auto y = run.formula.at(own);
      if (!y) continue;
      RC_ASSERT(out[l] == y->value);
      for (std::size_t k = 0; k < names; ++k)
        RC_ASSERT(std::abs(slopes[k * kLanes + l] - y->slopes[k]) <=
                  kSlopeError * (1.0 + std::abs(y->slopes[k])));
      ++compared;
    }
  }));
  EXPECT_GT(compared, 1000);
}

TEST(FormulaProperty, TheSystemOfTheJobOnlyMovesBareNumbers) {
  int with_bare_numbers = 0;
  EXPECT_TRUE(tests::holds("a formula without bare numbers beside lengths is the same in both systems", [&] {
    const Drawn drawn = draw();
    if (!drawn.tree.sound(kLargest) || drawn.text.size() > kLongestFormula) return;
    const auto expression = Expression::read(drawn.text);
    RC_ASSERT(expression.has_value());
    const auto inch = expression->bind(kind_of, Kind::kLength, quantity::UnitSystem::kInch);
    const auto metric = expression->bind(kind_of, Kind::kLength, quantity::UnitSystem::kMetric);
    RC_ASSERT(inch.has_value() && metric.has_value());
    if (inch->fingerprint() == metric->fingerprint()) return;
    ++with_bare_numbers;
    RC_ASSERT(drawn.tree.has_bare_decimal());
  }));
  EXPECT_GT(with_bare_numbers, 20);
}

}  // namespace
}  // namespace sparewright::formula
