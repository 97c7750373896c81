#include "core/survey/monte_carlo.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <string_view>
#include <utility>

#include <fmt/format.h>

#include "core/survey/whitening.hpp"

namespace sparewright::survey {
namespace {

using base::Result;

// So many draws go through the equations at once: enough for the compiler to make several at a time, few enough to stay in
// the nearest memory.
constexpr std::size_t kLanes = 64;
constexpr int kMostSteps = 60;

// One cause and what it puts into each reading.
struct Cause {
  Distribution distribution = Distribution::kNormal;
  std::size_t scatter = 0;                           // of kStudent: which of the scatters
  std::vector<std::pair<std::size_t, double>> into;  // reading, amount
};

// What repeats or touches lie off by: one number, not well known, behind the causes that are its parts.
struct Scatter {
  std::string name;
  double degrees_of_freedom = 0.0;
};

struct Causes {
  std::vector<Cause> all;
  std::vector<Scatter> scatters;
};

// "reading/bore/scatter", "touched/hole/scatter/3": the scatter it is a part of.
std::string_view scatter_of(std::string_view cause) {
  constexpr std::string_view kScatter = "/scatter";
  const std::size_t at = cause.rfind(kScatter);
  return at == std::string_view::npos ? cause : cause.substr(0, at + kScatter.size());
}

// Of the parts of one scatter in one reading, together (JCGM 100:2008, G.2b).
double degrees_of_freedom_of(std::string_view scatter, const ledger::Shares& shares) {
  ledger::Shares parts;
  for (const ledger::Share& share : shares) {
    if (std::isfinite(share.degrees_of_freedom) && scatter_of(share.cause.text()) == scatter)
      parts.push_back(share);
  }
  return ledger::effective_degrees_of_freedom(parts);
}

Causes causes_of(const std::vector<ledger::Shares>& shares) {
  std::map<base::Name, Cause> by_name;
  std::map<std::string, double> scatters;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    for (const ledger::Share& share : shares[i]) {
      Cause& cause = by_name[share.cause];
      cause.distribution = distribution_of(share);
      cause.into.emplace_back(i, share.amount);
      if (cause.distribution != Distribution::kStudent) continue;
      const std::string scatter(scatter_of(share.cause.text()));
      const double degrees = degrees_of_freedom_of(scatter, shares[i]);
      const auto [known, is_new] = scatters.emplace(scatter, degrees);
      if (!is_new) known->second = std::min(known->second, degrees);
    }
  }
  Causes causes;
  for (const auto& [name, degrees] : scatters)
    causes.scatters.push_back({name, degrees});
  for (auto& [name, cause] : by_name) {
    const auto scatter = scatters.find(std::string(scatter_of(name.text())));
    if (scatter != scatters.end())
      cause.scatter = static_cast<std::size_t>(std::distance(scatters.begin(), scatter));
    causes.all.push_back(std::move(cause));
  }
  return causes;
}

// inverse(S) = W' W.
Matrix weights_of(const Matrix& covariance) {
  const std::size_t n = covariance.rows;
  Matrix white(n, n);
  for (std::size_t i = 0; i < n; ++i)
    white.at(i, i) = 1.0;
  Whitening(covariance).apply(white);
  Matrix weights(n, n);
  for (std::size_t k = 0; k < n; ++k) {
    for (std::size_t i = 0; i < n; ++i) {
      const double factor = white.at(k, i);
      if (factor == 0.0) continue;
      for (std::size_t j = 0; j < n; ++j)
        weights.at(i, j) += factor * white.at(k, j);
    }
  }
  return weights;
}

// out += table * in, lane by lane. Both are tables of kLanes columns.
void add_product(const Matrix& table, const Matrix& in, Matrix& out) {
  for (std::size_t i = 0; i < table.rows; ++i) {
    double* to = &out.cells[i * kLanes];
    for (std::size_t k = 0; k < table.columns; ++k) {
      const double factor = table.at(i, k);
      if (factor == 0.0) continue;
      const double* from = &in.cells[k * kLanes];
      for (std::size_t l = 0; l < kLanes; ++l)
        to[l] += factor * from[l];
    }
  }
}

void clear(Matrix& table) {
  std::fill(table.cells.begin(), table.cells.end(), 0.0);
}

// kLanes draws adjusted at once.
class Batch {
 public:
  Batch(const Drawing& drawing, const Equations& equations, const Causes& causes)
      : network_(*drawing.network),
        adjustment_(*drawing.adjustment),
        equations_(equations),
        weights_(weights_of(network_.covariance)),
        causes_(causes),
        readings_(network_.readings.size(), kLanes),
        values_(network_.unknowns.size(), kLanes),
        misfits_(network_.readings.size(), kLanes),
        weighted_(network_.readings.size(), kLanes),
        pulls_(network_.unknowns.size(), kLanes),
        steps_(network_.unknowns.size(), kLanes) {}

