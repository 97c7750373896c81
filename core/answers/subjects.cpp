#include "core/answers/subjects.hpp"

#include <array>

namespace sparewright::answers {

std::span<const Subject> handbook_subjects() {
  static const std::array all{
      Subject{"drill",
              "the size of a drill, what it really cuts, its neighbours, the taps it suits",
              "a drill: #7, letter F, 27/64, 6.8 mm",
              "\"#7\"",
              {},
              drill},
      Subject{
          "speed",
          "cutting speed as every source prints it, spindle speed and feed",
          "material, operation and tool: 1018 turning hss",
          "\"1018 turning hss\" --diameter \"1.5 in\"",
          {{"diameter", "SIZE", "of the work in a lathe, of the cutter elsewhere: gives the spindle speed"},
           {"on", "MACHINE", "a machine of the shop text: the speed it has"}},
          speed},
  };
  return all;
}

std::span<const Subject> quick_subjects() {
  return {};
}

}  // namespace sparewright::answers
