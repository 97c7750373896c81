#include "core/text/edit.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "core/base/messages.hpp"
#include "core/text/extent.hpp"
#include "core/text/literal.hpp"
#include "core/text/splice.hpp"

namespace sparewright::text {
namespace {

using base::Result;
using base::Span;

tl::unexpected<base::Failure> refused(std::string_view path, std::string_view why,
                                      std::string_view accepted = {}) {
  return base::fail(base::Code::kEditRefused, why, accepted, path.empty() ? "the text" : path);
}

// The same values in the same order, written the same, one of each side being left out of the comparison.
bool same(const Node& a, const Node& b, const std::optional<Node>& but_a = {},
          const std::optional<Node>& but_b = {}) {
  if (a.type() != b.type()) return false;
  if (a.type() != Type::kTable && a.type() != Type::kList) return a.written() == b.written();
  std::size_t in_b = 0;
  for (const Node child : a) {
    if (child == but_a) continue;
    if (in_b < b.size() && b[in_b] == but_b) ++in_b;
    if (in_b == b.size() || child.key() != b[in_b].key() || !same(child, b[in_b], but_a, but_b)) return false;
    ++in_b;
  }
  if (in_b < b.size() && b[in_b] == but_b) ++in_b;
  return in_b == b.size();
}

// What an edit is to do, for the check of what it did.
struct Change {
  std::string_view path;       // as the caller named it
  std::optional<Node> gone;    // in the old text
  std::string new_path;        // where the new value must be found; empty if there is none
  std::optional<Node> wanted;  // what it must be
  std::string new_parent;      // the table or list it was added to, if it was
};

Result<Document> apply(const Document& before, const std::vector<Splice>& splices, const Change& change) {
  auto after = Document::parse(spliced(before.text(), splices), before.name());
  if (!after) return refused(change.path, base::sentence(after.error()), after.error().accepted);
  std::optional<Node> added;
  if (change.wanted) {
    const auto found = after->at(change.new_path);
    if (!found || !same(*found, *change.wanted)) {
      return refused(change.path, "it would not read back as it was given");
    }
    added = *found;
    // A key such as a.b brings the table a with it: all of that is new.
    while (!change.gone && !added->is_root() && added->parent()->path() != change.new_parent) {
      added = added->parent();
    }
  }
  if (!same(before.root(), after->root(), change.gone, added)) {
    return refused(change.path, "other values would change");
  }
  return after;
}

// A Document `x = value`, after making sure that it is one value and nothing else.
Result<Document> parse_value(std::string_view path, std::string_view value) {
  constexpr std::string_view kKey = "x = ";
  auto document = Document::parse(fmt::format("{}{}", kKey, value), "the new value");
  if (!document) return refused(path, base::sentence(document.error()), document.error().accepted);
  const Node root = document->root();
  if (root.size() != 1 || root[0].span() != Span{kKey.size(), value.size()}) {
    return refused(path, fmt::format("not one value: {}", value), "one value of TOML, without a comment");
  }
  return document;
}

Result<Document> parse_body(std::string_view path, std::string_view body) {
  auto document = Document::parse(std::string(body), "the new table");
  if (!document) return refused(path, base::sentence(document.error()), document.error().accepted);
  for (const Node child : document->root()) {
    if (child.layout() == Layout::kSection || child.layout() == Layout::kHeaderless) {
      return refused(path, "a header in the lines of a table", "lines of 'key = value'");
    }
  }
  return document;
}

Result<Document> add_key(const Document& document, const Node& table, std::string_view path,
                         std::string_view key, const Document& value) {
  const Node around = written_table(table);
  std::string statement = fmt::format("{} = {}", key, value.root()[0].written());
  for (Node dotted = table; dotted != around; dotted = *dotted.parent()) {
    statement = fmt::format("{}.{}", written_key(dotted.key()), statement);
  }
  const Change change{path, {}, std::string(path), value.root()[0], table.path()};
  if (around.layout() == Layout::kHeaderless) {
    return refused(path, fmt::format("there is no header [{}]", around.path()));
  }
  const bool in_braces = around.layout() == Layout::kValue;
  const Splice splice = in_braces ? piece_put_in(document.text(), around, entries_of(table), statement)
                                  : line_put_in(document.text(), table, statement);
  return apply(document, {splice}, change);
}

std::string joined(const std::string& above, std::string_view below) {
  return fmt::format("{}{}{}", above, above.empty() ? "" : ".", below);
}

// Names between the dots of a header: the keys on the way, places in lists left out.
std::string header_of(const Node& node) {
  const auto above = node.parent();
  if (!above) return {};
  std::string before = header_of(*above);
  if (above->type() == Type::kList) return before;
  return joined(before, written_key(node.key()));
}

}  // namespace

Result<Document> with_value(const Document& document, std::string_view path, std::string_view value) {
  auto parsed = parse_value(path, trimmed(value));
  if (!parsed) return parsed;
  const auto [node, rest] = document.reach(path);
  if (!rest.empty() && node.type() == Type::kTable && rest.front() != '[') {
    return add_key(document, node, path, rest, *parsed);
  }
  if (!rest.empty()) return refused(path, fmt::format("{} has no {}", node.label(), rest));
  if (node.layout() != Layout::kValue) {
    return refused(path, "it is written in several lines", "the path of a key in it");
  }
  const Node wanted = parsed->root()[0];
  return apply(document, {{node.span(), std::string(wanted.written())}},
               {path, node, std::string(path), wanted, {}});
}

Result<Document> with_item(const Document& document, std::string_view list, std::string_view value) {
  auto parsed = parse_value(list, trimmed(value));
  if (!parsed) return parsed;
  const auto node = document.at(list);
  if (!node) return refused(list, base::sentence(node.error()), node.error().accepted);
  if (node->type() != Type::kList || node->layout() != Layout::kValue) {
    return refused(list, "not a list in brackets");
  }
  const Node wanted = parsed->root()[0];
  const Splice splice = piece_put_in(document.text(), *node, entries_of(*node), wanted.written());
  return apply(document, {splice},
               {list, {}, fmt::format("{}[{}]", list, node->size() + 1), wanted, std::string(list)});
}

Result<Document> with_another(const Document& document, std::string_view path, std::string_view body) {
  auto parsed = parse_body(path, body);
  if (!parsed) return parsed;
  const auto [node, rest] = document.reach(path);
  if (!rest.empty()) {
    const std::string header = fmt::format("[[{}]]", joined(header_of(node), rest));
    return apply(document, {section_put_in(document.text(), node, header, body)},
                 {path, {}, fmt::format("{}[1]", path), parsed->root(), node.path()});
  }
  if (node.type() != Type::kList || node.layout() != Layout::kHeaderless) {
    return refused(path, "not a list of tables with headers");
  }
  return apply(document,
               {section_put_in(document.text(), node, fmt::format("[[{}]]", header_of(node)), body)},
               {path, {}, fmt::format("{}[{}]", path, node.size() + 1), parsed->root(), std::string(path)});
}

Result<Document> with_section(const Document& document, std::string_view path, std::string_view body) {
  auto parsed = parse_body(path, body);
  if (!parsed) return parsed;
  const auto [node, rest] = document.reach(path);
  if (rest.empty()) return refused(path, "it is there already");
  const std::string header = fmt::format("[{}]", joined(header_of(node), rest));
  return apply(document, {section_put_in(document.text(), node, header, body)},
               {path, {}, std::string(path), parsed->root(), node.path()});
}

Result<Document> without(const Document& document, std::string_view path) {
  const auto found = document.at(path);
  if (!found) return refused(path, base::sentence(found.error()), found.error().accepted);
  Node node = *found;
  if (node.is_root()) return refused(path, "the text as a whole stays");
  // The last of what only its parts write down goes with the whole.
  for (Node above = *node.parent(); above.size() == 1 && !above.is_root(); above = *node.parent()) {
    if (above.layout() != Layout::kDotted && above.layout() != Layout::kHeaderless) break;
    node = above;
  }
  const std::string& text = document.text();
  const Change change{path, node, {}, {}, {}};
  if (node.layout() == Layout::kSection || node.layout() == Layout::kHeaderless) {
    return apply(document, {section_taken_out(text, node)}, change);
  }
  const std::vector<Node> entries =
      node.layout() == Layout::kDotted ? entries_of(node) : std::vector<Node>{node};
  if (entries.size() != 1) return refused(path, "it is written in several lines");
  const Node around = written_table(*node.parent());
  if (around.layout() != Layout::kValue) return apply(document, {line_taken_out(text, entries[0])}, change);
  return apply(document, piece_taken_out(text, around, entries[0]), change);
}

}  // namespace sparewright::text
