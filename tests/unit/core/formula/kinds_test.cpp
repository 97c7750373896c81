// What kind of length a formula gives, told from which kinds it is accepted as: a radius is not accepted
// where a diameter is wanted and the other way round, a length and a coordinate are accepted as either.
#include <ostream>
#include <string>

#include <gtest/gtest.h>

#include "formula_names.hpp"

namespace sparewright::formula {
namespace {

using quantity::Kind;

enum class Gives { kRadius, kDiameter, kLength };

struct Row {
  std::string text;
  Gives gives;
};

void PrintTo(const Row& row, std::ostream* out) {
  *out << "'" << row.text << "'";
}

class LengthKind : public testing::TestWithParam<Row> {};

TEST_P(LengthKind, OfTheFormula) {
  const Row& row = GetParam();
  EXPECT_TRUE(read_and_bind(row.text, Kind::kLength));
  EXPECT_TRUE(read_and_bind(row.text, Kind::kCoordinate));
  EXPECT_EQ(read_and_bind(row.text, Kind::kRadius).has_value(), row.gives != Gives::kDiameter);
  EXPECT_EQ(read_and_bind(row.text, Kind::kDiameter).has_value(), row.gives != Gives::kRadius);
  EXPECT_FALSE(read_and_bind(row.text, Kind::kAngle));
  EXPECT_FALSE(read_and_bind(row.text, Kind::kArea));
}

const Row kRows[] = {
    {"pin", Gives::kDiameter},
    {"r", Gives::kRadius},
    {"pin/2", Gives::kRadius},
    {"pin / 2.0", Gives::kRadius},
    {"pin*0.5", Gives::kRadius},
    {"0.5*pin", Gives::kRadius},
    {"1/2*pin", Gives::kRadius},
    {"pin*1/2", Gives::kRadius},
    {"2*r", Gives::kDiameter},
    {"r*2", Gives::kDiameter},
    {"r/0.5", Gives::kDiameter},
    {"2*pin/2", Gives::kLength},
    {"2*(pin/2)", Gives::kDiameter},
    {"(2*r)/2", Gives::kRadius},
    {"-pin", Gives::kDiameter},
    {"abs(-r)", Gives::kRadius},
    {"min(pin, stud)", Gives::kDiameter},
    {"max(r, pin/2)", Gives::kRadius},
    {"min(pin, high)", Gives::kLength},
    {"pin/3", Gives::kLength},
    {"3*r", Gives::kLength},
    {"pin + stud", Gives::kLength},
    {"pin - stud", Gives::kLength},
    {"(pin - stud)/2", Gives::kLength},
    {"r + r", Gives::kLength},
    {"pin + 0.5", Gives::kLength},
    {"pin/2 + r", Gives::kLength},
    {"high + r", Gives::kLength},
    {"high - pin", Gives::kLength},
    {"count*pin", Gives::kLength},
    {"area/pin", Gives::kLength},
    {"x", Gives::kLength},
    {"x + high", Gives::kLength},
    {"x - y", Gives::kLength},
    {"x - r", Gives::kLength},
    {"high - x", Gives::kLength},
    {"2*x", Gives::kLength},
};
INSTANTIATE_TEST_SUITE_P(Kinds, LengthKind, testing::ValuesIn(kRows));

TEST(Coordinates, AreToldFromLengthsByWhatTheyMayBeAddedTo) {
  EXPECT_FALSE(read_and_bind("x + y"));
  EXPECT_FALSE(read_and_bind("(x + high) + y"));  // a coordinate moved by a length is a coordinate
  EXPECT_FALSE(read_and_bind("(high + x) + y"));
  EXPECT_FALSE(read_and_bind("(x - high) + y"));
  EXPECT_FALSE(read_and_bind("-x + y"));
  EXPECT_FALSE(read_and_bind("max(x, y) + y"));
  EXPECT_TRUE(read_and_bind("(y - x) + y"));     // a difference of two is a length
  EXPECT_TRUE(read_and_bind("(high - x) + y"));  // measured from the other end
  EXPECT_TRUE(read_and_bind("x + (y - x)/2"));   // the middle of two
  EXPECT_TRUE(read_and_bind("x + 0.5 + r"));
}

TEST(Dimensions, FollowProductsAndPowers) {
  EXPECT_TRUE(read_and_bind("force/area", Kind::kPressure));
  EXPECT_TRUE(read_and_bind("force*high", Kind::kTorque));
  EXPECT_TRUE(read_and_bind("mass/high^3", Kind::kDensity));
  EXPECT_TRUE(read_and_bind("area*high", Kind::kVolume));
  EXPECT_TRUE(read_and_bind("sqrt(area*area)", Kind::kArea));
  EXPECT_TRUE(read_and_bind("sqrt(high^4/area)", Kind::kLength));
  EXPECT_TRUE(read_and_bind("high/high", Kind::kNumber));
  EXPECT_TRUE(read_and_bind("atan(high/centres) + angle", Kind::kAngle));
  EXPECT_TRUE(read_and_bind("high*(30 rpm)/(1 rpm)"));
  EXPECT_TRUE(read_and_bind("0.1 mm/rev * 300 rpm", Kind::kFeedRate));
  EXPECT_FALSE(read_and_bind("angle*high"));  // an arc is not a length until something says so
}

}  // namespace
}  // namespace sparewright::formula
