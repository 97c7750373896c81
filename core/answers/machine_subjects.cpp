#include "core/answers/groups.hpp"
#include "core/answers/machines.hpp"

namespace sparewright::answers {

std::vector<Subject> machine_subjects() {
  return {
      {"bearing",
       "a ball bearing: its size, the limits of its rings, the seats sources print",
       "its number: 6204, 608ZZ, 6204-2RS",
       "6204",
       {{"turning", "RING", "the ring that turns against the load: inner, outer, either"},
        {"load", "LOAD", "light, normal or heavy, against the rating of the bearing"}},
       bearing},
      {"taper",
       "a standard taper: its ends, its angle, what a plug measures over rollers",
       "a taper: MT2, JT33, B&S 9, R8",
       "MT2 --roller \"1/4 in\" --blocks \"1 in\"",
       {{"roller", "SIZE", "diameter of two equal rollers"},
        {"blocks", "SIZE", "of equal blocks under both rollers, the second time"}},
       taper},
      {"wires",
       "a screw over three wires, or a hole between balls, and back to the pitch diameter",
       "a thread: 1/2-13 UNC-2A, M8x1, 1-5 ACME; of a hole with its class: 1-8 UNC-2B",
       "\"1/2-13 UNC-2A\"",
       {{"wire", "SIZE", "diameter of the wires or balls at hand"},
        {"measured", "SIZE", "what the micrometer shows: gives the pitch diameter"}},
       wires},
  };
}

}  // namespace sparewright::answers
