// What one run of a stage wrote and asked. Never changed after the run.
#pragma once

#include <atomic>
#include <cstdint>
#include <map>
#include <memory>
#include <memory_resource>
#include <string>
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
  explicit WrittenFigure(base::Name name) { figure_.name = name; }

  [[nodiscard]] Figure& being_written() { return figure_; }  // before any stage has seen it
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
  mutable std::atomic<std::uint64_t> high_{0};
  mutable std::atomic<std::uint64_t> low_{0};
  mutable std::atomic<bool> has_print_{false};
};

struct PublishedValue {
  std::shared_ptr<const void> value;
  std::type_index type{typeid(void)};
  base::Fingerprint print;
};

struct Output {
  // For the figures: written once, and gone together. It begins with room for a dozen.
  std::pmr::monotonic_buffer_resource room{4096};
  std::pmr::unordered_map<base::Name, WrittenFigure> figures{&room};
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
};

}  // namespace sparewright::ledger
