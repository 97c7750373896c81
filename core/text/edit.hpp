// Edits of a text. Each is a splice: every byte outside it stays, comments and blank lines too. The new text
// is parsed again, and the edit is refused (kEditRefused, the old Document being what it was) if any other
// value is not as it was before, if the new one does not read back as it was given, or if the text grows out
// of measure (limits.hpp).
//
// Paths are those of Node::path. A value is the TOML text of one value, without a comment: 0.75, "1-3/8",
// { size = "1.000", fit = "H7" }. A body is the lines of a table: key = value, comments, no headers; may be
// empty.
#pragma once

#include <string_view>

#include "core/base/result.hpp"
#include "core/text/document.hpp"

namespace sparewright::text {

// Puts the value in the place of the one at path. A key that is not there yet is added after the last of its
// table: on a line of its own, inside the braces, or with the dotted key of its neighbours. The table itself
// must be there. Refused for a table or list that stands under headers; for that, edit the keys inside.
[[nodiscard]] base::Result<Document> with_value(const Document& document, std::string_view path,
                                                std::string_view value);

// Adds an item at the end of a list in brackets.
[[nodiscard]] base::Result<Document> with_item(const Document& document, std::string_view list,
                                               std::string_view value);

// Adds one more [[path]] after the others, the first one after all that belongs to its parent.
[[nodiscard]] base::Result<Document> with_another(const Document& document, std::string_view path,
                                                  std::string_view body);

// Adds a table [path] that is not there yet, after all that belongs to its parent.
[[nodiscard]] base::Result<Document> with_section(const Document& document, std::string_view path,
                                                  std::string_view body);

// Takes a value and its key away. A comment behind it stays on its line. A table with a header goes with all
// that stands from its header to its last value, comments between them included; feature[2] so too, and what
// is inside it. Refused where its parts stand among those of others, and for a table made by several dotted
// keys.
[[nodiscard]] base::Result<Document> without(const Document& document, std::string_view path);

}  // namespace sparewright::text
