#include "core/text/document.hpp"

#include <vector>

#include <fmt/format.h>

#include "core/base/nearest.hpp"
#include "core/text/limits.hpp"
#include "core/text/literal.hpp"
#include "core/text/tree.hpp"

namespace sparewright::text {
namespace {

// What is left of a path after the step to child, or nothing where the path goes elsewhere.
std::optional<std::string_view> after_step(std::string_view path, const Node& child, bool is_item) {
  const std::string step = is_item ? fmt::format("[{}]", child.position() + 1) : written_key(child.key());
  if (!path.starts_with(step)) return std::nullopt;
  path.remove_prefix(step.size());
  if (path.empty() || path.front() == '[') return path;
  if (path.front() != '.' || path.size() == 1 || path[1] == '[') return std::nullopt;
  return path.substr(1);
}

std::string what_is_there(const Node& node, std::string_view wanted) {
  if (node.type() == Type::kList) {
    return node.size() == 0 ? "nothing, the list is empty" : fmt::format("[1] to [{}]", node.size());
  }
  std::vector<std::string> keys;
  for (const Node child : node)
    keys.push_back(written_key(child.key()));
  return base::known_words(wanted, keys);
}

}  // namespace

base::Result<Document> Document::parse(std::string text, std::string name) {
  if (auto failure = check_limits(text, name)) return base::fail(std::move(*failure));
  auto tree = parse_tree(std::move(text), std::move(name));
  if (!tree) return tl::unexpected(std::move(tree.error()));
  return Document(std::make_shared<const Tree>(std::move(*tree)));
}

const std::string& Document::text() const {
  return tree_->text;
}
const std::string& Document::name() const {
  return tree_->name;
}
bool Document::has_byte_order_mark() const {
  return tree_->has_byte_order_mark;
}
Node Document::root() const {
  return {*tree_, 0};
}

Document::Reached Document::reach(std::string_view path) const {
  Reached reached{root(), path};
  while (!reached.rest.empty()) {
    const Node here = reached.node;
    for (const Node child : here) {
      if (const auto rest = after_step(reached.rest, child, here.type() == Type::kList)) {
        reached = {child, *rest};
        break;
      }
    }
    if (reached.node == here) break;
  }
  return reached;
}

base::Result<Node> Document::at(std::string_view path) const {
  const Reached reached = reach(path);
  if (reached.rest.empty()) return reached.node;
  base::Failure failure;
  failure.code = base::Code::kKeyUnknown;
  failure.subject = reached.node.label();
  failure.found = reached.rest;
  failure.accepted = what_is_there(reached.node, reached.rest);
  failure.place = reached.node.place();
  return base::fail(std::move(failure));
}

}  // namespace sparewright::text
