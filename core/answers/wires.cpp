#include <optional>

#include <fmt/format.h>

#include "core/answers/machines.hpp"
#include "core/handbook/thread_designation.hpp"
#include "core/handbook/thread_wires.hpp"

namespace sparewright::answers {
namespace {

using handbook::DiameterRange;
using handbook::ThreadShape;
using quantity::Diameter;
using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;

constexpr handbook::Source kUsualWires{"the usual set of sixteen wires, 0.018 to 0.185 in", "",
                                       handbook::Basis::kCommonPractice};

// What is measured: a screw over three wires or a hole between two balls, and the limits it is held to.
struct Wanted {
  ThreadShape shape;
  bool hole = false;
  std::string thread_class;
  std::optional<DiameterRange> pitch;  // none where no limits are tabled
  handbook::Source limits_source;
  UnitSystem system = UnitSystem::kInch;
  std::vector<std::string> assumed;
};

template <class Limits>
void take_limits(Wanted& wanted, const Limits& limits) {
  wanted.thread_class = limits.thread_class;
  wanted.pitch = limits.pitch;
  wanted.limits_source = limits.source;
}

template <class Limits>
void take_limits(Wanted& wanted, const base::Result<Limits>& limits) {
  if (limits) take_limits(wanted, *limits);
}

// Side, system and limits by the family of the thread.
struct SetLimits {
  Wanted& wanted;

