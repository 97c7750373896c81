// Sizes that are named instead of measured, known by their form; the handbook knows what they mean.
#pragma once

#include <cstddef>
#include <string_view>

namespace sparewright::quantity {

// #7 or letter F, the letter a capital; blanks around are allowed.
[[nodiscard]] bool is_drill(std::string_view text);

// How many bytes of the start of text read like a thread: 3/8-16, 1-8, 1-3/8-6, #10-24, M8, M8x1.25. 0 where
// none. A decimal size (.250-28) is left out: it may as well be two limits.
[[nodiscard]] std::size_t thread_at(std::string_view text);

// H7, g6, js5, ZC11: a fundamental deviation and a grade of ISO 286-1:2010 (letters A to ZC without I, L, O,
// Q, W, all capitals for a hole or all small for a shaft; grades 01, 0 and 1 to 18). RC4, LC2, LT3, LN1, FN2:
// a class of ANSI B4.1 (RC 1-9, LC 1-11, LT 1-6, LN 1-3, FN 1-5). Both from memory of the standards.
[[nodiscard]] bool is_fit_class(std::string_view text);

}  // namespace sparewright::quantity
