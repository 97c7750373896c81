// Plain and angular indexing: turns of the crank and holes on a circle for a part of a turn of the spindle.
//
// One turn of the crank is 1/worm of a turn of the spindle (40:1: 9 degrees), one hole on a circle of H holes
// 1/H of a turn of the crank. Holes are counted without the one the pin stands in; the sector arms enclose
// one more than the number given. Source: kIndexing.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/index_plates.hpp"
#include "core/handbook/ratio.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

inline constexpr Source kIndexing{
    "turns of the crank = worm / divisions, Practical Treatise on Milling and Milling Machines, pp. 52-57",
    "http://en.wikisource.org/wiki/Page:Practical_Treatise_on_Milling_and_Milling_Machines.djvu/60",
    Basis::kPublished};

inline constexpr int kMostDivisions = 100000;

// 1/divisions. Fails with kValueNotAccepted outside 2 to 100000.
[[nodiscard]] base::Result<Ratio> part_for_divisions(int divisions);

// An angle as a part of a turn, exactly where it is a whole number of arc seconds or a fraction of a degree
// with a bottom up to 1000: 1/3 degree is 1/1080; else at worst to a thousandth of an arc
// second. Over 0 up to 360 degrees, else fails with kValueNotAccepted.
[[nodiscard]] base::Result<Ratio> part_for_angle(quantity::Angle angle);

// What the spindle turns too far in one move: moved - wanted, both parts of a turn.
[[nodiscard]] quantity::Angle index_error(const Ratio& moved, const Ratio& wanted);

struct PlainIndexing {
  int turns = 0;
  int holes = 0;
  int circle = 0;         // 0 where whole turns do: any circle
  std::string plate;      // empty then
  Ratio moved;            // of the spindle, as a part of a turn
  quantity::Angle error;  // of one move; of N moves N times that, all of it in the last space

  [[nodiscard]] bool exact() const { return error == quantity::Angle(); }
};

// One setting a circle, the nearest first, of equal errors the circle with more holes first (a worn pin's
// play turns the spindle less): where some are exact these alone, else the `most` nearest. Whole turns give
// one setting. part is over 0 up to 1 (part_for_divisions, part_for_angle). Fails as checked(head).
[[nodiscard]] base::Result<std::vector<PlainIndexing>> plain_indexing(const DividingHead& head,
                                                                      const Ratio& part,
                                                                      std::size_t most = 5);

// Where no setting is exact the spaces can still be had without the error adding up: every position is
// counted from the first and goes to the nearest hole, at most half a hole out.
struct IndexPosition {
  int number = 0;  // 1 is the start
  int turns = 0;   // from the start
  int holes = 0;
  quantity::Angle error;
};
// All positions on one circle. Fails as part_for_divisions and checked(head), and with kValueNotAccepted
// where no plate has that circle.
[[nodiscard]] base::Result<std::vector<IndexPosition>> nearest_hole_positions(const DividingHead& head,
                                                                              int divisions, int circle);

}  // namespace sparewright::handbook
