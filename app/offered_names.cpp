#include "app/offered_names.hpp"

#include <algorithm>
#include <vector>

#include <fmt/format.h>

#include "core/base/nearest.hpp"

namespace sparewright::app {
namespace {

constexpr std::size_t kMostOffered = 3;
constexpr const char* kAllNames = "the names that `numbers` lists";

}  // namespace

std::string offered_names(std::string_view typed, std::span<const std::string> known) {
  const std::string tail = fmt::format("/{}", typed);
  std::vector<std::string_view> ending;
  for (const std::string& name : known) {
    if (!typed.empty() && name.ends_with(tail)) ending.push_back(name);
  }
  const std::string measured = "survey" + tail;
  std::stable_sort(ending.begin(), ending.end(), [&](std::string_view a, std::string_view b) {
    if ((a == measured) != (b == measured)) return a == measured;
    return a.size() < b.size();
  });
  if (ending.empty()) {
    const std::string near = base::nearest(typed, known);
    return near.empty() ? kAllNames : fmt::format("did you mean '{}'?", near);
  }
  const std::size_t count = std::min(ending.size(), kMostOffered);
  std::string words = "did you mean ";
  for (std::size_t i = 0; i < count; ++i)
    words += fmt::format("{}'{}'", i == 0 ? "" : i + 1 < count ? ", " : " or ", ending[i]);
  words += "?";
  if (ending.size() > count) words += fmt::format(" {} more end so: {}", ending.size() - count, kAllNames);
  return words;
}

}  // namespace sparewright::app
