#include "core/text/extent.hpp"

#include <algorithm>

#include "core/text/literal.hpp"

namespace sparewright::text {
namespace {

void gather_entries(const Node& table, std::vector<Node>& entries) {
  for (const Node child : table) {
    if (child.layout() == Layout::kValue) entries.push_back(child);
    if (child.layout() == Layout::kDotted) gather_entries(child, entries);
  }
}

}  // namespace

std::vector<Node> entries_of(const Node& table) {
  std::vector<Node> entries;
  gather_entries(table, entries);
  std::sort(entries.begin(), entries.end(),
            [](const Node& a, const Node& b) { return a.span().offset < b.span().offset; });
  return entries;
}

Node written_table(Node table) {
  while (table.layout() == Layout::kDotted)
    table = *table.parent();
  return table;
}

base::Span extent_of(const Node& node) {
  std::size_t begin = node.span().offset;
  std::size_t end = node.span().end();
  if (node.layout() == Layout::kValue) return node.span();
  for (const Node child : node) {
    const base::Span inside = extent_of(child);
    begin = std::min(begin, inside.offset);
    end = std::max(end, inside.end());
  }
  return {begin, end - begin};
}

std::size_t line_begin(std::string_view text, std::size_t offset) {
  const auto before = text.substr(0, offset).rfind('\n');
  if (before != std::string_view::npos) return before + 1;
  return text.starts_with(kByteOrderMark) ? kByteOrderMark.size() : 0;
}

std::size_t line_end(std::string_view text, std::size_t offset) {
  const auto end = text.find('\n', offset);
  return end == std::string_view::npos ? text.size() : end + 1;
}

std::string_view line_end_of(std::string_view text) {
  const auto first = text.find('\n');
  return first != std::string_view::npos && first > 0 && text[first - 1] == '\r' ? "\r\n" : "\n";
}

std::size_t next_token(std::string_view text, std::size_t offset) {
  while (offset < text.size()) {
    offset = std::min(text.find_first_not_of(" \t\r\n", offset), text.size());
    if (offset == text.size() || text[offset] != '#') return offset;
    offset = line_end(text, offset);
  }
  return offset;
}

}  // namespace sparewright::text
