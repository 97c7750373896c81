// Lengths added up one way and taken off the other: the gap or the shim that is left, with its tolerances.
#include <cmath>
#include <numeric>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"

namespace sparewright::answers {
namespace {

using quantity::Length;
using quantity::UnitSystem;

constexpr std::size_t kMostTerms = 20;
constexpr handbook::Source kAddedUp{"added up with their signs", "", handbook::Basis::kDerived};
constexpr handbook::Source kWorstCase{"every size at its worse end together", "", handbook::Basis::kDerived};
constexpr handbook::Source kRootSum{"root of the sum of the squares of the tolerances", "",
                                    handbook::Basis::kDerived};

struct Sum {
  Band total;
  double squares = 0.0;
};

Sum sum_of(const std::vector<Band>& plus, const std::vector<Band>& minus) {
  Sum sum;
  for (const Band& one : plus) {
    sum.total = {sum.total.low + one.low, sum.total.high + one.high};
    sum.squares += std::pow(one.width().base() / 2.0, 2);
  }
  for (const Band& one : minus) {
    sum.total = {sum.total.low - one.high, sum.total.high - one.low};
    sum.squares += std::pow(one.width().base() / 2.0, 2);
  }
  return sum;
}

// "0.0080 in under the least": how far an end lies outside; empty where it does not.
std::string outside_words(const Band& total, const Band& accepted, bool has_least, bool has_most,
                          UnitSystem system) {
  std::string words;
  const auto add = [&](Length by, std::string_view what) {
    if (magnitude(by) < Length::of(1e-6, quantity::unit::millimetre) || by < Length()) return;
    words += fmt::format("{}{} {}", words.empty() ? "" : ", ", both_ways(by, system), what);
  };
  if (has_least) add(accepted.low - total.low, "under the least");
  if (has_most) add(total.high - accepted.high, "over the most");
  return words;
}

std::string verdict(const Band& total, const Band& accepted, bool has_least, bool has_most,
                    UnitSystem system) {
  const std::string outside = outside_words(total, accepted, has_least, has_most, system);
  if (outside.empty()) return "OK";
  const bool never = (has_least && total.high < accepted.low) || (has_most && total.low > accepted.high);
  return fmt::format("{}: {}", never || total.width() == Length() ? "NO" : "may not do, at worst", outside);
}

}  // namespace

base::Result<Answer> sum(const Question& question) {
  EntryReader read(question);
  const auto plus = read.bands("plus", 1, kMostTerms);
  const auto minus = read.has("minus") ? read.bands("minus", 1, kMostTerms) : std::vector<Band>();
  const bool has_least = read.has("least");
  const bool has_most = read.has("most");
  const Band accepted{read.place_or_zero("least"), read.place_or_zero("most")};
  if (has_least && has_most && !read.failed())
    read.refuse_unless(accepted.low <= accepted.high, "most", "not less than the least");
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const Sum sum = sum_of(plus, minus);
  const bool has_tolerance = sum.total.width() > Length();
  Answer answer;
  answer.asked = fmt::format("{} length{} less {}", plus.size(), plus.size() == 1 ? "" : "s", minus.size());
  answer.says = both_ways(sum.total.middle(), system);
  if (has_least || has_most) answer.says += "; " + verdict(sum.total, accepted, has_least, has_most, system);
  TableWriter writer("what is left", system);
  writer.length("nominal", sum.total.middle(), kAddedUp);
  if (has_tolerance) {
    writer.range("at worst", sum.total.low, sum.total.high, kWorstCase);
    writer.length("tolerances together, each way", sum.total.width() / 2.0, kWorstCase);
    writer.length("likely, each way", Length::from_base(std::sqrt(sum.squares)), kRootSum,
                  "where the errors fall independently; one part may still have the worst of all");
  }
  if (has_least)
    writer.length("missing to the least, at worst", std::max(Length(), accepted.low - sum.total.low),
                  kAddedUp);
  if (has_most)
    writer.length("too much over the most, at worst", std::max(Length(), sum.total.high - accepted.high),
                  kAddedUp);
  answer.tables.push_back(writer.take());
  TableWriter terms("as they were taken", system);
  for (std::size_t i = 0; i < plus.size(); ++i)
    terms.range(fmt::format("plus {}", i + 1), plus[i].low, plus[i].high, kAddedUp,
                plus[i].high == Length() ? "nothing: was it measured from the right face?" : "");
  for (std::size_t i = 0; i < minus.size(); ++i)
    terms.range(fmt::format("minus {}", i + 1), minus[i].low, minus[i].high, kAddedUp);
  answer.tables.push_back(terms.take());
  if (has_least && sum.total.low < accepted.low && !has_tolerance)
    answer.cautions.emplace_back(
        "Under what there is: a face, a washer or a spacer may be missing from the readings. Measure again "
        "before grinding anything.");
  return answer;
}

}  // namespace sparewright::answers
