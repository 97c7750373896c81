// Typed formulas against worked examples from the shop's books.
#include <cmath>
#include <ostream>
#include <string>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/formula/expression.hpp"

namespace sparewright::formula {
namespace {

using quantity::Kind;

struct Published {
  std::string what;
  std::string text;
  Kind wanted;
  double answer;      // as printed, in inches, degrees or plain numbers
  double half_place;  // half of the last place printed
};

void PrintTo(const Published& row, std::ostream* out) {
  *out << row.what;
}

class OutsideShopGeometry : public testing::TestWithParam<Published> {};

TEST_P(OutsideShopGeometry, GivesThePrintedAnswer) {
  const Published& row = GetParam();
  const auto expression = Expression::read(row.text);
  ASSERT_TRUE(expression) << base::report(expression.error());
  const auto formula = expression->bind([](std::string_view) { return std::nullopt; }, row.wanted,
                                        quantity::UnitSystem::kInch);
  ASSERT_TRUE(formula) << base::report(formula.error());
  const auto y = formula->at({});
  ASSERT_TRUE(y) << base::report(y.error());
  const double printed = quantity::display_unit(row.wanted, quantity::UnitSystem::kInch).from_base(y->value);
  EXPECT_NEAR(printed, row.answer, row.half_place);
}

const Published kPublished[] = {
    // Machinery's Handbook, 31st ed., p. 701: angles and tapers with two disks (the first three also in F. D.
    // Jones, Turning and Boring).
    {"3/4 in taper per foot, disks 1.25 and 1.5 in", "(1.5 in - 1.25 in)/2/sin(atan((3/4 in)/(24 in)))",
     Kind::kLength, 4.002, 0.0005},
    {"20 deg, disks 1 and 3 in", "(3 in - 1 in)/2/sin(20 deg/2)", Kind::kLength, 5.759, 0.0005},
    {"taper of disks 1 and 1.5 in, 5 in apart", "24 in*tan(asin((1.5 in - 1 in)/2/(5 in)))", Kind::kLength,
     1.2015, 0.00005},
    {"taper square to one side, disks 2 and 3 in, 5 in apart", "12 in*tan(2*asin((3 in - 2 in)/2/(5 in)))",
     Kind::kLength, 2.4367, 0.00005},
    // The same page; the answer from memory.
    {"6.9 in per foot square to one side, disks 2 and 5 in", "(5 in - 2 in)/2/sin(atan(6.9 in/(12 in))/2)",
     Kind::kLength, 5.815, 0.0005},
    // Machinery's Handbook, 31st ed., p. 703: a V groove over two pins, X = Z + 2R (1 + csc((a+b)/2)
    // cos((a-b)/2)).
    {"V groove over two pins",
     "1.824 in + 2*0.500 in*(1 + cos((45 deg - 35 deg)/2)/sin((45 deg + 35 deg)/2))", Kind::kLength, 4.374,
     0.0005},
    // JCGM 100:2008, H.2: Z = V/I with the means V = 4.9990 V, I = 19.6610 mA, phi = 1.04446 rad.
    {"GUM H.2, R", "4.9990/0.0196610*cos(1.04446 rad)", Kind::kNumber, 127.732, 0.0005},
    {"GUM H.2, X", "4.9990/0.0196610*sin(1.04446 rad)", Kind::kNumber, 219.847, 0.0005},
    {"GUM H.2, Z", "4.9990/0.0196610", Kind::kNumber, 254.260, 0.0005},
    // JCGM 100:2008, H.1.7: second-order terms of the end gauge in nanometres, ls u(da) u(theta) and ls u(as)
    // u(dt), with the limits of table H.1.
    {"GUM H.1.7, first term", "50.000623*1/sqrt(3)*sqrt(0.2^2 + 0.5^2 / 2)", Kind::kNumber, 11.7, 0.05},
    {"GUM H.1.7, second term", "50.000623*2/sqrt(3)*0.05/sqrt(3)", Kind::kNumber, 1.7, 0.05},
};
INSTANTIATE_TEST_SUITE_P(Published, OutsideShopGeometry, testing::ValuesIn(kPublished));

}  // namespace
}  // namespace sparewright::formula
