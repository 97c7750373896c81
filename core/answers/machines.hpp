// The questions of bearings, tapers and threads over wires. Used inside this room only.
#pragma once

#include "core/answers/question.hpp"

namespace sparewright::answers {

// Words: a bearing ("6204"); entries turning and load. Its size, the limits of its rings, every seat in print.
[[nodiscard]] base::Result<Answer> bearing(const Question& question);

// Words: a taper ("MT2"); entries roller and blocks. Its ends, its angle, what a plug measures over rollers.
[[nodiscard]] base::Result<Answer> taper(const Question& question);

// Words: a thread ("1/2-13 UNC-2A"; of a class of a hole it is between balls); entries wire and measured.
[[nodiscard]] base::Result<Answer> wires(const Question& question);

}  // namespace sparewright::answers
