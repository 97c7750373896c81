// One sheet on as few pages as its type allows. Used inside this room only.
#pragma once

#include <functional>
#include <vector>

#include "core/base/result.hpp"
#include "sheets/head.hpp"
#include "sheets/pages.hpp"
#include "sheets/paper.hpp"

namespace sparewright::sheets {

// Makes a part of a sheet with one size of type.
using MakeFlow = std::function<Flow(const Setting&, double width_mm)>;

// The whole on one page with the largest type that allows it; else each part on pages of its own with the largest type it
// allows, unless the parts one after the other take fewer. Fails with kTooMany where one text is higher than a page.
[[nodiscard]] base::Result<std::vector<Page>> make_sheet(const drawing::Ruler& ruler, PaperSize paper,
                                                         const SheetHead& head,
                                                         const std::vector<MakeFlow>& parts);

}  // namespace sparewright::sheets
