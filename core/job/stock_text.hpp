// Reading the stock on hand from a shop text. Used inside this room only.
#pragma once

#include <vector>

#include "core/shop/stock.hpp"
#include "core/text/reading.hpp"
#include "core/text/shape.hpp"

namespace sparewright::job {

[[nodiscard]] text::Shape stock_shape();

// The pieces under "stock". Sizes have to be more than zero, and all its shape wants have to be there.
[[nodiscard]] std::vector<shop::Stock> read_stock(const text::TableReader& shop);

}  // namespace sparewright::job
