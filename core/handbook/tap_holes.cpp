#include "core/handbook/tap_holes.hpp"

#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/handbook/thread_formulas.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr Source kFullThread{"percentage of thread: 100 (D - hole) over twice the depth of the form", "",
                             Basis::kDerived};
constexpr Source kFormTap{"form taps: hole D - 0.0068 percent P, tap makers' formula", "",
                          Basis::kFromMemory};
constexpr double kFormTapPerPercent = 0.0068;

bool is_sixty_degree_screw(ThreadForm form) {
  return form == ThreadForm::kUnified || form == ThreadForm::kMetric || form == ThreadForm::kAmericanNational;
}

double percent_in(const ThreadShape& thread, Length hole) {
  return 100.0 * ((across(thread.major) - hole) / (full_thread_per_pitch(thread.form) * thread.pitch));
}

std::optional<base::Failure> not_a_cylinder(const ThreadShape& thread) {
  if (!thread.tapered) return std::nullopt;
  return not_tabled("the percentage of thread", thread.name, "the drill of the table of pipe threads")
      .value();
}

std::optional<base::Failure> not_a_percentage(double percent) {
  if (percent > 0.0 && percent <= 100.0) return std::nullopt;
  return base::fail(base::Code::kValueNotAccepted, fmt::format("{} %", percent),
                    "more than 0 up to 100 %; 60 to 75 is usual", "percent of thread")
      .value();
}

TapDrillPercent judged(const ThreadShape& thread, const Drill& drill) {
  TapDrillPercent out{drill, percent_in(thread, across(drill.diameter)), {}, {}, {}, {}};
  if (const auto oversize = drill_oversize(drill.diameter)) {
    const Length size = across(drill.diameter);
    out.really = percent_in(thread, size + oversize->mean);
    out.really_least = percent_in(thread, size + oversize->most);
    out.really_most = percent_in(thread, size + oversize->least);
    out.oversize_source = oversize->source;
  }
  return out;
}

// Of two equally near the larger.
std::optional<Drill> nearest(Diameter hole, DrillSeries series) {
  const DrillsAround around = drills_around(hole, series);
  if (!around.at_or_below || !around.at_or_above)
    return around.at_or_below ? around.at_or_below : around.at_or_above;
  const Length below = hole - around.at_or_below->diameter;
  const Length above = around.at_or_above->diameter - hole;
  return below.base() < above.base() - kSizeSlackMm ? around.at_or_below : around.at_or_above;
}

std::vector<TapDrillPercent> nearest_of_each(const ThreadShape& thread, Diameter hole,
                                             std::span<const DrillSeries> series) {
  std::vector<TapDrillPercent> out;
  for (const DrillSeries one : series) {
    const auto drill = nearest(hole, one);
    if (drill && std::abs((drill->diameter - hole).base()) <= thread.pitch.base())
      out.push_back(judged(thread, *drill));
  }
  return out;
}

Length room_below(const ThreadShape& thread, std::optional<Length> room) {
  return room.value_or(thread.pitch);
}

}  // namespace

double full_thread_per_pitch(ThreadForm form) {
  return is_sixty_degree_screw(form) ? kFullThreadPerPitch : 2.0 * profile_of(form).hole.depth;
}

base::Result<TapDrillPercent> percent_of_drill(const ThreadShape& thread, const Drill& drill) {
  if (const auto failure = not_a_cylinder(thread)) return base::fail(*failure);
  return judged(thread, drill);
}

base::Result<HoleForPercent> hole_for_percent(const ThreadShape& thread, double percent,
                                              std::span<const DrillSeries> series) {
  if (const auto failure = not_a_cylinder(thread)) return base::fail(*failure);
  if (const auto failure = not_a_percentage(percent)) return base::fail(*failure);
  const Diameter hole =
      as_diameter(across(thread.major) - percent / 100.0 * full_thread_per_pitch(thread.form) * thread.pitch);
  return HoleForPercent{percent, hole, nearest_of_each(thread, hole, series),
                        is_sixty_degree_screw(thread.form) ? kPercentOfThread : kFullThread};
}

base::Result<HoleForPercent> form_tap_hole(const ThreadShape& thread, double percent,
                                           std::span<const DrillSeries> series) {
  if (!is_sixty_degree_screw(thread.form) || thread.tapered)
    return not_tabled("the hole for a form tap", thread.name, "Unified and metric screw threads");
  if (const auto failure = not_a_percentage(percent)) return base::fail(*failure);
  const Diameter hole = as_diameter(across(thread.major) - kFormTapPerPercent * percent * thread.pitch);
  HoleForPercent out{percent, hole, nearest_of_each(thread, hole, series), kFormTap};
  // The metal moved fills the thread from a larger hole: the percentages are those of the form tap.
  const auto formed = [&](double cut) {
    return cut * full_thread_per_pitch(thread.form) / (100.0 * kFormTapPerPercent);
  };
  for (TapDrillPercent& one : out.nearest) {
    one.percent = formed(one.percent);
    for (std::optional<double>* really : {&one.really, &one.really_least, &one.really_most}) {
      if (*really) *really = formed(**really);
    }
  }
  return out;
}

std::string_view name_of(TapChamfer chamfer) {
  constexpr std::array<std::string_view, 3> kNames{"taper", "plug", "bottoming"};
  return kNames.at(static_cast<std::size_t>(chamfer));
}

TapLead tap_lead(TapChamfer chamfer) {
  constexpr Source kLead{"ASME B94.9, chamfer of taps: taper 7-10 threads, plug 3-5, bottoming 1-2", "",
                         Basis::kFromMemory};
  switch (chamfer) {
    case TapChamfer::kTaper:
      return {7.0, 10.0, kLead};
    case TapChamfer::kPlug:
      return {3.0, 5.0, kLead};
    case TapChamfer::kBottoming:
      break;
  }
  return {1.0, 2.0, kLead};
}

base::Result<BlindHole> blind_hole(const ThreadShape& thread, Length full_thread, TapChamfer chamfer,
                                   Diameter drill, std::optional<Length> room, Angle point_angle) {
  if (!(full_thread > Length()))
    return base::fail(base::Code::kSizeNotPositive, quantity::three_ways(full_thread),
                      "the length of full thread wanted", "the full thread");
  BlindHole out;
  out.tap = tap_lead(chamfer);
  out.full_thread = full_thread;
  out.lead = out.tap.most_threads * thread.pitch;
  out.room = room_below(thread, room);
  out.full_diameter = out.full_thread + out.lead + out.room;
  out.point = point_length(drill, point_angle);
  out.deepest = out.full_diameter + out.point;
  return out;
}

Length full_thread_in(const ThreadShape& thread, Length full_diameter, TapChamfer chamfer,
                      std::optional<Length> room) {
  return full_diameter - tap_lead(chamfer).most_threads * thread.pitch - room_below(thread, room);
}

}  // namespace sparewright::handbook
