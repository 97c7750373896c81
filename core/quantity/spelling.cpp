#include "core/quantity/spelling.hpp"

#include <array>
#include <span>

namespace sparewright::quantity {
namespace {

using Spellings = std::span<const std::string_view>;

constexpr std::array<std::string_view, 7> kBlanks{" ", "\t", "\r", "\n", "\u00A0", "\u2009", "\u202F"};
constexpr std::array<std::string_view, 5> kMinuses{"-", "\u2212", "\u2010", "\u2011", "\u2013"};
constexpr std::array<std::string_view, 3> kPlusMinuses{"\u00B1", "+/-", "+-"};

std::size_t one_at(std::string_view text, Spellings spellings) {
  for (const std::string_view spelling : spellings) {
    if (text.starts_with(spelling)) return spelling.size();
  }
  return 0;
}

std::size_t blank_ending(std::string_view text) {
  for (const std::string_view blank : kBlanks) {
    if (text.ends_with(blank)) return blank.size();
  }
  return 0;
}

}  // namespace

std::size_t blanks_at(std::string_view text) {
  std::size_t taken = 0;
  while (const std::size_t one = one_at(text.substr(taken), kBlanks))
    taken += one;
  return taken;
}

std::string_view trimmed(std::string_view text) {
  text = text.substr(blanks_at(text));
  while (const std::size_t one = blank_ending(text))
    text.remove_suffix(one);
  return text;
}

std::size_t minus_at(std::string_view text) {
  return one_at(text, kMinuses);
}

std::size_t sign_at(std::string_view text) {
  return text.starts_with('+') ? 1 : minus_at(text);
}

std::size_t plus_minus_at(std::string_view text) {
  return one_at(text, kPlusMinuses);
}

base::Span span_of(std::string_view whole, std::string_view part) {
  return {static_cast<std::size_t>(part.data() - whole.data()), part.size()};
}

}  // namespace sparewright::quantity
