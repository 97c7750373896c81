// Formulas as people type them: plain arithmetic over named dimensions, with units checked.
//
//   auto typed = Expression::read("centres + pin/2 + stud/2");
//   auto formula = typed->bind(kinds, Kind::kLength, UnitSystem::kInch);   // kinds: what each name is
//   auto y = formula->at(values);                                          // base units; value and slopes
//
// Accepted: + - * / ^ (whole exponents), parentheses, the names, numbers with or without a unit (3/8 in, 12.5
// mm, 30 deg), pi, and sqrt sin cos tan asin acos atan abs min max. A name starts with a letter or '_' and
// goes on with letters, digits, '_' and '.'.
//
// Units. Only like is added to like; a radius and a diameter are not. A diameter halved is a radius (pin/2),
// a radius doubled a diameter. A bare number beside a length takes the job's unit, beside an angle it is
// degrees, a bare fraction beside a length is inch; everywhere else it is a plain number.
//
// What can be meant in two ways is refused, and both ways to write it are named: 1-3/8 inside a longer
// formula (1.375 or 0.625), a/3/8 (by a fraction or by two numbers), 3/8^2, 3 in^2. Digits around a slash
// without blanks are one number.
//
// Failures point at the column (span into the text).
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/hash.hpp"
#include "core/base/result.hpp"
#include "core/quantity/kind.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::formula {

enum class Operation : std::uint8_t {
  kConstant,
  kName,
  kAdd,
  kSubtract,
  kMultiply,
  kDivide,
  kNegate,
  kPower,
  kSqrt,
  kSin,
  kCos,
  kTan,
  kAsin,
  kAcos,
  kAtan,
  kAbs,
  kMin,
  kMax,
};

// One step of the tape: what it does, to which earlier steps, and where it stands in the text. No longer than it must be:
// hundreds are run one after the other.
struct Step {
  Operation operation = Operation::kConstant;
  std::uint16_t first = 0;   // an earlier step; for kName the index of the name
  std::uint16_t second = 0;  // an earlier step
  double constant = 0.0;     // kConstant: the number; kPower: the exponent
  base::Span span;
};

// A step as read: a constant still in the unit it was typed with.
struct TypedStep {
  Step step;
  std::optional<quantity::Unit> unit;  // as written
  bool is_fraction = false;            // written as 3/8 or 1-3/8
};

// A formula whose units have been checked, ready to run. All numbers in base units (mm, kg, s, K, rad).
class Formula {
 public:
  struct Value {
    double value = 0.0;
    std::vector<double> slopes;  // one for each name
  };

  // values: one for each name, in their order, all finite. Fails where the value or one of the slopes is not
  // a finite number (sqrt at 0, asin at 1) with kDividesByZero or kOutsideDomain, span into the text. Of two
  // equal numbers min and max take the first; abs at 0 has the slope 1.
  [[nodiscard]] base::Result<Value> at(std::span<const double> values) const;

  // The same for many sets of values at once, `lanes` of them; nothing is allocated once `room` has grown.
  // values  lanes numbers of the first name, then of the second, ...
  // out     lanes values
  // slopes  lanes slopes by the first name, then by the second, ...
  // A value or a slope that is not finite is left as it is.
  struct Room {
    std::vector<double> numbers;
  };
  void at_many(std::span<const double> values, std::size_t lanes, Room& room, std::span<double> out,
               std::span<double> slopes) const;

  // The same, its slopes put where they are wanted: slopes as long as values.
  [[nodiscard]] base::Result<double> at(std::span<const double> values, std::span<double> slopes) const;

  // In the order of their first appearance.
  [[nodiscard]] const std::vector<std::string>& names() const { return names_; }
  [[nodiscard]] quantity::Kind kind() const { return kind_; }
  [[nodiscard]] const std::string& typed() const { return typed_; }

  // Equal only where the formula gives the same from the same values.
  [[nodiscard]] base::Fingerprint fingerprint() const;

 private:
  friend class Expression;
  std::string typed_;
  std::vector<std::string> names_;
  std::vector<Step> tape_;
  quantity::Kind kind_ = quantity::Kind::kNumber;
};

// A formula that has been read, its units not yet known.
class Expression {
 public:
  // Fails with kEmptyValue, kFormulaSyntax, kTwoReadings, kUnitUnknown, kDecimalComma, kTooMany (longer than
  // kLongestFormula or nested deeper than kDeepestNesting), and for a number kBadFraction, kNumberTooLarge,
  // kNotANumber.
  static base::Result<Expression> read(std::string_view text);

  // What a name is; nothing where it is not known.
  using KindOf = std::function<std::optional<quantity::Kind>(std::string_view name)>;

  // Checks the units and fixes the bare numbers. Fails with kNameUnknown (`known` is offered) and
  // kKindsDoNotMix.
  [[nodiscard]] base::Result<Formula> bind(const KindOf& kind_of, quantity::Kind wanted,
                                           quantity::UnitSystem system,
                                           std::span<const std::string> known = {}) const;

  [[nodiscard]] const std::vector<std::string>& names() const { return names_; }
  [[nodiscard]] const std::string& typed() const { return typed_; }

 private:
  std::string typed_;
  std::vector<std::string> names_;
  std::vector<TypedStep> steps_;  // in the order they run
};

inline constexpr std::size_t kLongestFormula = 500;  // bytes
inline constexpr int kDeepestNesting = 40;           // parentheses

}  // namespace sparewright::formula
