// Change gears, dividing heads and gauge blocks of a shop text. Used inside this room only.
#pragma once

#include "core/shop/shop.hpp"
#include "core/text/reading.hpp"

namespace sparewright::job {

[[nodiscard]] shop::ChangeGearBox read_change_gears(const text::TableReader& in);
[[nodiscard]] shop::IndexingHead read_dividing_head(const text::TableReader& in);
// The name of the set; empty where the key is not there or the set is not known, which is told.
[[nodiscard]] std::string read_gauge_blocks(const text::TableReader& in);

}  // namespace sparewright::job
