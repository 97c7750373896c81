// Whether a train of change gears can be mounted: which order meshes on the banjo of a lathe and clears
// itself.
//
// The first driver turns on a fixed stud S (spindle or reverse), the last driven on the lead screw L. Between
// them stand none, one or two studs in slots of the banjo, which swings about the lead screw. A stud carries
// two gears keyed together (compound) or one (an idler, which changes only the direction). Geometry alone:
// - meshing gears: the distance of their axes is module (z1 + z2)/2;
// - the studs lie in their slots, and the banjo swings as far as it must;
// - two gears of one plane that do not mesh are apart by more than their outside radii, module (z + 2)/2;
// - where another axis carries no gear in a gear's plane, the gear clears its collar (nut, hub, bush).
// The old rule for compound trains, first pair's sum over the second driver by 15 to 20 teeth, second pair's
// sum over the first driven likewise (common practice), is the last point with collars of 13 to 18 modules.
//
// Do not use where the banjo swings about another axis than the lead screw, or its slots are curved: then the
// distances along the slots are wrong, and only tooth sums and clearances between gears hold.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/gear_trains.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

inline constexpr Source kMeshing{
    "centre distance = module (z1 + z2) / 2, outside radius = module (z + 2) / 2, geometry", "",
    Basis::kDerived};

// A straight slot whose middle line passes through the lead screw's axis. A stud can be clamped from
// `nearest` to `farthest` of that axis. `turned` is the angle from the first slot to this one.
struct BanjoSlot {
  quantity::Length nearest;
  quantity::Length farthest;
  quantity::Angle turned;
};

struct Banjo {
  quantity::Length module;          // of the gears; 25.4 mm / diametral pitch
  quantity::Length centres;         // from S to L
  std::vector<BanjoSlot> slots;     // one or more
  quantity::Diameter fixed_collar;  // the largest thing beside the gear on S,
  quantity::Diameter screw_collar;  // beside the gear on L,
  quantity::Diameter stud_collar;   // and on a stud of the banjo, its nut included
  quantity::Length clearance = quantity::Length::of(1.0, quantity::unit::millimetre);  // at least, everywhere
  // How far the banjo swings: angles at L from the line L-S to the first slot, both ways of turning; `turned`
  // of the slots counts in the same sense.
  quantity::Angle least_swing = quantity::Angle::of(-180.0, quantity::unit::degree);
  quantity::Angle most_swing = quantity::Angle::of(180.0, quantity::unit::degree);
};

// A banjo that can be reckoned with: module and centres more than zero, at least one slot, each with its ends
// in order, no negative collar or clearance. Fails with kSizeNotPositive or kValueNotAccepted.
[[nodiscard]] base::Result<Banjo> checked(Banjo banjo);

// Gears on two fixed axes mesh where these are at most so many modules farther apart than the pitch circles
// want: that much backlash is used on change gears (common practice).
inline constexpr double kMostExtraModules = 0.1;

struct BanjoStud {
  int in = 0;   // teeth of the gear that is driven
  int out = 0;  // of the one that drives; the same gear where it is an idler
  bool idler = false;
  std::size_t slot = 0;    // counted from 0
  quantity::Length along;  // the slot, from the lead screw's axis
};

struct BanjoFit {
  GearTrain train;               // in the order of mounting: drivers[i] drives drivens[i], idlers left out
  std::vector<BanjoStud> studs;  // from S to L; empty where two gears mesh on their fixed axes
  quantity::Angle swing;
  quantity::Length least_gap;  // the narrowest of all that must be clear; `centres` where nothing can touch
};

// How a train goes on a banjo: every order of its drivers and drivens, first without an idler, then (two or
// four gears) with one of `idlers` on a stud of its own; of the fits at the first stage that has any, the one
// with the widest least gap. Nothing where none fits. banjo must be checked.
[[nodiscard]] std::optional<BanjoFit> fit_on_banjo(const Banjo& banjo, const GearTrain& train,
                                                   std::span<const int> idlers);

}  // namespace sparewright::handbook
