// The values of a parsed text in one flat list; what Node looks into. Used inside this room.
#pragma once

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "core/base/place.hpp"
#include "core/base/result.hpp"
#include "core/text/node.hpp"

namespace sparewright::text {

struct Record {
  Type type = Type::kTable;
  Layout layout = Layout::kValue;
  std::string key;
  bool has_key = false;
  base::Span key_span;
  base::Span span;
  std::variant<std::monostate, std::string, std::int64_t, double, bool> value;

  std::uint32_t parent = 0;
  std::uint32_t position = 0;     // among the values of its parent
  std::uint32_t first_child = 0;  // the values inside stand side by side, in the order of the text
  std::uint32_t children = 0;
};

struct Tree {
  std::string text;  // every byte, a byte order mark included
  std::string name;
  bool has_byte_order_mark = false;
  std::vector<Record> records;  // [0] is the text as a whole
};

// The text as TOML 1.0 reads it, or the first thing that cannot be read. Expects a text that passed
// check_limits.
[[nodiscard]] base::Result<Tree> parse_tree(std::string text, std::string name);

}  // namespace sparewright::text
