#include "core/handbook/cutting_forces.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "core/handbook/cutting_formulas.hpp"
#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Force;
using quantity::Length;
using quantity::Pressure;
using quantity::Torque;
namespace unit = quantity::unit;

struct ForceRow {
  PrintedOperation operation;
  ChipMeasure chip;
  WorkGroup group;
  std::string_view material;
  std::optional<double> brinell_low;
  std::optional<double> brinell_high;
  Pressure kc_low;
  Pressure kc_high;
  double exponent;
  std::string_view note;
  Source source;
};
constexpr ForceRow kForces[] = {
#include "generated/core/handbook/specific_cutting_force.inc"
};

enum class PowerOperation { kAny, kMilling };
struct PowerRow {
  PowerOperation operation;
  WorkGroup group;
  std::string_view material;
  std::optional<double> brinell_low;
  std::optional<double> brinell_high;
  double hp_per_cubic_inch_per_minute;
  Source source;
};
constexpr PowerRow kPowers[] = {
#include "generated/core/handbook/unit_power.inc"
};

struct DrillingRow {
  WorkGroup group;
  std::string_view material;
  std::optional<double> brinell_low;
  std::optional<double> brinell_high;
  double torque_factor;
  double thrust_factor;
  Source source;
};
constexpr DrillingRow kDrillingFactors[] = {
#include "generated/core/handbook/drilling_factors.inc"
};

struct ChiselEdge {
  double chisel_per_diameter;
  double web_per_diameter;
  double a;
  double b;
  double j;
  Source source;
};
constexpr ChiselEdge kChiselEdges[] = {
#include "generated/core/handbook/chisel_edges.inc"
};

constexpr double kThinnestMm = 0.05;
constexpr double kThickestMm = 1.6;  // of the tables read
constexpr double kPointAngleRad = 118.0 / 180.0 * std::numbers::pi;

base::Result<void> check_positive(std::string_view name, double value) {
  if (value > 0.0) return {};
  return base::fail(base::Code::kSizeNotPositive, fmt::format("{}", value), "more than zero", name);
}

base::Result<SpecificForce> specific_force(const Work& work, Operation operation, const Chip& chip) {
  if (auto thickness = check_positive("the chip's thickness", chip.thickness.base()); !thickness)
    return tl::unexpected(thickness.error());
  if (chip.feed_per_tooth) {
    if (auto feed = check_positive("the feed per tooth", chip.feed_per_tooth->base()); !feed)
      return tl::unexpected(feed.error());
  }
  std::vector<Printed<Pressure>> printed;
  for (const ForceRow& row : kForces) {
    if (row.group != work.group || !covers(row.operation, operation)) continue;
    if (!meets(work, row.brinell_low, row.brinell_high)) continue;
    if (row.chip == ChipMeasure::kFeedPerTooth && !chip.feed_per_tooth) continue;
    const Length h = row.chip == ChipMeasure::kFeedPerTooth ? *chip.feed_per_tooth : chip.thickness;
    const auto at_chip = [&](Pressure kc) {
      return Pressure::from_base(kienzle_pressure(kc.base(), row.exponent, h.in(unit::millimetre)));
    };
    printed.push_back({at_chip(row.kc_low), at_chip(row.kc_high), row.material, row.note, row.source});
  }
  if (!printed.empty()) {
    const double h_mm = chip.thickness.base();
    return SpecificForce{figures_of(std::move(printed)), h_mm < kThinnestMm || h_mm > kThickestMm};
  }
  return not_tabled(
      "the specific cutting force", fmt::format("{} {}", name_of(operation), name_of(work.group)),
      "steels (for free-machining steel take low-carbon steel as the high side), irons, stainless steel, "
      "aluminium, brass, bronze, copper, titanium; another hardness");
}

// How far the work's hardness lies from the range a row is printed for; 0 where they meet or either is not
// known.
double brinell_apart(const Work& work, const PowerRow& row) {
  if (meets(work, row.brinell_low, row.brinell_high)) return 0.0;
  return std::max(row.brinell_low.value_or(0.0) - work.hardness->high,
                  work.hardness->low - row.brinell_high.value_or(0.0));
}

// 1 hp/(in3/min): 2730 N/mm2.
constexpr Pressure kPerPrinted =
    quantity::Power::of(1.0, unit::horsepower) /
    (quantity::Volume::of(1.0, unit::cubic_inch) / quantity::Time::of(1.0, unit::minute));

