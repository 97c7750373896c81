// General purpose Acme threads (ASME B1.5): reading a designation, basic sizes, limits of size.
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

struct AcmeThread {
  std::string size;  // "1-1/2"
  quantity::Diameter major;
  double threads_per_inch =
      0.0;  // crests to the inch; of a thread of several starts, the pitch's, not the lead's
  int starts = 1;
  int thread_class = 2;  // 2, 3 or 4: 2G, 3G, 4G
  bool left_hand = false;
  std::vector<std::string> assumed;

  [[nodiscard]] quantity::Length pitch() const;
};

// Reads 1-5 ACME, 1/2-10 ACME-2G, 1-1/2-4 ACME-3G-LH, ACME 1-5, 1 ACME, 1-10 ACME 2 START,
// 1-0.1P-0.2L-ACME-2G. Assumed and told: the threads per inch the size has in the standard; class 2G; that
// the pitch is not the standard one. Fails with kNameUnknown; sizes from 1/4 to 6 in, 1 to 24 threads per
// inch leaving half the diameter as core; STUB ACME is not tabled here.
[[nodiscard]] base::Result<AcmeThread> read_acme_thread(std::string_view text);

// "1-5 ACME-2G", "1-10 ACME-2G 2 START-LH".
[[nodiscard]] std::string to_string(const AcmeThread& thread);

// Major D, pitch diameter D - P/2, minor diameter of the hole D - P.
[[nodiscard]] BasicThread basic_sizes(const AcmeThread& thread);
[[nodiscard]] ThreadShape shape_of(const AcmeThread& thread);

// How much deeper than P/2 the groove of screw and hole goes on each side: 0.010 in up to 10 threads per
// inch, 0.005 in for finer ones. Source: ASME B1.5 (from memory; a worked bore of 0.400 in for 1/2-10 comes
// out to a groove of 0.520).
[[nodiscard]] quantity::Length root_clearance(const AcmeThread& thread);

// Limits by the formulas of ASME B1.5 (from memory), to 0.0001 in, for classes 2G, 3G and 4G: allowance on
// the screw's pitch diameter 0.008, 0.006 or 0.004 sqrt(D); tolerance of both pitch diameters 0.030 sqrt(P) +
// 0.006 sqrt(D), 0.014 sqrt(P) + 0.0028 sqrt(D) or 0.010 sqrt(P) + 0.002 sqrt(D). They are for engagements up
// to twice the diameter.
[[nodiscard]] PowerThreadLimits screw_limits(const AcmeThread& thread);
[[nodiscard]] PowerThreadLimits hole_limits(const AcmeThread& thread);

// The standard Acme threads by size.
struct StandardAcmeThread {
  std::string_view size;
  double threads_per_inch = 0.0;
  Source source;
};
[[nodiscard]] std::span<const StandardAcmeThread> standard_acme_threads();

}  // namespace sparewright::handbook
