#include "core/handbook/button_head_screws.hpp"

#include "core/handbook/sized_rows.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr ButtonHeadScrew kButtonHeadScrews[] = {
#include "generated/core/handbook/button_head_screws.inc"
};

}  // namespace

std::span<const ButtonHeadScrew> button_head_screws() {
  return kButtonHeadScrews;
}

base::Result<ButtonHeadScrew> button_head_screw(std::string_view size) {
  return row_of_size(kButtonHeadScrews, size, "the button head screw");
}

}  // namespace sparewright::handbook
