// Differential indexing: the plate is geared to the spindle and creeps while the crank is turned.
//
// For N divisions on a head of V:1 the crank is moved n/H at a time. In one turn of the spindle it is moved N
// n/H, and the plate must make up the rest: x = V - N n/H turns, with the crank where x > 0, against it where
// x < 0. The gears from spindle to plate have the ratio |x|. Source: kDifferentialIndexing.
//
// Whether the gears reach on the head's bracket is not looked at: idlers of any size bridge them. Before
// cutting, turn the spindle once and see that the plate goes the way said here, and that N moves close.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/gear_trains.hpp"
#include "core/handbook/index_plates.hpp"
#include "core/handbook/plain_indexing.hpp"

namespace sparewright::handbook {

inline constexpr Source kDifferentialIndexing{
    "differential indexing, Practical Treatise on Milling and Milling Machines, pp. 56-57",
    "http://en.wikisource.org/wiki/Page:Practical_Treatise_on_Milling_and_Milling_Machines.djvu/63",
    Basis::kPublished};

// The plate turns at most this often for one turn of the spindle; printed settings stay under 5.
inline constexpr int kMostPlateTurns = 6;

// The twelve gears heads come with (from memory): 24 24 28 32 40 44 48 56 64 72 86 100.
[[nodiscard]] std::vector<int> dividing_head_gears();

struct DifferentialIndexing {
  int turns = 0;
  int holes = 0;
  int circle = 0;
  std::string plate;
  Ratio crank;            // turns of the crank against the plate in one move: turns + holes / circle
  Ratio plate_turns;      // what would be exact: x for one turn of the spindle, negative against the crank
  GearTrain gears;        // drivers from the spindle's side
  int idlers = 0;         // simple train: one with the crank, two against it; compound: none, one
  Ratio moved;            // of the spindle in one move, with these gears
  quantity::Angle error;  // of one move; of N moves N times that, all of it in the last space

  [[nodiscard]] bool with_crank() const { return plate_turns > Ratio(); }
  [[nodiscard]] bool exact() const { return error == quantity::Angle(); }
};

// What the spindle turns in one move of the crank by `crank` turns, the plate geared to make `plate_turns`
// for one of the spindle: crank / (worm - plate_turns). plate_turns must not be worm.
[[nodiscard]] Ratio differential_move(int worm, const Ratio& crank, const Ratio& plate_turns);

// For every move n/H the plates give with |x| over 0 up to 6, the nearest simple and the nearest compound
// trains of the gears on either side; of these settings the `most` nearest, of equal errors the simple train
// first, then the one whose plate turns less. Of equal moves on several circles the circle with most holes
// stands. Fails as part_for_divisions, checked(head), TrainFinder::of.
[[nodiscard]] base::Result<std::vector<DifferentialIndexing>> differential_indexing(
    const DividingHead& head, int divisions, std::span<const int> gears, std::size_t most = 5);

}  // namespace sparewright::handbook
