// A question of the bench as it was asked: words and named entries, not yet read.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/answers/answer.hpp"
#include "core/base/nearest.hpp"
#include "core/base/result.hpp"
#include "core/handbook/pitch_text.hpp"
#include "core/quantity/typed_system.hpp"
#include "core/shop/shop.hpp"

namespace sparewright::answers {

struct Question {
  std::string words;                                          // "3/8-16 UNC-2A"
  std::map<std::string, std::string> entries;                 // "percent": "70"
  const shop::Shop* shop = nullptr;                           // the user's own; may be missing
  quantity::UnitSystem system = quantity::UnitSystem::kInch;  // of the answer, where the question has none
};

// What one entry of a question takes.
struct Entry {
  std::string_view name;   // "percent"
  std::string_view takes;  // "PERCENT"
  std::string_view about;
  bool required = false;
};

// One kind of question: what it is called, what it takes, and who answers it.
struct Subject {
  std::string_view name;     // "thread"
  std::string_view about;    // "limits, drill and areas of a screw thread"
  std::string_view words;    // "a thread: 3/8-16 UNC-2A, M8x1"; empty where it takes entries alone
  std::string_view example;  // the arguments of an example that works
  std::vector<Entry> entries;
  std::function<base::Result<Answer>(const Question&)> answer;
};

// --- reading entries. All fail naming the entry, as "--percent".

[[nodiscard]] const std::string* find_entry(const Question& question, std::string_view name);

// Fails with kEmptyValue where the entry is not there.
[[nodiscard]] base::Result<std::string> text_entry(const Question& question, std::string_view name);
// A length of any kind that has a unit, or is a fraction; > 0.
[[nodiscard]] base::Result<quantity::Typed> size_entry(const Question& question, std::string_view name);
[[nodiscard]] base::Result<quantity::Typed> number_entry(const Question& question, std::string_view name,
                                                         quantity::Kind kind);
// A pitch: 8 tpi, 1.25 mm.
[[nodiscard]] base::Result<handbook::TypedPitch> pitch_entry(const Question& question, std::string_view name);
// A whole number from least to most.
[[nodiscard]] base::Result<int> count_entry(const Question& question, std::string_view name, int least,
                                            int most);
// The same, or `otherwise` where the entry is not there.
[[nodiscard]] base::Result<int> count_or(const Question& question, std::string_view name, int least, int most,
                                         int otherwise);

// The same for what may be left out.
template <class Value>
using Maybe = base::Result<std::optional<Value>>;
[[nodiscard]] Maybe<quantity::Typed> maybe_size(const Question& question, std::string_view name);
[[nodiscard]] Maybe<quantity::Typed> maybe_number(const Question& question, std::string_view name,
                                                  quantity::Kind kind);

// What --on names in a list of the shop text: &shop::Shop::machines, &shop::Shop::change_gears. Fails with kNotInTheShop,
// and with kEmptyValue where there is no shop.
template <class Item>
[[nodiscard]] base::Result<const Item*> on_entry(const Question& question,
                                                 std::vector<Item> shop::Shop::*list,
                                                 std::string_view subject) {
  const auto name = text_entry(question, "on");
  if (!name) return tl::unexpected(name.error());
  if (question.shop == nullptr)
    return base::fail(base::Code::kEmptyValue, "", "give the shop text by --shop FILE", "--on " + *name);
  std::vector<std::string> known;
  for (const Item& item : question.shop->*list) {
    if (item.name == *name) return &item;
    known.push_back(item.name);
  }
  return base::fail(base::Code::kNotInTheShop, *name,
                    known.empty() ? "none is in the shop text" : base::known_words(*name, known), subject);
}

[[nodiscard]] base::Result<const shop::Machine*> machine_entry(const Question& question);

}  // namespace sparewright::answers
