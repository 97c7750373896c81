// Reading the values of a text as quantities, words and lists, with places in what goes wrong.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/nearest.hpp"
#include "core/base/result.hpp"
#include "core/quantity/tolerance.hpp"
#include "core/quantity/typed.hpp"
#include "core/text/node.hpp"
#include "core/text/problems.hpp"
#include "core/text/words.hpp"

namespace sparewright::text {

// The failure of something read out of node.typed(), with its place in the text: a span of the content
// becomes the line and column inside the quotes, escapes counted as they are written; without a span it is
// the place of the value. A failure that has a place already keeps it.
[[nodiscard]] base::Failure located(base::Failure failure, const Node& node);
template <typename Value>
[[nodiscard]] base::Result<Value> located(base::Result<Value> result, const Node& node) {
  if (result) return result;
  return base::fail(located(std::move(result.error()), node));
}

// A failure about the value as a whole.
[[nodiscard]] base::Failure failure_at(const Node& node, base::Code code, std::string_view found,
                                       std::string_view accepted = {});

// --- one value ---------------------------------------------------------------------------------------------
// Of a value of another type they fail with kValueOfAnotherType; of a text or number that cannot be read with
// the failures of core/quantity, located. A number may stand bare or in quotes; what was typed is kept.
using System = std::optional<quantity::UnitSystem>;
[[nodiscard]] base::Result<quantity::Typed> read_number(const Node& node, quantity::Kind kind, System system);
[[nodiscard]] base::Result<quantity::Size> read_size(const Node& node, quantity::Kind kind, System system);
[[nodiscard]] base::Result<quantity::Sized> read_sized(const Node& node, quantity::Kind kind, System system);
[[nodiscard]] base::Result<quantity::Tolerance> read_tolerance(const Node& node, quantity::Kind kind,
                                                               System system);
[[nodiscard]] base::Result<std::string> read_text(const Node& node);   // a text only
[[nodiscard]] base::Result<std::string> read_typed(const Node& node);  // a text, or a number as it stands
[[nodiscard]] base::Result<std::int64_t> read_whole(const Node& node);
[[nodiscard]] base::Result<bool> read_truth(const Node& node);

template <typename Value, std::size_t count>
[[nodiscard]] base::Result<Value> read_word(const Node& node,
                                            const std::array<Meaning<Value>, count>& meanings) {
  auto word = read_text(node);
  if (!word) return tl::unexpected(std::move(word.error()));
  std::vector<std::string> words;
  for (const auto& meaning : meanings) {
    if (meaning.word == *word) return meaning.value;
    words.emplace_back(meaning.word);
  }
  return base::fail(failure_at(node, base::Code::kValueNotAccepted, *word, base::known_words(*word, words)));
}

// --- a table, key by key -----------------------------------------------------------------------------------
// Reads what is there and gathers what is wrong, so that a reader goes straight on. A key that is not there
// is nothing, without a problem: whether it must be there is the schema's to say (validate.hpp).
//
//   void read_hole(const TableReader& in, Hole& hole) {
//     hole.diameter = in.number("diameter", Kind::kDiameter);
//     hole.way = in.word("how", kWays).value_or(Way::kDrilled);
//     if (const auto at = in.table("at")) hole.x = at->number("x", Kind::kCoordinate);
//   }
class TableReader {
 public:
  TableReader(const Node& table, System system, Problems& problems)
      : node_(table), system_(system), problems_(&problems) {}

  [[nodiscard]] std::optional<quantity::Typed> number(std::string_view key, quantity::Kind kind) const;
  [[nodiscard]] std::optional<quantity::Size> size(std::string_view key, quantity::Kind kind) const;
  [[nodiscard]] std::optional<quantity::Sized> sized(std::string_view key, quantity::Kind kind) const;
  [[nodiscard]] std::optional<quantity::Tolerance> tolerance(std::string_view key, quantity::Kind kind) const;
  [[nodiscard]] std::optional<std::string> text(std::string_view key) const;
  [[nodiscard]] std::optional<std::string> typed(std::string_view key) const;
  [[nodiscard]] std::optional<std::int64_t> whole(std::string_view key) const;
  [[nodiscard]] std::optional<bool> truth(std::string_view key) const;
  template <typename Value, std::size_t count>
  [[nodiscard]] std::optional<Value> word(std::string_view key,
                                          const std::array<Meaning<Value>, count>& meanings) const {
    return value(key, [&](const Node& node) { return read_word(node, meanings); });
  }

  // Lists; one value that is no list counts as a list of one. Items that cannot be read are left out and
  // told.
  [[nodiscard]] std::vector<quantity::Typed> numbers(std::string_view key, quantity::Kind kind) const;
  [[nodiscard]] std::vector<std::string> texts(std::string_view key) const;

  // A table inside; nothing where the value is no table, as in a one_of.
  [[nodiscard]] std::optional<TableReader> table(std::string_view key) const;
  // The tables of a list, those of [[key]] too.
  [[nodiscard]] std::vector<TableReader> tables(std::string_view key) const;

  // Anything else: read(node) returns a base::Result.
  template <typename Read>
  [[nodiscard]] auto value(std::string_view key, const Read& read) const
      -> std::optional<typename decltype(read(std::declval<const Node&>()))::value_type> {
    const auto found = node_.find(key);
    if (!found) return std::nullopt;
    return problems_->keep(read(*found));
  }
  template <typename Read>
  [[nodiscard]] auto values(std::string_view key, const Read& read) const
      -> std::vector<typename decltype(read(std::declval<const Node&>()))::value_type> {
    std::vector<typename decltype(read(std::declval<const Node&>()))::value_type> out;
    for (const Node& item : items(key)) {
      if (auto value = problems_->keep(read(item))) out.push_back(std::move(*value));
    }
    return out;
  }

  [[nodiscard]] const Node& node() const { return node_; }
  [[nodiscard]] System system() const { return system_; }
  [[nodiscard]] Problems& problems() const { return *problems_; }

 private:
  [[nodiscard]] std::vector<Node> items(std::string_view key) const;

  Node node_;
  System system_;
  Problems* problems_;
};

}  // namespace sparewright::text
