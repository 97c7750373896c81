// Lettering: what is set, how large, and who measures it.
#pragma once

#include <string_view>

namespace sparewright::drawing {

enum class Face { kRegular, kBold };

// cap_mm is the height of a capital or a figure on paper, > 0.
struct TextStyle {
  double cap_mm = 2.5;
  Face face = Face::kRegular;

  friend auto operator<=>(const TextStyle&, const TextStyle&) = default;
};

// Room one line of text takes: to the right of its start, above and below its baseline. Never less above and below
// than the face's tallest and deepest usual letters, so that lines of one style stand evenly.
struct TextSize {
  double width_mm = 0.0;
  double above_mm = 0.0;
  double below_mm = 0.0;

  [[nodiscard]] double height() const { return above_mm + below_mm; }
};

// Measures text as it will be printed. Implemented where the fonts are (sheets); what lays out asks only this.
// Figures on both sides of a fraction slash (U+2044) are set small, the first raised.
class Ruler {
 public:
  Ruler() = default;
  Ruler(const Ruler&) = delete;
  Ruler& operator=(const Ruler&) = delete;
  virtual ~Ruler() = default;

  // `says` is one line of valid UTF-8. Empty text has no width.
  [[nodiscard]] virtual TextSize measure(std::string_view says, const TextStyle& style) const = 0;
};

}  // namespace sparewright::drawing
