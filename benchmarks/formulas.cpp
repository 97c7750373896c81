#include "formulas.hpp"

#include <cmath>
#include <cstdio>
#include <fstream>
#include <memory>
#include <stdexcept>
#include <unordered_map>
#include <utility>

#include <fmt/format.h>

#include "core/base/messages.hpp"

namespace sparewright::benchmarks {
namespace {

const auto kNumber = ledger::Root{}.kind;

// The ledger's formulas write powers as ^, Python's as **.
std::string with_caret(std::string text) {
  for (std::size_t at = text.find("**"); at != std::string::npos; at = text.find("**")) {
    text.erase(at, 1);
    text[at] = '^';
  }
  return text;
}

formula::Formula bound(const std::string& text, const std::unordered_map<std::string, std::size_t>& places) {
  const auto kind_of = [&](std::string_view name) {
    return places.contains(std::string(name)) ? std::optional(kNumber) : std::nullopt;
  };
  const auto typed = formula::Expression::read(with_caret(text));
  if (!typed) throw std::runtime_error(base::report(typed.error()));
  auto formula = typed->bind(kind_of, kNumber, quantity::UnitSystem::kMetric);
  if (!formula) throw std::runtime_error(base::report(formula.error()));
  return std::move(*formula);
}

}  // namespace

std::vector<Entry> read_formulas(const std::string& path) {
  std::vector<Entry> entries;
  std::unordered_map<std::string, std::size_t> places;
  std::ifstream file(path);
  std::string word;
  while (file >> word) {
    Entry entry;
    if (word == "root") {
      file >> entry.name >> entry.value >> entry.u;
    } else if (word == "formula") {
      std::string text;
      file >> entry.name >> word;
      std::getline(file, text);
      entry.formula = bound(text, places);
      for (const std::string& input : entry.formula->names())
        entry.inputs.push_back(places.at(input));
    } else {
      std::getline(file, word);
      continue;
    }
    places.emplace(entry.name, entries.size());
    entries.push_back(std::move(entry));
  }
  if (entries.empty()) throw std::runtime_error("no numbers in " + path);
  return entries;
}

const ledger::Figure& write_entry(ledger::Pen& pen, const Entry& entry, const std::string& local,
                                  const std::vector<const ledger::Figure*>& figures) {
  if (!entry.formula) {
    ledger::Root root;
    root.value = entry.value;
    if (entry.u > 0.0) root.shares = {{entry.name, entry.u}};
    return pen.root(local, std::move(root));
  }
  std::vector<double> values;
  std::vector<ledger::Term> terms;
  for (const ledger::Figure* figure : figures) {
    terms.push_back({figure, 0.0});
    values.push_back(figure->value);
  }
  const auto y = entry.formula->at(values);
  if (!y) throw std::runtime_error(base::report(y.error()));
  for (std::size_t i = 0; i < terms.size(); ++i)
    terms[i].slope = y->slopes[i];
  return pen.linear(local, kNumber, "as in the file", y->value, terms);
}

Timed time_python(const std::string& script, const std::string& file, int trials, Exact exact) {
  const std::string command = fmt::format("/usr/bin/python3 '{}' '{}' {}{}", script, file, trials,
                                          exact == Exact::kCarried ? " carried" : "");
  const auto close = [](std::FILE* pipe) { return ::pclose(pipe); };
  const std::unique_ptr<std::FILE, decltype(close)> pipe(::popen(command.c_str(), "r"), close);
  Timed timed;
  if (!pipe || std::fscanf(pipe.get(), "%lf %lf", &timed.seconds, &timed.sum_of_u) != 2) {
    throw std::runtime_error("python3-uncertainties cannot be run");
  }
  return timed;
}

bool agree(double ours, double python) {
  if (std::abs(ours - python) <= kSameU * python) return true;
  fmt::print("the two do not agree: sum of u {} and {}\n", ours, python);
  return false;
}

}  // namespace sparewright::benchmarks
