// Random formulas as trees that can be printed, for the product and for Python, and evaluated without the
// product.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "core/formula/dual.hpp"
#include "core/quantity/kind.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::tests {

// What a random tree is grown from; when it runs out every choice is the first one, which is always a leaf.
class Choices {
 public:
  explicit Choices(std::vector<std::uint32_t> values) : values_(std::move(values)) {}
  std::size_t below(std::size_t n) { return at_ < values_.size() ? values_[at_++] % n : 0; }

 private:
  std::vector<std::uint32_t> values_;
  std::size_t at_ = 0;
};

// The names the formulas use. None is spelled like a unit.
struct FormulaName {
  std::string_view name;
  quantity::Kind kind;
  double value;
};
inline constexpr std::array kFormulaNames{
    FormulaName{"width", quantity::Kind::kLength, 37.25},
    FormulaName{"w.left", quantity::Kind::kLength, 11.5},
    FormulaName{"h_2", quantity::Kind::kLength, 62.125},
    FormulaName{"times", quantity::Kind::kNumber, 1.75},
    FormulaName{"ratio", quantity::Kind::kNumber, 0.625},
    FormulaName{"lean", quantity::Kind::kAngle, 0.8125},
};

class FormulaTree {
 public:
  enum class Gives { kNumber, kLength, kArea, kAngle };

  FormulaTree(Choices& choices, Gives gives, int depth) { grow(choices, gives, depth); }

  // names: one value each, in the order of kFormulaNames.
  template <typename Scalar>
  [[nodiscard]] Scalar at(const std::array<Scalar, kFormulaNames.size()>& names) const {
    using std::abs, std::acos, std::asin, std::atan, std::cos, std::max, std::min, std::pow, std::sin,
        std::sqrt, std::tan;
    switch (operation_) {
      case '0':
        return Scalar(constant_);
      case 'n':
        return names.at(name_);
      case '+':
        return first().at(names) + second().at(names);
      case '-':
        return first().at(names) - second().at(names);
      case '*':
        return first().at(names) * second().at(names);
      case '/':
        return first().at(names) / second().at(names);
      case '~':
        return -first().at(names);
      case '^':
        if (exponent_ == 2) return first().at(names) * first().at(names);  // to the last bit
        return pow(first().at(names), static_cast<double>(exponent_));
      case 'q':
        return sqrt(first().at(names));
      case 's':
        return sin(first().at(names));
      case 'c':
        return cos(first().at(names));
      case 't':
        return tan(first().at(names));
      case 'S':
        return asin(first().at(names));
      case 'C':
        return acos(first().at(names));
      case 'T':
        return atan(first().at(names));
      case 'a':
        return abs(first().at(names));
      case 'm':
        return min(first().at(names), second().at(names));
      default:
        return max(first().at(names), second().at(names));
    }
  }

  // Whether the value and the slopes of every part are finite and smaller than the number given, and no part
  // stands at the edge of what its function takes.
  [[nodiscard]] bool sound(double largest) const {
    std::array<formula::Dual<kFormulaNames.size()>, kFormulaNames.size()> names;
    for (std::size_t i = 0; i < names.size(); ++i) {
      names.at(i).value = kFormulaNames.at(i).value;
      names.at(i).slopes.at(i) = 1.0;
    }
    const auto y = at(names);
    const auto small = [&](double number) { return std::abs(number) < largest; };
    if (!small(y.value) || !std::all_of(y.slopes.begin(), y.slopes.end(), small)) return false;
    const double of = parts_.empty() ? 0.0 : first().at(names).value;
    if (operation_ == 'q' && of <= 0.0) return false;
    if ((operation_ == 'S' || operation_ == 'C') && std::abs(of) >= 1.0) return false;
    return std::all_of(parts_.begin(), parts_.end(), [&](const auto& part) { return part->sound(largest); });
  }

  // As a person might type it: brackets where they are needed and sometimes where they are not, blanks
  // likewise.
  [[nodiscard]] std::string typed(Choices& choices) const { return typed(choices, kSum); }

  // As Python's eval takes it, constants in base units.
  [[nodiscard]] std::string python() const {
    switch (operation_) {
      case '0':
        return fmt::format("({:.17g})", constant_);
      case 'n':
        return fmt::format("v[{}]", name_);
      case '~':
        return fmt::format("(-{})", first().python());
      case '^':
        return fmt::format("({}**{})", first().python(), exponent_);
      case '+':
      case '-':
      case '*':
      case '/':
        return fmt::format("({} {} {})", first().python(), operation_, second().python());
      case 'm':
      case 'M':
        return fmt::format("{}({}, {})", called(), first().python(), second().python());
      default:
        return fmt::format("{}({})", called(), first().python());
    }
  }

