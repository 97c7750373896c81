// What can be asked. `handbook` questions look a thing up; `quick` questions work out one job of the bench.
#pragma once

#include <span>

#include "core/answers/question.hpp"

namespace sparewright::answers {

[[nodiscard]] std::span<const Subject> handbook_subjects();
[[nodiscard]] std::span<const Subject> quick_subjects();

// Asks the subject of that name. Fails with kNameUnknown, naming the nearest, and as the subject does.
[[nodiscard]] base::Result<Answer> ask(std::span<const Subject> subjects, std::string_view name,
                                       const Question& question);

}  // namespace sparewright::answers
