// What can be asked. `handbook` questions look a thing up; `quick` questions work out one job of the bench.
#pragma once

#include <span>

#include "core/answers/question.hpp"

namespace sparewright::answers {

[[nodiscard]] std::span<const Subject> handbook_subjects();
[[nodiscard]] std::span<const Subject> quick_subjects();

// --- one function a subject; each fails with what its words or entries cannot be.

// Words: a drill (#7, letter F, 27/64, 6.8 mm). Its size, what it really cuts, its neighbours, the taps it suits.
[[nodiscard]] base::Result<Answer> drill(const Question& question);

// Words: material, operation and tool in any order (1018 turning hss). Entries: diameter, on.
[[nodiscard]] base::Result<Answer> speed(const Question& question);

}  // namespace sparewright::answers
