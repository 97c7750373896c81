#include "core/ledger/share.hpp"

#include <algorithm>
#include <cmath>
#include <compare>

#include "core/base/hash.hpp"
#include "core/ledger/student_t.hpp"

namespace sparewright::ledger {

namespace {

void drop_zeros(Shares& shares) {
  std::erase_if(shares, [](const Share& share) { return share.amount == 0.0; });
}

}  // namespace

Shares in_order(Shares shares) {
  if (shares.empty()) return shares;
  const auto by_cause = [](const Share& a, const Share& b) { return a.cause < b.cause; };
  if (!std::is_sorted(shares.begin(), shares.end(), by_cause))
    std::stable_sort(shares.begin(), shares.end(), by_cause);
  std::size_t last = 0;
  for (std::size_t i = 1; i < shares.size(); ++i) {
    if (shares[i].cause == shares[last].cause) {
      shares[last].amount += shares[i].amount;
      shares[last].degrees_of_freedom =
          std::min(shares[last].degrees_of_freedom, shares[i].degrees_of_freedom);
    } else {
      shares[++last] = shares[i];
    }
  }
  shares.resize(last + 1);
  drop_zeros(shares);
  return shares;
}

// Merges from the end, in place: room for both, then each share to where it belongs.
void add_scaled(Shares& sum, const Shares& shares, double slope) {
  if (slope == 0.0 || shares.empty()) return;
  bool has_zeros = false;
  if (sum.empty()) {
    for (const Share& share : shares) {
      sum.push_back({share.cause, share.amount * slope, share.degrees_of_freedom});
      has_zeros = has_zeros || sum.back().amount == 0.0;
    }
    if (has_zeros) drop_zeros(sum);
    return;
  }
  std::size_t a = sum.size();
  std::size_t b = shares.size();
  sum.resize(a + b, shares.front());
  std::size_t to = sum.size();
  while (b > 0) {
    const Share& next = shares[b - 1];
    const auto order = a > 0 ? sum[a - 1].cause <=> next.cause : std::strong_ordering::less;
    if (order > 0) {
      sum[--to] = sum[--a];
    } else {
      Share share{next.cause, next.amount * slope, next.degrees_of_freedom};
      if (order == 0) {
        --a;
        share.amount += sum[a].amount;
        share.degrees_of_freedom = std::min(sum[a].degrees_of_freedom, share.degrees_of_freedom);
      }
      has_zeros = has_zeros || share.amount == 0.0;
      sum[--to] = share;
      --b;
    }
  }
  sum.erase(sum.begin() + static_cast<std::ptrdiff_t>(a), sum.begin() + static_cast<std::ptrdiff_t>(to));
  if (has_zeros) drop_zeros(sum);
}

double standard_uncertainty(const Shares& shares) {
  double squares = 0.0;
  for (const Share& share : shares)
    squares += share.amount * share.amount;
  return std::sqrt(squares);
}

double covariance(const Shares& a, const Shares& b) {
  double sum = 0.0;
  auto i = a.begin();
  auto j = b.begin();
  while (i != a.end() && j != b.end()) {
    const auto order = i->cause <=> j->cause;
    if (order == 0) sum += i->amount * j->amount;
    if (order <= 0) ++i;
    if (order >= 0) ++j;
  }
  return sum;
}

double effective_degrees_of_freedom(const Shares& shares) {
  const double u = standard_uncertainty(shares);
  if (u == 0.0) return kManyDegreesOfFreedom;
  double sum = 0.0;
  for (const Share& share : shares) {
    const double part = (share.amount / u) * (share.amount / u);
    sum += part * part / share.degrees_of_freedom;  // an infinite number of degrees of freedom adds nothing
  }
  return sum > 0.0 ? 1.0 / sum : kManyDegreesOfFreedom;
}

double coverage_factor(const Shares& shares) {
  constexpr double kNineteenInTwenty = 0.95;
  // What Student's t is for a normal distribution; kept apart because nearly every figure needs it.
  static const double kNormal = student_t_two_sided(kNineteenInTwenty, kManyDegreesOfFreedom);
  const double nu = effective_degrees_of_freedom(shares);
  if (!std::isfinite(nu)) return kNormal;
  // Rounded down, but a value that rounding error left a hair under a whole number is that number.
  const double whole = std::max(1.0, std::floor(nu * (1.0 + 1e-9)));
  return student_t_two_sided(kNineteenInTwenty, whole);
}

double expanded_uncertainty(const Shares& shares) {
  const double u = standard_uncertainty(shares);
  return u == 0.0 ? 0.0 : coverage_factor(shares) * u;
}

}  // namespace sparewright::ledger
