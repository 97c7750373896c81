// What a text must keep to before it is read at all: UTF-8 and within measure.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

#include "core/base/result.hpp"

namespace sparewright::text {

// A job text of a part with a hundred features has some 30 KiB, 2,000 values and 5 levels. The parser and
// what follows walk the levels by recursion, so kDeepest also keeps the stack small.
inline constexpr std::size_t kLargestText = std::size_t{4} * 1024 * 1024;  // bytes
inline constexpr std::size_t kDeepest = 64;          // tables and lists inside each other
inline constexpr std::size_t kMostValues = 100'000;  // keys, items and headers
inline constexpr std::size_t kMostProblems = 200;    // told of one text at once

// The first thing out of measure: kNotText (not UTF-8, a byte 0), kFileTooLarge, kTooMany (depth, values).
// Of a text that is not TOML it may find less, never more than there is before the first fault.
[[nodiscard]] std::optional<base::Failure> check_limits(std::string_view text, std::string_view name);

}  // namespace sparewright::text
