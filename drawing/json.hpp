// A display list as text: for golden files and for the page.
#pragma once

#include <string>

#include "drawing/display_list.hpp"

namespace sparewright::drawing {

// A JSON array, one element a line, in the order they are laid down. Lengths in mm with two decimals (0.01 mm is finer
// than any printer), angles in radians with four; -0 is 0. Texts must be valid UTF-8.
//   {"line":[10.00,20.00,60.00,20.00],"weight":"thin"}
//   {"text":"STOP","at":[12.00,31.00],"anchor":"left","cap":4.00,"face":"bold","ink":"white","box":[...]}
[[nodiscard]] std::string to_json(const DisplayList& list);

}  // namespace sparewright::drawing
