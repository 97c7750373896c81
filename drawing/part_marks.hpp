// What a drawing of the part has to say: its lengths and its notes, from the dimensions of its features.
#pragma once

#include <string>
#include <vector>

#include "core/ledger/ledger.hpp"
#include "core/part/part.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::drawing {

// A distance along an axis of the part. Everything in mm of the part frame.
struct LengthMark {
  shape::Point from;
  shape::Point to;
  part::Axis along = part::Axis::kX;
  part::Face seen_from = part::Face::kTop;  // the side whose view shows it best
  std::vector<std::string>
      says;  // one line, or two limits, the greater above; then the other system; then the other system
  bool strong = false;             // fits or locates
  std::vector<std::string> names;  // of the figures it prints: one length may serve two features
};

// Words with a leader to the feature.
struct NoteMark {
  shape::Point at;
  double radius_mm = 0.0;  // of the circle the leader points to; 0: to the place itself
  part::Face seen_from = part::Face::kTop;
  std::vector<std::string> lines;
  bool strong = false;
  std::vector<std::string> names;  // of the figures it prints
  double across_mm = 0.0;          // of what it is about, where that may be too small to see: its width
};

struct Marks {
  std::vector<LengthMark> lengths;
  std::vector<NoteMark> notes;
};

// Sizes with a tolerance of their own or a duty are given by their limits; the others by their nominal, which takes the
// general tolerance. Holes of one row that are alike share one note, "4 x dia 6.60 through". Positions are measured from
// where the job measures them. What is not known is said to be.
// both_systems  sizes in the other system too, in square brackets
[[nodiscard]] Marks marks_of(const part::Part& part, const ledger::Snapshot& figures,
                             quantity::UnitSystem system, bool both_systems = false);

}  // namespace sparewright::drawing