const ChiselEdge& chisel_edge(DrillPoint point) {
  const double wanted = point == DrillPoint::kStandard ? 0.18 : 0.03;
  return *std::find_if(std::begin(kChiselEdges), std::end(kChiselEdges), [&](const ChiselEdge& one) {
    return std::abs(one.chisel_per_diameter - wanted) < 1e-9;
  });
}

// Torques of the handbook method, and thrusts, a figure for each row of the material.
DrillingLoad by_handbook(const std::vector<const DrillingRow*>& rows, Diameter drill, Length feed,
                         double wear, const ChiselEdge& edge) {
  const double drill_in = drill.in(unit::inch);
  const double feed_in = feed.in(unit::inch);
  std::vector<Printed<Torque>> torques;
  std::vector<Printed<Force>> thrusts;
  for (const DrillingRow* row : rows) {
    const Torque torque = Torque::of(
        drill_torque_inch_lbf(row->torque_factor, feed_in, drill_in, edge.a, wear), unit::inch_pound);
    const Force thrust = Force::of(
        drill_thrust_lbf(row->thrust_factor, feed_in, drill_in, edge.b, edge.j, wear), unit::pound_force);
    torques.push_back({torque, torque, row->material, "handbook method", row->source});
    thrusts.push_back({thrust, thrust, row->material, "handbook method", row->source});
  }
  return {figures_of(std::move(torques)), figures_of(std::move(thrusts))};
}

}  // namespace

base::Result<SpecificForce> turning_force(const Work& work, const Chip& chip) {
  return specific_force(work, Operation::kTurningRough, chip);
}

base::Result<SpecificForce> milling_force(const Work& work, const Chip& chip) {
  return specific_force(work, Operation::kMilling, chip);
}

base::Result<Figures<Pressure>> unit_power(const Work& work, Operation operation) {
  std::vector<const PowerRow*> rows;
  for (const PowerRow& row : kPowers) {
    const bool counts = row.operation == PowerOperation::kAny || operation == Operation::kMilling;
    if (counts && row.group == work.group) rows.push_back(&row);
  }
  if (rows.empty()) {
    return not_tabled(
        "the unit power", fmt::format("{} {}", name_of(operation), name_of(work.group)),
        "steels, grey and malleable iron, stainless steel, aluminium, magnesium, brass, bronze, copper, "
        "titanium");
  }
  double nearest = std::numeric_limits<double>::infinity();
  for (const PowerRow* row : rows)
    nearest = std::min(nearest, brinell_apart(work, *row));
  std::vector<Printed<Pressure>> printed;
  for (const PowerRow* row : rows) {
    if (brinell_apart(work, *row) > nearest) continue;
    const Pressure power = kPerPrinted * row->hp_per_cubic_inch_per_minute;
    const std::string_view note = nearest > 0.0 ? "printed for another hardness, the nearest" : "";
    printed.push_back({power, power, row->material, note, row->source});
  }
  return figures_of(std::move(printed));
}

base::Result<DrillingLoad> drilling_load(const Work& work, Diameter drill, Length feed_per_turn, double wear,
                                         DrillPoint point) {
  for (const auto& [name, value] :
       {std::pair("the drill's diameter", drill.base()), std::pair("the feed per turn", feed_per_turn.base()),
        std::pair("the wear", wear)}) {
    if (auto positive = check_positive(name, value); !positive) return tl::unexpected(positive.error());
  }
  std::vector<const DrillingRow*> rows;
  for (const DrillingRow& row : kDrillingFactors) {
    if (row.group == work.group && meets(work, row.brinell_low, row.brinell_high)) rows.push_back(&row);
  }
  if (rows.empty()) {
    return not_tabled("the load of a drill", name_of(work.group),
                      "steels, austenitic stainless, grey iron, aluminium, magnesium, brass, titanium");
  }
  DrillingLoad load = by_handbook(rows, drill, feed_per_turn, wear, chisel_edge(point));
  const Length chip = feed_per_turn * (std::sin(kPointAngleRad / 2.0) / 2.0);
  if (const auto force = turning_force(work, {chip, std::nullopt})) {
    std::vector<Printed<Torque>> torques = std::move(load.torque.printed);
    const auto torque = [&](Pressure kc) {
      return Torque::from_base(wear * drill_torque_nmm(kc.base(), drill.base(), feed_per_turn.base()));
    };
    for (const Printed<Pressure>& one : force->figures.printed)
      torques.push_back({torque(one.low), torque(one.high), one.material, "by Kienzle", one.source});
    load.torque = figures_of(std::move(torques));
  }
  return load;
}

}  // namespace sparewright::handbook
