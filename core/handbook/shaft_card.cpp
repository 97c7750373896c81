#include "core/handbook/shaft_card.hpp"

namespace sparewright::handbook {

base::Result<ShaftCard> shaft_card(std::string_view shaft) {
  const auto size = read_shaft_size(shaft);
  if (!size) return tl::unexpected(size.error());
  ShaftCard card;
  card.shaft = *size;
  if (const auto seats = keyseats_for_shaft(shaft)) {
    card.parallel = *seats;
  } else {
    card.not_tabled.push_back(seats.error());
  }
  if (size->system == quantity::UnitSystem::kInch) {
    for (const WoodruffKey& key : woodruff_keys_for(size->diameter)) {
      if (const auto seat = woodruff_keyseat(key, size->diameter)) card.woodruff.push_back(*seat);
    }
  }
  if (const auto groove = ring_groove(RingPlace::kOnShaft, shaft)) {
    card.rings.push_back(*groove);
  } else {
    card.not_tabled.push_back(groove.error());
  }
  return card;
}

}  // namespace sparewright::handbook
