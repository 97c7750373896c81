#include "core/text/reading.hpp"

#include "core/text/literal.hpp"

namespace sparewright::text {
namespace {

using base::Code;
using base::Failure;
using base::Result;

tl::unexpected<Failure> wrong_type(const Node& node, std::string_view accepted) {
  return base::fail(failure_at(node, Code::kValueOfAnotherType, name_of(node.type()), accepted));
}

// What one of core/quantity's readers makes of a text or a number.
template <typename Value>
Result<Value> read_with(Result<Value> (*read)(std::string_view, quantity::Kind, System), const Node& node,
                        quantity::Kind kind, System system) {
  if (node.type() != Type::kText && !node.is_number()) return wrong_type(node, quantity::name_of(kind));
  return located(read(node.typed(), kind, system), node);
}

}  // namespace

Failure located(Failure failure, const Node& node) {
  if (failure.place) return failure;
  std::size_t offset = node.span().offset;
  if (failure.span) {
    offset += node.type() == Type::kText ? offset_in_literal(node.written(), failure.span->offset)
                                         : failure.span->offset;
  }
  failure.place = node.place_at(offset);
  failure.span.reset();
  return failure;
}

Failure failure_at(const Node& node, Code code, std::string_view found, std::string_view accepted) {
  Failure failure;
  failure.code = code;
  failure.subject = node.label();
  failure.found = found;
  failure.accepted = accepted;
  failure.place = node.place();
  return failure;
}

Result<quantity::Typed> read_number(const Node& node, quantity::Kind kind, System system) {
  return read_with(&quantity::read_number, node, kind, system);
}

Result<quantity::Size> read_size(const Node& node, quantity::Kind kind, System system) {
  return read_with(&quantity::read_size, node, kind, system);
}

Result<quantity::Sized> read_sized(const Node& node, quantity::Kind kind, System system) {
  return read_with(&quantity::read_sized, node, kind, system);
}

Result<quantity::Tolerance> read_tolerance(const Node& node, quantity::Kind kind, System system) {
  return read_with(&quantity::read_tolerance, node, kind, system);
}

Result<std::string> read_text(const Node& node) {
  if (node.type() != Type::kText) return wrong_type(node, "a text in quotes");
  return std::string(node.typed());
}

Result<std::string> read_typed(const Node& node) {
  if (node.type() != Type::kText && !node.is_number())
    return wrong_type(node, "a number, or a text in quotes");
  return std::string(node.typed());
}

Result<std::int64_t> read_whole(const Node& node) {
  if (const auto number = node.whole()) return *number;
  return wrong_type(node, "a whole number");
}

Result<bool> read_truth(const Node& node) {
  if (const auto truth = node.truth()) return *truth;
  return wrong_type(node, "true or false");
}

std::optional<quantity::Typed> TableReader::number(std::string_view key, quantity::Kind kind) const {
  return value(key, [&](const Node& node) { return read_number(node, kind, system_); });
}

std::optional<quantity::Size> TableReader::size(std::string_view key, quantity::Kind kind) const {
  return value(key, [&](const Node& node) { return read_size(node, kind, system_); });
}

std::optional<quantity::Sized> TableReader::sized(std::string_view key, quantity::Kind kind) const {
  return value(key, [&](const Node& node) { return read_sized(node, kind, system_); });
}

std::optional<quantity::Tolerance> TableReader::tolerance(std::string_view key, quantity::Kind kind) const {
  return value(key, [&](const Node& node) { return read_tolerance(node, kind, system_); });
}

std::optional<std::string> TableReader::text(std::string_view key) const {
  return value(key, read_text);
}
std::optional<std::string> TableReader::typed(std::string_view key) const {
  return value(key, read_typed);
}
std::optional<std::int64_t> TableReader::whole(std::string_view key) const {
  return value(key, read_whole);
}
std::optional<bool> TableReader::truth(std::string_view key) const {
  return value(key, read_truth);
}

std::vector<quantity::Typed> TableReader::numbers(std::string_view key, quantity::Kind kind) const {
  return values(key, [&](const Node& node) { return read_number(node, kind, system_); });
}

std::vector<std::string> TableReader::texts(std::string_view key) const {
  return values(key, read_text);
}

std::optional<TableReader> TableReader::table(std::string_view key) const {
  const auto found = node_.find(key);
  if (!found || found->type() != Type::kTable) return std::nullopt;
  return TableReader(*found, system_, *problems_);
}

std::vector<TableReader> TableReader::tables(std::string_view key) const {
  std::vector<TableReader> out;
  for (const Node& item : items(key)) {
    if (item.type() == Type::kTable) out.emplace_back(item, system_, *problems_);
  }
  return out;
}

std::vector<Node> TableReader::items(std::string_view key) const {
  const auto found = node_.find(key);
  if (!found) return {};
  if (found->type() != Type::kList) return {*found};
  std::vector<Node> items;
  for (const Node item : *found)
    items.push_back(item);
  return items;
}

}  // namespace sparewright::text
