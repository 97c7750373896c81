// How a verdict comes of a figure and its limits.
#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <limits>
#include <utility>

#include "core/ledger/ledger.hpp"
#include "core/ledger/pen.hpp"

namespace sparewright::ledger {
namespace {

using quantity::Kind;

// The kind of the difference of two figures of a kind.
Kind difference_of(Kind kind) {
  if (quantity::is_length_like(kind)) return Kind::kLength;
  return kind == Kind::kTemperature ? Kind::kTemperatureDifference : kind;
}

// Sizes that are equal on paper come out of different sums a few last bits apart. That far is neither a
// margin nor a doubt.
double last_bits(double a, double b) {
  constexpr double kFew = 4.0;
  return kFew * std::numeric_limits<double>::epsilon() * (std::abs(a) + std::abs(b));
}

double difference(double a, double b) {
  return std::abs(a - b) <= last_bits(a, b) ? 0.0 : a - b;
}

// With a margin known only from one side, only that side can decide. A U that is not a number is never small
// enough.
State state_of(const Figure& margin, bool close_at_best, double noise) {
  if (!margin.known() || margin.bound == Bound::kNeither) return State::kNotKnown;
  if (margin.value < 0.0) return margin.bound == Bound::kAtLeast ? State::kNotKnown : State::kNo;
  if (margin.bound == Bound::kAtMost) return State::kNotKnown;
  return margin.value + noise >= margin.expanded() && !close_at_best ? State::kOk : State::kClose;
}

int badness(State state) {
  switch (state) {
    case State::kOk:
      return 0;
    case State::kClose:
      return 1;
    case State::kNotKnown:
      return 2;
    case State::kNo:
      return 3;
  }
  return 3;
}

struct Margin {
  Figure figure;
  State state = State::kNotKnown;
};

bool counts_before(const Margin& a, const Margin& b) {
  if (a.state != b.state) return badness(a.state) > badness(b.state);
  return a.figure.value <= b.figure.value || !b.figure.known();
}

}  // namespace

// What keeps the margin from deciding: what is not known, or else the roots that are known from one side only.
std::vector<std::string> Pen::missing_for(const Figure& margin, std::initializer_list<const Figure*> judged) {
  if (!margin.known()) return margin.missing;
  std::vector<std::string> roots;
  std::vector<base::Name> open;
  for (const Figure* figure : judged)
    open.push_back(figure->name);
  for (std::size_t next = 0; next < open.size(); ++next) {
    const Figure& figure = ask(open[next]);
    if (figure.bound == Bound::kExact) continue;
    const auto before = open.size();
    for (const base::Name input : figure.inputs) {
      const bool seen = std::find(open.begin(), open.end(), input) != open.end();
      if (!seen && ask(input).bound != Bound::kExact) open.push_back(input);
    }
    if (open.size() == before && figure.inputs.empty()) roots.push_back(figure.name);
  }
  return roots;
}

State Pen::judge(const Judgement& j) {
  assert(j.figure != nullptr && (j.low != nullptr || j.high != nullptr));
  const Kind kind = difference_of(j.figure->kind);
  const auto margin = [&](std::string_view words, const Figure& more, const Figure& less) {
    const std::array<Term, 2> terms{Term{&more, 1.0}, Term{&less, -1.0}};
    Figure figure;
    figure.name = full_name(j.margin);
    work_out(figure, kind, words, difference(more.value, less.value), terms);
    const State state = state_of(figure, j.close_at_best, last_bits(more.value, less.value));
    return Margin{std::move(figure), state};
  };
  std::optional<Margin> low;
  std::optional<Margin> high;
  if (j.low != nullptr) low = margin("over the least allowed", *j.figure, *j.low);
  if (j.high != nullptr) high = margin("under the most allowed", *j.high, *j.figure);
  const bool low_counts = !high || (low && counts_before(*low, *high));
  Margin& counts = low_counts ? *low : *high;

  Verdict verdict;
  verdict.check = j.check;
  verdict.subject = j.subject;
  verdict.state = counts.state;
  verdict.figure = j.figure->name;
  if (j.low != nullptr) verdict.low = j.low->name;
  if (j.high != nullptr) verdict.high = j.high->name;
  verdict.margin = counts.figure.name;
  verdict.reason = j.reason;
  verdict.source = j.source;
  if (counts.state == State::kNotKnown) {
    verdict.missing = missing_for(counts.figure, {j.figure, low_counts ? j.low : j.high});
  }
  if (verdict.state != State::kOk) verdict.todo = j.todo;
  output_.figures.write(counts.figure.name) = std::move(counts.figure);
  output_.verdicts.push_back(std::move(verdict));
  return counts.state;
}

}  // namespace sparewright::ledger
