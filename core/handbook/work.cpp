#include "core/handbook/work.hpp"

#include <array>
#include <cstddef>

namespace sparewright::handbook {

std::string_view name_of(WorkGroup group) {
  constexpr std::array<std::string_view, 17> kNames{"free-machining steel",
                                                    "low-carbon steel",
                                                    "medium-carbon steel",
                                                    "alloy steel",
                                                    "tool steel",
                                                    "free-machining stainless steel",
                                                    "stainless steel",
                                                    "grey iron",
                                                    "malleable iron",
                                                    "ductile iron",
                                                    "aluminium",
                                                    "magnesium",
                                                    "brass",
                                                    "bronze",
                                                    "copper",
                                                    "titanium",
                                                    "plastic"};
  return kNames.at(static_cast<std::size_t>(group));
}

std::string_view name_of(ToolMaterial tool) {
  return tool == ToolMaterial::kHighSpeedSteel ? "high-speed steel" : "carbide";
}

std::string_view name_of(Operation operation) {
  constexpr std::array<std::string_view, 8> kNames{"drilling",      "reaming",        "tapping", "milling",
                                                   "rough turning", "finish turning", "boring",  "parting"};
  return kNames.at(static_cast<std::size_t>(operation));
}

bool covers(PrintedOperation printed, Operation operation) {
  const bool turning = operation == Operation::kTurningRough || operation == Operation::kTurningFinish;
  switch (printed) {
    case PrintedOperation::kDrilling:
      return operation == Operation::kDrilling;
    case PrintedOperation::kReaming:
      return operation == Operation::kReaming;
    case PrintedOperation::kTapping:
      return operation == Operation::kTapping;
    case PrintedOperation::kMilling:
      return operation == Operation::kMilling;
    case PrintedOperation::kTurning:
      return turning;
    case PrintedOperation::kTurningRough:
      return operation == Operation::kTurningRough;
    case PrintedOperation::kTurningFinish:
      return operation == Operation::kTurningFinish;
    case PrintedOperation::kTurningOrMilling:
      return turning || operation == Operation::kMilling;
    case PrintedOperation::kBoring:
      return operation == Operation::kBoring;
    case PrintedOperation::kParting:
      return operation == Operation::kParting;
  }
  return false;
}

bool meets(const Work& work, std::optional<double> brinell_low, std::optional<double> brinell_high) {
  if (!work.hardness) return true;
  return (!brinell_low || *brinell_low <= work.hardness->high) &&
         (!brinell_high || *brinell_high >= work.hardness->low);
}

}  // namespace sparewright::handbook
