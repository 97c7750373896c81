#include <optional>
#include <variant>

#include <fmt/format.h>

#include "core/answers/threads.hpp"
#include "core/handbook/tapping.hpp"
#include "core/handbook/thread_designation.hpp"
#include "core/handbook/thread_formulas.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using handbook::ExternalThreadLimits;
using handbook::InternalThreadLimits;
using handbook::PowerThreadLimits;
using quantity::Kind;
using quantity::UnitSystem;

// The tables of one thread, in the order they are read.
class ThreadTables {
 public:
  explicit ThreadTables(UnitSystem system) : system_(system) {}

  void basic(const handbook::ThreadShape& shape, std::optional<quantity::Area> stress_area,
             const handbook::Source& area_source) {
    TableWriter writer("basic sizes", system_);
    writer.length("major diameter", shape.major, shape.source);
    writer.length("pitch diameter", shape.pitch_diameter, shape.source);
    writer.length("minor diameter of the hole", shape.minor, shape.source);
    writer.length("pitch", shape.pitch, shape.source);
    if (shape.starts > 1) writer.length("lead", shape.lead(), shape.source);
    if (stress_area)
      writer.number("tensile stress area", stress_area->base(), Kind::kArea, area_places(), area_source);
    answer.tables.push_back(writer.take());
  }

  void screw(const ExternalThreadLimits& limits) {
    TableWriter writer("screw " + limits.thread_class, system_);
    writer.limits("major diameter", limits.major.low, limits.major.high, limits.source);
    writer.limits("pitch diameter", limits.pitch.low, limits.pitch.high, limits.source);
    writer.length("minor diameter, flat root, at most", limits.flat_root_max, limits.source);
    if (limits.round_root_max)
      writer.length("minor diameter, round root, at most", *limits.round_root_max, limits.source);
    writer.length("allowance", limits.allowance, limits.source);
    answer.tables.push_back(writer.take());
  }

  void hole(const InternalThreadLimits& limits) {
    TableWriter writer("hole " + limits.thread_class, system_);
    writer.limits("minor diameter", limits.minor.low, limits.minor.high, limits.source);
    writer.limits("pitch diameter", limits.pitch.low, limits.pitch.high, limits.source);
    writer.length("major diameter, at least", limits.major_min, limits.source);
    answer.tables.push_back(writer.take());
  }

  void power(std::string_view side, const PowerThreadLimits& limits) {
    TableWriter writer(fmt::format("{} {}", side, limits.thread_class), system_);
    writer.limits("major diameter", limits.major.low, limits.major.high, limits.source);
    writer.limits("pitch diameter", limits.pitch.low, limits.pitch.high, limits.source);
    writer.limits("minor diameter", limits.minor.low, limits.minor.high, limits.source);
    answer.tables.push_back(writer.take());
  }

  // What the charts print, with the per cent it really leaves.
  void drills(const std::string& thread) {
    TableWriter writer("tap drill", system_);
    for (const auto column : {handbook::TapChartColumn::kNominal75, handbook::TapChartColumn::kNominal50}) {
      const auto chart = handbook::charted_tap_drill(thread, column);
      if (!chart) continue;
      const bool is_75 = column == handbook::TapChartColumn::kNominal75;
      writer.length(fmt::format("{}", chart->choice.drill.name), chart->choice.drill.diameter, chart->source,
                    fmt::format("leaves {:.0f} % of thread; the charts' {} column, for {}",
                                chart->choice.percent, is_75 ? "75 %" : "50 %",
                                is_75 ? "aluminium, brass, plastics" : "steel, stainless, iron"));
      if (answer.says.empty()) answer.says = fmt::format("tap drill {}", chart->choice.drill.name);
    }
    if (Table table = writer.take(); !table.rows.empty()) answer.tables.push_back(std::move(table));
  }

  // Limits that are not tabled are said to be so; nothing is left out in silence.
  template <class Limits, class Take>
  void or_why(const base::Result<Limits>& limits, Take take) {
    if (limits) {
      take(*limits);
    } else {
      answer.cautions.push_back(fmt::format("limits not tabled here: {}", limits.error().accepted));
    }
  }

  Answer answer;

 private:
  [[nodiscard]] int area_places() const { return system_ == UnitSystem::kInch ? 4 : 1; }

  UnitSystem system_;
};

Answer of(const handbook::UnifiedThread& thread) {
  ThreadTables tables(UnitSystem::kInch);
  tables.basic(shape_of(thread), tensile_stress_area(thread), handbook::kUnifiedStressArea);
  const handbook::ChosenClass screw = screw_class(thread);
  const handbook::ChosenClass hole = hole_class(thread);
  tables.screw(screw_limits(thread, screw.thread_class));
  tables.hole(hole_limits(thread, hole.thread_class));
  for (const std::string& assumed : {screw.assumed, hole.assumed}) {
    if (!assumed.empty()) tables.answer.assumed.push_back(assumed);
  }
  tables.drills(to_string(thread));
  return std::move(tables.answer);
}

