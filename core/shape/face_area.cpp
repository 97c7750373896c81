#include "core/shape/face_area.hpp"

#include <algorithm>
#include <array>
#include <numbers>
#include <utility>
#include <vector>

#include "core/shape/flat_faces.hpp"
#include "core/shape/material.hpp"

namespace sparewright::shape {
namespace {

// The body has a flat face in the plane that z points out of (or, of a cutter, into: way = -1).
bool has_face_in(const Primitive& body, const Frame& plane, double way) {
  constexpr double kSquarely = 1e-11;  // half the skin over 1 m
  const std::vector<HalfSpace> faces = flat_faces(body);
  return std::any_of(faces.begin(), faces.end(), [&](const HalfSpace& face) {
    return length_mm(face.frame.z - way * plane.z) <= kSquarely &&
           std::abs(plane.to_local(face.frame.origin).z) <= kSkin_mm / 2;
  });
}

double total_mm(const std::vector<Interval>& stretches) {
  double sum = 0.0;
  for (const Interval& one : stretches)
    sum += one.length_mm();
  return sum;
}

// The skin along one line of the plane after another.
class Skin {
 public:
  Skin(const Work& work, const Frame& plane) : work_(work), plane_(plane), air_(bodies(work.cuts)) {
    blank_has_face_ = has_face_in(work.blank, plane, 1.0);
    for (const Primitive* body : air_) {
      if (has_face_in(*body, plane, -1.0)) cut_faces_.push_back(body);
    }
  }

  [[nodiscard]] bool no_face() const { return !blank_has_face_ && cut_faces_.empty(); }
  [[nodiscard]] std::size_t lines() const { return lines_; }

  // Along the line at local y = v_mm, looked at so far below and above the plane.
  [[nodiscard]] double length_mm(double v_mm, double off_mm) {
    ++lines_;
    const Ray below = line(v_mm, -off_mm);
    const Ray above = line(v_mm, off_mm);
    metal_along(work_.blank, air_, below, skin_);
    if (skin_.empty()) return 0.0;
    metal_along(work_.blank, air_, above, scratch_);
    for (const Interval& metal : scratch_)
      take_out(skin_, metal);
    const double bare_mm = total_mm(skin_);
    const auto take_face = [&](const Interval& face) { take_out(skin_, face); };
    if (blank_has_face_) for_each_inside(work_.blank, below, take_face);
    for (const Primitive* body : cut_faces_)
      for_each_inside(*body, above, take_face);
    return bare_mm - total_mm(skin_);
  }

 private:
  [[nodiscard]] Ray line(double v_mm, double z_mm) const {
    return {plane_.to_world(Point{0.0, v_mm, z_mm}), plane_.x};
  }

  const Work& work_;
  Frame plane_;
  std::vector<const Primitive*> air_;
  bool blank_has_face_ = false;
  std::vector<const Primitive*> cut_faces_;
  std::vector<Interval> skin_;
  std::vector<Interval> scratch_;
  std::size_t lines_ = 0;
};

// --- adding up lines -----------------------------------------------------------------------------------------------

constexpr std::size_t kNodes = 12;
struct Node {
  double at = 0.0;  // from -1 to 1
  double weight = 0.0;
};

// Gauss's rule: the roots of Legendre's polynomial by Newton's method on its three-term recurrence.
std::array<Node, kNodes> gauss_nodes() {
  std::array<Node, kNodes> nodes{};
  constexpr auto kN = static_cast<double>(kNodes);
  for (std::size_t i = 0; i < kNodes; ++i) {
    double x = std::cos(std::numbers::pi * (static_cast<double>(i) + 0.75) / (kN + 0.5));
    double slope = 1.0;
    for (int step = 0; step < 20; ++step) {  // from so near a start five are plenty
      double before = 1.0;
      double here = x;
      for (double k = 2.0; k <= kN; k += 1.0)
        before = std::exchange(here, ((2 * k - 1) * x * here - (k - 1) * before) / k);
      slope = kN * (x * here - before) / (x * x - 1.0);
      x -= here / slope;
    }
    nodes.at(i) = {x, 2.0 / ((1.0 - x * x) * slope * slope)};
  }
  return nodes;
}

struct Sum {
  double area_mm2 = 0.0;
  double error_mm2 = 0.0;
};

// Adds up lines over stretches of local y, each first as a whole and then in halves, until halving changes nothing.
template <typename LengthAt>
class Adder {
 public:
  Adder(LengthAt length_at, double small_mm2)
      : length_at_(std::move(length_at)), small_mm2_(small_mm2), nodes_(gauss_nodes()) {}

