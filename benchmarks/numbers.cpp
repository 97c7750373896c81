// All numbers of a job, worked out from nothing with their uncertainties: the ledger against python3-uncertainties on
// the same formulas, in one run.   numbers FILE SCRIPT [--smoke]
// Times are printed to be read; only the ratio decides the exit status.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <memory>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "core/base/messages.hpp"
#include "core/formula/expression.hpp"
#include "core/ledger/ledger.hpp"
#include "timing.hpp"

namespace {

using namespace sparewright;

constexpr double kTimesFaster = 20.0;
constexpr double kSameU = 1e-9;  // relative: that both worked out the same numbers

struct Entry {
  std::string name;
  double value = 0.0;
  double u = 0.0;
  std::optional<formula::Formula> formula;
  std::vector<std::size_t> inputs;  // which entries
};

const auto kNumber = ledger::Root{}.kind;

// The ledger's formulas write powers as ^, Python's as **.
std::string with_caret(std::string text) {
  for (std::size_t at = text.find("**"); at != std::string::npos; at = text.find("**")) {
    text.erase(at, 1);
    text[at] = '^';
  }
  return text;
}

std::vector<Entry> read(const std::string& path) {
  std::vector<Entry> entries;
  std::ifstream file(path);
  std::string word;
  const auto place_of = [&](std::string_view name) {
    const auto same = [&](const Entry& e) { return e.name == name; };
    return static_cast<std::size_t>(std::find_if(entries.begin(), entries.end(), same) - entries.begin());
  };
  const auto kind_of = [&](std::string_view name) {
    return place_of(name) < entries.size() ? std::optional(kNumber) : std::nullopt;
  };
  while (file >> word) {
    Entry entry;
    if (word == "root") {
      file >> entry.name >> entry.value >> entry.u;
    } else if (word == "formula") {
      std::string text;
      file >> entry.name >> word;
      std::getline(file, text);
      const auto typed = formula::Expression::read(with_caret(text));
      if (!typed) throw std::runtime_error(base::report(typed.error()));
      auto bound = typed->bind(kind_of, kNumber, quantity::UnitSystem::kMetric);
      if (!bound) throw std::runtime_error(base::report(bound.error()));
      entry.formula = std::move(*bound);
      for (const std::string& input : entry.formula->names())
        entry.inputs.push_back(place_of(input));
    } else {
      std::getline(file, word);
      continue;
    }
    entries.push_back(std::move(entry));
  }
  if (entries.empty()) throw std::runtime_error("no numbers in " + path);
  return entries;
}

// Writes every number; returns the sum of their standard uncertainties.
double work_out(ledger::Pen& pen, const std::vector<Entry>& entries) {
  double sum = 0.0;
  std::vector<const ledger::Figure*> figures;
  figures.reserve(entries.size());
  std::vector<double> values;
  std::vector<ledger::Term> terms;
  for (const Entry& entry : entries) {
    if (!entry.formula) {
      ledger::Root root;
      root.value = entry.value;
      if (entry.u > 0.0) root.shares = {{entry.name, entry.u}};
      figures.push_back(&pen.root(entry.name, std::move(root)));
    } else {
      values.clear();
      terms.clear();
      for (const std::size_t input : entry.inputs) {
        terms.push_back({figures[input], 0.0});
        values.push_back(figures[input]->value);
      }
      const auto y = entry.formula->at(values);
      if (!y) throw std::runtime_error(base::report(y.error()));
      for (std::size_t i = 0; i < terms.size(); ++i)
        terms[i].slope = y->slopes[i];
      figures.push_back(&pen.linear(entry.name, kNumber, "as in the file", y->value, terms));
    }
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

struct Timed {
  double seconds = 0.0;  // median of the trials
  double sum_of_u = 0.0;
};

Timed time_ledger(const std::vector<Entry>& entries, int trials) {
  std::vector<double> seconds;
  Timed timed;
  for (int i = 0; i < trials; ++i) {
    seconds.push_back(benchmarks::seconds_of([&] { timed.sum_of_u = trial(entries); }));
  }
  timed.seconds = benchmarks::median(std::move(seconds));
  return timed;
}

Timed time_python(const std::string& script, const std::string& file, int trials) {
  const std::string command = fmt::format("/usr/bin/python3 '{}' '{}' {}", script, file, trials);
  const auto close = [](std::FILE* pipe) { return ::pclose(pipe); };
  const std::unique_ptr<std::FILE, decltype(close)> pipe(::popen(command.c_str(), "r"), close);
  Timed timed;
  if (!pipe || std::fscanf(pipe.get(), "%lf %lf", &timed.seconds, &timed.sum_of_u) != 2) {
    throw std::runtime_error("python3-uncertainties cannot be run");
  }
  return timed;
}

int run(const std::string& file, const std::string& script, bool smoke) {
  const std::vector<Entry> entries = read(file);
  const Timed ours = time_ledger(entries, smoke ? 5 : 301);
  const Timed python = time_python(script, file, smoke ? 3 : 31);
  const double times = python.seconds / ours.seconds;
  fmt::print(
      "numbers: {} of them, from nothing; ledger {:.0f} us, python3-uncertainties {:.0f} us, {:.0f} times\n",
      entries.size(), ours.seconds * 1e6, python.seconds * 1e6, times);
  if (std::abs(ours.sum_of_u - python.sum_of_u) > kSameU * python.sum_of_u) {
    fmt::print("the two do not agree: sum of u {} and {}\n", ours.sum_of_u, python.sum_of_u);
    return 1;
  }
  if (!smoke && times < kTimesFaster) {
    fmt::print("slower than {} times\n", kTimesFaster);
    return 1;
  }
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  return sparewright::benchmarks::status_of([&] {
    if (argc < 3) throw std::runtime_error("usage: numbers FILE SCRIPT [--smoke]");
    return run(argv[1], argv[2], argc > 3 && std::string(argv[3]) == "--smoke");
  });
}
