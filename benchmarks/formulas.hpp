// Numbers as roots and formulas, in a file that the ledger's side and python3-uncertainties both read:
//   root NAME VALUE STANDARD_UNCERTAINTY
//   formula NAME = EXPRESSION            names made of letters, figures and _
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/formula/expression.hpp"
#include "core/ledger/ledger.hpp"

namespace sparewright::benchmarks {

inline constexpr double kTimesFaster = 20.0;  // than python3-uncertainties
inline constexpr double kSameU = 1e-9;        // relative: that both worked out the same numbers

struct Entry {
  std::string name;
  double value = 0.0;  // of a root
  double u = 0.0;
  std::optional<formula::Formula> formula;
  std::vector<std::size_t> inputs;  // which entries, all before this one
};

// Throws std::runtime_error with what is wrong.
[[nodiscard]] std::vector<Entry> read_formulas(const std::string& path);

// Writes an entry. figures: those of its inputs, in their order.
const ledger::Figure& write_entry(ledger::Pen& pen, const Entry& entry, const std::string& local,
                                  const std::vector<const ledger::Figure*>& figures);

struct Timed {
  double seconds = 0.0;  // median of the trials
  double sum_of_u = 0.0;
};

// An exact number of the peer's: one that keeps what it came from, or a bare float.
enum class Exact { kCarried, kFloats };

// Every number from nothing, as many times as there are trials.
[[nodiscard]] Timed time_python(const std::string& script, const std::string& file, int trials, Exact exact);

// Whether both worked out the same; says so where they did not.
[[nodiscard]] bool agree(double ours, double python);

}  // namespace sparewright::benchmarks
