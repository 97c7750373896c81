// The pages of a job, laid out and not yet printed.
#pragma once

#include <vector>

#include "core/base/result.hpp"
#include "core/base/words.hpp"
#include "drawing/display_list.hpp"
#include "sheets/packet.hpp"

namespace sparewright::sheets {

enum class Paper { kA4, kLetter };  // ISO 216; ANSI/ASME Y14.1 size A. Upright.

struct PaperOptions {
  Paper paper = Paper::kA4;
  base::Dialect dialect = base::Dialect::kAmerican;  // of the words in [square brackets]
};

// One side of paper. Coordinates from its upper left corner, y down, nothing outside.
struct Page {
  double width_mm = 0.0;
  double height_mm = 0.0;
  drawing::DisplayList list;
};

// The first sheet, the drawing, the lists before the first setup, one sheet a setup, the lists after the last; "sheet 2 of
// 5" counts sheets. A sheet that does not fit on one page goes on to a further page under the same head, "page 2 of 2";
// the numbered lines start a page of their own where that costs none. The type is the largest with which a sheet takes the
// fewest pages.
//
// Guarantees: (1) every text of the packet is there, whole; (2) no text overlaps another or crosses a line that is not its
// own; (3) figures to dial are 3.5 to 5 mm high, the largest type on the sheet; (4) same packet, same pages.
// Letters the type does not have are printed as U+2603, and a note at the foot says so. Fractions with a denominator up
// to 64 are set as fractions, except in names as typed (title, op, names in the picture).
//
// Fails with kTooMany where there are more than kMostQueries queries or one line, block or head is higher than a page;
// with kFileUnreadable where the font is not installed.
[[nodiscard]] base::Result<std::vector<Page>> pages(const Packet& packet, const PaperOptions& options = {});

}  // namespace sparewright::sheets
