#include "core/text/node.hpp"

#include <fmt/format.h>

#include "core/text/literal.hpp"
#include "core/text/tree.hpp"

namespace sparewright::text {

std::string_view name_of(Type type) {
  switch (type) {
    case Type::kText:
      return "a text";
    case Type::kWhole:
      return "a whole number";
    case Type::kDecimal:
      return "a decimal number";
    case Type::kBoolean:
      return "true or false";
    case Type::kDate:
      return "a date or time";
    case Type::kList:
      return "a list";
    case Type::kTable:
      return "a table";
  }
  return "";
}

Type Node::type() const {
  return tree_->records[index_].type;
}
Layout Node::layout() const {
  return tree_->records[index_].layout;
}

std::string Node::path() const {
  const auto above = parent();
  if (!above) return {};
  std::string path = above->path();
  if (above->type() == Type::kList) return path + fmt::format("[{}]", position() + 1);
  return (path.empty() ? path : path + '.') + written_key(key());
}

std::string Node::label() const {
  return is_root() ? "the text" : path();
}

base::Span Node::span() const {
  return tree_->records[index_].span;
}
base::Place Node::place() const {
  return place_at(span().offset);
}

std::optional<base::Span> Node::key_span() const {
  const Record& record = tree_->records[index_];
  return record.has_key ? std::optional(record.key_span) : std::nullopt;
}

base::Place Node::key_place() const {
  return place_at(key_span().value_or(span()).offset);
}

base::Place Node::place_at(std::size_t offset) const {
  const std::size_t mark = tree_->has_byte_order_mark ? kByteOrderMark.size() : 0;
  return base::place_of(tree_->name, std::string_view(tree_->text).substr(mark),
                        offset < mark ? 0 : offset - mark);
}

std::string_view Node::key() const {
  return tree_->records[index_].key;
}

std::string_view Node::written() const {
  return std::string_view(tree_->text).substr(span().offset, span().length);
}

std::string_view Node::typed() const {
  const auto* content = std::get_if<std::string>(&tree_->records[index_].value);
  return content != nullptr ? std::string_view(*content) : written();
}

std::optional<std::int64_t> Node::whole() const {
  const auto* number = std::get_if<std::int64_t>(&tree_->records[index_].value);
  return number != nullptr ? std::optional(*number) : std::nullopt;
}

std::optional<double> Node::decimal() const {
  if (const auto number = whole()) return static_cast<double>(*number);
  const auto* number = std::get_if<double>(&tree_->records[index_].value);
  return number != nullptr ? std::optional(*number) : std::nullopt;
}

std::optional<bool> Node::truth() const {
  const auto* flag = std::get_if<bool>(&tree_->records[index_].value);
  return flag != nullptr ? std::optional(*flag) : std::nullopt;
}

std::size_t Node::size() const {
  return tree_->records[index_].children;
}

Node Node::operator[](std::size_t position) const {
  return {*tree_, tree_->records[index_].first_child + static_cast<std::uint32_t>(position)};
}

std::optional<Node> Node::find(std::string_view key) const {
  if (type() != Type::kTable) return std::nullopt;
  for (const Node child : *this) {
    if (child.key() == key) return child;
  }
  return std::nullopt;
}

std::optional<Node> Node::parent() const {
  return is_root() ? std::nullopt : std::optional(Node(*tree_, tree_->records[index_].parent));
}

std::size_t Node::position() const {
  return tree_->records[index_].position;
}

Node::Iterator Node::begin() const {
  return {*this, 0};
}
Node::Iterator Node::end() const {
  return {*this, size()};
}

}  // namespace sparewright::text
