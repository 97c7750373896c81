// What the tables' lookups share: names as people type them, size ranges, and the failures that name what is
// known.
#pragma once

#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/result.hpp"

namespace sparewright::handbook {

// In small letters (ASCII), blanks around taken off and runs of blanks made one.
[[nodiscard]] std::string folded(std::string_view text);

// The digits at the start of text as a number, and how many there were; none where it does not start with a
// digit or the number is over `most`.
struct Digits {
  int value = 0;
  std::size_t taken = 0;
};
[[nodiscard]] std::optional<Digits> digits_at(std::string_view text, int most);

// Ends of ranges in mm are met by computed sizes, which may be off in the last bits; a nanometre decides
// nothing.
inline constexpr double kSizeSlackMm = 1e-6;

// Whether a size lies over `over` and up to and including `up_to`, a missing end being no limit. Takes any
// two lengths of one role.
template <class Size>
[[nodiscard]] constexpr bool in_range(Size size, const std::optional<Size>& over,
                                      const std::optional<Size>& up_to) {
  return (!over || size.base() > over->base() + kSizeSlackMm) &&
         (!up_to || size.base() <= up_to->base() + kSizeSlackMm);
}

// "'1/3' is not a known {subject}". What is accepted is the list of known names, or the examples where the
// list would be long; the nearest known name is asked for either way.
[[nodiscard]] tl::unexpected<base::Failure> unknown(std::string_view found, std::string_view subject,
                                                    std::span<const std::string> known,
                                                    std::string_view examples = {});

// "{subject} is not tabled here for {found}"; accepted says what is.
[[nodiscard]] tl::unexpected<base::Failure> not_tabled(std::string_view subject, std::string_view found,
                                                       std::string_view accepted);

// The same, naming the nearest of what is known.
[[nodiscard]] tl::unexpected<base::Failure> not_tabled_among(std::string_view subject, std::string_view found,
                                                             std::span<const std::string> known);

// The distinct names of a table's rows, in the order of the table.
template <class Rows, class Name>
[[nodiscard]] std::vector<std::string> names_of(const Rows& rows, Name name) {
  std::vector<std::string> out;
  std::set<std::string> seen;
  for (const auto& row : rows) {
    std::string one(name(row));
    if (seen.insert(one).second) out.push_back(std::move(one));
  }
  return out;
}

}  // namespace sparewright::handbook
