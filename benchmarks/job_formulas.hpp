// The numbers of a job as the ledger has them, as roots and formulas.
#pragma once

#include <string>
#include <vector>

namespace sparewright::benchmarks {

// One number. Its formula is the first-order law itself: its value and what each number that went in moves it by. The
// ledger keeps shares, not slopes; the slopes are worked out from the shares, and have to give them back.
struct JobNumber {
  std::string name;   // as the ledger has it; "cause <name>" of a cause that several roots share
  std::string stage;  // which writes it
  double value = 0.0;
  double u = 0.0;                   // of a root that has a cause of its own
  std::vector<std::size_t> inputs;  // which numbers, all before this one; none of a root
  std::vector<double> slopes;
};

// All that are known, each after its inputs. Choices count as roots: a choice has no slope.
// Throws std::runtime_error with what is wrong with the job, or where slopes do not give the shares.
[[nodiscard]] std::vector<JobNumber> numbers_of(const std::string& job_path);

// Lines for numbers_peer.py, the numbers called n0, n1, ...
[[nodiscard]] std::string as_text(const std::vector<JobNumber>& numbers);

}  // namespace sparewright::benchmarks
