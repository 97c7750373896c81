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

char lower(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}
char upper(char c) {
  return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
}

bool same_but_for_case(std::string_view a, std::string_view b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](char x, char y) { return lower(x) == lower(y); });
}

// The word as `like` is written: small, with a capital, or in capitals.
std::string cased(std::string_view word, std::string_view like) {
  std::string out(word);
  const auto is_capital = [](char c) { return c >= 'A' && c <= 'Z'; };
  if (like.empty() || !is_capital(like.front())) return out;
  const bool all = like.size() > 1 && is_capital(like[1]);
  for (std::size_t i = 0; i < (all ? out.size() : 1U); ++i)
    out[i] = upper(out[i]);
  return out;
}

}  // namespace

std::string worded(std::string_view text, Dialect dialect) {
  std::string out;
  while (!text.empty()) {
    const auto open = text.find('[');
    const auto close = open == std::string_view::npos ? open : text.find(']', open);
    if (close == std::string_view::npos) break;
    const std::string_view word = text.substr(open + 1, close - open - 1);
    const auto* pair = std::find_if(kPairs.begin(), kPairs.end(),
                                    [&](const Pair& p) { return same_but_for_case(p.american, word); });
    out += text.substr(0, open);
    if (pair == kPairs.end()) {
      out += text.substr(open, close - open + 1);
    } else {
      out += cased(dialect == Dialect::kAmerican ? pair->american : pair->british, word);
    }
    text.remove_prefix(close + 1);
  }
  return out += text;
}

}  // namespace sparewright::base
