#include "core/ledger/ledger.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/ledger/leave.hpp"

namespace sparewright::ledger {
namespace {

base::Fingerprint print_of_missing(std::string_view name, const std::vector<std::string>& missing) {
  base::Hasher h;
  h.add("missing").add(name);
  for (const std::string& root : missing) h.add(root);
  return h.done();
}

base::Fingerprint print_of(const Replacement& replacement) {
  base::Hasher h;
  h.add(replacement.value).add(replacement.source).add(replacement.shares.has_value());
  if (replacement.shares) {
    for (const Share& share : *replacement.shares) {
      h.add(share.cause).add(share.amount).add(share.degrees_of_freedom);
    }
  }
  return h.done();
}

}  // namespace

void Ledger::declare(std::vector<Stage> stages) {
  Cells before = std::exchange(cells_, {});
  for (Stage& stage : stages) {
    Cell& cell = cells_[stage.name];
    if (const auto old = before.find(stage.name); old != before.end() && old->second.definition == stage.definition) {
      cell.memo = old->second.memo;
    }
    cell.definition = stage.definition;
    cell.work = std::move(stage.work);
  }
  ++revision_;
}

void Ledger::stage(Stage stage) {
  Cell& cell = cells_[stage.name];
  if (cell.definition != stage.definition) cell.memo.reset();
  cell.definition = stage.definition;
  cell.work = std::move(stage.work);
  ++revision_;
}

// The stage a name belongs to: the longest stage name it lies below.
Ledger::Cell* Ledger::owner_of(std::string_view name, std::string* stage) {
  for (std::string_view prefix = name;;) {
    if (const auto found = cells_.find(prefix); found != cells_.end()) {
      if (stage != nullptr) *stage = found->first;
      return &found->second;
    }
    const auto slash = prefix.rfind('/');
    if (slash == std::string_view::npos) return nullptr;
    prefix = prefix.substr(0, slash);
  }
}

void Ledger::bring_up_to_date(const std::string& name, Cell& cell) {
  if (cell.verified_at == revision_) return;
  const struct Running {  // also leaves on an exception
    Running(Ledger& ledger, const std::string& stage, Cell& of) : running(ledger.running_), inside(of) {
      running.push_back(stage);
      inside.running = true;
    }
    ~Running() {
      running.pop_back();
      inside.running = false;
    }
    Running(const Running&) = delete;
    Running& operator=(const Running&) = delete;
    std::vector<std::string>& running;
    Cell& inside;
  } guard(*this, name, cell);
  if (!cell.memo || !still_answered(*cell.memo)) run(name, cell);
  cell.verified_at = revision_;
}

// In the order they were asked: a later question may only make sense with the earlier answers.
bool Ledger::still_answered(const Memo& memo) {
  return std::all_of(memo.questions.begin(), memo.questions.end(),
                     [&](const Question& question) { return answer_now(question) == question.answer; });
}

void Ledger::run(const std::string& name, Cell& cell) {
  auto memo = std::make_shared<Memo>();
  Pen pen(*this, memo->output, memo->questions, name);
  ++runs_;
  try {
    cell.work(pen);
  } catch (const Leave& leave) {
    memo->output.missing = leave.missing;
  }
  for (const auto& [figure_name, figure] : memo->output.figures) {
    memo->output.prints.emplace(figure_name, fingerprint(figure));
  }
  cell.memo = std::move(memo);
}

Ledger::Answer Ledger::figure_now(std::string_view name) {
  Answer answer;
  std::string stage;
  Cell* cell = owner_of(name, &stage);
  if (cell == nullptr) {
    answer.missing = {std::string(name)};
  } else if (cell->running) {
    std::string circle;
    for (auto at = std::find(running_.begin(), running_.end(), stage); at != running_.end(); ++at) {
      circle += *at + " -> ";
    }
    answer.missing = {circle + stage};
  } else {
    bring_up_to_date(stage, *cell);
    const Output& output = cell->memo->output;
    if (const auto found = output.figures.find(name); found != output.figures.end()) {
      answer.figure = &found->second;
      answer.print = output.prints.find(name)->second;
      return answer;
    }
    answer.missing = output.missing.empty() ? std::vector<std::string>{std::string(name)} : output.missing;
  }
  answer.print = print_of_missing(name, answer.missing);
  return answer;
}

const PublishedValue* Ledger::value_now(std::string_view name) {
  std::string stage;
  Cell* cell = owner_of(name, &stage);
  if (cell == nullptr || cell->running) return nullptr;
  bring_up_to_date(stage, *cell);
  const auto found = cell->memo->output.values.find(name);
  return found == cell->memo->output.values.end() ? nullptr : &found->second;
}

std::vector<std::string> Ledger::names_now(std::string_view stage) {
  const auto found = cells_.find(stage);
  std::vector<std::string> names;
  if (found == cells_.end() || found->second.running) return names;
  bring_up_to_date(found->first, found->second);
  for (const auto& [name, figure] : found->second.memo->output.figures) names.push_back(name);
  return names;
}

base::Fingerprint Ledger::answer_now(const Question& question) {
  switch (question.of) {
    case Question::Of::kFigure:
      return figure_now(question.name).print;
    case Question::Of::kValue: {
      const PublishedValue* found = value_now(question.name);
      return found == nullptr ? base::Fingerprint{} : found->print;
    }
    case Question::Of::kNames: {
      base::Hasher h;
      for (const std::string& name : names_now(question.name)) h.add(name);
      return h.done();
    }
    case Question::Of::kReplacement: {
      const auto found = replacements_.find(question.name);
      return found == replacements_.end() ? base::Fingerprint{} : print_of(found->second);
    }
  }
  return {};
}

Figure Ledger::get(std::string_view name) {
  const Answer answer = figure_now(name);
  if (answer.figure != nullptr) return *answer.figure;
  Figure unknown;
  unknown.name = name;
  unknown.value = std::nan("");
  unknown.missing = answer.missing;
  return unknown;
}

std::shared_ptr<const void> Ledger::value_of(std::string_view name, const std::type_info& type) {
  const PublishedValue* found = value_now(name);
  return found != nullptr && found->type == type ? found->value : nullptr;
}

void Ledger::settle() {
  for (auto& [name, cell] : cells_) bring_up_to_date(name, cell);
}

std::vector<Figure> Ledger::figures() {
  std::vector<Figure> all;
  const Snapshot snapshot = keep();
  for (const Figure* figure : snapshot.figures()) all.push_back(*figure);
  return all;
}

std::vector<Verdict> Ledger::verdicts() { return keep().verdicts(); }

std::vector<Query> Ledger::queries() {
  settle();
  std::vector<Query> all;
  for (const auto& [name, cell] : cells_) {
    const auto& queries = cell.memo->output.queries;
    all.insert(all.end(), queries.begin(), queries.end());
  }
  return all;
}

Trail Ledger::why(std::string_view name) {
  std::map<std::string, bool> shown;
  return trail(std::string(name), shown);
}

Trail Ledger::trail(const std::string& name, std::map<std::string, bool>& shown) {
  Trail t;
  t.figure = get(name);
  t.shown_before = std::exchange(shown[name], true) && !t.figure.inputs.empty();
  if (t.shown_before) return t;
  for (const std::string& input : t.figure.inputs) t.inputs.push_back(trail(input, shown));
  return t;
}

std::vector<Moved> Ledger::moved_by(std::string_view root) {
  const Snapshot snapshot = keep();
  const Figure* source = snapshot.find(root);
  std::vector<Moved> moved;
  if (source == nullptr) return moved;
  std::map<std::string_view, bool> reaches{{source->name, true}};
  const std::function<bool(const Figure&)> reached = [&](const Figure& figure) {
    if (const auto known = reaches.find(figure.name); known != reaches.end()) return known->second;
    reaches[figure.name] = false;
    const bool yes = std::any_of(figure.inputs.begin(), figure.inputs.end(), [&](const std::string& input) {
      const Figure* below = snapshot.find(input);
      return below != nullptr && reached(*below);
    });
    return reaches[figure.name] = yes;
  };
  for (const Figure* figure : snapshot.figures()) {
    if (figure == source || !reached(*figure)) continue;
    double squares = 0.0;
    for (const Share& share : figure->shares) {
      const bool of_root = std::any_of(source->shares.begin(), source->shares.end(),
                                       [&](const Share& s) { return s.cause == share.cause; });
      if (of_root) squares += share.amount * share.amount;
    }
    const double u = figure->u();
    moved.push_back({figure->name, std::sqrt(squares), u > 0.0 ? squares / (u * u) : 0.0});
  }
  return moved;
}

void Ledger::replace(std::string_view root, Replacement replacement) {
  replacements_.insert_or_assign(std::string(root), std::move(replacement));
  ++revision_;
}

void Ledger::restore(std::string_view root) {
  if (const auto found = replacements_.find(root); found != replacements_.end()) replacements_.erase(found);
  ++revision_;
}

Snapshot Ledger::keep() {
  settle();
  Snapshot snapshot;
  for (const auto& [name, cell] : cells_) snapshot.stages_[name] = {cell.definition, cell.work, cell.memo};
  snapshot.replacements_ = replacements_;
  return snapshot;
}

void Ledger::back_to(const Snapshot& snapshot) {
  cells_.clear();
  for (const auto& [name, held] : snapshot.stages_) {
    Cell& cell = cells_[name];
    cell.definition = held.definition;
    cell.work = held.work;
    cell.memo = held.memo;
  }
  replacements_ = snapshot.replacements_;
  ++revision_;
}

}  // namespace sparewright::ledger
