// What the mill may leave on a bar: how far its size may lie from what it is sold as.
#pragma once

#include <optional>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

enum class BarStandard {
  kA108LowCarbon,          // inch cold-finished steel, carbon 0.28 % at most
  kA108MediumCarbon,       // the same, 0.28 to 0.55 %
  kEn10278Drawn,           // metric bright steel, drawn: rounds h9, squares and hexagons h11
  kEn10278Turned,          // metric bright steel, turned: rounds h10
  kExtrudedAluminium,      // inch
  kColdFinishedAluminium,  // inch
  kEn755Group1,            // metric extruded aluminium: 6060, 6061, 6063, 6082
  kEn755Group2,            // the same: 2024, 5083, 7075
  kA29HotRolled,           // metric hot-rolled steel, rounds and squares
};
[[nodiscard]] std::string_view name_of(BarStandard standard);

enum class BarForm {
  kRound,
  kHexagon,  // size is across the flats
  kSquare,
  kFlat,           // ASTM A108, extruded aluminium: the width is the size; it governs the thickness too
  kFlatWidth,      // EN 10278, EN 755
  kFlatThickness,  // EN 10278
};
[[nodiscard]] std::string_view name_of(BarForm form);

struct BarTolerance {
  BarStandard standard = BarStandard::kA108LowCarbon;
  BarForm form = BarForm::kRound;
  std::optional<quantity::Length> over;  // the range of sizes it is for
  std::optional<quantity::Length> up_to;
  quantity::Length plus;   // the bar may be this much over its size: 0 for drawn steel, which is all minus
  quantity::Length minus;  // and this much under
  std::string_view note;
  Source source;
};

// The tolerance of a bar sold as `size`. A size that is no range's (0.4995 in aluminium, between 0.499 and
// 0.500) takes the range below it. Hot-rolled bar over 19 mm may lie 1 % off, worked out here. Fails with
// kNotTabled.
[[nodiscard]] base::Result<BarTolerance> bar_tolerance(BarStandard standard, BarForm form,
                                                       quantity::Length size);

}  // namespace sparewright::handbook
