// The published JSON Schema of a text.
#pragma once

#include <string>
#include <string_view>

#include "core/text/shape.hpp"

namespace sparewright::text {

// A JSON Schema, draft 7 (json-schema.org/draft-07), two blanks an indent, a line end at the end; the same
// bytes each time. It takes and refuses what validate does, with two differences that lie in JSON: 2.0 is a
// whole number there, and a TOML date arrives as whatever the reader of the TOML makes of it.
[[nodiscard]] std::string json_schema(const Shape& shape, std::string_view title,
                                      std::string_view description);

}  // namespace sparewright::text
