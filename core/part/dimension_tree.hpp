// What every dimension of the part is measured from and to, and what can be wrong with that.
//
// The tree is read off the part alone; the numbers are the ledger's: each row names the figure that holds its size, so
// that what is drawn, what is listed and what is cut cannot differ.
//
// A chain of dimensions has to start at a side of the work. A feature that others are measured from has to have a place
// along that axis: the middle of a hole or a slot along the two axes of its side, a flat across its side, the wall of a flat
// that takes a part of its side, and the end a chucking piece leaves.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/part/part.hpp"

namespace sparewright::part {

struct TreeDimension {
  std::string of;    // the feature, or "blank"
  std::string name;  // "x", "diameter", "leaves"
  std::string
      figure;  // its size: "feature/pivot bore/x"; with /least, /most and for what fits or locates /aim below it
  std::string from;  // "left end", "top, as relief leaves it", "pivot bore"; empty for a size across
  std::string to;    // "its middle", "its bottom"; empty for a size across
  const Dimension* dimension = nullptr;  // of the part; none for a size of the blank
  int links = 0;  // dimensions of other features between it and a side of the work or of the blank
};

// In the order of the part: the blank's sizes, then those of each feature. Valid as long as the part.
// Precondition: tree_faults() finds nothing.
[[nodiscard]] std::vector<TreeDimension> dimension_tree(const Part& part);

// The stages of a chain wait for each other, and the ledger lets only so many do so (kDeepestChain in ledger.hpp).
inline constexpr int kLongestChain = 400;

// A place that cannot be worked out.
struct TreeFault {
  enum class What {
    kNoPlace,  // the feature it is measured from has no place along this axis
    kCircle,   // it is measured from something that is measured from it
    kTooLong,  // more than kLongestChain features, each measured from the next
  };
  What what = What::kNoPlace;
  std::size_t feature = 0;  // whose place it is: where it stands in the list
  Axis axis = Axis::kX;     // along which
  std::string found;        // the feature named, the whole circle: "a -> b -> a", or how long the chain is
  std::vector<std::string> accepted;  // kNoPlace: the features that do have a place along it
};

// Every place without a start, and each circle once. A feature is worked out as a whole, so one that is measured from
// another along x while the other is measured from it along y is a circle too. Names of no feature are not looked at: the
// text's reader refuses them. Time: in proportion to the features, but for flats that take a part of a side.
[[nodiscard]] std::vector<TreeFault> tree_faults(std::span<const Feature> features);

// Whether others can be measured from it along that axis.
[[nodiscard]] bool has_place(const Feature& feature, Axis axis);

}  // namespace sparewright::part
