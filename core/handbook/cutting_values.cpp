#include "core/handbook/cutting_values.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <type_traits>
#include <utility>

#include "core/handbook/cutting_speeds.hpp"
#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

// Words for operations and tools. Source: common practice.
constexpr std::array<std::pair<std::string_view, Operation>, 18> kOperations{
    {{"turning", Operation::kTurningRough},
     {"rough turning", Operation::kTurningRough},
     {"roughing", Operation::kTurningRough},
     {"facing", Operation::kTurningRough},
     {"finish turning", Operation::kTurningFinish},
     {"finishing", Operation::kTurningFinish},
     {"drilling", Operation::kDrilling},
     {"drill", Operation::kDrilling},
     {"reaming", Operation::kReaming},
     {"ream", Operation::kReaming},
     {"tapping", Operation::kTapping},
     {"tap", Operation::kTapping},
     {"milling", Operation::kMilling},
     {"mill", Operation::kMilling},
     {"boring", Operation::kBoring},
     {"bore", Operation::kBoring},
     {"parting", Operation::kParting},
     {"parting off", Operation::kParting}}};

constexpr std::array<std::pair<std::string_view, ToolMaterial>, 5> kTools{
    {{"hss", ToolMaterial::kHighSpeedSteel},
     {"high-speed steel", ToolMaterial::kHighSpeedSteel},
     {"high speed steel", ToolMaterial::kHighSpeedSteel},
     {"carbide", ToolMaterial::kCarbide},
     {"cemented carbide", ToolMaterial::kCarbide}}};

template <class Words>
auto found_word(const Words& words, std::string_view text, std::string_view subject)
    -> base::Result<std::remove_cvref_t<decltype(words.front().second)>> {
  const std::string typed = folded(text);
  const auto* found =
      std::find_if(words.begin(), words.end(), [&](const auto& one) { return one.first == typed; });
  if (found != words.end()) return found->second;
  return unknown(text, subject, names_of(words, [](const auto& one) { return std::string(one.first); }));
}

}  // namespace

base::Result<Operation> find_operation(std::string_view text) {
  return found_word(kOperations, text, "operation");
}

base::Result<ToolMaterial> find_tool_material(std::string_view text) {
  return found_word(kTools, text, "tool material");
}

base::Result<SpeedAnswer> speed_answer(std::string_view material, Operation operation, ToolMaterial tool) {
  auto found = find_material(material);
  if (!found) return tl::unexpected(found.error());
  auto speed = cutting_speed(work_of(found->material), operation, tool);
  if (!speed) return tl::unexpected(speed.error());
  return SpeedAnswer{found->material, std::move(found->assumed), operation, tool,
                     figures_of(std::move(speed->printed))};
}

}  // namespace sparewright::handbook
