// Invented parts of four kinds for property tests: on a grid so that faces coincide, stepped blocks, turned bars, and plates
// whose holes and flats lean. The same on every machine and in every run.
#pragma once

#include <array>
#include <cmath>
#include <numbers>
#include <vector>

#include "core/shape/cutters.hpp"
#include "random_shapes.hpp"

namespace sparewright::tests {

enum class PartKind { kGrid, kStepped, kTurned, kLeaning };
inline constexpr std::array kPartKinds{PartKind::kGrid, PartKind::kStepped, PartKind::kTurned,
                                       PartKind::kLeaning};

struct InventedPart {
  shape::Blank blank;
  std::vector<shape::Cutter> cutters;
};

inline quantity::Diameter diameter_of(double mm) {
  return quantity::Diameter::from_base(mm);
}

inline InventedPart grid_part(Random& random) {
  const shape::Vector size{60.0, 40.0, 25.0};
  return {{"block", shape::Box{{}, size}}, grid_cutters(random, random.whole(2, 5), size)};
}

// Steps across the block from either side, then drilled and counterbored from above.
inline InventedPart stepped_part(Random& random) {
  using shape::Open;
  InventedPart part{{"block", shape::Box{{}, {80.0, 40.0, 30.0}}}, {}};
  const double left = random.between(10.0, 30.0);
  const double down = random.between(4.0, 12.0);
  const Open across = Open::kYLow | Open::kYHigh | Open::kZHigh;
  part.cutters.push_back(
      shape::milled_box("left", {}, {0.0, 0.0, 30.0 - down}, {left, 40.0, 30.0}, across | Open::kXLow));
  if (random.one_in(2))
    part.cutters.push_back(shape::milled_box("right", {}, {random.between(50.0, 70.0), 0.0, 15.0},
                                             {80.0, 40.0, 30.0}, across | Open::kXHigh));
  if (random.one_in(2))
    part.cutters.push_back(shape::milled_box("front", {}, {0.0, 0.0, random.between(8.0, 20.0)},
                                             {80.0, random.between(4.0, 12.0), 30.0},
                                             Open::kXLow | Open::kXHigh | Open::kYLow | Open::kZHigh));
  for (int i = random.whole(1, 4); i > 0; --i) {
    const shape::Point entry{random.between(8.0, 72.0), random.between(8.0, 32.0), 30.0};
    const double d = random.between(3.0, 9.0);
    const shape::Vector into{0.0, 0.0, -1.0};
    const auto depth = quantity::Length::from_base(random.between(12.0, 26.0));
    switch (random.whole(0, 2)) {
      case 0:
        part.cutters.push_back(
            shape::through_hole("through", entry, into, diameter_of(d), quantity::Length::from_base(30.0)));
        break;
      case 1:
        part.cutters.push_back(shape::drilled_hole("drilled", entry, into, diameter_of(d), depth));
        break;
      default:
        part.cutters.push_back(shape::flat_bottomed_hole("bored", entry, into, diameter_of(d), depth));
    }
  }
  return part;
}

// Off a bar along x: from one radius to another between two places, to past the bar.
inline shape::Cutter turned_off(double from, double to, double radius_from, double radius_to) {
  const double past = 25.0;
  return {"turned", shape::TurnedBody{shape::Frame::along({0.0, 0.0, 0.0}, {1.0, 0.0, 0.0}),
                                      shape::straight_contour(std::array{
                                          shape::FlatPoint{radius_from, from}, shape::FlatPoint{past, from},
                                          shape::FlatPoint{past, to}, shape::FlatPoint{radius_to, to}})}};
}

// A shoulder, now and then a taper, a groove, a crown, a cross hole, a flat.
inline InventedPart turned_part(Random& random) {
  const shape::Frame along_x = shape::Frame::along({0.0, 0.0, 0.0}, {1.0, 0.0, 0.0});
  InventedPart part{{"bar", shape::Cylinder{along_x, 20.0, 90.0}}, {}};
  const double r = random.between(8.0, 16.0);
  part.cutters.push_back(turned_off(-1.0, random.between(15.0, 30.0), r, r));
  if (random.one_in(2))
    part.cutters.push_back(turned_off(random.between(60.0, 75.0), 91.0, 20.0, random.between(6.0, 16.0)));
  if (random.one_in(2)) {
    const double at = random.between(38.0, 48.0);
    const double floor = random.between(10.0, 18.0);
    part.cutters.push_back(turned_off(at, at + random.between(2.0, 6.0), floor, floor));
  }
  if (random.one_in(2)) {
    const shape::Vector into{0.0, random.between(-1.0, 1.0), -1.0};
    part.cutters.push_back({"cross", shape::Cylinder{shape::Frame::along({55.0, -30.0 * into.y, 30.0}, into),
                                                     random.between(1.5, 5.0), 90.0}});
  }
  if (random.one_in(2))
    part.cutters.push_back(shape::milled_box(
        "flat", {}, {random.between(20.0, 40.0), -25.0, random.between(9.0, 17.0)}, {70.0, 25.0, 25.0},
        shape::Open::kYLow | shape::Open::kYHigh | shape::Open::kZHigh));
  if (random.one_in(2))
    part.cutters.push_back({"bore", shape::DrilledHole{shape::Frame::along({-1.0, 0.0, 0.0}, {1.0, 0.0, 0.0}),
                                                       random.between(2.0, 5.0), random.between(10.0, 80.0),
                                                       shape::kUsualPoint_rad}});
  return part;
}

// Holes that lean every way and a corner or two taken off at an angle.
inline InventedPart leaning_part(Random& random) {
  InventedPart part{{"plate", shape::Box{{}, {70.0, 50.0, 20.0}}}, {}};
  for (int i = random.whole(1, 3); i > 0; --i) {
    const shape::Vector into = shape::direction({random.between(-0.8, 0.8), random.between(-0.8, 0.8), -1.0});
    const shape::Point entry{random.between(15.0, 55.0), random.between(12.0, 38.0), 20.0};
    const shape::Frame frame = shape::Frame::along(entry - 15.0 * into, into);
    const double r = random.between(1.5, 5.0);
    if (random.one_in(2)) {
      part.cutters.push_back({"through", shape::Cylinder{frame, r, 70.0}});
    } else {
      part.cutters.push_back(
          {"drilled", shape::DrilledHole{frame, r, random.between(18.0, 28.0), shape::kUsualPoint_rad}});
    }
  }
  for (int i = random.whole(0, 2); i > 0; --i) {
    const double side = i == 1 ? 1.0 : -1.0;
    const shape::Point on{35.0 + side * random.between(22.0, 30.0), 25.0 + random.between(12.0, 20.0), 10.0};
    const shape::Vector in{-side, -random.between(0.5, 1.5), random.between(-0.4, 0.4)};
    part.cutters.push_back({"corner", shape::HalfSpace{shape::Frame::along(on, shape::direction(in))}});
  }
  return part;
}

inline InventedPart invented_part(PartKind kind, Random& random) {
  switch (kind) {
    case PartKind::kGrid:
      return grid_part(random);
    case PartKind::kStepped:
      return stepped_part(random);
    case PartKind::kTurned:
      return turned_part(random);
    case PartKind::kLeaning:
      break;
  }
  return leaning_part(random);
}

}  // namespace sparewright::tests
