#include "core/survey/suspects.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>
#include <random>

namespace sparewright::survey {
namespace {

// The chance that a normal number is at least so far from 0, either way.
double two_sided(double odds) {
  return std::erfc(odds / std::numbers::sqrt2);
}

std::vector<std::size_t> checked_in(const Traces& traces) {
  std::vector<std::size_t> checked;
  for (std::size_t i = 0; i < traces.lengths.size(); ++i) {
    if (traces.lengths[i] > 0.0) checked.push_back(i);
  }
  return checked;
}

// Numbers drawn from a fixed seed: the same question has the same answer to the last bit.
class Drawing {
 public:
  double even() { return static_cast<double>(draw_() >> 11U) * 0x1p-53; }  // 0 to 1, without 1
  double normal() {                                                        // G. E. P. Box, M. E. Muller, 1958
    return std::sqrt(-2.0 * std::log(1.0 - even())) * std::cos(2.0 * std::numbers::pi * even());
  }
  // A normal number, given that it is more than a (a > 0): G. Marsaglia, Technometrics 6 (1964) 101-102 (from memory).
  double beyond(double a) {
    for (;;) {
      const double x = std::sqrt(a * a - 2.0 * std::log(1.0 - even()));
      if (even() * x <= a) return x;
    }
  }

 private:
  static constexpr std::uint64_t kSeed = 1968;
  std::mt19937_64 draw_{kSeed};
};

// One over the mean count of the readings out, when reading `first` is: see the sources in the header.
class OutTogether {
 public:
  OutTogether(const Traces& traces, const std::vector<std::size_t>& checked, double odds)
      : lengths_(traces.lengths), of_(traces.all()), checked_(checked), odds_(odds), misfit_(of_.columns) {}

  double one_over_count(std::size_t first) {
    for (double& each : misfit_)
      each = drawing_.normal();
    const auto trace = of_.row(first);
    const double length = lengths_[first];
    const double more = (drawing_.beyond(odds_) - dot(trace, misfit_) / length) / length;
    for (std::size_t k = 0; k < misfit_.size(); ++k)
      misfit_[k] += more * trace[k];
    int count = 0;
    for (const std::size_t i : checked_) {
      const bool is_out = std::abs(dot(of_.row(i), misfit_)) >= odds_ * lengths_[i];
      count += is_out || i == first ? 1 : 0;
    }
    return 1.0 / count;
  }

 private:
  const std::vector<double>& lengths_;
  Matrix of_;
  const std::vector<std::size_t>& checked_;
  double odds_;
  std::vector<double> misfit_;
  Drawing drawing_;
};

// So many draws, shared evenly among the readings: one over a count is 0 to 1, so its mean is good to 2 % of itself.
constexpr std::size_t kDraws = 1000;

// Of more readings drawing takes long, and each is like few others: the bound is near enough.
constexpr std::size_t kMostDrawn = 400;

}  // namespace

double chance_of_largest(const Traces& traces, double odds) {
  const auto checked = checked_in(traces);
  const double alone = two_sided(odds);
  const double at_most = std::min(1.0, alone * static_cast<double>(checked.size()));
  if (alone >= kFalseAlarms || at_most < kFalseAlarms || checked.size() > kMostDrawn) return at_most;
  OutTogether out(traces, checked, odds);
  const std::size_t rounds = std::max<std::size_t>(1, kDraws / checked.size());
  double sum = 0.0;
  for (std::size_t round = 0; round < rounds; ++round) {
    for (const std::size_t first : checked)
      sum += out.one_over_count(first);
  }
  return alone * sum / static_cast<double>(rounds);
}

double largest_odds(const Traces& traces, std::span<const double> misfit) {
  double largest = 0.0;
  for (const std::size_t i : checked_in(traces))
    largest = std::max(largest, std::abs(dot(traces.white.row(i), misfit)) / traces.lengths[i]);
  return largest;
}

std::optional<AtOdds> find_at_odds(const Traces& traces) {
  const auto checked = checked_in(traces);
  if (checked.empty()) return std::nullopt;
  AtOdds out;
  std::size_t worst = checked.front();
  for (const std::size_t i : checked) {
    const double odds = std::abs(traces.odds(i));
    if (odds <= out.odds) continue;
    worst = i;
    out.odds = odds;
  }
  const std::vector<double> trace = traces.trace(worst);
  for (const std::size_t i : checked) {
    const double likeness = dot(trace, traces.white.row(i)) / (traces.lengths[worst] * traces.lengths[i]);
    if (i == worst || std::abs(likeness) >= 1.0 - kAlike) out.alike.push_back(i);
  }
  out.reading = out.alike.front();
  out.alike.erase(out.alike.begin());
  out.chance = chance_of_largest(traces, out.odds);
  out.suspect = out.chance < kFalseAlarms;
  return out;
}

std::vector<std::size_t> suspects(const Traces& traces) {
  const auto checked = checked_in(traces);
  std::vector<double> odds;
  for (const std::size_t i : checked)
    odds.push_back(traces.odds(i));
  const Matrix of = traces.all();
  std::vector<std::size_t> places;
  for (std::size_t j = 0; j < checked.size(); ++j) {
    // What an error in j leaves of the odds of the others. Each alone is a normal number again; by Bonferroni's
    // inequality one of them is out at most as often as all their chances together say.
    double largest = 0.0;
    for (std::size_t k = 0; k < checked.size(); ++k) {
      const double likeness = dot(of.row(checked[j]), of.row(checked[k])) /
                              (traces.lengths[checked[j]] * traces.lengths[checked[k]]);
      if (k == j || std::abs(likeness) >= 1.0 - kAlike) continue;
      const double left = odds[k] - likeness * odds[j];
      largest = std::max(largest, std::abs(left) / std::sqrt(1.0 - likeness * likeness));
    }
    const double others = static_cast<double>(checked.size() - 1);
    if (others * two_sided(largest) >= 1.0 - kSuspectsHold || largest == 0.0) places.push_back(j);
  }
  std::stable_sort(places.begin(), places.end(),
                   [&](std::size_t a, std::size_t b) { return std::abs(odds[a]) > std::abs(odds[b]); });
  std::vector<std::size_t> out;
  for (const std::size_t place : places)
    out.push_back(checked[place]);
  return out;
}

}  // namespace sparewright::survey
