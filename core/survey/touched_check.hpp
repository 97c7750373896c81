// What can be told to be wrong with touched forms before any of it is worked out.
#pragma once

#include <vector>

#include "core/survey/check.hpp"

namespace sparewright::survey {

// In the order touched, between, patterns; fields are the keys of job texts ("touches", "side", "diameter", "of", ...).
//   kNameTwice         a name of two forms, betweens or patterns, or a result called as a reading is
//   kValueNotAccepted  a name with '/' in it, or empty; a side that is not of the form; a touch of another count of numbers; a
//                      result the form has not; two forms that tell nothing of one another; one tip of two diameters
//   kReadingsTooFew    fewer touches than the form needs; fewer than three holes
//   kNotInTheShop, kUnitOfAnotherKind   of the instrument
//   kNotInTheJob       a touched form that is not there
//   kSizeNotPositive   a tip of less than 0
//   and the failures of told_formula
[[nodiscard]] std::vector<Trouble> touched_troubles(const Survey& survey);

}  // namespace sparewright::survey
