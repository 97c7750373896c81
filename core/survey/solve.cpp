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

Result<Place> place_at(const Equations& equations, const Whitening& whitening, std::vector<double> values) {
  auto all = equations.at(values);
  if (!all) return fail(all.error());
  std::vector<double> misfit;
  misfit.reserve(all->fitted.size());
  for (std::size_t i = 0; i < all->fitted.size(); ++i)
    misfit.push_back(equations.network().readings[i].value - all->fitted[i]);
  auto point = std::make_unique<Point>(std::move(*all), std::move(misfit), whitening);
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
    auto trial = place_at(equations, whitening, moved(place.values, step));
    if (trial && trial->weighted().cost() < place.weighted().cost()) return std::move(*trial);
    damping = std::max(damping * kTenfold, kFirstDamping);
  }
  return std::nullopt;
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
  Run run;
  for (int steps = 0; steps < kMostSteps; ++steps) {
    const auto straight = place.weighted().step(0.0);
    const double reach = place.weighted().reach(straight);
    run.solution.steps = steps;
    if (reach <= std::max(kSettled, place.weighted().rounding())) {
      place.values = moved(std::move(place.values), straight);
      run.settled = true;
      break;
    }
    auto next = better(equations, whitening, place, straight, damping);
    if (!next) {
      run.settled = reach <= kSettledAtLast;
      break;
    }
    place = std::move(*next);
    damping = damping / kTenfold < kLeastDamping ? 0.0 : damping / kTenfold;
  }
  run.solution.values = std::move(place.values);
  run.solution.point = std::move(place.point);
  return run;
}

}  // namespace

Result<Solution> solve(const Equations& equations, const Whitening& whitening) {
  const auto& network = equations.network();
  const int spare = static_cast<int>(network.readings.size()) - static_cast<int>(network.unknowns.size());
  const double limit = spare > 0 ? chi_square_limit(kAgreeProbability, spare) : kSettled;
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
    const bool done = best && best->settled && (!start.guessed || best->cost() <= limit);
    if (done) break;
  }
  if (best && best->settled) return std::move(best->solution);
  if (failure && !best) return fail(*failure);
  return fail(Code::kReadingsDisagree, "no sizes come near them all", "other readings, or another equation",
              "the dimensions");
}

}  // namespace sparewright::survey
