#include "core/survey/misread.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include <fmt/format.h>

#include "core/quantity/display.hpp"
#include "core/survey/explanations.hpp"

namespace sparewright::survey {
namespace {

// So many others are named; of more the count is said.
constexpr std::size_t kMostNamed = 3;

std::string quoted(const std::string& name) {
  return fmt::format("'{}'", name);
}

// "a, b or c"
std::string one_of(const std::vector<std::string>& names) {
  std::string words = names.front();
  for (std::size_t i = 1; i < names.size(); ++i)
    words += (i + 1 < names.size() ? ", " : " or ") + names[i];
  return words;
}

class Teller {
 public:
  Teller(const Adjusted& adjusted, const std::string& stage)
      : adjusted_(adjusted), adjustment_(adjusted.adjustment), stage_(stage) {}

  std::optional<ledger::Query> query() const {
    const bool is_misread = adjustment_.at_odds && adjustment_.at_odds->suspect;
    if (!is_misread && adjustment_.agree()) return std::nullopt;
    std::vector<Explanation> all = explanations(adjusted_.network, adjustment_, adjusted_.read);
    while (!all.empty() && all.back().weight() < all.front().weight() - kOutweighs)
      all.pop_back();
    if (!all.empty() && !all.front().zero.empty()) return zero_out(all.front());
    if (!is_misread) return disagreement();
    if (!all.empty() && all.front().slips.size() == 2) return two_misread(all.front());
    return misread(all);
  }

 private:
  [[nodiscard]] const std::string& name(std::size_t reading) const {
    return adjustment_.readings[reading].name;
  }
  [[nodiscard]] std::string shown(double amount, std::size_t reading) const {
    const quantity::Kind kind = adjusted_.read[reading].kind;
    return quantity::shown(amount, kind, adjusted_.system, quantity::usual_places(kind, adjusted_.system));
  }

  ledger::Query asked(const std::string& id, std::size_t reading) const {
    ledger::Query query;
    query.id = id;
    query.about = "reading/" + name(reading);
    query.happens = "Every size found from it is out too.";
    query.todo = "Measure it again.";
    query.serious = true;
    return query;
  }

  // "it agrees to 0.0003 in if one turn of the thimble (0.025 in) was missed"
  [[nodiscard]] std::string agrees(std::string_view what, const SlipAt& at) const {
    return fmt::format("{} agrees to {} if {}", what, shown(at.rest, at.reading), at.slip.says);
  }

  // One reading, with the slip that explains it; or those it may be.
  ledger::Query misread(const std::vector<Explanation>& all) const {
    const AtOdds& at_odds = *adjustment_.at_odds;
    std::set<std::size_t> explained;
    for (const Explanation& each : all)
      explained.insert(each.slips.front().reading);
    const bool is_one = explained.size() == 1;
    const std::size_t reading = is_one ? *explained.begin() : at_odds.reading;
    ledger::Query query = asked("misread/" + name(reading), reading);
    if (!at_odds.alike.empty()) {
      query.says =
          fmt::format("misread? {} is out; the readings cannot tell which", most_at_odds(adjustment_));
      if (is_one) query.says += "; " + agrees(quoted(name(reading)), all.front().slips.front());
      return query;
    }
    const double error = adjustment_.readings[reading].error.value_or(0.0);
    query.says = fmt::format("misread? {} is {} {} what the others say", quoted(name(reading)),
                             shown(std::abs(error), reading), error > 0 ? "above" : "below");
    if (is_one) {
      query.says += "; " + agrees("it", all.front().slips.front());
    } else if (!explained.empty()) {
      for (const Explanation& each : all)
        query.says += fmt::format("{}{}", &each == &all.front() ? "; " : ", or ",
                                  agrees(quoted(name(each.slips.front().reading)), each.slips.front()));
    } else {
      query.says += instead_of(reading);
    }
    return query;
  }

  // "; 'b' or 'c' may be the one instead"
  [[nodiscard]] std::string instead_of(std::size_t reading) const {
    std::vector<std::string> others;
    for (const std::size_t other : suspects(adjustment_.traces)) {
      if (other != reading) others.push_back(quoted(name(other)));
    }
    if (others.empty()) return "";
    if (others.size() > kMostNamed) return fmt::format("; {} others may be the one instead", others.size());
    return fmt::format("; {} may be the one instead", one_of(others));
  }

  ledger::Query two_misread(const Explanation& both) const {
    const SlipAt& one = both.slips.front();
    const SlipAt& other = both.slips.back();
    ledger::Query query = asked("misread/" + name(one.reading), one.reading);
    query.says =
        fmt::format("misread? {} and {} are out; {}, and {}", quoted(name(one.reading)),
                    quoted(name(other.reading)), agrees("the first", one), agrees("the second", other));
    query.happens = "Every size found from them is out too.";
    query.todo = "Measure both again.";
    return query;
  }

  ledger::Query zero_out(const Explanation& shared) const {
    const std::size_t first = shared.slips.front().reading;
    ledger::Query query = asked("zero out/" + shared.zero, first);
    query.says = fmt::format("all {} readings with {} are {} {} what the others say: {}", shared.slips.size(),
                             shared.zero, shown(std::abs(shared.zero_error), first),
                             shared.zero_error > 0 ? "above" : "below", shared.slips.front().slip.says);
    query.happens = "Every size found from them is out too.";
    query.todo = "Check its zero, and write it into the shop text.";
    return query;
  }

  ledger::Query disagreement() const {
    ledger::Query query;
    query.id = "readings disagree";
    query.about = stage_ + "/agreement/total";
    query.says =
        "the readings differ by more than their instruments allow, no one reading much more than the rest";
    query.happens = "The sizes are less sure than they look.";
    query.todo = "Check the zeros, then measure again.";
    return query;
  }

  const Adjusted& adjusted_;
  const Adjustment& adjustment_;
  const std::string& stage_;
};

}  // namespace

std::string most_at_odds(const Adjustment& adjustment) {
  std::vector<std::string> names{quoted(adjustment.readings[adjustment.at_odds->reading].name)};
  for (const std::size_t i : adjustment.at_odds->alike)
    names.push_back(quoted(adjustment.readings[i].name));
  return one_of(names);
}

std::optional<ledger::Query> misread_query(const Adjusted& adjusted, const std::string& stage) {
  return Teller(adjusted, stage).query();
}

}  // namespace sparewright::survey
