#include "core/base/words.hpp"

#include <algorithm>
#include <array>

namespace sparewright::base {
namespace {

struct Pair {
  std::string_view american;
  std::string_view british;
};

// Common practice: the words of the two trades.
constexpr std::array kPairs{
    Pair{"vise", "vice"},
    Pair{"bushing", "bush"},
    Pair{"compound", "top slide"},
    Pair{"carriage", "saddle"},
    Pair{"drill press", "pillar drill"},
    Pair{"bolt circle", "PCD"},
    Pair{"set screw", "grub screw"},
    Pair{"wrench", "spanner"},
    Pair{"center", "centre"},
    Pair{"gage", "gauge"},
    Pair{"gray", "grey"},
    Pair{"aluminum", "aluminium"},
};

}  // namespace

std::string worded(std::string_view text, Dialect dialect) {
  std::string out;
  while (!text.empty()) {
    const auto open = text.find('[');
    const auto close = open == std::string_view::npos ? open : text.find(']', open);
    if (close == std::string_view::npos) break;
    const std::string_view word = text.substr(open + 1, close - open - 1);
    const auto* pair =
        std::find_if(kPairs.begin(), kPairs.end(), [&](const Pair& p) { return p.american == word; });
    out += text.substr(0, open);
    if (pair == kPairs.end()) {
      out += text.substr(open, close - open + 1);
    } else {
      out += dialect == Dialect::kAmerican ? pair->american : pair->british;
    }
    text.remove_prefix(close + 1);
  }
  return out += text;
}

}  // namespace sparewright::base
