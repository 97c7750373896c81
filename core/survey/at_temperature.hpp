// A reading taken away from 20 degC, as the size is at 20 degC.
#pragma once

#include <optional>
#include <string>

#include "core/ledger/share.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

struct AtTwenty {
  double value = 0.0;
  ledger::Shares shares;  // of the causes below alone; in any order
  std::string words;      // "; reduced to 20 degC from 27 degC, steel 1018"
};

// None where the reading does not say what the work is of, where no temperature is said, or where it is of an angle: then
// nothing is corrected, and nothing of it is in the doubt.
//
//   cause                        half-width over sqrt(3)       shared by
//   temperature/shop             of the shop's temperature     all readings: instrument and work in it both follow
//   temperature/work at <typed>  of the work's own             readings that say the same temperature (warm from one cut)
//   expansion/<material>         of the work's expansion       readings of work of that material
//   expansion/scale of <...>     of the instruments' scales    readings of instruments of that material
//
// Source: JCGM 100:2008, H.1.2 and 4.3.7; first order, so what is not known of an expansion counts only times a difference
// from 20 degC that is there (H.1.7 has the rest: 0.01 um in 50 mm there).
[[nodiscard]] std::optional<AtTwenty> at_temperature(double value, const Reading& reading,
                                                     const Instrument& instrument);

}  // namespace sparewright::survey
