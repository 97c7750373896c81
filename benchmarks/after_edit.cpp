// All numbers of the largest of some jobs after an edit: a root that moves most of them gets another value, and the ledger
// works out what that changes; python3-uncertainties works out the same formulas. In one run. The peer's exact numbers are bare
// floats, which is quickest for it; what it takes where they keep what they came from, as each figure of the ledger does, is
// printed too.
//   after_edit SCRIPT JOB... [--smoke]
// Times are printed to be read; only the ratio decides the exit status.
#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <map>
#include <numeric>
#include <stdexcept>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "formulas.hpp"
#include "job_formulas.hpp"
#include "timing.hpp"

namespace {

using namespace sparewright;
using benchmarks::JobNumber;
using benchmarks::Timed;

// How many numbers each root moves, by the numbers that go in.
std::size_t moves_most(const std::vector<JobNumber>& numbers) {
  std::size_t best = 0;
  std::size_t most = 0;
  for (std::size_t root = 0; root < numbers.size(); ++root) {
    if (!numbers[root].inputs.empty() || numbers[root].stage == "causes") continue;
    std::vector<bool> moved(numbers.size(), false);
    moved[root] = true;
    std::size_t count = 1;
    for (std::size_t i = root + 1; i < numbers.size(); ++i) {
      const auto& inputs = numbers[i].inputs;
      moved[i] = std::any_of(inputs.begin(), inputs.end(), [&](std::size_t input) { return moved[input]; });
      if (moved[i]) ++count;
    }
    if (count <= most) continue;
    most = count;
    best = root;
  }
  return best;
}

// The job's numbers in stages as the job has them.
class Mirror {
 public:
  explicit Mirror(const std::vector<JobNumber>& numbers) : numbers_(numbers) {
    names_.resize(numbers.size());
    locals_.resize(numbers.size());
    u_.resize(numbers.size());
    figures_.resize(numbers.size());
    held_in_.resize(numbers.size());
    std::map<std::string, std::vector<std::size_t>> written;
    for (std::size_t i = 0; i < numbers.size(); ++i)
      written[numbers[i].stage].push_back(i);
    std::vector<ledger::Stage> stages;
    for (const auto& [stage, places] : written) {
      for (const std::size_t i : places) {
        locals_[i] = fmt::format("n{}", i);
        names_[i] = fmt::format("{}/n{}", stage, i);
      }
      stages.push_back({stage, base::Hasher().add(stage).done(),
                        [this, places = places](ledger::Pen& pen) { write(pen, places); }});
    }
    ledger_.declare(std::move(stages));
    ledger_.settle();
  }

  // A root gets a value, and everything is worked out that this changes. Returns the sum of all u, which Python prints too.
  double edit(std::size_t root, double value) {
    ledger_.replace(names_.at(root), {value, std::nullopt, "edited"});
    ledger_.settle();
    return std::accumulate(u_.begin(), u_.end(), 0.0);
  }

 private:
  // A stage asks another one once for a figure, and keeps its own at hand.
  const ledger::Figure& at_hand(ledger::Pen& pen, std::size_t number) {
    if (held_in_[number] != run_) hold(number, pen.ask(names_[number]));
    return *figures_[number];
  }
  void hold(std::size_t number, const ledger::Figure& figure) {
    figures_[number] = &figure;
    held_in_[number] = run_;
  }

  void write(ledger::Pen& pen, const std::vector<std::size_t>& places) {
    const std::uint64_t before = run_;  // an answer may first have to be worked out by another stage
    run_ = ++runs_;
    write_all(pen, places);
    run_ = before;
  }

  void write_all(ledger::Pen& pen, const std::vector<std::size_t>& places) {
    std::vector<ledger::Term> terms;
    for (const std::size_t i : places) {
      const JobNumber& number = numbers_[i];
      if (number.inputs.empty()) {
        ledger::Root root;
        root.value = number.value;
        if (number.u > 0.0) root.shares = {{names_[i], number.u}};
        hold(i, pen.root(locals_[i], std::move(root)));
        u_[i] = figures_[i]->u();
        continue;
      }
      terms.clear();
      double value = number.value;
      for (std::size_t j = 0; j < number.inputs.size(); ++j) {
        const ledger::Figure& input = at_hand(pen, number.inputs[j]);
        value += number.slopes[j] * (input.value - numbers_[number.inputs[j]].value);
        terms.push_back({&input, number.slopes[j]});
      }
      hold(i, pen.linear(locals_[i], ledger::Root{}.kind, "by the first-order law", value, terms));
      u_[i] = figures_[i]->u();
    }
  }

