// One value of a text: what it is, where it stands and how it was written.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/place.hpp"

namespace sparewright::text {

struct Tree;

enum class Type { kText, kWhole, kDecimal, kBoolean, kDate, kList, kTable };

// "a text", "a whole number", "a list": as it reads in a sentence.
[[nodiscard]] std::string_view name_of(Type type);

// How a table or list stands in the text.
enum class Layout {
  kValue,       // after its key, or as an item: 5, "x", [ ... ], { ... }
  kSection,     // under a header of its own, [job] or one [[feature]]; the text as a whole too
  kDotted,      // made by dotted keys: collar of collar.x = 5
  kHeaderless,  // made by the headers of others: all [[feature]] together; tools of [tools.lathe]
};

// A view of one value in a Document: two words, copied freely. It must not outlive the last copy of its
// Document.
//
// A path names a value the way people write it: feature[2].diameter.size, items counted from 1, a key in
// quotes where it needs them (original."pivot pin"). The text as a whole has the empty path.
class Node {
 public:
  Node(const Tree& tree, std::uint32_t index) : tree_(&tree), index_(index) {}

  [[nodiscard]] Type type() const;
  [[nodiscard]] Layout layout() const;
  [[nodiscard]] bool is_number() const { return type() == Type::kWhole || type() == Type::kDecimal; }
  [[nodiscard]] bool is_root() const { return index_ == 0; }

  [[nodiscard]] std::string path() const;
  [[nodiscard]] std::string label() const;  // the path, or "the text": for sentences

  // Bytes of the text. A dotted table has the span of its first key; a section that of its header; all
  // [[feature]] together from the first header to the last.
  [[nodiscard]] base::Span span() const;
  [[nodiscard]] base::Place place() const;
  // The key with its quotes, in the line that named it first. Items and the whole text have none; their key_place is
  // their place.
  [[nodiscard]] std::optional<base::Span> key_span() const;
  [[nodiscard]] base::Place key_place() const;
  [[nodiscard]] base::Place place_at(std::size_t offset) const;  // of any byte of the whole text

  [[nodiscard]] std::string_view key() const;      // without quotes; empty for items
  [[nodiscard]] std::string_view written() const;  // the bytes of span()
  // What was typed: the content of a text, a number or anything else as it stands (0.7498 stays "0.7498").
  [[nodiscard]] std::string_view typed() const;

  [[nodiscard]] std::optional<std::int64_t> whole() const;  // of a whole number
  [[nodiscard]] std::optional<double> decimal() const;      // of either number
  [[nodiscard]] std::optional<bool> truth() const;

  // The values inside, in the order of the text.
  [[nodiscard]] std::size_t size() const;
  [[nodiscard]] Node operator[](std::size_t position) const;  // position < size()
  [[nodiscard]] std::optional<Node> find(std::string_view key) const;
  [[nodiscard]] std::optional<Node> parent() const;
  [[nodiscard]] std::size_t position() const;  // among the values of its parent, from 0

  class Iterator;
  [[nodiscard]] Iterator begin() const;
  [[nodiscard]] Iterator end() const;

  friend bool operator==(const Node&, const Node&) = default;

 private:
  const Tree* tree_;
  std::uint32_t index_;
};

class Node::Iterator {
 public:
  Iterator(const Node& parent, std::size_t position) : parent_(parent), position_(position) {}
  [[nodiscard]] Node operator*() const { return parent_[position_]; }
  Iterator& operator++() {
    ++position_;
    return *this;
  }
  friend bool operator==(const Iterator&, const Iterator&) = default;

 private:
  Node parent_;
  std::size_t position_;
};

}  // namespace sparewright::text
