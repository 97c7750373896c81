#include "core/handbook/tapping.hpp"

#include <string>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/handbook/metric_threads.hpp"
#include "core/handbook/thread_formulas.hpp"
#include "core/handbook/unified_threads.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

struct ChartRow {
  std::string_view thread;
  TapChartColumn column;
  std::string_view drill;
  Source source;
};
constexpr ChartRow kTapChart[] = {
#include "generated/core/handbook/charted_tap_drills.inc"
};

double percent(Diameter major, Diameter hole, Length pitch) {
  return percent_of_thread(major.in(unit::millimetre), hole.in(unit::millimetre), pitch.in(unit::millimetre));
}

// A thread as the chart names it: "#10-24", "1/4-20", "M8x1.25".
struct ChartThread {
  std::string name;
  Diameter major;
  Length pitch;
};

base::Result<ChartThread> chart_thread(std::string_view text) {
  const std::string_view typed = quantity::trimmed(text);
  if (typed.starts_with('M') || typed.starts_with('m')) {
    auto thread = read_metric_thread(typed);
    if (!thread) return tl::unexpected(thread.error());
    thread->thread_class.clear();
    thread->left_hand = false;
    return ChartThread{to_string(*thread), thread->major, thread->pitch};
  }
  const auto thread = read_unified_thread(typed);
  if (!thread) return tl::unexpected(thread.error());
  return ChartThread{fmt::format("{}-{}", thread->size, thread->threads_per_inch), thread->major,
                     thread->pitch()};
}

}  // namespace

std::vector<TapDrill> tap_drills(Diameter major, Length pitch, std::span<const DrillSeries> series,
                                 ThreadPercent range) {
  const double major_mm = major.in(unit::millimetre);
  const double pitch_mm = pitch.in(unit::millimetre);
  const auto hole = [&](double of) {
    return Diameter::of(hole_for_percent_mm(major_mm, of, pitch_mm), unit::millimetre);
  };
  std::vector<TapDrill> out;
  for (const Drill& drill : drills_between(hole(range.most), hole(range.least), series)) {
    out.push_back({drill, percent(major, drill.diameter, pitch)});
  }
  return out;
}

base::Result<ChartedTapDrill> charted_tap_drill(std::string_view thread, TapChartColumn column) {
  const auto wanted = chart_thread(thread);
  if (!wanted) return tl::unexpected(wanted.error());
  for (const ChartRow& row : kTapChart) {
    if (row.thread != wanted->name || row.column != column) continue;
    const auto drill = find_drill(row.drill);
    if (!drill) return tl::unexpected(drill.error());
    return ChartedTapDrill{{*drill, percent(wanted->major, drill->diameter, wanted->pitch)}, row.source};
  }
  return not_tabled_among("the tap drill", wanted->name,
                          names_of(kTapChart, [](const ChartRow& row) { return row.thread; }));
}

}  // namespace sparewright::handbook
