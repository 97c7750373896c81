// The checks: each asks figures and says OK, CLOSE, NO or NOT KNOWN with a margin, a reason and what to do. One small
// file a family:
//
//   bite.cpp        whether a feature cuts metal at all
//   measuring.cpp   whether the instrument named for a size can prove it
//   thread_size.cpp what is turned for an outside thread, against its limits
//   split.cpp       a split leaves metal on both sides
//   bush.cpp        a bush in its hole: whether it stays there
//   fit.cpp         a hole against the mate as measured: tight end, loose end, and at the aim with these instruments
//   screw_head.cpp  a screw's head on its face: seats wholly, stands proud or below
//   wall.cpp        least metal from each hole to the outside and to every other cut
//   form_wall.cpp   the same for slots, pockets, keyseats, grooves and the like, at nominal size
//   state_wall.cpp  the same for states of the work before the finished one
//   edge_distance.cpp  a hole for a screw or a pin: from its middle to the nearest free edge
//   drill_start.cpp    a drill starts square: not on a slope, a round side or over an edge
//   drill_meets.cpp    a drill runs into a hole that is there before it
//   blind_end.cpp      a blind hole comes out in a slot or a pocket
//   shoulder.cpp    the fillet in a turned shoulder against the corner of what is pushed up to it
//   space.cpp       the room for the part on its machine, and what it has to pass through
//   hand.cpp        whether the part has a hand, and what turning it over does
//   drill_room.cpp  the deepest drill against parallels and table; a blind hole's point against the far side
//   clean_up.cpp    whether the blank has the metal that each flat takes
//   share_out.cpp   a casting: every machined surface cleans up, and the sharing that leaves most
//   holding.cpp     grip, opening of the jaws, cutter above the jaws
//   build_up.cpp    a located place, a width and a depth as the collar readings make them, against their tolerance
//   tooling.cpp     a tool for every feature, a speed for every tool
//   tool_size.cpp   drill, reamer, tap, counterbore and boring bar against the hole they are named for
//   mill_cutter.cpp cutters, saws and points against slots, pockets, keyseats, edges, seats and pin holes
//   tool_reach.cpp  how deep each tool used at one place goes, against its reach
//   right_across.cpp what is milled from air to air, against the travel of the slide
//   bar_in_vise.cpp round work in a mill's vise: gripped past its middle, a keyseat over its middle
//   reach.cpp       whether the spindle reaches a feature as the work is held, the slides go that far, and every feature is
//                   made
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/judge/space.hpp"
#include "core/ledger/ledger.hpp"
#include "core/part/part.hpp"
#include "core/route/route.hpp"

namespace sparewright::judge {

// What is judged. The route holds the part.
struct Subject {
  route::Route route;
  std::optional<quantity::Typed> least_wall;  // the job's own limit; none: the usual one
  std::string hand;               // which of a part and its mirror image it is, as written; may be empty
  std::optional<bool> turn_over;  // whether it may be fitted the other way round, where the job says so
  Space space;
};

[[nodiscard]] std::vector<ledger::Stage> stages(const Subject& subject);

}  // namespace sparewright::judge
