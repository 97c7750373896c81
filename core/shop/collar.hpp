// A handwheel's collar: what its numbers mean on this machine, and what it will show at a wanted place.
#pragma once

#include <string>

#include "core/base/result.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::shop {

// Which way the work goes, seen by the operator standing in front, when the wheel is turned clockwise.
enum class WorkMoves { kLeft, kRight, kAway, kTowards, kUp, kDown };

// Which way the tool goes on a lathe when the wheel is turned clockwise: towards the axis of the work or from it, towards
// the headstock or from it. A drill goes down or up.
enum class ToolMoves { kIn, kOut, kToHeadstock, kFromHeadstock, kDown, kUp };

enum class Turning { kClockwise, kCounterclockwise };

[[nodiscard]] std::string_view name_of(Turning turning);
[[nodiscard]] Turning opposite(Turning turning);

// Whether the numbers are the slide's travel or the change of a turned diameter (twice the travel).
enum class CollarReads { kTravel, kDiameter };

struct Collar {
  quantity::Length per_turn;  // as the collar reads it
  int divisions = 0;          // around the collar, more than 0
  CollarReads reads = CollarReads::kTravel;
  Turning numbers_rise = Turning::kClockwise;
  WorkMoves clockwise_moves_work = WorkMoves::kLeft;  // on a mill
  ToolMoves clockwise_moves_tool = ToolMoves::kIn;    // on a lathe, and of a quill
  quantity::Length slack;                             // lost motion when the direction changes
  quantity::Length repeats;  // half-width within which it comes back when every move ends the same way
  bool repeats_given = false;

  [[nodiscard]] quantity::Length division() const { return per_turn / divisions; }
};

// Which way to turn so that the tool goes to the right, away or up over the work (the work goes the other way).
[[nodiscard]] Turning increases_coordinate(const Collar& collar);
// Which way to turn so that the tool goes deeper: the other way, on the wheel that raises the work.
[[nodiscard]] Turning deepens(const Collar& collar);

// Which way to turn so that the tool goes in, towards the headstock, or down.
[[nodiscard]] Turning feeds_in(const Collar& collar);

// What the operator dials. From the collar at 0 with the tool at the zero, turning the increasing way, `turns` whole
// turns, then on until the collar shows `division`. Negative turns: go back that many whole
// turns (and the half turn beyond that takes up the slack), then come up to `division`.
struct CollarReading {
  long turns = 0;
  double division =
      0.0;  // on the collar as numbered, rounded to the step asked for; 0 <= division < divisions
  Turning finish = Turning::kClockwise;  // the direction every move ends in
  quantity::Length lands_at;             // where the rounded reading puts the tool
  quantity::Length rounding;             // lands_at less wanted
};

// travel: the wanted way from the zero, as the collar reads it (on diameter for a diametral collar).
// increasing: the way to turn that makes it more; every move ends in that direction.
// step: the part of a division an operator can set, such as 1 or 0.5; the reading is rounded to it.
// Preconditions: divisions > 0, per_turn > 0, step > 0. |travel| up to 10^6 turns.
[[nodiscard]] CollarReading collar_reading(const Collar& collar, quantity::Length travel, Turning increasing,
                                           double step = 1.0);

// "5t + 62", "-2t + 100", "62" (no whole turn), the division with a decimal only where it has one.
[[nodiscard]] std::string printed(const CollarReading& reading);

// "5 turns, to 62": as it is said aloud.
[[nodiscard]] std::string said(const CollarReading& reading);

}  // namespace sparewright::shop
