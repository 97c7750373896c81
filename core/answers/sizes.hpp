// The questions of sizes. Used inside this room only.
#pragma once

#include "core/answers/question.hpp"

namespace sparewright::answers {

// Words: a drill (#7, letter F, 27/64, 6.8 mm). Its size, what it really cuts, its neighbours, the taps it suits.
[[nodiscard]] base::Result<Answer> drill(const Question& question);

// Words: a size and a fit ("25 mm H7/g6", "1.0000 in RC4"), or one side of it ("25 mm H7").
[[nodiscard]] base::Result<Answer> fit(const Question& question);

// Words: a size (1-27/32 in, 46.83 mm, #7) in every way a shop may want it.
[[nodiscard]] base::Result<Answer> convert(const Question& question);

// Words: a measured size; entry good-to. The nearest standard size of every series.
[[nodiscard]] base::Result<Answer> near_size(const Question& question);

}  // namespace sparewright::answers
