// The sheets of a job as a PDF.
#pragma once

#include <optional>
#include <string>

#include "core/base/result.hpp"
#include "sheets/pages.hpp"

namespace sparewright::sheets {

// The bytes of a PDF, black on white, fonts embedded. Same packet, same bytes: it carries no date. Fails as pages() does.
// only: the sheet of that setup alone.
[[nodiscard]] base::Result<std::string> render_pdf(const Packet& packet, const PaperOptions& options = {},
                                                   std::optional<int> only = std::nullopt);

}  // namespace sparewright::sheets
