#include "core/handbook/thread_text.hpp"

#include <algorithm>
#include <charconv>

#include "core/handbook/lookup.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

// Blanks, dashes and commas part words.
std::size_t separator_at(std::string_view text) {
  if (text.starts_with(',') || text.starts_with('(') || text.starts_with(')')) return 1;
  const std::size_t blanks = quantity::blanks_at(text);
  return blanks > 0 ? blanks : quantity::minus_at(text);
}

void skip_separators(std::string_view& text) {
  for (std::size_t gap = separator_at(text); gap > 0; gap = separator_at(text))
    text.remove_prefix(gap);
}

std::string take_word(std::string_view& text) {
  std::size_t end = 0;
  while (end < text.size() && separator_at(text.substr(end)) == 0)
    ++end;
  std::string word = folded(text.substr(0, end));
  text.remove_prefix(end);
  return word;
}

// The letters before the size: "g" of G1/2, "npt" of NPT 1/2; "no" of No. 10 belongs to the size.
void take_leading_words(std::string_view& text, std::vector<std::string>& words) {
  skip_separators(text);
  while (!text.empty() && quantity::is_letter(text.front()) && !folded(text).starts_with("no")) {
    std::size_t end = 0;
    while (end < text.size() && quantity::is_letter(text[end]))
      ++end;
    words.push_back(folded(text.substr(0, end)));
    text.remove_prefix(end);
    skip_separators(text);
  }
}

bool take_unit(std::string_view& text) {
  for (const std::string_view sign : {"\"", "in.", "in", "IN"}) {
    if (!text.starts_with(sign)) continue;
    text.remove_prefix(sign.size());
    return true;
  }
  return false;
}

}  // namespace

PerInch threads_per_inch_at(std::string_view text) {
  PerInch per_inch;
  const auto* end = text.data() + text.size();
  const auto [rest, error] = std::from_chars(text.data(), end, per_inch.value, std::chars_format::fixed);
  if (error != std::errc{} || !quantity::is_digit(text.front())) return {};
  per_inch.taken = static_cast<std::size_t>(rest - text.data());
  constexpr double kCoarsestHalf = 4.0;  // 4-1/2 is written so; in 1/4-20-1/2 the last is a length
  const std::string_view more = text.substr(per_inch.taken);
  if (per_inch.value <= kCoarsestHalf && more.starts_with("-1/2")) {
    per_inch.value += 0.5;
    per_inch.taken += 4;
  }
  return per_inch;
}

bool InchThreadText::take(std::string_view word) {
  const auto found = std::find(words.begin(), words.end(), word);
  if (found == words.end()) return false;
  words.erase(found);
  return true;
}

std::optional<InchThreadText> read_inch_thread_text(std::string_view text) {
  InchThreadText out;
  std::string_view rest = quantity::trimmed(text);
  take_leading_words(rest, out.words);
  const auto size = inch_size_at(rest);
  if (!size) return std::nullopt;
  out.size = *size;
  rest.remove_prefix(size->taken);
  rest = quantity::trimmed(rest);
  take_unit(rest);
  skip_separators(rest);
  const bool times = rest.starts_with('x') || rest.starts_with('X');
  if (times) rest = quantity::trimmed(rest.substr(1));
  if (const PerInch per_inch = threads_per_inch_at(rest); per_inch.taken > 0) {
    // 0.2P is a pitch, 2G a class and 2 of "2 start" a count: a number with letters behind it is a word.
    const std::string_view behind = rest.substr(per_inch.taken);
    const bool whole = behind.empty() || separator_at(behind) > 0 || folded(behind).starts_with("tpi");
    if (whole) {
      out.threads_per_inch = per_inch.value;
      rest = behind;
    }
    if (whole && per_inch.value <= 0.0) return std::nullopt;
  }
  if (times && out.threads_per_inch == 0.0) return std::nullopt;
  for (skip_separators(rest); !rest.empty(); skip_separators(rest)) {
    std::string word = take_word(rest);
    if (word != "tpi" && word != "in") out.words.push_back(std::move(word));
  }
  return out;
}

std::optional<double> number_before(std::string_view word, char letter) {
  if (word.size() < 2 || word.back() != letter) return std::nullopt;
  const std::string digits = "0" + std::string(word.substr(0, word.size() - 1));
  double value = 0.0;
  const auto [rest, error] =
      std::from_chars(digits.data(), digits.data() + digits.size(), value, std::chars_format::fixed);
  if (error != std::errc{} || rest != digits.data() + digits.size()) return std::nullopt;
  return value;
}

}  // namespace sparewright::handbook
