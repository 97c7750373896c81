#include "core/survey/touch_odds.hpp"

#include <cmath>

#include "core/survey/chi_square.hpp"
#include "core/survey/traces.hpp"

namespace sparewright::survey {
namespace {

constexpr double kAlikeOdds = 1e-6;  // odds this close, relative, tell nothing apart

}  // namespace

bool TouchOdds::has_misread() const {
  return worst && std::abs(*odds[*worst]) > kTouchOddsLimit;
}

bool TouchOdds::others_agree(int spare) const {
  if (!worst || spare < 2) return false;
  return total - *odds[*worst] * *odds[*worst] <= chi_square_limit(kTouchesAgree, spare - 1);
}

bool TouchOdds::agree(int spare) const {
  return !has_misread() && total <= chi_square_limit(kTouchesAgree, spare);
}

TouchOdds touch_odds(const OrthogonalFit& fit, const std::vector<double>& doubts) {
  TouchOdds out;
  for (std::size_t i = 0; i < fit.off.size(); ++i) {
    out.odds.emplace_back();
    const double left = fit.redundancy(i);
    if (!(left > kCheckedPart) || !(doubts[i] > 0.0)) continue;
    const double odds = fit.off[i] / (doubts[i] * std::sqrt(left));
    out.odds.back() = odds;
    out.total += fit.off[i] * fit.off[i] / (doubts[i] * doubts[i]);
    if (!out.worst || std::abs(odds) > std::abs(*out.odds[*out.worst])) out.worst = i;
  }
  if (!out.worst) return out;
  const double most = std::abs(*out.odds[*out.worst]);
  out.is_alone = true;
  for (std::size_t i = 0; i < out.odds.size(); ++i) {
    if (i != *out.worst && out.odds[i] && std::abs(*out.odds[i]) >= most * (1.0 - kAlikeOdds))
      out.is_alone = false;
  }
  return out;
}

}  // namespace sparewright::survey
