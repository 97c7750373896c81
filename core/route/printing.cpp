#include "core/route/printing.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/quantity/inwards.hpp"

namespace sparewright::route {
using quantity::rounded_down;
using quantity::rounded_up;

double Printing::in_unit(double mm) const {
  return quantity::display_unit(quantity::Kind::kLength, system_).from_base(mm);
}

int Printing::places(bool is_fine) const {
  const int plain_places = system_ == quantity::UnitSystem::kInch ? 3 : 2;
  return is_fine ? plain_places + 1 : plain_places;
}

std::string Printing::fine(double mm) const {
  return quantity::fixed(in_unit(mm), places(true));
}
std::string Printing::plain(double mm) const {
  return quantity::fixed(in_unit(mm), places(false));
}

std::string Printing::nominal(double mm) const {
  std::string number = plain(mm);
  while (number.ends_with('0'))
    number.pop_back();
  if (number.ends_with('.')) number.pop_back();
  return fmt::format("{} {}", number, unit_name());
}

std::string Printing::least(double mm, bool is_fine) const {
  return quantity::fixed(rounded_up(in_unit(mm), places(is_fine)), places(is_fine));
}

std::string Printing::most(double mm, bool is_fine) const {
  return quantity::fixed(rounded_down(in_unit(mm), places(is_fine)), places(is_fine));
}

std::string Printing::limits(double least_mm, double most_mm, bool is_fine) const {
  return fmt::format("{}-{}", least(least_mm, is_fine), most(most_mm, is_fine));
}

std::string Printing::size_with_room(double nominal_mm, double least_mm, double most_mm) const {
  const int p = places(false);
  // Only where it says the same as the limits printed elsewhere; nothing may be read in two ways.
  const double printed = quantity::rounded(in_unit(nominal_mm), p);
  const double low = rounded_up(in_unit(least_mm), p);
  const double high = rounded_down(in_unit(most_mm), p);
  if (std::abs(printed - low - (high - printed)) > quantity::kSamePlace)
    return limits(least_mm, most_mm, false);
  return fmt::format("{} ±{}", quantity::fixed(printed, p), quantity::fixed(high - printed, p));
}

std::string Printing::unit_name() const {
  return system_ == quantity::UnitSystem::kInch ? "in" : "mm";
}

std::string or_not_known(const ledger::Figure& figure, const std::string& text) {
  return figure.known() ? text : "NOT KNOWN";
}

}  // namespace sparewright::route
