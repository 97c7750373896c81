#include "core/handbook/spotfaces.hpp"

#include "core/handbook/hex_fasteners.hpp"
#include "core/handbook/plain_washers.hpp"
#include "core/handbook/screw_size.hpp"

namespace sparewright::handbook {
namespace {

struct Seat {
  quantity::Diameter diameter;
  Source source;
};

base::Result<Seat> seat_of(SpotfaceUnder under, std::string_view size) {
  if (under == SpotfaceUnder::kHexHead) {
    return hex_head(size).map([](const HexFastener& head) { return Seat{head.corners_max(), head.source}; });
  }
  return plain_washer(size).map([](const PlainWasher& washer) {
    return Seat{washer.outside, washer.source};
  });
}

}  // namespace

base::Result<Spotface> spotface(SpotfaceUnder under, std::string_view size, ClearanceFit fit) {
  const auto screw = read_screw_size(size);
  if (!screw) return tl::unexpected(screw.error());
  const auto seat = seat_of(under, size);
  if (!seat) return tl::unexpected(seat.error());
  const auto hole = clearance_hole(size, fit);
  if (!hole) return tl::unexpected(hole.error());
  const quantity::Length play = hole->hole - screw->nominal;
  return Spotface{seat->diameter, play, as_diameter(across(seat->diameter) + play), seat->source, kSpotface};
}

}  // namespace sparewright::handbook
