// What a text may hold, declared once: from it come the check of a text (validate.hpp), the published JSON
// Schema (json_schema.hpp) and the lists of keys (known_keys.hpp).
//
//   const Shape size = one_of({measure(Kind::kDiameter),
//                              table({field("size", measure(Kind::kDiameter)).required(),
//                                     field("fit", free_text("a fit class")).says("H7, g6, RC4")})}).named("size");
//   const Shape feature = table_by("kind", "what it is",
//                                  {field("name", free_text()).required().says("what other lines call it")},
//                                  {choice("hole", "a round hole", {field("diameter", size).required()}),
//                                   choice("flat", "a flat face", {field("leaves", measure(Kind::kLength))})});
//   const Shape job = table({field("units", word_of({{"in", "inches"}, {"mm", "millimetres"}})).required(),
//                            field("feature", list_of(feature)).says("in the order they were thought of"),
//                            field("original", table_of("dimension", size))});
//
// A Shape is a handle; copies share what they stand for. What is said in `says` goes to people: a phrase or a
// sentence without a full stop.
#pragma once

#include <concepts>
#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "core/quantity/kind.hpp"
#include "core/text/node.hpp"

namespace sparewright::text {

class Shape;
struct Field;
struct Choice;

struct Word {
  std::string word;
  std::string says = {};
};

// --- the sorts of value; visited by what reads a Shape -----------------------------------------------------
struct FreeText {
  std::string noun;
};
struct Measure {  // a number or a text: kept as typed, read by the room that knows what it means
  std::string noun;
};
struct WholeNumber {};
struct Number {};
struct TrueOrFalse {};
struct WordOf {
  std::vector<Word> words;
};
struct ListOf {
  std::shared_ptr<const Shape> item;
  std::size_t least = 0;
  std::optional<std::size_t> most;
};
struct TableWith {
  std::vector<Field> fields;
};
struct TableOf {  // any keys, values of one shape
  std::string noun;
  std::shared_ptr<const Shape> value;
};
struct TableBy {  // the word at one key decides which other keys there are
  std::string key;
  std::vector<Field> common;    // the deciding key first
  std::vector<Choice> choices;  // their fields begin with the common ones
};
struct OneOf {
  std::vector<Shape> shapes;
};
template <typename T>
concept HoldsNothing =
    std::same_as<T, FreeText> || std::same_as<T, Measure> || std::same_as<T, WholeNumber> ||
    std::same_as<T, Number> || std::same_as<T, TrueOrFalse> || std::same_as<T, WordOf>;
using Sort = std::variant<FreeText, Measure, WholeNumber, Number, TrueOrFalse, WordOf, ListOf, TableWith,
                          TableOf, TableBy, OneOf>;

class Shape {
 public:
  explicit Shape(Sort sort);

  // Of a list: fewer or more items are an error.
  [[nodiscard]] Shape at_least(std::size_t items) const;
  [[nodiscard]] Shape at_most(std::size_t items) const;

  // Written once in the JSON Schema, under this name, and referred to. Two shapes must not share a name.
  [[nodiscard]] Shape named(std::string name) const;

  [[nodiscard]] const Sort& sort() const { return *sort_; }
  [[nodiscard]] const std::string& name() const { return name_; }

  // True where a value of this type can be right.
  [[nodiscard]] bool takes(Type type) const;

  // What is taken, in a sentence: "a diameter, as a number or in quotes", "a table with the keys x, y".
  [[nodiscard]] std::string accepted() const;

 private:
  std::shared_ptr<const Sort> sort_;
  std::string name_;
};

// One key of a table.
struct Field {
  std::string key;
  Shape shape;
  bool is_required = false;
  std::string sentence;

  [[nodiscard]] Field required() const;
  [[nodiscard]] Field says(std::string about) const;
};

// One word of a deciding key, and the keys that come with it.
struct Choice {
  std::string word;
  std::string says;
  std::vector<Field> fields;
};

// --- building ----------------------------------------------------------------------------------------------
[[nodiscard]] Shape free_text(std::string noun = "a text");
[[nodiscard]] Shape measure(quantity::Kind kind);
[[nodiscard]] Shape measure(std::string noun);  // "a formula of dimensions"
[[nodiscard]] Shape whole_number();
[[nodiscard]] Shape number();
[[nodiscard]] Shape true_or_false();
[[nodiscard]] Shape word_of(std::vector<Word> words);
[[nodiscard]] Shape list_of(Shape item);
[[nodiscard]] Shape table(std::vector<Field> fields);
[[nodiscard]] Shape table_of(std::string noun, Shape value);
[[nodiscard]] Shape table_by(std::string key, std::string says, const std::vector<Field>& common,
                             std::vector<Choice> choices);
// The type of the value decides which one is meant, so no two may take the same type.
[[nodiscard]] Shape one_of(std::vector<Shape> shapes);

[[nodiscard]] Field field(std::string key, Shape shape);
[[nodiscard]] Choice choice(std::string word, std::string says, std::vector<Field> fields = {});

// --- looking in --------------------------------------------------------------------------------------------
[[nodiscard]] std::vector<std::string> words_of(const std::vector<Word>& words);
[[nodiscard]] std::vector<std::string> words_of(const std::vector<Choice>& choices);
[[nodiscard]] std::vector<std::string> keys_of(const std::vector<Field>& fields);

}  // namespace sparewright::text
