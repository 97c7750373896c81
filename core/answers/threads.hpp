// The questions of threads. Used inside this room only.
#pragma once

#include <vector>

#include "core/answers/question.hpp"

namespace sparewright::answers {

// Words: any thread (3/8-16 UNC-2A, M8x1, 1/2-14 NPT, Tr 20x4, 2 BA). Limits of screw and hole, drill, stress area.
[[nodiscard]] base::Result<Answer> thread(const Question& question);

// Words: a thread. The hole and the drills for it, those of the shop first where there is one; how deep a blind hole is
// drilled.
[[nodiscard]] base::Result<Answer> tap(const Question& question);
[[nodiscard]] std::vector<Entry> tap_entries();

// Entries: major, pitch. The threads it may be.
[[nodiscard]] base::Result<Answer> identify(const Question& question);

}  // namespace sparewright::answers
