// Invented primitives and parts for property tests: the same on every machine and in every run.
#pragma once

#include <cstdint>
#include <random>
#include <string>
#include <vector>

#include "core/shape/cutters.hpp"
#include "core/shape/recipe.hpp"

namespace sparewright::tests {

// mt19937_64 is fixed by the standard; the standard's distributions are not, so these are our own.
class Random {
 public:
  explicit Random(std::uint64_t seed) : engine_(seed) {}

  double between(double low, double high) {
    constexpr double kTwoTo53 = 9007199254740992.0;
    return low + (high - low) * (static_cast<double>(engine_() >> 11U) / kTwoTo53);
  }
  int whole(int low, int high) {  // both ends included
    return low + static_cast<int>(engine_() % static_cast<std::uint64_t>(high - low + 1));
  }
  bool one_in(int n) { return whole(1, n) == 1; }
  // Small sizes as often as large ones.
  double size(double low, double high) { return low * std::pow(high / low, between(0.0, 1.0)); }
  shape::Point point(double reach) {
    const double x = between(-reach, reach);
    const double y = between(-reach, reach);
    return {x, y, between(-reach, reach)};
  }
  shape::Vector direction() {
    for (;;) {
      const shape::Point p = point(1.0);
      const shape::Vector v = p - shape::Point{};
      if (length_mm(v) > 0.1 && length_mm(v) < 1.0) return shape::direction(v);
    }
  }

 private:
  std::mt19937_64 engine_;
};

// Every third one stands along an axis.
inline shape::Frame random_frame(Random& random, double reach) {
  const shape::Point origin = random.point(reach);
  if (!random.one_in(3))
    return shape::Frame::along(origin, random.direction()).turned(random.between(0.0, 6.28));
  const int axis = random.whole(0, 2);
  const double way = random.one_in(2) ? 1.0 : -1.0;
  return shape::Frame::along(origin, {axis == 0 ? way : 0.0, axis == 1 ? way : 0.0, axis == 2 ? way : 0.0});
}

inline shape::Primitive random_primitive(Random& random, double reach, double smallest = 0.2,
                                         double largest = 50.0) {
  const shape::Frame frame = random_frame(random, reach);
  const auto size = [&] { return random.size(smallest, largest); };
  const double a = size();
  const double b = size();
  const double c = size();
  switch (random.whole(0, 4)) {
    case 0:
      return shape::Box{frame, {a, b, c}};
    case 1:
      return shape::Cylinder{frame, a, b};
    case 2:
      return shape::Cone{frame, a, random.one_in(2) ? 0.0 : b, c};
    case 3:
      return shape::DrilledHole{frame, a, b, random.between(1.0, 2.6)};
    default:
      return hexagonal_prism(frame, a, b);
  }
}

// A plate or a bar with holes and steps whose faces coincide more often than not: everything lies on a 5 mm
// grid.
inline std::vector<shape::Cutter> grid_cutters(Random& random, int count, const shape::Vector& blank_size) {
  constexpr double kPitch = 5.0;
  const auto on_grid = [&](double size) { return kPitch * random.whole(0, static_cast<int>(size / kPitch)); };
  std::vector<shape::Cutter> cutters;
  for (int i = 0; i < count; ++i) {
    const std::string name = "cut " + std::to_string(i + 1);
    const shape::Point at{on_grid(blank_size.x), on_grid(blank_size.y), on_grid(blank_size.z)};
    const shape::Vector size{kPitch * random.whole(1, 4), kPitch * random.whole(1, 4),
                             kPitch * random.whole(1, 4)};
    const int axis = random.whole(0, 2);
    const shape::Vector into{axis == 0 ? 1.0 : 0.0, axis == 1 ? 1.0 : 0.0, axis == 2 ? 1.0 : 0.0};
    const auto open = random.one_in(2) ? shape::Open::kNone : shape::Open::kThrough;
    if (random.one_in(2)) {
      cutters.push_back({name, shape::Box{shape::Frame::at(at), size}, open});
    } else {
      cutters.push_back({name, shape::Cylinder{shape::Frame::along(at, into), size.x / 2, size.z}, open});
    }
  }
  return cutters;
}

}  // namespace sparewright::tests
