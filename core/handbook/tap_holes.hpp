// The hole for a tap: which drill leaves how much thread, what the drill really cuts, holes for form taps,
// how deep a blind hole must be.
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/drill_points.hpp"
#include "core/handbook/drilled_holes.hpp"
#include "core/handbook/tapping.hpp"
#include "core/handbook/thread_shape.hpp"

namespace sparewright::handbook {

// What 100 % of thread takes off the major diameter, over the pitch: 1.299038 of the 60 degree screws (3/4 H
// on a side, of which the basic hole of a tapped thread leaves 83.3 %), twice the depth of the others.
[[nodiscard]] double full_thread_per_pitch(ThreadForm form);

// A drill for a thread: the percentage if the hole comes out as large as the drill, and with the oversize a
// drill really cuts (drill_oversize: steel and cast iron; none below 1/16 and above 1 in).
struct TapDrillPercent {
  Drill drill;
  double percent = 0.0;
  std::optional<double> really;        // at the mean oversize
  std::optional<double> really_least;  // at the average most oversize
  std::optional<double> really_most;   // at the average least oversize
  Source oversize_source;
};

// The percentage a drill leaves; which drills the thread's class allows, drills_between(minor.low,
// minor.high) of its hole_limits tells. Not positive where the drill is as large as the thread. Fails with
// kNotTabled for a tapered pipe thread, whose hole is no cylinder.
[[nodiscard]] base::Result<TapDrillPercent> percent_of_drill(const ThreadShape& thread, const Drill& drill);

// The hole that leaves a percentage, and of each series given the drill nearest to it, in their order; of two
// equally near the larger. Fails with kValueNotAccepted where percent is not over 0 and up to 100, and as
// above.
struct HoleForPercent {
  double percent = 0.0;
  quantity::Diameter hole;
  std::vector<TapDrillPercent> nearest;  // of a series without a drill within one pitch of the hole, none
  Source source;
};
[[nodiscard]] base::Result<HoleForPercent> hole_for_percent(const ThreadShape& thread, double percent,
                                                            std::span<const DrillSeries> series);

// The hole for a form (roll) tap, which moves metal instead of cutting it: D - 0.0068 percent P, so that
// about half as much is taken off. Usual: 65 %, from 55 to 75. For 60 degree screws of ductile metal. Source:
// tap makers' formula (from memory; 1/4-20 at 65 %: 0.2279 in, drill #1). Fails as hole_for_percent, and with
// kNotTabled for other forms.
inline constexpr double kUsualFormTapPercent = 65.0;
[[nodiscard]] base::Result<HoleForPercent> form_tap_hole(const ThreadShape& thread, double percent,
                                                         std::span<const DrillSeries> series);

// The lead of a tap: how many of its threads are ground away at the end.
enum class TapChamfer { kTaper, kPlug, kBottoming };
[[nodiscard]] std::string_view name_of(TapChamfer chamfer);  // "plug"

struct TapLead {
  double least_threads = 0.0;
  double most_threads = 0.0;
  Source source;
};
// Taper 7 to 10 threads, plug 3 to 5, bottoming 1 to 2 (ASME B94.9, from memory).
[[nodiscard]] TapLead tap_lead(TapChamfer chamfer);

// How deep a blind hole must be for that much full thread: the tap's longest lead and room for chips below
// it, then the drill's point. The tap's own point, where it has one, is not counted: grind it off or add it.
struct BlindHole {
  quantity::Length full_thread;
  quantity::Length lead;           // of the tap, its longest
  quantity::Length room;           // for chips
  quantity::Length full_diameter;  // depth to drill at full diameter: the sum of these
  quantity::Length point;          // of the drill
  quantity::Length deepest;        // full_diameter + point: what must not break through
  TapLead tap;
};
// room left out is one pitch (common practice). Fails with kSizeNotPositive where full_thread is not.
[[nodiscard]] base::Result<BlindHole> blind_hole(const ThreadShape& thread, quantity::Length full_thread,
                                                 TapChamfer chamfer, quantity::Diameter drill,
                                                 std::optional<quantity::Length> room = std::nullopt,
                                                 quantity::Angle point_angle = kUsualPointAngle);

// The full thread a tap can leave in a hole of that depth at full diameter: the inverse. Not positive where
// there is none.
[[nodiscard]] quantity::Length full_thread_in(const ThreadShape& thread, quantity::Length full_diameter,
                                              TapChamfer chamfer,
                                              std::optional<quantity::Length> room = std::nullopt);

}  // namespace sparewright::handbook
