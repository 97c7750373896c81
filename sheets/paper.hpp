// Paper and its margins.
#pragma once

#include "sheets/pages.hpp"

namespace sparewright::sheets {

struct PaperSize {
  double width_mm = 0.0;
  double height_mm = 0.0;
};

[[nodiscard]] constexpr PaperSize size_of(Paper paper) {
  return paper == Paper::kA4 ? PaperSize{210.0, 297.0} : PaperSize{215.9, 279.4};
}

inline constexpr double kLeft_mm = 14.0;  // room to punch
inline constexpr double kRight_mm = 9.0;
inline constexpr double kTop_mm = 8.0;
inline constexpr double kBottom_mm = 7.0;

[[nodiscard]] constexpr double text_width_mm(Paper paper) {
  return size_of(paper).width_mm - kLeft_mm - kRight_mm;
}

}  // namespace sparewright::sheets
