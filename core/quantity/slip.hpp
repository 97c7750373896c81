// What a text looks like that is not the number wanted, so that the message can say what was probably meant.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/base/result.hpp"
#include "core/quantity/count.hpp"
#include "core/quantity/kind.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::quantity {

// A failure about part, a piece of text; its subject is the kind's name.
[[nodiscard]] base::Failure slip(base::Code code, std::string_view text, std::string_view part,
                                 std::string accepted, Kind kind);

// "a number such as 1.375, 1-3/8 or 34.9 mm": for the accepted line.
[[nodiscard]] std::string a_number_of(Kind kind);

// Nothing at all, a thread, a drill, a fit, a comma in the number: told before the number is read.
[[nodiscard]] std::optional<base::Failure> slip_before_number(std::string_view text, Kind kind);

// What is wrong with rest, the piece of text left over after a number and its unit (if it named one) were
// read. rest is trimmed and not empty.
[[nodiscard]] base::Failure slip_after_number(std::string_view text, std::string_view rest,
                                              const Count& count, const std::optional<Unit>& named,
                                              Kind kind);

// "25 mm or 25 in: write the unit after each number": a number whose unit could be either of two.
[[nodiscard]] base::Failure slip_of_unit(std::string_view text, std::string_view part,
                                         std::string_view one_unit, std::string_view other_unit, Kind kind);

}  // namespace sparewright::quantity
