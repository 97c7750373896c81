// Damped Gauss-Newton steps. Source, named from memory: D. W. Marquardt, SIAM J. 11 (1963) 431-441; the damping
// falls and rises tenfold as there.
#include "core/survey/solve.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>
#include <optional>
#include <utility>

#include "core/survey/adjust.hpp"
#include "core/survey/chi_square.hpp"
#include "core/survey/start.hpp"

namespace sparewright::survey {
namespace {

using base::Code;
using base::fail;
using base::Result;

constexpr int kMostSteps = 200;
constexpr double kFirstDamping = 1e-3;  // once a step without any has made the fit worse
constexpr double kLeastDamping = 1e-9;  // below this it is left out
constexpr double kMostDamping = 1e12;
constexpr double kTenfold = 10.0;
// Where no step makes the fit better, it has still settled if the step wanted is this small against the doubt.
constexpr double kSettledAtLast = 1e-4;

// The network at one set of values.
struct Place {
  std::vector<double> values;
  std::unique_ptr<Point> point;

  [[nodiscard]] const Weighted& weighted() const { return point->weighted; }
};

bool are_same(const Matrix& a, const Matrix& b) {
  for (std::size_t i = 0; i < a.rows; ++i) {
    const auto one = a.row(i);
    const auto other = b.row(i);
    double steepest = 0.0;
    double apart = 0.0;
    for (std::size_t j = 0; j < one.size(); ++j) {
      steepest = std::max(steepest, std::abs(one[j]));
      apart = std::max(apart, std::abs(one[j] - other[j]));
    }
    if (apart > kSameSlopes * steepest) return false;
  }
  return true;
}

// near: a place whose slopes will do, if they are the same there.
Result<Place> place_at(const Equations& equations, const Whitening& whitening, std::vector<double> values,
                       const Place* near = nullptr) {
  auto all = equations.at(values);
  if (!all) return fail(all.error());
  std::vector<double> misfit;
  misfit.reserve(all->fitted.size());
  for (std::size_t i = 0; i < all->fitted.size(); ++i)
    misfit.push_back(equations.network().readings[i].value - all->fitted[i]);
  auto point = near != nullptr && are_same(near->point->all.slopes, all->slopes)
                   ? std::make_unique<Point>(std::move(*all), std::move(misfit), near->weighted())
                   : std::make_unique<Point>(std::move(*all), std::move(misfit), whitening);
  return Place{std::move(values), std::move(point)};
}

std::vector<double> moved(std::vector<double> values, const std::vector<double>& step) {
  for (std::size_t i = 0; i < values.size(); ++i)
    values[i] += step[i];
  return values;
}

// A place that fits better, with more and more damping until there is one. straight: the step without any.
std::optional<Place> better(const Equations& equations, const Whitening& whitening, const Place& place,
                            const std::vector<double>& straight, double& damping) {
  while (damping <= kMostDamping) {
    const auto step = damping > 0.0 ? place.weighted().step(damping) : straight;
    auto trial = place_at(equations, whitening, moved(place.values, step), &place);
    if (trial && trial->weighted().cost() < place.weighted().cost()) return std::move(*trial);
    damping = std::max(damping * kTenfold, kFirstDamping);
  }
  return std::nullopt;
}

// Steps shrink at least as fast as they did (Gauss-Newton near the end: by the same factor, or faster), so this one is the last
// that counts.
bool will_have_settled(double reach, double before) {
  constexpr double kSafety = 10.0;
  return reach <= kSlopesStay && before > 0.0 && kSafety * reach * (reach / before) <= kSettled;
}

struct Run {
  Solution solution;
  bool settled = false;

  [[nodiscard]] double cost() const { return solution.point->weighted.cost(); }
};

Result<Run> run_from(const Equations& equations, const Whitening& whitening,
                     const std::vector<double>& start) {
  auto first = place_at(equations, whitening, start);
  if (!first) return fail(first.error());
  Place place = std::move(*first);
  double damping = 0.0;
  double before = 0.0;  // the reach of the step before, where it was not damped
  Run run;
  for (int steps = 0; steps < kMostSteps; ++steps) {
    const auto straight = place.weighted().step(0.0);
    const double reach = place.weighted().reach(straight);
    run.solution.steps = steps;
    if (reach <= std::max(kSettled, place.weighted().rounding()) || will_have_settled(reach, before)) {
      place.values = moved(std::move(place.values), straight);
      place.point->move(straight);
      run.settled = true;
      break;
    }
    auto next = better(equations, whitening, place, straight, damping);
    if (!next) {
      run.settled = reach <= kSettledAtLast;
      break;
    }
    place = std::move(*next);
    before = damping > 0.0 ? 0.0 : reach;
    damping = damping / kTenfold < kLeastDamping ? 0.0 : damping / kTenfold;
  }
  run.solution.values = std::move(place.values);
  run.solution.point = std::move(place.point);
  return run;
}

}  // namespace

void Point::move(std::span<const double> step) {
  for (std::size_t i = 0; i < misfit.size(); ++i) {
    const double moved_by = dot(all.slopes.row(i), step);
    all.fitted[i] += moved_by;
    misfit[i] -= moved_by;
  }
  weighted.move(step);
}

Result<Solution> solve(const Equations& equations, const Whitening& whitening) {
  const auto& network = equations.network();
  const int spare = static_cast<int>(network.readings.size()) - static_cast<int>(network.unknowns.size());
  const auto fits = [&](double cost) {
    return cost <= (spare > 0 ? chi_square_limit(kAgreeProbability, spare) : kSettled);
  };
  std::optional<Run> best;
  std::optional<base::Failure> failure;
  for (const double stretch : std::array{1.0, 0.25, 4.0, 0.0625, 16.0}) {
    const Start start = cold_start(equations, stretch);
    auto run = run_from(equations, whitening, start.values);
    if (!run) {
      if (!failure) failure = run.error();
    } else if (!best || (run->settled && !best->settled) ||
               (run->settled == best->settled && run->cost() < best->cost())) {
      best = std::move(*run);
    }
    const bool done = best && best->settled && (!start.guessed || fits(best->cost()));
    if (done) break;
  }
  if (best && best->settled) return std::move(best->solution);
  if (failure && !best) return fail(*failure);
  return fail(Code::kReadingsDisagree, "no sizes come near them all", "other readings, or another equation",
              "the dimensions");
}

}  // namespace sparewright::survey
