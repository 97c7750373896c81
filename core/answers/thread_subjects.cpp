#include "core/answers/groups.hpp"
#include "core/answers/threads.hpp"

namespace sparewright::answers {

std::vector<Subject> thread_subjects() {
  return {
      {"thread",
       "limits of screw and hole, tap drill, stress area",
       "a thread: 3/8-16 UNC-2A, M8x1, 1/2-14 NPT, Tr 20x4, 2 BA",
       "\"3/8-16 UNC-2A\"",
       {},
       thread},
      {"tap", "the drill for a tap, by per cent of thread", "a thread: M8x1, 1/4-20", "\"M8x1\" --percent 70",
       tap_entries(), tap},
      {"identify",
       "the thread a screw has, from what was measured on it",
       "",
       "--major \"9.52 mm\" --pitch \"16 tpi\"",
       {{"major", "SIZE", "diameter over the crests", true},
        {"pitch", "PITCH", "16 tpi, or the length from crest to crest: 1.25 mm", true},
        {"flanks", "ANGLE", "between the flanks, by a gauge: 60 deg, 55 deg"},
        {"over", "COUNT", "how many threads the pitch was measured over, 1 to 100; 10 where it is left out"},
        {"taper", "WORD", "straight or tapered, by a straightedge along the crests"},
        {"crests", "WORD", "flat or rounded, where that can be seen"},
        {"good-to", "SIZE", "how far off the diameter may be; 0.05 mm where it is left out"}},
       identify},
  };
}

}  // namespace sparewright::answers
