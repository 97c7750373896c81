// Sizes of inch screws and threads as they are named: #10, No. 10, 1/4, 1-1/8, .250, 2.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// The diameter of a numbered size: 0.060 + 0.013 n inches, n from 0 to 14.
// Source: ASME B1.1, B18.3 (from memory of the rule; #4 to #12 are also in the tables read).
[[nodiscard]] quantity::Diameter numbered_size(int number);

// Numbers in use: 0 to 6, 8, 10, 12, 14.
[[nodiscard]] bool is_numbered_size(int number);

struct InchSize {
  std::string name;            // "#10", "1/4", "1-1/8", "2"; a decimal that is no such size as "0.3500"
  quantity::Diameter nominal;  // of a bare whole number: that many inches
  std::optional<int> bare;     // a whole number without #: 10 may be #10 or 10 in
  std::size_t taken = 0;       // bytes
};

inline constexpr int kLargestInches = 6;

// The size at the start of text, at most 6 in; none where there is none. Fractions are of 2 to 64 and less
// than one.
[[nodiscard]] std::optional<InchSize> inch_size_at(std::string_view text);

// The numbered size of that number, named and sized.
[[nodiscard]] InchSize as_numbered(int number, std::size_t taken);

}  // namespace sparewright::handbook
