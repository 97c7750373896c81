#include "core/handbook/eccentric_packing.hpp"

#include <optional>

#include <fmt/format.h>

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr double kMostThrowInRadii = 0.5;

std::string shown(Length length) {
  return fmt::format("{:.6g} mm", length.in(unit::millimetre));
}

std::optional<base::Failure> bad_work(Diameter work, Length jaw_width) {
  if (!(work > Diameter())) {
    return base::fail(base::Code::kSizeNotPositive, shown(across(work)), "a diameter of more than 0 mm",
                      "the diameter of the work")
        .value();
  }
  if (!(jaw_width >= Length())) {
    return base::fail(base::Code::kValueNotAccepted, shown(jaw_width), "0 mm (narrow jaws) or more",
                      "the width of the jaws")
        .value();
  }
  return std::nullopt;
}

base::Failure too_much(std::string_view what, Length found, Length most) {
  return base::fail(base::Code::kValueNotAccepted, shown(found),
                    fmt::format("up to {}; beyond, a four-jaw chuck or a fixture", shown(most)), what)
      .value();
}

base::Failure not_positive(std::string_view what, Length found) {
  return base::fail(base::Code::kSizeNotPositive, shown(found), "a length of more than 0 mm", what).value();
}

Length packing_for(Length eccentric_throw, Diameter work, Length jaw_width) {
  return Length::from_base(eccentric_packing_mm(eccentric_throw.base(), half(work).base(), jaw_width.base()));
}

}  // namespace

base::Result<EccentricPacking> eccentric_packing(Length eccentric_throw, Diameter work, Length jaw_width) {
  if (const auto bad = bad_work(work, jaw_width)) return tl::unexpected(*bad);
  if (!(eccentric_throw > Length())) return tl::unexpected(not_positive("the throw", eccentric_throw));
  const Length most = reach(half(work)) * kMostThrowInRadii;
  if (eccentric_throw > most) return tl::unexpected(too_much("the throw", eccentric_throw, most));
  return EccentricPacking{packing_for(eccentric_throw, work, jaw_width), eccentric_throw * 1.5,
                          packing_for(eccentric_throw, work, Length()), eccentric_throw * 2.0};
}

base::Result<Length> throw_of_packing(Length packing, Diameter work, Length jaw_width) {
  if (const auto bad = bad_work(work, jaw_width)) return tl::unexpected(*bad);
  if (!(packing > Length())) return tl::unexpected(not_positive("the packing", packing));
  Length high = reach(half(work)) * kMostThrowInRadii;
  const Length most = packing_for(high, work, jaw_width);
  if (packing > most) return tl::unexpected(too_much("the packing", packing, most));
  Length low;
  const Length enough = Length::of(1e-6, unit::millimetre);
  while (high - low > enough) {  // the packing grows with the throw
    const Length middle = (low + high) / 2.0;
    (packing_for(middle, work, jaw_width) < packing ? low : high) = middle;
  }
  return (low + high) / 2.0;
}

}  // namespace sparewright::handbook
