// Compound indexing: one move on each of two circles of the same plate, added or taken off.
//
// The crank is moved x holes on a circle of A; then the plate is freed and crank and plate together are moved
// y holes on a circle of B, measured by the stop pin behind the plate. Together x/A + y/B of a turn. All sums
// of x/A and y/B are the multiples of 1/lcm(A, B), so the nearest move of a pair of circles is found without
// trying any. Rarely exact; a slip of one hole in one move spoils the work, and the books advise
// differential indexing where the head has it. Source: kCompoundIndexing.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/index_plates.hpp"
#include "core/handbook/plain_indexing.hpp"

namespace sparewright::handbook {

inline constexpr Source kCompoundIndexing{
    "compound movements on two circles of a plate, Machinery's Handbook 27th ed., p. 1995",
    "https://text.123docz.net/document/2062982-machinerys-handbook-27th-episode-3-part-6-doc.htm",
    Basis::kPublished};

// 1 turn and 7/39, then 29/41 forward. Of the ways to make one move with two circles the one with the least
// turning to and fro, then the fewest holes on the second circle.
struct CompoundIndexing {
  int turns = 0;  // whole turns, on the first circle; the first move is forward
  int first_holes = 0;
  int first_circle = 0;
  int second_holes = 0;  // negative: backward. Over a turn where it is more than the circle has
  int second_circle = 0;
  std::string plate;
  int spaces = 1;         // of the work in one move
  Ratio crank;            // turns of the crank in one move, both together
  quantity::Angle error;  // of the spindle in one move

  [[nodiscard]] bool exact() const { return error == quantity::Angle(); }
};

// The nearest move of every pair of circles of one plate for a part of a turn of the spindle, nearest first,
// of equal errors the one with less turning first; at most `most`. Moves that need one circle alone are plain
// indexing and are left out, so a pair may have none. Fails as checked(head).
[[nodiscard]] base::Result<std::vector<CompoundIndexing>> compound_indexing(const DividingHead& head,
                                                                            const Ratio& part,
                                                                            std::size_t most = 5);

// The same for equal divisions, where one move may pass several spaces: with s and the number of divisions
// without a common factor, all spaces come in turn after s rounds. error counts for one move; after the
// last move the errors of all have added up. most_spaces from 1 to 100. Fails as part_for_divisions and
// checked(head), and with kValueNotAccepted.
[[nodiscard]] base::Result<std::vector<CompoundIndexing>> compound_divisions(const DividingHead& head,
                                                                             int divisions, int most_spaces,
                                                                             std::size_t most = 5);

}  // namespace sparewright::handbook
