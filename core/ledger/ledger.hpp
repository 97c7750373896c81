// Every number and verdict of a job, worked out on demand and kept until something it asked has changed.
//
// The cell is a stage: ordinary C++ that asks other stages and writes figures (pen.hpp). The questions a
// stage asked are kept with the fingerprints of the answers; they are asked again in that order, and the
// stage runs again only if an answer changed. What it wrote is not changed while anyone keeps it, so a kept state
// costs a copy of pointers; where nobody does, the new run is written over it.
//
// Guarantees
//   1. Incremental equals from scratch, bit for bit, whatever was asked first.
//   2. Nothing runs when nothing changed.
//   3. Equality is bitwise, element by element; there is no tolerance.
//
// Limit: a chain of more than kDeepestChain stages, each waiting for the next, throws std::length_error and
// leaves the ledger as it was; what it was working out is worked out again when asked for. An exception of a stage's own
// passes through in the same way.
//
// Not thread-safe; snapshots may be read from other threads.
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/base/hash.hpp"
#include "core/base/name.hpp"
#include "core/ledger/figure.hpp"
#include "core/ledger/output.hpp"
#include "core/ledger/pen.hpp"
#include "core/ledger/verdict.hpp"

namespace sparewright::ledger {

// A job's chains are a few dozen stages long; at this depth each may take 16 kB of an 8 MB stack.
inline constexpr std::size_t kDeepestChain = 500;

// name: a path; its figures lie below it, and no other stage's name may lie below it where it writes.
// definition: equal only where `work` would do the same with the same answers; it covers everything captured.
struct Stage {
  std::string name;
  base::Fingerprint definition;
  std::function<void(Pen&)> work;
};

// Takes the place of a root: a found size, a draw of a trial calculation. The figure is then a reading, exact
// (not bounded), and no longer what was typed.
struct Replacement {
  double value = 0.0;            // base unit
  std::optional<Shares> shares;  // in any order; none: those of the root stay
  std::string source;            // said in the trail
};
using Replacements = std::unordered_map<base::Name, Replacement>;  // by root

// Where a figure comes from, down to the roots, its inputs in the order of its formula.
struct Trail {
  Figure figure;
  std::vector<Trail> inputs;
  bool shown_before = false;  // its inputs were given further up; here they are left out
};

// A figure that a root moves.
struct Moved {
  std::string name;
  double amount = 0.0;  // standard uncertainty that the root's causes put into it, base unit
  double part = 0.0;    // of its variance, 0 to 1
};

class Snapshot;

class Ledger {
 public:
  // The whole set of stages, each name once. Those of an equal name and definition keep what they have worked
  // out; others vanish.
  void declare(std::vector<Stage> stages);
  // Adds or replaces one.
  void stage(Stage stage);

  // The figure, worked out as far as needed. NOT KNOWN where there is none of that name: what is missing is
  // then what kept its stage from writing it, or else the name.
  Figure get(std::string_view name);
  template <typename Value>
  std::shared_ptr<const Value> value(std::string_view name) {
    return std::static_pointer_cast<const Value>(value_of(name, typeid(Value)));
  }

  void settle();  // works out every stage

  // These settle first. Figures in the order of their names; verdicts and queries in the order of their
  // stages' names, within a stage as written.
  std::vector<Figure> figures();
  std::vector<Verdict> verdicts();
  std::vector<Query> queries();

  // The trail of a figure; a NOT KNOWN one where there is none of that name.
  Trail why(std::string_view name);
  // The figures whose trail reaches the root, and how much of each is its doing. Settles first.
  std::vector<Moved> moved_by(std::string_view root);

  void replace(std::string_view root, Replacement replacement);
  void restore(std::string_view root);

  Snapshot keep();  // settles first
  void back_to(const Snapshot& snapshot);

  [[nodiscard]] std::uint64_t runs() const { return runs_; }  // how often any stage has run

 private:
  friend class Pen;
  struct Cell {
    std::shared_ptr<const Stage> stage;
    std::shared_ptr<Memo> memo;  // none while it runs, or after an exception
    // The cells that its answers came from, in the order first asked, where that is known: while none of them has run again
    // and no replacement of its roots came or went, its answers are the same.
    std::vector<Cell*> asked;
    bool knows_asked = false;
    std::uint64_t verified_at = 0;  // revisions
    std::uint64_t ran_at = 0;
    std::uint64_t replaced_at = 0;
    bool running = false;
  };
  using Cells = std::map<std::string, Cell, std::less<>>;

  Cell* owner_of(base::Name name);
  [[nodiscard]] Cell* find_owner(std::string_view name);
  void bring_up_to_date(Cell& cell);
  void forget_owners();
  bool is_untouched(const Cell& cell);
  bool still_answered(const Memo& memo);
  [[nodiscard]] static std::shared_ptr<Memo> memo_for(Cell& cell);
  void run(Cell& cell);

  Answer answer(Question::Of of, base::Name name);
  [[nodiscard]] const Replacement* replacement_of(base::Name root) const;  // none: as it was written
  void note_replaced(base::Name root);
  [[nodiscard]] static base::Fingerprint print_of(const Replacement* replacement);
  std::vector<std::string> circle_through(const Cell& cell) const;
  std::shared_ptr<const void> value_of(std::string_view name, const std::type_info& type);

  Cells cells_;
  std::unordered_map<base::Name, Cell*> owners_;  // those found so far; forgotten where a stage comes or goes
  Replacements replacements_;
  std::vector<Cell*> running_;  // innermost last
  std::uint64_t revision_ = 1;
  std::uint64_t runs_ = 0;
};

// A state of the ledger that stays as it is.
class Snapshot {
 public:
  [[nodiscard]] const Figure* find(std::string_view name) const;
  [[nodiscard]] std::vector<const Figure*> figures() const;  // in the order of their names
  [[nodiscard]] std::vector<Verdict> verdicts() const;       // in the order of Ledger::verdicts
  [[nodiscard]] std::vector<Query> queries() const;

 private:
  friend class Ledger;
  struct Held {
    std::shared_ptr<const Stage> stage;
    std::shared_ptr<Memo> memo;  // never written over: this state holds it too
  };
  std::map<std::string, Held, std::less<>> stages_;
  Replacements replacements_;
};

// What differs between two states, in the order of the names.
struct Change {
  std::string name;
  std::optional<Figure> before;  // none: it was not there
  std::optional<Figure> after;
};
[[nodiscard]] std::vector<Change> between(const Snapshot& before, const Snapshot& after);

}  // namespace sparewright::ledger
