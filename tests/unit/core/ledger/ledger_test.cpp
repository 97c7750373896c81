// When stages run, whom a figure belongs to, what replacements, circles and exceptions do.
#include "core/ledger/ledger.hpp"

#include <array>
#include <cmath>
#include <limits>
#include <map>
#include <optional>
#include <stdexcept>
#include <string>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "stages.hpp"

namespace sparewright::ledger {
namespace {

using quantity::Kind;
using tests::length;
using tests::seen;
using tests::size_stage;
using tests::stage;
using tests::sum;

// Counts the runs of each stage.
class Counted {
 public:
  Stage operator()(const std::string& name, std::function<void(Pen&)> work, std::uint64_t edition = 1) {
    return stage(
        name,
        [this, name, work = std::move(work)](Pen& pen) {
          ++runs[name];
          work(pen);
        },
        edition);
  }
  std::map<std::string, int> runs;
};

TEST(Running, IsOnDemandOnlyAsFarAsNeeded) {
  Counted counted;
  Ledger ledger;
  ledger.declare({counted("a", [](Pen& pen) { pen.root("x", length(1.0)); }),
                  counted("b", [](Pen& pen) { sum(pen, "x", {"a/x"}); }),
                  counted("c", [](Pen& pen) { sum(pen, "x", {"b/x"}); })});
  EXPECT_EQ(ledger.runs(), 0U);
  EXPECT_EQ(ledger.get("b/x").value, 1.0);
  EXPECT_EQ(counted.runs, (std::map<std::string, int>{{"a", 1}, {"b", 1}}));
  ledger.settle();
  EXPECT_EQ(ledger.runs(), 3U);
}

TEST(Running, NothingRunsWhenNothingChanged) {
  const auto stages = [] {
    return std::vector<Stage>{size_stage("a", length(1.0)), size_stage("b", length(2.0)),
                              stage("c",
                                    [](Pen& pen) {
                                      sum(pen, "x", {"a/size", "b/size", "nobody/size"});
                                      pen.names("a");
                                      pen.value<int>("b/none");
                                    }),
                              stage("circle 1", [](Pen& pen) { sum(pen, "x", {"circle 2/x"}); }),
                              stage("circle 2", [](Pen& pen) { sum(pen, "x", {"circle 1/x"}); })};
  };
  Ledger ledger;
  ledger.declare(stages());
  ledger.settle();
  const auto before = seen(ledger);
  const auto runs = ledger.runs();
  ledger.settle();
  ledger.declare(stages());
  ledger.settle();
  ledger.stage(size_stage("a", length(1.0)));
  ledger.restore("a/size");
  EXPECT_EQ(seen(ledger), before);
  EXPECT_EQ(ledger.runs(), runs);
}

TEST(Running, AnEqualAnswerStopsTheWave) {
  Counted counted;
  const auto stages = [&](double depth) {
    std::vector<Stage> all{size_stage("depth", length(depth))};
    all.push_back(counted("cuts", [](Pen& pen) {
      pen.decide("count", {.value = std::ceil(pen.need("depth/size").value / 2.0)});
    }));
    all.push_back(counted("sheet", [](Pen& pen) { sum(pen, "lines", {"cuts/count"}); }));
    return all;
  };
  Ledger ledger;
  ledger.declare(stages(5.0));
  EXPECT_EQ(ledger.get("sheet/lines").value, 3.0);
  ledger.declare(stages(5.5));  // still three cuts
  EXPECT_EQ(ledger.get("sheet/lines").value, 3.0);
  EXPECT_EQ(counted.runs, (std::map<std::string, int>{{"cuts", 2}, {"sheet", 1}}));
  ledger.declare(stages(6.5));
  EXPECT_EQ(ledger.get("sheet/lines").value, 4.0);
  EXPECT_EQ(counted.runs, (std::map<std::string, int>{{"cuts", 3}, {"sheet", 2}}));
}

TEST(Running, TheSmallestChangeOfANumberGoesThrough) {
  Ledger ledger;
  ledger.declare({size_stage("a", length(1.0)), stage("b", [](Pen& pen) { sum(pen, "x", {"a/size"}); })});
  EXPECT_EQ(ledger.get("b/x").value, 1.0);
  ledger.stage(size_stage("a", length(std::nextafter(1.0, 2.0))));
  EXPECT_EQ(ledger.get("b/x").value, std::nextafter(1.0, 2.0));
}

TEST(Running, AQuestionNoLongerAskedIsNoLongerHeeded) {
  Counted counted;
  const auto chooser = counted("choose", [](Pen& pen) {
    if (pen.need("switch/size").value > 0.0) {
      sum(pen, "x", {"first/size"});
    } else {
      sum(pen, "x", {"second/size"});
    }
  });
  Ledger ledger;
  ledger.declare({size_stage("switch", length(1.0)), size_stage("first", length(10.0)),
                  size_stage("second", length(20.0)), chooser});
  EXPECT_EQ(ledger.get("choose/x").value, 10.0);
  ledger.stage(size_stage("second", length(21.0)));
  EXPECT_EQ(ledger.get("choose/x").value, 10.0);
  EXPECT_EQ(counted.runs["choose"], 1);
  ledger.stage(size_stage("switch", length(-1.0)));
  EXPECT_EQ(ledger.get("choose/x").value, 21.0);
  ledger.stage(size_stage("first", length(11.0)));
  EXPECT_EQ(ledger.get("choose/x").value, 21.0);
  EXPECT_EQ(counted.runs["choose"], 2);
}

TEST(Running, ChangedNamesAndValuesAreAnswersToo) {
  Counted counted;
  const auto lister = counted("list", [](Pen& pen) {
    pen.root("count", length(static_cast<double>(pen.names("a").size())));
    const int* value = pen.value<int>("a/value");
    pen.root("value", length(value == nullptr ? -1.0 : *value));
  });
  const auto a = [](bool more, int value, std::uint64_t edition) {
    return stage(
        "a",
        [more, value](Pen& pen) {
          pen.root("x", length(1.0));
          if (more) pen.root("y", length(1.0));
          pen.publish("value", value, base::Hasher().add(value).done());
        },
        edition);
  };
  Ledger ledger;
  ledger.declare({a(false, 5, 1), lister});
  EXPECT_EQ(ledger.get("list/count").value, 1.0);
  EXPECT_EQ(ledger.get("list/value").value, 5.0);
  ledger.stage(a(true, 5, 2));
  EXPECT_EQ(ledger.get("list/count").value, 2.0);
  ledger.stage(a(true, 6, 3));
  EXPECT_EQ(ledger.get("list/value").value, 6.0);
  ledger.stage(a(true, 6, 4));
  ledger.settle();
  EXPECT_EQ(counted.runs["list"], 3);
}

// Writes, by the number it is asked to: figures in this order or that, fewer or more, with verdicts and values or none; or it ends
// early, or in an exception.
void write_in_one_way(Pen& pen) {
  const double way = pen.need("way/size").value;
  const Figure& first = pen.root("first", length(way, {{"scatter", 0.1 * way}}));
  if (way == 1.0 || way == 2.0) pen.root("second", length(2.0));
  if (way == 2.0) pen.query({.id = "two"});
  if (way == 3.0) pen.need("nobody/size");
  pen.linear("third", Kind::kLength, way == 4.0 ? "a" : "a formula in words", 3.0,
             std::array{Term{&first, way == 0.0 ? 0.0 : 1.0}}, way == 4.0 ? "a book" : "");
  if (way == 4.0) pen.root("second", length(5.0));
  if (way == 5.0) throw std::runtime_error("no memory");
  if (way == 6.0) pen.publish("value", 6, base::Hasher().add(6).done());
  pen.judge({.check = "third", .figure = &pen.ask("s/third"), .low = &first, .todo = "turn it again"});
}

TEST(Running, AgainWritesWhatAFirstRunWrites) {
  const auto stages = [](double way) {
    return std::vector{size_stage("way", length(way)), stage("s", write_in_one_way), stage("t", [](Pen& pen) {
                         sum(pen, "x", {"s/second", "s/third"});
                         pen.root("names", length(static_cast<double>(pen.names("s").size())));
                       })};
  };
  for (const bool is_kept : {false, true}) {
    Ledger ledger;
    std::optional<Snapshot> kept;
    for (const double way :
         {1.0, 2.0, 2.5, 1.0, 3.0, 1.0, 4.0, 4.0, 1.0, 5.0, 1.0, 0.0, 6.0, 2.0, 5.0, 6.0}) {
      ledger.declare(stages(way));
      if (way == 5.0) {
        EXPECT_THROW(ledger.settle(), std::runtime_error);
        continue;
      }
      Ledger fresh;
      fresh.declare(stages(way));
      EXPECT_EQ(seen(ledger), seen(fresh)) << way;
      if (is_kept) kept = ledger.keep();
    }
  }
}

TEST(Running, AStageThatAppearsOrVanishesIsNoticed) {
  const auto asking = stage("s", [](Pen& pen) { sum(pen, "x", {"later/size"}); });
  Ledger ledger;
  ledger.declare({asking});
  EXPECT_EQ(ledger.get("s/x").missing, (std::vector<std::string>{"later/size"}));
  ledger.stage(size_stage("later", length(3.0)));
  EXPECT_EQ(ledger.get("s/x").value, 3.0);
  ledger.declare({asking});
  EXPECT_FALSE(ledger.get("s/x").known());
}

TEST(Running, AnExceptionOfAStagePassesAndLeavesTheLedgerUsable) {
  bool broken = true;
  Ledger ledger;
  ledger.declare({stage("a",
                        [&broken](Pen& pen) {
                          if (broken) throw std::runtime_error("no memory");
                          pen.root("x", length(1.0));
                        }),
                  stage("b", [](Pen& pen) { sum(pen, "x", {"a/x"}); }), size_stage("c", length(5.0))});
  EXPECT_THROW(ledger.get("b/x"), std::runtime_error);
  EXPECT_EQ(ledger.get("c/size").value, 5.0);
  EXPECT_THROW(ledger.settle(), std::runtime_error);
  broken = false;
  EXPECT_EQ(ledger.get("b/x").value, 1.0);
}

TEST(Owner, IsTheStageWithTheLongestNameAbove) {
  Ledger ledger;
  ledger.declare({size_stage("op 3", length(3.0)), size_stage("op 30", length(30.0)),
                  size_stage("op 3/line 1", length(31.0)), size_stage("op", length(1.0))});
  EXPECT_EQ(ledger.get("op 3/size").value, 3.0);
  EXPECT_EQ(ledger.get("op 30/size").value, 30.0);
  EXPECT_EQ(ledger.get("op 3/line 1/size").value, 31.0);
  EXPECT_EQ(ledger.get("op/size").value, 1.0);
  EXPECT_EQ(ledger.get("op 3/line 2/size").missing, (std::vector<std::string>{"op 3/line 2/size"}));
  EXPECT_EQ(ledger.get("op 300/size").missing, (std::vector<std::string>{"op 300/size"}));
  const Snapshot kept = ledger.keep();
  EXPECT_EQ(kept.find("op 3/line 1/size")->value, 31.0);
  EXPECT_EQ(kept.find("op 3/size")->value, 3.0);
  EXPECT_EQ(kept.find("op 3/line 2/size"), nullptr);
  EXPECT_EQ(kept.find("op 4/size"), nullptr);
}

TEST(Owner, LocalNamesMayHaveSlashes) {
  Ledger ledger;
  ledger.declare({stage("op 3", [](Pen& pen) { pen.root("line 7/expected", length(7.0)); })});
  EXPECT_EQ(ledger.get("op 3/line 7/expected").value, 7.0);
}

TEST(Figures, VerdictsAndQueriesComeInTheOrderOfNames) {
  Ledger ledger;
  const auto both = [](Pen& pen) {
    pen.root("z", length(1.0));
    pen.root("a", length(1.0));
    pen.query({.id = pen.stage() + " second"});
    pen.query({.id = pen.stage() + " first"});
    pen.state({.check = pen.stage()});
  };
  ledger.declare({stage("op 30", both), stage("op 3/x", both), stage("op 3", both)});
  std::vector<std::string> names;
  for (const Figure& figure : ledger.figures())
    names.push_back(figure.name);
  EXPECT_EQ(names,
            (std::vector<std::string>{"op 3/a", "op 3/x/a", "op 3/x/z", "op 3/z", "op 30/a", "op 30/z"}));
  std::vector<std::string> checks;
  for (const Verdict& verdict : ledger.verdicts())
    checks.push_back(verdict.check);
  EXPECT_EQ(checks, (std::vector<std::string>{"op 3", "op 3/x", "op 30"}));
  EXPECT_EQ(ledger.queries().at(0).id, "op 3 second");
  EXPECT_EQ(ledger.queries().at(1).id, "op 3 first");
}

TEST(Replacing, TakesThePlaceOfARootUntilRestored) {
  Root worn = length(15.8, {{"caliper", 0.02}});
  worn.bound = Bound::kAtLeast;
  worn.origin = Origin::kDefault;
  worn.typed = "15.8";
  worn.source = "as drawn";
  Ledger ledger;
  ledger.declare({size_stage("pin", worn), stage("s", [](Pen& pen) { sum(pen, "x", {"pin/size"}); })});
  const Figure before = ledger.get("s/x");
  const auto runs = ledger.runs();

  ledger.replace("pin/size", {.value = 15.83, .source = "found on op 20"});
  Figure pin = ledger.get("pin/size");
  EXPECT_EQ(pin.value, 15.83);
  EXPECT_EQ(pin.shares, (Shares{{"caliper", 0.02}}));  // none were given, so those of the root stay
  EXPECT_EQ(pin.bound, Bound::kExact);
  EXPECT_EQ(pin.origin, Origin::kReading);
  EXPECT_EQ(pin.typed, "");
  EXPECT_EQ(pin.source, "found on op 20");
  EXPECT_EQ(ledger.get("s/x").value, 15.83);

  ledger.replace("pin/size",
                 {.value = 15.83, .shares = Shares{{"b", 0.2}, {"a", 0.1}, {"b", 0.2}}, .source = "found"});
  EXPECT_EQ(ledger.get("pin/size").shares, (Shares{{"a", 0.1}, {"b", 0.4}}));
  EXPECT_EQ(ledger.get("s/x").shares, (Shares{{"a", 0.1}, {"b", 0.4}}));

  ledger.restore("pin/size");
  EXPECT_EQ(fingerprint(ledger.get("s/x")), fingerprint(before));
  EXPECT_EQ(ledger.runs(), runs + 6);
  ledger.restore("pin/size");
  ledger.restore("nobody/size");
  EXPECT_EQ(ledger.get("s/x").value, 15.8);
  EXPECT_EQ(ledger.runs(), runs + 6);
}

TEST(Replacing, MakesAnUnknownRootKnownAndAKnownOneUnknown) {
  Root unread;
  unread.kind = Kind::kLength;
  Ledger ledger;
  ledger.declare({size_stage("a", unread), size_stage("b", length(1.0))});
  ledger.replace("a/size", {.value = 3.0});
  EXPECT_EQ(ledger.get("a/size").value, 3.0);
  ledger.replace("b/size", {.value = std::numeric_limits<double>::quiet_NaN()});
  EXPECT_EQ(ledger.get("b/size").missing, (std::vector<std::string>{"b/size"}));
}

TEST(Replacing, IsKnownBeforeTheStageThatOwnsTheRoot) {
  Ledger ledger;
  ledger.replace("a/size", {.value = 3.0});
  ledger.declare({size_stage("a", length(1.0))});
  EXPECT_EQ(ledger.get("a/size").value, 3.0);
}

TEST(Replacing, OnlyRootsAreReplaced) {
  Ledger ledger;
  ledger.declare({size_stage("a", length(1.0)), stage("s", [](Pen& pen) { sum(pen, "x", {"a/size"}); })});
  ledger.replace("s/x", {.value = 3.0});
  EXPECT_EQ(ledger.get("s/x").value, 1.0);
}

// --- circles -----------------------------------------------------------------------------------------------

Stage asks(const std::string& name, const std::vector<std::string>& of) {
  return stage(name, [of](Pen& pen) {
    pen.root("own", length(1.0));
    sum(pen, "x", of);
  });
}

TEST(Circle, IsNamedFromItsFirstStageWhereverItIsEntered) {
  const std::vector<std::string> circle{"a -> c -> b -> a"};
  for (const std::string entry : {"a", "b", "c", "outside", "settle"}) {
    Ledger ledger;
    ledger.declare(
        {asks("a", {"c/x"}), asks("b", {"a/x"}), asks("c", {"b/x"}), asks("outside", {"b/x", "a/own"})});
    if (entry == "settle") {
      ledger.settle();
    } else {
      EXPECT_FALSE(ledger.get(entry + "/x").known());
    }
    for (const std::string name : {"a/x", "b/x", "c/x", "outside/x"}) {
      EXPECT_EQ(ledger.get(name).missing, circle) << name << " entered at " << entry;
    }
    EXPECT_TRUE(ledger.get("a/own").known());  // written before the question that closed the circle
    EXPECT_EQ(ledger.runs(), 4U) << entry;
  }
}

TEST(Circle, OfAllKindsOfQuestions) {
  const auto naming = stage("a", [](Pen& pen) {
    pen.names("b");
    pen.root("x", length(1.0));
  });
  const auto valuing = stage("b", [](Pen& pen) {
    pen.value<int>("c/value");
    pen.root("x", length(1.0));
  });
  for (const std::string entry : {"a/x", "b/x", "c/x"}) {
    Ledger ledger;
    ledger.declare({naming, valuing, asks("c", {"a/x"})});
    EXPECT_EQ(ledger.get(entry).missing, (std::vector<std::string>{"a -> b -> c -> a"}));
    EXPECT_EQ(ledger.get("a/x").missing, (std::vector<std::string>{"a -> b -> c -> a"}));
  }
}

TEST(Circle, OfTwoCirclesThroughOneStageTheFirstQuestionCounts) {
  for (const std::string entry : {"a/x", "b/x", "c/x"}) {
    Ledger ledger;
    ledger.declare({asks("a", {"b/x", "c/x"}), asks("b", {"a/x"}), asks("c", {"a/x"})});
    EXPECT_FALSE(ledger.get(entry).known());
    for (const std::string name : {"a/x", "b/x", "c/x"}) {
      EXPECT_EQ(ledger.get(name).missing, (std::vector<std::string>{"a -> b -> a"}))
          << name << " from " << entry;
    }
    EXPECT_TRUE(ledger.get("c/own").known());
  }
}

TEST(Circle, ComesAndGoesWithAnEdit) {
  const auto fresh = [](bool closed) {
    Ledger ledger;
    ledger.declare({asks("a", {"b/x"}),
                    stage("b",
                          [](Pen& pen) {
                            if (pen.need("switch/size").value > 0.0) pen.ask("a/x");
                            pen.root("x", length(2.0));
                          }),
                    size_stage("switch", length(closed ? 1.0 : -1.0))});
    return ledger;
  };
  for (const std::string entry : {"a/x", "b/x"}) {
    Ledger ledger = fresh(false);
    EXPECT_EQ(ledger.get(entry).value, 2.0);
    for (const bool closed : {true, false, true}) {
      ledger.stage(size_stage("switch", length(closed ? 1.0 : -1.0)));
      EXPECT_EQ(ledger.get(entry).known(), !closed) << entry;
      Ledger again = fresh(closed);
      EXPECT_EQ(seen(ledger), seen(again)) << entry;
    }
  }
}

// --- long chains -------------------------------------------------------------------------------------------

std::vector<Stage> chain(std::size_t stages) {
  std::vector<Stage> all{size_stage("link 00000", length(1.0))};
  for (std::size_t i = 1; i < stages; ++i) {
    const std::string before = fmt::format("link {:05}/size", i - 1);
    all.push_back(stage(fmt::format("link {:05}", i), [before](Pen& pen) { sum(pen, "size", {before}); }));
  }
  return all;
}

TEST(Chain, AsDeepAsAllowedIsWorkedOutAndCheckedAgain) {
  Ledger ledger;
  ledger.declare(chain(kDeepestChain));
  const std::string last = fmt::format("link {:05}/size", kDeepestChain - 1);
  EXPECT_EQ(ledger.get(last).value, 1.0);
  ledger.stage(size_stage("link 00000", length(2.0)));
  EXPECT_EQ(ledger.get(last).value, 2.0);
  EXPECT_EQ(ledger.runs(), 2 * kDeepestChain);
}

TEST(Chain, ThatIsTooDeepIsAnExceptionAndNoCrash) {
  for (const std::size_t stages : {kDeepestChain + 1, std::size_t{10000}}) {
    Ledger ledger;
    ledger.declare(chain(stages));
    EXPECT_THROW(ledger.get(fmt::format("link {:05}/size", stages - 1)), std::length_error);
    EXPECT_EQ(ledger.get("link 00100/size").value, 1.0);
  }
}

TEST(LedgerDeathTest, StagesHaveNamesOfTheirOwn) {
  testing::FLAGS_gtest_death_test_style = "threadsafe";
  Ledger ledger;
  EXPECT_DEATH(ledger.declare({size_stage("a", length(1.0)), size_stage("a", length(2.0))}),
               "a name of its own");
}

}  // namespace
}  // namespace sparewright::ledger
