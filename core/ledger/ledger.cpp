#include "core/ledger/ledger.hpp"

#include <algorithm>
#include <atomic>
#include <cassert>
#include <cmath>
#include <limits>
#include <stdexcept>
#include <utility>

#include "core/ledger/leave.hpp"

namespace sparewright::ledger {
namespace {

base::Fingerprint print_of_missing(std::string_view name, const std::vector<std::string>& missing) {
  base::Hasher h;
  h.add("missing").add(name).add(static_cast<std::uint64_t>(missing.size()));
  for (const std::string& root : missing)
    h.add(root);
  return h.done();
}

base::Fingerprint print_of_names(const std::vector<std::string>& names) {
  base::Hasher h;
  h.add(static_cast<std::uint64_t>(names.size()));
  for (const std::string& name : names)
    h.add(name);
  return h.done();
}

// "a -> b -> a"
std::string in_words(const std::vector<std::string>& circle) {
  std::string words;
  for (const std::string& stage : circle)
    words += stage + " -> ";
  return words + circle.front();
}

// Puts what the stage has written under the name into the answer; false where that is nothing.
bool look_up(const Output& output, Question::Of of, base::Name name, Answer& answer) {
  if (of == Question::Of::kFigure) {
    const WrittenFigure* found = output.figures.find(name);
    if (found == nullptr) return false;
    answer.figure = &found->figure();
    answer.print = found->print();
  } else if (of == Question::Of::kValue) {
    const auto found = output.values.find(name.text());
    if (found == output.values.end()) return false;
    answer.value = &found->second;
    answer.print = found->second.print;
  } else {
    for (const WrittenFigure* written : output.figures.all())
      answer.names.push_back(written->figure().name.text());
    std::sort(answer.names.begin(), answer.names.end());
    answer.print = print_of_names(answer.names);
  }
  return true;
}

}  // namespace

void Ledger::declare(std::vector<Stage> stages) {
  forget_owners();
  const Cells before = std::exchange(cells_, {});
  for (Stage& stage : stages) {
    Cell cell;
    const auto old = before.find(stage.name);
    if (old != before.end() && old->second.stage->definition == stage.definition)
      cell.memo = old->second.memo;
    std::string name = stage.name;
    cell.stage = std::make_shared<const Stage>(std::move(stage));
    const bool is_new = cells_.try_emplace(std::move(name), std::move(cell)).second;
    assert(is_new && "each stage has a name of its own");
  }
  ++revision_;
}

void Ledger::stage(Stage stage) {
  forget_owners();
  Cell& cell = cells_[stage.name];
  if (cell.stage && cell.stage->definition != stage.definition) cell.memo.reset();
  cell.stage = std::make_shared<const Stage>(std::move(stage));
  ++revision_;
}

void Ledger::forget_owners() {
  owners_.clear();
  for (auto& [name, cell] : cells_)
    cell.knows_asked = false;
}

Ledger::Cell* Ledger::owner_of(base::Name name) {
  const auto [kept, is_new] = owners_.try_emplace(name, nullptr);
  if (is_new) kept->second = find_owner(name);
  return kept->second;
}

// The stage a name belongs to: the longest stage name it lies below.
Ledger::Cell* Ledger::find_owner(std::string_view name) {
  for (std::string_view prefix = name;;) {
    if (const auto found = cells_.find(prefix); found != cells_.end()) return &found->second;
    const auto slash = prefix.rfind('/');
    if (slash == std::string_view::npos) return nullptr;
    prefix = prefix.substr(0, slash);
  }
}

void Ledger::bring_up_to_date(Cell& cell) {
  if (cell.verified_at == revision_) return;
  if (running_.size() >= kDeepestChain)
    throw std::length_error("too long a chain of stages: " + cell.stage->name);
  const struct Running {  // also leaves on an exception
    Running(std::vector<Cell*>& stages, Cell& of) : running(stages), inside(of) {
      running.push_back(&of);
      inside.running = true;
    }
    ~Running() {
      running.pop_back();
      inside.running = false;
    }
    Running(const Running&) = delete;
    Running& operator=(const Running&) = delete;
    std::vector<Cell*>& running;
    Cell& inside;
  } guard(running_, cell);
  if (!is_untouched(cell)) {
    cell.knows_asked = false;
    cell.asked.clear();
    if (!cell.memo || !still_answered(*cell.memo)) run(cell);
    cell.knows_asked = true;
  }
  cell.verified_at = revision_;
}

// In the order they were first asked: what comes after one that has run again may not make sense any more.
bool Ledger::is_untouched(const Cell& cell) {
  if (!cell.knows_asked || cell.replaced_at > cell.verified_at) return false;
  return std::all_of(cell.asked.begin(), cell.asked.end(), [&](Cell* other) {
    if (other->running) return false;
    bring_up_to_date(*other);
    return other->ran_at <= cell.verified_at;
  });
}

// In the order they were asked: a later question may only make sense with the earlier answers.
bool Ledger::still_answered(const Memo& memo) {
  return std::all_of(memo.questions.begin(), memo.questions.end(), [&](const Question& question) {
    return answer(question.of, question.name).print == question.answer;
  });
}

// The memo to write the next run into: the old one where this cell alone holds it.
std::shared_ptr<Memo> Ledger::memo_for(Cell& cell) {
  if (!cell.memo || cell.memo.use_count() > 1 || !cell.memo->output.figures.is_as_before())
    return std::make_shared<Memo>();
  std::atomic_thread_fence(std::memory_order_acquire);  // a snapshot may have been given up on another thread
  cell.memo->begin_again();
  return std::move(cell.memo);
}

void Ledger::run(Cell& cell) {
  auto memo = memo_for(cell);
  cell.asked.clear();
  Pen pen(*this, memo->output, memo->questions, cell.stage->name);
  ++runs_;
  try {
    cell.stage->work(pen);
  } catch (Leave& leave) {
    memo->output.missing = std::move(leave.missing);
    memo->output.circle = std::move(leave.circle);
  }
  cell.memo = std::move(memo);
  cell.ran_at = revision_;
}

// Circles. A stage whose question would make it wait for itself ends at that question, and so do the stages
// between: each of them sees the circle in the answer it gets, with the same words wherever the circle was
// entered. So what a stage writes does not depend on which stage was asked for first.
Answer Ledger::answer(Question::Of of, base::Name name) {
  Answer answer;
  if (of == Question::Of::kReplacement) {
    answer.print = print_of(replacement_of(name));
    return answer;
  }
  Cell* cell = owner_of(name);
  if (of == Question::Of::kNames && cell != nullptr && cell->stage->name != name.text()) cell = nullptr;
  const bool asks_itself = cell != nullptr && !running_.empty() && cell == running_.back();
  if (cell != nullptr && !asks_itself && !running_.empty()) {
    auto& asked = running_.back()->asked;
    if (std::find(asked.rbegin(), asked.rend(), cell) == asked.rend()) asked.push_back(cell);
  }
  if (cell == nullptr || asks_itself) {
    answer.missing = {name.text()};
  } else if (cell->running) {
    answer.circle = circle_through(*cell);
  } else {
    bring_up_to_date(*cell);
    const Output& output = cell->memo->output;
    const bool closes_circle =
        !running_.empty() && std::find(output.circle.begin(), output.circle.end(),
                                       running_.back()->stage->name) != output.circle.end();
    if (closes_circle) {
      answer.circle = output.circle;
    } else if (look_up(output, of, name, answer)) {
      return answer;
    } else {
      answer.missing = output.missing.empty() ? std::vector{name.text()} : output.missing;
    }
  }
  if (!answer.circle.empty()) answer.missing = {in_words(answer.circle)};
  answer.print = print_of_missing(name, answer.missing);
  return answer;
}

const Replacement* Ledger::replacement_of(base::Name root) const {
  const auto found = replacements_.find(root);
  return found != replacements_.end() ? &found->second : nullptr;
}

base::Fingerprint Ledger::print_of(const Replacement* replacement) {
  if (replacement == nullptr) return {};
  base::Hasher h;
  h.add(replacement->value).add(replacement->source).add(replacement->shares.has_value());
  if (replacement->shares) {
    for (const Share& share : *replacement->shares) {
      h.add(share.cause.print()).add(share.amount).add(share.degrees_of_freedom);
    }
  }
  return h.done();
}

// The stages from this one to the innermost, all waiting for one another; the first by name stands first.
std::vector<std::string> Ledger::circle_through(const Cell& cell) const {
  std::vector<std::string> circle;
  for (auto at = std::find(running_.begin(), running_.end(), &cell); at != running_.end(); ++at) {
    circle.push_back((*at)->stage->name);
  }
  std::rotate(circle.begin(), std::min_element(circle.begin(), circle.end()), circle.end());
  return circle;
}

Figure Ledger::get(std::string_view name) {
  Answer found = answer(Question::Of::kFigure, name);
  if (found.figure != nullptr) return *found.figure;
  Figure unknown;
  unknown.name = name;
  unknown.value = std::numeric_limits<double>::quiet_NaN();
  unknown.missing = std::move(found.missing);
  return unknown;
}

std::shared_ptr<const void> Ledger::value_of(std::string_view name, const std::type_info& type) {
  const Answer found = answer(Question::Of::kValue, name);
  return found.value != nullptr && found.value->type == type ? found.value->value : nullptr;
}

void Ledger::settle() {
  for (auto& [name, cell] : cells_)
    bring_up_to_date(cell);
}

std::vector<Figure> Ledger::figures() {
  std::vector<Figure> all;
  const Snapshot snapshot = keep();
  for (const Figure* figure : snapshot.figures())
    all.push_back(*figure);
  return all;
}

std::vector<Verdict> Ledger::verdicts() {
  return keep().verdicts();
}

std::vector<Query> Ledger::queries() {
  return keep().queries();
}

void Ledger::replace(std::string_view root, Replacement replacement) {
  if (replacement.shares) replacement.shares = in_order(std::move(*replacement.shares));
  replacements_.insert_or_assign(root, std::move(replacement));
  note_replaced(root);
}

void Ledger::restore(std::string_view root) {
  replacements_.erase(root);
  note_replaced(root);
}

// Only its own stage asks what takes the place of a root.
void Ledger::note_replaced(base::Name root) {
  ++revision_;
  if (Cell* owner = owner_of(root); owner != nullptr) owner->replaced_at = revision_;
}

Snapshot Ledger::keep() {
  settle();
  Snapshot snapshot;
  for (const auto& [name, cell] : cells_)
    snapshot.stages_[name] = {cell.stage, cell.memo};
  snapshot.replacements_ = replacements_;
  return snapshot;
}

void Ledger::back_to(const Snapshot& snapshot) {
  forget_owners();
  cells_.clear();
  for (const auto& [name, held] : snapshot.stages_) {
    Cell& cell = cells_[name];
    cell.stage = held.stage;
    cell.memo = held.memo;
  }
  replacements_ = snapshot.replacements_;
  ++revision_;
}

}  // namespace sparewright::ledger
