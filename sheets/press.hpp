// The type and the press: measures text as it will be printed, and prints pages. Everything of cairo and pango is in
// press.cpp.
#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "drawing/text.hpp"
#include "sheets/pages.hpp"

using cairo_surface_t = struct _cairo_surface;  // the press's own; seen in press.cpp only

namespace sparewright::sheets {

// DejaVu Sans Condensed, Book and Bold. No other font is ever mixed in. Not to be shared between threads.
class Press final : public drawing::Ruler {
 public:
  // Fails with kFileUnreadable where the font is not installed.
  [[nodiscard]] static base::Result<std::unique_ptr<Press>> open();
  ~Press() override;

  [[nodiscard]] drawing::TextSize measure(std::string_view says,
                                          const drawing::TextStyle& style) const override;

  // Whether both faces have this letter. Controls, and marks without a shape of their own, they have not.
  [[nodiscard]] bool has(char32_t letter) const;

  // One page as SVG, its letters as outlines; as PNG, white behind it, so many dots to the inch.
  [[nodiscard]] std::string print_svg(const Page& page) const;
  [[nodiscard]] std::string print_png(const Page& page, double dots_per_inch) const;

  // A PDF without a date.
  [[nodiscard]] std::string print(const std::vector<Page>& pages, const std::string& title) const;

 private:
  struct Works;
  void paint(cairo_surface_t* surface, const Page& page, double units_per_mm) const;
  explicit Press(std::unique_ptr<Works> works);

  std::unique_ptr<Works> works_;
};

}  // namespace sparewright::sheets
