// A piece of a formula for a message.
#pragma once

#include <string>
#include <string_view>

#include "core/base/place.hpp"

namespace sparewright::formula {

// The bytes of the span, on one line and short: line ends and tabs become blanks, and of a long piece the
// start is shown, followed by "...".
[[nodiscard]] inline std::string excerpt(std::string_view typed, base::Span span) {
  constexpr std::size_t kLongest = 60;
  const std::string_view piece = typed.substr(span.offset, span.length);
  std::string out;
  for (const char c : piece.substr(0, kLongest))
    out += static_cast<unsigned char>(c) < 0x20U ? ' ' : c;
  if (piece.size() <= kLongest) return out;
  const auto continues = [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; };
  if (continues(piece[kLongest])) {
    while (continues(out.back()))
      out.pop_back();
    out.pop_back();
  }
  return out + "...";
}

}  // namespace sparewright::formula
