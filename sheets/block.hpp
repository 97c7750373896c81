// Pieces of a page laid one below the other, and their division into pages.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "drawing/display_list.hpp"

namespace sparewright::sheets {

// A piece as wide as the page's text, never divided. Its list starts at (0, 0) and stays within height_mm.
struct Block {
  drawing::DisplayList list;
  double height_mm = 0.0;
  bool keeps_next = false;           // not the last one on a page, if it can be helped
  std::optional<std::size_t> table;  // belongs to Flow::heads[*table], which is repeated on each page
  bool sinks = false;                // to the foot of its page
};

[[nodiscard]] Block space(double height_mm);

// Puts `below` under `block`, gap_mm lower, its list moved to the right by indent_mm.
void stack(Block& block, const Block& below, double gap_mm = 0.0, double indent_mm = 0.0);
[[nodiscard]] Block stacked(const std::vector<Block>& blocks, double gap_mm = 0.0);

struct Flow {
  std::vector<Block> blocks;
  std::vector<Block> heads;  // of tables; the first time a head is also among the blocks

  void add(Block block) { blocks.push_back(std::move(block)); }
  void add(std::vector<Block> more);
  std::size_t add_head(Block head);  // its number, for the rows
};

// One after the other.
[[nodiscard]] Flow joined(const std::vector<Flow>& flows);

// The blocks on pages room_mm high, each page from (0, 0). Nothing where a block is higher than a page.
[[nodiscard]] std::optional<std::vector<drawing::DisplayList>> divided(const Flow& flow, double room_mm);

}  // namespace sparewright::sheets
