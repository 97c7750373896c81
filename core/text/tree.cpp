#include "core/text/tree.hpp"

#include <algorithm>
#include <tuple>
#include <utility>

#include <toml++/toml.h>

#include "core/text/literal.hpp"
#include "core/text/syntax.hpp"

namespace sparewright::text {
namespace {

// Byte offsets of the parser's positions: lines and columns from 1, columns in code points, the byte order
// mark not counted. Asked in the order of the text it walks each line once.
class Offsets {
 public:
  Offsets(std::string_view text, std::size_t start) : text_(text) {
    lines_.push_back(start);
    for (std::size_t at = text.find('\n', start); at != std::string_view::npos;
         at = text.find('\n', at + 1)) {
      lines_.push_back(at + 1);
    }
  }

  std::size_t operator()(const toml::source_position& position) {
    const std::size_t line = std::min<std::size_t>(std::max(position.line, 1U), lines_.size());
    if (line != line_ || position.column < column_) {
      line_ = line;
      column_ = 1;
      at_ = lines_[line - 1];
    }
    for (; column_ < position.column && at_ < text_.size() && text_[at_] != '\n'; ++column_) {
      ++at_;
      while (at_ < text_.size() && (static_cast<unsigned char>(text_[at_]) & 0xC0U) == 0x80U)
        ++at_;
    }
    return at_;
  }

  base::Span operator()(const toml::source_region& region) {
    const std::size_t begin = (*this)(region.begin);
    return {begin, (*this)(region.end) - begin};
  }

 private:
  std::string_view text_;
  std::vector<std::size_t> lines_;
  std::size_t line_ = 0;  // what was asked last
  std::size_t column_ = 1;
  std::size_t at_ = 0;
};

Type type_of(const toml::node& node) {
  switch (node.type()) {
    case toml::node_type::table:
      return Type::kTable;
    case toml::node_type::array:
      return Type::kList;
    case toml::node_type::string:
      return Type::kText;
    case toml::node_type::integer:
      return Type::kWhole;
    case toml::node_type::floating_point:
      return Type::kDecimal;
    case toml::node_type::boolean:
      return Type::kBoolean;
    default:
      return Type::kDate;
  }
}

// The parser tells how a table was written by its region alone: an inline one begins with its brace; one with
// a header has the region of the header; a dotted one that of its first key. A key that has just been named
// in the header of another table is followed there by a dot, not by the closing bracket.
Layout layout_of(const Record& record, std::string_view text) {
  const char first = text[record.span.offset];
  if (record.type == Type::kList) {
    return record.has_key && record.key_span.offset > record.span.offset ? Layout::kHeaderless
                                                                         : Layout::kValue;
  }
  if (record.type != Type::kTable || first == '{') return Layout::kValue;
  if (first != '[') return Layout::kDotted;
  const bool named_here = record.has_key && record.key_span.offset > record.span.offset;
  if (!named_here) return Layout::kSection;
  const auto after = text.find_first_not_of(" \t", record.key_span.end());
  return after != std::string_view::npos && text[after] == ']' ? Layout::kSection : Layout::kHeaderless;
}

// Lists the values level by level, so that the values inside one stand side by side.
class Builder {
 public:
  Builder(Tree& tree, const toml::table& root)
      : tree_(tree), offsets_(tree.text, tree.has_byte_order_mark ? kByteOrderMark.size() : 0) {
    Record whole;
    whole.layout = Layout::kSection;
    whole.span = {0, tree.text.size()};
    tree_.records.push_back(std::move(whole));
    sources_.push_back(&root);
  }

  void build() {
    for (std::uint32_t parent = 0; parent < sources_.size(); ++parent) {
      const std::vector<Child> children = children_of(*sources_[parent]);
      tree_.records[parent].first_child = static_cast<std::uint32_t>(tree_.records.size());
      tree_.records[parent].children = static_cast<std::uint32_t>(children.size());
      for (std::uint32_t i = 0; i < children.size(); ++i) {
        tree_.records.push_back(record_of(children[i], parent, i));
        sources_.push_back(children[i].second);
      }
    }
  }

 private:
  using Child = std::pair<const toml::key*, const toml::node*>;  // no key for an item

  // The parser keeps keys in alphabetical order; we want the order of the text.
  static std::vector<Child> children_of(const toml::node& node) {
    std::vector<Child> children;
    if (const auto* list = node.as_array()) {
      for (const toml::node& item : *list)
        children.emplace_back(nullptr, &item);
    } else if (const auto* table = node.as_table()) {
      for (const auto& [key, value] : *table)
        children.emplace_back(&key, &value);
      const auto place = [](const Child& child) {
        const toml::source_position& begin = child.first->source().begin;
        return std::tuple(begin.line, begin.column);
      };
      std::sort(children.begin(), children.end(),
                [&](const Child& a, const Child& b) { return place(a) < place(b); });
    }
    return children;
  }

  Record record_of(const Child& child, std::uint32_t parent, std::uint32_t position) {
    const auto& [key, node] = child;
    Record record;
    record.type = type_of(*node);
    record.parent = parent;
    record.position = position;
    if (key != nullptr) {
      record.key = key->str();
      record.has_key = true;
      record.key_span = offsets_(key->source());
    }
    record.span = offsets_(node->source());
    record.layout = layout_of(record, tree_.text);
    if (const auto* text = node->as_string()) {
      record.value = text->get();
    } else if (const auto* whole = node->as_integer()) {
      record.value = whole->get();
    } else if (const auto* decimal = node->as_floating_point()) {
      record.value = decimal->get();
    } else if (const auto* flag = node->as_boolean()) {
      record.value = flag->get();
    }
    return record;
  }

  Tree& tree_;
  Offsets offsets_;
  std::vector<const toml::node*> sources_;
};

}  // namespace

base::Result<Tree> parse_tree(std::string text, std::string name) {
  Tree tree;
  tree.text = std::move(text);
  tree.name = std::move(name);
  tree.has_byte_order_mark = tree.text.starts_with(kByteOrderMark);
  try {
    const toml::table root = toml::parse(std::string_view(tree.text));
    Builder(tree, root).build();
  } catch (const toml::parse_error& error) {
    const std::string_view body =
        std::string_view(tree.text).substr(tree.has_byte_order_mark ? kByteOrderMark.size() : 0);
    const std::size_t offset = Offsets(body, 0)(error.source().begin);
    base::Failure failure = syntax_failure(body, offset, error.description());
    failure.place = base::place_of(tree.name, body, offset);
    return base::fail(std::move(failure));
  }
  return tree;
}

}  // namespace sparewright::text
