// The questions of gauge blocks and the sine bar. Used inside this room only.
#pragma once

#include "core/answers/question.hpp"

namespace sparewright::answers {

// Words: a length (1.3717 in); entries set and wear. The stacks with the fewest blocks.
[[nodiscard]] base::Result<Answer> stack(const Question& question);

// Words: an angle (14.5 deg); entries length, of the bar, set and wear. The stack, and where the bar then stands.
[[nodiscard]] base::Result<Answer> sine_bar(const Question& question);

}  // namespace sparewright::answers
