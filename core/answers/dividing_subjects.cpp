#include "core/answers/blocks.hpp"
#include "core/answers/dividing.hpp"
#include "core/answers/groups.hpp"

namespace sparewright::answers {

std::vector<Subject> dividing_subjects() {
  return {
      {"index", "turns and holes of a dividing head, plain, differential or compound",
       "a number of divisions or an angle: 57, 22.5 deg", "57", indexing_head_entries(), index},
      {"gears", "change gears of a lathe for a pitch, exact or nearest",
       "a pitch or a thread: 1.25 mm, 11 tpi, M10x1.5",
       "\"1.25 mm\" --screw \"8 tpi\" --gears 20,24,30,40,50,60,80,127", change_gear_entries(), change_gears},
      {"stack",
       "the fewest gauge blocks for a length",
       "a length with its unit: 1.3717 in, 34.567 mm",
       "\"1.3717 in\"",
       {{"set", "SET", "81-piece inch, 87-, 88-, 112- or 56-piece metric"},
        {"wear", "SIZE", "of the two wear blocks at the ends"}},
       stack},
      {"sine",
       "the stack under a sine bar for an angle",
       "an angle: 14.5 deg, 30 deg",
       "\"14.5 deg\" --length \"5 in\"",
       {{"length", "SIZE", "of the bar, from centre to centre of its rolls", true},
        {"set", "SET", "the gauge blocks, as for stack"},
        {"wear", "SIZE", "of the two wear blocks at the ends"}},
       sine_bar},
      {"gear",
       "what an old spur gear was, from what it still measures",
       "",
       "--teeth 32 --outside \"4.250 in\"",
       {{"teeth", "COUNT", "of the gear", true},
        {"outside", "SIZE", "outside diameter"},
        {"mate-teeth", "COUNT", "of the gear it runs with"},
        {"centres", "SIZE", "from axis to axis of the two"},
        {"depth", "SIZE", "whole depth of the teeth"},
        {"span", "SIZE", "over several teeth, anvils on the flanks"},
        {"span-more", "SIZE", "over one tooth more"}},
       old_gear},
  };
}

}  // namespace sparewright::answers
