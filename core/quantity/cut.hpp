// A text that holds two numbers, cut into its two pieces; whether they are numbers is for the caller to see.
#pragma once

#include <optional>
#include <string_view>

namespace sparewright::quantity {

struct Cut {  // pieces of the text, trimmed
  std::string_view first;
  std::string_view second;
};

// A zero without a unit, with a sign or without: 0, +0.000.
[[nodiscard]] bool is_zero(std::string_view part);

// "0.8750 to 0.8758": at the word.
[[nodiscard]] std::optional<Cut> cut_at_to(std::string_view text);

// "+0.000/-0.001", "+0.000 -0.001", "0/-0.1", "+0.2/0": at a sign after a slash or a blank, or at a slash
// before a zero.
[[nodiscard]] std::optional<Cut> cut_at_sign(std::string_view text);

// "0.8750-0.8758", "0.8750 - 0.8758": limits with a dash. Both must have a decimal point, since 1-3/8 is a
// number and 3/8-16 a thread; a blank on one side only makes the dash a sign.
[[nodiscard]] std::optional<Cut> cut_at_dash(std::string_view text);

}  // namespace sparewright::quantity
