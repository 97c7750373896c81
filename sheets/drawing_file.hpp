// The sheets of the drawing as files of their own.
#pragma once

#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "sheets/pages.hpp"

namespace sparewright::sheets {

enum class Picture {
  kSvg,
  kPng,
  kJson
};  // PNG at 150 dots to the inch; JSON: the display list (drawing/json.hpp)

// One file a sheet, each with the notes that stand below its views. Precondition: the packet has a drawing. Fails with
// kFileUnreadable where the font is not installed.
[[nodiscard]] base::Result<std::vector<std::string>> render_drawing(const Packet& packet,
                                                                    const PaperOptions& options,
                                                                    Picture kind);

}  // namespace sparewright::sheets
