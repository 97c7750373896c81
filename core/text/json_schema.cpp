#include "core/text/json_schema.hpp"

#include <map>
#include <stdexcept>

#include <nlohmann/json.hpp>

namespace sparewright::text {
namespace {

using Json = nlohmann::ordered_json;

class Writer {
 public:
  Json write(const Shape& shape) {
    if (shape.name().empty()) return std::visit([&](const auto& sort) { return of(sort); }, shape.sort());
    // A name stands for one content, whether or not the shape was built once and shared.
    const Json definition = std::visit([&](const auto& sort) { return of(sort); }, shape.sort());
    const Json& known = definitions_.emplace(shape.name(), definition).first->second;
    if (known != definition) throw std::logic_error("two shapes are named " + shape.name());
    return {{"$ref", "#/definitions/" + shape.name()}};
  }

  // By name, so that the order does not hang on who refers to it first.
  [[nodiscard]] Json definitions() const {
    Json all = Json::object();
    for (const auto& [name, definition] : definitions_)
      all[name] = definition;
    return all;
  }

 private:
  static Json of(const FreeText& text) { return {{"type", "string"}, {"description", text.noun}}; }
  static Json of(const Measure& measure) {
    return {{"type", {"number", "string"}}, {"description", measure.noun + ", as it is typed"}};
  }
  static Json of(const WholeNumber& /*sort*/) { return {{"type", "integer"}}; }
  static Json of(const Number& /*sort*/) { return {{"type", "number"}}; }
  static Json of(const TrueOrFalse& /*sort*/) { return {{"type", "boolean"}}; }

  static Json of(const WordOf& accepted) {
    Json out = {{"type", "string"}, {"enum", words_of(accepted.words)}};
    std::string explained;
    for (const Word& word : accepted.words) {
      if (!word.says.empty()) explained += (explained.empty() ? "" : "; ") + word.word + ": " + word.says;
    }
    if (!explained.empty()) out["description"] = explained;
    return out;
  }

  Json of(const ListOf& list) {
    Json out = {{"type", "array"}, {"items", write(*list.item)}};
    if (list.least > 0) out["minItems"] = list.least;
    if (list.most) out["maxItems"] = *list.most;
    return out;
  }

  Json of(const TableOf& table) {
    return {{"type", "object"},
            {"description", "a key for each " + table.noun},
            {"additionalProperties", write(*table.value)}};
  }

  Json of(const TableWith& table) {
    Json out = {{"type", "object"}};
    out.update(keys(table.fields));
    return out;
  }

  // Each choice closes its table by itself: draft 7 cannot see through an "if" to the keys outside it.
  Json of(const TableBy& table) {
    Json out = {{"type", "object"}, {"required", {table.key}}};
    out["properties"][table.key] = described(table.common.front());
    for (const Choice& choice : table.choices) {
      const Json decided = {{"const", choice.word}};
      Json one;
      one["if"] = {{"properties", {{table.key, decided}}}, {"required", {table.key}}};
      one["then"] = keys(choice.fields);
      one["then"]["properties"][table.key] = decided;
      if (!choice.says.empty()) one["then"]["description"] = choice.says;
      out["allOf"].push_back(std::move(one));
    }
    return out;
  }

  Json of(const OneOf& one) {
    Json out;
    for (const Shape& shape : one.shapes)
      out["anyOf"].push_back(write(shape));
    return out;
  }

  Json keys(const std::vector<Field>& fields) {
    Json out = {{"properties", Json::object()}, {"additionalProperties", false}};
    for (const Field& field : fields) {
      out["properties"][field.key] = described(field);
      if (field.is_required) out["required"].push_back(field.key);
    }
    return out;
  }

  // What is said of the key goes before what is said of the value; beside a reference draft 7 reads nothing
  // else.
  Json described(const Field& field) {
    Json value = write(field.shape);
    if (field.sentence.empty()) return value;
    if (value.contains("$ref"))
      return {{"description", field.sentence}, {"allOf", Json::array({std::move(value)})}};
    const std::string more = value.value("description", "");
    value["description"] = more.empty() ? field.sentence : field.sentence + " (" + more + ")";
    return value;
  }

  std::map<std::string, Json> definitions_;
};

}  // namespace

std::string json_schema(const Shape& shape, std::string_view title, std::string_view description) {
  Writer writer;
  Json out = {
      {"$schema", "http://json-schema.org/draft-07/schema#"}, {"title", title}, {"description", description}};
  Json body = writer.write(shape);
  body.erase("description");
  out.update(body);
  if (Json definitions = writer.definitions(); !definitions.empty())
    out["definitions"] = std::move(definitions);
  return out.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

}  // namespace sparewright::text
