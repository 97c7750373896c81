// Every failure of a formula, with the words a user meets. span is the piece of the text that the message is
// about.
#include <ostream>
#include <string>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "formula_names.hpp"

namespace sparewright::formula {
namespace {

using base::Code;
using quantity::Kind;

const std::string kForms =
    "\n    accepted: numbers, names, + - * /, ^ with a whole number, brackets, and sqrt, sin, cos, tan, "
    "asin, acos, "
    "atan, abs, min, max";
const std::string kCalls =
    "\n    accepted: sqrt, sin, cos, tan, asin, acos, atan, abs, min, max; min and max take two numbers, the "
    "others one";
const std::string kUnits =
    "\n    accepted: in, mm, thou, uin, ft, um, cm, m, deg; between a number and a name write * or +";

struct Refused {
  std::string text;
  std::size_t offset;
  std::string span;
  Code code;
  std::string said;
  Kind wanted = Kind::kLength;
};

void PrintTo(const Refused& row, std::ostream* out) {
  *out << "'" << row.text << "'";
}

std::string unreadable(const std::string& from) {
  return "the formula cannot be read at '" + from + "'" + kForms;
}

std::string two(const std::string& text, const std::string& readings) {
  return "'" + text + "' can be read in two ways\n    accepted: " + readings;
}

void expect_failure(const base::Failure& f, const Refused& row) {
  EXPECT_EQ(f.code, row.code) << base::code_name(f.code);
  EXPECT_EQ(base::report(f), row.said);
  ASSERT_TRUE(f.span);
  EXPECT_EQ(f.span->offset, row.offset);
  ASSERT_LE(f.span->end(), row.text.size());
  EXPECT_EQ(row.text.substr(f.span->offset, f.span->length), row.span);
}

class UnreadFormula : public testing::TestWithParam<Refused> {};

TEST_P(UnreadFormula, IsToldInTheseWords) {
  const auto read = Expression::read(GetParam().text);
  ASSERT_FALSE(read);
  expect_failure(read.error(), GetParam());
}

const Refused kSyntax[] = {
    {"", 0, "", Code::kEmptyValue, "nothing is written where a formula is wanted"},
    {" \t ", 0, " \t ", Code::kEmptyValue, "nothing is written where a formula is wanted"},
    {"high +", 6, "", Code::kFormulaSyntax, unreadable("its end")},
    {"high + ", 7, "", Code::kFormulaSyntax, unreadable("its end")},
    {"high + )", 7, ")", Code::kFormulaSyntax, unreadable(")")},
    {"(high", 5, "", Code::kFormulaSyntax, unreadable("its end")},
    {"high)", 4, ")", Code::kFormulaSyntax, unreadable(")")},
    {"()", 1, ")", Code::kFormulaSyntax, unreadable(")")},
    {"sqrt()", 5, ")", Code::kFormulaSyntax, unreadable(")")},
    {"min(high,)", 9, ")", Code::kFormulaSyntax, unreadable(")")},
    {"high pin", 5, "pin", Code::kFormulaSyntax, unreadable("pin")},
    {"2(high)", 1, "(high)", Code::kFormulaSyntax, unreadable("(high)")},
    {"high 2", 5, "2", Code::kFormulaSyntax, unreadable("2")},
    {"--high", 1, "-high", Code::kFormulaSyntax, unreadable("-high")},
    {"+high", 0, "+high", Code::kFormulaSyntax, unreadable("+high")},
    {"high * / pin", 7, "/ pin", Code::kFormulaSyntax, unreadable("/ pin")},
    {"high = pin", 5, "= pin", Code::kFormulaSyntax, unreadable("= pin")},
    {"1.5.2", 3, ".2", Code::kFormulaSyntax, unreadable(".2")},
    {"high + .", 7, ".", Code::kFormulaSyntax, unreadable(".")},
    {"#7", 0, "#7", Code::kFormulaSyntax, unreadable("#7")},
    {"high + 5 \u00E9", 9, "\u00E9", Code::kFormulaSyntax, unreadable("\u00E9")},
    {"high^0.5", 6, ".5", Code::kFormulaSyntax, unreadable(".5")},
    {"high^pin", 5, "pin", Code::kFormulaSyntax, unreadable("pin")},
    {"high^2^2", 6, "^2", Code::kFormulaSyntax, unreadable("^2")},
    {"high^7", 4, "^7", Code::kFormulaSyntax,
     "the formula cannot be read at '^7'\n    accepted: a whole exponent from -6 to 6"},
    {"high ^ -7", 4, " ^ -7", Code::kFormulaSyntax,
     "the formula cannot be read at ' ^ -7'\n    accepted: a whole exponent from -6 to 6"},
    {"2 * turn(high)", 4, "turn(high)", Code::kFormulaSyntax,
     "the formula cannot be read at 'turn(high)'" + kCalls},
    {"sqrt(high, pin)", 0, "sqrt(high, pin)", Code::kFormulaSyntax,
     "the formula cannot be read at 'sqrt(high, pin)'" + kCalls},
    {"pin + min(high)", 6, "min(high)", Code::kFormulaSyntax,
     "the formula cannot be read at 'min(high)'" + kCalls},
    {"max(1,2,3)", 0, "max(1,2,3)", Code::kFormulaSyntax,
     "the formula cannot be read at 'max(1,2,3)'" + kCalls},
    {"min(bad(1), 2, 3)", 4, "bad(1)", Code::kFormulaSyntax,
     "the formula cannot be read at 'bad(1)'" + kCalls},
};
INSTANTIATE_TEST_SUITE_P(Syntax, UnreadFormula, testing::ValuesIn(kSyntax));

const Refused kNumbers[] = {
    {"pin + 1,375", 6, "1,375", Code::kDecimalComma,
     "'1,375' has a comma in the number; write a decimal point\n    accepted: a decimal point, as in 1.375"},
    {"pin + 3/0", 6, "3/0", Code::kBadFraction,
     "'3/0' is not a fraction\n    accepted: a fraction such as 3/8 or 1-3/8"},
    {"pin + 1-9/8 in", 6, "1-9/8", Code::kBadFraction,
     "'1-9/8' is not a fraction\n    accepted: less than one after the whole number, such as 1-3/8"},
    {"pin + 1234567890123456", 6, "1234567890123456", Code::kNumberTooLarge,
     "'1234567890123456' is larger than anything made here"},
    {"pin + 0.1234567890123456", 6, "0.1234567890123456", Code::kNotANumber,
     "'0.1234567890123456' is not a plain number\n    accepted: a number of at most 15 digits"},
    {"2 pin", 2, "pin", Code::kUnitUnknown, "'pin' is not a unit of anything here" + kUnits},
    {"2.5q + pin", 3, "q", Code::kUnitUnknown, "'q' is not a unit of anything here" + kUnits},
    {"1e-3", 1, "e", Code::kUnitUnknown, "'e' is not a unit of anything here" + kUnits},
    {"high + 20 degC", 10, "degC", Code::kUnitUnknown,
     "'degC' is not a unit of a difference of temperature\n    accepted: K: a step of 1 degC is 1 K, of 1 "
     "degF 5/9 K"},
};
INSTANTIATE_TEST_SUITE_P(Numbers, UnreadFormula, testing::ValuesIn(kNumbers));

const Refused kTwoReadings[] = {
    {"pin + 1-3/8", 6, "1-3/8", Code::kTwoReadings,
     two("1-3/8", "1-3/8 in for the mixed number, or 1 - 3/8 with blanks for the difference")},
    {"1-3/8 + pin", 0, "1-3/8", Code::kTwoReadings,
     two("1-3/8", "1-3/8 in for the mixed number, or 1 - 3/8 with blanks for the difference")},
    {"pin-1-3/8", 4, "1-3/8", Code::kTwoReadings,
     two("1-3/8", "1-3/8 in for the mixed number, or 1 - 3/8 with blanks for the difference")},
    {"-1-3/8", 1, "1-3/8", Code::kTwoReadings,
     two("1-3/8", "1-3/8 in for the mixed number, or 1 - 3/8 with blanks for the difference")},
    {"(1-3/8)", 1, "1-3/8", Code::kTwoReadings,
     two("1-3/8", "1-3/8 in for the mixed number, or 1 - 3/8 with blanks for the difference")},
    // an en dash is no hyphen, but looks like one
    {"pin + 1\u20133/8 in", 6, "1\u20133/8 in", Code::kTwoReadings,
     two("1\u20133/8 in", "1-3/8 in for the mixed number, or 1 - 3/8 in with blanks for the difference")},
    {"2*1-3/8", 2, "1-3/8", Code::kTwoReadings,
     two("1-3/8", "(1-3/8 in) for the mixed number, or 1 - 3/8 with blanks for the difference")},
    {"pin*1-3/8 in", 4, "1-3/8 in", Code::kTwoReadings,
     two("1-3/8 in", "(1-3/8 in) for the mixed number, or 1 - 3/8 in with blanks for the difference")},
    {"pin/1-3/8 in", 4, "1-3/8 in", Code::kTwoReadings,
     two("1-3/8 in", "(1-3/8 in) for the mixed number, or 1 - 3/8 in with blanks for the difference")},
    {"pin/3/8", 4, "3/8", Code::kTwoReadings,
     two("3/8", "(3/8) to divide by the fraction, or 3 / 8 with blanks to divide twice")},
    {"pin / 3/8 in", 6, "3/8 in", Code::kTwoReadings,
     two("3/8 in", "(3/8 in) to divide by the fraction, or 3 / 8 with blanks to divide twice")},
    {"3/8^2", 0, "3/8^2", Code::kTwoReadings,
     two("3/8^2", "(3/8)^2, or 3/(8^2) for the power of the lower number alone")},
    {"pin*3 in^2", 4, "3 in^2", Code::kTwoReadings,
     two("3 in^2", "(3 in)^2, or the unit with its power, such as in2 or mm3")},
};
INSTANTIATE_TEST_SUITE_P(TwoReadings, UnreadFormula, testing::ValuesIn(kTwoReadings));

TEST(UnreadFormula, TooLong) {
  const std::string text(kLongestFormula + 1, '1');
  const auto read = Expression::read(text);
  ASSERT_FALSE(read);
  expect_failure(read.error(), {text, 0, text, Code::kTooMany,
                                "the formula: it has 501 characters\n    accepted: at most 500"});
}

TEST(UnreadFormula, NestedTooDeep) {
  const std::string text = std::string(41, '(') + "high" + std::string(41, ')');
  const auto read = Expression::read(text);
  ASSERT_FALSE(read);
  expect_failure(read.error(), {text, 0, text, Code::kTooMany,
                                "the formula: its brackets are 41 deep\n    accepted: at most 40"});
}

class UnboundFormula : public testing::TestWithParam<Refused> {};

TEST_P(UnboundFormula, IsToldInTheseWords) {
  ASSERT_TRUE(Expression::read(GetParam().text));
  const auto bound = read_and_bind(GetParam().text, GetParam().wanted);
  ASSERT_FALSE(bound);
  expect_failure(bound.error(), GetParam());
}

const std::string kKnown =
    "\n    accepted: angle, area, centres, count, force, high, mass, pin, r, slot.left, stud, x, y";

const Refused kNames[] = {
    {"centres + pinn", 10, "pinn", Code::kNameUnknown,
     "'pinn' is not a known dimension" + kKnown + " (did you mean 'pin'?)"},
    {"wobble/2 + wobble", 0, "wobble", Code::kNameUnknown, "'wobble' is not a known dimension" + kKnown},
    {"Pin", 0, "Pin", Code::kNameUnknown,
     "'Pin' is not a known dimension" + kKnown + " (did you mean 'pin'?)"},
};
INSTANTIATE_TEST_SUITE_P(Names, UnboundFormula, testing::ValuesIn(kNames));

const Refused kKinds[] = {
    {"centres + angle", 0, "centres + angle", Code::kKindsDoNotMix,
     "in 'centres + angle': a length and an angle stand side by side\n    accepted: like with like"},
    {"high + (centres - angle)", 8, "centres - angle", Code::kKindsDoNotMix,
     "in 'centres - angle': a length and an angle stand side by side\n    accepted: like with like"},
    {"centres + count", 0, "centres + count", Code::kKindsDoNotMix,
     "in 'centres + count': a length and a plain number stand side by side\n    accepted: like with like"},
    {"centres + 2*0.125", 0, "centres + 2*0.125", Code::kKindsDoNotMix,
     "in 'centres + 2*0.125': a length and a plain number stand side by side\n    accepted: like with like; "
     "write the "
     "unit of a number"},
    {"centres + pi", 0, "centres + pi", Code::kKindsDoNotMix,
     "in 'centres + pi': a length and a plain number stand side by side\n    accepted: like with like"},
    {"max(centres, area)", 4, "centres, area", Code::kKindsDoNotMix,
     "in 'centres, area': a length and an area stand side by side\n    accepted: like with like"},
    {"force + 0.5", 0, "force + 0.5", Code::kKindsDoNotMix,
     "in 'force + 0.5': a force and a plain number stand side by side\n    accepted: like with like; write "
     "the unit of "
     "a number",
     Kind::kForce},
    {"mass + force", 0, "mass + force", Code::kKindsDoNotMix,
     "in 'mass + force': a weight and a force stand side by side\n    accepted: like with like"},
    {"r + pin", 0, "r + pin", Code::kKindsDoNotMix,
     "in 'r + pin': a radius and a diameter stand side by side\n    accepted: halve the diameter or double "
     "the radius"},
    {"pin - r", 0, "pin - r", Code::kKindsDoNotMix,
     "in 'pin - r': a radius and a diameter stand side by side\n    accepted: halve the diameter or double "
     "the radius"},
    {"high + min(r, pin)", 7, "min(r, pin)", Code::kKindsDoNotMix,
     "in 'min(r, pin)': a radius and a diameter stand side by side\n    accepted: halve the diameter or "
     "double the "
     "radius"},
    {"(x + y)/2", 0, "(x + y)", Code::kKindsDoNotMix,
     "in '(x + y)': two coordinates cannot be added\n    accepted: a coordinate plus a length; the middle of "
     "a and b is "
     "a + (b - a)/2"},
    {"sqrt(high)", 0, "sqrt(high)", Code::kKindsDoNotMix,
     "in 'sqrt(high)': the square root is taken of a length\n    accepted: an area"},
    {"high*sin(30)", 5, "sin(30)", Code::kKindsDoNotMix,
     "in 'sin(30)': it is given a plain number\n    accepted: an angle, such as 30 deg"},
    {"high*cos(high)", 5, "cos(high)", Code::kKindsDoNotMix,
     "in 'cos(high)': it is given a length\n    accepted: an angle, such as 30 deg"},
    {"asin(high)", 0, "asin(high)", Code::kKindsDoNotMix,
     "in 'asin(high)': it is given a length\n    accepted: a ratio of two lengths", Kind::kAngle},
    {"(area^6)^2", 0, "(area^6)^2", Code::kKindsDoNotMix,
     "in '(area^6)^2': it raises a unit too far\n    accepted: a unit to the power 12 at most"},
    {"count", 0, "count", Code::kKindsDoNotMix,
     "in 'count': it gives a plain number\n    accepted: a length"},
    {"1 + 0.5", 0, "1 + 0.5", Code::kKindsDoNotMix,
     "in '1 + 0.5': it gives a plain number\n    accepted: a length; write the unit of a number"},
    {"high*high", 0, "high*high", Code::kKindsDoNotMix,
     "in 'high*high': it gives an area\n    accepted: a length"},
    {"high*mass", 0, "high*mass", Code::kKindsDoNotMix,
     "in 'high*mass': it gives something with no name of its own\n    accepted: a length"},
    {"0.5 deg", 0, "0.5 deg", Code::kKindsDoNotMix,
     "in '0.5 deg': it gives an angle\n    accepted: a length"},
    {"0.5", 0, "0.5", Code::kKindsDoNotMix,
     "in '0.5': it gives a plain number\n    accepted: a force; write the unit of a number", Kind::kForce},
    {"2*r", 0, "2*r", Code::kKindsDoNotMix,
     "in '2*r': it gives a diameter\n    accepted: a radius; 2 * radius is a diameter, diameter/2 a radius",
     Kind::kRadius},
    {"pin/2", 0, "pin/2", Code::kKindsDoNotMix,
     "in 'pin/2': it gives a radius\n    accepted: a diameter; 2 * radius is a diameter, diameter/2 a radius",
     Kind::kDiameter},
    {"centres\n+ angle", 0, "centres\n+ angle", Code::kKindsDoNotMix,
     "in 'centres + angle': a length and an angle stand side by side\n    accepted: like with like"},
    // a long piece is shown short, and not cut inside a character
    {"centres + 12345678 \u00B5m + 1 \u00B5m + 1 \u00B5m + 1 \u00B5m + 1 \u00B5m + 1 \u00B5m + 1 \u00B5m + "
     "angle",
     0,
     "centres + 12345678 \u00B5m + 1 \u00B5m + 1 \u00B5m + 1 \u00B5m + 1 \u00B5m + 1 \u00B5m + 1 \u00B5m + "
     "angle",
     Code::kKindsDoNotMix,
     "in 'centres + 12345678 \u00B5m + 1 \u00B5m + 1 \u00B5m + 1 \u00B5m + 1 \u00B5m + 1 ...': a length and "
     "an angle stand side by side\n    accepted: like with like"},
};
INSTANTIATE_TEST_SUITE_P(Kinds, UnboundFormula, testing::ValuesIn(kKinds));

struct Stopped {
  Refused refused;
  std::vector<double> values;
};

void PrintTo(const Stopped& row, std::ostream* out) {
  *out << "'" << row.refused.text << "'";
}

class StoppedFormula : public testing::TestWithParam<Stopped> {};

TEST_P(StoppedFormula, IsToldInTheseWords) {
  const Refused& row = GetParam().refused;
  const auto formula = read_and_bind(row.text, row.wanted);
  ASSERT_TRUE(formula) << base::report(formula.error());
  const auto y = formula->at(GetParam().values);
  ASSERT_FALSE(y) << y->value;
  expect_failure(y.error(), row);
}

Refused by_zero(const std::string& text, std::size_t offset, const std::string& span,
                Kind wanted = Kind::kLength) {
  return {text, offset, span, Code::kDividesByZero, "'" + span + "' divides by zero", wanted};
}
Refused outside(const std::string& text, std::size_t offset, const std::string& span,
                Kind wanted = Kind::kLength) {
  return {text, offset, span, Code::kOutsideDomain, span + " cannot be taken of these values", wanted};
}

const Stopped kStopped[] = {
    {by_zero("high/count", 0, "high/count"), {3.0, 0.0}},
    {by_zero("pin + high / (count - count)", 6, "high / (count - count)"), {6.0, 3.0, 2.0}},
    {by_zero("centres*count^-1", 8, "count^-1"), {60.0, 0.0}},
    {outside("sqrt(area)", 0, "sqrt(area)"), {-1.0}},
    {outside("sqrt(area)", 0, "sqrt(area)"), {0.0}},  // its slope there is infinite
    {outside("asin(count)", 0, "asin(count)", Kind::kAngle), {1.0 + 1e-15}},
    {outside("asin(count)", 0, "asin(count)", Kind::kAngle), {1.0}},
    {outside("acos(count)", 0, "acos(count)", Kind::kAngle), {-1.0}},
    {outside("pin*tan(90 deg)", 4, "tan(90 deg)"), {6.0}},
    {outside("pin*tan(angle)", 4, "tan(angle)"), {6.0, -1.5707963267948966}},
    {outside("high*count*count", 0, "high*count"), {1e200, 1e200}},
    {outside("high/count", 0, "high/count"), {1e200, 1e-200}},
};
INSTANTIATE_TEST_SUITE_P(Values, StoppedFormula, testing::ValuesIn(kStopped));

}  // namespace
}  // namespace sparewright::formula
