#include "core/handbook/set_screws.hpp"

#include "core/handbook/sized_rows.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr SetScrew kSetScrews[] = {
#include "generated/core/handbook/set_screws.inc"
};

}  // namespace

std::span<const SetScrew> set_screws() {
  return kSetScrews;
}

base::Result<SetScrew> set_screw(std::string_view size) {
  return row_of_size(kSetScrews, size, "the socket set screw");
}

}  // namespace sparewright::handbook