Answer of(const handbook::MetricThread& thread) {
  ThreadTables tables(UnitSystem::kMetric);
  tables.basic(shape_of(thread), tensile_stress_area(thread), handbook::kMetricStressArea);
  const handbook::ChosenMetricClass screw = screw_class(thread);
  const handbook::ChosenMetricClass hole = hole_class(thread);
  tables.or_why(screw_limits(thread, screw.thread_class), [&](const auto& limits) { tables.screw(limits); });
  tables.or_why(hole_limits(thread, hole.thread_class), [&](const auto& limits) { tables.hole(limits); });
  for (const std::string& assumed : {screw.assumed, hole.assumed}) {
    if (!assumed.empty()) tables.answer.assumed.push_back(assumed);
  }
  tables.drills(to_string(thread));
  return std::move(tables.answer);
}

void add_npt(ThreadTables& tables, const handbook::NptSizes& npt) {
  TableWriter writer("taper pipe thread", UnitSystem::kInch);
  writer.length("outside of the pipe D", npt.outside, npt.source);
  writer.length("pitch diameter at the small end E0", npt.pitch_at_end, npt.source);
  writer.length("pitch diameter at the gauge plane E1", npt.pitch_at_gauge, npt.source);
  writer.length("hand tight L1", npt.hand_tight, npt.source);
  writer.length("effective thread L2", npt.effective, npt.source);
  writer.length("height of thread, at most", npt.height, npt.source);
  writer.length(fmt::format("tap drill {}, no taper reamer", npt.drill.name), npt.drill.diameter, npt.source);
  if (npt.other_drill)
    writer.length(fmt::format("another chart: {}", npt.other_drill->name), npt.other_drill->diameter,
                  npt.source);
  tables.answer.tables.push_back(writer.take());
  tables.answer.says = fmt::format("tap drill {}", npt.drill.name);
}

void add_bsp(ThreadTables& tables, const handbook::BspSizes& bsp) {
  TableWriter writer("pipe thread", UnitSystem::kMetric);
  writer.length("height of thread", bsp.height, bsp.source);
  if (bsp.gauge_length) writer.length("small end to gauge plane", *bsp.gauge_length, bsp.source);
  if (bsp.drill) writer.length(fmt::format("tap drill {}", bsp.drill->name), bsp.drill->diameter, bsp.source);
  tables.answer.tables.push_back(writer.take());
  if (bsp.drill) tables.answer.says = fmt::format("tap drill {}", bsp.drill->name);
}

Answer of(const handbook::PipeThread& thread) {
  ThreadTables tables(thread.is_american() ? UnitSystem::kInch : UnitSystem::kMetric);
  tables.basic(shape_of(thread), std::nullopt, {});
  if (thread.is_american()) {
    add_npt(tables, npt_sizes(thread));
  } else {
    add_bsp(tables, bsp_sizes(thread));
    if (thread.system == handbook::PipeSystem::kG) {
      tables.screw(g_screw_limits(thread));
      tables.hole(g_hole_limits(thread));
    }
  }
  tables.answer.cautions.emplace_back(
      "Pipe that holds pressure, steam or gas is for a qualified person; local codes come first.");
  return std::move(tables.answer);
}

Answer of(const handbook::AcmeThread& thread) {
  ThreadTables tables(UnitSystem::kInch);
  tables.basic(shape_of(thread), std::nullopt, {});
  tables.power("screw", screw_limits(thread));
  tables.power("nut", hole_limits(thread));
  return std::move(tables.answer);
}

Answer of(const handbook::TrapezoidalThread& thread) {
  ThreadTables tables(UnitSystem::kMetric);
  tables.basic(shape_of(thread), std::nullopt, {});
  tables.or_why(screw_limits(thread), [&](const auto& limits) { tables.power("screw", limits); });
  tables.or_why(hole_limits(thread), [&](const auto& limits) { tables.power("nut", limits); });
  return std::move(tables.answer);
}

// Whitworth and BA: basic sizes alone.
template <class British>
Answer of(const British& thread) {
  ThreadTables tables(UnitSystem::kInch);
  tables.basic(shape_of(thread), std::nullopt, {});
  tables.answer.cautions.emplace_back("limits of British threads are not tabled here: basic sizes only");
  return std::move(tables.answer);
}

}  // namespace

base::Result<Answer> thread(const Question& question) {
  const auto read = handbook::read_thread(question.words);
  if (!read) return tl::unexpected(read.error());
  Answer answer = std::visit([](const auto& thread) { return of(thread); }, *read);
  answer.asked = to_string(*read);
  const std::vector<std::string>& assumed = assumed_of(*read);
  answer.assumed.insert(answer.assumed.begin(), assumed.begin(), assumed.end());
  return answer;
}

}  // namespace sparewright::answers
