#include "core/text/shape.hpp"

#include <algorithm>
#include <array>
#include <cassert>

#include <fmt/format.h>

#include "core/base/nearest.hpp"

namespace sparewright::text {
namespace {

constexpr std::array kTypes{Type::kText, Type::kWhole, Type::kDecimal, Type::kBoolean,
                            Type::kDate, Type::kList,  Type::kTable};

// Visitor of the sorts, one lambda each.
template <typename... Functions>
struct Each : Functions... {
  using Functions::operator()...;
};
template <typename... Functions>
Each(Functions...) -> Each<Functions...>;

std::string table_with_keys(const std::vector<Field>& fields) {
  return "a table with the keys " + base::known_words({}, keys_of(fields));
}

bool takes_one_another(const std::vector<Shape>& shapes) {
  return std::all_of(kTypes.begin(), kTypes.end(), [&](Type type) {
    return std::count_if(shapes.begin(), shapes.end(),
                         [&](const Shape& shape) { return shape.takes(type); }) <= 1;
  });
}

}  // namespace

Shape::Shape(Sort sort) : sort_(std::make_shared<const Sort>(std::move(sort))) {}

Shape Shape::at_least(std::size_t items) const {
  ListOf list = std::get<ListOf>(*sort_);
  list.least = items;
  return Shape(std::move(list));
}

Shape Shape::at_most(std::size_t items) const {
  ListOf list = std::get<ListOf>(*sort_);
  list.most = items;
  return Shape(std::move(list));
}

Shape Shape::named(std::string name) const {
  Shape shape = *this;
  shape.name_ = std::move(name);
  return shape;
}

bool Shape::takes(Type type) const {
  const bool is_number = type == Type::kWhole || type == Type::kDecimal;
  return std::visit(
      Each{[&](const FreeText&) { return type == Type::kText; },
           [&](const WordOf&) { return type == Type::kText; },
           [&](const Measure&) { return type == Type::kText || is_number; },
           [&](const WholeNumber&) { return type == Type::kWhole; }, [&](const Number&) { return is_number; },
           [&](const TrueOrFalse&) { return type == Type::kBoolean; },
           [&](const ListOf&) { return type == Type::kList; },
           [&](const OneOf& one) {
             return std::any_of(one.shapes.begin(), one.shapes.end(),
                                [&](const Shape& shape) { return shape.takes(type); });
           },
           [&](const auto&) { return type == Type::kTable; }},
      *sort_);
}

std::string Shape::accepted() const {
  return std::visit(Each{[](const FreeText& text) { return text.noun + " in quotes"; },
                         [](const Measure& measure) { return measure.noun + ", as a number or in quotes"; },
                         [](const WholeNumber&) { return std::string("a whole number"); },
                         [](const Number&) { return std::string("a number without quotes"); },
                         [](const TrueOrFalse&) { return std::string("true or false"); },
                         [](const WordOf& word) {
                           return "in quotes, one of " + base::known_words({}, words_of(word.words));
                         },
                         [](const ListOf& list) { return "a list, each item " + list.item->accepted(); },
                         [](const TableWith& table) { return table_with_keys(table.fields); },
                         [](const TableOf& table) { return "a table with a key for each " + table.noun; },
                         [](const TableBy& table) { return table_with_keys(table.common); },
                         [](const OneOf& one) {
                           std::string all;
                           for (const Shape& shape : one.shapes)
                             all += (all.empty() ? "" : ", or ") + shape.accepted();
                           return all;
                         }},
                    *sort_);
}

Field Field::required() const {
  Field field = *this;
  field.is_required = true;
  return field;
}

Field Field::says(std::string about) const {
  Field field = *this;
  field.sentence = std::move(about);
  return field;
}

Shape free_text(std::string noun) {
  return Shape(FreeText{std::move(noun)});
}
Shape measure(quantity::Kind kind) {
  return Shape(Measure{std::string(quantity::name_of(kind))});
}
Shape measure(std::string noun) {
  return Shape(Measure{std::move(noun)});
}
Shape whole_number() {
  return Shape(WholeNumber{});
}
Shape number() {
  return Shape(Number{});
}
Shape true_or_false() {
  return Shape(TrueOrFalse{});
}
Shape word_of(std::vector<Word> words) {
  return Shape(WordOf{std::move(words)});
}
Shape list_of(Shape item) {
  return Shape(ListOf{std::make_shared<const Shape>(std::move(item)), 0, std::nullopt});
}
Shape table(std::vector<Field> fields) {
  return Shape(TableWith{std::move(fields)});
}

Shape table_of(std::string noun, Shape value) {
  return Shape(TableOf{std::move(noun), std::make_shared<const Shape>(std::move(value))});
}

Shape table_by(std::string key, std::string says, const std::vector<Field>& common,
               std::vector<Choice> choices) {
  std::vector<Word> words;
  words.reserve(choices.size());
  for (const Choice& choice : choices)
    words.push_back({choice.word, choice.says});
  std::vector<Field> shared{field(key, word_of(std::move(words))).required().says(std::move(says))};
  shared.insert(shared.end(), common.begin(), common.end());
  for (Choice& choice : choices)
    choice.fields.insert(choice.fields.begin(), shared.begin(), shared.end());
  return Shape(TableBy{std::move(key), std::move(shared), std::move(choices)});
}

Shape one_of(std::vector<Shape> shapes) {
  assert(takes_one_another(shapes) && "the type of a value must decide which shape is meant");
  return Shape(OneOf{std::move(shapes)});
}

Field field(std::string key, Shape shape) {
  return {std::move(key), std::move(shape), false, {}};
}

Choice choice(std::string word, std::string says, std::vector<Field> fields) {
  return {std::move(word), std::move(says), std::move(fields)};
}

std::vector<std::string> words_of(const std::vector<Word>& words) {
  std::vector<std::string> out;
  out.reserve(words.size());
  for (const Word& word : words)
    out.push_back(word.word);
  return out;
}

std::vector<std::string> keys_of(const std::vector<Field>& fields) {
  std::vector<std::string> out;
  out.reserve(fields.size());
  for (const Field& field : fields)
    out.push_back(field.key);
  return out;
}

}  // namespace sparewright::text
