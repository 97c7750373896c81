// Hexagon heads and nuts: inch ASME B18.2.1 and B18.2.2, metric ISO 4014/4017 and 4032, and the wider heads
// of old DIN bolts.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

enum class HexKind { kCapScrew, kMachineScrewNut, kNut, kMetricNut, kMetricBolt, kOldMetricBolt };
[[nodiscard]] std::string_view name_of(HexKind kind);  // "hex cap screw, ASME B18.2.1"

struct HexFastener {
  HexKind kind = HexKind::kCapScrew;
  std::string_view size;       // "5/16", "M8"
  quantity::Length flats_max;  // across the flats; nominal for metric bolts
  std::optional<quantity::Length> flats_min;
  quantity::Length height_max;  // of the head, or thickness of the nut
  std::optional<quantity::Length> height_min;
  Source source;

  // Across sharp corners: 2/sqrt(3) of the greatest width across flats. Source: geometry.
  [[nodiscard]] quantity::Diameter corners_max() const;
};

// In the order of HexKind, smallest first.
[[nodiscard]] std::span<const HexFastener> hex_fasteners();

// size as in read_screw_size. Fails as that does, or with kNotTabled.
[[nodiscard]] base::Result<HexFastener> hex_fastener(HexKind kind, std::string_view size);

// The head and the nut that go with a size: cap screw and nut (machine screw nut for a numbered size), metric
// bolt and nut.
[[nodiscard]] base::Result<HexFastener> hex_head(std::string_view size);
[[nodiscard]] base::Result<HexFastener> hex_nut(std::string_view size);

}  // namespace sparewright::handbook
