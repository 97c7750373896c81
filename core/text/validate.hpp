// The check of a text against what it may hold.
#pragma once

#include "core/base/result.hpp"
#include "core/text/document.hpp"
#include "core/text/shape.hpp"

namespace sparewright::text {

// Every problem of the text at once, in the order of their places; empty where there is none. Told are:
//   kKeyUnknown          at the key, with the nearest known one and all that are known
//   kKeyMissing          at the table that lacks it
//   kValueOfAnotherType  at the value
//   kValueNotAccepted    a word not among those accepted, or a list with too few items
//   kTooMany             a list with too many items; or more than kMostProblems problems
// Where the deciding word of a table is missing or unknown, keys that belong to some choice are left alone.
[[nodiscard]] base::Failures validate(const Document& document, const Shape& shape);

}  // namespace sparewright::text
