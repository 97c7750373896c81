// Trapezoidal threads Tr (ISO 2902-2904, DIN 103): reading a designation, basic sizes, limits 7e and 7H.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/thread_limits.hpp"
#include "core/handbook/thread_shape.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

struct TrapezoidalThread {
  quantity::Diameter major;
  quantity::Length pitch;
  int starts = 1;
  std::string thread_class;  // "7e", "7H" as written; empty where it was left out
  bool left_hand = false;
  std::vector<std::string> assumed;
};

// Reads Tr 20x4, Tr20x4-7e, Tr20x4 LH, Tr 20x8 (P4), Tr20x8P4, Tr 20. Assumed and told: the preferred pitch
// of the size; that the pitch is none of those the standard joins with it. Fails with kNameUnknown: sizes of
// 6 to 300 mm, pitches 1.5 to 16 mm leaving half the diameter as core.
[[nodiscard]] base::Result<TrapezoidalThread> read_trapezoidal_thread(std::string_view text);

// "Tr20x4", "Tr20x8P4-7e-LH".
[[nodiscard]] std::string to_string(const TrapezoidalThread& thread);

// Major d, pitch diameter d - P/2, minor diameter of the hole d - P.
[[nodiscard]] BasicThread basic_sizes(const TrapezoidalThread& thread);
[[nodiscard]] ThreadShape shape_of(const TrapezoidalThread& thread);

// Clearance ac at the root, on each side: the grooves are P/2 + ac deep. From the table by pitch; between its
// pitches that of the pitch below. Source: ISO 2904 (from memory).
[[nodiscard]] quantity::Length root_clearance(const TrapezoidalThread& thread);

// Limits of the screw, 7e, and of the hole, 7H, the usual classes, to 0.001 mm (ISO 2903, from memory). The
// greatest major diameter of the hole is not limited: both its ends are the least. Fails with kNotTabled for
// another class, or a pitch and diameter the table has not.
[[nodiscard]] base::Result<PowerThreadLimits> screw_limits(const TrapezoidalThread& thread);
[[nodiscard]] base::Result<PowerThreadLimits> hole_limits(const TrapezoidalThread& thread);

struct StandardTrapezoidalThread {
  quantity::Diameter nominal;
  quantity::Length pitch;
  Source source;
};
[[nodiscard]] std::span<const StandardTrapezoidalThread> standard_trapezoidal_threads();

}  // namespace sparewright::handbook
