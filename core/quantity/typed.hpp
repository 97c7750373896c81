// Numbers as people write them, kept as typed.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "core/base/result.hpp"
#include "core/quantity/kind.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::quantity {

// A number with its unit. base is in the coherent base unit of its kind (mm, kg, s, K, rad).
struct Typed {
  static constexpr int kFraction = -1;

  double base = 0.0;
  Kind kind = Kind::kNumber;
  Unit unit;
  std::string typed;       // exactly as it stood, without the blanks around it
  int places = 0;          // decimal places written; kFraction where it was written as a fraction
  bool unit_given = false; // false where the job's unit was taken

  [[nodiscard]] Length length() const { return Length::from_base(base); }
  [[nodiscard]] Diameter diameter() const { return Diameter::from_base(base); }
  [[nodiscard]] Angle angle() const { return Angle::from_base(base); }
};

// A size named instead of measured; the handbook knows what it means.
struct Designation {
  enum class Series { kNumberDrill, kLetterDrill };
  Series series = Series::kNumberDrill;
  std::string name;  // "7" or "F"
  std::string typed;

  friend bool operator==(const Designation&, const Designation&) = default;
};

using Size = std::variant<Typed, Designation>;

// Reads a number of the kind wanted. Accepted for a length: 1.375 in, 1-3/8, 1 3/8", 3/8", .0005, 34.9 mm, 5 thou,
// 2 ft 3-1/2 in; for an angle: 30 deg, 28.5, 30° 15' 30"; for the others a decimal number and a unit of the kind.
//
// A bare number takes the unit of `system`; with no system, or for a kind where both systems have several plausible
// units (a pressure, a force), it is an error. A fraction is inch unless a unit is written.
// Fails with: kEmptyValue, kNotANumber, kDecimalComma, kUnitMissing, kUnitUnknown, kUnitOfAnotherKind,
// kThreadWhereLength, kBadFraction, kDesignationWhereLength, kNumberTooLarge, kTrailingText; span points into text.
[[nodiscard]] base::Result<Typed> read_number(std::string_view text, Kind kind, std::optional<UnitSystem> system);

// The same, and also drill designations: #7, letter F.
[[nodiscard]] base::Result<Size> read_size(std::string_view text, Kind kind, std::optional<UnitSystem> system);

// Reads the longest number at the start of text and says how many bytes it took, blanks before it included.
struct Prefix {
  Typed number;
  std::size_t taken = 0;
};
[[nodiscard]] base::Result<Prefix> read_number_prefix(std::string_view text, Kind kind,
                                                      std::optional<UnitSystem> system);

}  // namespace sparewright::quantity
