// The sheet of one setup, as blocks.
#pragma once

#include <string>
#include <vector>

#include "core/route/sheet.hpp"
#include "drawing/held_views.hpp"
#include "sheets/setting.hpp"

namespace sparewright::sheets {

// What comes before the numbered lines, without head and foot. What the setup does not have takes no room; without a
// picture there is a sentence why.
// held  the work in this setup; nullptr where it cannot be made (drawing/plan_view.hpp)
[[nodiscard]] Flow before_the_lines(const Setting& setting, const route::SetupSheet& sheet,
                                    const drawing::HeldViews* held, double width_mm);

// The numbered lines and what comes after them.
[[nodiscard]] Flow lines_and_after(const Setting& setting, const route::SetupSheet& sheet, double width_mm);

// The sizes that matter in their frame, and what holds for the rest. Nothing where there is neither.
[[nodiscard]] std::vector<Block> sizes_blocks(const Setting& setting, const std::vector<std::string>& sizes,
                                              const std::string& the_rest, double width_mm);

// Why nothing may be cut here yet, framed. Nothing where nothing stands against it.
[[nodiscard]] std::vector<Block> not_cleared_blocks(const Setting& setting,
                                                    const std::vector<std::string>& lines, double width_mm);

// Dangers of this sheet, marked. Nothing where there are none.
[[nodiscard]] std::vector<Block> caution_blocks(const Setting& setting,
                                                const std::vector<std::string>& cautions, double width_mm);

}  // namespace sparewright::sheets
