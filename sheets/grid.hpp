// Short things to tick or to fill, side by side in as many columns as their words allow.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "sheets/setting.hpp"

namespace sparewright::sheets {

struct Entry {
  std::string says;
  std::string figure;  // what it must show, set large; may be empty
  bool ticks = false;  // a box before it
  bool fills = false;  // a blank after it
};

// Rows of entries, left to right, in at most `most_columns` columns within width_mm; long ones are broken into lines.
[[nodiscard]] std::vector<Block> grid(const Setting& setting, const std::vector<Entry>& entries,
                                      const TextStyle& style, double width_mm, int most_columns);

// Sizes one after the other in rows, as wide as each is: "bore 0.8750-0.8758", the words regular, the size bold.
[[nodiscard]] std::vector<Block> sizes_in_rows(const Setting& setting, const std::vector<std::string>& texts,
                                               double width_mm);

// Where the size begins that ends a text: a figure with a decimal point, with its tolerance; the end where there is none.
[[nodiscard]] std::size_t size_begins(std::string_view says);

}  // namespace sparewright::sheets
