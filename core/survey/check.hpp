// What can be told to be wrong with the input before any of it is worked out.
#pragma once

#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// One failure, and which part of the input it is about, so that the caller can point at its place in a text.
struct Trouble {
  enum class In { kSurvey, kInstrument, kDimension, kReading, kTouched, kBetween, kPattern, kKnown };
  In in = In::kSurvey;
  std::size_t index = 0;  // of the instrument, dimension, reading, touched form, known, ...
  std::string field;      // "is", "of", "instrument", "repeats", "name", "good_to", ...
  base::Failure failure;  // its span, if any, is into that field
};

// Everything found, in the order survey, instruments, dimensions, readings, what touched_check.hpp tells, known
// (known.hpp). Empty where the survey is sound.
//   kReadingsTooFew    no reading at all; a reading without a repeat; a dimension no reading is of
//   kNameTwice         two instruments, dimensions or readings of one name
//   kValueNotAccepted  a name with '/' in it, or empty; a dimension's name that expressions cannot use; jaws the
//                      instrument has not; the wrong count of names; an expression without a dimension; a
//                      negative zero_within (0 is taken: it cancels where a reading is itself a difference); a repeat
//                      outside the instrument's range; a range that ends before it begins
//   kSizeNotPositive   an instrument's good_to, reads or turn; a repeat of a named way of measuring that is 0 or less
//                      (faces that touch the work from outside or inside cannot stand there)
//   kUnitOfAnotherKind repeats, or an instrument, that do not measure what the equation gives
//   kNotInTheShop      an instrument that is not there
//   kTooMany           more than kMostReadings
//   and the failures of equation_of
[[nodiscard]] std::vector<Trouble> troubles(const Survey& survey);

}  // namespace sparewright::survey
