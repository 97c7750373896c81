// One sheet of the drawing as a file of its own.
#pragma once

#include <string>

#include "core/base/result.hpp"
#include "sheets/pages.hpp"

namespace sparewright::sheets {

enum class Picture {
  kSvg,
  kPng,
  kJson
};  // PNG at 150 dots to the inch; JSON: the display list (drawing/json.hpp)

// Precondition: the packet has a drawing. sheet counts from 1. Fails with kNotInTheJob for one it has not, naming how many
// there are, and with kFileUnreadable where the font is not installed.
[[nodiscard]] base::Result<std::string> render_drawing(const Packet& packet, const PaperOptions& options,
                                                       int sheet, Picture kind);

}  // namespace sparewright::sheets
