#include "core/survey/hole_pattern.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>

#include <fmt/format.h>

namespace sparewright::survey {
namespace {

using base::Code;
using base::fail;
using base::Result;

struct OftenMet {
  int holes;
  double often;
};
constexpr std::array kCircles{OftenMet{2, 0.04}, OftenMet{3, 0.14}, OftenMet{4, 0.28},  OftenMet{5, 0.07},
                              OftenMet{6, 0.23}, OftenMet{8, 0.13}, OftenMet{10, 0.03}, OftenMet{12, 0.04},
                              OftenMet{7, 0.01}, OftenMet{9, 0.01}, OftenMet{16, 0.01}};
constexpr double kRare = 0.001;  // any other count
// A row: each hole more is met three quarters as often.
constexpr double kLonger = 0.75;

// The classes of a layout: how long each is, in its size, and how many pairs of holes it has.
struct Classes {
  std::vector<double> lengths;
  std::vector<int> pairs;

  [[nodiscard]] int count() const { return static_cast<int>(lengths.size()); }
};

Classes classes_of(HoleLayout layout, int holes) {
  Classes out;
  if (layout == HoleLayout::kRow) {
    for (int k = 1; k < holes; ++k) {
      out.lengths.push_back(k);
      out.pairs.push_back(holes - k);
    }
    return out;
  }
  for (int k = 1; 2 * k <= holes; ++k) {
    out.lengths.push_back(std::sin(std::numbers::pi * k / holes));
    out.pairs.push_back(2 * k == holes ? holes / 2 : holes);
  }
  return out;
}

// One way to give the distances to classes; nothing where a class has too few pairs for that.
struct Given {
  std::vector<int> steps;
  double size = 0.0;
  double log_odds = 0.0;
};

class Weighing {
 public:
  Weighing(HoleLayout layout, std::span<const double> distances, double spread)
      : layout_(layout), distances_(distances), spread_(spread) {}

  // The likeliest ways of a layout, one for each class the longest distance may be of.
  [[nodiscard]] std::vector<Given> ways(int holes) const {
    const Classes classes = classes_of(layout_, holes);
    const double longest = *std::max_element(distances_.begin(), distances_.end());
    std::vector<Given> out;
    for (int k = 1; k <= classes.count(); ++k) {
      auto given = settled(classes, longest / classes.lengths[static_cast<std::size_t>(k - 1)]);
      if (!given) continue;
      given->log_odds += std::log(how_often_met(layout_, holes));
      const bool is_new = std::none_of(out.begin(), out.end(),
                                       [&](const Given& other) { return other.steps == given->steps; });
      if (is_new) out.push_back(std::move(*given));
    }
    return out;
  }

  // In no pattern: each distance anywhere up to the longest, which is anywhere in a decade.
  [[nodiscard]] double log_of_none() const {
    const double longest = *std::max_element(distances_.begin(), distances_.end());
    return std::log(kNoPattern) - static_cast<double>(distances_.size()) * std::log(longest) -
           std::log(std::numbers::ln10);
  }

 private:
  // Each distance to the nearest class, the size from them, until nothing changes.
  [[nodiscard]] std::optional<Given> settled(const Classes& classes, double size) const {
    Given given;
    for (int turn = 0; turn < 20; ++turn) {
      std::vector<int> steps = nearest(classes, size);
      if (steps == given.steps) break;
      given.steps = std::move(steps);
      double products = 0.0;
      double squares = 0.0;
      for (std::size_t j = 0; j < distances_.size(); ++j) {
        const double length = classes.lengths[static_cast<std::size_t>(given.steps[j] - 1)];
        products += distances_[j] * length;
        squares += length * length;
      }
      size = products / squares;
    }
    given.size = size;
    const auto pairs = log_of_pairs(classes, given.steps);
    if (!pairs) return std::nullopt;
    given.log_odds = *pairs + log_of_misfits(classes, given);
    return given;
  }

  [[nodiscard]] std::vector<int> nearest(const Classes& classes, double size) const {
    std::vector<int> steps;
    for (const double distance : distances_) {
      const auto closest = std::min_element(
          classes.lengths.begin(), classes.lengths.end(),
          [&](double a, double b) { return std::abs(distance - a * size) < std::abs(distance - b * size); });
      steps.push_back(static_cast<int>(closest - classes.lengths.begin()) + 1);
    }
    return steps;
  }

  // Pairs drawn one after the other, none twice.
  [[nodiscard]] static std::optional<double> log_of_pairs(const Classes& classes,
                                                          const std::vector<int>& steps) {
    std::vector<int> left = classes.pairs;
    int all = 0;
    for (const int pairs : left)
      all += pairs;
    double sum = 0.0;
    for (const int k : steps) {
      int& here = left[static_cast<std::size_t>(k - 1)];
      if (here == 0) return std::nullopt;
      sum += std::log(static_cast<double>(here) / all);
      --here;
      --all;
    }
    return sum;
  }

