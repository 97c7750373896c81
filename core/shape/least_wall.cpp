#include "core/shape/least_wall.hpp"

#include <algorithm>
#include <array>
#include <limits>
#include <vector>

#include "core/shape/material.hpp"
#include "core/shape/near_cuts.hpp"
#include "core/shape/trimmed_blank.hpp"

namespace sparewright::shape {
namespace {

struct Pair {
  std::size_t one = 0;
  std::size_t other = 0;
  double gap_mm = 0.0;
};

class Search {
 public:
  explicit Search(const Work& work) : work_(work), near_(work) {}

  std::optional<LeastWall> thinnest() && {
    look_across();
    const std::vector<Pair> pairs = all_pairs();
    const auto apart = std::find_if(pairs.begin(), pairs.end(), [](const Pair& p) { return p.gap_mm > 0.0; });
    if (static_cast<std::size_t>(apart - pairs.begin()) > kMostMeetingPairs) return std::nullopt;
    // Those apart first: what they find rules out most of the rest.
    for (auto pair = apart; pair != pairs.end() && pair->gap_mm < limit(); ++pair)
      look_between(*pair);
    look_outside();
    for (auto pair = pairs.begin(); pair != apart; ++pair)
      look_between(*pair);
    return best_;
  }

 private:
  [[nodiscard]] double limit() const {
    return best_ ? best_->least_mm : std::numeric_limits<double>::infinity();
  }

  [[nodiscard]] std::vector<Pair> all_pairs() const {
    std::vector<Pair> pairs;
    for (std::size_t i = 0; i < work_.cuts.size(); ++i) {
      for (const NearCuts::Neighbour& near : near_.within(i, limit())) {
        if (near.cut > i) pairs.push_back({i, near.cut, near.gap_mm});
      }
    }
    std::stable_sort(pairs.begin(), pairs.end(),
                     [](const Pair& a, const Pair& b) { return a.gap_mm < b.gap_mm; });
    return pairs;
  }

  void take(const Wall& wall, std::size_t cut, std::optional<std::size_t> other, std::string_view face) {
    // Two boxes that touch share a face, and no edge of metal stands between them.
    const bool share_a_face = other && std::holds_alternative<Box>(work_.cuts[cut].body) &&
                              std::holds_alternative<Box>(work_.cuts[*other].body);
    const bool is_wall = wall.kind == WallKind::kMetal || (wall.kind == WallKind::kTangent && !share_a_face);
    if (is_wall && wall.least_mm < limit())
      best_ = LeastWall{wall.least_mm, wall.from, wall.to, cut, other, face};
  }

  void look_between(const Pair& pair) {
    take(near_.wall_between(pair.one, pair.other, limit()), pair.one, pair.other, {});
  }

  void look_outside() {
    for (std::size_t cut = 0; cut < work_.cuts.size(); ++cut) {
      if (!near_.cuts_metal(cut)) continue;
      for (const FaceWall& face : near_.walls_to_outside(cut, limit()))
        take(face.wall, cut, std::nullopt, face.face);
    }
  }

  // From side to side of the blank, where some ray finds that much metal in one piece.
  void look_across() {
    constexpr int kAcross = 15;  // odd, so that one ray runs through the middle
    const Bounds box = bounds(work_.blank);
    const Vector size = box.size();
    const std::array axes{Vector{1.0, 0.0, 0.0}, Vector{0.0, 1.0, 0.0}, Vector{0.0, 0.0, 1.0}};
    std::vector<Interval> metal;
    const std::vector<const Primitive*> air = bodies(work_.cuts);
    for (const Vector& axis : axes) {
      const double across = dot(axis, size);
      for (int i = 0; i < kAcross * kAcross && across < limit(); ++i) {
        const double s = (i % kAcross + 0.5) / kAcross;
        const double t = (std::floor(static_cast<double>(i) / kAcross) + 0.5) / kAcross;
        Point start = box.low;
        start.x += axis.x > 0.0 ? 0.0 : s * size.x;
        start.y += axis.y > 0.0 ? 0.0 : (axis.x > 0.0 ? s : t) * size.y;
        start.z += axis.z > 0.0 ? 0.0 : t * size.z;
        metal_along(work_.blank, air, {start, axis}, metal);
        if (metal.size() != 1 || metal.front().length_mm() < across - kTouch_mm) continue;
        best_ = LeastWall{across, start, start + across * axis, std::nullopt, std::nullopt, {}};
      }
    }
  }

  const Work& work_;
  NearCuts near_;
  std::optional<LeastWall> best_;
};

}  // namespace

std::optional<LeastWall> least_wall(const Work& work) {
  const Primitive blank = trimmed_blank(work);
  const Work trimmed{blank, work.cuts};
  return Search(trimmed).thinnest();
}

}  // namespace sparewright::shape
