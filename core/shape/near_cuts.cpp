#include "core/shape/near_cuts.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace sparewright::shape {
namespace {

double gap(double a_low, double a_high, double b_low, double b_high) {
  return std::max({0.0, b_low - a_high, a_low - b_high});
}

Bounds around(const Bounds& a, const Bounds& b) {
  return {{std::min(a.low.x, b.low.x), std::min(a.low.y, b.low.y), std::min(a.low.z, b.low.z)},
          {std::max(a.high.x, b.high.x), std::max(a.high.y, b.high.y), std::max(a.high.z, b.high.z)}};
}

Bounds grown(const Bounds& box, double by_mm) {
  const Vector by{by_mm, by_mm, by_mm};
  return {box.low - by, box.high + by};
}

}  // namespace

NearCuts::NearCuts(const Work& work) : work_(work) {
  const Bounds blank = bounds(work.blank);
  for (const Cut& cut : work.cuts) {
    bounds_.push_back(common(bounds(cut.body), blank));
    const Vector size = bounds_.back().size();
    cuts_metal_.push_back(std::min({size.x, size.y, size.z}) > kTouch_mm);
    rings_.push_back(ring_of(cut.body));
  }
}

double NearCuts::gap_mm(std::size_t one, std::size_t other) const {
  const Bounds& a = bounds_[one];
  const Bounds& b = bounds_[other];
  const double boxes_mm =
      length_mm(Vector{gap(a.low.x, a.high.x, b.low.x, b.high.x), gap(a.low.y, a.high.y, b.low.y, b.high.y),
                       gap(a.low.z, a.high.z, b.low.z, b.high.z)});
  return std::max({boxes_mm, inside_mm(rings_[one], b), inside_mm(rings_[other], a)});
}

std::optional<NearCuts::Ring> NearCuts::ring_of(const Primitive& body) {
  const auto* turned = std::get_if<TurnedBody>(&body);
  if (turned == nullptr) return std::nullopt;
  const Vector& z = turned->frame.z;
  constexpr double kSquare = 1.0 - 1e-12;
  const std::array<double, 3> along{std::abs(z.x), std::abs(z.y), std::abs(z.z)};
  for (int axis = 0; axis < 3; ++axis) {
    if (along.at(static_cast<std::size_t>(axis)) < kSquare) continue;
    return Ring{axis, turned->frame.origin, farthest(turned->half_section, -1.0, 0.0).u};
  }
  return std::nullopt;
}

// From the corner of the box farthest from the line out to the ring; 0 where it reaches that far.
double NearCuts::inside_mm(const std::optional<Ring>& ring, const Bounds& box) const {
  if (!ring) return 0.0;
  const auto reach = [](double low, double high, double middle) {
    return std::max(std::abs(low - middle), std::abs(high - middle));
  };
  const double x = ring->axis == 0 ? 0.0 : reach(box.low.x, box.high.x, ring->middle.x);
  const double y = ring->axis == 1 ? 0.0 : reach(box.low.y, box.high.y, ring->middle.y);
  const double z = ring->axis == 2 ? 0.0 : reach(box.low.z, box.high.z, ring->middle.z);
  return std::max(0.0, ring->inner_mm - length_mm(Vector{x, y, z}));
}

std::vector<NearCuts::Neighbour> NearCuts::within(std::size_t cut, double limit_mm) const {
  std::vector<Neighbour> near;
  for (std::size_t other = 0; other < bounds_.size() && cuts_metal_[cut]; ++other) {
    if (other == cut || !cuts_metal_[other] || work_.cuts[other].feature == work_.cuts[cut].feature) continue;
    const double apart = gap_mm(cut, other);
    if (apart < limit_mm) near.push_back({other, apart});
  }
  std::stable_sort(near.begin(), near.end(),
                   [](const Neighbour& a, const Neighbour& b) { return a.gap_mm < b.gap_mm; });
  return near;
}

// These cuts first, then all others that reach into the box.
std::vector<Cut> NearCuts::in(const Bounds& box, std::initializer_list<std::size_t> first) const {
  std::vector<Cut> cuts;
  for (const std::size_t i : first)
    cuts.push_back(work_.cuts[i]);
  for (std::size_t i = 0; i < bounds_.size(); ++i) {
    const bool is_first = std::find(first.begin(), first.end(), i) != first.end();
    if (!is_first && cuts_metal_[i] && !common(bounds_[i], box).empty()) cuts.push_back(work_.cuts[i]);
  }
  return cuts;
}

Wall NearCuts::wall_between(std::size_t one, std::size_t other, double limit_mm) const {
  const std::vector<Cut> cuts = in(around(bounds_[one], bounds_[other]), {one, other});
  return shape::wall_between({work_.blank, cuts}, 0, 1, limit_mm);
}

std::vector<FaceWall> NearCuts::walls_to_outside(std::size_t cut, double limit_mm) const {
  const std::vector<Cut> cuts = in(grown(bounds_[cut], limit_mm), {cut});
  return shape::walls_to_outside({work_.blank, cuts}, 0, limit_mm);
}

}  // namespace sparewright::shape
