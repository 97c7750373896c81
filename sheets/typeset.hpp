// Sizes in a line of text, set as a printer would.
#pragma once

#include <string>
#include <string_view>

namespace sparewright::sheets {

// 1-3/8         -> 1, a thin space, 3, fraction slash (U+2044), 8; also before a thread's pitch: 3/8-16. The denominator
//                  is 2, 4, 8, 16, 32 or 64 and the fraction is reduced and below 1; no letter, figure or sign touches it.
// 0.625-0.627   -> an en dash (U+2013) between two decimals: a range.
// 3/4 x 1/8     -> a multiplication sign (U+00D7) between two figures, where spaces are round the x.
// 1.000 ±0.004  -> a no-break space (U+00A0) before the sign.
// -6t - 50      -> minus signs (U+2212), which are not overlooked: before a figure at the start or after a space or a
//                  bracket, and in a collar reading.
// Everything else stays as it is. `text` is valid UTF-8.
[[nodiscard]] std::string typeset(std::string_view text);

}  // namespace sparewright::sheets