  // The adjusted sizes, and for each lane whether it settled.
  const Matrix& adjust(Draws& draws, std::array<bool, kLanes>& settled) {
    draw(draws);
    for (std::size_t j = 0; j < values_.rows; ++j)
      std::fill_n(&values_.cells[j * kLanes], kLanes, adjustment_.unknowns[j].value);
    settled.fill(false);
    for (int step = 0; step < kMostSteps; ++step) {
      find_pulls();
      clear(steps_);
      add_product(adjustment_.covariance, pulls_, steps_);
      if (take_step(settled)) break;
    }
    return values_;
  }

 private:
  void draw(Draws& draws) {
    for (std::size_t i = 0; i < readings_.rows; ++i)
      std::fill_n(&readings_.cells[i * kLanes], kLanes, network_.readings[i].value);
    stretches_.resize(causes_.scatters.size() * kLanes);
    for (std::size_t s = 0; s < causes_.scatters.size(); ++s)
      draws.fill_stretches(std::span(stretches_).subspan(s * kLanes, kLanes),
                           causes_.scatters[s].degrees_of_freedom);
    for (const Cause& cause : causes_.all) {
      const bool is_scatter = cause.distribution == Distribution::kStudent;
      draws.fill(drawn_, is_scatter ? Distribution::kNormal : cause.distribution);
      for (std::size_t l = 0; is_scatter && l < kLanes; ++l)
        drawn_[l] *= stretches_[cause.scatter * kLanes + l];
      for (const auto& [reading, amount] : cause.into) {
        double* to = &readings_.cells[reading * kLanes];
        for (std::size_t l = 0; l < kLanes; ++l)
          to[l] += amount * drawn_[l];
      }
    }
  }

  // What every size is pulled by: slopes' * weights * misfits. The slopes of a reading are wanted after its misfit has been
  // weighted with those of all others, so they are kept.
  void find_pulls() {
    slopes_.clear();
    for (std::size_t i = 0; i < readings_.rows; ++i) {
      const auto own = equations_.unknowns_of(i);
      given_.resize(own.size() * kLanes);
      for (std::size_t k = 0; k < own.size(); ++k)
        std::copy_n(&values_.cells[own[k] * kLanes], kLanes, &given_[k * kLanes]);
      const std::size_t before = slopes_.size();
      slopes_.resize(before + given_.size());
      network_.readings[i].equation.at_many(given_, kLanes, room_, fitted_,
                                            std::span(slopes_).subspan(before));
      const double* read = &readings_.cells[i * kLanes];
      double* misfit = &misfits_.cells[i * kLanes];
      for (std::size_t l = 0; l < kLanes; ++l)
        misfit[l] = read[l] - fitted_[l];
    }
    clear(weighted_);
    add_product(weights_, misfits_, weighted_);
    clear(pulls_);
    const double* slope = slopes_.data();
    for (std::size_t i = 0; i < readings_.rows; ++i) {
      const double* weighted = &weighted_.cells[i * kLanes];
      for (const std::size_t j : equations_.unknowns_of(i)) {
        double* pull = &pulls_.cells[j * kLanes];
        for (std::size_t l = 0; l < kLanes; ++l)
          pull[l] += slope[l] * weighted[l];
        slope += kLanes;
      }
    }
  }

  // Whether all lanes have settled.
  bool take_step(std::array<bool, kLanes>& settled) {
    std::array<double, kLanes> farthest{};
    for (std::size_t j = 0; j < values_.rows; ++j) {
      const double u = adjustment_.unknowns[j].u;
      const double scale = u > 0.0 ? 1.0 / u : 0.0;
      double* value = &values_.cells[j * kLanes];
      const double* step = &steps_.cells[j * kLanes];
      for (std::size_t l = 0; l < kLanes; ++l) {
        value[l] += step[l];
        farthest[l] = std::max(farthest[l], std::abs(step[l]) * scale);
      }
    }
    bool all = true;
    for (std::size_t l = 0; l < kLanes; ++l) {
      settled[l] = farthest[l] <= kDrawSettled;  // false where it is not a number
      all = all && settled[l];
    }
    return all;
  }

