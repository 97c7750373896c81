// The stock a part is made from, in words.
#pragma once

#include <string>

#include "core/part/blank.hpp"
#include "core/route/printing.hpp"

namespace sparewright::route {

// "flat bar 3/4 x 2": without its length. A casting and a block are given by all three sizes.
[[nodiscard]] std::string section_words(const part::Blank& blank);

// "flat bar 3/4 x 2 x 4-1/4, found 0.748 x 1.998 x 4.252"; bars: "round bar 1-1/4 dia, 6 long".
[[nodiscard]] std::string blank_words(const part::Blank& blank, const Printing& print);

// "0.748 x 1.998 x 4.252"; empty where nothing was measured.
[[nodiscard]] std::string found_words(const part::Blank& blank, const Printing& print);

}  // namespace sparewright::route
