#include "core/shape/volume.hpp"

#include <algorithm>
#include <array>
#include <limits>
#include <utility>

#include "core/shape/material.hpp"
#include "core/shape/ray_field.hpp"

namespace sparewright::shape {
namespace {

// What is measured: the blank, the bodies of air that can matter, and the body to stay inside of.
struct Subject {
  const Primitive& blank;
  std::vector<const Primitive*> air;
  const Primitive& body;
};

// Metal along one ray, inside the body.
double length_mm(const Subject& subject, const Ray& ray, std::vector<Interval>& scratch) {
  bool asked = false;  // what the blank and the air leave, only where the ray meets the body
  double sum = 0.0;
  for_each_inside(subject.body, ray, [&](const Interval& here) {
    if (!std::exchange(asked, true)) metal_along(subject.blank, subject.air, ray, scratch);
    for (const Interval& metal : scratch)
      sum += std::max(0.0, std::min(metal.exit_mm, here.exit_mm) - std::max(metal.enter_mm, here.enter_mm));
  });
  return sum;
}

RayVolume measure(const Subject& subject, const RayField& field, Effort effort) {
  std::array<double, kPatterns> means{};
  double shortest = std::numeric_limits<double>::infinity();
  double longest = 0.0;
  std::vector<Interval> scratch;
  const std::size_t rays = rays_of_pattern(effort);
  const auto n = static_cast<double>(rays);
  for (std::size_t pattern = 0; pattern < kPatterns; ++pattern) {
    double sum = 0.0;
    for (std::size_t i = 0; i < rays; ++i) {
      const SquarePoint at = lattice_point(effort, pattern, i);
      const double one = length_mm(subject, field.ray(at.s, at.t), scratch);
      shortest = std::min(shortest, one);
      longest = std::max(longest, one);
      sum += one;
    }
    means.at(pattern) = sum / n;
  }
  const double mean = (means[0] + means[1] + means[2] + means[3]) / 4;
  // Along an edge square to the field every pattern may miss by the same ray: that does not show in their scatter.
  const double edge = (longest - shortest) / n;
  const double error = error_of_mean(means) + edge;
  return {mean * field.area_mm2(), (error + kSliver_mm) * field.area_mm2(), kPatterns * rays};
}

// The one with the least error; not less than by how much it lies outside the others' errors. Where one field of rays met
// metal, one that met none has passed it by (a sheet seen from its edge) and knows nothing of it.
RayVolume best_of(std::vector<RayVolume> all) {
  const auto met_nothing = [](const RayVolume& one) { return one.volume_mm3 <= 0.0; };
  if (!std::all_of(all.begin(), all.end(), met_nothing)) std::erase_if(all, met_nothing);
  RayVolume best = *std::min_element(all.begin(), all.end(),
                                     [](const auto& a, const auto& b) { return a.error_mm3 < b.error_mm3; });
  best.rays = 0;
  for (const RayVolume& one : all) {
    best.error_mm3 = std::max(best.error_mm3, std::abs(one.volume_mm3 - best.volume_mm3) - one.error_mm3);
    best.rays += one.rays;
  }
  return best;
}

}  // namespace

RayVolume metal_within(const Work& work, const Primitive& body, Effort effort) {
  constexpr double kNearEnough = 1e-3;
  const Frame& frame = frame_of(body);
  const Bounds here = common(bounds(body, frame), bounds(work.blank, frame));
  if (here.empty()) return {};
  const Subject subject{work.blank, bodies(work.cuts, common(bounds(body), bounds(work.blank))), body};
  std::vector<RayVolume> all;
  for (const RayField& field : fields_over(body, here)) {
    all.push_back(measure(subject, field, effort));
    if (all.back().error_mm3 <= kNearEnough * all.back().volume_mm3) break;
  }
  return best_of(std::move(all));
}

RayVolume metal_volume(const Work& work, Effort effort) {
  return metal_within(work, work.blank, effort);
}

}  // namespace sparewright::shape
