// Pipe threads: American taper NPT and NPTF (ASME B1.20.1, B1.20.3), British parallel G (ISO 228-1) and taper
// R, Rc with parallel Rp (ISO 7-1).
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/thread_limits.hpp"
#include "core/handbook/thread_shape.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

enum class PipeSystem {
  kNpt,
  kNptf,  // dryseal: crests are crushed, no sealant
  kG,     // BSPP: parallel, sealed by a washer
  kR,     // BSPT: taper outside thread
  kRc,    // taper hole
  kRp,    // parallel hole for a taper outside thread
};
[[nodiscard]] std::string_view name_of(PipeSystem system);  // "NPT", "Rc"

struct PipeThread {
  PipeSystem system = PipeSystem::kNpt;
  std::string size;  // "1/2": the pipe's name, not a diameter
  double threads_per_inch = 0.0;
  bool class_b = false;  // of G, outside threads: twice the tolerance
  bool left_hand = false;
  std::vector<std::string> assumed;

  [[nodiscard]] bool is_american() const { return system == PipeSystem::kNpt || system == PipeSystem::kNptf; }
  [[nodiscard]] bool is_tapered() const { return system != PipeSystem::kG && system != PipeSystem::kRp; }
};

// Reads 1/2-14 NPT, 1/2 NPT, 1/8-27 NPTF, G1/2, G 1/2 A, G1/2B, R 1/2, Rc1/2, Rp 1/2, 1/2 BSPP, 1/2-14 BSPT,
// 1/2 BSP. Assumed and told: the threads per inch that the size has; BSP alone is the parallel G; BSPT is R;
// a G outside thread without a letter is class A. Fails with kNameUnknown, naming the sizes there are, or for
// threads per inch the size has not.
[[nodiscard]] base::Result<PipeThread> read_pipe_thread(std::string_view text);

// "1/2-14 NPT", "G1/2B", "Rc1/2": as the standard writes it.
[[nodiscard]] std::string to_string(const PipeThread& thread);

// A taper pipe thread is 1 in 16 on the diameter, 1.7899 degrees from the axis on each side.
inline constexpr double kPipeTaper = 1.0 / 16.0;

// A drill as a chart names it; pipe taps want drills larger than the tables of drills reach.
struct PipeDrill {
  std::string_view name;  // "letter R", "1-5/32", "30.75 mm"
  quantity::Diameter diameter;
};

// ASME B1.20.1. All for the outside thread; the hole's E1 is at its mouth. NPTF (ASME B1.20.3) has the same
// pitch diameters, taper and drills; its crests and roots are held closer so that metal seals on metal, and
// its taps and dies are its own.
struct NptSizes {
  quantity::Diameter outside;            // D, of the pipe
  quantity::Diameter pitch_at_end;       // E0: at the small end
  quantity::Diameter pitch_at_gauge;     // E1: at the hand-tight plane, and at the mouth of the hole
  quantity::Diameter pitch_effective;    // E2: where the full threads end
  quantity::Length hand_tight;           // L1
  quantity::Length effective;            // L2 = (0.80 D + 6.8) P
  quantity::Length height;               // 0.8 P, at most
  PipeDrill drill;                       // without a taper reamer
  std::optional<PipeDrill> other_drill;  // what another chart prints
  Source source;
};
// E0 = D - (0.05 D + 1.1) P and E1 = E0 + L1/16 (formulas from memory; ten printed sizes come out to 0.00001
// in). thread must be American; a size put together by hand that there is not throws std::logic_error.
[[nodiscard]] NptSizes npt_sizes(const PipeThread& thread);

// ISO 228-1 and ISO 7-1.
struct BspSizes {
  quantity::Diameter major;  // of a taper thread at the gauge plane
  quantity::Diameter pitch_diameter;
  quantity::Diameter minor;
  quantity::Length height;                       // 0.640327 P, to 0.001 mm
  std::optional<quantity::Length> gauge_length;  // end of the taper outside thread to the gauge plane
  std::optional<PipeDrill> drill;                // none where no chart printed one
  Source source;
};
// thread must be British.
[[nodiscard]] BspSizes bsp_sizes(const PipeThread& thread);

// Limits of G threads (ISO 228-1, tolerances from memory): the hole, and the outside thread of class A or B,
// whose sizes lie at and below the basic ones. thread must be a G.
[[nodiscard]] InternalThreadLimits g_hole_limits(const PipeThread& thread);
[[nodiscard]] ExternalThreadLimits g_screw_limits(const PipeThread& thread);

[[nodiscard]] ThreadShape shape_of(const PipeThread& thread);

// The sizes there are: of NPT for the American systems; those with a gauge length for R, Rc and Rp; all for
// G.
[[nodiscard]] std::vector<PipeThread> pipe_threads(PipeSystem system);

}  // namespace sparewright::handbook
