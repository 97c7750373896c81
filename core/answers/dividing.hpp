// The questions of dividing heads, change gears and old gears. Used inside this room only.
#pragma once

#include <vector>

#include "core/answers/question.hpp"
#include "core/handbook/compound_indexing.hpp"

namespace sparewright::answers {

// Words: a number of divisions (57) or an angle (22.5 deg). Plain indexing; where that is not
// exact, differential and compound indexing, and the nearest plain setting.
[[nodiscard]] base::Result<Answer> index(const Question& question);

// Entry: divisions. One circle of the plates; where none is exact, two of one plate, and what is left over.
[[nodiscard]] base::Result<Answer> divide(const Question& question);

// The head --on names, or --worm with --circles or --plates; what was not given goes into `assumed`.
[[nodiscard]] base::Result<handbook::DividingHead> head_of(const Question& question,
                                                           std::vector<std::string>& assumed);
[[nodiscard]] std::vector<Entry> indexing_head_entries();

// "5 turns and 15 holes on 21"; "5 turns" where no hole is counted.
[[nodiscard]] std::string crank_words(int turns, int holes, int circle);
// "9 holes on 21 forward, then 3 holes on 33 back"
[[nodiscard]] std::string move_words(const handbook::CompoundIndexing& move);

// Words: a pitch or a thread (1.25 mm, 11 tpi, M10x1.5). The trains that cut it, how far off they are, and how the best
// goes on the banjo where that is known.
[[nodiscard]] base::Result<Answer> change_gears(const Question& question);
[[nodiscard]] std::vector<Entry> change_gear_entries();

// Entries: teeth and what an old spur gear still measures. The standard pitches and forms it may have been.
[[nodiscard]] base::Result<Answer> old_gear(const Question& question);

}  // namespace sparewright::answers