  [[nodiscard]] Sum sum(double low_mm, double high_mm) {
    Sum all;
    halve(low_mm, high_mm, whole(low_mm, high_mm), 0, all);
    return all;
  }

 private:
  // With y = middle + half * sin(angle) a line's length is a smooth function of the angle where it is one of y, and
  // where it begins or ends as a circle's does.
  [[nodiscard]] double whole(double low_mm, double high_mm) {
    constexpr double kQuarter_rad = std::numbers::pi / 2;
    const double half = (high_mm - low_mm) / 2;
    double sum = 0.0;
    for (const Node& node : nodes_) {
      const double angle = kQuarter_rad * node.at;
      sum += node.weight * std::cos(angle) * length_at_(low_mm + half * (1.0 + std::sin(angle)));
    }
    return kQuarter_rad * half * sum;
  }

  void halve(double low_mm, double high_mm, double whole_mm2, int depth, Sum& all) {
    constexpr int kDeepest = 40;
    const double middle = (low_mm + high_mm) / 2;
    const double left = whole(low_mm, middle);
    const double right = whole(middle, high_mm);
    const double change = std::abs(left + right - whole_mm2);
    if (change <= small_mm2_ || depth == kDeepest) {
      all.area_mm2 += left + right;
      all.error_mm2 += change;
      return;
    }
    halve(low_mm, middle, left, depth + 1, all);
    halve(middle, high_mm, right, depth + 1, all);
  }

  LengthAt length_at_;
  double small_mm2_;
  std::array<Node, kNodes> nodes_;
};

// Where along local y the blank and the bodies that meet the plane begin and end.
std::vector<double> breaks_mm(const Work& work, const Frame& plane) {
  const Bounds blank = bounds(work.blank, plane);
  std::vector<double> all{blank.low.y, blank.high.y};
  for (const Cut& cut : work.cuts) {
    const Bounds body = bounds(cut.body, plane);
    if (body.low.z > kSkin_mm || body.high.z < -kSkin_mm) continue;
    for (const double y : {body.low.y, body.high.y}) {
      if (y > blank.low.y && y < blank.high.y) all.push_back(y);
    }
  }
  std::sort(all.begin(), all.end());
  return all;
}

}  // namespace

FaceArea face_area(const Work& work, const Frame& plane) {
  constexpr double kShare = 1e-13;  // of the blank's own extent: rounding
  Skin skin(work, plane);
  if (skin.no_face()) return {};
  const Vector size = bounds(work.blank, plane).size();
  const std::vector<double> breaks = breaks_mm(work, plane);
  const auto measured = [&](double off_mm) {
    Adder adder([&](double v_mm) { return skin.length_mm(v_mm, off_mm); }, kShare * size.x * size.y);
    Sum all;
    for (std::size_t i = 0; i + 1 < breaks.size(); ++i) {
      if (breaks[i + 1] - breaks[i] <= kSliver_mm) continue;
      const Sum one = adder.sum(breaks[i], breaks[i + 1]);
      all.area_mm2 += one.area_mm2;
      all.error_mm2 += one.error_mm2;
    }
    return all;
  };
  const Sum near = measured(kSkin_mm / 2);
  // A round face that touches the plane takes a strip as wide as the root of the depth: four times as deep it takes twice
  // as much, so the difference is what it takes.
  const Sum deeper = measured(4 * kSkin_mm / 2);
  const double depth_error = std::abs(deeper.area_mm2 - near.area_mm2);
  return {near.area_mm2, near.error_mm2 + depth_error + kSliver_mm * (size.x + size.y), skin.lines()};
}

}  // namespace sparewright::shape