  const Network& network_;
  const Adjustment& adjustment_;
  const Equations& equations_;
  Matrix weights_;
  const Causes& causes_;
  Matrix readings_;
  Matrix values_;
  Matrix misfits_;
  Matrix weighted_;
  Matrix pulls_;
  Matrix steps_;
  std::array<double, kLanes> drawn_{};
  std::array<double, kLanes> fitted_{};
  std::vector<double> stretches_;  // of the scatters, one after the other
  std::vector<double> given_;
  std::vector<double> slopes_;  // of the readings one after the other
  formula::Formula::Room room_;
};

base::Failure wrong_count(std::size_t draws) {
  base::Failure failure;
  failure.code = base::Code::kTooMany;
  failure.subject = "draws";
  failure.found = fmt::format("{}", draws);
  failure.accepted = fmt::format("{} to {}", kFewestDraws, kMostDraws);
  return failure;
}

// "the readings do not fix the scatter of 'bore' well enough to be drawn"
base::Failure scatter_not_known(const Scatter& scatter) {
  const std::size_t first = scatter.name.find('/');
  const std::size_t last = scatter.name.rfind('/');
  const std::string of = first < last ? scatter.name.substr(first + 1, last - first - 1) : scatter.name;
  base::Failure failure;
  failure.code = base::Code::kReadingsTooFew;
  failure.subject = fmt::format("the scatter of '{}' well enough to be drawn", of);
  failure.accepted =
      "four repeats, or three touches more than needed; or the instrument's `repeats` in the shop text";
  return failure;
}

base::Failure not_fixed(const Drawing& drawing) {
  base::Failure failure;
  failure.code = base::Code::kReadingsTooFew;
  for (const Gap& gap : drawing.adjustment->gaps) {
    for (const std::size_t j : gap.unknowns)
      failure.subject += (failure.subject.empty() ? "" : ", ") + drawing.network->unknowns[j].name;
  }
  failure.accepted = "draws are made once every size is fixed";
  return failure;
}

}  // namespace

Distribution distribution_of(const ledger::Share& share) {
  if (std::isfinite(share.degrees_of_freedom)) return Distribution::kStudent;
  const std::string_view cause = share.cause;
  if (cause.starts_with("temperature/") || cause.starts_with("expansion/")) return Distribution::kRectangular;
  for (const std::string_view within :
       {"/good to", "/resolution", "/transfer", "/zero", "/way", "/comes back"}) {
    if (cause.ends_with(within)) return Distribution::kRectangular;
  }
  return Distribution::kNormal;
}

Result<MonteCarlo> monte_carlo(const Drawing& drawing, std::size_t draws, std::uint64_t seed) {
  if (draws < kFewestDraws || draws > kMostDraws) return base::fail(wrong_count(draws));
  if (!drawing.adjustment->gaps.empty()) return base::fail(not_fixed(drawing));
  const auto equations = Equations::of(*drawing.network);
  if (!equations) return base::fail(equations.error());
  const Causes causes = causes_of(drawing.causes);
  for (const Scatter& scatter : causes.scatters) {
    if (scatter.degrees_of_freedom < kFewestDegreesOfFreedom) return base::fail(scatter_not_known(scatter));
  }
  Batch batch(drawing, *equations, causes);
  Draws source(seed);
  std::vector<std::vector<double>> drawn(drawing.network->unknowns.size());
  MonteCarlo out;
  std::array<bool, kLanes> settled{};
  while (out.draws < draws) {
    const Matrix& values = batch.adjust(source, settled);
    for (std::size_t l = 0; l < kLanes && out.draws < draws; ++l, ++out.draws) {
      if (!settled[l]) ++out.unsettled;
      for (std::size_t j = 0; settled[l] && j < drawn.size(); ++j)
        drawn[j].push_back(values.at(j, l));
    }
  }
  for (std::size_t j = 0; j < drawn.size(); ++j) {
    if (!drawing.adjustment->unknowns[j].fixed || drawn[j].size() < 2) continue;
    out.sizes.push_back({drawing.network->unknowns[j].name, spread_of(drawn[j])});
  }
  return out;
}

}  // namespace sparewright::survey
