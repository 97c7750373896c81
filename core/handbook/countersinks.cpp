#include "core/handbook/countersinks.hpp"

#include "core/handbook/sized_rows.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr FlatHeadScrew kFlatHeadScrews[] = {
#include "generated/core/handbook/flat_head_screws.inc"
};

}  // namespace

std::span<const FlatHeadScrew> flat_head_screws() {
  return kFlatHeadScrews;
}

base::Result<FlatHeadScrew> flat_head_screw(FlatHeadStyle style, std::string_view size) {
  return row_of_size(
      kFlatHeadScrews, size,
      style == FlatHeadStyle::kSocket ? "the flat head socket screw" : "the flat head machine screw",
      [style](const FlatHeadScrew& row) { return row.style == style; });
}

base::Result<Countersink> countersink(FlatHeadStyle style, std::string_view size, ClearanceFit fit) {
  const auto screw = flat_head_screw(style, size);
  if (!screw) return tl::unexpected(screw.error());
  const auto hole = clearance_hole(size, fit);
  if (!hole) return tl::unexpected(hole.error());
  const double feed_mm = countersink_depth_mm(screw->sharp.in(unit::millimetre),
                                              hole->hole.in(unit::millimetre), screw->angle.in(unit::radian));
  return Countersink{*screw, *hole, screw->sharp, Length::of(feed_mm, unit::millimetre)};
}

}  // namespace sparewright::handbook
