// Specific cutting force, unit power and the load of a drill by material, as sources print them, with their
// spread.
//
// Size a motor, a grip or a boring bar by the high figure: sources differ by 30 to 40 %, and a worn tool adds
// as much again.
#pragma once

#include <optional>

#include "core/base/result.hpp"
#include "core/handbook/figures.hpp"
#include "core/handbook/work.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// What a table of specific cutting force counts by.
enum class ChipMeasure {
  kThickness,     // of the chip: the feed times the sine of the setting angle; in milling the mean
  kFeedPerTooth,  // of a face mill
};

// A turned chip, or the mean chip of a cutter. thickness > 0.
struct Chip {
  quantity::Length thickness;
  std::optional<quantity::Length> feed_per_tooth;  // > 0; without it tables by feed per tooth are left out
};

struct SpecificForce {
  Figures<quantity::Pressure> figures;
  bool beyond_tables = false;  // thinner than 0.05 mm or thicker than 1.6 mm: no table goes so far
};

// Specific cutting force of turning (also boring, parting) at a chip. Fails with kSizeNotPositive, or
// kNotTabled where no source has the material.
[[nodiscard]] base::Result<SpecificForce> turning_force(const Work& work, const Chip& chip);

// The same of milling.
[[nodiscard]] base::Result<SpecificForce> milling_force(const Work& work, const Chip& chip);

// Power of the cut per metal removed, sharp tool: a pressure, 1 W s/mm3 = 1000 MPa. Where nothing is printed
// for the work's hardness the rows of the nearest one are taken, and their note says so. Fails with
// kNotTabled.
[[nodiscard]] base::Result<Figures<quantity::Pressure>> unit_power(const Work& work, Operation operation);

enum class DrillPoint {
  kStandard,  // chisel edge 0.18 D
  kSplit,     // 0.03 D
};

// Load of a twist drill. wear: 1 for a sharp drill, 1.3 usual, more for a dull one.
struct DrillingLoad {
  Figures<quantity::Torque> torque;  // handbook method and Kienzle, one figure a material row
  Figures<quantity::Force> thrust;   // handbook method alone
};
// Fails with kSizeNotPositive, or kNotTabled.
[[nodiscard]] base::Result<DrillingLoad> drilling_load(const Work& work, quantity::Diameter drill,
                                                       quantity::Length feed_per_turn, double wear = 1.3,
                                                       DrillPoint point = DrillPoint::kStandard);

// Power a specific force or a unit power takes at a rate of metal removed.
[[nodiscard]] inline quantity::Power cutting_power(quantity::Pressure specific, quantity::Volume removed,
                                                   quantity::Time in) {
  return specific * removed / in;
}

}  // namespace sparewright::handbook
