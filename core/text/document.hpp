// A text in TOML 1.0, parsed once and never changed; an edit makes another one (edit.hpp).
#pragma once

#include <memory>
#include <string>
#include <string_view>

#include "core/base/result.hpp"
#include "core/text/node.hpp"

namespace sparewright::text {

class Document {
 public:
  // name is what messages call it: a file name or the title of a job. A byte order mark is accepted and kept;
  // line ends may be \n or \r\n. Fails with the first fault and its place: kNotText, kFileTooLarge, kTooMany
  // (limits.hpp), kTextSyntax, kNameTwice (a key or header given twice).
  [[nodiscard]] static base::Result<Document> parse(std::string text, std::string name);

  [[nodiscard]] const std::string& text() const;  // every byte as it was given
  [[nodiscard]] const std::string& name() const;
  [[nodiscard]] bool has_byte_order_mark() const;

  // A table. Nodes stay valid as long as any copy of this Document; a copy shares everything.
  [[nodiscard]] Node root() const;

  // The value at a path as Node::path writes it. kKeyUnknown with what is there instead.
  [[nodiscard]] base::Result<Node> at(std::string_view path) const;

  // The deepest value there is on a path, and what of the path is left ("" where all of it was found, else
  // "size", "[4]", "b.c").
  struct Reached {
    Node node;
    std::string_view rest;
  };
  [[nodiscard]] Reached reach(std::string_view path) const;

 private:
  explicit Document(std::shared_ptr<const Tree> tree) : tree_(std::move(tree)) {}
  std::shared_ptr<const Tree> tree_;
};

}  // namespace sparewright::text
