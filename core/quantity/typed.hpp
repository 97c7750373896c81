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

// A number with its unit. base is in the coherent base unit of its kind (mm, kg, s, K, rad), never -0.
struct Typed {
  static constexpr int kFraction = -1;

  double base = 0.0;
  Kind kind = Kind::kNumber;
  Unit unit;                // the last one written: inch for 2 ft 3-1/2 in
  std::string typed;        // exactly as it stood, without the blanks around it
  int places = 0;           // decimal places of the last number written; kFraction where it was a fraction
  bool unit_given = false;  // false where the job's unit was taken
  bool compound = false;    // several units: 2 ft 3-1/2 in, 30° 15'

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

// Reads a number of the kind wanted. Accepted for a length: 1.375 in, 1-3/8, 1 3/8", 3/8", .0005, 34.9 mm, 5
// thou, 2 ft 3-1/2 in, 2' 3-1/2"; for an angle: 30 deg, 28.5, 30° 15' 30"; for the others a decimal number
// and a unit of the kind. A unit may be followed by a point (1.375 in.) and one of small letters may be in
// capitals (1.375 IN).
//
// A bare number takes the unit of `system`; with no system, or for a kind where both systems have several
// plausible units (a pressure, a force), it is an error. A fraction of length is inch unless a unit is
// written.
//
// What can be meant in two ways is never guessed: 1 - 3/8 (a mixed number or a difference), 1,375 (a decimal
// comma or thousands), 5 mil (thou or millimetres), 0.8758-0.8750 (limits or a difference) fail, and the
// message names both. Fails with: kEmptyValue, kNotANumber, kDecimalComma, kUnitMissing, kUnitUnknown,
// kUnitOfAnotherKind, kThreadWhereLength, kBadFraction, kDesignationWhereLength, kNumberTooLarge,
// kTrailingText, kTwoReadings; the span points into text.
[[nodiscard]] base::Result<Typed> read_number(std::string_view text, Kind kind,
                                              std::optional<UnitSystem> system);

// The same, and also drill designations: #7, letter F.
[[nodiscard]] base::Result<Size> read_size(std::string_view text, Kind kind,
                                           std::optional<UnitSystem> system);

// Reads the longest number at the start of text and says how many bytes it took, blanks before it included.
// What follows is not judged.
struct Prefix {
  Typed number;
  std::size_t taken = 0;
};
[[nodiscard]] base::Result<Prefix> read_number_prefix(std::string_view text, Kind kind,
                                                      std::optional<UnitSystem> system);

}  // namespace sparewright::quantity
