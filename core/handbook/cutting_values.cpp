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

// Takes the longest of the words that stands in the text out of it.
template <class Words>
auto taken_out(std::string& text, const Words& words)
    -> std::optional<std::remove_cvref_t<decltype(words.front().second)>> {
  const std::string padded = " " + text + " ";
  const auto stands = [&](std::string_view word) { return padded.find(" " + std::string(word) + " "); };
  auto best = words.end();
  for (auto one = words.begin(); one != words.end(); ++one) {
    const bool longer = best == words.end() || one->first.size() > best->first.size();
    if (longer && stands(one->first) != std::string::npos) best = one;
  }
  if (best == words.end()) return std::nullopt;
  const std::size_t at = stands(best->first);
  text = folded(padded.substr(0, at) + " " + padded.substr(at + best->first.size() + 1));
  return best->second;
}

}  // namespace

CuttingWords cutting_words(std::string_view text) {
  CuttingWords words{folded(text), std::nullopt, std::nullopt};
  words.tool = taken_out(words.rest, kTools);
  words.operation = taken_out(words.rest, kOperations);
  return words;
}

std::string operation_words() {
  std::string all;
  for (const auto& one : kOperations)
    all += (all.empty() ? "" : ", ") + std::string(one.first);
  return all;
}

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
