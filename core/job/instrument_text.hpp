// Instruments of a shop text, and what texts say of temperature. Used inside this room only.
#pragma once

#include <optional>
#include <string_view>

#include "core/survey/reading.hpp"
#include "core/text/reading.hpp"

namespace sparewright::job {

// `temperature` with `temperature_within`; the one needs the other. None where neither is written.
[[nodiscard]] std::optional<survey::Warmth> read_warmth(const text::TableReader& in);

// The material under a key; none where there is none. One that the handbook does not know, or whose expansion it does not, is
// told.
[[nodiscard]] std::optional<survey::Expansion> read_expansion(const text::TableReader& in,
                                                              std::string_view key);

// `shop`: the temperature of the shop it lies in. Without a good_to it has what the handbook says of its kind
// (handbook/instrument_errors.hpp); of a kind that says nothing, the missing key is told.
[[nodiscard]] survey::Instrument read_instrument(const text::TableReader& in,
                                                 const std::optional<survey::Warmth>& shop);

}  // namespace sparewright::job
