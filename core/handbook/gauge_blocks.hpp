// Stacks of gauge blocks: the fewest blocks of the set at hand for a length, wear blocks at the ends.
//
// Method: every block is a whole number of nanometres (0.0001 in is 2540, 0.0005 mm 500). Blocks are tried from the
// finest series to the coarsest; once a series is done, what is left must be a multiple of what all the coarser
// blocks share, and lie between what the fewest and the largest of them can make. With one block more each round,
// nothing is left out: that a round ends without a stack proves that none has so few blocks.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

struct GaugeBlockSet {
  std::string name;                      // "81-piece inch"
  std::vector<quantity::Length> blocks;  // each one that is in the box, twice where there are two
  Source source;
};

// The sets in the handbook: 81-piece inch, 87-, 88-, 112- and 56-piece metric.
[[nodiscard]] std::vector<GaugeBlockSet> gauge_block_sets();
// Fails with kNameUnknown.
[[nodiscard]] base::Result<GaugeBlockSet> find_gauge_blocks(std::string_view name);

inline constexpr std::size_t kMostStackBlocks = 6;  // beside the wear blocks; more are not wrung in practice
inline constexpr std::size_t kMostBlocksInSet = 200;

struct GaugeStack {
  std::vector<quantity::Length> blocks;  // thickest first, without the wear blocks
  std::optional<quantity::Length> wear;  // of each of the two at the ends
  quantity::Length length;               // of the whole stack
  quantity::Length error;                // length less what was asked for; under a nanometre counts as none

  [[nodiscard]] bool exact() const { return error == quantity::Length(); }
  [[nodiscard]] std::size_t count() const { return blocks.size() + (wear ? 2 : 0); }
};

// All stacks with the fewest blocks for a length, at most `most` of them, in the order of their thickest blocks. Where
// the length is between what the set can make, the nearest length it can make with up to six blocks is taken (the
// shorter of two equally near), and error says how far off it is. With wear, two blocks of that thickness that are
// not of the set lie at the ends.
// Fails with kSizeNotPositive for a block, kValueNotAccepted for an empty set or one of more than 200 blocks, and
// with kValueNotAccepted, naming the range, where no stack of up to six blocks comes within a step of the set.
[[nodiscard]] base::Result<std::vector<GaugeStack>> gauge_stacks(
    const GaugeBlockSet& set, quantity::Length length, std::optional<quantity::Length> wear = std::nullopt,
    std::size_t most = 3);

}  // namespace sparewright::handbook