  [[nodiscard]] double log_of_misfits(const Classes& classes, const Given& given) const {
    double misfit = 0.0;
    double squares = 0.0;
    for (std::size_t j = 0; j < distances_.size(); ++j) {
      const double length = classes.lengths[static_cast<std::size_t>(given.steps[j] - 1)];
      const double off = (distances_[j] - length * given.size) / spread_;
      misfit += off * off;
      squares += length * length;
    }
    const double log_root = 0.5 * std::log(2.0 * std::numbers::pi);
    const auto n = static_cast<double>(distances_.size());
    const double size_u = spread_ / std::sqrt(squares);
    return -0.5 * misfit - n * (log_root + std::log(spread_)) + log_root + std::log(size_u) -
           std::log(given.size * std::numbers::ln10);
  }

  HoleLayout layout_;
  std::span<const double> distances_;
  double spread_;
};

PatternGuess guess_of(HoleLayout layout, int holes, Given given, std::span<const double> distances,
                      double u) {
  PatternGuess guess;
  guess.layout = layout;
  guess.holes = holes;
  guess.size = given.size;
  guess.steps = std::move(given.steps);
  guess.odds = given.log_odds;
  const Classes classes = classes_of(layout, holes);
  double squares = 0.0;
  for (const int k : guess.steps)
    squares +=
        classes.lengths[static_cast<std::size_t>(k - 1)] * classes.lengths[static_cast<std::size_t>(k - 1)];
  guess.size_u = u / std::sqrt(squares);
  for (std::size_t j = 0; j < distances.size(); ++j) {
    const double length = classes.lengths[static_cast<std::size_t>(guess.steps[j] - 1)];
    guess.off.push_back(distances[j] - length * guess.size);
    guess.off_u.push_back(u * std::sqrt(std::max(0.0, 1.0 - length * length / squares)));
  }
  return guess;
}

std::string ordinal(int n) {
  if (n == 2) return "2nd";
  if (n == 3) return "3rd";
  return fmt::format("{}{}", n, n % 10 == 1 && n != 11 ? "st" : n == 22 ? "nd" : n == 23 ? "rd" : "th");
}

}  // namespace

double how_often_met(HoleLayout layout, int holes) {
  if (layout == HoleLayout::kRow) return (1.0 - kLonger) * std::pow(kLonger, holes - 2);
  const auto* row =
      std::find_if(kCircles.begin(), kCircles.end(), [&](const OftenMet& one) { return one.holes == holes; });
  return row == kCircles.end() ? kRare : row->often;
}

Result<PatternOdds> pattern_of(HoleLayout layout, std::span<const double> distances, double u, double made,
                               std::optional<int> count) {
  if (distances.empty()) return fail(Code::kReadingsTooFew, "", "a distance between two holes", "a pattern");
  if (distances.size() > kMostDistances)
    return fail(Code::kTooMany, fmt::format("{} distances", distances.size()),
                fmt::format("at most {}", kMostDistances), "a pattern of holes");
  for (const double distance : distances) {
    if (!(distance > 0.0)) return fail(Code::kSizeNotPositive, "0 or less", "", "a distance between holes");
  }
  // Two holes are each out by `made` along the distance between them.
  const Weighing weighing(layout, distances, std::sqrt(u * u + 2.0 * made * made));
  PatternOdds out;
  const double none = weighing.log_of_none();
  double most = none;
  for (int holes = count.value_or(2); holes <= count.value_or(kMostPatternHoles); ++holes) {
    for (Given& given : weighing.ways(holes)) {
      most = std::max(most, given.log_odds);
      out.guesses.push_back(guess_of(layout, holes, std::move(given), distances, u));
    }
  }
  double total = std::exp(none - most);
  for (PatternGuess& guess : out.guesses) {
    guess.odds = std::exp(guess.odds - most);
    total += guess.odds;
  }
  for (PatternGuess& guess : out.guesses)
    guess.odds /= total;
  out.no_pattern = std::exp(none - most) / total;
  std::stable_sort(out.guesses.begin(), out.guesses.end(),
                   [](const PatternGuess& a, const PatternGuess& b) { return a.odds > b.odds; });
  std::erase_if(out.guesses, [](const PatternGuess& guess) { return guess.odds < kLeastOdds; });
  return out;
}

std::string name_of_step(HoleLayout layout, int holes, int steps) {
  if (layout == HoleLayout::kCircle && 2 * steps == holes) return "straight across";
  if (steps == 1) return "a hole to the next";
  return fmt::format("a hole to the {} on", ordinal(steps));
}

double distance_in(const PatternGuess& guess, int steps) {
  return guess.size *
         (guess.layout == HoleLayout::kRow ? steps : std::sin(std::numbers::pi * steps / guess.holes));
}

std::optional<Deciding> deciding(const PatternGuess& first, const PatternGuess& second, double u) {
  const auto tells = [&](double a, double b) {
    return std::abs(a - b) > 6.0 * u;
  };  // 3 of each reading's doubt
  Deciding next{"a hole to the next", distance_in(first, 1), distance_in(second, 1)};
  if (tells(next.by_first, next.by_second)) return next;
  const int across_first = first.layout == HoleLayout::kRow ? first.holes - 1 : first.holes / 2;
  const int across_second = second.layout == HoleLayout::kRow ? second.holes - 1 : second.holes / 2;
  Deciding across{"the two holes furthest apart", distance_in(first, across_first),
                  distance_in(second, across_second)};
  if (tells(across.by_first, across.by_second)) return across;
  return std::nullopt;
}

}  // namespace sparewright::survey
