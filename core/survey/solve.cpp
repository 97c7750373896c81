// Damped Gauss-Newton steps. Source, named from memory: D. W. Marquardt, SIAM J. 11 (1963) 431-441; the damping
// falls and rises tenfold as there.
#include "core/survey/solve.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>

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
struct Point {
  std::vector<double> values;
  Matrix slopes;               // whitened
  std::vector<double> misfit;  // whitened
  double cost = 0.0;
  double rounding = 0.0;  // what rounding may put into the whitened misfits
};

Result<Point> point_at(const Equations& equations, const Whitening& whitening, std::vector<double> values) {
  auto all = equations.at(values);
  if (!all) return fail(all.error());
  Point point;
  point.values = std::move(values);
  std::vector<double> misfit;
  for (std::size_t i = 0; i < all->fitted.size(); ++i) {
    misfit.push_back(equations.network().readings[i].value - all->fitted[i]);
  }
  point.slopes = whitening.apply(all->slopes);
  point.misfit = whitening.apply(misfit);
  point.cost = dot(point.misfit, point.misfit);
  const auto size = whitening.apply(all->fitted);
  point.rounding = 4.0 * std::numeric_limits<double>::epsilon() * std::sqrt(dot(size, size));
  return point;
}

// How far a step moves the fitted readings, in standard uncertainties.
double reach_of(const Matrix& slopes, const std::vector<double>& step) {
  double squares = 0.0;
  for (std::size_t i = 0; i < slopes.rows; ++i) {
    const double moved = dot(slopes.row(i), step);
    squares += moved * moved;
  }
  return std::sqrt(squares);
}

std::vector<double> moved(std::vector<double> values, const std::vector<double>& step) {
  for (std::size_t i = 0; i < values.size(); ++i)
    values[i] += step[i];
  return values;
}

// A point that fits better, with more and more damping until there is one.
std::optional<Point> better(const Equations& equations, const Whitening& whitening, const Point& point,
                            double& damping) {
  while (damping <= kMostDamping) {
    const auto step = damped_step(point.slopes, point.misfit, damping);
    auto trial = point_at(equations, whitening, moved(point.values, step));
    if (trial && trial->cost < point.cost) return std::move(*trial);
    damping = std::max(damping * kTenfold, kFirstDamping);
  }
  return std::nullopt;
}

struct Run {
  Solution solution;
  bool settled = false;
};

Result<Run> run_from(const Equations& equations, const Whitening& whitening,
                     const std::vector<double>& start) {
  auto first = point_at(equations, whitening, start);
  if (!first) return fail(first.error());
  Point point = std::move(*first);
  double damping = 0.0;
  Run run;
  for (int steps = 0; steps < kMostSteps; ++steps) {
    const auto straight = damped_step(point.slopes, point.misfit, 0.0);
    const double reach = reach_of(point.slopes, straight);
    run.solution = {point.values, point.cost, steps};
    if (reach <= std::max(kSettled, point.rounding)) {
      run.solution.values = moved(point.values, straight);
      run.settled = true;
      return run;
    }
    auto next = better(equations, whitening, point, damping);
    if (!next) {
      run.settled = reach <= kSettledAtLast;
      return run;
    }
    point = std::move(*next);
    damping = damping / kTenfold < kLeastDamping ? 0.0 : damping / kTenfold;
  }
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
               (run->settled == best->settled && run->solution.cost < best->solution.cost)) {
      best = std::move(*run);
    }
    const bool done = best && best->settled && (!start.guessed || best->solution.cost <= limit);
    if (done) break;
  }
  if (best && best->settled) return best->solution;
  if (failure && !best) return fail(*failure);
  return fail(Code::kReadingsDisagree, "no sizes come near them all", "other readings, or another equation",
              "the dimensions");
}

}  // namespace sparewright::survey
