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

// Deviations from the size: ±0.002, +0.000/-0.001, +0.0010 to +0.0020. lower <= upper.
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

// Reads a tolerance of a length or an angle. An empty text, or "general", is GeneralTolerance.
// A unit written once at the end counts for both numbers. Fails with kBadTolerance, kToleranceOrder and the
// failures of read_number.
[[nodiscard]] base::Result<Tolerance> read_tolerance(std::string_view text, Kind kind,
                                                     std::optional<UnitSystem> system);

// A size with its tolerance: "0.7500 -0.0002/-0.0004", "0.625 ±0.005", "25 H7", "1.000 in", "0.8750-0.8758".
struct Sized {
  Typed nominal;  // the middle where only limits were written
  Tolerance tolerance;
  std::string typed;
};
[[nodiscard]] base::Result<Sized> read_sized(std::string_view text, Kind kind, std::optional<UnitSystem> system);

}  // namespace sparewright::quantity
