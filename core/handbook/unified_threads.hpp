// Unified inch threads: reading a designation, basic sizes, limits of size, stress area (ASME B1.1).
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/thread_limits.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

enum class UnifiedSeries { kUnc, kUnf, kUnef, kUn, kUns };
[[nodiscard]] std::string_view name_of(UnifiedSeries series);  // "UNC"

enum class UnifiedClass { k1A, k2A, k3A, k1B, k2B, k3B };
[[nodiscard]] std::string_view name_of(UnifiedClass thread_class);  // "2A"

// Whether a class is of screws (A) or of tapped holes (B).
[[nodiscard]] bool is_screw_class(UnifiedClass thread_class);

struct UnifiedThread {
  std::string size;  // "#10", "1/4", "1-1/8"
  quantity::Diameter major;
  double threads_per_inch = 0.0;
  UnifiedSeries series = UnifiedSeries::kUnc;
  std::optional<UnifiedClass> thread_class;  // as written; none where it was left out
  bool left_hand = false;
  std::vector<std::string> assumed;  // what was not written and how it was taken, a sentence each

  [[nodiscard]] quantity::Length pitch() const;
};

// The standard coarse, fine and extra-fine threads, coarse first, by size within a series.
struct StandardThread {
  std::string_view size;
  UnifiedSeries series = UnifiedSeries::kUnc;
  double threads_per_inch = 0.0;
  Source source;
};
[[nodiscard]] std::span<const StandardThread> standard_unified_threads();

// Reads 1/4-20, 1/4-20 UNC-2B, #10-24, 10-24, 1-8, 1-1/8-7 UNC-2A-LH, .250-28, 1/4 UNC; NC and NF count as
// UNC and UNF. Left out and told in `assumed`: the # of a numbered size (10-24 is #10; 1-8 and 1-32 are 1 in,
// since #1 is finer) and the series (that of the standard thread of this size and pitch, else UN for 4, 6, 8,
// 12, 16, 20, 28 or 32 threads per inch, else UNS). A series written that is not that of the standard thread
// fails, naming the standard threads. Any other size from 0.06 to 6 in with 2 to 120 threads per inch is
// read, as far as half the diameter is left as the core. Fails with kNameUnknown, or kNotTabled for class 1A
// or 1B of a thread that is neither UNC nor UNF of 1/4 in and larger: the standard has these classes for no
// other.
[[nodiscard]] base::Result<UnifiedThread> read_unified_thread(std::string_view text);

// "1/4-20 UNC-2B", "#10-24 UNC", "1-1/8-7 UNC-2A-LH": the designation as the standard writes it, # kept.
[[nodiscard]] std::string to_string(const UnifiedThread& thread);

// The class written, or where none was written 2A for a screw and 2B for a hole, the usual ones; `assumed`
// then says so.
struct ChosenClass {
  UnifiedClass thread_class = UnifiedClass::k2A;
  std::string assumed;
};
[[nodiscard]] ChosenClass screw_class(const UnifiedThread& thread);  // 1A to 3A: of 2B its partner 2A
[[nodiscard]] ChosenClass hole_class(const UnifiedThread& thread);   // 1B to 3B: of 2A its partner 2B

[[nodiscard]] BasicThread basic_sizes(const UnifiedThread& thread);

// Limits of size by the formulas of ASME B1.1 (coefficients from memory; constants and the minor tolerances
// as in Machinery's Handbook 31st ed., Tables 3 to 6, pp. 2010-2017), for a length of engagement as in
// usual_engagement. Rounding: each tolerance to 0.0001 in first, then the limits, as the printed tables have
// it; minor limits of 1B to 3B, the 3B maximum excepted, to 0.001 in from #6 up. Of 596 printed limits of
// classes 2 and 3 574 come out to the digit, the others within 0.0001 in (tests/outside lists them); carried
// to six places as the 2003 standard does, a limit may move by 0.0001 in. Classes 1A and 1B: 1.5 times the
// pitch tolerance and major tolerance of 2A, 1.95 times its pitch tolerance (from memory). thread_class must
// be of the side asked for.
[[nodiscard]] ExternalThreadLimits screw_limits(const UnifiedThread& thread, UnifiedClass thread_class);
[[nodiscard]] InternalThreadLimits hole_limits(const UnifiedThread& thread, UnifiedClass thread_class);

// How much thread is in mesh: what the limits of size are worked out for, and the lengths they hold for. The
// diameter for UNC, UNF and UN of 4, 6 and 8 threads per inch, good up to 1.5 diameters; nine pitches for the
// others, good from 5 to 15 pitches. Source: ASME B1.1 (from memory; nine pitches for UNEF also in
// Machinery's Handbook 31st ed., Table 3, p. 2010).
struct EngagementRange {
  quantity::Length usual;
  quantity::Length least;
  quantity::Length most;
  Source source;
};
[[nodiscard]] EngagementRange usual_engagement(const UnifiedThread& thread);

// The limits for another length of engagement: the pitch tolerance, and the allowance which is 0.3 of that of
// 2A, grow with its square root. Over 3 diameters a lead error matters more than any tolerance. Fails with
// kSizeNotPositive.
[[nodiscard]] base::Result<ExternalThreadLimits> screw_limits(const UnifiedThread& thread,
                                                              UnifiedClass thread_class,
                                                              quantity::Length engagement);
[[nodiscard]] base::Result<InternalThreadLimits> hole_limits(const UnifiedThread& thread,
                                                             UnifiedClass thread_class,
                                                             quantity::Length engagement);

// Up to 100 ksi tensile strength: (pi/4) (D - 0.9743 P)^2. Source: kUnifiedStressArea in thread_formulas.hpp.
[[nodiscard]] quantity::Area tensile_stress_area(const UnifiedThread& thread);

}  // namespace sparewright::handbook
