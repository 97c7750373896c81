#include "core/ledger/pen.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "core/ledger/leave.hpp"
#include "core/ledger/ledger.hpp"

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

}  // namespace

base::Name Pen::full_name(std::string_view local) {
  path_.resize(stage_.size() + 1);
  return path_.append(local);
}

Figure& Pen::begin(std::string_view local) {
  Figure* again = output_.figures.write_again(stage_.size() + 1, local);
  return again != nullptr ? *again : output_.figures.write(full_name(local));
}

// Asks, keeps the question, and ends the stage where it would wait for itself.
Answer Pen::asked(Question::Of of, base::Name name) {
  Answer answer = ledger_.answer(of, name);
  questions_.push_back({of, name, answer.print});
  if (!answer.circle.empty()) throw Leave{std::move(answer.missing), std::move(answer.circle)};
  return answer;
}

// A question like any other, though the answer is never that something is missing.
const Replacement* Pen::replacement_of(base::Name root) {
  const Replacement* found = ledger_.replacement_of(root);
  questions_.push_back({Question::Of::kReplacement, root, Ledger::print_of(found)});
  return found;
}

const Figure& Pen::ask(base::Name name) {
  if (const WrittenFigure* own = output_.figures.find(name); own != nullptr) return own->figure();
  Answer answer = asked(Question::Of::kFigure, name);
  if (answer.figure != nullptr) return *answer.figure;
  Figure& unknown = unknown_.emplace_front();
  unknown.name = name;
  unknown.missing = std::move(answer.missing);
  make_unknown(unknown);
  return unknown;
}

const Figure& Pen::need(base::Name name) {
  const Figure& figure = ask(name);
  if (!figure.known()) throw Leave{figure.missing, {}};
  return figure;
}

const void* Pen::ask_value(std::string_view name, const std::type_info& type) {
  const Answer answer = asked(Question::Of::kValue, name);
  return answer.value != nullptr && answer.value->type == type ? answer.value->value.get() : nullptr;
}

const void* Pen::need_published(std::string_view name, const std::type_info& type) {
  Answer answer = asked(Question::Of::kValue, name);
  if (answer.value == nullptr) throw Leave{std::move(answer.missing), {}};
  if (answer.value->type != type) throw Leave{{std::string(name)}, {}};
  return answer.value->value.get();
}

std::vector<std::string> Pen::names(std::string_view stage) {
  return asked(Question::Of::kNames, stage).names;
}

void Pen::publish_value(std::string_view local, std::shared_ptr<const void> value, const std::type_info& type,
                        const base::Fingerprint& print) {
  const bool is_new =
      output_.values.try_emplace(full_name(local), PublishedValue{std::move(value), type, print}).second;
  assert(is_new && "a stage publishes each of its values once");
}

const Figure& Pen::root(std::string_view local, Root root) {
  Figure& figure = begin(local);
  figure.kind = root.kind;
  figure.value = base::canonical(root.value.value_or(std::numeric_limits<double>::quiet_NaN()));
  figure.shares = in_order(std::move(root.shares));
  figure.bound = root.bound;
  figure.origin = root.origin;
  figure.typed = std::move(root.typed);
  figure.source = std::move(root.source);
  if (const Replacement* found = replacement_of(figure.name); found != nullptr) {
    figure.value = base::canonical(found->value);
    if (found->shares) figure.shares = *found->shares;
    figure.bound = Bound::kExact;
    figure.origin = Origin::kReading;
    figure.typed.clear();
    figure.source = found->source;
  }
  const bool finite =
      std::isfinite(figure.value) && std::all_of(figure.shares.begin(), figure.shares.end(),
                                                 [](const Share& s) { return std::isfinite(s.amount); });
  if (!finite) {
    figure.missing = {figure.name};
    make_unknown(figure);
  }
  return figure;
}

void Pen::work_out(Figure& figure, quantity::Kind kind, std::string_view words, double value,
                   std::span<const Term> terms) {
  figure.kind = kind;
  figure.value = base::canonical(value);
  figure.formula = words;
  bool finite = std::isfinite(value);
  std::size_t shares = 0;
  figure.inputs.reserve(terms.size());
  for (const Term& term : terms) {
    shares += term.figure->shares.size();
    figure.inputs.push_back(term.figure->name);
    if (!term.figure->known()) add_missing(figure.missing, term.figure->missing);
    finite = finite && std::isfinite(term.slope);
  }
  if (figure.missing.empty() && !finite) figure.missing = {figure.name};
  if (!figure.known()) {
    make_unknown(figure);
    return;
  }
  figure.shares.reserve(shares);
  for (const Term& term : terms) {
    add_scaled(figure.shares, term.figure->shares, term.slope);
    figure.bound = joined(figure.bound, scaled(term.figure->bound, term.slope));
  }
}

const Figure& Pen::linear(std::string_view local, quantity::Kind kind, std::string_view words, double value,
                          std::span<const Term> terms, std::string_view source) {
  Figure& figure = begin(local);
  work_out(figure, kind, words, value, terms);
  if (!source.empty()) figure.source = source;
  return figure;
}

const Figure& Pen::exact(std::string_view local, quantity::Kind kind, std::string_view words, double value,
                         std::span<const Term> terms, std::string_view source) {
  Figure& figure = begin(local);
  work_out(figure, kind, words, value, terms);
  figure.bound = Bound::kExact;
  if (!source.empty()) figure.source = source;
  return figure;
}

const Figure& Pen::decide(std::string_view local, const Decision& decision) {
  Figure& figure = begin(local);
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
  if (!figure.known()) make_unknown(figure);
  return figure;
}

void Pen::state(Verdict verdict) {
  output_.verdicts.push_back(std::move(verdict));
}

void Pen::query(Query query) {
  output_.queries.push_back(std::move(query));
}

double sigmas_to(const Figure& figure, double threshold) {
  const double u = figure.u();
  return u > 0.0 ? std::abs(figure.value - threshold) / u : std::numeric_limits<double>::infinity();
}

}  // namespace sparewright::ledger
