#include "core/survey/adjust.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/survey/chi_square.hpp"
#include "core/survey/solve.hpp"
#include "core/survey/weighted.hpp"

namespace sparewright::survey {
namespace {

using base::Code;
using base::fail;
using base::Result;

// A direction moves an unknown where its part there is more than this. Directions have length 1 in scaled
// unknowns; rounding leaves at most 1e-16 / kRankTolerance where the part is nothing.
constexpr double kMoves = 1e-6;

// The report in the making.
class Report {
 public:
  Report(const Network& network, const Solution& solution, const Whitening& whitening)
      : network_(network),
        solution_(solution),
        all_(solution.point->all),
        determination_(solution.point->weighted.determine(all_.slopes)),
        following_(solution.point->weighted.follow(determination_)) {
    out_.traces = std::move(following_.traces);
    for (std::size_t i = 0; i < readings(); ++i) {
      if (network_.readings[i].is_exact) out_.traces.find_length(i, kCheckedExactPart);
    }
    out_.equation_slopes = all_.slopes;
    out_.mended = whitening.mended();
    out_.steps = solution.steps;
    out_.chi_square = solution.point->weighted.cost();
    out_.degrees_of_freedom = static_cast<int>(readings()) - static_cast<int>(determination_.rank);
    if (out_.degrees_of_freedom > 0) {
      out_.chi_square_limit = chi_square_limit(kAgreeProbability, out_.degrees_of_freedom);
    }
  }

  Adjustment write() {
    find_gaps();
    find_unknowns();
    find_fits();
    find_checks();
    out_.at_odds = find_at_odds(out_.traces);
    return std::move(out_);
  }

 private:
  [[nodiscard]] std::size_t readings() const { return network_.readings.size(); }
  [[nodiscard]] std::size_t unknowns() const { return network_.unknowns.size(); }

  // How far moving one unknown along the gaps moves another: the projector on the gap directions.
  [[nodiscard]] double moved_together(std::size_t a, std::size_t b) const {
    return dot(determination_.gaps.row(a), determination_.gaps.row(b));
  }
  [[nodiscard]] bool has_gap(std::size_t unknown) const {
    return moved_together(unknown, unknown) > kMoves * kMoves;
  }

  // Unknowns that move together are one gap; the projector's trace over them is how many ways they can move.
  void find_gaps() {
    std::vector<bool> placed(unknowns(), false);
    for (std::size_t first = 0; first < unknowns(); ++first) {
      if (placed[first] || !has_gap(first)) continue;
      Gap gap;
      gap.unknowns = {first};
      placed[first] = true;
      double ways = 0.0;
      for (std::size_t at = 0; at < gap.unknowns.size(); ++at) {
        ways += moved_together(gap.unknowns[at], gap.unknowns[at]);
        for (std::size_t other = 0; other < unknowns(); ++other) {
          if (placed[other] || std::abs(moved_together(gap.unknowns[at], other)) <= kMoves) continue;
          placed[other] = true;
          gap.unknowns.push_back(other);
        }
      }
      std::sort(gap.unknowns.begin(), gap.unknowns.end());
      gap.readings_wanted = static_cast<std::size_t>(std::max(1.0, std::round(ways)));
      out_.gaps.push_back(std::move(gap));
    }
    out_.gap_directions = determination_.gaps;
    for (std::size_t j = 0; j < unknowns(); ++j) {
      for (double& part : out_.gap_directions.row(j))
        part /= determination_.scale[j];
    }
  }

  void find_unknowns() {
    out_.slopes = Matrix(unknowns(), readings());
    out_.covariance = Matrix(unknowns(), unknowns());
    for (std::size_t j = 0; j < unknowns(); ++j) {
      Found found;
      found.name = network_.unknowns[j].name;
      found.fixed = !has_gap(j);
      found.value = solution_.values[j];
      if (found.fixed) {
        follow(j);
        for (std::size_t k = 0; k < unknowns(); ++k) {
          if (!has_gap(k)) out_.covariance.at(j, k) = determination_.covariance.at(j, k);
        }
        found.u = std::sqrt(std::max(0.0, out_.covariance.at(j, j)));
      }
      out_.unknowns.push_back(std::move(found));
    }
  }

  // What each reading puts into the unknown, without what is only rounding.
  void follow(std::size_t unknown) {
    const auto from = following_.slopes.row(unknown);
    const auto to = out_.slopes.row(unknown);
    double weightiest = 0.0;
    for (std::size_t i = 0; i < readings(); ++i) {
      to[i] = std::abs(from[i]) / determination_.weights[i];
      weightiest = std::max(weightiest, to[i]);
    }
    for (std::size_t i = 0; i < readings(); ++i)
      to[i] = to[i] > kFollowNoise * weightiest ? from[i] : 0.0;
  }

