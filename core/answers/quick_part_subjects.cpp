#include "core/answers/dividing.hpp"
#include "core/answers/groups.hpp"
#include "core/answers/quick.hpp"
#include "core/answers/threads.hpp"

namespace sparewright::answers {

namespace {

std::vector<Entry> divide_entries() {
  std::vector<Entry> entries{{"divisions", "COUNT", "equal spaces round the work", true}};
  for (const Entry& entry : indexing_head_entries())
    entries.push_back(entry);
  return entries;
}

}  // namespace

std::vector<Subject> quick_part_subjects() {
  return {
      {"bush",
       "a bush for a hole and a shaft as measured: outside, bore, wall, what pressing does",
       "",
       "--hole \"1.2512 in\" --shaft \"0.9985 in\" --length \"1.5 in\"",
       {{"hole", "SIZE", "as measured", true},
        {"shaft", "SIZE", "as measured", true},
        {"how", "HOW", "pressed or slip; pressed where left out"},
        {"length", "SIZE", "of the bush: gives the force too"},
        {"material", "MATERIAL", "of the bush; bronze C932 where left out"},
        {"seat", "FIT", "in the hole, instead of FN1 or H7/s6 (LC2, H7/h6 to slip)"},
        {"run", "FIT", "on the shaft, instead of RC4 or H8/f7"},
        {"good-to", "SIZE", "how far off the measurements may be"}},
       bush},
      {"tap", "the drill for a tap, of those you have", "a thread: 1/4-20 UNC, M8x1",
       "\"1/4-20 UNC\" --blind \"3/4 in\" --tap bottoming", tap_entries(), tap},
      {"keyseat",
       "how deep a keyseat is cut, from the crest and over the back",
       "",
       "--shaft \"1 in\" --width \"1/4 in\" --height \"1/4 in\"",
       {{"shaft", "SIZE", "as measured, with its unit", true},
        {"width", "SIZE", "of the key; left out: the standard key of the shaft"},
        {"height", "SIZE", "of the key"},
        {"woodruff", "NUMBER", "a Woodruff key instead: 606"},
        {"on", "MACHINE", "a machine of the shop text: what its z collar shows"}},
       keyseat},
      {"sink",
       "how deep to countersink for a diameter, or for a flat head screw",
       "",
       "--diameter \"0.531 in\" --hole \"0.281 in\" --angle \"82 deg\"",
       {{"diameter", "SIZE", "across at the surface"},
        {"hole", "SIZE", "that is there; left out: none"},
        {"angle", "ANGLE", "included: 82 deg, 90 deg"},
        {"screw", "SIZE", "a flat head socket screw instead: 1/4, M6"},
        {"on", "MACHINE", "a machine of the shop text: what its z collar shows"}},
       sink},
      {"pitch", "change gears of your box for a pitch, and how far off they are",
       "a pitch or a thread: 13 tpi, 1.5 mm, M10x1.5",
       "\"1.5 mm\" --screw \"8 tpi\" --gears 20,30,40,45,50,60,63,80", change_gear_entries(), change_gears},
      {"divide", "an indexing on your plates", "", "--divisions 7 --circles 15,16,17,18,19,20,21",
       divide_entries(), divide},
  };
}

}  // namespace sparewright::answers
