// The checks: each asks figures and says OK, CLOSE, NO or NOT KNOWN with a margin, a reason and what to do. One small
// file a family:
//
//   bite.cpp        whether a feature cuts metal at all
//   measuring.cpp   whether the instrument named for a size can touch and prove it
//   thread_size.cpp what is turned for an outside thread, against its limits
//   split.cpp       a split leaves metal on both sides
//   bush.cpp        a bush in its hole: whether it stays there
//   fit.cpp         a hole against the mate as measured: tight end, loose end, and at the aim with these instruments
//   screw_head.cpp  a screw's head on its face: seats wholly, stands proud or below
//   screw_engagement.cpp  thread of a screw in this part: against stripping, of use, its point and its shank
//   screw_tension.cpp     the preload its torque leaves, against its proof load
//   screw_float.cpp       what its hole lets it move, against how far holes are out of place
//   key_room.cpp          whether a bent key can be turned in its head
//   clamp.cpp       a slit and its screw: what closing takes off the bore, before the screw bottoms, the hinge, the pull
//   press.cpp       a pressed bush: pressure, stress and how much its bore closes
//   seats           bearing_seat.cpp, key_seat.cpp, ring_seat.cpp, o_ring_seat.cpp: what sits on the part
//   wall.cpp        least metal from each hole to the outside and to every other cut
//   form_wall.cpp   the same for slots, pockets, keyseats, grooves and the like, at nominal size
//   state_wall.cpp  the same for states of the work before the finished one
//   edge_distance.cpp  a hole for a screw or a pin: from its middle to the nearest free edge
//   drill_start.cpp    a drill starts square: not on a slope, a round side or over an edge
//   drill_meets.cpp    a drill runs into a hole that is there before it
//   blind_end.cpp      a blind hole comes out in a slot or a pocket
//   shoulder.cpp    the fillet in a turned shoulder, or the nose of the tool, against the corner of what is pushed up to it
//   space.cpp       the room for the part on its machine, and what it has to pass through
//   hand.cpp        whether the part has a hand, and what turning it over does
//   drill_room.cpp  the deepest drill against parallels and table; a blind hole's point against the far side
//   clean_up.cpp    whether the blank has the metal that each flat takes
//   share_out.cpp   a casting: every machined surface cleans up, and the sharing that leaves most
//   holding.cpp     grip, opening of the jaws, cutter above the jaws
//   lathe_holding.cpp  the chuck takes it, cuts stay off the jaws, it swings clear, how far it stands out
//   turned_size.cpp    collar and headstock of a lathe against a turned size; whether there is metal
//   build_up.cpp    a located place as the collar readings make it, against its tolerance
//   tooling.cpp     a tool for every feature, a speed for every tool
//   tool_size.cpp   drill, reamer, tap and boring bar against the hole they are named for
//   query_*.cpp     the queries: numbers that cannot, or may not, be true (queries.hpp)
//   build_up.cpp    a located place, a width and a depth as the collar readings make them, against their tolerance
//   tooling.cpp     a tool for every feature, a speed for every tool
//   tool_size.cpp   drill, reamer, tap, counterbore and boring bar against the hole they are named for
//   mill_cutter.cpp cutters, saws and points against slots, pockets, keyseats, edges, seats and pin holes
//   tool_reach.cpp  how deep each tool used at one place goes, against its reach
//   right_across.cpp what is milled from air to air, against the travel of the slide
//   on_table.cpp    work under clamps on a mill's table: what the clamps stand on, and that it lies flat
//   bar_in_vise.cpp round work in a mill's vise: gripped past its middle, a keyseat over its middle
//   reach.cpp       whether the spindle reaches a feature as the work is held, the slides go that far, and every feature is
//                   made
//   marked_place.cpp   a located place that is punched and drilled by hand, against its tolerance
//   mate_float.cpp  holes for screws through a mate: whether the float takes up the marks, and the drill put through them
//   hand_cut.cpp    a size that is sawn or filed to a line, and the saw's cut against a split or a slit
//   order.hpp       the order of work as one row of steps, for those that follow
//   order_pieces.cpp   a part sawn in two and joined again: what goes through the joint, what is made on one piece
//   order_datum.cpp    what a place is measured from is there when it is made, and stays
//   order_cut.cpp   there is still metal when a feature's turn comes
//   blind_thread.cpp   a blind thread of no screw that is named: that full thread is left above the tap's lead
//   order_parted.cpp   nothing is made on what is parted off
//   order_bush.cpp  a bush goes in after its hole, its bore is finished after that
//   order_tools.cpp the tools of one hole in their order
//   order_thread.cpp   the groove a thread runs out in comes first
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/intent/intent.hpp"
#include "core/judge/seat.hpp"
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
  std::string drawn_from;         // the sketch or photograph the places come from; empty where not said
  std::optional<part::Face> side_seen;  // the side of the part that it shows
  Space space;
  intent::Originals originals;  // what was measured, and the sizes accepted for it
  std::vector<Seat> seats;      // what sits on the part
};

[[nodiscard]] std::vector<ledger::Stage> stages(const Subject& subject);

}  // namespace sparewright::judge
