// Verdicts at the edges: NO below the limit, CLOSE within U of it, OK from U on.
#include <cmath>
#include <optional>
#include <ostream>
#include <string>

#include <gtest/gtest.h>

#include "core/ledger/ledger.hpp"
#include "stages.hpp"

namespace sparewright::ledger {
namespace {

using quantity::Kind;
using tests::length;
using tests::stage;

// A figure or limit: its value, its own uncertainty, its bound. No value: not known.
struct Number {
  std::optional<double> value;
  double u = 0.0;
  Bound bound = Bound::kExact;
};

struct Judged {
  State state;
  Verdict verdict;
  Figure margin;
};

Judged judged(const Number& figure, const std::optional<Number>& low, const std::optional<Number>& high,
              bool close_at_best = false, Kind kind = Kind::kDiameter) {
  State state = State::kNotKnown;
  Ledger ledger;
  ledger.declare({stage("check", [&](Pen& pen) {
    const auto written = [&](const std::string& local, const Number& n) -> const Figure& {
      Root root;
      root.kind = kind;
      root.value = n.value;
      root.shares = {{local, n.u}};
      root.bound = n.bound;
      return pen.root(local, root);
    };
    Judgement j;
    j.check = "fit";
    j.subject = "bore";
    j.figure = &written("figure", figure);
    if (low) j.low = &written("low", *low);
    if (high) j.high = &written("high", *high);
    j.reason = "because";
    j.source = "a book";
    j.todo = "mend it";
    j.close_at_best = close_at_best;
    state = pen.judge(j);
  })});
  ledger.settle();
  return {state, ledger.verdicts().at(0), ledger.get("check/margin")};
}

constexpr double kNormal = 1.959963984540054;  // 19 in 20 of the normal distribution
constexpr double kJustSeen = 1e-13;            // more than the last bits of sizes about 10

TEST(Judge, OneLimitAtTheEdges) {
  const Number low{10.0};
  EXPECT_EQ(judged({10.0 - kJustSeen}, low, {}).state, State::kNo);
  EXPECT_EQ(judged({10.0}, low, {}).state, State::kOk);          // m = 0 and U = 0: not CLOSE
  EXPECT_EQ(judged({10.0, 0.1}, low, {}).state, State::kClose);  // m = 0 < U
  EXPECT_EQ(judged({9.999, 0.1}, low, {}).state, State::kNo);    // m < 0, however near
  EXPECT_EQ(judged({10.0 + 0.999 * kNormal, 1.0}, low, {}).state, State::kClose);
  EXPECT_EQ(judged({10.0 + 1.001 * kNormal, 1.0}, low, {}).state, State::kOk);
  const Number high{10.0};
  EXPECT_EQ(judged({10.0 + kJustSeen}, {}, high).state, State::kNo);
  EXPECT_EQ(judged({10.0}, {}, high).state, State::kOk);
  EXPECT_EQ(judged({9.0, 1.0}, {}, high).state, State::kClose);
  EXPECT_EQ(judged({8.0, 1.0}, {}, high).state, State::kOk);
}

TEST(Judge, AtExactlyUIsOk) {
  const double U = expanded_uncertainty({{"figure", 1.0}});
  EXPECT_EQ(judged({U, 1.0}, Number{0.0}, {}).state, State::kOk);
  EXPECT_EQ(judged({U - kJustSeen, 1.0}, Number{0.0}, {}).state, State::kClose);
}

// 0.1 + 0.2 is not 0.3, but on paper it is.
TEST(Judge, LastBitsAreNeitherAMarginNorADoubt) {
  const double sum = 0.1 + 0.2;
  ASSERT_NE(sum, 0.3);
  const Judged j = judged({0.3}, Number{sum}, Number{sum});
  EXPECT_EQ(j.state, State::kOk);
  EXPECT_EQ(j.margin.value, 0.0);
  const double U = expanded_uncertainty({{"figure", 1.0}});
  EXPECT_EQ(judged({std::nextafter(U, 0.0), 1.0}, Number{0.0}, {}).state, State::kOk);
}

TEST(Judge, AMarginOfMinusZeroIsZero) {
  EXPECT_EQ(judged({-0.0}, Number{0.0}, {}).state, State::kOk);
  EXPECT_FALSE(std::signbit(judged({-0.0}, Number{0.0}, {}).margin.value));
}

TEST(Judge, TheCheckItselfMayHoldItClose) {
  EXPECT_EQ(judged({20.0}, Number{10.0}, {}, true).state, State::kClose);
  EXPECT_EQ(judged({9.0}, Number{10.0}, {}, true).state, State::kNo);
}

TEST(Judge, WritesTheMarginAndTheVerdict) {
  const Judged j = judged({12.0, 0.1}, Number{10.0, 0.2}, Number{15.0});
  EXPECT_EQ(j.margin.value, 2.0);
  EXPECT_EQ(j.margin.kind, Kind::kLength);  // a diameter less a diameter
  EXPECT_DOUBLE_EQ(j.margin.u(), std::hypot(0.1, 0.2));
  EXPECT_EQ(j.margin.formula, "over the least allowed");
  EXPECT_EQ(j.margin.inputs, (std::vector<base::Name>{"check/figure", "check/low"}));
  EXPECT_EQ(j.verdict.check, "fit");
  EXPECT_EQ(j.verdict.subject, "bore");
  EXPECT_EQ(j.verdict.figure, "check/figure");
  EXPECT_EQ(j.verdict.low, "check/low");
  EXPECT_EQ(j.verdict.high, "check/high");
  EXPECT_EQ(j.verdict.margin, "check/margin");
  EXPECT_EQ(j.verdict.reason, "because");
  EXPECT_EQ(j.verdict.source, "a book");
  EXPECT_EQ(j.verdict.todo, "");  // nothing is to be done
  EXPECT_TRUE(j.verdict.missing.empty());
  EXPECT_EQ(judged({9.0}, Number{10.0}, {}).verdict.todo, "mend it");
  EXPECT_EQ(judged({10.0, 1.0}, Number{10.0}, {}).verdict.todo, "mend it");
}

TEST(Judge, TheHighMarginIsCountedDownwards) {
  const Judged j = judged({14.0}, Number{10.0}, Number{15.0});
  EXPECT_EQ(j.margin.value, 1.0);
  EXPECT_EQ(j.margin.formula, "under the most allowed");
  EXPECT_EQ(j.margin.inputs, (std::vector<base::Name>{"check/high", "check/figure"}));
}

TEST(Judge, OfTwoEqualVerdictsTheSmallerMarginCounts) {
  EXPECT_EQ(judged({12.0}, Number{10.0}, Number{15.0}).margin.value, 2.0);
  EXPECT_EQ(judged({14.0}, Number{10.0}, Number{15.0}).margin.value, 1.0);
  EXPECT_EQ(judged({12.5}, Number{10.0}, Number{15.0}).margin.formula, "over the least allowed");
  EXPECT_EQ(judged({20.0}, Number{30.0}, Number{15.0}).margin.value, -10.0);  // both NO
}

TEST(Judge, TheWorseVerdictCountsThoughItsMarginBeTheLarger) {
  // 1.0 over the least, known well; 2.0 under the most, which is known badly
  const Judged j = judged({11.0}, Number{10.0}, Number{13.0, 2.0});
  EXPECT_EQ(j.state, State::kClose);
  EXPECT_EQ(j.margin.value, 2.0);
  // NO outweighs what is not known, and that outweighs CLOSE
  EXPECT_EQ(judged({11.0}, Number{12.0}, Number{std::nullopt}).state, State::kNo);
  const Judged unknown = judged({11.0, 5.0}, Number{10.0}, Number{std::nullopt});
  EXPECT_EQ(unknown.state, State::kNotKnown);
  EXPECT_EQ(unknown.verdict.missing, (std::vector<std::string>{"check/high"}));
}

TEST(Judge, WhatIsNotKnownIsNamed) {
  for (const bool has_low : {true, false}) {
    const std::optional<Number> limit = Number{10.0};
    const Judged j = judged({std::nullopt}, has_low ? limit : std::nullopt, has_low ? std::nullopt : limit);
    EXPECT_EQ(j.state, State::kNotKnown);
    EXPECT_EQ(j.verdict.missing, (std::vector<std::string>{"check/figure"}));
    EXPECT_EQ(j.margin.missing, (std::vector<std::string>{"check/figure"}));
    EXPECT_EQ(j.verdict.todo, "mend it");
  }
  EXPECT_EQ(judged({std::nullopt}, Number{10.0}, Number{12.0}).state, State::kNotKnown);
  EXPECT_EQ(judged({11.0}, Number{std::nullopt}, Number{12.0}).state, State::kNotKnown);
}

struct OneSided {
  Bound figure;
  Bound low;
  double value;  // the low limit is 10
  State state;
};

void PrintTo(const OneSided& row, std::ostream* out) {
  *out << name_of(row.figure) << " " << row.value << " against " << name_of(row.low) << " 10";
}

class OneSidedMargin : public testing::TestWithParam<OneSided> {};

TEST_P(OneSidedMargin, DecidesOnItsOwnSideOnly) {
  const OneSided& row = GetParam();
  const Judged j = judged({row.value, 0.1, row.figure}, Number{10.0, 0.0, row.low}, {});
  EXPECT_EQ(j.state, row.state);
  EXPECT_EQ(j.verdict.missing.empty(), row.state != State::kNotKnown);
}

const OneSided kOneSided[] = {
    // at least so much: more than enough is enough, too little may in truth be enough
    {Bound::kAtLeast, Bound::kExact, 11.0, State::kOk},
    {Bound::kAtLeast, Bound::kExact, 10.1, State::kClose},
    {Bound::kAtLeast, Bound::kExact, 9.0, State::kNotKnown},
    // at most so much: too little is too little, enough may in truth not be
    {Bound::kAtMost, Bound::kExact, 11.0, State::kNotKnown},
    {Bound::kAtMost, Bound::kExact, 10.0, State::kNotKnown},
    {Bound::kAtMost, Bound::kExact, 9.0, State::kNo},
    // a limit that is bounded counts the other way round
    {Bound::kExact, Bound::kAtLeast, 11.0, State::kNotKnown},
    {Bound::kExact, Bound::kAtLeast, 9.0, State::kNo},
    {Bound::kExact, Bound::kAtMost, 11.0, State::kOk},
    {Bound::kExact, Bound::kAtMost, 9.0, State::kNotKnown},
    {Bound::kAtLeast, Bound::kAtMost, 11.0, State::kOk},
    {Bound::kAtLeast, Bound::kAtLeast, 11.0, State::kNotKnown},
    {Bound::kAtLeast, Bound::kAtLeast, 9.0, State::kNotKnown},
    {Bound::kNeither, Bound::kExact, 11.0, State::kNotKnown},
    {Bound::kNeither, Bound::kExact, 9.0, State::kNotKnown},
};
INSTANTIATE_TEST_SUITE_P(Bounds, OneSidedMargin, testing::ValuesIn(kOneSided));

TEST(Judge, WhatIsBoundedIsNamedWhereItKeepsTheVerdictOpen) {
  const Judged j = judged({9.0, 0.0, Bound::kAtLeast}, Number{10.0}, {});
  EXPECT_EQ(j.verdict.missing, (std::vector<std::string>{"check/figure"}));
  const Judged both = judged({9.0, 0.0, Bound::kAtLeast}, Number{8.0, 0.0, Bound::kAtLeast}, {});
  EXPECT_EQ(both.verdict.missing, (std::vector<std::string>{"check/figure", "check/low"}));
}

TEST(Judge, ABoundedFigureBetweenTwoLimits) {
  // "at least 12" between 10 and 15: over the least for sure, under the most nobody knows, though it is
  // nearer to the least
  const Judged j = judged({12.0, 0.0, Bound::kAtLeast}, Number{10.0}, Number{15.0});
  EXPECT_EQ(j.state, State::kNotKnown);
  EXPECT_EQ(j.margin.formula, "under the most allowed");
  EXPECT_EQ(judged({16.0, 0.0, Bound::kAtLeast}, Number{10.0}, Number{15.0}).state, State::kNo);
  EXPECT_EQ(judged({9.0, 0.0, Bound::kAtLeast}, Number{10.0}, Number{15.0}).state, State::kNotKnown);
}

TEST(Judge, AMarginOfTemperaturesIsADifference) {
  EXPECT_EQ(judged({300.0}, Number{290.0}, {}, false, Kind::kTemperature).margin.kind,
            Kind::kTemperatureDifference);
  EXPECT_EQ(judged({300.0}, Number{290.0}, {}, false, Kind::kCoordinate).margin.kind, Kind::kLength);
  EXPECT_EQ(judged({300.0}, Number{290.0}, {}, false, Kind::kForce).margin.kind, Kind::kForce);
}

TEST(Judge, ACommonCauseCancelsInTheMargin) {
  Ledger ledger;
  ledger.declare({stage("check", [](Pen& pen) {
    const Figure& bore = pen.root("bore", length(16.02, {{"micrometer", 0.05}, {"bore", 0.001}}));
    const Figure& pin = pen.root("pin", length(16.00, {{"micrometer", 0.05}, {"pin", 0.001}}));
    pen.judge({.check = "fit", .subject = "bore", .figure = &bore, .low = &pin});
  })});
  EXPECT_EQ(ledger.verdicts().at(0).state, State::kOk);
  EXPECT_NEAR(ledger.get("check/margin").u(), 0.001 * std::sqrt(2.0), 1e-12);
}

TEST(Judge, OneStageMayJudgeTwiceUnderTwoNames) {
  Ledger ledger;
  ledger.declare({stage("check", [](Pen& pen) {
    const Figure& size = pen.root("size", length(12.0));
    const Figure& least = pen.root("least", length(10.0));
    const Figure& most = pen.root("most", length(11.0));
    EXPECT_EQ(pen.judge({.check = "least", .figure = &size, .low = &least, .margin = "over"}), State::kOk);
    EXPECT_EQ(pen.judge({.check = "most", .figure = &size, .high = &most, .margin = "under"}), State::kNo);
  })});
  const auto verdicts = ledger.verdicts();
  ASSERT_EQ(verdicts.size(), 2U);
  EXPECT_EQ(verdicts[0].margin, "check/over");
  EXPECT_EQ(verdicts[1].margin, "check/under");
}

}  // namespace
}  // namespace sparewright::ledger