  void find_fits() {
    std::vector<std::size_t> of;  // the unknowns a reading is of
    out_.readings.reserve(readings());
    for (std::size_t i = 0; i < readings(); ++i) {
      Fit fit;
      fit.name = network_.readings[i].name;
      fit.fitted = all_.fitted[i];
      fit.residual = solution_.point->misfit[i];
      fit.redundancy = 1.0;
      double fitted_variance = 0.0;
      const auto slopes = all_.slopes.row(i);
      of.clear();
      for (std::size_t j = 0; j < unknowns(); ++j) {
        if (slopes[j] != 0.0) of.push_back(j);
      }
      for (const std::size_t j : of) {
        fit.redundancy -= slopes[j] * following_.slopes.at(j, i);
        for (const std::size_t k : of)
          fitted_variance += slopes[j] * determination_.covariance.at(j, k) * slopes[k];
      }
      const double variance = network_.covariance.at(i, i);
      const double left = variance - fitted_variance;
      if (left > kCheckedPart * kCheckedPart * variance) {
        fit.residual_u = std::sqrt(left);
        fit.standardised = fit.residual / fit.residual_u;
      }
      test(i, fit);
      out_.readings.push_back(std::move(fit));
    }
  }

  void test(std::size_t i, Fit& fit) const {
    const double length = out_.traces.lengths[i];
    fit.checked = length > 0.0;
    if (!fit.checked) return;
    fit.odds = out_.traces.odds(i);
    fit.error = *fit.odds / length;
  }

  void find_checks() {
    for (std::size_t j = 0; j < unknowns(); ++j) {
      Found& found = out_.unknowns[j];
      for (std::size_t i = 0; i < readings(); ++i) {
        if (out_.slopes.at(j, i) != 0.0 && !out_.readings[i].checked) found.unchecked_readings.push_back(i);
      }
      found.checked = found.fixed && found.unchecked_readings.empty();
    }
  }

  const Network& network_;
  const Solution& solution_;
  const Equations::All& all_;
  Determination determination_;
  Following following_;
  Adjustment out_;
};

void add(base::Hasher& h, const Matrix& matrix) {
  h.add(static_cast<std::uint64_t>(matrix.rows)).add(static_cast<std::uint64_t>(matrix.columns));
  for (const double cell : matrix.cells)
    h.add(cell);
}
void add(base::Hasher& h, const std::vector<std::size_t>& list) {
  h.add(static_cast<std::uint64_t>(list.size()));
  for (const std::size_t i : list)
    h.add(static_cast<std::uint64_t>(i));
}
void add(base::Hasher& h, const std::optional<double>& value) {
  h.add(value.has_value()).add(value.value_or(0.0));
}

}  // namespace

Result<Adjustment> adjust(const Network& network) {
  if (network.readings.size() > kMostReadings) {
    return fail(Code::kTooMany, std::to_string(network.readings.size()) + " readings",
                "at most " + std::to_string(kMostReadings), "measuring up");
  }
  const auto equations = Equations::of(network);
  if (!equations) return fail(equations.error());
  const Whitening whitening(network.covariance);
  const auto solution = solve(*equations, whitening);
  if (!solution) return fail(solution.error());
  return Report(network, *solution, whitening).write();
}

base::Fingerprint fingerprint(const Adjustment& adjustment) {
  base::Hasher h;
  for (const Found& f : adjustment.unknowns) {
    h.add(f.name).add(f.fixed).add(f.value).add(f.u).add(f.checked);
    add(h, f.unchecked_readings);
  }
  for (const Fit& f : adjustment.readings) {
    h.add(f.name).add(f.fitted).add(f.residual).add(f.residual_u).add(f.redundancy).add(f.checked);
    add(h, f.standardised);
    add(h, f.odds);
    add(h, f.error);
  }
  add(h, adjustment.slopes);
  add(h, adjustment.covariance);
  add(h, adjustment.equation_slopes);
  add(h, adjustment.gap_directions);
  for (const Gap& gap : adjustment.gaps) {
    add(h, gap.unknowns);
    h.add(static_cast<std::uint64_t>(gap.readings_wanted));
  }
  if (adjustment.at_odds) {
    h.add(static_cast<std::uint64_t>(adjustment.at_odds->reading)).add(adjustment.at_odds->odds);
    add(h, adjustment.at_odds->alike);
  }
  h.add(adjustment.chi_square)
      .add(adjustment.degrees_of_freedom)
      .add(adjustment.steps)
      .add(adjustment.mended);
  return h.done();
}

}  // namespace sparewright::survey