  // Whether a decimal without a unit stands beside a length: it takes the job's unit, a fraction does not.
  [[nodiscard]] bool has_bare_decimal() const {
    if (is_bare_decimal_) return true;
    return std::any_of(parts_.begin(), parts_.end(),
                       [](const auto& part) { return part->has_bare_decimal(); });
  }

 private:
  enum Level { kSum, kTerm, kFactor, kPrimary };

  [[nodiscard]] const FormulaTree& first() const { return *parts_[0]; }
  [[nodiscard]] const FormulaTree& second() const { return *parts_[1]; }

  [[nodiscard]] std::string_view called() const {
    constexpr std::string_view kLetters = "qsctSCTamM";
    constexpr std::array kNames{"sqrt", "sin", "cos", "tan", "asin", "acos", "atan", "abs", "min", "max"};
    return kNames.at(kLetters.find(operation_));
  }

  void join(Choices& choices, char operation, Gives a, int depth) {
    operation_ = operation;
    parts_.push_back(std::make_unique<FormulaTree>(choices, a, depth - 1));
  }
  void join(Choices& choices, char operation, Gives a, Gives b, int depth) {
    join(choices, operation, a, depth);
    parts_.push_back(std::make_unique<FormulaTree>(choices, b, depth - 1));
  }

  void grow(Choices& choices, Gives gives, int depth) {
    const std::size_t what = depth > 0 ? choices.below(12) : 0;
    if (gives == Gives::kLength) return grow_length(choices, what, depth);
    if (gives == Gives::kArea) return grow_area(choices, what, depth);
    if (gives == Gives::kAngle) return grow_angle(choices, what, depth);
    grow_number(choices, what, depth);
  }

  void grow_length(Choices& choices, std::size_t what, int depth) {
    switch (what) {
      case 0:
        return leaf(choices, quantity::Kind::kLength);
      case 3:
        return join(choices, '*', Gives::kNumber, Gives::kLength, depth);
      case 4:
      case 5:
        return join(choices, what == 4 ? '*' : '/', Gives::kLength, Gives::kNumber, depth);
      case 6:
        return join(choices, choices.below(2) == 0 ? '~' : 'a', Gives::kLength, depth);
      case 7:
        return join(choices, choices.below(2) == 0 ? 'm' : 'M', Gives::kLength, Gives::kLength, depth);
      case 8:
      case 9:
        return beside_bare_number(choices, depth);
      case 10:
        return join(choices, 'q', Gives::kArea, depth);
      case 11:
        return join(choices, '/', Gives::kArea, Gives::kLength, depth);
      default:
        return join(choices, what == 1 ? '+' : '-', Gives::kLength, Gives::kLength, depth);
    }
  }

  // A length and a bare number, which is inch in these formulas (the job's unit, and that of a fraction).
  void beside_bare_number(Choices& choices, int depth) {
    join(choices, choices.below(2) == 0 ? '+' : '-', Gives::kLength, depth);
    auto bare = std::make_unique<FormulaTree>(choices, Gives::kNumber, 0);
    bare->operation_ = '0';
    if (choices.below(2) == 0) {
      const std::size_t top = 1 + choices.below(63);
      bare->text_ = fmt::format("{}/64", top);
      bare->constant_ = quantity::unit::inch.to_base(static_cast<double>(top) / 64.0);
    } else {
      const std::size_t thou = 1 + choices.below(2000);
      bare->text_ = decimal(thou);
      bare->is_bare_decimal_ = true;
      bare->constant_ = quantity::unit::inch.to_base(static_cast<double>(thou) / 1000.0);
    }
    parts_.push_back(std::move(bare));
  }

  void grow_area(Choices& choices, std::size_t what, int depth) {
    if (depth <= 0 || what < 3) return join(choices, '*', Gives::kLength, Gives::kLength, std::max(depth, 1));
    if (what < 6) return power(choices, Gives::kLength, 2, depth);
    if (what < 9) return join(choices, what == 8 ? '-' : '+', Gives::kArea, Gives::kArea, depth);
    join(choices, '*', Gives::kArea, Gives::kNumber, depth);
  }

  void grow_angle(Choices& choices, std::size_t what, int depth) {
    switch (what) {
      case 1:
      case 2:
        return join(choices, what == 1 ? '+' : '-', Gives::kAngle, Gives::kAngle, depth);
      case 3:
        return join(choices, '*', Gives::kNumber, Gives::kAngle, depth);
      case 4:
        return join(choices, '~', Gives::kAngle, depth);
      case 5:
      case 6:
        return join(choices, 'S', Gives::kNumber, depth);
      case 7:
        return join(choices, 'C', Gives::kNumber, depth);
      case 8:
      case 9:
        return join(choices, 'T', Gives::kNumber, depth);
      default:
        return leaf(choices, quantity::Kind::kAngle);
    }
  }

