// What stands at the head and foot of every page of a sheet.
#pragma once

#include <string>
#include <vector>

#include "sheets/setting.hpp"

namespace sparewright::sheets {

// One sheet of the packet, before it is divided into pages.
struct SheetHead {
  std::string title;
  std::string revision;
  int sheet = 1;
  int of = 1;
  std::string tab;   // "OP 20"; white on black
  std::string name;  // beside it
  bool letters_replaced = false;
};

// page and pages count from 1 within the sheet; "page 1 of 2" stands there where pages > 1. Its height does not depend on
// them.
[[nodiscard]] Block head_block(const Setting& setting, const SheetHead& head, int page, int pages,
                               double width_mm);

[[nodiscard]] Block foot_block(const Setting& setting, const SheetHead& head, double width_mm);

// By, date, overruled and why.
[[nodiscard]] Block signature_block(const Setting& setting, double width_mm);

}  // namespace sparewright::sheets
