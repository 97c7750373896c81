// From where to where in the text a value reaches with all that belongs to it. Used inside this room, by
// edits.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/place.hpp"
#include "core/text/node.hpp"

namespace sparewright::text {

// The values written as `key = value` in a table, those of its dotted tables too, or the items of a list in
// brackets; in the order of the text.
[[nodiscard]] std::vector<Node> entries_of(const Node& table);

// The nearest table around (or equal to) a dotted one that has a header or braces.
[[nodiscard]] Node written_table(Node table);

// From the first byte of the first header or value to the last of the last, comments behind it left out.
[[nodiscard]] base::Span extent_of(const Node& node);

[[nodiscard]] std::size_t line_begin(std::string_view text, std::size_t offset);  // past a byte order mark
[[nodiscard]] std::size_t line_end(std::string_view text, std::size_t offset);    // past its \n, or the end

// The line end this text uses: "\r\n" where its first line ends so, else "\n".
[[nodiscard]] std::string_view line_end_of(std::string_view text);

// The next byte of a list or inline table from offset on that is neither blank, line end nor comment.
[[nodiscard]] std::size_t next_token(std::string_view text, std::size_t offset);

}  // namespace sparewright::text
