#include "core/handbook/inch_size.hpp"

#include <array>
#include <charconv>
#include <cmath>

#include "core/handbook/lookup.hpp"
#include "core/quantity/display.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
namespace unit = quantity::unit;

constexpr std::array kNumbers{0, 1, 2, 3, 4, 5, 6, 8, 10, 12, 14};

InchSize named(Diameter nominal, std::size_t taken) {
  const quantity::InchFraction nearest = quantity::nearest_64th(across(nominal));
  if (std::abs(nearest.error.base()) < kSizeSlackMm)
    return {to_string(nearest), nominal, std::nullopt, taken};
  for (const int number : kNumbers) {
    if (std::abs(numbered_size(number).base() - nominal.base()) < kSizeSlackMm)
      return as_numbered(number, taken);
  }
  return {quantity::fixed(nominal.in(unit::inch), 4), nominal, std::nullopt, taken};
}

std::size_t number_sign_at(std::string_view text) {
  for (const std::string_view sign : {"#", "No. ", "no. ", "No.", "no.", "No ", "no "}) {
    if (text.starts_with(sign)) return sign.size();
  }
  return 0;
}

struct Fraction {
  double value = 0.0;
  std::size_t taken = 0;
};

// "3/8" at the start of text.
std::optional<Fraction> fraction_at(std::string_view text) {
  const auto top = digits_at(text, 63);
  if (!top || top->taken >= text.size() || text[top->taken] != '/') return std::nullopt;
  const auto bottom = digits_at(text.substr(top->taken + 1), 64);
  if (!bottom || bottom->value < 2 || (bottom->value & (bottom->value - 1)) != 0) return std::nullopt;
  if (top->value == 0 || top->value >= bottom->value) return std::nullopt;
  return Fraction{static_cast<double>(top->value) / bottom->value, top->taken + 1 + bottom->taken};
}

// ".250" or "0.250" at the start of text.
std::optional<InchSize> decimal_at(std::string_view text) {
  std::size_t end = 0;
  while (end < text.size() && (quantity::is_digit(text[end]) || text[end] == '.'))
    ++end;
  const std::string digits =
      "0" + std::string(text.substr(0, end));  // from_chars wants a digit before the point
  double inches = 0.0;
  const auto [rest, error] = std::from_chars(digits.data(), digits.data() + digits.size(), inches);
  if (error != std::errc{} || rest != digits.data() + digits.size()) return std::nullopt;
  if (inches <= 0.0 || inches > kLargestInches) return std::nullopt;
  return named(Diameter::of(inches, unit::inch), end);
}

}  // namespace

Diameter numbered_size(int number) {
  return Diameter::of((60.0 + 13.0 * number) / 1000.0, unit::inch);
}

bool is_numbered_size(int number) {
  for (const int known : kNumbers) {
    if (known == number) return true;
  }
  return false;
}

InchSize as_numbered(int number, std::size_t taken) {
  return {"#" + std::to_string(number), numbered_size(number), std::nullopt, taken};
}

std::optional<InchSize> inch_size_at(std::string_view text) {
  constexpr int kMostWhole = 99;
  if (const std::size_t sign = number_sign_at(text); sign > 0) {
    const auto number = digits_at(text.substr(sign), kMostWhole);
    if (!number || !is_numbered_size(number->value)) return std::nullopt;
    return as_numbered(number->value, sign + number->taken);
  }
  if (const auto fraction = fraction_at(text)) {
    return named(Diameter::of(fraction->value, unit::inch), fraction->taken);
  }
  const auto whole = digits_at(text, kMostWhole);
  const std::size_t digits = whole ? whole->taken : 0;
  if (digits < text.size() && text[digits] == '.') return decimal_at(text);
  if (!whole) return std::nullopt;
  const std::string_view rest = text.substr(digits);
  const std::size_t gap = rest.starts_with(' ') ? 1 : quantity::minus_at(rest);
  const auto fraction = gap > 0 ? fraction_at(rest.substr(gap)) : std::nullopt;
  if (fraction) {
    if (whole->value < 1 || whole->value >= kLargestInches) return std::nullopt;
    return named(Diameter::of(whole->value + fraction->value, unit::inch), digits + gap + fraction->taken);
  }
  if (whole->value > kLargestInches && !is_numbered_size(whole->value)) return std::nullopt;
  return InchSize{std::to_string(whole->value), Diameter::of(whole->value, unit::inch), whole->value, digits};
}

}  // namespace sparewright::handbook
