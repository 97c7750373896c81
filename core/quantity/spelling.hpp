// Blanks, signs and dashes as people and their programs write them. A text copied from a printed page holds
// no-break spaces and a minus or dash that is not the key on the keyboard; to the eye they are the same.
#pragma once

#include <cstddef>
#include <string_view>

#include "core/base/place.hpp"

namespace sparewright::quantity {

// How many bytes at the start of text are blanks: space, tab, line ends, U+00A0, U+2009, U+202F.
[[nodiscard]] std::size_t blanks_at(std::string_view text);

// Without the blanks around it. The answer always lies within text, also when it is empty.
[[nodiscard]] std::string_view trimmed(std::string_view text);

// How many bytes the minus or dash at the start of text takes: the key, U+2212, and the hyphens
// and dash U+2010, U+2011, U+2013. 0 where there is none.
[[nodiscard]] std::size_t minus_at(std::string_view text);

// The same for a plus or a minus.
[[nodiscard]] std::size_t sign_at(std::string_view text);

// The same for plus-or-minus: ±, +/-, +-.
[[nodiscard]] std::size_t plus_minus_at(std::string_view text);

[[nodiscard]] constexpr bool is_digit(char c) {
  return c >= '0' && c <= '9';
}
[[nodiscard]] constexpr bool is_upper(char c) {
  return c >= 'A' && c <= 'Z';
}
[[nodiscard]] constexpr bool is_lower(char c) {
  return c >= 'a' && c <= 'z';
}
[[nodiscard]] constexpr bool is_letter(char c) {
  return is_upper(c) || is_lower(c);
}

// Where part, a piece of whole, stands in it.
[[nodiscard]] base::Span span_of(std::string_view whole, std::string_view part);

}  // namespace sparewright::quantity
