#include "core/answers/fasteners.hpp"
#include "core/answers/groups.hpp"

namespace sparewright::answers {

std::vector<Subject> fastener_subjects() {
  return {
      {"screw",
       "a screw, the holes it wants, its strength and its torque",
       "a thread or size and a head: 5/16-18 socket head, M8 button head, 1/2-13 hex, #10 set screw",
       "\"5/16-18 socket head\"",
       {{"grade", "GRADE", "grade or class: 5, 8, A574, 8.8, 12.9, A2-70; gives strength and torque"}},
       screw},
      {"key",
       "keyseats of a shaft, parallel and Woodruff, from the crest and over the back",
       "a shaft with its unit: 30 mm, 1-1/4 in",
       "\"30 mm\"",
       {{"woodruff", "NUMBER", "all of one Woodruff keyseat: 606"}},
       key},
      {"ring",
       "the groove of a retaining ring",
       "a shaft or bore: 25 mm shaft, 1 in bore",
       "\"25 mm shaft\"",
       {},
       ring},
      {"oring",
       "the gland of an O-ring for each duty",
       "a dash number or a section: 214, 0.139 in",
       "214",
       {},
       o_ring},
      {"pin",
       "taper pins, dowels and spring pins, and their holes",
       "the kind and the size: taper pin 4, dowel 1/4 in, spring pin 6 mm",
       "\"taper pin 4\" --length \"1-1/2 in\"",
       {{"length", "SIZE", "of a taper pin: gives its small end"}},
       pin},
  };
}

}  // namespace sparewright::answers
