// All numbers of a job, worked out from nothing with their uncertainties: the ledger against python3-uncertainties on
// the same formulas, in one run.   numbers FILE SCRIPT [--smoke]
// Times are printed to be read; only the ratio decides the exit status.
#include <stdexcept>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "formulas.hpp"
#include "timing.hpp"

namespace {

using namespace sparewright;
using benchmarks::Entry;
using benchmarks::Timed;

// Writes every number; returns the sum of their standard uncertainties.
double work_out(ledger::Pen& pen, const std::vector<Entry>& entries) {
  double sum = 0.0;
  std::vector<const ledger::Figure*> figures;
  figures.reserve(entries.size());
  std::vector<const ledger::Figure*> inputs;
  for (const Entry& entry : entries) {
    inputs.clear();
    for (const std::size_t input : entry.inputs)
      inputs.push_back(figures[input]);
    figures.push_back(&benchmarks::write_entry(pen, entry, entry.name, inputs));
    sum += figures.back()->u();
  }
  return sum;
}

// One trial: every number, from nothing. Returns the sum of all u, which Python prints too.
double trial(const std::vector<Entry>& entries) {
  double sum = 0.0;
  ledger::Ledger ledger;
  ledger.declare({{"job", base::Hasher().add(std::string("job")).done(),
                   [&](ledger::Pen& pen) { sum = work_out(pen, entries); }}});
  ledger.settle();
  return sum;
}

Timed time_ledger(const std::vector<Entry>& entries, int trials) {
  std::vector<double> seconds;
  Timed timed;
  for (int i = 0; i < trials; ++i) {
    seconds.push_back(benchmarks::seconds_of_work([&] { timed.sum_of_u = trial(entries); }));
  }
  timed.seconds = benchmarks::median(std::move(seconds));
  return timed;
}

int run(const std::string& file, const std::string& script, bool smoke) {
  const std::vector<Entry> entries = benchmarks::read_formulas(file);
  const Timed ours = time_ledger(entries, smoke ? 5 : 301);
  const Timed python = benchmarks::time_python(script, file, smoke ? 3 : 31, benchmarks::Exact::kFloats);
  const double times = python.seconds / ours.seconds;
  fmt::print(
      "numbers: {} of them, from nothing; ledger {:.0f} us, python3-uncertainties {:.0f} us, {:.0f} times\n",
      entries.size(), ours.seconds * 1e6, python.seconds * 1e6, times);
  if (!benchmarks::agree(ours.sum_of_u, python.sum_of_u)) return 1;
  if (smoke || times >= benchmarks::kTimesFaster) return 0;
  fmt::print("slower than {} times\n", benchmarks::kTimesFaster);
  return 1;
}

}  // namespace

int main(int argc, char** argv) {
  return sparewright::benchmarks::status_of([&] {
    if (argc < 3) throw std::runtime_error("usage: numbers FILE SCRIPT [--smoke]");
    return run(argv[1], argv[2], argc > 3 && std::string(argv[3]) == "--smoke");
  });
}
