#include "core/text/literal.hpp"

#include <algorithm>
#include <charconv>

#include <fmt/format.h>

namespace sparewright::text {
namespace {

bool is_bare(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' || c == '-';
}

// A piece of a literal that stands for a piece of the content.
struct Piece {
  std::size_t written = 1;
  std::size_t content = 1;
};

std::size_t utf8_length(std::string_view hex) {
  std::uint32_t code_point = 0;
  std::from_chars(hex.data(), hex.data() + hex.size(), code_point, 16);
  return code_point < 0x80 ? 1 : code_point < 0x800 ? 2 : code_point < 0x10000 ? 3 : 4;
}

// rest begins with a backslash.
Piece escape(std::string_view rest) {
  const char which = rest.size() > 1 ? rest[1] : '\0';
  if (which == 'u') return {6, utf8_length(rest.substr(2, 4))};
  if (which == 'U') return {10, utf8_length(rest.substr(2, 8))};
  if (which != ' ' && which != '\t' && which != '\r' && which != '\n') return {2, 1};
  // A backslash at the end of a line swallows the blanks and line ends that follow.
  return {std::min(rest.find_first_not_of(" \t\r\n", 1), rest.size()), 0};
}

}  // namespace

std::string in_quotes(std::string_view content) {
  std::string out = "\"";
  for (const char c : content) {
    if (c == '"' || c == '\\') {
      out += {'\\', c};
    } else if (c == '\n') {
      out += "\\n";
    } else if (c == '\t') {
      out += "\\t";
    } else if (static_cast<unsigned char>(c) < 0x20U || c == '\x7F') {
      out += fmt::format("\\u{:04X}", static_cast<unsigned>(c));
    } else {
      out += c;
    }
  }
  return out += '"';
}

std::string written_key(std::string_view key) {
  return !key.empty() && std::all_of(key.begin(), key.end(), is_bare) ? std::string(key) : in_quotes(key);
}

std::string_view trimmed(std::string_view text) {
  constexpr std::string_view kBlanks = " \t\r\n";
  const auto first = text.find_first_not_of(kBlanks);
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(kBlanks) - first + 1);
}

std::size_t offset_in_literal(std::string_view literal, std::size_t content_offset) {
  const bool basic = literal.starts_with('"');
  const bool multi_line = literal.starts_with("\"\"\"") || literal.starts_with("'''");
  const std::size_t quotes = multi_line ? 3 : 1;
  std::size_t at = quotes;
  if (multi_line && literal.substr(at).starts_with("\r\n")) {
    at += 2;  // a line end right after the opening quotes is not content
  } else if (multi_line && literal.substr(at).starts_with('\n')) {
    at += 1;
  }
  std::size_t content = 0;
  while (at + quotes < literal.size()) {
    Piece piece;
    if (basic && literal[at] == '\\') {
      piece = escape(literal.substr(at, literal.size() - quotes - at));
    } else if (literal.substr(at).starts_with("\r\n")) {
      piece = {2, 1};  // read as one line end
    }
    if (content_offset < content + piece.content) break;
    content += piece.content;
    at += piece.written;
  }
  return at;
}

}  // namespace sparewright::text
