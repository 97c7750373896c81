#include "core/handbook/rotary_table.hpp"

#include <cmath>
#include <cstdlib>

#include <fmt/format.h>

#include "core/handbook/index_plates.hpp"
#include "core/handbook/plain_indexing.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Angle;
namespace unit = quantity::unit;

tl::unexpected<base::Failure> refuse(std::string_view subject, const std::string& found,
                                     const std::string& accepted) {
  return base::fail(base::Code::kValueNotAccepted, found, accepted, subject);
}

std::string degrees(Angle angle) {
  return fmt::format("{:.6g} deg", angle.in(unit::degree));
}

// A part of a turn, 0 allowed.
base::Result<Ratio> part_from_zero(Angle angle, std::string_view subject) {
  if (angle == Angle()) return Ratio();
  auto part = part_for_angle(angle);
  if (!part) return refuse(subject, degrees(angle), "0 to 360 deg");
  return part;
}

// The mark of a good table as a part of a turn.
base::Result<Ratio> mark_of(const RotaryTable& table) {
  if (table.worm < kLeastWorm || table.worm > kMostWorm) {
    return refuse("the worm of the table", fmt::format("{}:1", table.worm),
                  fmt::format("{}:1 to {}:1, such as 40:1 or 90:1", kLeastWorm, kMostWorm));
  }
  const auto mark = part_for_angle(table.mark);
  constexpr Angle kFinest = Angle::of(0.01, unit::arc_second);
  if (!mark || table.mark < kFinest || *mark > Ratio::of(1, table.worm)) {
    return refuse(
        "the mark of the dial", degrees(table.mark),
        fmt::format("0.01 arc seconds to {:.6g} deg, one turn of the handwheel", 360.0 / table.worm));
  }
  return mark;
}

RotaryReading reading(const RotaryTable& table, const Ratio& mark, const Ratio& wanted, int number) {
  RotaryReading out;
  const Ratio moved = Ratio::of(nearest_multiple(wanted, mark)) * mark;
  const Ratio handwheel = moved * Ratio::of(table.worm);
  out.number = number;
  out.wanted = Angle::of(wanted.value(), unit::turn);
  out.turns = static_cast<int>(handwheel.floor());
  out.dial =
      Angle::of(((handwheel - Ratio::of(handwheel.floor())) / Ratio::of(table.worm)).value(), unit::turn);
  out.error = index_error(moved, wanted);
  return out;
}

}  // namespace

DegreesMinutesSeconds in_degrees_minutes_seconds(Angle angle, int places) {
  const double seconds = quantity::rounded(std::abs(angle.in(unit::arc_second)), places);
  DegreesMinutesSeconds out;
  const double minutes = std::floor(seconds / 60.0);
  out.negative = angle < Angle() && seconds > 0.0;
  out.degrees = static_cast<int>(std::floor(minutes / 60.0));
  out.minutes = static_cast<int>(minutes - 60.0 * out.degrees);
  out.seconds = quantity::rounded(seconds - 60.0 * minutes, places);
  return out;
}

Angle angle_of(const DegreesMinutesSeconds& parts) {
  const double seconds = 3600.0 * parts.degrees + 60.0 * parts.minutes + parts.seconds;
  return Angle::of(parts.negative ? -seconds : seconds, unit::arc_second);
}

std::string to_string(const DegreesMinutesSeconds& parts, int places) {
  return fmt::format("{}{} deg {}' {}\"", parts.negative ? "-" : "", parts.degrees, parts.minutes,
                     quantity::fixed(parts.seconds, places));
}

base::Result<RotaryReading> rotary_reading(const RotaryTable& table, Angle angle) {
  const auto mark = mark_of(table);
  if (!mark) return tl::unexpected(mark.error());
  const auto wanted = part_from_zero(angle, "the angle of the table");
  if (!wanted) return tl::unexpected(wanted.error());
  return reading(table, *mark, *wanted, 1);
}

base::Result<std::vector<RotaryReading>> rotary_divisions(const RotaryTable& table, int divisions,
                                                          Angle start) {
  const auto mark = mark_of(table);
  if (!mark) return tl::unexpected(mark.error());
  const auto part = part_for_divisions(divisions);
  if (!part) return tl::unexpected(part.error());
  const auto first = part_from_zero(start, "the angle of the first hole");
  if (!first) return tl::unexpected(first.error());
  std::vector<RotaryReading> out;
  for (int number = 1; number <= divisions; ++number) {
    const Ratio at = *first + Ratio::of(number - 1) * *part;
    out.push_back(reading(table, *mark, at - Ratio::of(at.floor()), number));
  }
  return out;
}

}  // namespace sparewright::handbook