  const std::vector<JobNumber>& numbers_;
  std::vector<base::Name> names_;    // by number
  std::vector<std::string> locals_;  // below the stage
  std::vector<double> u_;            // of each number, as last worked out
  std::vector<const ledger::Figure*> figures_;
  std::vector<std::uint64_t> held_in_;  // in which run of a stage figures_ has it
  std::uint64_t run_ = 0;
  std::uint64_t runs_ = 0;
  ledger::Ledger ledger_;
};

Timed time_ledger(Mirror& mirror, std::size_t root, double value, int trials) {
  std::vector<double> seconds;
  Timed timed;
  for (int i = 1; i <= trials; ++i) {
    const double edited = value + 1e-3 * (i % 2);
    seconds.push_back(benchmarks::seconds_of_work([&] { timed.sum_of_u = mirror.edit(root, edited); }));
  }
  timed.seconds = benchmarks::median(std::move(seconds));
  return timed;
}

std::vector<JobNumber> largest(const std::vector<std::string>& jobs, std::string& name) {
  std::vector<JobNumber> best;
  for (const std::string& job : jobs) {
    std::vector<JobNumber> numbers = benchmarks::numbers_of(job);
    if (numbers.size() <= best.size()) continue;
    best = std::move(numbers);
    name = job;
  }
  return best;
}

int run(const std::string& script, const std::vector<std::string>& jobs, bool smoke) {
  std::string name;
  const std::vector<JobNumber> numbers = largest(jobs, name);
  const std::filesystem::path file = std::filesystem::temp_directory_path() / "sparewright_after_edit.txt";
  std::ofstream(file) << benchmarks::as_text(numbers);
  Mirror mirror(numbers);
  const std::size_t root = moves_most(numbers);
  std::vector<double> ours_s;
  std::vector<double> floats_s;
  std::vector<double> times;
  std::vector<double> times_carried;
  bool both_agree = true;
  for (int round = 0; round < (smoke ? 1 : 9);
       ++round) {  // in turn: what else the machine does comes to both
    const Timed ours = time_ledger(mirror, root, numbers[root].value, smoke ? 6 : 100);
    const int trials = smoke ? 3 : 11;
    const Timed carried = benchmarks::time_python(script, file.string(), trials, benchmarks::Exact::kCarried);
    const Timed floats = benchmarks::time_python(script, file.string(), trials, benchmarks::Exact::kFloats);
    both_agree = benchmarks::agree(ours.sum_of_u, carried.sum_of_u) &&
                 benchmarks::agree(ours.sum_of_u, floats.sum_of_u) && both_agree;
    ours_s.push_back(ours.seconds);
    floats_s.push_back(floats.seconds);
    times.push_back(floats.seconds / ours.seconds);
    times_carried.push_back(carried.seconds / ours.seconds);
  }
  std::filesystem::remove(file);
  fmt::print(
      "after an edit of {} in {}: {} numbers; ledger {:.0f} us, python3-uncertainties {:.0f} us, {:.1f} "
      "times; {:.1f} times where exact numbers keep what they came from\n",
      numbers[root].name, name, numbers.size(), benchmarks::median(ours_s) * 1e6,
      benchmarks::median(floats_s) * 1e6, benchmarks::median(times), benchmarks::median(times_carried));
  if (!both_agree) return 1;
  if (smoke || benchmarks::median(times) >= benchmarks::kTimesFaster) return 0;
  fmt::print("slower than {} times\n", benchmarks::kTimesFaster);
  return 1;
}

}  // namespace

int main(int argc, char** argv) {
  return sparewright::benchmarks::status_of([&] {
    bool smoke = false;
    std::vector<std::string> jobs;
    for (int i = 2; i < argc; ++i) {
      if (std::string(argv[i]) == "--smoke")
        smoke = true;
      else
        jobs.emplace_back(argv[i]);
    }
    if (jobs.empty()) throw std::runtime_error("usage: after_edit SCRIPT JOB... [--smoke]");
    return run(argv[1], jobs, smoke);
  });
}
