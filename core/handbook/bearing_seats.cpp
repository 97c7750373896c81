#include "core/handbook/bearing_seats.hpp"

#include <array>
#include <cstddef>
#include <optional>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
namespace unit = quantity::unit;

// The table says housing where a fit says hole.
constexpr FitSide kHousing = FitSide::kHole;

struct SeatRow {
  FitSide side;
  RingTurning turns;
  std::optional<BearingLoad> load;  // none: any load
  std::optional<Diameter> over;     // of the bearing's bore
  std::optional<Diameter> up_to;
  std::string_view zone;
  SeatRank rank;
  std::string_view when;
  Source source;
};
constexpr SeatRow kSeats[] = {
#include "generated/core/handbook/bearing_seats.inc"
};

bool is_for(const SeatRow& row, FitSide side, Diameter size, RingTurning turning, BearingLoad load) {
  // The maker's table heads its shaft rows "rotating inner ring or indeterminate".
  const RingTurning turns =
      side == FitSide::kShaft && turning == RingTurning::kEither ? RingTurning::kInner : turning;
  return row.side == side && row.turns == turns && row.load.value_or(load) == load &&
         in_range(size, row.over, row.up_to);
}

base::Result<BearingSeat> seat_of(const SeatRow& row, Diameter size) {
  const Iso286Zone zone = read_iso286_zone(row.zone).value();  // the tests read every zone of the table
  const auto deviations = iso286_deviations(zone, size);
  if (!deviations) return tl::unexpected(deviations.error());
  const auto ring = bearing_ring_limits(row.side == kHousing ? FitSide::kShaft : FitSide::kHole, size);
  if (!ring) return tl::unexpected(ring.error());
  BearingSeat seat{
      .zone = zone, .rank = row.rank, .when = row.when, .source = row.source, .ring_source = ring->source};
  seat.limits = {quantity::as_diameter(deviations->lower + size),
                 quantity::as_diameter(deviations->upper + size)};
  const SizeLimits& hole = row.side == kHousing ? seat.limits : ring->limits;
  const SizeLimits& shaft = row.side == kHousing ? ring->limits : seat.limits;
  seat.least_clearance = hole.lower - shaft.upper;
  seat.most_clearance = hole.upper - shaft.lower;
  return seat;
}

std::string_view words_for(RingTurning turning) {
  constexpr std::array<std::string_view, 3> kWords{"a turning inner ring", "a turning outer ring",
                                                   "a load in no fixed direction"};
  return kWords.at(static_cast<std::size_t>(turning));
}

std::string_view words_for(BearingLoad load) {
  constexpr std::array<std::string_view, 3> kWords{"light", "normal", "heavy"};
  return kWords.at(static_cast<std::size_t>(load));
}

}  // namespace

base::Result<std::vector<BearingSeat>> bearing_seats(FitSide side, Diameter size, RingTurning turning,
                                                     BearingLoad load) {
  std::vector<BearingSeat> seats;
  for (const SeatRow& row : kSeats) {
    if (!is_for(row, side, size, turning, load)) continue;
    const auto seat = seat_of(row, size);
    if (!seat) return tl::unexpected(seat.error());
    seats.push_back(*seat);
  }
  if (!seats.empty()) return seats;
  return not_tabled(
      side == kHousing ? "the housing of a bearing" : "the shaft of a bearing",
      fmt::format("{} mm, {}, {} load", size.in(unit::millimetre), words_for(turning), words_for(load)),
      "light and normal loads of ball bearings, bores up to 200 mm; heavier ones sit tighter: ask the "
      "bearing's maker");
}

}  // namespace sparewright::handbook
