// Pitch diameter over wires, and of holes between balls.
//
// Notation: E pitch diameter, P pitch (crest to crest), A half of the angle between the flanks, W diameter of
// the wire or ball, L lead angle at the pitch line, tan L = lead / (pi E), M what the micrometer shows.
// Three wires:  M = E - (P/2) cot A + W (1 + csc A + 0.5 tan^2 L cos A cot A)
// In a hole:    M = E + (P/2) cot A - W (1 + csc A), between the balls' faces that look at the axis
// Source: ASME B1.2 and Machinery's Handbook (the lead term from memory; without it the printed table of the
// 31st ed., p. 2130, comes out to 0.0001 in). Against a wire laid into the exact helicoid the term is too
// large by up to 8 % of itself at lead angles up to 8 degrees: 0.000007 in for 1/4-20, 0.00003 for 1-5 Acme,
// 0.00012 for Tr20x8P4; at 17 degrees by a tenth (tests/property). Half the pitch width at the pitch line is
// taken for granted: a wire of another than the best size also carries the error of the flank angle into M.
#pragma once

#include <cmath>
#include <numbers>
#include <optional>
#include <span>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/thread_shape.hpp"

namespace sparewright::handbook {

inline constexpr Source kOverWires{
    "measurement over three wires, Machinery's Handbook 31st ed., p. 2130, with the lead-angle term of ASME "
    "B1.2",
    "https://online.flippingbook.com/view/954046886/773", Basis::kFromMemory};

// W / P of the wire that touches at the pitch line: 0.5 / cos A. 0.57735 at 60 degrees, 0.56369 at 55.
template <class Scalar>
[[nodiscard]] Scalar best_wire_mm(const Scalar& pitch_mm, const Scalar& half_angle_rad) {
  using std::cos;
  return pitch_mm / (2.0 * cos(half_angle_rad));
}

// tan L at the pitch line.
template <class Scalar>
[[nodiscard]] Scalar tangent_of_lead(const Scalar& lead_mm, const Scalar& pitch_diameter_mm) {
  return lead_mm / (std::numbers::pi * pitch_diameter_mm);
}

// M over three wires. With lead 0 the angle is left out, as the printed tables do.
template <class Scalar>
[[nodiscard]] Scalar over_three_wires_mm(const Scalar& pitch_diameter_mm, const Scalar& pitch_mm,
                                         const Scalar& lead_mm, const Scalar& half_angle_rad,
                                         const Scalar& wire_mm) {
  using std::cos;
  using std::sin;
  const Scalar cotangent = cos(half_angle_rad) / sin(half_angle_rad);
  const Scalar slope = tangent_of_lead(lead_mm, pitch_diameter_mm);
  return pitch_diameter_mm - pitch_mm / 2.0 * cotangent +
         wire_mm * (1.0 + 1.0 / sin(half_angle_rad) + 0.5 * slope * slope * cos(half_angle_rad) * cotangent);
}

// M between two balls in a hole, one in a groove on each side.
template <class Scalar>
[[nodiscard]] Scalar between_balls_mm(const Scalar& pitch_diameter_mm, const Scalar& pitch_mm,
                                      const Scalar& half_angle_rad, const Scalar& ball_mm) {
  using std::cos;
  using std::sin;
  return pitch_diameter_mm + pitch_mm / 2.0 * cos(half_angle_rad) / sin(half_angle_rad) -
         ball_mm * (1.0 + 1.0 / sin(half_angle_rad));
}

// Which wires a thread takes: one must touch the straight flanks and stand out over the crest (in a hole:
// into the bore). 0.505 to 1.010 P for Unified and metric screws, 0.487 to 0.650 P for Acme; a club note
// prints the narrower 0.560 to 0.900 P for 60 degrees, which keeps clear of worn crests. Tapered threads are
// not measured so.
struct WireRange {
  quantity::Diameter least;
  quantity::Diameter best;
  quantity::Diameter most;
  Source source;
};
[[nodiscard]] WireRange wires_for(const ThreadShape& thread);
[[nodiscard]] WireRange balls_for(const ThreadShape& thread);

// A measurement over wires.
struct OverWires {
  quantity::Diameter wire;
  quantity::Length over;             // M
  quantity::Length lead_correction;  // what the lead angle makes of it; zero in holes
  quantity::Angle lead_angle;
  Source source;
};

// M over three wires for a pitch diameter; over one wire and the crest on the other side, which is (M +
// major) / 2 with the major diameter as it is. Fails with kSizeNotPositive, or kNotTabled where the wire is
// not in wires_for (the failure names the range and the best) or the thread is tapered.
[[nodiscard]] base::Result<OverWires> over_three_wires(const ThreadShape& thread,
                                                       quantity::Diameter pitch_diameter,
                                                       quantity::Diameter wire);
[[nodiscard]] base::Result<OverWires> over_one_wire(const ThreadShape& thread,
                                                    quantity::Diameter pitch_diameter,
                                                    quantity::Diameter wire,
                                                    quantity::Diameter measured_major);
// Between two balls in a hole.
[[nodiscard]] base::Result<OverWires> between_balls(const ThreadShape& thread,
                                                    quantity::Diameter pitch_diameter,
                                                    quantity::Diameter ball);

// Back from a measurement to the pitch diameter. The lead term depends on the pitch diameter a little: it is
// found by going round until it stands still, to a nanometre. Fails as above, or with kReadingsDisagree where
// no thread of that pitch has that measurement.
[[nodiscard]] base::Result<quantity::Diameter> pitch_diameter_from_three_wires(const ThreadShape& thread,
                                                                               quantity::Length over,
                                                                               quantity::Diameter wire);
[[nodiscard]] base::Result<quantity::Diameter> pitch_diameter_from_one_wire(
    const ThreadShape& thread, quantity::Length over, quantity::Diameter wire,
    quantity::Diameter measured_major);
[[nodiscard]] base::Result<quantity::Diameter> pitch_diameter_from_balls(const ThreadShape& thread,
                                                                         quantity::Length between,
                                                                         quantity::Diameter ball);

// The wire of a set nearest to the best that the thread takes. Fails with kNotTabled where none is, naming
// the range.
[[nodiscard]] base::Result<quantity::Diameter> choose_wire(const ThreadShape& thread,
                                                           std::span<const quantity::Diameter> set);

// The set of sixteen wires that is usually sold for inch and metric threads, 0.018 to 0.185 in (common
// practice).
[[nodiscard]] std::span<const quantity::Diameter> usual_wires();

}  // namespace sparewright::handbook
