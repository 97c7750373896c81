// What the checks and queries say.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/hash.hpp"

namespace sparewright::ledger {

// With margin m and its expanded uncertainty U (19 in 20): NO if m < 0, CLOSE if 0 <= m < U, else OK.
enum class State { kOk, kClose, kNo, kNotKnown };

[[nodiscard]] std::string_view name_of(State state);  // "OK", "CLOSE", "NO", "NOT KNOWN"

// One check on one subject.
struct Verdict {
  std::string check;    // "fit with the mate"
  std::string subject;  // "pivot bore"
  State state = State::kNotKnown;
  std::string figure;              // name of the figure judged
  std::optional<std::string> low;  // names of the figures that limit it
  std::optional<std::string> high;
  std::string margin;  // name of the figure that holds the margin
  std::string reason;  // one sentence
  std::string source;
  std::string todo;                  // the smallest change that mends it; empty where nothing is to be done
  std::vector<std::string> missing;  // what is not known, for NOT KNOWN
};

enum class QueryState { kOpen, kOverruled };

// A number that may not be true: what it is, what would happen to the metal, the one thing to do.
struct Query {
  std::string id;     // stable: kind and subject
  std::string about;  // name of the figure
  std::string says;
  std::string happens;
  std::string todo;
  bool serious = false;  // the step cannot be put back, or a size moves past its own tolerance
  QueryState state = QueryState::kOpen;
  std::string reason;  // why it was overruled
};

[[nodiscard]] base::Fingerprint fingerprint(const Verdict& verdict);
[[nodiscard]] base::Fingerprint fingerprint(const Query& query);

}  // namespace sparewright::ledger
