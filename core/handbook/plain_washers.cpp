#include "core/handbook/plain_washers.hpp"

#include <array>
#include <string>

#include "core/handbook/sized_rows.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr PlainWasher kPlainWashers[] = {
#include "generated/core/handbook/plain_washers.inc"
};

}  // namespace

std::string_view name_of(WasherSeries series) {
  constexpr std::array<std::string_view, 4> kNames{"type A", "type A narrow (SAE)", "type A wide (USS)",
                                                   "ISO 7089"};
  return kNames.at(static_cast<std::size_t>(series));
}

std::span<const PlainWasher> plain_washers() {
  return kPlainWashers;
}

base::Result<PlainWasher> plain_washer(std::string_view size) {
  return row_of_size(kPlainWashers, size, "the plain washer",
                     [](const PlainWasher& row) { return row.series != WasherSeries::kWide; });
}

base::Result<PlainWasher> plain_washer(WasherSeries series, std::string_view size) {
  return row_of_size(kPlainWashers, size, "the washer " + std::string(name_of(series)),
                     [series](const PlainWasher& row) { return row.series == series; });
}

}  // namespace sparewright::handbook