  void grow_number(Choices& choices, std::size_t what, int depth) {
    switch (what) {
      case 1:
      case 2:
        return join(choices, what == 1 ? '+' : '-', Gives::kNumber, Gives::kNumber, depth);
      case 3:
      case 4:
        return join(choices, what == 3 ? '*' : '/', Gives::kNumber, Gives::kNumber, depth);
      case 5:
        return join(choices, '/', Gives::kLength, Gives::kLength, depth);
      case 6:
      case 7:
      case 8:
        return join(choices, what == 6 ? 's' : what == 7 ? 'c' : 't', Gives::kAngle, depth);
      case 9:
        return power(choices, Gives::kNumber, static_cast<int>(choices.below(7)) - 3, depth);
      case 10:
        return join(choices, choices.below(2) == 0 ? '~' : 'q', Gives::kNumber, depth);
      default:
        return leaf(choices, quantity::Kind::kNumber);
    }
  }

  void power(Choices& choices, Gives of, int exponent, int depth) {
    join(choices, '^', of, depth);
    exponent_ = exponent;
  }

  void leaf(Choices& choices, quantity::Kind kind) {
    if (choices.below(3) != 0) return constant(choices, kind);
    operation_ = 'n';
    name_ = choices.below(kFormulaNames.size());
    while (kFormulaNames.at(name_).kind != kind)
      name_ = (name_ + 1) % kFormulaNames.size();
  }

  void constant(Choices& choices, quantity::Kind kind) {
    operation_ = '0';
    const std::size_t thousandths = 1 + choices.below(4000);
    const double count = static_cast<double>(thousandths) / 1000.0;
    text_ = decimal(thousandths);
    constant_ = count;
    if (kind == quantity::Kind::kAngle) {
      text_ += " deg";
      constant_ = quantity::unit::degree.to_base(count);
    } else if (kind == quantity::Kind::kLength) {
      const bool inch = choices.below(2) == 0;
      text_ += inch ? " in" : "mm";
      constant_ = inch ? quantity::unit::inch.to_base(count) : count;
    }
  }

  static std::string decimal(std::size_t thousandths) {
    if (thousandths % 1000 == 0) return fmt::format("{}", thousandths / 1000);
    return fmt::format("{}.{:03}", thousandths / 1000, thousandths % 1000);
  }

  [[nodiscard]] Level level() const {
    if (operation_ == '+' || operation_ == '-') return kSum;
    if (operation_ == '*' || operation_ == '/') return kTerm;
    return operation_ == '~' || operation_ == '^' ? kFactor : kPrimary;
  }

  [[nodiscard]] std::string typed(Choices& choices, Level least) const {
    std::string text = unbracketed(choices);
    const bool needed = level() < least;
    return needed || choices.below(12) == 11 ? "(" + text + ")" : text;
  }

  [[nodiscard]] std::string unbracketed(Choices& choices) const {
    switch (operation_) {
      case '0':
        return text_;
      case 'n':
        return std::string(kFormulaNames.at(name_).name);
      case '+':
      case '-':
        return fmt::format("{} {} {}", first().typed(choices, kSum), operation_,
                           second().typed(choices, kTerm));
      case '*':
      case '/':
        return product(choices);
      case '~':
        // The minus counts less than the power and more than the product: -a^2, but -(a*b).
        return "-" + (first().operation_ == '~' ? "(" + first().typed(choices, kSum) + ")"
                                                : first().typed(choices, kFactor));
      case '^': {
        const bool plain = first().operation_ != '0' && first().level() == kPrimary;
        const std::string of = first().typed(choices, kSum);
        return fmt::format("{}{}{}", plain ? of : "(" + of + ")", choices.below(4) == 1 ? " ^ " : "^",
                           exponent_);
      }
      case 'm':
      case 'M':
        return fmt::format("{}({}, {})", called(), first().typed(choices, kSum),
                           second().typed(choices, kSum));
      default:
        return fmt::format("{}({})", called(), first().typed(choices, kSum));
    }
  }

  // Blanks around the mark where a digit follows it: 1/64 without blanks would be one number.
  [[nodiscard]] std::string product(Choices& choices) const {
    const std::string left = first().typed(choices, kTerm);
    const std::string right = second().typed(choices, kFactor);
    const bool blanks = choices.below(2) == 0 || (right[0] >= '0' && right[0] <= '9');
    return fmt::format("{}{}{}", left, blanks ? fmt::format(" {} ", operation_) : std::string(1, operation_),
                       right);
  }

  char operation_ = '0';
  double constant_ = 0.0;
  std::string text_;  // of a constant
  bool is_bare_decimal_ = false;
  std::size_t name_ = 0;
  int exponent_ = 1;
  std::vector<std::unique_ptr<FormulaTree>> parts_;
};

}  // namespace sparewright::tests
