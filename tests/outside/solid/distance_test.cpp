// Convex distances (core/shape/distance.hpp) against the kernel's on random pairs, and against a proof that knows nothing
// of either.
#include "core/shape/distance.hpp"

#include <cstdio>

#include <gtest/gtest.h>

#include "core/shape/clearance.hpp"
#include "core/shape/support.hpp"
#include "kernel_measures.hpp"
#include "random_shapes.hpp"

namespace sparewright::solid {
namespace {

using shape::Distance;
using shape::Primitive;
using shape::Vector;

constexpr int kSeed = 81;
constexpr int kPairs = 1000;
constexpr double kProof_mm = 1e-9;

// The gap between the two along the line of the nearest points: how far apart the planes square to it are that each body
// stays behind. No two points of the bodies are nearer than that.
double gap_along(const Primitive& a, const Primitive& b, const Vector& n) {
  return dot(farthest(b, -n) - farthest(a, n), n);
}

// The widest gap found: points that are nearest only to the last few digits tell the planes' direction to half as many, so
// the one is dropped onto the other body and back until the planes stand as they should.
double proven_gap(const Primitive& a, const Primitive& b, const Distance& ours) {
  constexpr int kDrops = 200;
  double gap = gap_along(a, b, direction(ours.on_b - ours.on_a));
  shape::Point on_b = ours.on_b;
  for (int drop = 0; drop < kDrops && gap < ours.distance_mm - kProof_mm / 2; ++drop) {
    const shape::Clearance from_a = clearance(a, on_b);
    const shape::Point on_a = on_b - from_a.distance_mm * from_a.normal;
    const shape::Clearance from_b = clearance(b, on_a);
    on_b = on_a - from_b.distance_mm * from_b.normal;
    gap = std::max({gap, gap_along(a, b, from_a.normal), gap_along(a, b, -from_b.normal)});
  }
  return gap;
}

struct Tally {
  int apart = 0;
  int meeting = 0;
  int agree = 0;
  int kernel_too_far = 0;
  double worst_mm = 0.0;

  // The kernel may overlook the nearest points of a cone's edge; it never finds nearer ones than there are.
  void add(double ours_mm, double kernels_mm) {
    ++(ours_mm > 0.0 ? apart : meeting);
    ++(std::abs(kernels_mm - ours_mm) <= kProof_mm ? agree : kernel_too_far);
    worst_mm = std::max(worst_mm, kernels_mm - ours_mm);
  }
};

bool has_cone(const Primitive& p) {
  return std::holds_alternative<shape::Cone>(p) || std::holds_alternative<shape::DrilledHole>(p);
}

TEST(OutsideDistance, OfAThousandPairs) {
  tests::Random random(kSeed);
  Tally tally;
  for (int i = 0; i < kPairs; ++i) {
    const double reach = random.one_in(2) ? 100.0 : 40.0;
    const Primitive a = tests::random_primitive(random, reach, 0.5);
    const Primitive b = tests::random_primitive(random, reach, 0.5);
    const Distance ours = distance(a, b);
    const double kernels_mm = tests::kernel_distance_mm(a, b);
    tally.add(ours.distance_mm, kernels_mm);
    ASSERT_GE(kernels_mm, ours.distance_mm - kProof_mm) << i;
    if (!has_cone(a) && !has_cone(b)) {
      ASSERT_NEAR(kernels_mm, ours.distance_mm, kProof_mm) << i;
    }
    if (ours.distance_mm == 0.0) continue;
    // No longer than it is: both points lie on their bodies. No shorter: the planes keep the bodies apart.
    ASSERT_LE(clearance(a, ours.on_a).distance_mm, kProof_mm) << i;
    ASSERT_LE(clearance(b, ours.on_b).distance_mm, kProof_mm) << i;
    ASSERT_NEAR(distance_mm(ours.on_a, ours.on_b), ours.distance_mm, kProof_mm) << i;
    ASSERT_GE(proven_gap(a, b, ours), ours.distance_mm - kProof_mm) << i;
  }
  std::printf(
      "seed %d: %d pairs apart, %d meet; the kernel agrees on %d, is too far by up to %.3g mm on %d\n", kSeed,
      tally.apart, tally.meeting, tally.agree, tally.worst_mm, tally.kernel_too_far);
  EXPECT_GT(tally.meeting, 10);
  EXPECT_GE(tally.agree, kPairs * 95 / 100);
}

}  // namespace
}  // namespace sparewright::solid
