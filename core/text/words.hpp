// Words of a text and the values they stand for: one table for the shape and for the reading.
//
//   inline constexpr std::array kWays{Meaning{"drilled", Way::kDrilled, "with a twist drill"},
//                                     Meaning{"reamed", Way::kReamed, ""}};
//   field("how", word_of(kWays))                    the schema
//   in.word("how", kWays)                           the reading: std::optional<Way>
#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/text/shape.hpp"

namespace sparewright::text {

template <typename Value>
struct Meaning {
  std::string_view word;
  Value value;
  std::string_view says;
};
template <typename Value>
Meaning(const char*, Value, const char*) -> Meaning<Value>;

template <typename Value, std::size_t count>
[[nodiscard]] Shape word_of(const std::array<Meaning<Value>, count>& meanings) {
  std::vector<Word> words;
  words.reserve(count);
  for (const auto& meaning : meanings)
    words.push_back({std::string(meaning.word), std::string(meaning.says)});
  return word_of(std::move(words));
}

}  // namespace sparewright::text
