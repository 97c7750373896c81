// A ruler for tests: every character is 0.8 cap heights wide, reaches 1.1 above the line and 0.3 below.
#pragma once

#include <algorithm>

#include "drawing/text.hpp"

namespace sparewright::tests {

class FixedRuler final : public drawing::Ruler {
 public:
  [[nodiscard]] drawing::TextSize measure(std::string_view says,
                                          const drawing::TextStyle& style) const override {
    const auto characters = std::count_if(says.begin(), says.end(), [](char c) {
      return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;  // not the further bytes of one
    });
    return {0.8 * style.cap_mm * static_cast<double>(characters), 1.1 * style.cap_mm, 0.3 * style.cap_mm};
  }
};

}  // namespace sparewright::tests
