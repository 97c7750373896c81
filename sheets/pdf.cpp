#include "sheets/pdf.hpp"

#include "sheets/layout.hpp"
#include "sheets/printable.hpp"

namespace sparewright::sheets {

base::Result<std::string> render_pdf(const Packet& packet, const PaperOptions& options,
                                     std::optional<int> only) {
  const auto press = Press::open();
  if (!press) return base::fail(press.error());
  const auto all = laid_out(packet, options, **press, only);
  if (!all) return base::fail(all.error());
  bool replaced = false;
  return (*press)->print(*all, printable(packet.title, **press, replaced));
}

}  // namespace sparewright::sheets
