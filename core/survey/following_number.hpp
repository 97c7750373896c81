// A number and how it follows the middles of holes, to first order.
#pragma once

#include <cmath>
#include <cstddef>
#include <vector>

namespace sparewright::survey {

// slopes: by x of hole 1, y of hole 1, x of hole 2, ... Numbers that are worked out together have equally many.
struct FollowingNumber {
  double value = 0.0;
  std::vector<double> slopes;
};

inline FollowingNumber operator+(const FollowingNumber& a, const FollowingNumber& b) {
  FollowingNumber sum = a;
  sum.value += b.value;
  for (std::size_t i = 0; i < sum.slopes.size(); ++i)
    sum.slopes[i] += b.slopes[i];
  return sum;
}
inline FollowingNumber operator*(double factor, const FollowingNumber& a) {
  FollowingNumber product = a;
  product.value *= factor;
  for (double& slope : product.slopes)
    slope *= factor;
  return product;
}
inline FollowingNumber constant(double value, std::size_t holes) {
  return {value, std::vector<double>(2 * holes, 0.0)};
}
inline FollowingNumber product(const FollowingNumber& a, const FollowingNumber& b) {
  FollowingNumber out = a.value * b + b.value * a;
  out.value = a.value * b.value;
  return out;
}
// The angle from x of a way that is dx, dy.
inline FollowingNumber angle_of(const FollowingNumber& dx, const FollowingNumber& dy) {
  const double squares = dx.value * dx.value + dy.value * dy.value;
  FollowingNumber out = (-dy.value / squares) * dx + (dx.value / squares) * dy;
  out.value = std::atan2(dy.value, dx.value);
  return out;
}
inline FollowingNumber length_of(const FollowingNumber& dx, const FollowingNumber& dy) {
  const double length = std::hypot(dx.value, dy.value);
  FollowingNumber out = (dx.value / length) * dx + (dy.value / length) * dy;
  out.value = length;
  return out;
}

}  // namespace sparewright::survey
