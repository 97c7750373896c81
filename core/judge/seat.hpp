// What sits on the part or is put into it, as the job says: bearings, keys, retaining rings, O-rings.
#pragma once

#include <optional>
#include <string>

#include "core/base/hash.hpp"
#include "core/handbook/bearing_seats.hpp"
#include "core/handbook/o_rings.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::judge {

enum class SeatFor { kBearing, kKey, kRetainingRing, kORing };

// One of them. The sizes that its kind does not use are none.
struct Seat {
  std::string name;
  SeatFor takes = SeatFor::kBearing;
  std::string on;     // a feature; of a bearing also kBareBar
  std::string shaft;  // a key's or a ring's: the feature its groove is cut in, or kBareBar

  // A bearing: the limits of the ring that comes on the seat, of its bore on a shaft, of its outside in a hole.
  std::string bearing;  // as printed: "6205", "bore 1.0000 +0/-0.0004"
  double ring_least_mm = 0.0;
  double ring_most_mm = 0.0;
  double ring_nominal_mm = 0.0;
  std::string ring_source;
  std::optional<handbook::RingTurning> turning;  // inner where the job does not say
  std::optional<handbook::BearingLoad> load;     // normal where the job does not say

  // An O-ring: its section, what it does, and the bore a piston's ring seals in.
  std::optional<quantity::Typed> section;
  std::optional<quantity::Typed> seals_in;
  handbook::SealDuty duty = handbook::SealDuty::kReciprocating;
};

inline constexpr const char* kBareBar = "bar";

void add_to(base::Hasher& hasher, const Seat& seat);

}  // namespace sparewright::judge
