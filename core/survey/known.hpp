// What is known without measuring, as an observation: the two sides of an equation differ by nothing, or by no more than is
// said. Equal: left = right. Symmetric: left_margin = right_margin. Concentric: offset = 0. Parallel: height_front =
// height_back. A sum that closes: a + b + c = whole.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/formula/expression.hpp"
#include "core/ledger/ledger.hpp"
#include "core/survey/check.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// What is said to be exact counts as known to this part of the finest reading of its dimensions: fine enough to move nothing a user can
// see (it shifts sizes by the square of it), coarse enough that the tests of readings still work on it.
inline constexpr double kExactPart = 1e-3;

// The left side less the right one, units checked: of lengths, angles or plain numbers, as the left side is.
// Fails with kValueNotAccepted where there is not one '=', and as formula::Expression does, with the span into `is`.
[[nodiscard]] base::Result<formula::Formula> equation_of(const Known& known,
                                                         std::span<const Dimension> dimensions,
                                                         quantity::UnitSystem system);

// The names in it; none where it cannot be read.
[[nodiscard]] std::vector<std::string> names_in(const Known& known);

// What is wrong with Survey::known, in its order (Trouble::In::kKnown):
//   kNameTwice, kValueNotAccepted   a name used before, empty or with '/'; an equation without a dimension; `within` that is
//                                   not more than 0
//   kUnitOfAnotherKind              `within` of another kind than the equation
//   kValueNotAccepted               equations that contradict each other: no sizes make them true within what they are
//                                   known to. All that are in it are named
//   and the failures of equation_of
[[nodiscard]] std::vector<Trouble> known_troubles(const Survey& survey);

// "known"
//   known/<name>   a root, a choice of the user: 0 with the cause known/<name>, half-width `within` over sqrt(3)
//                  (JCGM 100:2008, 4.3.7); none where it is exact
// Only for what equation_of() takes.
[[nodiscard]] ledger::Stage known_stage(const Survey& survey);

[[nodiscard]] std::string known_path(std::string_view name);  // "known/alike"

}  // namespace sparewright::survey
