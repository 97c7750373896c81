// How far one reading with an instrument can be trusted, before anything has been read.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/ledger/ledger.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// One stage for each instrument and pair of jaws it has (faces_of):
//   good to/<name>/<jaws>/unknown      half-width that holds the truth of one reading, 19 times in 20
//   good to/<name>/<jaws>/one reading  a root of value 0 that carries the causes of one reading: added to a size, it
//                                      makes the size as well known as one reading makes it. The zero of the jaws is
//                                      the same cause as behind the readings taken with them (corrected.hpp).
// Where the error allowed grows with the size, that at the end of its measuring range counts (at its start where no end is
// said).
[[nodiscard]] std::vector<ledger::Stage> good_to_stages(const std::vector<Instrument>& instruments);

[[nodiscard]] std::string good_to_path(std::string_view instrument, Jaws jaws);

}  // namespace sparewright::survey
