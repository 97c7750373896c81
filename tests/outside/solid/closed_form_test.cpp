// Volumes and centres of gravity of whole parts against closed forms.
//
// Source of the forms: any book of mensuration (Machinery's Handbook, "Volumes of Solids"; the circular segment and its
// centroid there under "Areas of Plane Figures"). They are written out here once more and know nothing of the product's.
#include <numbers>

#include <gtest/gtest.h>

#include "core/shape/cutters.hpp"
#include "shape_samples.hpp"
#include "solid/make_solid.hpp"

namespace sparewright::solid {
namespace {

using quantity::Angle;
using quantity::Diameter;
using quantity::Length;
using shape::Cutter;
using shape::Frame;
using shape::Open;
using shape::Point;
using shape::Primitive;
using shape::Vector;
using tests::dia;
using tests::kDown;
using tests::mm;
namespace unit = quantity::unit;

constexpr double kPi = std::numbers::pi;
// The kernel's surfaces are exact for all these parts; its edges are good to 1e-7 mm.
constexpr double kVolumeShare = 1e-6;
constexpr double kCentre_mm = 1e-4;

Angle deg(double count) {
  return Angle::of(count, unit::degree);
}

// A piece of metal there is (or, with a negative volume, is not): volume and centre.
struct Piece {
  double volume_mm3;
  Point centre;
};

Piece box(const Point& low, const Point& high) {
  const Vector s = high - low;
  return {s.x * s.y * s.z, between(low, high, 0.5)};
}
Piece cylinder(const Point& start, const Vector& axis, double d, double length) {
  return {kPi / 4 * d * d * length, start + (length / 2) * axis};
}
Piece cone(const Point& base, const Vector& to_point, double d, double height) {
  return {kPi / 12 * d * d * height, base + (height / 4) * to_point};
}
Piece gone(const Piece& p) {
  return {-p.volume_mm3, p.centre};
}

// The segment of a round bar along x, above a flat `high_mm` over the axis.
Piece segment_above(double radius, double high_mm, double length, const Point& start) {
  const double half = std::acos(high_mm / radius);
  const double area = radius * radius * (half - std::sin(half) * std::cos(half));
  const double chord = 2 * radius * std::sin(half);
  return {area * length, {start.x + length / 2, start.y, start.z + chord * chord * chord / (12 * area)}};
}

struct Part {
  std::string name;
  Primitive blank;
  std::vector<Cutter> cutters;
  std::vector<Piece> pieces;
  int lumps = 1;
};

Part plate(std::string name, std::vector<Cutter> cutters, std::vector<Piece> taken) {
  Part part{std::move(name), shape::Box{{}, {100.0, 60.0, 20.0}}, std::move(cutters), {}};
  part.pieces.push_back(box({0.0, 0.0, 0.0}, {100.0, 60.0, 20.0}));
  for (const Piece& p : taken)
    part.pieces.push_back(gone(p));
  return part;
}

Part bar(std::string name, std::vector<Cutter> cutters,
         std::vector<Piece> taken) {  // 50 across, 80 long, along x
  Part part{std::move(name),
            shape::Cylinder{Frame::along({}, {1.0, 0.0, 0.0}), 25.0, 80.0},
            std::move(cutters),
            {}};
  part.pieces.push_back(cylinder({}, {1.0, 0.0, 0.0}, 50.0, 80.0));
  for (const Piece& p : taken)
    part.pieces.push_back(gone(p));
  return part;
}

Cutter hole(double x, double y, double d) {
  return shape::through_hole("hole", {x, y, 20.0}, kDown, dia(d), mm(20.0));
}
Piece hole_piece(double x, double y, double d) {
  return cylinder({x, y, 20.0}, kDown, d, 20.0);
}

std::vector<Part> plates() {
  const double point = 6.0 / std::tan(59.0 / 180.0 * kPi);
  const double sink = 8.0 / std::tan(41.0 / 180.0 * kPi);
  const Open ends = Open::kYLow | Open::kYHigh;
  return {
      plate("plain", {}, {}),
      plate("one hole", {hole(30.0, 20.0, 12.0)}, {hole_piece(30.0, 20.0, 12.0)}),
      plate("four holes",
            {hole(15.0, 15.0, 8.5), hole(85.0, 15.0, 8.5), hole(15.0, 45.0, 8.5), hole(80.0, 40.0, 10.0)},
            {hole_piece(15.0, 15.0, 8.5), hole_piece(85.0, 15.0, 8.5), hole_piece(15.0, 45.0, 8.5),
             hole_piece(80.0, 40.0, 10.0)}),
      plate("counterbored",
            {hole(30.0, 20.0, 9.0),
             shape::flat_bottomed_hole("cb", {30.0, 20.0, 20.0}, kDown, dia(15.0), mm(8.6))},
            {cylinder({30.0, 20.0, 11.4}, kDown, 9.0, 11.4), cylinder({30.0, 20.0, 20.0}, kDown, 15.0, 8.6)}),
      plate("blind drilled", {shape::drilled_hole("blind", {70.0, 20.0, 20.0}, kDown, dia(12.0), mm(10.0))},
            {cylinder({70.0, 20.0, 20.0}, kDown, 12.0, 10.0), cone({70.0, 20.0, 10.0}, kDown, 12.0, point)}),
      plate("countersunk", {shape::countersink("sink", {40.0, 30.0, 20.0}, kDown, dia(16.0), deg(82.0))},
            {cone({40.0, 30.0, 20.0}, kDown, 16.0, sink)}),
      plate("step",
            {shape::milled_box("step", {}, {75.0, 0.0, 8.0}, {100.0, 60.0, 20.0},
                               Open::kXHigh | ends | Open::kZHigh)},
            {box({75.0, 0.0, 8.0}, {100.0, 60.0, 20.0})}),
      plate("pocket", {shape::milled_box("pocket", {}, {20.0, 10.0, 12.0}, {50.0, 40.0, 20.0}, Open::kZHigh)},
            {box({20.0, 10.0, 12.0}, {50.0, 40.0, 20.0})}),
      plate("hole through a step",
            {shape::milled_box("step", {}, {60.0, 0.0, 8.0}, {100.0, 60.0, 20.0},
                               Open::kXHigh | ends | Open::kZHigh),
             shape::through_hole("hole", {80.0, 30.0, 8.0}, kDown, dia(14.0), mm(8.0))},
            {box({60.0, 0.0, 8.0}, {100.0, 60.0, 20.0}), cylinder({80.0, 30.0, 8.0}, kDown, 14.0, 8.0)}),
      plate("cross hole",
            {shape::through_hole("cross", {35.0, 0.0, 10.0}, {0.0, 1.0, 0.0}, dia(7.0), mm(60.0))},
            {cylinder({35.0, 0.0, 10.0}, {0.0, 1.0, 0.0}, 7.0, 60.0)}),
      // Two equal bores crossing square share 16 r^3 / 3 (Steinmetz solid), about the point where they cross.
      plate("crossing bores",
            {hole(50.0, 30.0, 12.0),
             shape::through_hole("cross", {50.0, 0.0, 10.0}, {0.0, 1.0, 0.0}, dia(12.0), mm(60.0))},
            {hole_piece(50.0, 30.0, 12.0), cylinder({50.0, 0.0, 10.0}, {0.0, 1.0, 0.0}, 12.0, 60.0),
             gone({16.0 / 3.0 * 216.0, {50.0, 30.0, 10.0}})}),
      plate("corner cut off",
            {{"chamfer", shape::HalfSpace{Frame::along({90.0, 0.0, 0.0}, {-1.0, 1.0, 0.0})}, Open::kNone}},
            {{50.0 * 20.0, {100.0 - 10.0 / 3.0, 10.0 / 3.0, 10.0}}}),
      plate(
          "hexagon socket",
          {{"hex", shape::hexagonal_prism(Frame::along({30.0, 30.0, 20.0}, kDown), 14.0, 9.0), Open::kStart}},
          {{std::sqrt(3.0) / 2 * 196.0 * 9.0, {30.0, 30.0, 15.5}}}),
      plate("threaded hole's tapping drill, inch",
            {shape::drilled_hole("5/16 drill", {25.4, 25.4, 20.0}, kDown, Diameter::of(0.3125, unit::inch),
                                 Length::of(0.5, unit::inch))},
            {cylinder({25.4, 25.4, 20.0}, kDown, 7.9375, 12.7),
             cone({25.4, 25.4, 7.3}, kDown, 7.9375, 3.96875 / std::tan(59.0 / 180.0 * kPi))}),
  };
}

std::vector<Part> bars() {
  const Open all_but_floor = Open::kXLow | Open::kXHigh | Open::kYLow | Open::kYHigh | Open::kZHigh;
  const Vector along{1.0, 0.0, 0.0};
  std::vector<Part> all{
      bar("bored", {shape::through_hole("bore", {}, along, dia(20.0), mm(80.0))},
          {cylinder({}, along, 20.0, 80.0)}),
      bar("bored off centre", {shape::through_hole("bore", {0.0, 8.0, 3.0}, along, dia(20.0), mm(80.0))},
          {cylinder({0.0, 8.0, 3.0}, along, 20.0, 80.0)}),
      bar("flat", {shape::milled_box("flat", {}, {0.0, -25.0, 15.0}, {80.0, 25.0, 25.0}, all_but_floor)},
          {segment_above(25.0, 15.0, 80.0, {})}),
      bar("half gone at one end",
          {shape::milled_box("step", {}, {50.0, -25.0, 0.0}, {80.0, 25.0, 25.0},
                             Open::kXHigh | Open::kYLow | Open::kYHigh | Open::kZHigh)},
          {segment_above(25.0, 0.0, 30.0, {50.0, 0.0, 0.0})}),
      bar("two flats and a bore",
          {shape::milled_box("top", {}, {0.0, -25.0, 20.0}, {80.0, 25.0, 25.0}, all_but_floor),
           shape::milled_box("bottom", {}, {0.0, -25.0, -25.0}, {80.0, 25.0, -20.0},
                             Open::kXLow | Open::kXHigh | Open::kYLow | Open::kYHigh | Open::kZLow),
           shape::drilled_hole("centre drill", {0.0, 0.0, 0.0}, along, dia(10.0), mm(25.0), deg(90.0))},
          {segment_above(25.0, 20.0, 80.0, {}),
           {segment_above(25.0, 20.0, 80.0, {}).volume_mm3,
            {40.0, 0.0, -segment_above(25.0, 20.0, 80.0, {}).centre.z}},
           cylinder({}, along, 10.0, 25.0),
           cone({25.0, 0.0, 0.0}, along, 10.0, 5.0)}),
  };
  Part parted = bar("parted in two",
                    {shape::milled_box("saw cut", {}, {30.0, -25.0, -25.0}, {33.0, 25.0, 25.0},
                                       Open::kYLow | Open::kYHigh | Open::kZLow | Open::kZHigh)},
                    {cylinder({30.0, 0.0, 0.0}, along, 50.0, 3.0)});
  parted.lumps = 2;
  all.push_back(std::move(parted));
  Part hex{"hexagon bar, bored",
           shape::hexagonal_prism({}, 24.0, 40.0),
           {{"bore", shape::Cylinder{{}, 6.0, 40.0}, Open::kThrough}},
           {}};
  hex.pieces = {{std::sqrt(3.0) / 2 * 576.0 * 40.0, {0.0, 0.0, 20.0}},
                gone(cylinder({}, {0.0, 0.0, 1.0}, 12.0, 40.0))};
  all.push_back(std::move(hex));
  Part taper{"taper, cross drilled at the thick end's axis",
             shape::Cone{{}, 20.0, 10.0, 40.0},
             {{"bore", shape::Cylinder{{}, 5.0, 40.0}, Open::kThrough}},
             {}};
  taper.pieces = {cone({}, {0.0, 0.0, 1.0}, 40.0, 80.0),
                  gone(cone({0.0, 0.0, 40.0}, {0.0, 0.0, 1.0}, 20.0, 40.0)),
                  gone(cylinder({}, {0.0, 0.0, 1.0}, 10.0, 40.0))};
  all.push_back(std::move(taper));
  return all;
}

std::vector<Part> parts() {
  std::vector<Part> all = plates();
  for (Part& part : bars())
    all.push_back(std::move(part));
  return all;
}

class OutsideClosedForm : public ::testing::TestWithParam<Part> {};

TEST_P(OutsideClosedForm, VolumeAndCentreOfGravity) {
  const Part& part = GetParam();
  const auto recipe = shape::Recipe::make({"blank", part.blank}, part.cutters);
  ASSERT_TRUE(recipe);
  const auto made = make_solid(*recipe);
  ASSERT_TRUE(made) << made.error().subject << ": " << made.error().found;
  double volume = 0.0;
  Vector moment;
  for (const Piece& p : part.pieces) {
    volume += p.volume_mm3;
    moment = moment + p.volume_mm3 * (p.centre - Point{});
  }
  EXPECT_NEAR(made->solid.volume_mm3(), volume, kVolumeShare * volume);
  EXPECT_LT(distance_mm(made->solid.centre_of_gravity(), Point{} + (1.0 / volume) * moment), kCentre_mm);
  EXPECT_EQ(made->solid.pieces(), part.lumps);
  EXPECT_TRUE(made->solid.valid());
}

INSTANTIATE_TEST_SUITE_P(Parts, OutsideClosedForm, ::testing::ValuesIn(parts()),
                         [](const auto& part) { return std::to_string(part.index); });

}  // namespace
}  // namespace sparewright::solid
