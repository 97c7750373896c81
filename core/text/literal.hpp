// Texts and keys as TOML writes them.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace sparewright::text {

inline constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

// "a text" between double quotes on one line, with what needs it escaped. content must be UTF-8.
[[nodiscard]] std::string in_quotes(std::string_view content);

// A key as it is written: bare where it has only letters, digits, - and _, else quoted.
[[nodiscard]] std::string written_key(std::string_view key);

// Without the blanks and line ends around it.
[[nodiscard]] std::string_view trimmed(std::string_view text);

// Where in a text as written, quotes included, a byte of its content stands: 3 of "a\u00e9b" is 8. A byte
// made by an escape stands where the escape begins; the end of the content is the closing quote. literal is a
// valid TOML string of any of the four sorts.
[[nodiscard]] std::size_t offset_in_literal(std::string_view literal, std::size_t content_offset);

}  // namespace sparewright::text
