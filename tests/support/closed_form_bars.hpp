// Bars, hexagons and tapers with cuts whose closed form is worked out by hand.
#pragma once

#include "closed_form_plates.hpp"

namespace sparewright::tests {

// 50 across and 80 long, along x from 0.
inline ClosedForm bar_form(std::string name, std::vector<shape::Cutter> cutters,
                           const std::vector<Piece>& taken, std::vector<FlatFace> faces) {
  ClosedForm part{std::move(name),
                  shape::Cylinder{shape::Frame::along({}, kAlongX), 25.0, 80.0},
                  std::move(cutters),
                  {},
                  {}};
  part.pieces.push_back(cylinder_piece({}, kAlongX, 50.0, 80.0));
  for (const Piece& p : taken)
    part.pieces.push_back(gone(p));
  part.faces = std::move(faces);
  return part;
}
inline FlatFace start_face(double area_mm2) {
  return {{}, -kAlongX, area_mm2};
}
inline FlatFace end_face(double area_mm2) {
  return {{80.0, 0.0, 0.0}, kAlongX, area_mm2};
}
inline shape::Cutter turned(const shape::Contour& half_section) {
  return {"turned", shape::TurnedBody{shape::Frame::along({}, kAlongX), half_section}, shape::Open::kNone};
}
inline Piece segment_piece(double high, double from, double to) {
  const Segment s = segment(25.0, high);
  return carried(s.area, to - from, {(from + to) / 2, 0.0, s.centroid});
}

inline std::vector<ClosedForm> bored_bars() {
  return {
      bar_form("bar", {}, {}, {start_face(disc(50.0)), end_face(disc(50.0)), {{0.0, 0.0, 25.0}, kUp, 0.0}}),
      bar_form("bored", {shape::through_hole("bore", {}, kAlongX, dia(20.0), mm(80.0))},
               {cylinder_piece({}, kAlongX, 20.0, 80.0)}, {start_face(disc(50.0) - disc(20.0))}),
      bar_form("bored off centre",
               {shape::through_hole("bore", {0.0, 8.0, 3.0}, kAlongX, dia(20.0), mm(80.0))},
               {cylinder_piece({0.0, 8.0, 3.0}, kAlongX, 20.0, 80.0)},
               {start_face(disc(50.0) - disc(20.0)), end_face(disc(50.0) - disc(20.0))}),
      bar_form(
          "blind bored from both ends",
          {shape::flat_bottomed_hole("left", {}, kAlongX, dia(20.0), mm(30.0)),
           shape::flat_bottomed_hole("right", {80.0, 0.0, 0.0}, -kAlongX, dia(16.0), mm(20.0))},
          {cylinder_piece({}, kAlongX, 20.0, 30.0), cylinder_piece({80.0, 0.0, 0.0}, -kAlongX, 16.0, 20.0)},
          {start_face(disc(50.0) - disc(20.0)),
           end_face(disc(50.0) - disc(16.0)),
           {{30.0, 0.0, 0.0}, -kAlongX, disc(20.0)},
           {{60.0, 0.0, 0.0}, kAlongX, disc(16.0)}}),
      bar_form("bored shut ring of round section", {turned(shape::circle({15.0, 40.0}, 3.0))},
               {{swept(kPi * 9.0, 15.0), {40.0, 0.0, 0.0}}},  // 2 pi^2 R r^2
               {start_face(disc(50.0))}),
  };
}

inline std::vector<ClosedForm> milled_bars() {
  using shape::Open;
  const Open sides = Open::kYLow | Open::kYHigh;
  const Open ends = Open::kXLow | Open::kXHigh;
  const Piece top_flat = segment_piece(20.0, 0.0, 80.0);
  // The end of a keyway 8 wide in a round of 25 radius, its floor 20 over the axis: the integral of sqrt(r^2 - y^2) - 20
  // over the width, and of (r^2 - y^2 - 20^2) / 2 for its moment.
  const double key_mm2 = 4.0 * std::sqrt(609.0) + 625.0 * std::asin(4.0 / 25.0) - 8.0 * 20.0;
  const double key_mm3 = (225.0 * 8.0 - 2.0 * 64.0 / 3.0) / 2;
  std::vector<ClosedForm> all{
      bar_form("flat",
               {shape::milled_box("flat", {}, {0.0, -25.0, 15.0}, {80.0, 25.0, 25.0},
                                  ends | sides | Open::kZHigh)},
               {segment_piece(15.0, 0.0, 80.0)},
               {facing_up(15.0, 40.0 * 80.0), start_face(disc(50.0) - segment(25.0, 15.0).area)}),
      bar_form("half gone at one end",
               {shape::milled_box("step", {}, {50.0, -25.0, 0.0}, {80.0, 25.0, 25.0},
                                  Open::kXHigh | sides | Open::kZHigh)},
               {segment_piece(0.0, 50.0, 80.0)},
               {facing_up(0.0, 50.0 * 30.0),
                end_face(disc(50.0) / 2),
                {{50.0, 0.0, 0.0}, kAlongX, disc(50.0) / 2}}),
      bar_form(
          "two flats and a centre drill",
          {shape::milled_box("top", {}, {0.0, -25.0, 20.0}, {80.0, 25.0, 25.0}, ends | sides | Open::kZHigh),
           shape::milled_box("bottom", {}, {0.0, -25.0, -25.0}, {80.0, 25.0, -20.0},
                             ends | sides | Open::kZLow),
           shape::drilled_hole("centre drill", {0.0, 0.0, 0.0}, kAlongX, dia(10.0), mm(25.0), deg(90.0))},
          {top_flat,
           {top_flat.volume_mm3, {40.0, 0.0, -top_flat.centre.z}},
           cylinder_piece({}, kAlongX, 10.0, 25.0),
           cone_piece({25.0, 0.0, 0.0}, kAlongX, 10.0, 5.0)},
          {facing_up(20.0, 30.0 * 80.0), facing_down(-20.0, 30.0 * 80.0),
           start_face(disc(50.0) - 2 * segment(25.0, 20.0).area - disc(10.0))}),
      bar_form("keyway all along",
               {shape::milled_box("keyway", {}, {0.0, -4.0, 20.0}, {80.0, 4.0, 25.0}, ends | Open::kZHigh)},
               {carried(key_mm2, 80.0, {40.0, 0.0, key_mm3 / key_mm2})},
               {facing_up(20.0, 8.0 * 80.0),
                start_face(disc(50.0) - key_mm2),
                {{0.0, -4.0, 0.0}, kAlongY, (std::sqrt(609.0) - 20.0) * 80.0}}),
  };
  ClosedForm parted = bar_form("parted in two",
                               {shape::milled_box("saw cut", {}, {30.0, -25.0, -25.0}, {33.0, 25.0, 25.0},
                                                  sides | Open::kZLow | Open::kZHigh)},
                               {cylinder_piece({30.0, 0.0, 0.0}, kAlongX, 50.0, 3.0)},
                               {{{30.0, 0.0, 0.0}, kAlongX, disc(50.0)}});
  parted.lumps = 2;
  all.push_back(std::move(parted));
  return all;
}

inline std::vector<ClosedForm> turned_bars() {
  // What a half section takes of the bar ends at the bar's own radius; the contour goes 1 mm on.
  const double half_disc = disc(8.0) / 2;
  const std::vector<shape::FlatPoint> vee{{20.0, 40.0}, {26.0, 34.0}, {26.0, 46.0}};
  return {
      bar_form("square groove", {turned(shape::rectangle({20.0, 30.0}, {26.0, 36.0}))},
               {carried(disc(50.0) - disc(40.0), 6.0, {33.0, 0.0, 0.0})},
               {{{30.0, 0.0, 0.0}, kAlongX, disc(50.0) - disc(40.0)},
                {{36.0, 0.0, 0.0}, -kAlongX, disc(50.0) - disc(40.0)}}),
      bar_form("V groove turned", {turned(shape::straight_contour(vee))},
               {{swept(25.0, 25.0 - 5.0 / 3.0), {40.0, 0.0, 0.0}}}, {start_face(disc(50.0))}),
      bar_form("round groove", {turned(shape::circle({25.0, 40.0}, 4.0))},
               {{swept(half_disc, 25.0 - half_disc_centroid(4.0)), {40.0, 0.0, 0.0}}},
               {end_face(disc(50.0))}),
      bar_form("shoulder", {turned(shape::rectangle({15.0, 50.0}, {26.0, 81.0}))},
               {carried(disc(50.0) - disc(30.0), 30.0, {65.0, 0.0, 0.0})},
               {{{50.0, 0.0, 0.0}, kAlongX, disc(50.0) - disc(30.0)}, end_face(disc(30.0))}),
      bar_form(
          "recess in a bore",
          {shape::through_hole("bore", {}, kAlongX, dia(20.0), mm(80.0)),
           turned(shape::rectangle({9.0, 30.0}, {14.0, 38.0}))},
          {cylinder_piece({}, kAlongX, 20.0, 80.0), carried(disc(28.0) - disc(20.0), 8.0, {34.0, 0.0, 0.0})},
          {start_face(disc(50.0) - disc(20.0)), {{30.0, 0.0, 0.0}, kAlongX, disc(28.0) - disc(20.0)}}),
  };
}

// Blanks of other kinds.
inline std::vector<ClosedForm> other_blanks() {
  const shape::Cutter bore{"bore", shape::Cylinder{{}, 6.0, 40.0}, shape::Open::kThrough};
  const double section = hexagon(24.0);
  ClosedForm hex{"hexagon bar, bored", shape::hexagonal_prism({}, 24.0, 40.0), {bore}, {}, {}};
  hex.pieces = {carried(section, 40.0, {0.0, 0.0, 20.0}), gone(cylinder_piece({}, kUp, 12.0, 40.0))};
  hex.faces = {facing_up(40.0, section - disc(12.0)),
               {{12.0, 0.0, 0.0}, kAlongX, 24.0 / std::sqrt(3.0) * 40.0}};
  const std::vector<Piece> taper_pieces{cone_piece({}, kUp, 40.0, 80.0),
                                        gone(cone_piece({0.0, 0.0, 40.0}, kUp, 20.0, 40.0))};
  ClosedForm taper{"taper", shape::Cone{{}, 20.0, 10.0, 40.0}, {}, taper_pieces, {}};
  taper.faces = {facing_up(40.0, disc(20.0)), facing_down(0.0, disc(40.0))};
  ClosedForm bored{"taper, bored", shape::Cone{{}, 20.0, 10.0, 40.0}, {bore}, taper_pieces, {}};
  bored.pieces.push_back(gone(cylinder_piece({}, kUp, 12.0, 40.0)));
  bored.faces = {facing_up(40.0, disc(20.0) - disc(12.0))};
  ClosedForm pointed{"cone", shape::Cone{{}, 20.0, 0.0, 40.0}, {}, {cone_piece({}, kUp, 40.0, 40.0)}, {}};
  pointed.faces = {facing_down(0.0, disc(40.0))};
  return {std::move(hex), std::move(taper), std::move(bored), std::move(pointed)};
}

inline std::vector<ClosedForm> closed_forms() {
  std::vector<ClosedForm> all;
  for (auto* some : {&drilled_plates, &milled_plates, &contoured_plates, &bored_bars, &milled_bars,
                     &turned_bars, &other_blanks}) {
    for (ClosedForm& part : some())
      all.push_back(std::move(part));
  }
  return all;
}

}  // namespace sparewright::tests
