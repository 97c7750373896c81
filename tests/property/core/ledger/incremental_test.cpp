// Whatever was edited, replaced, undone and asked on the way, in whatever order: the ledger holds what a
// fresh one works out from the job as it now stands, bit for bit, and runs less.
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

#include <gtest/gtest.h>

#include "core/ledger/ledger.hpp"
#include "random_job.hpp"
#include "splitmix.hpp"
#include "stages.hpp"

namespace sparewright::ledger {
namespace {

using tests::kStageNames;
using tests::RandomJob;
using tests::RandomStage;
using tests::seen;
using tests::SplitMix;

constexpr int kJobs = 120;
constexpr int kEdits = 40;

bool is_in_circle(const Figure& figure) {
  return !figure.known() && figure.missing.front().find(" -> ") != std::string::npos;
}

class Session {
 public:
  Session(std::uint64_t seed, bool circles) : random_(seed), circles_(circles) {
    for (std::size_t place = 0; place < kStageNames.size(); ++place)
      job_.stages[place] = stage(place);
    ledger_.declare(job_.made());
  }

  void edit() {
    const std::size_t place = random_.below(kStageNames.size());
    const std::string root = std::string(kStageNames.at(place)) + "/root";
    switch (random_.below(10)) {
      case 0:
      case 1:  // a size
        if (job_.stages.count(place) > 0) job_.stages[place].size = static_cast<int>(random_.below(40));
        return declare();
      case 2:  // what a stage does; this brings it back where it was gone
        job_.stages[place] = stage(place);
        ledger_.stage(job_.stages[place].made());
        return;
      case 3:
        job_.stages.erase(place);
        return declare();
      case 4:
        return declare();  // all as it was
      case 5:
      case 6: {
        Replacement replacement{.value = static_cast<double>(random_.below(20)), .source = "found"};
        if (random_.one_in(2)) replacement.shares = Shares{{"second", 0.5}, {"first", 0.25}};
        job_.replacements[root] = replacement;
        ledger_.replace(root, replacement);
        return;
      }
      case 7:
        job_.replacements.erase(root);
        ledger_.restore(root);
        return;
      case 8:
        kept_.emplace_back(ledger_.keep(), job_);
        return;
      default:
        if (kept_.empty()) return;
        const auto& [snapshot, job] = kept_.at(random_.below(kept_.size()));
        ledger_.back_to(snapshot);
        job_ = job;
    }
  }

  // One figure, asked of both as the first question; the fresh one has not settled anything.
  void compare_one() {
    const std::string name = std::string(kStageNames.at(random_.below(kStageNames.size()))) + "/" +
                             tests::kFigureNames.at(random_.below(tests::kFigureNames.size()));
    Ledger fresh = job_.fresh();
    ASSERT_EQ(fingerprint(ledger_.get(name)), fingerprint(fresh.get(name))) << name;
  }

  void compare_all() {
    Ledger fresh = job_.fresh();
    const auto runs = ledger_.runs();
    const auto now = seen(ledger_);
    ASSERT_EQ(now, seen(fresh));
    incremental_runs_ += ledger_.runs() - runs;
    fresh_runs_ += fresh.runs();
    figures_ += now.size();
    for (const Figure& figure : fresh.figures()) {
      if (figure.known()) continue;
      ++unknown_;
      if (is_in_circle(figure)) ++in_circles_;
    }
    // nothing runs when nothing changed
    const auto settled = ledger_.runs();
    ledger_.declare(job_.made());
    ledger_.settle();
    ASSERT_EQ(ledger_.runs(), settled);
  }

  bool decides(std::size_t one_in) { return random_.one_in(one_in); }

  std::uint64_t incremental_runs_ = 0;
  std::uint64_t fresh_runs_ = 0;
  std::size_t figures_ = 0;
  std::size_t unknown_ = 0;
  std::size_t in_circles_ = 0;

 private:
  RandomStage stage(std::size_t place) {
    return {place, random_.below(1000), static_cast<int>(random_.below(40)), circles_};
  }
  void declare() { ledger_.declare(job_.made()); }

  SplitMix random_;
  bool circles_;
  RandomJob job_;
  Ledger ledger_;
  std::vector<std::pair<Snapshot, RandomJob>> kept_;
};

void run_sessions(bool circles) {
  std::uint64_t incremental_runs = 0;
  std::uint64_t fresh_runs = 0;
  std::size_t figures = 0;
  std::size_t unknown = 0;
  std::size_t in_circles = 0;
  for (std::uint64_t seed = 1; seed <= kJobs; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    Session session(seed, circles);
    for (int n = 0; n < kEdits; ++n) {
      session.edit();
      if (session.decides(2)) session.compare_one();
      if (session.decides(2)) session.compare_all();
      if (testing::Test::HasFatalFailure()) return;
    }
    incremental_runs += session.incremental_runs_;
    fresh_runs += session.fresh_runs_;
    figures += session.figures_;
    unknown += session.unknown_;
    in_circles += session.in_circles_;
  }
  // the guard: runs were saved, runs were needed, and there was something to get wrong
  EXPECT_LT(incremental_runs, fresh_runs * 3 / 10);
  EXPECT_GT(incremental_runs, 1000U);
  EXPECT_GT(figures, 10000U);
  EXPECT_GT(unknown, figures / 20);
  EXPECT_LT(unknown, figures / 2);
  EXPECT_GE(in_circles, circles ? 500U : 0U);
  EXPECT_EQ(in_circles > 0, circles);
}

TEST(Incremental, EqualsFromScratchWithoutCircles) {
  run_sessions(false);
}
TEST(Incremental, EqualsFromScratchWithCircles) {
  run_sessions(true);
}

TEST(Incremental, TheOrderOfTheFirstQuestionsDoesNotMatter) {
  SplitMix random(77);
  int with_circles = 0;
  for (int trial = 0; trial < 400; ++trial) {
    SCOPED_TRACE(trial);
    RandomJob job;
    for (std::size_t place = 0; place < kStageNames.size(); ++place) {
      job.stages[place] = {place, random.below(1000), static_cast<int>(random.below(40)), true};
    }
    Ledger settled = job.fresh();
    const auto wanted = seen(settled);
    Ledger asked = job.fresh();
    for (int n = 0; n < 6; ++n) {
      asked.get(std::string(kStageNames.at(random.below(kStageNames.size()))) + "/work");
    }
    ASSERT_EQ(seen(asked), wanted);
    for (const Figure& figure : settled.figures()) {
      if (is_in_circle(figure)) {
        ++with_circles;
        break;
      }
    }
  }
  EXPECT_GT(with_circles, 50);
}

}  // namespace
}  // namespace sparewright::ledger
