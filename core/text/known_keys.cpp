#include "core/text/known_keys.hpp"

#include <span>

#include <fmt/format.h>

namespace sparewright::text {
namespace {

class Lister {
 public:
  void inside(const Shape& shape, const std::string& path, const std::string& only_with) {
    std::visit([&](const auto& sort) { of(sort, path, only_with); }, shape.sort());
  }

  std::vector<KnownKey> keys;

 private:
  template <HoldsNothing Plain>
  void of(const Plain& /*sort*/, const std::string& /*path*/, const std::string& /*only_with*/) {}

  void of(const ListOf& list, const std::string& path, const std::string& only_with) {
    inside(*list.item, path + "[]", only_with);
  }

  void of(const OneOf& one, const std::string& path, const std::string& only_with) {
    for (const Shape& shape : one.shapes)
      inside(shape, path, only_with);
  }

  void of(const TableOf& table, const std::string& path, const std::string& only_with) {
    const std::string free = below(path, "<" + table.noun + ">");
    keys.push_back({free, only_with, table.value->accepted(), {}, false});
    inside(*table.value, free, only_with);
  }

  void of(const TableWith& table, const std::string& path, const std::string& only_with) {
    list(table.fields, path, only_with);
  }

  void of(const TableBy& table, const std::string& path, const std::string& only_with) {
    list(table.common, path, only_with);
    for (const Choice& choice : table.choices) {
      list(std::span(choice.fields).subspan(table.common.size()), path,
           only_with + (only_with.empty() ? "" : ", ") + fmt::format("{} \"{}\"", table.key, choice.word));
    }
  }

  void list(std::span<const Field> fields, const std::string& path, const std::string& only_with) {
    for (const Field& field : fields) {
      const std::string here = below(path, field.key);
      keys.push_back({here, only_with, field.shape.accepted(), field.sentence, field.is_required});
      inside(field.shape, here, only_with);
    }
  }

  static std::string below(const std::string& path, const std::string& key) {
    return path.empty() ? key : path + '.' + key;
  }
};

}  // namespace

std::vector<KnownKey> known_keys(const Shape& shape) {
  Lister lister;
  lister.inside(shape, {}, {});
  return std::move(lister.keys);
}

}  // namespace sparewright::text
