// Which piece of the shop's stock a blank is cut from.
#pragma once

#include <optional>
#include <vector>

#include "core/part/blank.hpp"
#include "core/shop/stock.hpp"

namespace sparewright::route {

struct OnHand {
  const shop::Stock* piece = nullptr;
  double to_spare_mm =
      0.0;  // least of what its sizes have over those of the blank; less than 0: it is too short
};

// Of the pieces of the blank's material and shape: of a bar those of its section, of a plate of its thickness. The one with
// the least to spare that is long enough; where none is, the one that lacks least. None where there is none of that sort.
// Refers to the stock.
[[nodiscard]] std::optional<OnHand> on_hand(const part::Blank& blank, const std::vector<shop::Stock>& stock);

// Whether the blank's sizes were measured: the piece is there, whatever the shop's list says.
[[nodiscard]] bool is_in_hand(const part::Blank& blank);

}  // namespace sparewright::route
