// The known word nearest to a mistyped one.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sparewright::base {

// Fewest insertions, deletions, substitutions and swaps of neighbours that turn one word into the other
// (optimal string alignment distance; Damerau 1964, Levenshtein 1966), counted in bytes.
[[nodiscard]] std::size_t edit_distance(std::string_view a, std::string_view b);

// The nearest of known to word, or empty where none is within a third of its length (at least 1 slip, 2 from
// four letters on). Of two equally near, the one that stands first.
[[nodiscard]] std::string nearest(std::string_view word, std::span<const std::string> known);

// "diameter, at, depth (did you mean 'diameter'?)": for the accepted line of a message. Long lists are
// shortened.
[[nodiscard]] std::string known_words(std::string_view word, std::span<const std::string> known);

}  // namespace sparewright::base
