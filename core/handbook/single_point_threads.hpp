// Threads cut on a lathe with a single-point tool: how deep, how the depth is shared out over passes, what
// the compound's collar reads.
#pragma once

#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/thread_designation.hpp"

namespace sparewright::handbook {

enum class ThreadSide { kScrew, kHole };

// How deep a thread is cut on each side, from the crest (the basic major diameter of a screw, the minor of a
// hole), and the tool that goes with it. A blank turned smaller than the basic size by the thread's allowance
// is cut as deep, for its pitch diameter is smaller by as much; one turned smaller by accident half of that
// less.
struct ThreadDepth {
  quantity::Length depth;                       // square to the axis
  quantity::Length nose;                        // flat of the tool that makes the groove right at this depth
  std::optional<quantity::Length> nose_radius;  // of a rounded root
  quantity::Angle flank_angle;
  quantity::Length addendum;         // crest to pitch line
  quantity::Length mating_addendum;  // how far below the pitch line the mating crest reaches
  quantity::Length pitch;
  Source source;
};

// With the nose the form has: 0.6134 P for a Unified or metric screw (round root of 0.1443 P, or a flat of
// P/6), 0.5413 P for its hole, 0.6495 P for the old flats of P/8, 0.866 P for a sharp V, 0.6403 P Whitworth,
// 0.6 P for BA, P/2 and the clearance of its size for Acme and trapezoidal.
[[nodiscard]] ThreadDepth thread_depth(const AnyThread& thread, ThreadSide side);
[[nodiscard]] ThreadDepth thread_depth(const ThreadShape& thread, ThreadSide side,
                                       quantity::Length root_clearance = quantity::Length());

// With the flat the tool really has: a sharper tool goes deeper to the same pitch diameter. Fails with
// kValueNotAccepted where the flat is negative, or wider than the groove is where the mating crest reaches
// (P/4 in a Unified or metric screw, P/8 in its hole).
[[nodiscard]] base::Result<ThreadDepth> depth_for_tool(const ThreadDepth& wanted, quantity::Length nose);

// The angle the compound is set to, from square to the axis: half a degree less than half the flank angle, so
// that the trailing flank is shaved clean: 29.5 degrees for 60 (common practice). A compound graduated from
// the axis reads 90 less it.
[[nodiscard]] quantity::Angle usual_compound_angle(const ThreadDepth& depth);

// How far a slide set at that angle from square goes for a depth: depth / cos. Straight in (0) it is the
// depth itself. Source: geometry (1/2-10 internal Acme, 0.060 deep at 14.5 degrees: 0.062 in).
template <class Scalar>
[[nodiscard]] Scalar slide_travel_mm(const Scalar& depth_mm, const Scalar& angle_from_square_rad) {
  using std::cos;
  return depth_mm / cos(angle_from_square_rad);
}

// Depth after a pass of so many, every pass taking the same area off a sharp V: depth sqrt(pass / passes).
// Source: geometry; 0 <= pass <= passes.
template <class Scalar>
[[nodiscard]] Scalar depth_after_pass_mm(const Scalar& depth_mm, int pass, int passes) {
  using std::sqrt;
  return depth_mm * sqrt(static_cast<double>(pass) / static_cast<double>(passes));
}

// The same by the insert makers' rule, which starts gently: depth sqrt(0.3 / (passes - 1)) first, then depth
// sqrt((pass - 1) / (passes - 1)). passes from 2. Source: threading guides of insert makers (from memory;
// 0.94 mm in six: 0.23, 0.42, 0.59, 0.73, 0.84, 0.94).
template <class Scalar>
[[nodiscard]] Scalar insert_depth_after_pass_mm(const Scalar& depth_mm, int pass, int passes) {
  using std::sqrt;
  const double share = pass <= 1 ? 0.3 : static_cast<double>(pass - 1);
  return depth_mm * sqrt(share / static_cast<double>(passes - 1));
}

struct PassOptions {
  quantity::Length most_first =
      quantity::Length::of(0.010, quantity::unit::inch);  // infeed of the first pass, > 0
  quantity::Length least_infeed =
      quantity::Length::of(0.001, quantity::unit::inch);  // thinner than this a tool rubs, > 0
  int spring_passes = 2;                                  // without infeed, 0 to 10
  quantity::Angle compound_angle;  // from square to the axis, 0 (straight in) to under half the flank angle
  // All four are common practice on a small lathe in steel.
};

struct ThreadPass {
  int number = 0;                // from 1
  quantity::Length infeed;       // square to the axis; zero in a spring pass
  quantity::Length depth;        // so far
  quantity::Length slide;        // what the slide is turned on by
  quantity::Length slide_total;  // what its collar reads from the touch
  quantity::Area area;           // of the groove that this pass takes off
  bool spring = false;
};

struct PassPlan {
  std::vector<ThreadPass> passes;  // spring passes last
  ThreadDepth depth;
  quantity::Angle compound_angle;
  std::string note;  // where passes of equal area would have rubbed; empty where not
};

// Passes of equal area of chip: as few as keep the first infeed to most_first. Where equal passes would
// become thinner than least_infeed, the rest go on by least_infeed, and the note says from which pass. Fails
// with kValueNotAccepted for an option outside its range, with kTooMany for more than 200 passes.
[[nodiscard]] base::Result<PassPlan> plan_passes(const ThreadDepth& depth, const PassOptions& options);

}  // namespace sparewright::handbook
