// The scales drawings are made at. Used inside this room only.
#pragma once

#include <array>

namespace sparewright::drawing {

// ISO 5455 (from memory), and between its 1:2, 1:5 and 1:10 those that drawing offices use (common practice).
struct Scale {
  double factor = 1.0;
  const char* says = "1:1";
};
inline constexpr std::array kScales{Scale{10.0, "10:1"}, Scale{5.0, "5:1"},   Scale{2.0, "2:1"},
                                    Scale{1.0, "1:1"},   Scale{0.5, "1:2"},   Scale{0.4, "1:2.5"},
                                    Scale{0.25, "1:4"},  Scale{0.2, "1:5"},   Scale{0.1, "1:10"},
                                    Scale{0.05, "1:20"}, Scale{0.02, "1:50"}, Scale{0.01, "1:100"}};

}  // namespace sparewright::drawing
