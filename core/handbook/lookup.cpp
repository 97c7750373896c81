#include "core/handbook/lookup.hpp"

#include "core/base/nearest.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {

std::string folded(std::string_view text) {
  text = quantity::trimmed(text);
  std::string out;
  while (!text.empty()) {
    if (const std::size_t blanks = quantity::blanks_at(text); blanks > 0) {
      out += ' ';
      text.remove_prefix(blanks);
      continue;
    }
    const char c = text.front();
    out += quantity::is_upper(c) ? static_cast<char>(c - 'A' + 'a') : c;
    text.remove_prefix(1);
  }
  return out;
}

std::optional<Digits> digits_at(std::string_view text, int most) {
  Digits digits;
  while (digits.taken < text.size() && quantity::is_digit(text[digits.taken])) {
    digits.value = digits.value * 10 + (text[digits.taken] - '0');
    if (digits.value > most) return std::nullopt;
    ++digits.taken;
  }
  if (digits.taken == 0) return std::nullopt;
  return digits;
}

tl::unexpected<base::Failure> unknown(std::string_view found, std::string_view subject,
                                      std::span<const std::string> known, std::string_view examples) {
  found = quantity::trimmed(found);
  std::string accepted = examples.empty() ? base::known_words(found, known) : std::string(examples);
  if (const std::string near = examples.empty() ? "" : base::nearest(found, known); !near.empty()) {
    accepted += " (did you mean '" + near + "'?)";
  }
  return base::fail(base::Code::kNameUnknown, found, accepted, subject);
}

tl::unexpected<base::Failure> not_tabled(std::string_view subject, std::string_view found,
                                         std::string_view accepted) {
  return base::fail(base::Code::kNotTabled, quantity::trimmed(found), accepted, subject);
}

tl::unexpected<base::Failure> not_tabled_among(std::string_view subject, std::string_view found,
                                               std::span<const std::string> known) {
  return not_tabled(subject, found, base::known_words(quantity::trimmed(found), known));
}

}  // namespace sparewright::handbook
