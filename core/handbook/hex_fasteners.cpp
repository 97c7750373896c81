#include "core/handbook/hex_fasteners.hpp"

#include <array>
#include <numbers>
#include <string>

#include "core/handbook/sized_rows.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr HexFastener kHexFasteners[] = {
#include "generated/core/handbook/hex_fasteners.inc"
};

}  // namespace

std::string_view name_of(HexKind kind) {
  constexpr std::array<std::string_view, 6> kNames{
      "hex cap screw, ASME B18.2.1", "machine screw nut, ASME B18.2.2", "hex nut, ASME B18.2.2",
      "hex nut, ISO 4032",           "hex bolt, ISO 4014/4017",         "hex bolt, old DIN 931/933"};
  return kNames.at(static_cast<std::size_t>(kind));
}

Diameter HexFastener::corners_max() const {
  return Diameter::from_base(flats_max.base() * 2.0 / std::numbers::sqrt3);
}

std::span<const HexFastener> hex_fasteners() {
  return kHexFasteners;
}

base::Result<HexFastener> hex_fastener(HexKind kind, std::string_view size) {
  return row_of_size(kHexFasteners, size, "the " + std::string(name_of(kind)),
                     [kind](const HexFastener& row) { return row.kind == kind; });
}

base::Result<HexFastener> hex_head(std::string_view size) {
  return row_of_size(kHexFasteners, size, "the hexagon head", [](const HexFastener& row) {
    return row.kind == HexKind::kCapScrew || row.kind == HexKind::kMetricBolt;
  });
}

base::Result<HexFastener> hex_nut(std::string_view size) {
  return row_of_size(kHexFasteners, size, "the hexagon nut", [](const HexFastener& row) {
    return row.kind == HexKind::kMachineScrewNut || row.kind == HexKind::kNut ||
           row.kind == HexKind::kMetricNut;
  });
}

}  // namespace sparewright::handbook
