// Kept states: what they hold, going back, what differs between two.
#include <string>
#include <thread>

#include <gtest/gtest.h>

#include "core/ledger/ledger.hpp"
#include "stages.hpp"

namespace sparewright::ledger {
namespace {

using tests::length;
using tests::seen;
using tests::size_stage;
using tests::stage;
using tests::sum;

std::vector<Stage> job(double a, bool extra = false) {
  std::vector<Stage> stages{size_stage("a", length(a, {{"scatter", 0.1}})), size_stage("b", length(2.0)),
                            stage("s", [](Pen& pen) {
                              const Figure& total = sum(pen, "total", {"a/size", "b/size"});
                              pen.judge({.check = "total", .figure = &total, .low = &pen.ask("b/size")});
                              if (total.value > 10.0) pen.query({.id = "large"});
                            })};
  if (extra) stages.push_back(size_stage("extra", length(9.0)));
  return stages;
}

TEST(Snapshot, StaysAsItWas) {
  Ledger ledger;
  ledger.declare(job(20.0));
  const Snapshot kept = ledger.keep();
  ledger.declare(job(1.0, true));
  ledger.settle();
  EXPECT_EQ(kept.find("s/total")->value, 22.0);
  EXPECT_EQ(kept.find("extra/size"), nullptr);
  EXPECT_EQ(kept.figures().size(), 4U);
  EXPECT_EQ(kept.verdicts().at(0).state, State::kOk);
  EXPECT_EQ(kept.queries().size(), 1U);
  EXPECT_TRUE(ledger.queries().empty());
}

TEST(Snapshot, MayBeReadFromAnotherThread) {
  Ledger ledger;
  ledger.declare(job(20.0));
  const Snapshot kept = ledger.keep();
  double total = 0.0;
  std::thread reader([&] {
    for (int i = 0; i < 1000; ++i)
      total = kept.find("s/total")->value + 0.0 * kept.find("s/total")->expanded();
  });
  for (int i = 0; i < 100; ++i) {
    ledger.declare(job(i));
    ledger.settle();
  }
  reader.join();
  EXPECT_EQ(total, 22.0);
}

TEST(BackTo, RestoresStagesAndReplacementsWithoutRunningAnything) {
  Ledger ledger;
  ledger.declare(job(20.0));
  ledger.replace("b/size", {.value = 3.0});
  const Snapshot kept = ledger.keep();
  const auto before = seen(ledger);
  ledger.declare(job(1.0, true));
  ledger.restore("b/size");
  ledger.settle();
  const auto runs = ledger.runs();
  ledger.back_to(kept);
  EXPECT_EQ(seen(ledger), before);
  EXPECT_EQ(ledger.get("s/total").value, 23.0);
  EXPECT_EQ(ledger.runs(), runs);
  ledger.stage(size_stage("a", length(4.0)));  // and it goes on from there
  EXPECT_EQ(ledger.get("s/total").value, 7.0);
}

TEST(BackTo, TheEmptyState) {
  Ledger ledger;
  const Snapshot empty = ledger.keep();
  ledger.declare(job(20.0));
  ledger.settle();
  ledger.back_to(empty);
  EXPECT_TRUE(ledger.figures().empty());
  EXPECT_FALSE(ledger.get("s/total").known());
}

TEST(Between, NamesWhatCameWentAndChanged) {
  Ledger ledger;
  ledger.declare(job(20.0, true));
  const Snapshot before = ledger.keep();
  ledger.declare({size_stage("0", length(7.0)), size_stage("a", length(1.0, {{"scatter", 0.1}})),
                  size_stage("b", length(2.0)), size_stage("z", length(7.0))});
  const Snapshot after = ledger.keep();
  const std::vector<Change> changes = between(before, after);
  std::vector<std::string> told;
  for (const Change& change : changes) {
    told.push_back(change.name + (change.before ? " was" : "") + (change.after ? " is" : ""));
  }
  EXPECT_EQ(told, (std::vector<std::string>{"0/size is", "a/size was is", "extra/size was", "s/margin was",
                                            "s/total was", "z/size is"}));
  EXPECT_EQ(changes.at(1).before->value, 20.0);
  EXPECT_EQ(changes.at(1).after->value, 1.0);
  EXPECT_TRUE(between(before, before).empty());
  EXPECT_EQ(between(after, before).size(), changes.size());
}

TEST(Between, AChangeOfUncertaintyAloneIsAChange) {
  Ledger ledger;
  ledger.declare({size_stage("a", length(1.0, {{"scatter", 0.1}}))});
  const Snapshot before = ledger.keep();
  ledger.declare({size_stage("a", length(1.0, {{"scatter", 0.2}}))});
  EXPECT_EQ(between(before, ledger.keep()).size(), 1U);
}

}  // namespace
}  // namespace sparewright::ledger
