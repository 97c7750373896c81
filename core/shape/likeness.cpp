#include "core/shape/likeness.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/shape/material.hpp"

namespace sparewright::shape {
namespace {

bool near(const Vector& a, const Vector& b, double alike_mm) {
  const Vector apart = a - b;
  return std::max({std::abs(apart.x), std::abs(apart.y), std::abs(apart.z)}) < alike_mm;
}

Vector size_of(const Image& image, const Vector& size) {
  const Vector v = image.of(size);
  return {std::abs(v.x), std::abs(v.y), std::abs(v.z)};
}

// What a cut is told by: only for bodies that these say everything of.
struct Outline3 {
  std::size_t kind = 0;
  Bounds box;
  double volume_mm3 = 0.0;
  Vector way;  // of what has a point; zero where both ends are alike
  bool told = false;
};

Outline3 outline_of(const Primitive& body) {
  Outline3 o{body.index(), bounds(body), volume_mm3(body), {}, false};
  const bool has_point = std::holds_alternative<DrilledHole>(body) || std::holds_alternative<Cone>(body);
  if (has_point) o.way = frame_of(body).z;
  o.told = has_point || std::holds_alternative<Cylinder>(body) || std::holds_alternative<Box>(body);
  return o;
}

bool are_alike(const Image& image, const Outline3& a, const Outline3& b, double alike_mm) {
  constexpr double kSameWay = 1e-6;
  const Vector size = b.box.size();
  const double surface_mm2 = 2 * (size.x * size.y + size.y * size.z + size.z * size.x);
  return a.kind == b.kind && near(image.of(a.box.middle()) - Point{}, b.box.middle() - Point{}, alike_mm) &&
         near(size_of(image, a.box.size()), size, alike_mm) &&
         std::abs(a.volume_mm3 - b.volume_mm3) < alike_mm * surface_mm2 &&
         length_mm(image.of(a.way) - b.way) < kSameWay;
}

bool has_like(const std::vector<Outline3>& all, const Outline3& one, const Image& image, double alike_mm) {
  return one.told && std::any_of(all.begin(), all.end(), [&](const Outline3& other) {
           return are_alike(image, one, other, alike_mm);
         });
}

// Where the one is metal and the other air. Both in order.
std::vector<Interval> unlike(const std::vector<Interval>& a, const std::vector<Interval>& b) {
  std::vector<double> ends;
  for (const auto* all : {&a, &b}) {
    for (const Interval& one : *all) {
      ends.push_back(one.enter_mm);
      ends.push_back(one.exit_mm);
    }
  }
  std::sort(ends.begin(), ends.end());
  // Each end changes from like to unlike or back: two at one place cancel.
  std::vector<Interval> all;
  for (std::size_t i = 0; i + 1 < ends.size(); i += 2) {
    if (ends[i + 1] > ends[i]) all.push_back({ends[i], ends[i + 1]});
  }
  return all;
}

// The longest stretch that lies in one of the others too.
double longest_within(const std::vector<Interval>& all, const std::vector<Interval>& others) {
  double longest = 0.0;
  for (const Interval& one : all) {
    for (const Interval& other : others) {
      const double both = std::min(one.exit_mm, other.exit_mm) - std::max(one.enter_mm, other.enter_mm);
      longest = std::max(longest, both);
    }
  }
  return longest;
}

// Rays along the three axes through a box, none of them in its middle planes.
std::vector<Ray> rays_through(const Bounds& box) {
  constexpr int kAcross = 6;
  constexpr double kShift = 0.41421356;  // of the gap between two rays
  const Vector size = box.size();
  std::vector<Ray> rays;
  for (int i = 0; i < kAcross * kAcross; ++i) {
    const double s = (i % kAcross + kShift) / kAcross;
    const double t = (std::floor(static_cast<double>(i) / kAcross) + kShift) / kAcross;
    rays.push_back({box.low + Vector{0.0, s * size.y, t * size.z}, {1.0, 0.0, 0.0}});
    rays.push_back({box.low + Vector{t * size.x, 0.0, s * size.z}, {0.0, 1.0, 0.0}});
    rays.push_back({box.low + Vector{s * size.x, t * size.y, 0.0}, {0.0, 0.0, 1.0}});
  }
  return rays;
}

std::vector<Interval> unlike_along(const Primitive& blank, const std::vector<const Primitive*>& air,
                                   const Ray& ray, const Image& image) {
  std::vector<Interval> here;
  std::vector<Interval> there;
  metal_along(blank, air, ray, here);
  metal_along(blank, air, {image.of(ray.origin), image.of(ray.direction)}, there);
  return unlike(here, there);
}

// In the box of a cut; what is unlike beyond it is another cut's.
bool differs_within(const Work& work, const std::vector<const Primitive*>& air, const Bounds& box,
                    const Image& image, double alike_mm) {
  for (const Ray& ray : rays_through(box)) {
    const std::vector<Interval> of_the_box{{0.0, std::abs(dot(box.size(), ray.direction))}};
    if (longest_within(unlike_along(work.blank, air, ray, image), of_the_box) > alike_mm) return true;
  }
  return false;
}

// Where the blanks are unlike and no cut has taken that away.
bool blanks_differ(const Work& work, const std::vector<const Primitive*>& air, const Image& image,
                   double alike_mm) {
  for (const Ray& ray : rays_through(bounds(work.blank))) {
    const std::vector<Interval> of_the_blank = unlike_along(work.blank, {}, ray, image);
    if (of_the_blank.empty()) continue;
    if (longest_within(unlike_along(work.blank, air, ray, image), of_the_blank) > alike_mm) return true;
  }
  return false;
}

}  // namespace

Vector Image::of(const Vector& v) const {
  return v.x * axes[0] + v.y * axes[1] + v.z * axes[2];
}

Image Image::back() const {
  Image b;
  b.middle = middle;
  b.axes = {Vector{axes[0].x, axes[1].x, axes[2].x}, Vector{axes[0].y, axes[1].y, axes[2].y},
            Vector{axes[0].z, axes[1].z, axes[2].z}};
  return b;
}

bool Image::mirrors() const {
  return dot(cross(axes[0], axes[1]), axes[2]) < 0.0;
}

std::vector<Image> images_of(const Bounds& box, double alike_mm) {
  const Vector size = box.size();
  const std::array<double, 3> sizes{size.x, size.y, size.z};
  const std::array unit{Vector{1.0, 0.0, 0.0}, Vector{0.0, 1.0, 0.0}, Vector{0.0, 0.0, 1.0}};
  std::array<std::size_t, 3> to{0, 1, 2};
  std::vector<Image> all;
  do {
    const Vector swapped{sizes.at(to[0]), sizes.at(to[1]), sizes.at(to[2])};
    if (!near(size, swapped, alike_mm)) continue;
    for (unsigned signs = 0; signs < 8; ++signs) {
      Image image;
      image.middle = box.middle();
      for (std::size_t k = 0; k < 3; ++k)
        image.axes.at(k) = ((signs >> k) & 1U) != 0 ? -unit.at(to.at(k)) : unit.at(to.at(k));
      all.push_back(image);
    }
  } while (std::next_permutation(to.begin(), to.end()));
  return all;
}

std::optional<std::size_t> difference(const Work& work, const Image& image, double alike_mm) {
  alike_mm = std::max(alike_mm, kAlikeAtLeast_mm);
  std::vector<Outline3> outlines;
  for (const Cut& cut : work.cuts)
    outlines.push_back(outline_of(cut.body));
  const Image back = image.back();
  const std::vector<const Primitive*> air = bodies(work.cuts);
  const Bounds blank = bounds(work.blank);
  for (std::size_t i = 0; i < work.cuts.size(); ++i) {
    const Bounds box = common(outlines[i].box, blank);
    if (box.empty() ||
        (has_like(outlines, outlines[i], image, alike_mm) && has_like(outlines, outlines[i], back, alike_mm)))
      continue;
    if (differs_within(work, air, box, image, alike_mm) || differs_within(work, air, box, back, alike_mm))
      return i;
  }
  if (blanks_differ(work, air, image, alike_mm)) return work.cuts.size();
  return std::nullopt;
}

}  // namespace sparewright::shape
