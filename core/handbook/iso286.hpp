// ISO 286 fits up to 500 mm: H7, g6, s6 and so on to deviations from the nominal size.
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

enum class FitSide { kHole, kShaft };

// A tolerance zone: H7 is a hole, g6 a shaft.
struct Iso286Zone {
  FitSide side = FitSide::kHole;
  std::string letter;  // "H", "js"
  int grade = 0;       // 7
};

// Reads H7, g6, JS7, js5. Fails with kNameUnknown.
[[nodiscard]] base::Result<Iso286Zone> read_iso286_zone(std::string_view text);
[[nodiscard]] std::string to_string(const Iso286Zone& zone);

// Both limits less the nominal size. lower < upper.
struct FitDeviations {
  quantity::Length lower;
  quantity::Length upper;
  Source source;        // of the fundamental deviation
  Source grade_source;  // of the width
};

// Deviations of a zone at a nominal size. The printed tables rule over the formulas; for K, M, N up to IT8
// and P to U up to IT7 delta = ITn - IT(n-1) is added (Machine Drawing, table 15.3). js and JS are +-IT/2,
// not rounded. Tabled: grades 1 to 14, letters a to h, j, js, k, m, n, p, r, s, t, u of either side, as far
// as the standard has them (j5-j8, J6-J8, K to IT8 over 3 mm, t from 24 mm, a and b over 1 mm), nominal sizes
// over 0 up to 500 mm. Anything else fails with kNotTabled.
[[nodiscard]] base::Result<FitDeviations> iso286_deviations(const Iso286Zone& zone,
                                                            quantity::Diameter nominal);
[[nodiscard]] base::Result<FitDeviations> iso286_deviations(std::string_view zone,
                                                            quantity::Diameter nominal);

// Width of a grade at a nominal size. Fails with kNotTabled outside IT1 to IT14 or 0 to 500 mm.
struct GradeWidth {
  quantity::Length width;
  Source source;
};
[[nodiscard]] base::Result<GradeWidth> iso286_tolerance(int grade, quantity::Diameter nominal);

}  // namespace sparewright::handbook
