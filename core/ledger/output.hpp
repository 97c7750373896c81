// What one run of a stage wrote and asked. Not changed after the run; when the stage runs again and nobody else has
// kept it, the new run is written over it.
#pragma once

#include <atomic>
#include <cstddef>
#include <cstdint>
#include <map>
#include <memory>
#include <memory_resource>
#include <span>
#include <string>
#include <string_view>
#include <typeindex>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/base/hash.hpp"
#include "core/base/name.hpp"
#include "core/ledger/figure.hpp"
#include "core/ledger/verdict.hpp"

namespace sparewright::ledger {

// A figure and its fingerprint, which is worked out when the first stage asks for it: most figures are asked
// for by no other stage.
class WrittenFigure {
 public:
  WrittenFigure(base::Name name, std::size_t place) : place_(place) { figure_.name = name; }

  [[nodiscard]] Figure& being_written() { return figure_; }  // before any stage has seen it
  // Empty again, but for its name.
  [[nodiscard]] Figure& written_over() {
    has_print_.store(false, std::memory_order_relaxed);
    make_empty(figure_);
    return figure_;
  }
  [[nodiscard]] std::size_t place() const { return place_; }  // in the order written
  [[nodiscard]] const Figure& figure() const { return figure_; }
  // From any thread: two that come at once work out the same.
  [[nodiscard]] base::Fingerprint print() const {
    if (has_print_.load(std::memory_order_acquire)) return {high_, low_};
    const base::Fingerprint print = fingerprint(figure_);
    high_ = print.high;
    low_ = print.low;
    has_print_.store(true, std::memory_order_release);
    return print;
  }

 private:
  Figure figure_;
  std::size_t place_;
  mutable std::atomic<std::uint64_t> high_{0};
  mutable std::atomic<std::uint64_t> low_{0};
  mutable std::atomic<bool> has_print_{false};
};

// The figures of a run in the order written. A stage that runs again mostly writes the same ones in the same order: each is
// then written over where it lies, without being looked for.
class WrittenFigures {
 public:
  // None where no figure of that name has been written.
  [[nodiscard]] const WrittenFigure* find(base::Name name) const;
  [[nodiscard]] std::span<WrittenFigure* const> all() const { return std::span(in_order_).first(count_); }

  // The figure of that name, empty still, behind those written so far. Each name is written once.
  [[nodiscard]] Figure& write(base::Name name);
  // The same where the name written next the last time goes on with `local` after so many letters of its path, which
  // are the same for all figures of a stage; none where it does not.
  [[nodiscard]] Figure* write_again(std::size_t path_letters, std::string_view local);

  void begin_again() { count_ = 0; }
  // Whether the next run may be written over this one. Not where figures of the run before are left over or were given
  // up: their room comes back with all the rest only.
  [[nodiscard]] bool is_as_before() const { return !gave_up_ && count_ == in_order_.size(); }

 private:
  // The one that was written next the last time; none where there is none.
  [[nodiscard]] WrittenFigure* next() const {
    return count_ < in_order_.size() ? in_order_[count_] : nullptr;
  }
  Figure& write_new(base::Name name);

  // Written once, and gone together. It begins with room for a dozen.
  std::pmr::monotonic_buffer_resource room_{4096};
  std::pmr::unordered_map<base::Name, WrittenFigure> by_name_{&room_};
  std::pmr::vector<WrittenFigure*> in_order_{&room_};
  std::size_t count_ = 0;  // of this run; what lies behind is of the one before
  bool gave_up_ = false;   // any of those behind
};

struct PublishedValue {
  std::shared_ptr<const void> value;
  std::type_index type{typeid(void)};
  base::Fingerprint print;
};

struct Output {
  WrittenFigures figures;
  std::map<std::string, PublishedValue, std::less<>> values;
  std::vector<Verdict> verdicts;
  std::vector<Query> queries;
  std::vector<std::string> missing;  // why the stage ended early; empty where it did not
  std::vector<std::string> circle;  // the stages that wait for one another, this one among them; mostly empty
};

// What a stage asked, and the fingerprint of the answer it got.
struct Question {
  enum class Of { kFigure, kValue, kNames, kReplacement };
  Of of = Of::kFigure;
  base::Name name;
  base::Fingerprint answer;
};

// The answer to a question; one of the first three, or none of them and what is missing.
struct Answer {
  const Figure* figure = nullptr;
  const PublishedValue* value = nullptr;
  std::vector<std::string> names;
  std::vector<std::string> missing;
  std::vector<std::string> circle;  // where the stage that asks would wait for itself: it ends there
  base::Fingerprint print;
};

// One run: what was written and what was asked on the way.
struct Memo {
  Output output;
  std::vector<Question> questions;

  void begin_again();
};

}  // namespace sparewright::ledger
