// Which thread a screw has, from what was measured on it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/thread_designation.hpp"
#include "core/handbook/thread_limits.hpp"

namespace sparewright::handbook {

// Whether the crests of a screw are rounded by its standard (BS 84, BS 93, BS 811); those of the others are flat.
[[nodiscard]] bool has_rounded_crests(ThreadForm form);

// What was measured on the screw, and how far off it may be. The defaults are a calliper's: 0.05 mm on the
// diameter, the pitch over ten threads to 0.1 mm, the flanks by a gauge to 2 degrees (common practice).
struct MeasuredThread {
  quantity::Diameter major;
  quantity::Length pitch;
  std::optional<quantity::Angle> flank_angle;  // between the flanks, where it was seen
  std::optional<bool> tapered;                 // whether a straightedge rocks on it, where it was tried
  std::optional<bool> rounded;                 // whether its crests are rounded, where that can be seen
  quantity::Length major_good_to = quantity::Length::of(0.05, quantity::unit::millimetre);
  quantity::Length pitch_good_to = quantity::Length::of(0.01, quantity::unit::millimetre);
  quantity::Angle angle_good_to = quantity::Angle::of(2.0, quantity::unit::degree);
};

// What tells two threads apart. A diameter or ten pitches that differ by less than 0.15 mm a calliper does
// not tell from wear; a flank gauge tells any two forms apart.
struct ToldApart {
  bool by_major = false;
  bool by_pitch = false;  // over ten threads
  bool by_flanks = false;
  bool by_taper = false;

  friend bool operator==(const ToldApart&, const ToldApart&) = default;
};
inline constexpr quantity::Length kToldApart = quantity::Length::of(0.15, quantity::unit::millimetre);

// "major diameter + pitch over 10 threads + flank angle"; "nothing" where nothing does.
[[nodiscard]] std::string to_string(const ToldApart& told);

struct ThreadCandidate {
  AnyThread thread;
  quantity::Diameter major;  // nominal; of NPT the pipe's outside
  quantity::Length pitch;
  DiameterRange made;          // a good screw's major diameter: least of its usual class up to the nominal
  quantity::Length major_off;  // measured less nominal: a good screw is a little under
  quantity::Length pitch_off;  // measured less nominal
  quantity::Length over_ten;   // the same over ten threads
  double misfit =
      0.0;  // how far off, counted in what the measurements are good to: 0 fits, 1 just so, 3 hardly
  ToldApart from_first;  // what tells it from the first candidate
};

// Of threads that what was measured does not rule out, the next thing to look at.
enum class ThreadDecider {
  kNothing,     // no reading of the screw tells them apart: go by the nut, or by where the machine was made
  kFlankAngle,  // a gauge of 60, 55 or 47.5 degrees
  kPitch,       // the pitch over so many threads
  kTaper,       // a straightedge along the crests
  kCrests,      // flat or rounded
  kMajor,       // the diameter of threads that are not worn
};
struct WhatDecides {
  ThreadDecider by = ThreadDecider::kNothing;
  int threads = 0;  // of kPitch
};

// How far off, counted as misfit is, a thread is ruled out: more than the measurements allow even together.
inline constexpr double kRuledOut = 1.5;

// The candidates that are not ruled out, best first: the first, and those whose misfit is no more than kRuledOut, or no more
// than that of the first and 0.5.
[[nodiscard]] std::vector<ThreadCandidate> not_ruled_out(const std::vector<ThreadCandidate>& candidates);

// What tells one of them from another, what is easiest to read first: flanks, taper, the pitch over up to 40 threads, crests,
// and the diameter where the limits of good screws lie apart. What was looked at already is not asked for again.
[[nodiscard]] WhatDecides what_decides(const MeasuredThread& measured, const ThreadCandidate& one,
                                       const ThreadCandidate& other);

// "the flank angle: 60 or 55 degrees", "the pitch over 24 threads: 19.200 or 19.050 mm"; in the order of the two.
[[nodiscard]] std::string words_of(const WhatDecides& decides, const ThreadCandidate& one,
                                   const ThreadCandidate& other);

// The standard threads nearest to what was measured, best first, at most `most` of them: Unified (coarse,
// fine, extra fine), metric (ISO 261), BSW, BSF and BSC, 0 to 16 BA, NPT, G, R, Acme and trapezoidal. The
// misfit is the root of the sum of squares of three: how far the major diameter lies outside the limits a
// good screw has, the pitch off its own, the flanks off theirs, each over what it is good to; what was seen otherwise (taper, crests) counts as 3; equal ones
// stand by the nearer nominal diameter. Where no limits are tabled (British threads) a screw may be 0.15 P
// under (common practice). Fails with kSizeNotPositive.
[[nodiscard]] base::Result<std::vector<ThreadCandidate>> identify_thread(const MeasuredThread& measured,
                                                                         std::size_t most = 8);

// What tells the second from the first, by their nominal sizes.
[[nodiscard]] ToldApart tell_apart(const AnyThread& first, const AnyThread& second);

}  // namespace sparewright::handbook
