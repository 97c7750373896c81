// Plates of 100 x 60 x 20 mm with cuts whose closed form is worked out by hand.
#pragma once

#include "closed_forms.hpp"

namespace sparewright::tests {

inline const shape::Vector kUp{0.0, 0.0, 1.0};
inline const shape::Vector kAlongX{1.0, 0.0, 0.0};
inline const shape::Vector kAlongY{0.0, 1.0, 0.0};
inline constexpr double kTop_mm2 = 100.0 * 60.0;
inline constexpr double kSide_mm2 = 100.0 * 20.0;

inline FlatFace facing_up(double z, double area_mm2) {
  return {{0.0, 0.0, z}, kUp, area_mm2};
}
inline FlatFace facing_down(double z, double area_mm2) {
  return {{0.0, 0.0, z}, kDown, area_mm2};
}

inline ClosedForm plate_form(std::string name, std::vector<shape::Cutter> cutters,
                             const std::vector<Piece>& taken, std::vector<FlatFace> faces) {
  ClosedForm part{std::move(name), shape::Box{{}, {100.0, 60.0, 20.0}}, std::move(cutters), {}, {}};
  part.pieces.push_back(box_piece({0.0, 0.0, 0.0}, {100.0, 60.0, 20.0}));
  for (const Piece& p : taken)
    part.pieces.push_back(gone(p));
  part.faces = std::move(faces);
  return part;
}

inline shape::Cutter plate_hole(double x, double y, double d) {
  return shape::through_hole("hole", {x, y, 20.0}, kDown, dia(d), mm(20.0));
}
inline Piece plate_hole_piece(double x, double y, double d) {
  return cylinder_piece({x, y, 20.0}, kDown, d, 20.0);
}
// A contour milled from the top down to a floor.
inline shape::Cutter milled_contour(const shape::Contour& contour, double floor) {
  const bool through = floor <= 0.0;
  return {"milled", shape::ProfiledBody{shape::Frame::at({0.0, 0.0, floor}), contour, 20.0 - floor},
          through ? shape::Open::kThrough : shape::Open::kEnd};
}
// A straight groove along y with its middle at x = 50; the section in mm from there, and down from the top.
inline shape::Cutter groove(const shape::Outline& section) {
  return {"groove", shape::Prism{shape::Frame::along({50.0, 0.0, 20.0}, kAlongY), section, 60.0},
          shape::Open::kThrough};
}

inline std::vector<ClosedForm> drilled_plates() {
  const double point = 6.0 / std::tan(59.0 / 180.0 * kPi);
  const double sink = 8.0 / std::tan(41.0 / 180.0 * kPi);
  return {
      plate_form("plain", {}, {},
                 {facing_up(20.0, kTop_mm2), facing_down(0.0, kTop_mm2), {{}, -kAlongX, 1200.0}}),
      plate_form("one hole", {plate_hole(30.0, 20.0, 12.0)}, {plate_hole_piece(30.0, 20.0, 12.0)},
                 {facing_up(20.0, kTop_mm2 - disc(12.0)), facing_down(0.0, kTop_mm2 - disc(12.0))}),
      plate_form("one hole, twice", {plate_hole(30.0, 20.0, 12.0), plate_hole(30.0, 20.0, 12.0)},
                 {plate_hole_piece(30.0, 20.0, 12.0)}, {facing_up(20.0, kTop_mm2 - disc(12.0))}),
      plate_form("four holes",
                 {plate_hole(15.0, 15.0, 8.5), plate_hole(85.0, 15.0, 8.5), plate_hole(15.0, 45.0, 8.5),
                  plate_hole(80.0, 40.0, 10.0)},
                 {plate_hole_piece(15.0, 15.0, 8.5), plate_hole_piece(85.0, 15.0, 8.5),
                  plate_hole_piece(15.0, 45.0, 8.5), plate_hole_piece(80.0, 40.0, 10.0)},
                 {facing_up(20.0, kTop_mm2 - 3 * disc(8.5) - disc(10.0))}),
      plate_form("counterbored",
                 {plate_hole(30.0, 20.0, 9.0),
                  shape::flat_bottomed_hole("cb", {30.0, 20.0, 20.0}, kDown, dia(15.0), mm(8.6))},
                 {cylinder_piece({30.0, 20.0, 11.4}, kDown, 9.0, 11.4),
                  cylinder_piece({30.0, 20.0, 20.0}, kDown, 15.0, 8.6)},
                 {facing_up(20.0, kTop_mm2 - disc(15.0)), facing_up(11.4, disc(15.0) - disc(9.0)),
                  facing_down(0.0, kTop_mm2 - disc(9.0))}),
      plate_form("blind drilled",
                 {shape::drilled_hole("blind", {70.0, 20.0, 20.0}, kDown, dia(12.0), mm(10.0))},
                 {cylinder_piece({70.0, 20.0, 20.0}, kDown, 12.0, 10.0),
                  cone_piece({70.0, 20.0, 10.0}, kDown, 12.0, point)},
                 {facing_up(20.0, kTop_mm2 - disc(12.0)), facing_down(0.0, kTop_mm2), facing_up(10.0, 0.0)}),
      plate_form("countersunk", {shape::countersink("sink", {40.0, 30.0, 20.0}, kDown, dia(16.0), deg(82.0))},
                 {cone_piece({40.0, 30.0, 20.0}, kDown, 16.0, sink)},
                 {facing_up(20.0, kTop_mm2 - disc(16.0))}),
      plate_form("threaded hole's tapping drill, inch",
                 {shape::drilled_hole("5/16 drill", {25.4, 25.4, 20.0}, kDown,
                                      quantity::Diameter::of(0.3125, quantity::unit::inch),
                                      quantity::Length::of(0.5, quantity::unit::inch))},
                 {cylinder_piece({25.4, 25.4, 20.0}, kDown, 7.9375, 12.7),
                  cone_piece({25.4, 25.4, 7.3}, kDown, 7.9375, 3.96875 / std::tan(59.0 / 180.0 * kPi))},
                 {facing_up(20.0, kTop_mm2 - disc(7.9375))}),
      plate_form("cross hole", {shape::through_hole("cross", {35.0, 0.0, 10.0}, kAlongY, dia(7.0), mm(60.0))},
                 {cylinder_piece({35.0, 0.0, 10.0}, kAlongY, 7.0, 60.0)},
                 {facing_up(20.0, kTop_mm2), {{}, -kAlongY, kSide_mm2 - disc(7.0)}}),
      // Two equal bores crossing square share 16 r^3 / 3 (Steinmetz solid), about the point where they cross.
      plate_form("crossing bores",
                 {plate_hole(50.0, 30.0, 12.0),
                  shape::through_hole("cross", {50.0, 0.0, 10.0}, kAlongY, dia(12.0), mm(60.0))},
                 {plate_hole_piece(50.0, 30.0, 12.0), cylinder_piece({50.0, 0.0, 10.0}, kAlongY, 12.0, 60.0),
                  gone({16.0 / 3.0 * 216.0, {50.0, 30.0, 10.0}})},
                 {facing_up(20.0, kTop_mm2 - disc(12.0)), {{}, -kAlongY, kSide_mm2 - disc(12.0)}}),
      plate_form("spotface over an edge",
                 {shape::flat_bottomed_hole("spotface", {50.0, 0.0, 20.0}, kDown, dia(20.0), mm(5.0))},
                 {carried(disc(20.0) / 2, 5.0, {50.0, half_disc_centroid(10.0), 17.5})},
                 {facing_up(20.0, kTop_mm2 - disc(20.0) / 2),
                  facing_up(15.0, disc(20.0) / 2),
                  {{}, -kAlongY, kSide_mm2 - 20.0 * 5.0}}),
  };
}

inline std::vector<ClosedForm> milled_plates() {
  using shape::Open;
  const Open ends = Open::kYLow | Open::kYHigh;
  const double socket = hexagon(14.0);
  return {
      plate_form("step",
                 {shape::milled_box("step", {}, {75.0, 0.0, 8.0}, {100.0, 60.0, 20.0},
                                    Open::kXHigh | ends | Open::kZHigh)},
                 {box_piece({75.0, 0.0, 8.0}, {100.0, 60.0, 20.0})},
                 {facing_up(20.0, 4500.0),
                  facing_up(8.0, 1500.0),
                  {{75.0, 0.0, 0.0}, kAlongX, 720.0},
                  {{100.0, 0.0, 0.0}, kAlongX, 480.0}}),
      plate_form("pocket",
                 {shape::milled_box("pocket", {}, {20.0, 10.0, 12.0}, {50.0, 40.0, 20.0}, Open::kZHigh)},
                 {box_piece({20.0, 10.0, 12.0}, {50.0, 40.0, 20.0})},
                 {facing_up(20.0, 5100.0),
                  facing_up(12.0, 900.0),
                  {{20.0, 0.0, 0.0}, kAlongX, 240.0},
                  {{50.0, 0.0, 0.0}, -kAlongX, 240.0}}),
      plate_form("two pockets with a face in common",
                 {shape::milled_box("left", {}, {20.0, 10.0, 12.0}, {40.0, 40.0, 20.0}, Open::kZHigh),
                  shape::milled_box("right", {}, {40.0, 10.0, 12.0}, {60.0, 40.0, 20.0}, Open::kZHigh)},
                 {box_piece({20.0, 10.0, 12.0}, {60.0, 40.0, 20.0})},
                 {facing_up(20.0, 4800.0), facing_up(12.0, 1200.0), {{40.0, 0.0, 0.0}, kAlongX, 0.0}}),
      plate_form("hole through a step",
                 {shape::milled_box("step", {}, {60.0, 0.0, 8.0}, {100.0, 60.0, 20.0},
                                    Open::kXHigh | ends | Open::kZHigh),
                  shape::through_hole("hole", {80.0, 30.0, 8.0}, kDown, dia(14.0), mm(8.0))},
                 {box_piece({60.0, 0.0, 8.0}, {100.0, 60.0, 20.0}),
                  cylinder_piece({80.0, 30.0, 8.0}, kDown, 14.0, 8.0)},
                 {facing_up(8.0, 2400.0 - disc(14.0)), facing_down(0.0, kTop_mm2 - disc(14.0))}),
      plate_form("corner cut off",
                 {{"chamfer", shape::HalfSpace{shape::Frame::along({90.0, 0.0, 0.0}, {-1.0, 1.0, 0.0})},
                   Open::kNone}},
                 {carried(50.0, 20.0, {100.0 - 10.0 / 3.0, 10.0 / 3.0, 10.0})},
                 {facing_up(20.0, kTop_mm2 - 50.0),
                  {{90.0, 0.0, 0.0}, {1.0, -1.0, 0.0}, 20.0 * 10.0 * std::numbers::sqrt2}}),
      plate_form("faced all over",
                 {{"facing", shape::HalfSpace{shape::Frame::along({0.0, 0.0, 17.0}, kDown)}, Open::kNone}},
                 {box_piece({0.0, 0.0, 17.0}, {100.0, 60.0, 20.0})},
                 {facing_up(17.0, kTop_mm2), facing_up(20.0, 0.0), {{}, -kAlongX, 60.0 * 17.0}}),
      plate_form("faced on a slope",
                 {{"slope", shape::HalfSpace{shape::Frame::along({0.0, 0.0, 20.0}, {-0.1, 0.0, -1.0})},
                   Open::kNone}},
                 {carried(500.0, 60.0, {200.0 / 3.0, 30.0, 50.0 / 3.0})},
                 {{{0.0, 0.0, 20.0}, {0.1, 0.0, 1.0}, 60.0 * std::hypot(100.0, 10.0)},
                  {{100.0, 0.0, 0.0}, kAlongX, 600.0}}),
      plate_form("hexagon socket",
                 {{"hex", shape::hexagonal_prism(shape::Frame::along({30.0, 30.0, 20.0}, kDown), 14.0, 9.0),
                   Open::kStart}},
                 {carried(socket, 9.0, {30.0, 30.0, 15.5})},
                 {facing_up(20.0, kTop_mm2 - socket), facing_up(11.0, socket)}),
      // Ten wide and five deep, carried on 1 mm over the top at its own slope.
      plate_form("V groove", {groove({{-6.0, -1.0}, {6.0, -1.0}, {0.0, 5.0}})},
                 {carried(25.0, 60.0, {50.0, 30.0, 20.0 - 5.0 / 3.0})},
                 {facing_up(20.0, 90.0 * 60.0),
                  {{50.0, 0.0, 15.0}, {1.0, 0.0, 1.0}, 60.0 * 5.0 * std::numbers::sqrt2}}),
      // Twenty wide at the top, 36 at the floor, eight deep, flanks at 45 degrees.
      plate_form("dovetail", {groove({{-9.0, -1.0}, {9.0, -1.0}, {18.0, 8.0}, {-18.0, 8.0}})},
                 {carried(224.0, 60.0, {50.0, 30.0, 20.0 - (640.0 + 1024.0 / 3.0) / 224.0})},
                 {facing_up(20.0, 80.0 * 60.0),
                  facing_up(12.0, 36.0 * 60.0),
                  {{60.0, 0.0, 20.0}, {-1.0, 0.0, -1.0}, 60.0 * 8.0 * std::numbers::sqrt2}}),
      plate_form(
          "T slot",
          {shape::milled_box("neck", {}, {45.0, 0.0, 10.0}, {55.0, 60.0, 20.0}, ends | Open::kZHigh),
           shape::milled_box("head", {}, {38.0, 0.0, 4.0}, {62.0, 60.0, 10.0}, ends)},
          {box_piece({45.0, 0.0, 10.0}, {55.0, 60.0, 20.0}), box_piece({38.0, 0.0, 4.0}, {62.0, 60.0, 10.0})},
          {facing_up(20.0, 5400.0), facing_down(10.0, 14.0 * 60.0), facing_up(4.0, 24.0 * 60.0)}),
  };
}

inline std::vector<ClosedForm> contoured_plates() {
  const double slot = 30.0 * 10.0 + disc(10.0);
  const double rounded = 30.0 * 20.0 - (4.0 - kPi) * 25.0;
  const shape::Contour long_slot = shape::slot_contour({30.0, 30.0}, {60.0, 30.0}, 10.0);
  const std::vector<shape::RoundedCorner> corners{
      {{20.0, 10.0}, 5.0}, {{50.0, 10.0}, 5.0}, {{50.0, 30.0}, 5.0}, {{20.0, 30.0}, 5.0}};
  const std::vector<shape::FlatPoint> l_shape{{20.0, 10.0}, {60.0, 10.0}, {60.0, 20.0},
                                              {30.0, 20.0}, {30.0, 50.0}, {20.0, 50.0}};
  // Half sections below the top, carried on 1 mm over it; the axis at x = 50, y = 30.
  const shape::Frame axis = shape::Frame::at({50.0, 30.0, 20.0});
  const shape::TurnedBody trepan{axis, shape::rectangle({10.0, -5.0}, {15.0, 1.0})};
  const double quarter = std::tan(kPi / 8);  // the bow of a quarter circle
  const shape::TurnedBody ball{axis, {{{0.0, -8.0}, quarter}, {{8.0, 0.0}}, {{8.0, 1.0}}, {{0.0, 1.0}}}};
  return {
      plate_form("slot through", {milled_contour(long_slot, 0.0)}, {carried(slot, 20.0, {45.0, 30.0, 10.0})},
                 {facing_up(20.0, kTop_mm2 - slot),
                  facing_down(0.0, kTop_mm2 - slot),
                  {{0.0, 25.0, 0.0}, kAlongY, 30.0 * 20.0}}),
      plate_form("slot with a floor", {milled_contour(long_slot, 14.0)},
                 {carried(slot, 6.0, {45.0, 30.0, 17.0})},
                 {facing_up(20.0, kTop_mm2 - slot), facing_up(14.0, slot)}),
      plate_form("pocket with round corners", {milled_contour(shape::rounded_contour(corners), 12.0)},
                 {carried(rounded, 8.0, {35.0, 20.0, 16.0})},
                 {facing_up(20.0, kTop_mm2 - rounded),
                  facing_up(12.0, rounded),
                  {{20.0, 0.0, 0.0}, kAlongX, 10.0 * 8.0}}),
      plate_form(
          "L-shaped pocket", {milled_contour(shape::straight_contour(l_shape), 12.0)},
          {box_piece({20.0, 10.0, 12.0}, {60.0, 20.0, 20.0}),
           box_piece({20.0, 20.0, 12.0}, {30.0, 50.0, 20.0})},
          {facing_up(20.0, kTop_mm2 - 700.0), facing_up(12.0, 700.0), {{0.0, 20.0, 0.0}, -kAlongY, 240.0}}),
      plate_form(
          "trepanned ring", {{"ring", trepan, shape::Open::kNone}},
          {carried(disc(30.0) - disc(20.0), 5.0, {50.0, 30.0, 17.5})},
          {facing_up(20.0, kTop_mm2 - disc(30.0) + disc(20.0)), facing_up(15.0, disc(30.0) - disc(20.0))}),
      plate_form("ball seat", {{"ball", ball, shape::Open::kNone}},
                 {{2.0 / 3.0 * kPi * 512.0, {50.0, 30.0, 20.0 - 3.0}}},
                 {facing_up(20.0, kTop_mm2 - disc(16.0)), facing_up(12.0, 0.0)}),
  };
}

}  // namespace sparewright::tests
