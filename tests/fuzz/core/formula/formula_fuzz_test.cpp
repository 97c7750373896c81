// Mutated formulas, by byte and by token: nothing crashes or hangs, a failure points into the text and says
// something, and what is read gives finite numbers or says why not.
#include <array>
#include <cmath>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/formula/expression.hpp"
#include "formula_names.hpp"
#include "random_formula.hpp"
#include "splitmix.hpp"

namespace sparewright::formula {
namespace {

using quantity::Kind;

constexpr std::uint64_t kSeed = 4711;
constexpr int kTrials = 60000;

// Texts from which mutations start. What once broke the reader is added here and stays.
constexpr std::array kCorpus{
    "centres + pin/2 + stud/2",
    "1-3/8",
    "centres + 1-3/8 in",
    "pin/3/8",
    "sqrt(high^2 + (4 mm)^2)",
    "min(high, max(centres, 0.5))",
    "x + (y - x)/2",
    "sin(30 deg)*high",
    "asin(high/centres) + angle",
    "3 in/high",
    "10 mm/min * 3 min",
    "0.5 in. + centres",
    "2*pi*r",
    "-high^-2*high^3",
    "((((high))))",
    "1,375 + pin",
    "3 in^2",
    "\u2212high \u2013 pin",
    "3/8\u2033",
    "25 \u00B5m",
    "",
    "\xC2",
    "3 \xE2\x80",
    "(area^6)^6",
    "((((((area^6)^6)^6)^6)^6)^6)^6",
    "min(bad(1), 2, 3)",
    "--------",
};

constexpr std::array kPieces{
    "0",      "1",     "9",      ".",    ",",    "/",      "-",
    "+",      "*",     "^",      "(",    ")",    " ",      "\t",
    "\n",     "\"",    "in",     "mm",   "deg",  "°",      "degC",
    "psi",    "high",  "pin",    "r",    "x",    "y",      "angle",
    "count",  "pi",    "sqrt(",  "min(", "max(", "atan(",  "3/8",
    "1-3/8",  "1 3/8", "_",      "^2",   "^-6",  "\u2212", "\u2013",
    "\u00A0", "²",     "\xC2",   "\xE2", "\x80", "\x01",   "999999999999999",
    "/2",     ")/(",   "mm/rev",
};

std::string sound(tests::SplitMix& random) {
  std::vector<std::uint32_t> drawn(80);
  for (std::uint32_t& number : drawn)
    number = static_cast<std::uint32_t>(random.next() >> 40U);
  tests::Choices choices(drawn);
  return tests::FormulaTree(choices, tests::FormulaTree::Gives::kLength, 4).typed(choices);
}

std::string mutated(tests::SplitMix& random) {
  std::string text = random.one_in(3) ? sound(random) : kCorpus.at(random.below(kCorpus.size()));
  for (std::size_t n = random.below(5); n > 0; --n) {
    const std::size_t at = random.below(text.size() + 1);
    switch (random.below(5)) {
      case 0:
      case 1:
        text.insert(at, kPieces.at(random.below(kPieces.size())));
        break;
      case 2:
        text.erase(at, 1 + random.below(4));
        break;
      case 3:
        if (at < text.size()) text[at] = static_cast<char>(random.below(256));
        break;
      default:
        text += text.substr(at, random.below(12));
    }
  }
  if (random.one_in(500)) text.append(random.below(600), kPieces.at(random.below(kPieces.size()))[0]);
  return text;
}

void expect_told(const base::Failure& f, const std::string& text) {
  EXPECT_FALSE(base::report(f).empty());
  EXPECT_EQ(base::sentence(f).find('\n'), std::string::npos);
  ASSERT_TRUE(f.span);
  EXPECT_LE(f.span->offset, text.size());
  EXPECT_LE(f.span->end(), text.size());
}

double value_of(std::string_view name) {
  return name == "count" || name == "angle" ? 0.5 : 3.0;
}

std::optional<Kind> kind_of_any(std::string_view name) {
  for (const tests::FormulaName& known : tests::kFormulaNames) {
    if (known.name == name) return known.kind;
  }
  return kind_of(name);
}

struct Seen {
  int read = 0;
  int bound = 0;
  int ran = 0;
};

void try_text(const std::string& text, Seen& seen) {
  const auto expression = Expression::read(text);
  if (!expression) return expect_told(expression.error(), text);
  ++seen.read;
  for (const Kind wanted : {Kind::kLength, Kind::kRadius, Kind::kAngle, Kind::kNumber}) {
    const auto formula = expression->bind(kind_of_any, wanted, quantity::UnitSystem::kMetric);
    if (!formula) {
      expect_told(formula.error(), text);
      continue;
    }
    ++seen.bound;
    std::vector<double> values;
    for (const std::string& name : formula->names())
      values.push_back(value_of(name));
    const auto y = formula->at(values);
    if (!y) {
      expect_told(y.error(), text);
      continue;
    }
    ++seen.ran;
    EXPECT_TRUE(std::isfinite(y->value)) << text;
  }
}

TEST(FormulaFuzz, NothingBreaksTheReader) {
  tests::SplitMix random(kSeed);
  Seen seen;
  for (const char* text : kCorpus)
    try_text(text, seen);
  for (int trial = 0; trial < kTrials && !testing::Test::HasFailure(); ++trial) {
    const std::string text = mutated(random);
    SCOPED_TRACE("'" + text + "', trial " + std::to_string(trial) + " of seed " + std::to_string(kSeed));
    try_text(text, seen);
  }
  EXPECT_GT(seen.read, kTrials / 10);
  EXPECT_GT(seen.bound, kTrials / 20);
  EXPECT_GT(seen.ran, kTrials / 40);
}

TEST(FormulaFuzz, TheWorstShapesAreReadQuickly) {
  Seen seen;
  for (const std::string piece :
       {"-", "(", "high^", "1-", "1/", "sqrt(", "min(1,", "+", "3 in/", " ", "\u00A0", "1 ", "a"}) {
    std::string text;
    while (text.size() + piece.size() <= kLongestFormula)
      text += piece;
    try_text(text, seen);
    try_text(text + "1", seen);
  }
  EXPECT_GT(seen.read, 0);
}

}  // namespace
}  // namespace sparewright::formula
