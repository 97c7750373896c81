#include "core/survey/explanations.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <utility>

namespace sparewright::survey {
namespace {

constexpr std::size_t kMostExplanations = 3;

// So often one reading holds a slip, the most usual one; a shared zero is out as often. Guesses of the trade.
constexpr double kSlipsIn = 0.01;

// A misreading, or a zero out, of any amount has this many doubts of room: what is left over of an amount given beforehand.
constexpr double kRoom = 1000.0;

// Where one of so many is out by chance alone, and the readings are sound, once in a thousand: then the explanation is not
// held against it.
constexpr double kStillSound = 0.001;

// A slip is to be plainly more than the doubt: without it the reading is at least this many times as far out as with it.
constexpr double kPlainly = 2.0;

// Twice the logarithm of how much likelier one explanation is where it is so 99 times in 100 (chi-square, one degree).
constexpr double kClearly = 6.63;

double usual(const Slip& slip) {
  return std::log(kSlipsIn) - slip.rank * std::log(kRarer);
}

// The chance that one of so many sound readings is at least so far out, at most.
double chance_at_most(double odds, std::size_t readings) {
  return std::erfc(odds / std::numbers::sqrt2) * static_cast<double>(readings);
}

class Search {
 public:
  Search(const Network& network, const Adjustment& adjustment, std::span<const AsRead> read)
      : network_(network), adjustment_(adjustment), traces_(adjustment.traces), read_(read) {}

  std::vector<Explanation> run() {
    find_single();
    find_shared();
    std::vector<Explanation> found = best_solved_again();
    if (!found.empty()) return found;
    find_pairs();
    return best_solved_again();
  }

 private:
  [[nodiscard]] std::size_t readings() const { return traces_.lengths.size(); }

  // What is left of chi-square where a reading is less by that.
  [[nodiscard]] double left_by(std::size_t reading, double amount) const {
    const double odds = amount * traces_.lengths[reading];
    return adjustment_.chi_square - odds * (2.0 * traces_.odds(reading) - odds);
  }

  static void put(Explanation& into, std::size_t reading, Slip slip) {
    SlipAt& at = into.slips.emplace_back();
    at.reading = reading;
    at.slip = std::move(slip);
  }

  void find_single() {
    for (std::size_t i = 0; i < readings(); ++i) {
      if (traces_.lengths[i] == 0.0) continue;
      for (Slip& slip : usual_slips(read_[i])) {
        const double left = left_by(i, slip.shift);
        if (left >= adjustment_.chi_square || is_there(i, slip.shift)) continue;
        Explanation& one = tried_.emplace_back();
        one.chi_square = left;
        one.usual = usual(slip);
        put(one, i, std::move(slip));
      }
    }
  }

  // Two slips that come to the same are the more usual one.
  [[nodiscard]] bool is_there(std::size_t reading, double shift) const {
    constexpr double kSame = 1e-9;
    return std::any_of(tried_.begin(), tried_.end(), [&](const Explanation& each) {
      const SlipAt& at = each.slips.front();
      return at.reading == reading && std::abs(at.slip.shift - shift) <= kSame * std::abs(shift);
    });
  }

  void find_shared() {
    std::map<std::string, std::vector<std::size_t>> by_zero;
    for (std::size_t i = 0; i < readings(); ++i) {
      if (!read_[i].zero.empty()) by_zero[read_[i].zero].push_back(i);
    }
    for (const auto& [zero, members] : by_zero) {
      // An error of 1 in the zero is one of 1 in every reading of it.
      std::vector<double> trace(readings(), 0.0);
      double longest = 0.0;
      for (const std::size_t i : members) {
        longest = std::max(longest, traces_.lengths[i]);
        const std::vector<double> one = traces_.trace(i);
        for (std::size_t k = 0; k < trace.size(); ++k)
          trace[k] += one[k];
      }
      const double length = std::sqrt(dot(trace, trace));
      if (members.size() < 2 || length <= kCheckedPart * longest) continue;
      try_shared(members, dot(trace, traces_.misfit) / length, length, by_zero.size());
    }
  }

  void try_shared(const std::vector<std::size_t>& members, double odds, double length, std::size_t zeros) {
    if (chance_at_most(std::abs(odds), zeros) >= kFalseAlarms) return;
    const AsRead& first = read_[members.front()];
    const auto add = [&](double amount, std::string_view says, double how_usual) {
      const double left = odds - amount * length;
      Explanation& shared = tried_.emplace_back();
      shared.zero = first.zero;
      shared.zero_error = amount;
      shared.chi_square = adjustment_.chi_square - odds * odds + left * left;
      shared.usual = how_usual;
      for (const std::size_t i : members)
        put(shared, i, {std::string(says), amount, 1});
    };
    if (first.zero_found != 0.0) {
      add(-first.zero_found, "its zero had been taken off already", std::log(kSlipsIn / kRarer));
      add(-2.0 * first.zero_found, "its zero is the other way round", std::log(kSlipsIn / kRarer));
    }
    // Of any amount: only where it beats a misreading of any amount, which is as free.
    const double alone = largest_odds(traces_, traces_.misfit);
    if (odds * odds >= alone * alone + kClearly)
      add(odds / length, "its zero is out", std::log(kSlipsIn / kRoom));
  }

