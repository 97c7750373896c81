// Tolerances in all the forms people write.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "core/base/result.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::quantity {

// None written: the job's general tolerance, by decimal places.
struct GeneralTolerance {
  friend bool operator==(const GeneralTolerance&, const GeneralTolerance&) = default;
};

// Deviations from the size: ±0.002, +0.000/-0.001, +0.0010 to +0.0020, +0.2/0. lower <= upper. Those of a
// temperature are temperature differences.
struct Deviations {
  Typed lower;
  Typed upper;
};

// Both limits written out: 0.8750-0.8758, 0.8750 to 0.8758. low <= high.
struct WrittenLimits {
  Typed low;
  Typed high;
};

// H7, g6, RC4: the handbook knows the deviations.
struct FitClass {
  std::string name;
  friend bool operator==(const FitClass&, const FitClass&) = default;
};

using ToleranceForm = std::variant<GeneralTolerance, Deviations, WrittenLimits, FitClass>;

struct Tolerance {
  ToleranceForm form = GeneralTolerance{};
  std::string typed;
};

// Reads a tolerance of a length, an angle or another kind. An empty text, or "general", is GeneralTolerance.
// Deviations may stand in either order, limits may not; a zero needs no sign. A unit written once at the end
// counts for both numbers. Fails with kBadTolerance, kToleranceOrder and the failures of read_number, and
// with kTwoReadings where a number without a unit could take either of two ("0.5 in to 12", in a metric job);
// the span points into text.
[[nodiscard]] base::Result<Tolerance> read_tolerance(std::string_view text, Kind kind,
                                                     std::optional<UnitSystem> system);

// A size with its tolerance: "0.7500 -0.0002/-0.0004", "0.625 ±0.005", "25 H7", "1.000 in", "0.8750-0.8758".
//
// A tolerance without a unit takes that of its size. A size without one takes the job's, and fails with
// kTwoReadings where the tolerance is in another ("25 ±0.002 in", in a metric job); outside a job it takes
// the tolerance's.
struct Sized {
  Typed nominal;  // the middle where only limits were written, its typed then holding both
  Tolerance tolerance;
  std::string typed;
};
[[nodiscard]] base::Result<Sized> read_sized(std::string_view text, Kind kind,
                                             std::optional<UnitSystem> system);

}  // namespace sparewright::quantity
