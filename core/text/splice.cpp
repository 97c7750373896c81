#include "core/text/splice.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/text/extent.hpp"
#include "core/text/literal.hpp"

namespace sparewright::text {
namespace {

using base::Span;

std::string ended(std::string_view lines, std::string_view line_end) {
  return std::string(lines) + std::string(lines.empty() || lines.back() == '\n' ? "" : line_end);
}

// Lines that go in at an offset where a line begins or the text ends.
Splice lines_at(std::string_view text, std::size_t offset, std::string_view lines) {
  const std::string_view end = line_end_of(text);
  const bool in_line = offset > line_begin(text, offset);
  return {{offset, 0}, std::string(in_line ? end : "") + ended(lines, end)};
}

std::string indent_at(std::string_view text, std::size_t offset) {
  const std::string_view line = text.substr(line_begin(text, offset));
  return std::string(line.substr(0, std::min(line.find_first_not_of(" \t"), line.size())));
}

bool holds_comment(std::string_view text, std::size_t begin, std::size_t end) {
  return text.substr(begin, end - begin).find('#') != std::string_view::npos;
}

// Two pieces with what lies between them, or without it where it holds a comment.
std::vector<Splice> both(std::string_view text, Span first, Span second) {
  if (holds_comment(text, first.end(), second.offset)) return {{first, {}}, {second, {}}};
  return {{{first.offset, second.end() - first.offset}, {}}};
}

}  // namespace

std::string spliced(std::string text, const std::vector<Splice>& splices) {
  for (auto splice = splices.rbegin(); splice != splices.rend(); ++splice) {
    text.replace(splice->span.offset, splice->span.length, splice->text);
  }
  return text;
}

Splice line_put_in(std::string_view text, const Node& table, std::string_view statement) {
  const std::vector<Node> entries = entries_of(table);
  if (!entries.empty()) {
    const std::size_t at = line_end(text, entries.back().span().end());
    const std::string indent = indent_at(text, entries.back().key_span()->offset);
    return lines_at(text, at, indent + std::string(statement));
  }
  if (!table.is_root()) {
    const std::size_t at = line_end(text, table.span().end());
    return lines_at(text, at, statement);
  }
  const std::size_t at = table.size() == 0 ? text.size() : line_begin(text, extent_of(table[0]).offset);
  return lines_at(text, at, statement);
}

Splice piece_put_in(std::string_view text, const Node& around, const std::vector<Node>& there,
                    std::string_view piece) {
  if (!there.empty()) return {{there.back().span().end(), 0}, fmt::format(", {}", piece)};
  const std::size_t at = around.span().offset + 1;
  const bool padded = around.type() == Type::kTable && text[at] == '}';
  return {{at, 0}, padded ? fmt::format(" {} ", piece) : std::string(piece) + (text[at] == '#' ? " " : "")};
}

Splice section_put_in(std::string_view text, const Node& after, std::string_view header,
                      std::string_view body) {
  const std::string_view end = line_end_of(text);
  const std::size_t at = line_end(text, extent_of(after).end());
  const std::size_t last_line = line_begin(text, at == 0 ? 0 : at - 1);
  const bool wants_blank_line = !trimmed(text.substr(last_line, at - last_line)).empty();
  return lines_at(text, at,
                  fmt::format("{}{}{}{}", wants_blank_line ? end : "", header, end, ended(body, end)));
}

Splice line_taken_out(std::string_view text, const Node& entry) {
  const std::size_t line = line_begin(text, entry.key_span()->offset);
  const std::size_t end = entry.span().end();
  const std::size_t rest = std::min(text.find_first_not_of(" \t\r", end), text.size());
  if (rest < text.size() && text[rest] == '#') {
    const std::size_t begin = line + indent_at(text, line).size();
    return {{begin, rest - begin}, {}};
  }
  return {{line, line_end(text, end) - line}, {}};
}

std::vector<Splice> piece_taken_out(std::string_view text, const Node& around, const Node& entry) {
  const std::vector<Node> there = entries_of(around);
  const auto found = std::find(there.begin(), there.end(), entry);
  const bool is_first = found == there.begin();
  // What opens it, a bracket or the comma before; where it begins; what comes after it, a comma or a bracket.
  const std::size_t opener = is_first ? around.span().offset : next_token(text, found[-1].span().end());
  const std::size_t begin = next_token(text, opener + 1);
  const std::size_t after = next_token(text, entry.span().end());
  const Span piece{begin, entry.span().end() - begin};
  const bool on_one_line = text.find_first_not_of(" \t", opener + 1) == begin;
  if (!is_first && (on_one_line || text[after] != ',')) return both(text, {opener, 1}, piece);
  if (text[after] != ',') return {{piece, {}}};

  const std::size_t line = line_begin(text, begin);
  const std::size_t rest = std::min(text.find_first_not_of(" \t\r", after + 1), text.size());
  const bool ends_line = text[rest] == '\n';
  const bool alone = ends_line && trimmed(text.substr(line, begin - line)).empty();
  if (alone && !holds_comment(text, piece.end(), after)) return {{{line, rest + 1 - line}, {}}};
  return both(text, piece, {after, ends_line ? 1 : rest - after});
}

Splice section_taken_out(std::string_view text, const Node& node) {
  const Span extent = extent_of(node);
  const std::size_t begin = line_begin(text, extent.offset);
  return {{begin, line_end(text, extent.end()) - begin}, {}};
}

}  // namespace sparewright::text