  struct Try {
    std::size_t reading = 0;
    double left = 0.0;
    Slip slip;
  };
  [[nodiscard]] std::vector<Try> all_tries() const {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < readings(); ++i) {
      if (traces_.lengths[i] > 0.0) order.push_back(i);
    }
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
      return std::abs(traces_.odds(a)) > std::abs(traces_.odds(b));
    });
    if (order.size() > kMostPaired) order.resize(kMostPaired);
    std::vector<Try> tries;
    for (const std::size_t i : order) {
      for (Slip& slip : usual_slips(read_[i])) {
        Try& one = tries.emplace_back();
        one.reading = i;
        one.left = left_by(i, slip.shift);
        one.slip = std::move(slip);
      }
    }
    return tries;
  }

  // Both amounts are given, so all that is needed besides is how alike the two are.
  void find_pairs() {
    struct Pair {
      std::size_t first = 0;
      std::size_t second = 0;
      double left = 0.0;
      double usual = 0.0;
    };
    const std::vector<Try> tries = all_tries();
    std::vector<Pair> pairs;
    for (std::size_t a = 0; a < tries.size(); ++a) {
      const std::vector<double> trace = traces_.trace(tries[a].reading);
      double product = 0.0;
      for (std::size_t b = a + 1; b < tries.size(); ++b) {
        if (tries[a].reading == tries[b].reading) continue;
        if (product == 0.0 || tries[b].reading != tries[b - 1].reading)
          product = dot(trace, traces_.white.row(tries[b].reading));
        const double both = tries[a].left + tries[b].left - adjustment_.chi_square +
                            2.0 * tries[a].slip.shift * tries[b].slip.shift * product;
        pairs.push_back({a, b, both, usual(tries[a].slip) + usual(tries[b].slip)});
      }
    }
    const auto most = static_cast<std::ptrdiff_t>(std::min(pairs.size(), kMostExplanations));
    std::partial_sort(pairs.begin(), pairs.begin() + most, pairs.end(), [](const Pair& a, const Pair& b) {
      return a.usual - a.left / 2.0 > b.usual - b.left / 2.0;
    });
    pairs.resize(static_cast<std::size_t>(most));
    for (const Pair& each : pairs) {
      Explanation& two = tried_.emplace_back();
      two.chi_square = each.left;
      two.usual = each.usual;
      put(two, tries[each.first].reading, tries[each.first].slip);
      put(two, tries[each.second].reading, tries[each.second].slip);
    }
  }

  static void sort(std::vector<Explanation>& list) {
    std::stable_sort(list.begin(), list.end(),
                     [](const Explanation& a, const Explanation& b) { return a.weight() > b.weight(); });
  }

  // The best of those tried, solved again, as far as they explain.
  std::vector<Explanation> best_solved_again() {
    sort(tried_);
    if (tried_.size() > kMostExplanations) tried_.resize(kMostExplanations);
    std::vector<Explanation> found;
    for (Explanation& each : tried_) {
      if (explains(each)) found.push_back(std::move(each));
    }
    tried_.clear();
    sort(found);
    return found;
  }

  bool explains(Explanation& explanation) const {
    Network right = network_;
    for (const SlipAt& at : explanation.slips)
      right.readings[at.reading].value -= at.slip.shift;
    const auto again = adjust(right);
    if (!again) return false;
    explanation.chi_square = again->chi_square;
    for (SlipAt& at : explanation.slips) {
      const Fit& fit = again->readings[at.reading];
      at.rest = std::abs(fit.error.value_or(0.0));
      at.rest_odds = std::abs(fit.odds.value_or(0.0));
      const double before = std::abs(at.slip.shift) * traces_.lengths[at.reading];
      const bool fits = at.rest_odds <= kMostRest && kPlainly * at.rest_odds <= before;
      if (explanation.zero.empty() && (!fits || before <= kMostRest)) return false;
    }
    return !again->at_odds || chance_at_most(again->at_odds->odds, readings()) >= kStillSound;
  }

  const Network& network_;
  const Adjustment& adjustment_;
  const Traces& traces_;
  std::span<const AsRead> read_;
  std::vector<Explanation> tried_;
};

}  // namespace

std::vector<Explanation> explanations(const Network& network, const Adjustment& adjustment,
                                      std::span<const AsRead> read) {
  return Search(network, adjustment, read).run();
}

}  // namespace sparewright::survey
