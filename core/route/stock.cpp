#include "core/route/stock.hpp"

#include <fmt/format.h>

namespace sparewright::route {
namespace {

std::string typed(const part::BlankSize& size) {
  return size.nominal.typed;
}

}  // namespace

std::string section_words(const part::Blank& blank) {
  if (part::is_bar(blank.shape)) {
    // A hex bar's size across its flats lies along z; the others have one size across both ways.
    return fmt::format("{} {}{}{}", part::name_of(blank.shape), typed(blank.sizes[2]),
                       part::is_round(blank.shape) ? " dia" : " across",
                       blank.bore ? fmt::format(", bore {}", typed(*blank.bore)) : std::string());
  }
  return fmt::format("{} {} x {}", part::name_of(blank.shape), typed(blank.sizes[2]), typed(blank.sizes[1]));
}

std::string found_words(const part::Blank& blank, const Printing& print) {
  std::string found;
  for (const std::size_t axis : {std::size_t{2}, std::size_t{1}, std::size_t{0}}) {
    if (part::is_one_across(blank.shape) && axis == 1) continue;
    if (!blank.sizes.at(axis).found) continue;
    found += (found.empty() ? "" : " x ") + print.plain(blank.sizes.at(axis).found->base);
  }
  return found;
}

std::string blank_words(const part::Blank& blank, const Printing& print) {
  const std::string words = part::is_bar(blank.shape)
                                ? fmt::format("{}, {} long", section_words(blank), typed(blank.sizes[0]))
                                : fmt::format("{} x {}", section_words(blank), typed(blank.sizes[0]));
  const std::string found = found_words(blank, print);
  return found.empty() ? words : fmt::format("{}, found {}", words, found);
}

}  // namespace sparewright::route