  void operator()(const handbook::UnifiedThread& thread) const {
    wanted.hole = thread.thread_class && !is_screw_class(*thread.thread_class);
    const handbook::ChosenClass chosen = wanted.hole ? hole_class(thread) : screw_class(thread);
    if (!chosen.assumed.empty()) wanted.assumed.push_back(chosen.assumed);
    if (wanted.hole) {
      take_limits(wanted, hole_limits(thread, chosen.thread_class));
    } else {
      take_limits(wanted, screw_limits(thread, chosen.thread_class));
    }
  }
  void operator()(const handbook::MetricThread& thread) const {
    wanted.system = UnitSystem::kMetric;
    const auto written = handbook::read_metric_class(thread.thread_class);
    wanted.hole = written && !written->is_screw();
    const handbook::ChosenMetricClass chosen = wanted.hole ? hole_class(thread) : screw_class(thread);
    if (!chosen.assumed.empty()) wanted.assumed.push_back(chosen.assumed);
    if (wanted.hole) {
      take_limits(wanted, hole_limits(thread, chosen.thread_class));
    } else {
      take_limits(wanted, screw_limits(thread, chosen.thread_class));
    }
  }
  void operator()(const handbook::AcmeThread& thread) const { take_limits(wanted, screw_limits(thread)); }
  void operator()(const handbook::TrapezoidalThread& thread) const {
    wanted.system = UnitSystem::kMetric;
    wanted.hole = thread.thread_class.ends_with('H');
    take_limits(wanted, wanted.hole ? hole_limits(thread) : screw_limits(thread));
  }
  void operator()(const handbook::AssociationThread& thread) const {
    (void)thread;
    wanted.system = UnitSystem::kMetric;
  }
  void operator()(const handbook::PipeThread& thread) const { (void)thread; }
  void operator()(const handbook::WhitworthThread& thread) const { (void)thread; }
};

base::Result<Wanted> read(const std::string& words) {
  const auto thread = handbook::read_thread(words);
  if (!thread) return tl::unexpected(thread.error());
  Wanted wanted;
  wanted.shape = shape_of(*thread);
  wanted.assumed = assumed_of(*thread);
  std::visit(SetLimits{wanted}, *thread);
  if (!wanted.pitch)
    wanted.assumed.emplace_back(
        "limits of this thread are not tabled here: the measurement is that of the basic pitch diameter");
  return wanted;
}

handbook::WireRange range_for(const Wanted& wanted) {
  return wanted.hole ? balls_for(wanted.shape) : wires_for(wanted.shape);
}

base::Result<handbook::OverWires> measurement(const Wanted& wanted, Diameter pitch, Diameter wire) {
  return wanted.hole ? between_balls(wanted.shape, pitch, wire) : over_three_wires(wanted.shape, pitch, wire);
}

// The wire given; else the nearest of the usual set, or for a hole the best ball.
base::Result<Diameter> wire_for(const Question& question, Wanted& wanted) {
  const auto given = maybe_size(question, "wire");
  if (!given) return tl::unexpected(given.error());
  if (*given) return (*given)->diameter();
  if (wanted.hole) {
    wanted.assumed.emplace_back("--wire was not given: the best ball is taken");
    return range_for(wanted).best;
  }
  wanted.assumed.emplace_back(
      "--wire was not given: of the usual set of sixteen the nearest to the best is taken");
  return choose_wire(wanted.shape, handbook::usual_wires());
}

Table wire_table(const Wanted& wanted, Diameter wire, bool given) {
  const handbook::WireRange range = range_for(wanted);
  const std::string_view one = wanted.hole ? "ball" : "wire";
  TableWriter writer(std::string(one), wanted.system);
  const handbook::Source& chosen_from = wanted.hole ? range.source : kUsualWires;
  writer.length(fmt::format("{} used", one), wire, given ? handbook::Source{} : chosen_from);
  writer.length("best", range.best, range.source, "touches at the pitch line");
  writer.limits("may be", range.least, range.most, range.source);
  return writer.take();
}

base::Result<Table> over_table(const Wanted& wanted, Diameter wire, std::string& says) {
  TableWriter writer(wanted.hole ? "between two balls" : "over three wires", wanted.system);
  const auto basic = measurement(wanted, wanted.shape.pitch_diameter, wire);
  if (!basic) return tl::unexpected(basic.error());
  says = both_ways(basic->over, wanted.system);
  if (wanted.pitch) {
    const auto low = measurement(wanted, wanted.pitch->low, wire);
    if (!low) return tl::unexpected(low.error());
    const auto high = measurement(wanted, wanted.pitch->high, wire);
    if (!high) return tl::unexpected(high.error());
    writer.limits(fmt::format("class {}", wanted.thread_class), low->over, high->over, low->source);
    writer.limits("pitch diameter", wanted.pitch->low, wanted.pitch->high, wanted.limits_source);
    says = fmt::format("{} to {}", both_ways(low->over, wanted.system), both_ways(high->over, wanted.system));
  }
  writer.length("of the basic pitch diameter", basic->over, basic->source);
  writer.length("basic pitch diameter", wanted.shape.pitch_diameter, wanted.shape.source);
  if (!wanted.hole)
    writer.length("of it the lead angle makes", basic->lead_correction, basic->source, "already in it");
  writer.number("lead angle", basic->lead_angle.base(), Kind::kAngle, 2, basic->source);
  return writer.take();
}

// Where a pitch diameter lies against the limits.
std::string against_limits(const Wanted& wanted, Diameter pitch) {
  const Length over = pitch - wanted.pitch->high;
  const Length under = wanted.pitch->low - pitch;
  if (over.base() > 0.0)
    return fmt::format("{} over class {}", both_ways(over, wanted.system), wanted.thread_class);
  if (under.base() > 0.0)
    return fmt::format("{} under class {}", both_ways(under, wanted.system), wanted.thread_class);
  return fmt::format("within class {}", wanted.thread_class);
}

// Farther off than a pitch it is another thread, or another wire was used.
bool is_near(const ThreadShape& shape, Diameter pitch) {
  const Length off = pitch - shape.pitch_diameter;
  return (off.base() < 0.0 ? -off : off) < shape.pitch;
}

base::Result<Table> measured_table(const Wanted& wanted, Length measured, Diameter wire, std::string& says) {
  const auto pitch = wanted.hole ? pitch_diameter_from_balls(wanted.shape, measured, wire)
                                 : pitch_diameter_from_three_wires(wanted.shape, measured, wire);
  if (!pitch) return tl::unexpected(pitch.error());
  if (!is_near(wanted.shape, *pitch))
    return base::fail(base::Code::kReadingsDisagree, both_ways(measured, wanted.system), "about " + says,
                      fmt::format("the pitch diameter of {}", wanted.shape.name));
  const std::string verdict = wanted.pitch ? against_limits(wanted, *pitch) : "";
  TableWriter writer("as measured", wanted.system);
  writer.length("measured", measured, {});
  writer.length("pitch diameter", *pitch, handbook::kOverWires, verdict);
  says = fmt::format("pitch diameter {}{}{}", both_ways(across(*pitch), wanted.system),
                     verdict.empty() ? "" : ", ", verdict);
  return writer.take();
}

}  // namespace

base::Result<Answer> wires(const Question& question) {
  auto wanted = read(question.words);
  if (!wanted) return tl::unexpected(wanted.error());
  const auto measured = maybe_size(question, "measured");
  if (!measured) return tl::unexpected(measured.error());
  const auto wire = wire_for(question, *wanted);
  if (!wire) return tl::unexpected(wire.error());
  Answer answer;
  answer.asked = fmt::format("{}{}{}", wanted->shape.name, wanted->hole ? ", between balls" : ", over wires",
                             wanted->thread_class.empty() ? "" : ", class " + wanted->thread_class);
  auto over = over_table(*wanted, *wire, answer.says);
  if (!over) return tl::unexpected(over.error());
  if (*measured) {
    auto table = measured_table(*wanted, (*measured)->length(), *wire, answer.says);
    if (!table) return tl::unexpected(table.error());
    answer.tables.push_back(std::move(*table));
  }
  answer.assumed = std::move(wanted->assumed);
  answer.tables.push_back(std::move(*over));
  answer.tables.push_back(wire_table(*wanted, *wire, find_entry(question, "wire") != nullptr));
  return answer;
}

}  // namespace sparewright::answers
