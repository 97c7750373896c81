// What is refused, with the words a user meets. span is the piece of the text that the message is about.
#include <ostream>
#include <set>
#include <string>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::quantity {
namespace {

using base::Code;

constexpr std::string_view kUnits = "\n    accepted: in, mm, thou, uin, ft, um, cm, m";
constexpr std::string_view kNumberForm = "\n    accepted: a number such as 1.375, 1-3/8 or 34.9 mm";
constexpr std::string_view kSizeAlone = "\n    accepted: the size alone, such as 3/8 in or 9.5 mm";
constexpr std::string_view kSizeItself = "\n    accepted: the size itself, such as 0.250 in or 6.35 mm";
constexpr std::string_view kAlone = "\n    accepted: the number and its unit alone";
constexpr std::string_view kWholes =
    "\n    accepted: whole numbers with a slash between, such as 3/8 or 1-3/8";
constexpr std::string_view kPlainSlash =
    "\n    accepted: a fraction with a plain slash, such as 3/8 or 1-3/8";
constexpr std::string_view kWrittenOut = "\n    accepted: the number written out, such as 0.0005";
constexpr std::string_view kChain =
    "\n    accepted: a whole number of the larger unit, then less than one of it in the smaller";

struct Refused {
  std::string text;
  std::string span;
  Code code;
  std::string said;
  Kind kind = Kind::kLength;
  std::optional<UnitSystem> job = UnitSystem::kInch;
};

// NOLINTNEXTLINE(readability-identifier-naming): the name GoogleTest looks for
void PrintTo(const Refused& row, std::ostream* out) {
  *out << name_of(row.kind) << " '" << row.text << "'";
}

class RefusedNumber : public testing::TestWithParam<Refused> {};

TEST_P(RefusedNumber, IsToldInTheseWords) {
  const Refused& row = GetParam();
  const auto read = read_number(row.text, row.kind, row.job);
  ASSERT_FALSE(read) << "was read as " << read->base;
  const base::Failure& f = read.error();
  EXPECT_EQ(f.code, row.code) << base::code_name(f.code);
  EXPECT_EQ(base::report(f), row.said);
  ASSERT_TRUE(f.span);
  ASSERT_LE(f.span->end(), row.text.size());
  EXPECT_EQ(row.text.substr(f.span->offset, f.span->length), row.span);
}

std::string say(std::string_view sentence, std::string_view accepted) {
  return std::string(sentence).append(accepted);
}
std::string two(std::string_view text, std::string_view readings) {
  return "'" + std::string(text) + "' can be read in two ways\n    accepted: " + std::string(readings);
}

const Refused kNothing[] = {
    {"", "", Code::kEmptyValue, say("nothing is written where a length is wanted", kNumberForm)},
    {"  ", "  ", Code::kEmptyValue, say("nothing is written where a length is wanted", kNumberForm)},
    {"", "", Code::kEmptyValue,
     "nothing is written where an angle is wanted\n    accepted: a number and one of: deg, "
     "arcmin, arcsec, rad, turn",
     Kind::kAngle},
    {"", "", Code::kEmptyValue,
     "nothing is written where a plain number is wanted\n    accepted: a number such as "
     "1.375",
     Kind::kNumber},
    {".", ".", Code::kNotANumber, say("'.' is not a length", kNumberForm)},
    {"+", "+", Code::kNotANumber, say("'+' is not a length", kNumberForm)},
    {"-", "-", Code::kNotANumber, say("'-' is not a length", kNumberForm)},
    {"\"", "\"", Code::kNotANumber, say("'\"' is not a length", kNumberForm)},
    {"in", "in", Code::kNotANumber, say("'in' is not a length", kNumberForm)},
    {"--1", "--1", Code::kNotANumber, say("'--1' is not a length", kNumberForm)},
    {"inf", "inf", Code::kNotANumber, say("'inf' is not a length", kNumberForm)},
    {"nan", "nan", Code::kNotANumber, say("'nan' is not a length", kNumberForm)},
    {" ~1.375 ", "~1.375", Code::kNotANumber, say("'~1.375' is not a length", kNumberForm)},
    {"about 1.375", "about 1.375", Code::kNotANumber, say("'about 1.375' is not a length", kNumberForm)},
    {"0.5.5", "0.5.5", Code::kNotANumber, say("'0.5.5' is not a length", kNumberForm)},
    {"1e5", "1e5", Code::kNotANumber, say("'1e5' is not a length", kWrittenOut)},
    {"1.5E-3", "1.5E-3", Code::kNotANumber, say("'1.5E-3' is not a length", kWrittenOut)},
    {"F", "F", Code::kNotANumber,
     say("'F' is not a length", say(kNumberForm, "; where a drill is taken, its capital as in letter F"))},
    {"letter f", "letter f", Code::kNotANumber,
     say("'letter f' is not a length",
         say(kNumberForm, "; where a drill is taken, its capital as in letter F"))},
    {"0.1234567890123456", "0.1234567890123456", Code::kNotANumber,
     "'0.1234567890123456' is not a length\n    accepted: a number of at most 15 digits"},
    {"12345678901234567890", "12345678901234567890", Code::kNumberTooLarge,
     "'12345678901234567890' is larger than anything made here"},
    {"1000001 mm", "1000001 mm", Code::kNumberTooLarge,
     "'1000001 mm' is larger than anything made here\n    accepted: at most 1 km"},
    {"-500 degC", "-500 degC", Code::kNotANumber,
     "'-500 degC' is not a temperature\n    accepted: not below absolute zero, -273.15 degC",
     Kind::kTemperature},
};
INSTANTIATE_TEST_SUITE_P(NoNumber, RefusedNumber, testing::ValuesIn(kNothing));

const Refused kCommas[] = {
    {"1,375", "1,375", Code::kDecimalComma,
     "'1,375' has a comma in the number; write a decimal point\n    accepted: "
     "1.375, or 1375 where the comma parts the thousands"},
    {" 1,375 in", "1,375", Code::kDecimalComma,
     "'1,375' has a comma in the number; write a decimal point\n    "
     "accepted: 1.375, or 1375 where the comma parts the thousands"},
    {"0,375", "0,375", Code::kDecimalComma,
     "'0,375' has a comma in the number; write a decimal point\n    accepted: "
     "0.375"},
    {",375", ",375", Code::kDecimalComma,
     "',375' has a comma in the number; write a decimal point\n    accepted: .375"},
    {"-12,7 mm", "12,7", Code::kDecimalComma,
     "'12,7' has a comma in the number; write a decimal point\n    accepted: "
     "12.7"},
    {"1,375.5", "1,375.5", Code::kDecimalComma,
     "'1,375.5' has a comma in the number; write a decimal point\n    "
     "accepted: one decimal point and no comma"},
    {"1.000,5", "1.000,5", Code::kDecimalComma,
     "'1.000,5' has a comma in the number; write a decimal point\n    "
     "accepted: one decimal point and no comma"},
    {"28,5", "28,5", Code::kDecimalComma,
     "'28,5' has a comma in the number; write a decimal point\n    accepted: 28.5", Kind::kAngle},
};
INSTANTIATE_TEST_SUITE_P(Comma, RefusedNumber, testing::ValuesIn(kCommas));

const Refused kUnitFailures[] = {
    {"1.375", "1.375", Code::kUnitMissing,
     "'1.375' has no unit, and a length needs one here\n    accepted: the number "
     "and one of: in, mm, thou, uin, ft, um, cm, m",
     Kind::kLength, std::nullopt},
    {"5", "5", Code::kUnitMissing,
     "'5' has no unit, and a force needs one here\n    accepted: the number and one of: "
     "lbf, N, kN",
     Kind::kForce},
    {" 30 ", "30", Code::kUnitMissing,
     "'30' has no unit, and an angle needs one here\n    accepted: the number and "
     "one of: deg, arcmin, arcsec, rad, turn",
     Kind::kAngle, std::nullopt},
    {"3/8", "3/8", Code::kUnitMissing,
     "'3/8' has no unit, and a pressure or stress needs one here\n    accepted: the "
     "number and one of: psi, ksi, MPa, GPa, bar",
     Kind::kPressure, std::nullopt},
    {"5 furlong", "furlong", Code::kUnitUnknown, say("'furlong' is not a unit of a length", kUnits)},
    {"5 furlong", "furlong", Code::kUnitUnknown, say("'furlong' is not a unit of a length", kUnits),
     Kind::kLength, std::nullopt},
    {"5 inche", "inche", Code::kUnitUnknown,
     say("'inche' is not a unit of a length", say(kUnits, " (did you mean 'inch'?)"))},
    {"1.375?", "?", Code::kUnitUnknown, say("'?' is not a unit of a length", kUnits)},
    {"3:8", ":8", Code::kUnitUnknown, say("':8' is not a unit of a length", kUnits)},
    {"5 Mm", "Mm", Code::kUnitUnknown, say("'Mm' is not a unit of a length", kUnits)},
    {"5 mpa", "mpa", Code::kUnitUnknown,
     "'mpa' is not a unit of a pressure or stress\n    accepted: psi, ksi, MPa, "
     "GPa, bar",
     Kind::kPressure},
    {"12 deg", "deg", Code::kUnitOfAnotherKind, say("'deg' does not measure a length", kUnits)},
    {"12 deg or so", "deg", Code::kUnitOfAnotherKind, say("'deg' does not measure a length", kUnits)},
    {"5 in2", "in2", Code::kUnitOfAnotherKind, say("'in2' does not measure a length", kUnits)},
    {"5 in²", "in²", Code::kUnitOfAnotherKind, say("'in²' does not measure a length", kUnits)},
    {"5 ft-lb", "ft-lb", Code::kUnitOfAnotherKind, say("'ft-lb' does not measure a length", kUnits)},
    {"0.003 in/rev", "in/rev", Code::kUnitOfAnotherKind, say("'in/rev' does not measure a length", kUnits)},
    {"20°C", "°C", Code::kUnitOfAnotherKind,
     "'°C' does not measure an angle\n    accepted: deg, arcmin, arcsec, rad, "
     "turn",
     Kind::kAngle},
    {"1.375 in", "in", Code::kUnitOfAnotherKind, "'in' does not measure a plain number\n    accepted: %",
     Kind::kNumber},
};
INSTANTIATE_TEST_SUITE_P(OfUnits, RefusedNumber, testing::ValuesIn(kUnitFailures));

const Refused kDesignations[] = {
    {"3/8-16", "3/8-16", Code::kThreadWhereLength,
     say("'3/8-16' reads like a thread, and a length is wanted", kSizeAlone)},
    {"1-8", "1-8", Code::kThreadWhereLength,
     say("'1-8' reads like a thread, and a length is wanted", kSizeAlone)},
    {"1-8 in", "1-8 in", Code::kThreadWhereLength,
     say("'1-8 in' reads like a thread, and a length is wanted", kSizeAlone)},
    {"1-3/8-16", "1-3/8-16", Code::kThreadWhereLength,
     say("'1-3/8-16' reads like a thread, and a length is wanted", kSizeAlone)},
    {"1 3/8-16", "1 3/8-16", Code::kThreadWhereLength,
     say("'1 3/8-16' reads like a thread, and a length is wanted", kSizeAlone)},
    {"3/8\u201316", "3/8\u201316", Code::kThreadWhereLength,
     say("'3/8\u201316' reads like a thread, and a length is wanted", kSizeAlone)},
    {"1/2-13 UNC-2B", "1/2-13 UNC-2B", Code::kThreadWhereLength,
     say("'1/2-13 UNC-2B' reads like a thread, and a length is wanted", kSizeAlone)},
    {"#10-24", "#10-24", Code::kThreadWhereLength,
     say("'#10-24' reads like a thread, and a diameter is wanted", kSizeAlone), Kind::kDiameter},
    {"M8", "M8", Code::kThreadWhereLength,
     say("'M8' reads like a thread, and a length is wanted", kSizeAlone)},
    {" M8 x 1.25 ", "M8 x 1.25", Code::kThreadWhereLength,
     say("'M8 x 1.25' reads like a thread, and a length is wanted", kSizeAlone)},
    {"H7", "H7", Code::kDesignationWhereLength,
     say("'H7' is a drill or fit designation, and a length is wanted", kSizeItself)},
    {"RC4", "RC4", Code::kDesignationWhereLength,
     say("'RC4' is a drill or fit designation, and a length is wanted", kSizeItself)},
    {"#7", "#7", Code::kDesignationWhereLength,
     say("'#7' is a drill or fit designation, and a length is wanted", kSizeItself)},
    {"letter F", "letter F", Code::kDesignationWhereLength,
     say("'letter F' is a drill or fit designation, and a diameter is wanted", kSizeItself), Kind::kDiameter},
};
INSTANTIATE_TEST_SUITE_P(Named, RefusedNumber, testing::ValuesIn(kDesignations));

const Refused kFractions[] = {
    {"3/0", "3/0", Code::kBadFraction,
     "'3/0' is not a fraction\n    accepted: a fraction such as 3/8 or 1-3/8"},
    {"1-9/8", "1-9/8", Code::kBadFraction,
     "'1-9/8' is not a fraction\n    accepted: less than one after the whole "
     "number, such as 1-3/8"},
    {"1 8/8", "1 8/8", Code::kBadFraction,
     "'1 8/8' is not a fraction\n    accepted: less than one after the whole "
     "number, such as 1-3/8"},
    {"1.5/8", "1.5/8", Code::kBadFraction, say("'1.5/8' is not a fraction", kWholes)},
    {"3/8.5", "3/8.5", Code::kBadFraction, say("'3/8.5' is not a fraction", kWholes)},
    {"3./8", "3./8", Code::kBadFraction, say("'3./8' is not a fraction", kWholes)},
    {"1/2/3", "1/2/3", Code::kBadFraction, say("'1/2/3' is not a fraction", kWholes)},
    {"3\\8", "3\\8", Code::kBadFraction, say("'3\\8' is not a fraction", kWholes)},
    {"1½", "1½", Code::kBadFraction, say("'1½' is not a fraction", kPlainSlash)},
    {"⅜ in", "⅜ in", Code::kBadFraction, say("'⅜ in' is not a fraction", kPlainSlash)},
    {"1⁄2", "1⁄2", Code::kBadFraction, say("'1⁄2' is not a fraction", kPlainSlash)},
    {"2.5 ft 3 in", "2.5 ft 3 in", Code::kNotANumber, say("'2.5 ft 3 in' is not a length", kChain)},
    {"5 ft 12 in", "5 ft 12 in", Code::kNotANumber, say("'5 ft 12 in' is not a length", kChain)},
    {"30° 75'", "30° 75'", Code::kNotANumber, say("'30° 75'' is not an angle", kChain), Kind::kAngle},
};
INSTANTIATE_TEST_SUITE_P(OfFractions, RefusedNumber, testing::ValuesIn(kFractions));

const Refused kTwoWays[] = {
    {"1 - 3/8", "1 - 3/8", Code::kTwoReadings,
     two("1 - 3/8", "1-3/8 for the mixed number, or the difference written out")},
    {"1- 3/8", "1- 3/8", Code::kTwoReadings,
     two("1- 3/8", "1-3/8 for the mixed number, or the difference written out")},
    {"1 -3/8", "1 -3/8", Code::kTwoReadings,
     two("1 -3/8", "1-3/8 for the mixed number, or the difference written out")},
    {"1\u20133/8", "1\u20133/8", Code::kTwoReadings,
     two("1\u20133/8", "1-3/8 for the mixed number, or the difference written out")},
    {"1\u20113/8", "1\u20113/8", Code::kTwoReadings,
     two("1\u20113/8", "1-3/8 for the mixed number, or the difference written out")},
    {"0.8758-0.8750", "0.8758-0.8750", Code::kTwoReadings,
     two("0.8758-0.8750", "0.8758 to 0.8750 where limits are taken, or the difference written out")},
    {"1.5-3/8", "1.5-3/8", Code::kTwoReadings,
     two("1.5-3/8", "1.5 to 3/8 where limits are taken, or the difference written out")},
    {"1-1/2-1/4", "1-1/2-1/4", Code::kTwoReadings,
     two("1-1/2-1/4", "1-1/2 to 1/4 where limits are taken, or the difference written out")},
    {".250-28", ".250-28", Code::kTwoReadings,
     two(".250-28", ".250 to 28 where limits are taken, or the thread where a thread is taken")},
    {"3'-2\"", "3'-2\"", Code::kTwoReadings,
     two("3'-2\"", "3' 2\" for both together, or the difference written out")},
    {"2 ft - 3 in", "2 ft - 3 in", Code::kTwoReadings,
     two("2 ft - 3 in", "2 ft 3 in for both together, or the difference written out")},
    {"0.5 mil", "0.5 mil", Code::kTwoReadings, two("0.5 mil", "0.5 thou or 0.5 mm")},
    {"5 mils", "5 mils", Code::kTwoReadings, two("5 mils", "5 thou or 5 mm")},
    {"2 tenths", "2 tenths", Code::kTwoReadings,
     two("2 tenths", "the size written out: a tenth of a thou is 0.0001 in, a tenth of a millimetre 0.1 mm")},
};
INSTANTIATE_TEST_SUITE_P(TwoWays, RefusedNumber, testing::ValuesIn(kTwoWays));

const Refused kLeftOver[] = {
    {"1 000", "000", Code::kTrailingText,
     "'000' is left over after a length\n    accepted: one number, without blanks "
     "in it unless a fraction follows"},
    {"1 1/2 1/4", "1/4", Code::kTrailingText,
     "'1/4' is left over after a length\n    accepted: one number, without "
     "blanks in it unless a fraction follows"},
    {"1.375 in in", "in", Code::kTrailingText, say("'in' is left over after a length", kAlone)},
    {"1.375 in (about)", "(about)", Code::kTrailingText,
     say("'(about)' is left over after a length", kAlone)},
    {"0.625 in ±0.005", "±0.005", Code::kTrailingText, say("'±0.005' is left over after a length", kAlone)},
    {"5'3", "3", Code::kTrailingText,
     "'3' is left over after a length\n    accepted: one number, or feet and inches "
     "with a unit after each"},
    {"5 mm 3 in", "3 in", Code::kTrailingText,
     "'3 in' is left over after a length\n    accepted: one number, or feet "
     "and inches with a unit after each"},
};
INSTANTIATE_TEST_SUITE_P(LeftOver, RefusedNumber, testing::ValuesIn(kLeftOver));

// The header of typed.hpp lists these codes; each has its row above.
TEST(RefusedNumbers, CoverEveryCode) {
  std::set<Code> seen;
  const auto note = [&](const auto& rows) {
    for (const Refused& row : rows)
      seen.insert(row.code);
  };
  note(kNothing);
  note(kCommas);
  note(kUnitFailures);
  note(kDesignations);
  note(kFractions);
  note(kTwoWays);
  note(kLeftOver);
  const std::set<Code> all{Code::kEmptyValue,        Code::kNotANumber,   Code::kDecimalComma,
                           Code::kUnitMissing,       Code::kUnitUnknown,  Code::kUnitOfAnotherKind,
                           Code::kThreadWhereLength, Code::kBadFraction,  Code::kDesignationWhereLength,
                           Code::kNumberTooLarge,    Code::kTrailingText, Code::kTwoReadings};
  EXPECT_EQ(seen, all);
}

TEST(ReadSizeFailure, IsThatOfTheNumber) {
  const auto read = read_size("#10-24", Kind::kDiameter, UnitSystem::kInch);
  ASSERT_FALSE(read);
  EXPECT_EQ(read.error().code, Code::kThreadWhereLength);
  EXPECT_FALSE(read_size("#", Kind::kDiameter, UnitSystem::kInch));
  EXPECT_FALSE(read_size("letter", Kind::kDiameter, UnitSystem::kInch));
}

}  // namespace
}  // namespace sparewright::quantity
