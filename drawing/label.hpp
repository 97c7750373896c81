// Names put beside what they name, on a drawing that is already full of lines.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "drawing/display_list.hpp"

namespace sparewright::drawing {

// One name, in one or more lines.
struct Label {
  std::vector<std::string> lines;  // at least one
  TextStyle style;
  Disc names;  // what it names; radius 0 for a place
  std::optional<Box>
      within;            // where it needs no leader and, without one, must stand; else close to what it names
  bool may_lead = true;  // it may stand away with a leader
};

// What is there already.
struct Ground {
  Box area;                    // labels and leaders stay within
  std::vector<Segment> lines;  // a label crosses none; a leader may
  std::vector<Box> taken;      // neither label nor leader
  std::vector<Box> hatched;    // leaders, and only such labels as must stand within
  std::vector<Disc> rounds;    // neither label nor leader, except the leader of the round's own label
};

struct Standing {
  Box box;
  std::optional<Segment> leader;  // from the label to what it names
};

// Where each label stands, in the order of `labels`; nothing for one that has no place left.
//
// Guarantees: (1) no label overlaps another, crosses a line or a leader, or lies over what is taken or round;
//             (2) no leader crosses another, a label, what is taken or a round that it does not name;
//             (3) a label without a leader is nearer to what it names than to any other round.
// Greedy: shortest leader first; where one finds no place it goes first in another try, as long as that helps.
// Deterministic.
[[nodiscard]] std::vector<std::optional<Standing>> place_labels(const Ruler& ruler,
                                                                const std::vector<Label>& labels,
                                                                const Ground& ground);

// Its lines of text and its leader, ending in an arrowhead on a round, in a dot on a place.
void add_label(DisplayList& list, const Ruler& ruler, const Label& label, const Standing& standing);

}  // namespace sparewright::drawing
