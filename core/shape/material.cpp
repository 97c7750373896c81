#include "core/shape/material.hpp"

#include "core/shape/clearance.hpp"

namespace sparewright::shape {

void take_out(std::vector<Interval>& metal, const Interval& air) {
  for (std::size_t i = 0; i < metal.size();) {
    const Interval old = metal[i];
    if (old.exit_mm <= air.enter_mm || old.enter_mm >= air.exit_mm) {
      ++i;
      continue;
    }
    const bool before = air.enter_mm - old.enter_mm > kSliver_mm;
    const bool after = old.exit_mm - air.exit_mm > kSliver_mm;
    const auto here = metal.begin() + static_cast<std::ptrdiff_t>(i);
    if (before && after) {
      metal[i].exit_mm = air.enter_mm;
      metal.insert(here + 1, {air.exit_mm, old.exit_mm});
      return;
    }
    if (before) {
      metal[i].exit_mm = air.enter_mm;
      ++i;
    } else if (after) {
      metal[i].enter_mm = air.exit_mm;
      return;
    } else {
      metal.erase(here);
    }
  }
}

void metal_along(const Primitive& blank, std::span<const Primitive* const> air, const Ray& ray,
                 std::vector<Interval>& out) {
  out.clear();
  const auto in_blank = inside(blank, ray);
  if (!in_blank || in_blank->length_mm() <= kSliver_mm) return;
  out.push_back(*in_blank);
  for (const Primitive* body : air) {
    for_each_inside(*body, ray, [&](const Interval& cut) {
      if (cut.length_mm() > kSliver_mm) take_out(out, cut);
    });
    if (out.empty()) return;
  }
}

std::vector<Interval> metal_along(const Work& work, const Ray& ray) {
  std::vector<Interval> metal;
  metal_along(work.blank, bodies(work.cuts), ray, metal);
  return metal;
}

std::vector<const Primitive*> bodies(std::span<const Cut> cuts, const Bounds& within) {
  std::vector<const Primitive*> near;
  for (const Cut& cut : cuts) {
    if (!common(bounds(cut.body), within).empty()) near.push_back(&cut.body);
  }
  return near;
}

std::vector<const Primitive*> bodies(std::span<const Cut> cuts) {
  std::vector<const Primitive*> all;
  all.reserve(cuts.size());
  for (const Cut& cut : cuts)
    all.push_back(&cut.body);
  return all;
}

bool is_metal(const Work& work, const Point& point) {
  if (!contains(work.blank, point)) return false;
  for (const Cut& cut : work.cuts) {
    if (clearance(cut.body, point).distance_mm < 0.0) return false;
  }
  return true;
}

}  // namespace sparewright::shape
