#include "core/ledger/pen.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/ledger/ledger.hpp"
#include "core/ledger/leave.hpp"

namespace sparewright::ledger {
namespace {

void add_missing(std::vector<std::string>& all, const std::vector<std::string>& more) {
  for (const std::string& name : more) {
    if (std::find(all.begin(), all.end(), name) == all.end()) all.push_back(name);
  }
}

void make_unknown(Figure& figure) {
  figure.value = std::numeric_limits<double>::quiet_NaN();
  figure.shares.clear();
  figure.bound = Bound::kExact;
}

// With a margin known only from one side, only that side can decide.
State state_of(const Figure& margin, bool close_at_best) {
  if (!margin.known() || margin.bound == Bound::kNeither) return State::kNotKnown;
  if (margin.value < 0) return margin.bound == Bound::kAtLeast ? State::kNotKnown : State::kNo;
  if (margin.bound == Bound::kAtMost) return State::kNotKnown;
  return margin.value < margin.expanded() || close_at_best ? State::kClose : State::kOk;
}

}  // namespace

std::string Pen::full_name(std::string_view local) const {
  std::string name = stage_;
  name += '/';
  name += local;
  return name;
}

const Figure& Pen::write(Figure figure) {
  std::string name = figure.name;
  return output_.figures.insert_or_assign(std::move(name), std::move(figure)).first->second;
}

const Figure& Pen::ask(std::string_view name) {
  if (const auto own = output_.figures.find(name); own != output_.figures.end()) return own->second;
  Ledger::Answer answer = ledger_.figure_now(name);
  questions_.push_back({Question::Of::kFigure, std::string(name), answer.print});
  if (answer.figure != nullptr) return *answer.figure;
  Figure& unknown = unknown_.emplace_back();
  unknown.name = name;
  unknown.missing = std::move(answer.missing);
  make_unknown(unknown);
  return unknown;
}

const Figure& Pen::need(std::string_view name) {
  const Figure& figure = ask(name);
  if (!figure.known()) leave(figure.missing);
  return figure;
}

const void* Pen::ask_value(std::string_view name, const std::type_info& type) {
  const PublishedValue* found = ledger_.value_now(name);
  questions_.push_back(
      {Question::Of::kValue, std::string(name), found == nullptr ? base::Fingerprint{} : found->print});
  return found != nullptr && found->type == type ? found->value.get() : nullptr;
}

std::vector<std::string> Pen::names(std::string_view stage) {
  Question question{Question::Of::kNames, std::string(stage), {}};
  question.answer = ledger_.answer_now(question);
  questions_.push_back(std::move(question));
  return ledger_.names_now(stage);
}

void Pen::publish_value(std::string_view local, std::shared_ptr<const void> value, const std::type_info& type,
                        const base::Fingerprint& print) {
  output_.values.insert_or_assign(full_name(local), PublishedValue{std::move(value), type, print});
}

void Pen::leave(std::vector<std::string> missing) { throw Leave{std::move(missing)}; }

const Figure& Pen::root(std::string_view local, const Root& root) {
  Figure figure;
  figure.name = full_name(local);
  figure.kind = root.kind;
  figure.value = base::canonical(root.value.value_or(std::numeric_limits<double>::quiet_NaN()));
  for (const Share& share : root.shares) add_scaled(figure.shares, {share}, 1.0);  // sorts and joins
  figure.bound = root.bound;
  figure.origin = root.origin;
  figure.typed = root.typed;
  figure.source = root.source;
  if (!root.value) figure.missing = {figure.name};

  Question question{Question::Of::kReplacement, figure.name, {}};
  question.answer = ledger_.answer_now(question);
  questions_.push_back(std::move(question));
  if (const auto found = ledger_.replacements_.find(figure.name); found != ledger_.replacements_.end()) {
    figure.value = base::canonical(found->second.value);
    if (found->second.shares) figure.shares = *found->second.shares;
    figure.bound = Bound::kExact;
    figure.source = found->second.source;
    figure.missing.clear();
  }
  return write(std::move(figure));
}

const Figure& Pen::linear(std::string_view local, quantity::Kind kind, std::string_view words, double value,
                          std::span<const Term> terms, std::string_view source) {
  Figure figure;
  figure.name = full_name(local);
  figure.kind = kind;
  figure.value = base::canonical(value);
  figure.formula = words;
  figure.source = source;
  for (const Term& term : terms) {
    figure.inputs.push_back(term.figure->name);
    add_missing(figure.missing, term.figure->missing);
    add_scaled(figure.shares, term.figure->shares, term.slope);
    figure.bound = joined(figure.bound, scaled(term.figure->bound, term.slope));
  }
  const bool finite = std::isfinite(value) && std::all_of(terms.begin(), terms.end(), [](const Term& term) {
                        return std::isfinite(term.slope);
                      });
  if (figure.missing.empty() && !finite) figure.missing = {figure.name};
  if (!figure.missing.empty()) make_unknown(figure);
  return write(std::move(figure));
}

const Figure& Pen::decide(std::string_view local, const Decision& decision) {
  Figure figure;
  figure.name = full_name(local);
  figure.kind = decision.kind;
  figure.value = base::canonical(decision.value);
  figure.origin = Origin::kChoice;
  figure.formula = decision.words;
  figure.source = decision.source;
  figure.flips_after = decision.flips_after;
  for (const Figure* input : decision.inputs) {
    figure.inputs.push_back(input->name);
    add_missing(figure.missing, input->missing);
  }
  if (figure.missing.empty() && !std::isfinite(decision.value)) figure.missing = {figure.name};
  if (!figure.missing.empty()) make_unknown(figure);
  return write(std::move(figure));
}

State Pen::judge(const Judgement& j) {
  const auto over_low = [](auto figure, auto low) { return figure - low; };
  const auto under_high = [](auto figure, auto high) { return high - figure; };
  const bool has_both = j.low != nullptr && j.high != nullptr;
  const bool low_counts =
      j.high == nullptr || (has_both && j.figure->value - j.low->value <= j.high->value - j.figure->value);
  const Figure& margin = low_counts
                             ? work(j.margin, j.figure->kind, "over the least allowed", over_low, *j.figure, *j.low)
                             : work(j.margin, j.figure->kind, "under the most allowed", under_high, *j.figure, *j.high);
  Verdict verdict;
  verdict.check = j.check;
  verdict.subject = j.subject;
  verdict.state = state_of(margin, j.close_at_best);
  verdict.figure = j.figure->name;
  if (j.low != nullptr) verdict.low = j.low->name;
  if (j.high != nullptr) verdict.high = j.high->name;
  verdict.margin = margin.name;
  verdict.reason = j.reason;
  verdict.source = j.source;
  verdict.missing = margin.missing;
  if (verdict.state == State::kNotKnown && verdict.missing.empty()) verdict.missing = {margin.name};
  if (verdict.state != State::kOk) verdict.todo = j.todo;
  output_.verdicts.push_back(std::move(verdict));
  return output_.verdicts.back().state;
}

void Pen::query(Query query) { output_.queries.push_back(std::move(query)); }

double sigmas_to(const Figure& figure, double threshold) {
  const double u = figure.u();
  return u > 0.0 ? std::abs(figure.value - threshold) / u : std::numeric_limits<double>::infinity();
}

}  // namespace sparewright::ledger
