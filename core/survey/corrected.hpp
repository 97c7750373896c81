// A reading as it counts: the mean of its repeats, or of a worn place the least or the most worn of them, less the zero offset
// found, with the causes of its doubt.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/ledger/share.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// The zero error that all readings of one instrument and one pair of jaws share.
struct ZeroError {
  std::string cause;        // "instrument/caliper 8/outside jaws/zero"
  double found = 0.0;       // taken off every reading, base unit
  std::string typed;        // the same as typed; empty where none was found
  double within = 0.0;      // half-width of what may be left, base unit
  bool is_default = false;  // nobody stated `within`
  std::string why;          // how `within` was come by
};

// `within` is what is stated for the pair, else for the instrument; else half a step of the resolution where
// the zero was checked (a checked zero is known no finer than it can be read), else the whole permissible
// error, since a zero nobody looked at may be anywhere the maker allows. The last two are defaults of this
// program (common practice).
[[nodiscard]] ZeroError zero_error_of(const Instrument& instrument, Jaws jaws);

// A reading's value and the shares of its independent causes, all in the base unit of its kind.
//
//   cause                           standard uncertainty           degrees of freedom   clause
//   reading/<name>/scatter          s/sqrt(n), n >= 2 repeats      n - 1                4.2.2, 4.2.3
//   reading/<name>/comes back       half-width /sqrt(3)/sqrt(n)    infinite             4.3.7, 4.2.4
//   reading/<name>/resolution       half a step /sqrt(3)           infinite             F.2.2.1
//   reading/<name>/good to          permissible error /sqrt(3)     infinite             4.3.7
//   reading/<name>/transfer         half-width /sqrt(3)            infinite             4.3.7
//   reading/<name>/way              half-width /sqrt(3)            infinite             4.3.7; own_mm of ways.hpp
//   instrument/<name>/<jaws>/zero   half-width /sqrt(3), shared    infinite             4.3.7, 5.2
//   and those of temperature        (at_temperature.hpp)
//
// The permissible error is what the shop states, else what is usual for its kind at that size (instrument_error.hpp). Where
// the shop says how well the instrument comes back, that counts as the scatter, also of a single reading, unless the repeats
// lie further apart than it allows: of the two the larger counts.
// The difference of two readings (ways.hpp) has no zero: it is in both and cancels.
// What is half or twice the size (Shows) is made the size, with its causes.
//
// The resolution counts whole however often the reading was repeated: repeats that fall within one step say
// nothing finer. Of a single reading no scatter can be known; none is then put in, and `source` says so.
// Source: JCGM 100:2008 (GUM), clauses as named; repeats are combined by their mean (4.2.1).
struct Corrected {
  double value = 0.0;     // of what counts of the repeats, less the zero offset found
  ledger::Shares shares;  // sorted by cause
  std::string typed;      // the repeats as typed, with commas
  std::string source;     // instrument, jaws and place in words
};

// Which of the repeats counts. At a worn place they are read where more and where less has gone: what is left at most tells
// the least that was there, what is left at least how far it is worn; they do not scatter about one size.
enum class Counts { kMean, kLeast, kMost };

// kMean at a place that is not worn, or of which wear bounds nothing; else what the least worn place says, so that the bound
// is as near as it may be.
[[nodiscard]] Counts what_counts(const Reading& reading);
// Of a worn place that bounds: the most worn one.
[[nodiscard]] Counts most_worn(const Reading& reading);

// It was read at several places: "reading/<name>/most worn" stands beside "reading/<name>".
[[nodiscard]] bool has_most_worn(const Reading& reading);
inline constexpr std::string_view kMostWorn = "/most worn";

// The reading must have a repeat, and be one of the instrument's.
[[nodiscard]] Corrected corrected(const Reading& reading, const Instrument& instrument, Counts counts);
[[nodiscard]] Corrected corrected(const Reading& reading, const Instrument& instrument);  // what_counts()

}  // namespace sparewright::survey
