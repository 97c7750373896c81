#include "core/shop/collar.hpp"

#include <cmath>
#include <cstdlib>

#include <fmt/format.h>

#include "core/quantity/display.hpp"

namespace sparewright::shop {
namespace {

std::string division_text(double division) {
  return quantity::fixed(division, division == std::floor(division) ? 0 : 1);
}

}  // namespace

std::string_view name_of(Turning turning) {
  return turning == Turning::kClockwise ? "clockwise" : "counterclockwise";
}

Turning opposite(Turning turning) {
  return turning == Turning::kClockwise ? Turning::kCounterclockwise : Turning::kClockwise;
}

Turning increases_coordinate(const Collar& collar) {
  switch (collar.clockwise_moves_work) {
    case WorkMoves::kLeft:
    case WorkMoves::kTowards:
    case WorkMoves::kDown:
      return Turning::kClockwise;
    case WorkMoves::kRight:
    case WorkMoves::kAway:
    case WorkMoves::kUp:
      break;
  }
  return Turning::kCounterclockwise;
}

Turning deepens(const Collar& collar) {
  return opposite(increases_coordinate(collar));
}

Turning feeds_in(const Collar& collar) {
  switch (collar.clockwise_moves_tool) {
    case ToolMoves::kIn:
    case ToolMoves::kToHeadstock:
    case ToolMoves::kDown:
      return Turning::kClockwise;
    case ToolMoves::kOut:
    case ToolMoves::kFromHeadstock:
    case ToolMoves::kUp:
      break;
  }
  return Turning::kCounterclockwise;
}

CollarReading collar_reading(const Collar& collar, quantity::Length travel, Turning increasing, double step) {
  const double in_divisions = travel / collar.division();
  // The nearest step, halves away from zero; the millionth keeps a binary fraction's last bit from turning a half.
  const double steps = std::floor(std::abs(in_divisions) / step + 0.5 + 1e-6);
  const double rounded = std::copysign(steps * step, in_divisions);

  CollarReading reading;
  const double whole = std::floor(rounded / collar.divisions);
  double rest = rounded - whole * collar.divisions;
  reading.turns = static_cast<long>(whole);
  reading.finish = increasing;
  // Numbers that fall on the way show what is left of the turn.
  if (collar.numbers_rise != increasing && rest != 0.0) rest = collar.divisions - rest;
  reading.division = rest;
  reading.lands_at = collar.division() * rounded;
  reading.rounding = reading.lands_at - travel;
  return reading;
}

std::string printed(const CollarReading& reading) {
  if (reading.turns == 0) return division_text(reading.division);
  return fmt::format("{}t + {}", reading.turns, division_text(reading.division));
}

std::string said(const CollarReading& reading) {
  const long turns = std::labs(reading.turns);
  if (turns == 0) return "to " + division_text(reading.division);
  return fmt::format("{} turn{}{}, to {}", turns, turns == 1 ? "" : "s", reading.turns < 0 ? " back" : "",
                     division_text(reading.division));
}

}  // namespace sparewright::shop
