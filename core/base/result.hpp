// Expected failures as values: bad input, contradictory readings, an impossible plan.
//
// Three kinds of failure, three tools: what a user can cause is a Result; what no input can reach is an
// assertion; what no caller can act on (memory, a broken installation) is an exception, caught at the
// program's edge.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "core/base/place.hpp"

namespace sparewright::base {

// Stable names of the failures a user can meet. The words are in messages.cpp, one row each.
enum class Code {
  // numbers as people write them
  kEmptyValue,
  kNotANumber,
  kDecimalComma,
  kUnitMissing,
  kUnitUnknown,
  kUnitOfAnotherKind,
  kThreadWhereLength,
  kBadFraction,
  kDesignationWhereLength,
  kNumberTooLarge,
  kTrailingText,
  kTwoReadings,
  kBadTolerance,
  kToleranceOrder,
  // formulas
  kFormulaSyntax,
  kNameUnknown,
  kKindsDoNotMix,
  kDividesByZero,
  kOutsideDomain,
  // texts
  kTextSyntax,
  kNotText,
  kKeyUnknown,
  kKeyMissing,
  kValueOfAnotherType,
  kValueNotAccepted,
  kNameTwice,
  kNameCircle,
  kEditRefused,
  // files
  kFileUnreadable,
  kFileTooLarge,
  kOutputNotWritable,
  // shop, part and order of work
  kNotInTheShop,
  kNotInTheJob,
  kSizeNotPositive,
  kNotTabled,
  kNotSupported,
  kTooMany,
  // handed in by a room below
  kReadingsTooFew,
  kReadingsDisagree,
  kKernel,
  kStopped,
  kLast,  // one past the last; not a failure
};

// One failure: what was found, where, and what would be accepted.
struct Failure {
  Code code = Code::kNotSupported;
  std::string subject;         // what it concerns: a key, a name, a feature
  std::string found;           // as it stands in the input
  std::string accepted;        // what would be taken instead; may be empty
  std::optional<Span> span;    // bytes within the value that was being read, before a place is known
  std::optional<Place> place;  // in a text
};

using Failures = std::vector<Failure>;

template <typename Value>
using Result = tl::expected<Value, Failure>;

template <typename Value>
using ResultOrAll = tl::expected<Value, Failures>;  // where every failure of a text is told at once

[[nodiscard]] inline tl::unexpected<Failure> fail(Failure failure) {
  return tl::unexpected<Failure>(std::move(failure));
}

[[nodiscard]] inline tl::unexpected<Failure> fail(Code code, std::string_view found,
                                                  std::string_view accepted = {},
                                                  std::string_view subject = {}) {
  Failure failure;
  failure.code = code;
  failure.subject = subject;
  failure.found = found;
  failure.accepted = accepted;
  return tl::unexpected<Failure>(std::move(failure));
}

}  // namespace sparewright::base
