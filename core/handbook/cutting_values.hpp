// One question of the bench: how fast, in this material, with this tool?
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/figures.hpp"
#include "core/handbook/materials.hpp"
#include "core/handbook/work.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// Operations and tools as they are typed: turning (rough turning), finish turning, drilling, reaming,
// tapping, milling, boring, parting; hss, high-speed steel, carbide. Fail with kNameUnknown, naming the
// nearest.
[[nodiscard]] base::Result<Operation> find_operation(std::string_view text);
[[nodiscard]] base::Result<ToolMaterial> find_tool_material(std::string_view text);

// The words for an operation and a tool taken out of a text, wherever they stand in it: "1018 turning hss" leaves "1018".
// Longer words go before shorter ones, "rough turning" before "turning". What is not there is none.
struct CuttingWords {
  std::string rest;  // in small letters
  std::optional<Operation> operation;
  std::optional<ToolMaterial> tool;
};
[[nodiscard]] CuttingWords cutting_words(std::string_view text);
// "turning, rough turning, ...": the words for operations, for messages.
[[nodiscard]] std::string operation_words();

struct SpeedAnswer {
  Material material;
  std::string assumed;  // what the material's name left open; empty where nothing
  Operation operation = Operation::kTurningRough;
  ToolMaterial tool = ToolMaterial::kHighSpeedSteel;
  Figures<quantity::Speed> speed;  // every source's figure; start at the low one (kStartLow)
};

// The cutting speeds in print for a material found by name, its own hardness granted. Fails as find_material
// and cutting_speed.
[[nodiscard]] base::Result<SpeedAnswer> speed_answer(std::string_view material, Operation operation,
                                                     ToolMaterial tool);

}  // namespace sparewright::handbook
