#include "core/ledger/share.hpp"

#include <algorithm>
#include <cmath>

#include "core/base/hash.hpp"
#include "core/ledger/student_t.hpp"

namespace sparewright::ledger {

Shares in_order(Shares shares) {
  std::stable_sort(shares.begin(), shares.end(),
                   [](const Share& a, const Share& b) { return a.cause < b.cause; });
  Shares ordered;
  ordered.reserve(shares.size());
  for (Share& share : shares) {
    if (ordered.empty() || ordered.back().cause != share.cause) {
      ordered.push_back(std::move(share));
    } else {
      ordered.back().amount += share.amount;
      ordered.back().degrees_of_freedom =
          std::min(ordered.back().degrees_of_freedom, share.degrees_of_freedom);
    }
  }
  std::erase_if(ordered, [](const Share& share) { return share.amount == 0.0; });
  return ordered;
}

void add_scaled(Shares& sum, const Shares& shares, double slope) {
  if (slope == 0.0 || shares.empty()) return;
  Shares merged;
  merged.reserve(sum.size() + shares.size());
  auto a = sum.begin();
  auto b = shares.begin();
  while (a != sum.end() || b != shares.end()) {
    const int order = a == sum.end() ? 1 : b == shares.end() ? -1 : a->cause.compare(b->cause);
    Share share = order <= 0 ? std::move(*a) : *b;
    if (order > 0) share.amount *= slope;
    if (order == 0) {
      share.amount += slope * b->amount;
      share.degrees_of_freedom = std::min(share.degrees_of_freedom, b->degrees_of_freedom);
    }
    if (order <= 0) ++a;
    if (order >= 0) ++b;
    share.amount = base::canonical(share.amount);
    if (share.amount != 0.0) merged.push_back(std::move(share));
  }
  sum = std::move(merged);
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
    const int order = i->cause.compare(j->cause);
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

double expanded_uncertainty(const Shares& shares) {
  constexpr double kNineteenInTwenty = 0.95;
  // What Student's t is for a normal distribution; kept apart because nearly every figure needs it.
  static const double kNormal = student_t_two_sided(kNineteenInTwenty, kManyDegreesOfFreedom);
  const double u = standard_uncertainty(shares);
  if (u == 0.0) return 0.0;
  const double nu = effective_degrees_of_freedom(shares);
  if (!std::isfinite(nu)) return kNormal * u;
  // Rounded down, but a value that rounding error left a hair under a whole number is that number.
  const double whole = std::max(1.0, std::floor(nu * (1.0 + 1e-9)));
  return student_t_two_sided(kNineteenInTwenty, whole) * u;
}

}  // namespace sparewright::ledger
