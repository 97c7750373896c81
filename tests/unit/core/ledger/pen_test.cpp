// What a stage writes with a pen.
#include "core/ledger/pen.hpp"

#include <array>
#include <cmath>
#include <limits>

#include <gtest/gtest.h>

#include "core/ledger/ledger.hpp"
#include "stages.hpp"

namespace sparewright::ledger {
namespace {

using quantity::Kind;
using tests::length;
using tests::size_stage;
using tests::stage;

constexpr double kNotANumber = std::numeric_limits<double>::quiet_NaN();

// What one stage, given the name "s", makes of a ledger.
Ledger with(std::function<void(Pen&)> work, std::vector<Stage> others = {}) {
  Ledger ledger;
  others.push_back(stage("s", std::move(work)));
  ledger.declare(std::move(others));
  return ledger;
}

TEST(Root, CarriesWhatItIsGiven) {
  Ledger ledger = with([](Pen& pen) {
    EXPECT_EQ(pen.stage(), "s");
    Root root = length(15.875, {{"b", 2.0, 9.0}, {"a", 1.0}, {"b", 1.0}, {"c", 0.0}});
    root.bound = Bound::kAtLeast;
    root.origin = Origin::kStandard;
    root.typed = "5/8";
    root.source = "a book";
    pen.root("size", root);
  });
  const Figure f = ledger.get("s/size");
  EXPECT_EQ(f.name, "s/size");
  EXPECT_EQ(f.kind, Kind::kLength);
  EXPECT_EQ(f.value, 15.875);
  EXPECT_EQ(f.shares, (Shares{{"a", 1.0}, {"b", 3.0, 9.0}}));
  EXPECT_EQ(f.bound, Bound::kAtLeast);
  EXPECT_EQ(f.origin, Origin::kStandard);
  EXPECT_EQ(f.typed, "5/8");
  EXPECT_EQ(f.source, "a book");
  EXPECT_TRUE(f.inputs.empty());
  EXPECT_TRUE(f.known());
}

TEST(Root, WithoutAFiniteValueOrShareIsNotKnownAndNamesItself) {
  Ledger ledger = with([](Pen& pen) {
    Root none = length(0.0);
    none.value.reset();
    none.shares = {{"a", 1.0}};
    none.bound = Bound::kAtMost;
    pen.root("none", none);
    pen.root("infinite", length(std::numeric_limits<double>::infinity()));
    pen.root("not a number", length(kNotANumber));
    pen.root("share", length(1.0, {{"a", kNotANumber}}));
  });
  for (const std::string name : {"s/none", "s/infinite", "s/not a number", "s/share"}) {
    const Figure f = ledger.get(name);
    EXPECT_EQ(f.missing, std::vector<std::string>{name});
    EXPECT_TRUE(std::isnan(f.value));
    EXPECT_TRUE(f.shares.empty());
    EXPECT_EQ(f.bound, Bound::kExact);
  }
}

TEST(Values, MinusZeroAndNotANumberAreCanonical) {
  Ledger ledger = with([](Pen& pen) {
    pen.root("root", length(-0.0));
    pen.linear("linear", Kind::kLength, "", -0.0, {});
    pen.decide("decision", {.value = -0.0});
    pen.linear("unknown", Kind::kLength, "", -std::nan("7"), {});
  });
  for (const std::string name : {"s/root", "s/linear", "s/decision"})
    EXPECT_FALSE(std::signbit(ledger.get(name).value));
  Figure unknown = ledger.get("s/unknown");
  EXPECT_TRUE(std::isnan(unknown.value));
  EXPECT_FALSE(std::signbit(unknown.value));
}

TEST(Work, CarriesValueSlopesSharesAndTrail) {
  Ledger ledger = with([](Pen& pen) {
    const Figure& bore = pen.root("bore", length(16.0, {{"micrometer", 0.004}, {"bore scatter", 0.003}}));
    const Figure& pin = pen.root("pin", length(15.9, {{"micrometer", 0.004}}));
    const Figure& gap = pen.work(
        "gap", Kind::kLength, "bore less pin", [](auto b, auto p) { return b - p; }, bore, pin);
    EXPECT_EQ(&pen.ask("s/gap"), &gap);  // a stage sees its own figures
  });
  const Figure gap = ledger.get("s/gap");
  EXPECT_DOUBLE_EQ(gap.value, 16.0 - 15.9);
  EXPECT_EQ(gap.shares, (Shares{{"bore scatter", 0.003}}));  // the micrometer cancels
  EXPECT_EQ(gap.formula, "bore less pin");
  EXPECT_EQ(gap.inputs, (std::vector<base::Name>{"s/bore", "s/pin"}));
  EXPECT_EQ(gap.origin, Origin::kWorked);
}

TEST(Work, ACommonInstrumentErrorStaysInTheMeanAndLeavesTheDifference) {
  Ledger ledger = with([](Pen& pen) {
    const Figure& a = pen.root("a", length(10.02, {{"caliper zero", 0.01}, {"first", 0.003}}));
    const Figure& b = pen.root("b", length(10.00, {{"caliper zero", 0.01}, {"second", 0.003}}));
    pen.work(
        "mean", Kind::kLength, "mean", [](auto x, auto y) { return (x + y) / 2.0; }, a, b);
    pen.work(
        "difference", Kind::kLength, "difference", [](auto x, auto y) { return x - y; }, a, b);
    pen.work(
        "ratio", Kind::kNumber, "ratio", [](auto x, auto y) { return x / y; }, a, b);
  });
  const Figure mean = ledger.get("s/mean");
  const Figure difference = ledger.get("s/difference");
  EXPECT_DOUBLE_EQ(mean.u(), std::sqrt(0.01 * 0.01 + 2.0 * 0.0015 * 0.0015));
  EXPECT_DOUBLE_EQ(difference.u(), std::sqrt(2.0) * 0.003);
  EXPECT_DOUBLE_EQ(covariance(mean.shares, difference.shares), 0.0);
  EXPECT_LT(ledger.get("s/ratio").u(), 0.001);
}

TEST(Work, TwiceLessOnceIsOnceBitForBit) {
  Ledger ledger = with([](Pen& pen) {
    const Figure& x = pen.root("x", length(10.1, {{"a", 0.1}, {"b", 1.0 / 3.0}, {"c", 7e-17}}));
    pen.work(
        "again", Kind::kLength, "2x - x", [](auto v) { return 2.0 * v - v; }, x);
    const Figure& twice = pen.work(
        "twice", Kind::kLength, "2x", [](auto v) { return v + v; }, x);
    pen.work(
        "back", Kind::kLength, "2x - x", [](auto t, auto v) { return t - v; }, twice, x);
    pen.work(
        "nothing", Kind::kLength, "x - x", [](auto v, auto w) { return v - w; }, x, x);
  });
  const Figure x = ledger.get("s/x");
  EXPECT_EQ(ledger.get("s/again").shares, x.shares);
  EXPECT_EQ(ledger.get("s/back").shares, x.shares);
  EXPECT_EQ(ledger.get("s/back").u(), x.u());
  EXPECT_TRUE(ledger.get("s/nothing").shares.empty());
}

TEST(Work, IsNotRunWhereAnInputIsNotKnown) {
  bool ran = false;
  Ledger ledger = with([&ran](Pen& pen) {
    const Figure& here = pen.root("here", length(1.0));
    const Figure& first = pen.ask("no stage/first");
    const Figure& second = pen.ask("no stage/second");
    pen.work(
        "gap", Kind::kLength, "",
        [&ran](auto a, auto b, auto c) {
          ran = true;
          return a + b + c;
        },
        second, here, first);
  });
  EXPECT_EQ(ledger.get("s/gap").missing, (std::vector<std::string>{"no stage/second", "no stage/first"}));
  EXPECT_TRUE(std::isnan(ledger.get("s/gap").value));
  EXPECT_FALSE(ran);
}

TEST(Work, ThatGivesNoFiniteNumberIsNotKnownAndNamesItself) {
  Ledger ledger = with([](Pen& pen) {
    const Figure& zero = pen.root("zero", length(0.0, {{"a", 1.0}}));
    const auto reciprocal = [](auto x) { return 1.0 / x; };
    const auto root = [](auto x) {
      using std::sqrt;
      return sqrt(x);
    };
    const Figure& inverse = pen.work("inverse", Kind::kNumber, "", reciprocal, zero);
    pen.work("steep", Kind::kNumber, "", root, zero);  // the value is 0, the slope infinite
    pen.work(
        "after", Kind::kNumber, "", [](auto x) { return 0.0 * x; }, inverse);
  });
  EXPECT_EQ(ledger.get("s/inverse").missing, (std::vector<std::string>{"s/inverse"}));
  EXPECT_EQ(ledger.get("s/steep").missing, (std::vector<std::string>{"s/steep"}));
  EXPECT_EQ(ledger.get("s/after").missing, (std::vector<std::string>{"s/inverse"}));
}

TEST(Work, BoundsGoThroughSumsAndDifferences) {
  Ledger ledger = with([](Pen& pen) {
    Root worn = length(9.9);
    worn.bound = Bound::kAtLeast;
    const Figure& pin = pen.root("pin", worn);
    const Figure& other = pen.root("other", worn);
    const Figure& sound = pen.root("sound", length(10.0));
    const auto plus = [](auto a, auto b) { return a + b; };
    const auto less = [](auto a, auto b) { return a - b; };
    const auto greater = [](auto a, auto b) { return max(a, b); };
    pen.work("sum", Kind::kLength, "", plus, pin, other);
    pen.work("over", Kind::kLength, "", less, pin, sound);
    pen.work("under", Kind::kLength, "", less, sound, pin);
    pen.work("between", Kind::kLength, "", less, pin, other);
    pen.work("greater", Kind::kLength, "", greater, pin,
             sound);  // flat in the pin, which may be greater in truth
    const std::array<Term, 1> terms{Term{&pin, -3.0}};
    pen.linear("thrice", Kind::kLength, "", -3.0 * pin.value, terms);
    pen.decide("choice", {.kind = Kind::kLength, .value = 10.0, .inputs = {&pin}});
  });
  EXPECT_EQ(ledger.get("s/sum").bound, Bound::kAtLeast);
  EXPECT_EQ(ledger.get("s/over").bound, Bound::kAtLeast);
  EXPECT_EQ(ledger.get("s/under").bound, Bound::kAtMost);
  EXPECT_EQ(ledger.get("s/between").bound, Bound::kNeither);
  EXPECT_EQ(ledger.get("s/greater").bound, Bound::kNeither);
  EXPECT_EQ(ledger.get("s/thrice").bound, Bound::kAtMost);
  EXPECT_EQ(ledger.get("s/choice").bound, Bound::kExact);
}

TEST(Linear, TakesValueAndSlopesAsTheyAre) {
  Ledger ledger = with([](Pen& pen) {
    const Figure& a = pen.root("a", length(1.0, {{"a", 0.1}}));
    const Figure& b = pen.root("b", length(2.0, {{"b", 0.2}}));
    const std::array<Term, 2> terms{Term{&a, 2.0}, Term{&b, -3.0}};
    pen.linear("y", Kind::kArea, "fitted", 42.0, terms, "a method");
    const std::array<Term, 1> steep{Term{&a, std::numeric_limits<double>::infinity()}};
    pen.linear("steep", Kind::kArea, "", 42.0, steep);
  });
  const Figure y = ledger.get("s/y");
  EXPECT_EQ(y.value, 42.0);
  EXPECT_EQ(y.kind, Kind::kArea);
  EXPECT_EQ(y.shares, (Shares{{"a", 0.2}, {"b", -3.0 * 0.2}}));
  EXPECT_EQ(y.source, "a method");
  EXPECT_EQ(ledger.get("s/steep").missing, (std::vector<std::string>{"s/steep"}));
}

TEST(Exact, IsAsLinearWithoutTheBounds) {
  Ledger ledger = with([](Pen& pen) {
    Root low = length(9.0, {{"low", 0.2}});
    low.bound = Bound::kAtLeast;
    Root high = length(11.0, {{"high", 0.4}});
    high.bound = Bound::kAtMost;
    const std::array terms{Term{&pen.root("low", low), 0.5}, Term{&pen.root("high", high), 0.5}};
    pen.linear("middle, bounded", Kind::kLength, "", 10.0, terms);
    pen.exact("middle", Kind::kLength, "between", 10.0, terms, "a book");
  });
  EXPECT_EQ(ledger.get("s/middle, bounded").bound, Bound::kNeither);
  const Figure middle = ledger.get("s/middle");
  EXPECT_EQ(middle.bound, Bound::kExact);
  EXPECT_EQ(middle.value, 10.0);
  EXPECT_EQ(middle.formula, "between");
  EXPECT_EQ(middle.source, "a book");
  EXPECT_NEAR(middle.u(), std::hypot(0.1, 0.2), 1e-15);
  EXPECT_EQ(middle.inputs.size(), 2U);
}

TEST(Decide, HasNoSlopeAndSaysWhatWouldTurnIt) {
  Ledger ledger = with([](Pen& pen) {
    const Figure& limit = pen.root("limit", length(600.0, {{"a", 20.0}}));
    pen.decide("speed", {.kind = Kind::kRotationalSpeed,
                         .value = 560.0,
                         .words = "the next lower speed it has",
                         .inputs = {&limit},
                         .source = "the shop",
                         .flips_after = sigmas_to(limit, 560.0)});
    pen.decide("blind", {.value = 1.0, .inputs = {&pen.ask("nowhere/else")}});
    pen.decide("none", {.value = kNotANumber});
  });
  const Figure speed = ledger.get("s/speed");
  EXPECT_EQ(speed.value, 560.0);
  EXPECT_TRUE(speed.shares.empty());
  EXPECT_EQ(speed.origin, Origin::kChoice);
  EXPECT_EQ(speed.flips_after, 2.0);
  EXPECT_EQ(speed.inputs, (std::vector<base::Name>{"s/limit"}));
  EXPECT_EQ(ledger.get("s/blind").missing, (std::vector<std::string>{"nowhere/else"}));
  EXPECT_EQ(ledger.get("s/none").missing, (std::vector<std::string>{"s/none"}));
}

TEST(Decide, NothingTurnsWhatRestsOnCertainty) {
  Figure certain;
  certain.value = 5.0;
  EXPECT_TRUE(std::isinf(sigmas_to(certain, 4.0)));
}

TEST(Need, EndsTheStageAndNamesTheRootThroughSeveralStages) {
  std::vector<Stage> stages;
  Root unread;
  unread.kind = Kind::kLength;
  stages.push_back(size_stage("reading", unread));
  stages.push_back(stage("first", [](Pen& pen) {
    pen.root("before", length(1.0));
    const Figure& size = pen.need("reading/size");
    pen.work(
        "after", Kind::kLength, "", [](auto x) { return x; }, size);
  }));
  stages.push_back(stage("second", [](Pen& pen) {
    pen.work(
        "copy", Kind::kLength, "", [](auto x) { return x; }, pen.ask("first/after"));
  }));
  stages.push_back(stage("third", [](Pen& pen) {
    pen.need("second/copy");
    pen.root("never", length(1.0));
  }));
  Ledger ledger;
  ledger.declare(std::move(stages));
  const std::vector<std::string> root{"reading/size"};
  EXPECT_TRUE(ledger.get("first/before").known());  // what was written before the end stays
  EXPECT_EQ(ledger.get("first/after").missing, root);
  EXPECT_EQ(ledger.get("first/any other").missing, root);
  EXPECT_EQ(ledger.get("second/copy").missing, root);
  EXPECT_EQ(ledger.get("third/never").missing, root);
}

TEST(Ask, ANameThatIsNotThereIsItsOwnMissingOne) {
  Ledger ledger = with([](Pen& pen) { pen.root("size", length(1.0)); });
  EXPECT_EQ(ledger.get("s/other").missing, (std::vector<std::string>{"s/other"}));
  EXPECT_EQ(ledger.get("nobody/size").missing, (std::vector<std::string>{"nobody/size"}));
  EXPECT_EQ(ledger.get("s").missing, (std::vector<std::string>{"s"}));
  EXPECT_EQ(ledger.get("").missing, (std::vector<std::string>{""}));
}

TEST(Names, AreThoseOfTheStageInOrder) {
  std::vector<std::string> found;
  std::vector<std::string> nobody{"x"};
  Ledger ledger = with(
      [&](Pen& pen) {
        found = pen.names("other");
        nobody = pen.names("nobody");
        pen.root("size", length(static_cast<double>(found.size())));
      },
      {stage("other", [](Pen& pen) {
        pen.root("b", length(1.0));
        pen.root("a", length(1.0));
        pen.need("nobody/size");
        pen.root("c", length(1.0));
      })});
  EXPECT_EQ(ledger.get("s/size").value, 2.0);
  EXPECT_EQ(found, (std::vector<std::string>{"other/a",
                                             "other/b"}));  // what an early end left unwritten is not there
  EXPECT_TRUE(nobody.empty());
}

TEST(Publish, HandsAnyValueToOtherStages) {
  const std::string* of_right_type = nullptr;
  const int* of_wrong_type = nullptr;
  const std::string* of_nobody = nullptr;
  Ledger ledger = with(
      [&](Pen& pen) {
        of_right_type = pen.value<std::string>("other/text");
        of_wrong_type = pen.value<int>("other/text");
        of_nobody = pen.value<std::string>("nobody/text");
        pen.root("size", length(static_cast<double>(pen.need_value<std::string>("other/text").size())));
      },
      {stage("other",
             [](Pen& pen) { pen.publish("text", std::string("four"), base::Hasher().add("four").done()); })});
  EXPECT_EQ(ledger.get("s/size").value, 4.0);
  ASSERT_NE(of_right_type, nullptr);
  EXPECT_EQ(*of_right_type, "four");
  EXPECT_EQ(of_wrong_type, nullptr);
  EXPECT_EQ(of_nobody, nullptr);
  EXPECT_EQ(*ledger.value<std::string>("other/text"), "four");
  EXPECT_EQ(ledger.value<int>("other/text"), nullptr);
  EXPECT_EQ(ledger.value<int>("other/none"), nullptr);
}

TEST(Publish, WhatIsNeededAndNotThereNamesWhyNot) {
  const auto wanting = [](const std::string& name, auto type) {
    return [name, type](Pen& pen) {
      pen.need_value<decltype(type)>(name);
      pen.root("size", length(1.0));
    };
  };
  Ledger ledger;
  ledger.declare({stage("ended",
                        [](Pen& pen) {
                          pen.need("nobody/size");
                          pen.publish("value", 1, {});
                        }),
                  stage("other", [](Pen& pen) { pen.publish("value", 1, {}); }),
                  stage("a", wanting("ended/value", 0)), stage("b", wanting("other/value", 0.0)),
                  stage("c", wanting("other/nothing", 0)), stage("d", wanting("other/value", 0))});
  EXPECT_EQ(ledger.get("a/size").missing, (std::vector<std::string>{"nobody/size"}));
  EXPECT_EQ(ledger.get("b/size").missing, (std::vector<std::string>{"other/value"}));
  EXPECT_EQ(ledger.get("c/size").missing, (std::vector<std::string>{"other/nothing"}));
  EXPECT_TRUE(ledger.get("d/size").known());
}

TEST(Publish, AStageDoesNotWaitForItsOwnValue) {
  Ledger ledger = with([](Pen& pen) {
    EXPECT_EQ(pen.value<int>("s/value"), nullptr);
    EXPECT_FALSE(pen.ask("s/later").known());
    EXPECT_EQ(pen.ask("s/later").missing, (std::vector<std::string>{"s/later"}));
    pen.root("later", length(1.0));
  });
  EXPECT_TRUE(ledger.get("s/later").known());
}

TEST(StateAndQuery, AreKeptAsWritten) {
  Ledger ledger = with([](Pen& pen) {
    pen.state({.check = "geometry", .subject = "slot", .state = State::kNo, .reason = "it lies in air"});
    pen.query({.id = "decimal place/bore",
               .about = "s/bore",
               .says = "6.25, and its mate is 0.625",
               .serious = true});
  });
  ASSERT_EQ(ledger.verdicts().size(), 1U);
  EXPECT_EQ(ledger.verdicts()[0].reason, "it lies in air");
  ASSERT_EQ(ledger.queries().size(), 1U);
  EXPECT_TRUE(ledger.queries()[0].serious);
}

TEST(PenDeathTest, AFigureOrValueIsWrittenOnce) {
  testing::FLAGS_gtest_death_test_style = "threadsafe";
  EXPECT_DEATH(with([](Pen& pen) {
                 pen.root("size", length(1.0));
                 pen.root("size", length(2.0));
               }).settle(),
               "writes each of its figures once");
  EXPECT_DEATH(with([](Pen& pen) {
                 pen.publish("size", 1, {});
                 pen.publish("size", 2, {});
               }).settle(),
               "publishes each of its values once");
}

}  // namespace
}  // namespace sparewright::ledger
