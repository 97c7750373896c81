// Seats of rolling bearings on shaft and in housing, by how the load turns and how heavy it is.
#pragma once

#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/bearings.hpp"
#include "core/handbook/fits.hpp"
#include "core/handbook/iso286.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// Which ring turns against the direction of the load. That ring must sit tight or it creeps; the other may
// slide.
enum class RingTurning {
  kInner,   // the shaft turns, the load stands still: gears, belts, most machines
  kOuter,   // the housing turns: wheels on fixed axles, idlers; or the load turns with the shaft (unbalance)
  kEither,  // in no fixed direction
};

// Against the bearing's dynamic rating Cr.
enum class BearingLoad {
  kLight,   // below 0.06 Cr
  kNormal,  // 0.06 to 0.13 Cr
  kHeavy,   // above
};

enum class SeatRank {
  kPreferred,    // what the source prints first
  kAlternative,  // in brackets, or behind "or"
};

struct BearingSeat {
  Iso286Zone zone;
  SeatRank rank = SeatRank::kPreferred;
  std::string_view when;  // what it is for; empty where for the case as asked
  SizeLimits limits;      // of the shaft's or housing's seat
  // Seat and ring of class 0 together; negative is interference.
  quantity::Length least_clearance;
  quantity::Length most_clearance;
  Source source;       // of the choice
  Source ring_source;  // of the ring's limits
};

// The seats that sources print for a case, all of them in the order of the table, preferred ones and
// alternatives; where two sources disagree both are there. size is the bearing's bore for kShaft, its outside
// for kHousing (side names the machine's part: kShaft or kHole). Steel shafts, iron or steel housings, ball
// bearings, running not much warmer than the housing.
//
// Fails with kNotTabled: a heavy load on a turning inner ring, sizes beyond 200 mm (shaft) or the tables of
// rings and zones.
[[nodiscard]] base::Result<std::vector<BearingSeat>> bearing_seats(FitSide side, quantity::Diameter size,
                                                                   RingTurning turning, BearingLoad load);

}  // namespace sparewright::handbook
