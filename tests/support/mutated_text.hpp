// Texts that are nearly right, for parsers that must not be surprised: one of a corpus with a few edits.
#pragma once

#include <random>
#include <string>

namespace sparewright::tests {

// corpus and pieces: not empty, of what a std::string can be made of. The same random numbers give the same text.
template <class Corpus, class Pieces>
std::string mutated_text(std::mt19937& random, const Corpus& corpus, const Pieces& pieces) {
  const auto below = [&](std::size_t n) { return static_cast<std::size_t>(random() % n); };
  const auto one_of = [&](const auto& all) { return std::string(all[below(all.size())]); };
  std::string text = one_of(corpus);
  for (std::size_t edits = below(4); edits > 0; --edits) {
    const std::size_t at = below(text.size() + 1);
    switch (below(5)) {
      case 0:
        text.insert(at, one_of(pieces));
        break;
      case 1:
        if (at < text.size()) text.erase(at, 1 + below(3));
        break;
      case 2:
        if (at < text.size()) text[at] = static_cast<char>(random() % 256);
        break;
      case 3:
        text.replace(at, below(text.size() - at + 1), one_of(corpus));
        break;
      default:
        text += one_of(corpus);
    }
  }
  return text;
}

}  // namespace sparewright::tests
