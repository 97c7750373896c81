// The bytes that an edit puts in or takes out, in keeping with the text around them. Used inside this room,
// by edits; whether the outcome is what was wanted is theirs to check.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/place.hpp"
#include "core/text/node.hpp"

namespace sparewright::text {

struct Splice {
  base::Span span;   // goes
  std::string text;  // comes in its place
};

// The splices stand in the order of the text and do not overlap.
[[nodiscard]] std::string spliced(std::string text, const std::vector<Splice>& splices);

// A line of its own for `key = value`, indented as the last of the table's and after it; right after the
// header where the table has none; before the first header where the text as a whole has none.
[[nodiscard]] Splice line_put_in(std::string_view text, const Node& table, std::string_view statement);

// A piece inside brackets or braces, after the last of what is there: entries of the whole or of a dotted
// table in it.
[[nodiscard]] Splice piece_put_in(std::string_view text, const Node& around, const std::vector<Node>& there,
                                  std::string_view piece);

// A header and its lines after all that belongs to a node, with a blank line before it.
[[nodiscard]] Splice section_put_in(std::string_view text, const Node& after, std::string_view header,
                                    std::string_view body);

// The line or lines of a `key = value`. A comment behind it stays, and so its line.
[[nodiscard]] Splice line_taken_out(std::string_view text, const Node& entry);

// One of the values inside brackets or braces, and one comma with it. Comments between them stay.
[[nodiscard]] std::vector<Splice> piece_taken_out(std::string_view text, const Node& around,
                                                  const Node& entry);

// From the first header of a node to the end of its last line.
[[nodiscard]] Splice section_taken_out(std::string_view text, const Node& node);

}  // namespace sparewright::text
