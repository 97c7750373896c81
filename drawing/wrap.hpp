// A text broken into lines.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "drawing/text.hpp"

namespace sparewright::drawing {

// Lines no wider than width_mm, broken at spaces (a run of spaces counts as one; a no-break space, U+00A0, is none) and
// after an en dash (U+2013) or a hyphen between letters. A word wider than that is broken between characters, never before a combining mark (U+0300 to U+036F); one character
// alone may stand over the width. No text gives no lines. `text` is valid UTF-8.
[[nodiscard]] std::vector<std::string> wrap(const Ruler& ruler, std::string_view text, const TextStyle& style,
                                            double width_mm);

// The same number of lines, as even as they can be: "hole 1 to", "hole 2" and not "hole 1 to hole", "2".
[[nodiscard]] std::vector<std::string> wrap_even(const Ruler& ruler, std::string_view text,
                                                 const TextStyle& style, double width_mm);

// The widest piece that is not broken unless it must be.
[[nodiscard]] double longest_word(const Ruler& ruler, std::string_view text, const TextStyle& style);

// The widest of the lines, 0 for none.
[[nodiscard]] double widest(const Ruler& ruler, const std::vector<std::string>& lines,
                            const TextStyle& style);

}  // namespace sparewright::drawing
