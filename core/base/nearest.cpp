#include "core/base/nearest.hpp"

#include <algorithm>

namespace sparewright::base {

std::size_t edit_distance(std::string_view a, std::string_view b) {
  const std::size_t width = b.size() + 1;
  std::vector<std::size_t> before(width);
  std::vector<std::size_t> last(width);
  std::vector<std::size_t> row(width);
  for (std::size_t j = 0; j < width; ++j)
    last[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = i;
    for (std::size_t j = 1; j < width; ++j) {
      const std::size_t change = a[i - 1] == b[j - 1] ? 0 : 1;
      row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + change});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        row[j] = std::min(row[j], before[j - 2] + 1);
    }
    before.swap(last);
    last.swap(row);
  }
  return last[b.size()];
}

std::string nearest(std::string_view word, std::span<const std::string> known) {
  constexpr std::size_t kLongestCompared = 64;
  if (word.empty() || word.size() > kLongestCompared) return {};
  const std::size_t allowed = std::max<std::size_t>(word.size() >= 4 ? 2 : 1, word.size() / 3);
  std::string best;
  std::size_t best_distance = allowed + 1;
  for (const std::string& candidate : known) {
    if (candidate.size() > kLongestCompared) continue;
    // Each edit makes a word longer or shorter by one letter at most.
    const auto [shorter, longer] = std::minmax({word.size(), candidate.size()});
    if (longer - shorter >= best_distance) continue;
    const std::size_t distance = edit_distance(word, candidate);
    if (distance < best_distance) {
      best_distance = distance;
      best = candidate;
    }
  }
  return best;
}

std::string known_words(std::string_view word, std::span<const std::string> known) {
  constexpr std::size_t kMostListed = 24;
  std::string out;
  for (std::size_t i = 0; i < known.size() && i < kMostListed; ++i) {
    if (i > 0) out += ", ";
    out += known[i];
  }
  if (known.size() > kMostListed) out += ", ...";
  if (const std::string near = nearest(word, known); !near.empty()) out += " (did you mean '" + near + "'?)";
  return out;
}

}  // namespace sparewright::base
