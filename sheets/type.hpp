// The sizes of type and room on a sheet, all in mm. Cap heights: the height of a capital or figure.
#pragma once

#include <array>

#include "drawing/text.hpp"

namespace sparewright::sheets {

using drawing::Face;
using drawing::TextStyle;

struct Type {
  TextStyle body{2.6, Face::kRegular};
  TextStyle strong{2.6, Face::kBold};
  TextStyle label{2.2, Face::kBold};  // MACHINE, HOLD, column heads
  TextStyle fine{1.9, Face::kRegular};
  TextStyle size{3.2, Face::kBold};    // sizes that matter, what a proof must show
  TextStyle number{3.2, Face::kBold};  // of a line
  TextStyle speed{3.2, Face::kRegular};
  TextStyle op{3.8, Face::kBold};
  TextStyle stop{4.4, Face::kBold};
  double dial_mm = 5.0;        // figures to dial, where the table has room
  double row_mm = 10.0;        // least height of a numbered line
  double pencil_row_mm = 8.4;  // of a row with a blank
  double gap_mm = 2.6;         // between blocks
  double around_mm = 1.8;      // inside a strong frame
  double picture_mm = 84.0;    // width of the picture beside the words
  double picture_high_mm = 80.0;
  bool picture_below = false;  // instead, as wide as the sheet
};

inline constexpr Type kUsual{.body = {2.35, Face::kRegular},
                             .strong = {2.35, Face::kBold},
                             .label = {2.0, Face::kBold},
                             .fine = {1.8, Face::kRegular},
                             .size = {3.0, Face::kBold},
                             .number = {3.0, Face::kBold},
                             .speed = {3.0, Face::kRegular},
                             .op = {3.5, Face::kBold},
                             .stop = {4.0, Face::kBold},
                             .row_mm = 9.2,
                             .gap_mm = 2.0,
                             .around_mm = 1.5};

inline constexpr Type kSmall{.body = {2.1, Face::kRegular},
                             .strong = {2.1, Face::kBold},
                             .label = {1.9, Face::kBold},
                             .fine = {1.7, Face::kRegular},
                             .size = {2.8, Face::kBold},
                             .number = {2.8, Face::kBold},
                             .speed = {2.8, Face::kRegular},
                             .op = {3.2, Face::kBold},
                             .stop = {3.8, Face::kBold},
                             .row_mm = 8.6,
                             .pencil_row_mm = 8.0,
                             .gap_mm = 1.5,
                             .around_mm = 1.2,
                             .picture_mm = 78.0,
                             .picture_high_mm = 72.0};

// The same, with rows as low as a box to tick allows.
inline constexpr Type kClose{.body = kSmall.body,
                             .strong = kSmall.strong,
                             .label = kSmall.label,
                             .fine = kSmall.fine,
                             .size = kSmall.size,
                             .number = kSmall.number,
                             .speed = kSmall.speed,
                             .op = kSmall.op,
                             .stop = kSmall.stop,
                             .dial_mm = 4.0,
                             .row_mm = 7.4,
                             .pencil_row_mm = 7.4,
                             .gap_mm = 1.1,
                             .around_mm = 1.0,
                             .picture_mm = 68.0,
                             .picture_high_mm = 64.0};

// From roomy to close. The least of them is still read at arm's length; a sheet takes the first that saves a page.
inline constexpr std::array kTypes{Type{.picture_below = true}, Type{}, kUsual, kSmall, kClose};

inline constexpr double kDialLeast_mm = 3.5;

// For a thick pencil and an oily hand.
inline constexpr double kTickBox_mm = 4.6;
inline constexpr double kBlank_mm = 22.0;
inline constexpr double kShortBlank_mm = 19.0;

}  // namespace sparewright::sheets
