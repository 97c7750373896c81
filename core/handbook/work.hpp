// What is cut, with what, and how: the three things every cutting value depends on.
#pragma once

#include <optional>
#include <string_view>

namespace sparewright::handbook {

// Materials that cut alike.
enum class WorkGroup {
  kFreeMachiningSteel,
  kLowCarbonSteel,
  kMediumCarbonSteel,
  kAlloySteel,
  kToolSteel,
  kFreeMachiningStainless,
  kStainless,
  kGreyIron,
  kMalleableIron,
  kDuctileIron,
  kAluminium,
  kMagnesium,
  kBrass,
  kBronze,
  kCopper,
  kTitanium,
  kPlastic,
};
[[nodiscard]] std::string_view name_of(WorkGroup group);  // "low-carbon steel"

// Brinell hardness; low <= high.
struct BrinellRange {
  double low = 0.0;
  double high = 0.0;
};

// The work as the cutting tables see it. Without a hardness every row of the group counts.
struct Work {
  WorkGroup group = WorkGroup::kLowCarbonSteel;
  std::optional<BrinellRange> hardness;
};

enum class ToolMaterial { kHighSpeedSteel, kCarbide };
[[nodiscard]] std::string_view name_of(ToolMaterial tool);  // "high-speed steel"

enum class Operation {
  kDrilling,
  kReaming,
  kTapping,
  kMilling,
  kTurningRough,
  kTurningFinish,
  kBoring,
  kParting
};
[[nodiscard]] std::string_view name_of(Operation operation);  // "rough turning"

// Operations as sources print them: one row may count for several operations.
enum class PrintedOperation {
  kDrilling,
  kReaming,
  kTapping,
  kMilling,
  kTurning,
  kTurningRough,
  kTurningFinish,
  kTurningOrMilling,
  kBoring,
  kParting,
};
[[nodiscard]] bool covers(PrintedOperation printed, Operation operation);

// Whether a row counts for a group outright, or only where the group has no row of its own.
enum class Scope { kOwn, kGeneral };

// Whether a row printed for a hardness (either end may be open) counts for the work. It does unless both are
// known and do not meet.
[[nodiscard]] bool meets(const Work& work, std::optional<double> brinell_low,
                         std::optional<double> brinell_high);

}  // namespace sparewright::handbook
