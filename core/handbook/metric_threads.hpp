// ISO metric threads: reading a designation, basic sizes, limits of size of any class, stress area.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/thread_limits.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

struct MetricThread {
  quantity::Diameter major;
  quantity::Length pitch;
  std::string thread_class;  // "6g", "6H", "4g6g" as written; empty where it was left out
  bool left_hand = false;
  std::vector<std::string> assumed;  // what was not written and how it was taken, a sentence each
};

// Reads M8, M8x1, M8 x 1.25, M10×1.5-6g, M8-6H, M8x1-LH. Without a pitch it is the coarse one (ISO 261), and
// `assumed` says so. Fails with kNameUnknown, or kNotTabled for a size whose coarse pitch is not tabled
// (M13).
[[nodiscard]] base::Result<MetricThread> read_metric_thread(std::string_view text);

// "M8x1.25", "M8x1.25-6g-LH".
[[nodiscard]] std::string to_string(const MetricThread& thread);

// The usual metric threads: coarse pitch first, then the fine ones, by size within each (ISO 261).
struct StandardMetricThread {
  quantity::Diameter nominal;
  quantity::Length pitch;
  Source source;
};
[[nodiscard]] std::span<const StandardMetricThread> coarse_metric_threads();
[[nodiscard]] std::span<const StandardMetricThread> fine_metric_threads();

// One tolerance zone: grade 3 to 9, position e, f, g, h of a screw or G, H of a hole.
struct MetricZone {
  int grade = 6;
  char position = 'g';

  friend bool operator==(const MetricZone&, const MetricZone&) = default;
};

// The class of a thread: 6g is 6g6g; 4g6g has its pitch diameter to 4g and its crests (the major diameter of
// a screw, the minor of a hole) to 6g.
struct MetricClass {
  MetricZone pitch;
  MetricZone crest;

  [[nodiscard]] bool is_screw() const { return pitch.position >= 'a'; }
  friend bool operator==(const MetricClass&, const MetricClass&) = default;
};

// Reads 6g, 6H, 5g6g. Fails with kNameUnknown where a letter is none of e f g h G H, a grade not 3 to 9, or
// the two zones are of a screw and of a hole.
[[nodiscard]] base::Result<MetricClass> read_metric_class(std::string_view text);
[[nodiscard]] std::string to_string(const MetricClass& thread_class);  // "6g", "4g6g"

inline constexpr MetricClass kClass6g{{6, 'g'}, {6, 'g'}};
inline constexpr MetricClass kClass6h{{6, 'H'}, {6, 'H'}};

// The class written, or where none of that side is written 6g for a screw and 6H for a hole, the usual ones
// (ISO 965-1: medium, for a normal length of engagement); `assumed` then says so.
struct ChosenMetricClass {
  MetricClass thread_class;
  std::string assumed;
};
[[nodiscard]] ChosenMetricClass screw_class(const MetricThread& thread);
[[nodiscard]] ChosenMetricClass hole_class(const MetricThread& thread);

[[nodiscard]] BasicThread basic_sizes(const MetricThread& thread);

// Limits of size to 0.001 mm by the grid of ISO 965-1 / ASME B1.13M, never by its formulas: grade 6 as
// printed where a page showed it, all else from memory (the source of the limits says which). Pitches 0.2 to
// 8 mm, diameters over 0.99 up to 300 mm, as far as the standard joins them. The class written in the thread
// is not looked at. Fails with kNotTabled where the grid has no such pitch, diameter, grade or position,
// naming what it has. thread_class must be of the side asked for.
[[nodiscard]] base::Result<ExternalThreadLimits> screw_limits(const MetricThread& thread,
                                                              const MetricClass& thread_class);
[[nodiscard]] base::Result<InternalThreadLimits> hole_limits(const MetricThread& thread,
                                                             const MetricClass& thread_class);

// The same for 6g and 6H.
[[nodiscard]] base::Result<ExternalThreadLimits> screw_limits_6g(const MetricThread& thread);
[[nodiscard]] base::Result<InternalThreadLimits> hole_limits_6h(const MetricThread& thread);

// The normal length of engagement, which the classes 6g and 6H are for: over 2.24 P d^0.2 up to 6.7 P d^0.2,
// d the lower end of the standard's range of diameters. Shorter wants a grade finer (5g6g, 5H), longer one
// coarser (7g6g, 7H). Source: ISO 965-1 (from memory; the standard prints the numbers rounded). Fails with
// kNotTabled outside the ranges of diameters, 0.99 to 300 mm.
struct NormalEngagement {
  quantity::Length over;
  quantity::Length up_to;
  Source source;
};
[[nodiscard]] base::Result<NormalEngagement> normal_engagement(const MetricThread& thread);

// (pi/4) (d - 0.9382 P)^2. Source: kMetricStressArea in thread_formulas.hpp.
[[nodiscard]] quantity::Area tensile_stress_area(const MetricThread& thread);

}  // namespace sparewright::handbook
