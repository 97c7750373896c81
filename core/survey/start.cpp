#include "core/survey/start.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace sparewright::survey {
namespace {

using quantity::Kind;

// One equation as a function of one of its unknowns.
class Alone {
 public:
  Alone(const Equations& equations, std::size_t reading, std::size_t unknown, std::vector<double>& values)
      : equations_(equations), reading_(reading), unknown_(unknown), values_(values) {}

  // The size of the unknown that the reading asks for, as far as there is one.
  [[nodiscard]] double solved(double guess) const {
    if (const auto straight = along_the_slope(guess)) return *straight;
    double nearest = guess;
    double least = std::numeric_limits<double>::infinity();
    for (const double sign : {1.0, -1.0}) {
      if (const auto crossing = scanned(sign * guess, nearest, least)) return *crossing;
    }
    return nearest;
  }

 private:
  static constexpr int kWidest = 24;  // factors of 2 tried on each side of the guess
  static constexpr double kGoodEnough = 1e-9;

  // How far the equation is above the reading; nothing where it cannot be worked out.
  [[nodiscard]] std::optional<double> excess(double size, double* slope = nullptr) const {
    const double before = values_[unknown_];
    values_[unknown_] = size;
    const auto y = equations_.at(reading_, values_);
    values_[unknown_] = before;
    if (!y) return std::nullopt;
    if (slope != nullptr) {
      const auto own = equations_.unknowns_of(reading_);
      const auto place = std::find(own.begin(), own.end(), unknown_) - own.begin();
      *slope = y->slopes[static_cast<std::size_t>(place)];
    }
    return y->value - equations_.network().readings[reading_].value;
  }

  [[nodiscard]] std::optional<double> along_the_slope(double guess) const {
    double slope = 0.0;
    const auto before = excess(guess, &slope);
    if (!before || slope == 0.0) return std::nullopt;
    const double size = guess - *before / slope;
    const auto after = excess(size);
    if (!after || std::abs(*after) > kGoodEnough * std::abs(*before)) return std::nullopt;
    return size;
  }

  // Outwards from the guess; a crossing between neighbours is halved down.
  std::optional<double> scanned(double guess, double& nearest, double& least) const {
    for (int step = 0; step < kWidest; ++step) {
      for (const double factor : {2.0, 0.5}) {
        const double a = guess * std::pow(factor, step);
        const double b = a * factor;
        const auto at_a = excess(a);
        const auto at_b = excess(b);
        for (const auto& [size, off] : {std::pair{a, at_a}, std::pair{b, at_b}}) {
          if (!off || std::abs(*off) >= least) continue;
          least = std::abs(*off);
          nearest = size;
        }
        if (at_a && at_b && (*at_a <= 0.0) != (*at_b <= 0.0)) return halved(a, b, *at_a <= 0.0);
      }
    }
    return std::nullopt;
  }

  [[nodiscard]] double halved(double a, double b, bool below_at_a) const {
    constexpr int kHalvings = 60;
    for (int i = 0; i < kHalvings; ++i) {
      const double middle = a + (b - a) / 2.0;
      const auto off = excess(middle);
      if (!off) break;
      ((*off <= 0.0) == below_at_a ? a : b) = middle;
    }
    return a + (b - a) / 2.0;
  }

  const Equations& equations_;
  std::size_t reading_;
  std::size_t unknown_;
  std::vector<double>& values_;
};

class Starter {
 public:
  Starter(const Equations& equations, double stretch)
      : equations_(equations), stretch_(stretch), known_(equations.network().unknowns.size(), false) {
    start_.values.reserve(known_.size());
    for (std::size_t u = 0; u < known_.size(); ++u)
      start_.values.push_back(guess_of(u, 1.0));
  }

  Start run() {
    work_out(1);
    for (;;) {
      work_out(std::numeric_limits<std::size_t>::max());
      const auto unfinished = first_unfinished();
      if (!unfinished) return std::move(start_);
      const std::size_t unknown = left_in(*unfinished).first;
      start_.values[unknown] = guess_in(*unfinished, unknown);
      start_.guessed = true;
      known_[unknown] = true;
    }
  }

 private:
  [[nodiscard]] std::size_t readings() const { return equations_.network().readings.size(); }

  // The unknowns of a reading that are still to be found: how many, and the first.
  struct Left {
    std::size_t count = 0;
    std::size_t first = 0;
  };
  [[nodiscard]] Left left_in(std::size_t reading) const {
    Left left;
    for (const std::size_t u : equations_.unknowns_of(reading)) {
      if (known_[u]) continue;
      if (left.count == 0) left.first = u;
      ++left.count;
    }
    return left;
  }

  // Step 1, for readings of at most so many unknowns.
  void work_out(std::size_t at_most) {
    for (bool found = true; found;) {
      found = false;
      for (std::size_t i = 0; i < readings(); ++i) {
        if (equations_.unknowns_of(i).size() > at_most) continue;
        const Left left = left_in(i);
        if (left.count != 1) continue;
        const double guess = guess_in(i, left.first);
        start_.values[left.first] = Alone(equations_, i, left.first, start_.values).solved(guess);
        known_[left.first] = true;
        found = true;
      }
    }
  }

  [[nodiscard]] std::optional<std::size_t> first_unfinished() const {
    for (std::size_t i = 0; i < readings(); ++i) {
      if (left_in(i).count > 0) return i;
    }
    return std::nullopt;
  }

  [[nodiscard]] double guess_of(std::size_t unknown, double length) const {
    switch (equations_.network().unknowns[unknown].kind) {
      case Kind::kAngle:
        return 0.5 * stretch_;
      case Kind::kLength:
      case Kind::kDiameter:
      case Kind::kRadius:
      case Kind::kCoordinate:
        return length * stretch_;
      default:
        return stretch_;
    }
  }
  [[nodiscard]] double guess_in(std::size_t reading, std::size_t unknown) const {
    const Observation& observation = equations_.network().readings[reading];
    const bool is_length = quantity::is_length_like(observation.equation.kind()) && observation.value != 0.0;
    return guess_of(unknown, is_length ? std::abs(observation.value) / 2.0 : 1.0);
  }

  const Equations& equations_;
  double stretch_;
  std::vector<bool> known_;
  Start start_;
};

}  // namespace

Start cold_start(const Equations& equations, double stretch) {
  return Starter(equations, stretch).run();
}

}  // namespace sparewright::survey
