// What a parser's complaint means to the person who wrote the text. Used inside this room.
#pragma once

#include <cstddef>
#include <string_view>

#include "core/base/result.hpp"

namespace sparewright::text {

// complaint is the parser's own sentence, "Error while parsing <what>: <why>", at a byte of the text.
// kTextSyntax or kNameTwice, without its place.
[[nodiscard]] base::Failure syntax_failure(std::string_view text, std::size_t offset,
                                           std::string_view complaint);

}  // namespace sparewright::text
