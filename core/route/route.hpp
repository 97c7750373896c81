// The order of work as stages: one for each setup. Its figures, below "op 20/":
//
//   hold/gripped, hold/showing, hold/under the work          how it is held
//   pick up x, pick up y                                     what the edge finder does not know
//   <feature>/x wanted, x turns, x division, x rounding,     what is dialled, and
//   <feature>/x lands, x made                                where that puts the feature: from the zero, and as the
//                                                            distance its dimension is measured by (y alike)
//   <feature>/below, to parallel                             room for the deepest tool
//   <feature>/width made, length made, depth made            of a slot, a keyseat, a pocket (opening.hpp lists all)
//   <feature>/cut 1 ...                                      size after each cut
//   <feature>/rpm <tool>                                     the speed chosen
// and on a lathe (core/route/lathe_bench.hpp):
//   hold/on, hold/room to the jaws, hold/diameters standing out
//   <feature>/metal, cut 1, cut 1 turns, division, rounding, lands    a diameter from the touch, cut by cut
//   <feature>/found, left to go, compound divisions, compound lands   the last cut by the compound
//   <feature>/shoulder wanted, turns, division or spacer              along the bed
//   <feature>/headstock taper
// and at a drill press, a saw or a bench
//   <feature>/x mark                                         how high its line is scribed, from which side (y, z alike)
//   <feature>/place good to, /least, /most                   how far a punched place comes out
//   <feature>/<tool> first peck, peck                        how far a drill goes before it is drawn out
//   <feature>/spot off at most                               how far a drill through the mate's hole can lie off
//   <feature>/saw's cut, left on each face, sawn good to     what is sawn
//   <feature>/closes by                                      what a joint comes nearer by
// and the value "op 20/sheet" (a SetupSheet). A second stage for each setup, "work after op 20", writes no figure but
// the value "work after op 20/recipe" (a shape::Recipe).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/handbook/work.hpp"
#include "core/ledger/ledger.hpp"
#include "core/part/part.hpp"
#include "core/route/plan.hpp"

namespace sparewright::route {

// What the setups share.
struct Route {
  Plan plan;
  part::Part part;
  std::optional<handbook::Work>
      work;  // the material as the cutting tables see it; none where it is not known
  quantity::UnitSystem system = quantity::UnitSystem::kInch;
  std::vector<shop::Stock> on_hand;  // the shop's; empty where it lists none
};

// A hole within this of the axis lies on it, on a lathe: a bar is not known better. A choice made here, without a source.
inline constexpr double kOnAxis_mm = 0.05;

// Whether speeds, cuts and readings of a feature are worked out where this setup makes it. On a lathe whether a hole
// lies on the axis is not looked at: "op 20/<feature>/off the axis" tells.
[[nodiscard]] bool cuts_are_worked_out(const Setup& setup, const part::Feature& feature);

// The side a line across the work is scribed from: where the feature is made by marks the one its place is dimensioned
// from; on a mill the picked-up one; else the left end, the front or the underside, rather one that is not cut.
[[nodiscard]] part::Face marked_from(const Route& route, const std::string& feature, part::Axis axis);
// The same on a mill, as the work is held there.
[[nodiscard]] bool mill_works_out(const OnMill& on, const part::Feature& feature);

[[nodiscard]] std::vector<ledger::Stage> stages(const Route& route);

[[nodiscard]] std::string sheet_path(const Setup& setup);  // "op 20/sheet"

// "work after op 20/recipe": the blank cut by all that is made in the setups up to and with that one, in the order of
// work. The recipe after an earlier setup is a prefix of it. There is none where a size is not known or the geometry
// cannot be.
// Fails with kNotInTheJob, naming the ops that are.
[[nodiscard]] base::Result<std::string> recipe_path_after(const Plan& plan, int op);

}  // namespace sparewright::route
