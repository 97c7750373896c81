#include "core/handbook/materials.hpp"

#include <algorithm>
#include <array>
#include <iterator>
#include <string>
#include <utility>
#include <vector>

#include "core/base/nearest.hpp"
#include "core/handbook/lookup.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Density;
using quantity::Pressure;
namespace unit = quantity::unit;

constexpr Material kMaterials[] = {
#include "generated/core/handbook/materials.inc"
};

struct MaterialName {
  std::string_view alias;
  std::string_view name;
  std::string_view condition;
  Source source;
};
constexpr MaterialName kMaterialNames[] = {
#include "generated/core/handbook/material_names.inc"
};

constexpr Source kNominal{"nominal figure of the material", "", Basis::kFromMemory};

// Other spellings of single words. Source: common practice.
constexpr std::array<std::pair<std::string_view, std::string_view>, 9> kSpellings{{{"aluminum", "aluminium"},
                                                                                   {"gray", "grey"},
                                                                                   {"cd", "cold drawn"},
                                                                                   {"cf", "cold drawn"},
                                                                                   {"hr", "hot rolled"},
                                                                                   {"ss", "stainless"},
                                                                                   {"aisi", ""},
                                                                                   {"sae", ""},
                                                                                   {"bar", ""}}};

using Words = std::vector<std::string>;

bool is_word_character(char c) {
  return quantity::is_letter(c) || quantity::is_digit(c) || c == '/' || c == '.' ||
         static_cast<unsigned char>(c) >= 0x80U;
}

Words plain_words(std::string_view text) {
  Words words;
  std::string word;
  for (const char c : folded(text) + " ") {
    if (is_word_character(c)) {
      word += c;
    } else if (!word.empty()) {
      words.push_back(std::exchange(word, {}));
    }
  }
  return words;
}

// The words of a text, other spellings made the table's: "CD 1018" -> cold, drawn, 1018.
Words words_of(std::string_view text) {
  Words out;
  for (const std::string& word : plain_words(text)) {
    std::string spelled = word;
    for (const auto& [from, to] : kSpellings) {
      if (word == from) spelled = to;
    }
    for (std::string& part : plain_words(spelled))
      out.push_back(std::move(part));
  }
  return out;
}

// C360 is also called 360.
bool is_same_word(const std::string& asked, const std::string& known) {
  return asked == known || (known.starts_with('c') && known.size() > 1 && quantity::is_digit(known[1]) &&
                            asked == known.substr(1));
}

bool has_all(const Words& known, const Words& asked) {
  return std::all_of(asked.begin(), asked.end(), [&](const std::string& word) {
    return std::any_of(known.begin(), known.end(),
                       [&](const std::string& one) { return is_same_word(word, one); });
  });
}

// The words of every material, in the order of the table.
const std::vector<Words>& words_of_materials() {
  static const std::vector<Words> all = [] {
    std::vector<Words> words;
    for (const Material& material : kMaterials)
      words.push_back(words_of(std::string(material.name) + " " + std::string(material.condition)));
    return words;
  }();
  return all;
}

std::vector<const Material*> fitting(const Words& asked) {
  std::vector<const Material*> out;
  for (std::size_t i = 0; i < std::size(kMaterials); ++i) {
    if (has_all(words_of_materials()[i], asked)) out.push_back(&kMaterials[i]);
  }
  return out;
}

const Material* material_named(std::string_view name, std::string_view condition) {
  for (const Material& material : kMaterials) {
    if (material.name == name && material.condition == condition) return &material;
  }
  return nullptr;
}

std::optional<FoundMaterial> by_trade_name(const Words& asked) {
  for (const MaterialName& row : kMaterialNames) {
    const Words alias = words_of(row.alias);
    if (alias != asked) continue;
    const Material* material = material_named(row.name, row.condition);
    if (material == nullptr) return std::nullopt;
    return FoundMaterial{*material, "'" + std::string(row.alias) + "' taken as " + to_string(*material)};
  }
  return std::nullopt;
}

bool of_one_name(const std::vector<const Material*>& several) {
  return std::all_of(several.begin(), several.end(),
                     [&](const Material* one) { return one->name == several.front()->name; });
}

}  // namespace

std::span<const Material> materials() {
  return kMaterials;
}

std::string to_string(const Material& material) {
  std::string out(material.name);
  if (!material.condition.empty()) out += ", " + std::string(material.condition);
  return out;
}

Source source_of(const Material& material, MaterialProperty property) {
  constexpr std::array<std::string_view, 6> kNames{"density",  "modulus",  "yield",
                                                   "ultimate", "hardness", "expansion"};
  const std::string_view name = kNames.at(static_cast<std::size_t>(property));
  const bool remembered = material.from_memory.find(name) != std::string_view::npos;
  return remembered ? kNominal : material.source;
}

Work work_of(const Material& material) {
  Work work{material.group, std::nullopt};
  if (material.brinell_low && material.brinell_high) {
    work.hardness = BrinellRange{*material.brinell_low, *material.brinell_high};
  }
  return work;
}

base::Result<FoundMaterial> find_material(std::string_view text) {
  const Words asked = words_of(text);
  const auto no_such_material = [&] {
    return unknown(text, "material", names_of(kMaterials, [](const Material& one) { return to_string(one); }),
                   "a material such as 1018 cold drawn, aluminium 6061-T6, 303 stainless or brass C360");
  };
  if (asked.empty()) return no_such_material();
  if (auto found = by_trade_name(asked)) return *found;
  const std::vector<const Material*> several = fitting(asked);
  if (several.empty()) return no_such_material();
  if (!of_one_name(several)) {
    std::vector<std::string> which;
    which.reserve(several.size());
    for (const Material* one : several)
      which.push_back(to_string(*one));
    return unknown(text, "material by itself", which);
  }
  const Material& first = *several.front();
  if (several.size() == 1) return FoundMaterial{first, {}};
  return FoundMaterial{first, "no condition written: " + std::string(first.condition) + ", the usual one"};
}

}  // namespace sparewright::handbook
