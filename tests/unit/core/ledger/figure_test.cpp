#include "core/ledger/figure.hpp"

#include <cmath>
#include <functional>
#include <limits>
#include <set>

#include <gtest/gtest.h>

#include "core/ledger/verdict.hpp"

namespace sparewright::ledger {
namespace {

constexpr Bound kBounds[] = {Bound::kExact, Bound::kAtLeast, Bound::kAtMost, Bound::kNeither};

TEST(Bounds, KeepOrTurnWithTheSignOfTheSlope) {
  EXPECT_EQ(scaled(Bound::kAtLeast, 2.0), Bound::kAtLeast);
  EXPECT_EQ(scaled(Bound::kAtLeast, -2.0), Bound::kAtMost);
  EXPECT_EQ(scaled(Bound::kAtMost, -2.0), Bound::kAtLeast);
  EXPECT_EQ(scaled(Bound::kNeither, -2.0), Bound::kNeither);
  for (const double slope : {-2.0, 0.0, 2.0})
    EXPECT_EQ(scaled(Bound::kExact, slope), Bound::kExact);
  // flat here, but the truth lies elsewhere
  EXPECT_EQ(scaled(Bound::kAtLeast, 0.0), Bound::kNeither);
  EXPECT_EQ(scaled(Bound::kAtMost, 0.0), Bound::kNeither);
}

TEST(Bounds, JoinInAnyOrder) {
  for (const Bound a : kBounds) {
    EXPECT_EQ(joined(a, Bound::kExact), a);
    EXPECT_EQ(joined(a, a), a);
    EXPECT_EQ(joined(a, Bound::kNeither), Bound::kNeither);
    for (const Bound b : kBounds) {
      EXPECT_EQ(joined(a, b), joined(b, a));
      for (const Bound c : kBounds)
        EXPECT_EQ(joined(joined(a, b), c), joined(a, joined(b, c)));
    }
  }
  EXPECT_EQ(joined(Bound::kAtLeast, Bound::kAtMost), Bound::kNeither);
}

TEST(Words, OfOriginsBoundsAndStates) {
  EXPECT_EQ(name_of(Origin::kReading), "reading");
  EXPECT_EQ(name_of(Origin::kStandard), "standard");
  EXPECT_EQ(name_of(Origin::kChoice), "choice");
  EXPECT_EQ(name_of(Origin::kDefault), "default");
  EXPECT_EQ(name_of(Origin::kWorked), "worked out");
  EXPECT_EQ(name_of(Bound::kExact), "");
  EXPECT_EQ(name_of(Bound::kAtLeast), "at least");
  EXPECT_EQ(name_of(Bound::kAtMost), "at most");
  EXPECT_EQ(name_of(Bound::kNeither), "not bounded");
  EXPECT_EQ(name_of(State::kOk), "OK");
  EXPECT_EQ(name_of(State::kClose), "CLOSE");
  EXPECT_EQ(name_of(State::kNo), "NO");
  EXPECT_EQ(name_of(State::kNotKnown), "NOT KNOWN");
}

// Changes of one field each; every one must show in the fingerprint, and all differently.
template <typename Thing>
void expect_all_different(const std::vector<std::function<void(Thing&)>>& changes) {
  std::set<base::Fingerprint> prints{fingerprint(Thing{})};
  for (const auto& change : changes) {
    Thing thing;
    change(thing);
    prints.insert(fingerprint(thing));
  }
  EXPECT_EQ(prints.size(), changes.size() + 1);
}

TEST(Fingerprints, OfFiguresSeeEveryField) {
  expect_all_different<Figure>({
      [](Figure& f) { f.name = "a"; },
      [](Figure& f) { f.kind = quantity::Kind::kLength; },
      [](Figure& f) { f.value = 1.0; },
      [](Figure& f) { f.value = std::nextafter(1.0, 2.0); },
      [](Figure& f) { f.value = std::numeric_limits<double>::quiet_NaN(); },
      [](Figure& f) {
        f.shares = {{"a", 1.0}};
      },
      [](Figure& f) {
        f.shares = {{"b", 1.0}};
      },
      [](Figure& f) {
        f.shares = {{"a", 1.0, 9.0}};
      },
      [](Figure& f) {
        f.shares = {{"a", 1.0}, {"b", 1.0}};
      },
      [](Figure& f) { f.bound = Bound::kAtLeast; },
      [](Figure& f) { f.origin = Origin::kReading; },
      [](Figure& f) { f.formula = "a"; },
      [](Figure& f) { f.inputs = {"a"}; },
      [](Figure& f) {
        f.inputs = {"a", "b"};
      },
      [](Figure& f) { f.source = "a"; },
      [](Figure& f) { f.typed = "a"; },
      [](Figure& f) { f.missing = {"a"}; },
      [](Figure& f) { f.flips_after = 0.0; },
      [](Figure& f) { f.flips_after = 1.0; },
  });
}

TEST(MadeEmpty, IsAsNewButForTheName) {
  Figure figure{.name = "bore",
                .kind = quantity::Kind::kLength,
                .value = 1.0,
                .shares = {{"a", 1.0}},
                .bound = Bound::kAtLeast,
                .origin = Origin::kChoice,
                .formula = "a",
                .inputs = {"a"},
                .source = "a",
                .typed = "a",
                .missing = {"a"},
                .flips_after = 1.0};
  make_empty(figure);
  EXPECT_EQ(fingerprint(figure), fingerprint(Figure{.name = "bore"}));
}

TEST(Fingerprints, HoldMinusZeroAndZeroEqualAndAllNotANumbers) {
  Figure zero;
  Figure minus_zero;
  minus_zero.value = -0.0;
  EXPECT_EQ(fingerprint(zero), fingerprint(minus_zero));
  zero.value = std::numeric_limits<double>::quiet_NaN();
  minus_zero.value = -std::nan("7");
  EXPECT_EQ(fingerprint(zero), fingerprint(minus_zero));
}

TEST(Fingerprints, OfVerdictsAndQueriesSeeEveryField) {
  expect_all_different<Verdict>({
      [](Verdict& v) { v.check = "a"; },
      [](Verdict& v) { v.subject = "a"; },
      [](Verdict& v) { v.state = State::kOk; },
      [](Verdict& v) { v.figure = "a"; },
      [](Verdict& v) { v.low = ""; },
      [](Verdict& v) { v.high = ""; },
      [](Verdict& v) { v.margin = "a"; },
      [](Verdict& v) { v.reason = "a"; },
      [](Verdict& v) { v.source = "a"; },
      [](Verdict& v) { v.todo = "a"; },
      [](Verdict& v) { v.missing = {"a"}; },
  });
  expect_all_different<Query>({
      [](Query& q) { q.id = "a"; },
      [](Query& q) { q.about = "a"; },
      [](Query& q) { q.says = "a"; },
      [](Query& q) { q.happens = "a"; },
      [](Query& q) { q.todo = "a"; },
      [](Query& q) { q.serious = true; },
      [](Query& q) { q.state = QueryState::kOverruled; },
      [](Query& q) { q.reason = "a"; },
  });
}

}  // namespace
}  // namespace sparewright::ledger
