// The questions of dividing heads, change gears and old gears. Used inside this room only.
#pragma once

#include "core/answers/question.hpp"

namespace sparewright::answers {

// Words: a number of divisions (57) or an angle (22.5 deg); entries worm and plates. Plain indexing; where that is not
// exact, differential and compound indexing, and the nearest plain setting.
[[nodiscard]] base::Result<Answer> index(const Question& question);

// Words: a pitch (1.25 mm, 11 tpi); entries screw, box, gears, on. The trains that cut it, and how far off.
[[nodiscard]] base::Result<Answer> change_gears(const Question& question);

// Entries: teeth and what an old spur gear still measures. The standard pitches and forms it may have been.
[[nodiscard]] base::Result<Answer> old_gear(const Question& question);

// As count_entry, or `otherwise` where the entry is not there.
[[nodiscard]] base::Result<int> count_or(const Question& question, std::string_view name, int least, int most,
                                         int otherwise);

}  // namespace sparewright::answers
