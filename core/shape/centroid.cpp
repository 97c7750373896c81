#include "core/shape/centroid.hpp"

#include <algorithm>
#include <array>
#include <limits>
#include <vector>

#include "core/shape/material.hpp"

namespace sparewright::shape {
namespace {

// The metal along one ray: its length, and its moment about the origin of the blank's frame, in that frame.
struct Stick {
  double length_mm = 0.0;
  Vector moment_mm2;
};

Stick stick(const std::vector<Interval>& metal, const Ray& ray, const Frame& frame) {
  Stick all;
  for (const Interval& one : metal) {
    const Point middle = frame.to_local(ray.at((one.enter_mm + one.exit_mm) / 2));
    all.length_mm += one.length_mm();
    all.moment_mm2 = all.moment_mm2 + one.length_mm() * (middle - Point{});
  }
  return all;
}

// One coordinate of the centre.
struct Coordinate {
  double at_mm = 0.0;
  double error_mm = std::numeric_limits<double>::infinity();
};

// What one field of rays says, all in the blank's frame.
class Measured {
 public:
  Measured(const Work& work, const RayField& field, Effort effort) : rays_(rays_of_pattern(effort)) {
    const std::vector<const Primitive*> air = bodies(work.cuts, bounds(work.blank));
    std::vector<Interval> metal;
    sticks_.reserve(kPatterns * rays_);
    for (std::size_t pattern = 0; pattern < kPatterns; ++pattern) {
      for (std::size_t i = 0; i < rays_; ++i) {
        const SquarePoint at = lattice_point(effort, pattern, i);
        const Ray ray = field.ray(at.s, at.t);
        metal_along(work.blank, air, ray, metal);
        sticks_.push_back(stick(metal, ray, frame_of(work.blank)));
        length_mm_ += sticks_.back().length_mm;
      }
    }
  }

  [[nodiscard]] bool empty() const { return length_mm_ <= 0.0; }
  [[nodiscard]] std::size_t rays() const { return sticks_.size(); }

  // The error of a quotient is that of what is left over when the sticks are balanced about the answer: its scatter from
  // pattern to pattern, and, as with volumes, the one ray that all patterns may miss by along an edge.
  [[nodiscard]] Coordinate coordinate(double Vector::*which) const {
    double moment = 0.0;
    for (const Stick& one : sticks_)
      moment += one.moment_mm2.*which;
    const double at_mm = moment / length_mm_;
    std::array<double, kPatterns> left_over{};
    double least = std::numeric_limits<double>::infinity();
    double most = -least;
    for (std::size_t i = 0; i < sticks_.size(); ++i) {
      const double one = sticks_[i].moment_mm2.*which - sticks_[i].length_mm * at_mm;
      left_over.at(i / rays_) += one;
      least = std::min(least, one);
      most = std::max(most, one);
    }
    const double of_pattern = length_mm_ / kPatterns;
    for (double& one : left_over)
      one /= of_pattern;
    return {at_mm, error_of_mean(left_over) + (most - least) / of_pattern + kSliver_mm};
  }

 private:
  std::size_t rays_;
  std::vector<Stick> sticks_;
  double length_mm_ = 0.0;
};

// The one with the least error; not less than by how much it lies outside the others' errors.
Coordinate best_of(const std::vector<Measured>& all, double Vector::*which) {
  Coordinate best;
  std::vector<Coordinate> found;
  for (const Measured& one : all) {
    found.push_back(one.coordinate(which));
    if (found.back().error_mm < best.error_mm) best = found.back();
  }
  for (const Coordinate& one : found)
    best.error_mm = std::max(best.error_mm, std::abs(one.at_mm - best.at_mm) - one.error_mm);
  return best;
}

}  // namespace

std::optional<CentreOfGravity> centre_of_gravity(const Work& work, Effort effort) {
  const Frame& frame = frame_of(work.blank);
  std::vector<Measured> all;
  std::size_t rays = 0;
  for (const RayField& field : fields_over(work.blank, bounds(work.blank, frame))) {
    all.emplace_back(work, field, effort);
    rays += all.back().rays();
    if (all.back().empty()) all.pop_back();
  }
  if (all.empty()) return std::nullopt;
  const Coordinate x = best_of(all, &Vector::x);
  const Coordinate y = best_of(all, &Vector::y);
  const Coordinate z = best_of(all, &Vector::z);
  return CentreOfGravity{frame.to_world(Point{x.at_mm, y.at_mm, z.at_mm}),
                         length_mm(Vector{x.error_mm, y.error_mm, z.error_mm}), rays};
}

}  // namespace sparewright::shape
