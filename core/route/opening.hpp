// Slots, keyseats and pockets as an end mill cuts them: where its middle stands between walls that face each other, and
// what is left to widen. Used inside this room only.
//
// Written below the stage, for the slot "way" along x:
//   way/<tool> diameter                            the cutter, as measured
//   way/half width less cutter, half length ...    from the middle to the cutter's at either wall
//   way/y near wanted ... y far lands              the two walls: nearer the picked-up zero, and farther
//   way/y middle wanted ...                        the first passes, where it is widened afterwards
//   way/y row 1 wanted ...                         rough passes side by side
//   way/width made, length made                    as the cutter and these readings make it
//   way/y lands, y made                            the middle of both walls
//   way/depth 1, cut 1 z turns ...                 the passes in depth
//   way/over the back, and /least, /most           a keyseat: from its floor to the far side of the bar
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/route/milled_cuts.hpp"

namespace sparewright::route {

struct Opening {
  const std::string& name;
  const part::Formed& formed;
  const shop::Tool& mill;
  const ledger::Figure& cutter;
  const ledger::Figure& width;             // to make
  const ledger::Figure* length = nullptr;  // to make; none: open at both ends
  const ledger::Figure& depth;             // to make; through: all there is, and some way out
  MillCuts cuts;
  part::Axis along = part::Axis::kX;
  part::Axis across = part::Axis::kY;
  bool own_width = false;  // the cutter's own size lies within the limits
  bool wide = false;  // more is left on the walls than their last cut takes: rows of passes at each depth

  [[nodiscard]] bool is_through() const { return !formed.sizes.contains("depth"); }
  [[nodiscard]] const part::Dimension* size(std::string_view local) const;
  [[nodiscard]] bool is_fine(std::string_view local) const;  // printed to the finest place
};

// Readings of one wheel, nearer the zero first.
struct BetweenWalls {
  MachineAxis axis = MachineAxis::kX;
  const ledger::Figure* half = nullptr;  // from the middle to the cutter's middle at either wall
  std::string near;                      // at the finished walls
  std::string far;
  std::string middle;
  std::string rough_near;  // with metal left on; only where it is wide
  std::string rough_far;
  std::vector<std::string> rows;  // of the passes side by side, rising; empty where they are not listed
};

struct OpeningPlaces {
  BetweenWalls across;
  std::optional<BetweenWalls> lengthwise;
};

// Nothing where a size is missing, no end mill is named, or the cutter is wider than the opening.
[[nodiscard]] std::optional<Opening> opening_of(MillBench& bench, const Work& work,
                                                const part::Formed& formed);
[[nodiscard]] OpeningPlaces dial_opening(MillBench& bench, const Opening& opening);

// From the floor to the far side of a bar, and its limits; nothing elsewhere.
struct OverTheBack {
  const ledger::Figure* whole = nullptr;  // the bar, crest to far side
  const ledger::Figure* least = nullptr;
  const ledger::Figure* most = nullptr;
};
[[nodiscard]] std::optional<OverTheBack> over_the_back(MillBench& bench, const Opening& opening);

}  // namespace sparewright::route
