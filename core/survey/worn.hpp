// Worn places: what the size is there now, and how much metal has gone since it was sound.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/ledger/ledger.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// The readings at worn places that are of one dimension alone, and whose jaws tell what wear does to them; and whether
// something was tried there that may enclose the size (trial.hpp).
struct WornPlaces {
  std::string dimension;
  bool in_a_gap = false;  // a hole or a gap: wear makes it larger
  bool tried = false;
  std::vector<std::string> readings;  // at worn places
  std::vector<std::string> sound;     // readings of it alone at sound places
};

// In the order of the dimensions. A dimension with both kinds of worn readings, in a gap and over metal, has none.
[[nodiscard]] std::vector<WornPlaces> worn_places(const Survey& survey);

// "worn"
//   worn/<dimension>/now                 the size where it is worn most; exact, for it is read there, or enclosed by what goes
//                                        there and what will not
//   worn/<dimension>/wear                the metal gone there: the sound size less that, or that less the sound size. A
//                                        zero error behind both cancels. NOT KNOWN where no sound reading fixes the size
//   worn/<dimension>/wear at/<reading>   the same at each worn place, where there are several
// Of a radius these are radii.
[[nodiscard]] ledger::Stage worn_stage(const Survey& survey);

[[nodiscard]] std::string worn_now_path(std::string_view dimension);   // "worn/pin/now"
[[nodiscard]] std::string worn_wear_path(std::string_view dimension);  // "worn/pin/wear"

}  // namespace sparewright::survey
