// Ball bearings (bearings.csv) by number, with the seats a reference table works out for each; the bore code
// of ISO 15; and the limits of the zones of seats (bearing_zones.csv).
#include "core/handbook/bearings.hpp"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/handbook/bearing_seats.hpp"
#include "published.hpp"

namespace sparewright::handbook {
namespace {

using published::Row;
using quantity::Diameter;
namespace unit = quantity::unit;
constexpr double kExact = 1e-6;

void expect_deviations(const Row& row, const std::string& zone, double size_mm, double upper, double lower) {
  const FitDeviations deviations = iso286_deviations(zone, Diameter::of(size_mm, unit::millimetre)).value();
  EXPECT_NEAR(deviations.upper.in(unit::micrometre), upper, kExact) << row;
  EXPECT_NEAR(deviations.lower.in(unit::micrometre), lower, kExact) << row;
}

void expect_bearing(const Row& row) {
  const Bearing bearing = find_bearing(row["number"])->bearing;
  EXPECT_EQ(bearing.number, row["number"]);
  EXPECT_NEAR(bearing.bore.in(unit::millimetre), row.number("bore"), kExact) << row;
  EXPECT_NEAR(bearing.outside.in(unit::millimetre), row.number("outside"), kExact) << row;
  EXPECT_NEAR(bearing.width.in(unit::millimetre), row.number("width"), kExact) << row;
  expect_deviations(row, row["shaft_zone"], row.number("bore"), row.number("shaft_upper"),
                    row.number("shaft_lower"));
  expect_deviations(row, row["housing_zone"], row.number("outside"), row.number("housing_upper"),
                    row.number("housing_lower"));
  const SizeLimits bore = bearing_ring_limits(FitSide::kHole, bearing.bore)->limits;
  EXPECT_NEAR((bore.lower - bearing.bore).in(unit::micrometre), row.number("bore_lower"), kExact) << row;
  EXPECT_EQ(bore.upper, bearing.bore);
}

class OutsideBearing : public testing::TestWithParam<Row> {};
TEST_P(OutsideBearing, HasThePrintedSizesAndSeats) {
  expect_bearing(GetParam());
}
std::vector<Row> of(std::string_view source) {
  return published::rows_of("bearings.csv", source);
}
INSTANTIATE_TEST_SUITE_P(OutsideMiniature, OutsideBearing, testing::ValuesIn(of("miniature list")));
INSTANTIATE_TEST_SUITE_P(OutsideChart, OutsideBearing,
                         testing::ValuesIn(published::counted(of("size chart"))));

TEST(OutsideBearings, AllRowsHaveTheirSizesAndSeats) {
  const std::vector<Row> rows = published::rows("bearings.csv");
  EXPECT_EQ(rows.size(), 47U);
  EXPECT_EQ(rows.size(), bearings().size());
  for (const Row& row : rows)
    expect_bearing(row);
}

// ISO 15: the last two digits of a number of four say the bore.
TEST(OutsideBearings, TheBoreCodeSaysTheBore) {
  int coded = 0;
  for (const Bearing& bearing : bearings()) {
    if (bearing.number.size() != 4) continue;
    const int code = std::stoi(std::string(bearing.number.substr(2)));
    EXPECT_NEAR((bore_of_code(code).value() - bearing.bore).base(), 0.0, kExact) << bearing.number;
    ++coded;
  }
  EXPECT_EQ(coded, 33);
}

TEST(BearingZones, AreTheOnesWorkedOut) {
  const std::vector<Row> rows = published::rows("bearing_zones.csv");
  EXPECT_EQ(rows.size(), 48U);
  for (const Row& row : rows)
    expect_deviations(row, row["zone"], row.number("size"), row.number("upper"), row.number("lower"));
}

// Rows of the three tables of seats, as printed.
struct PrintedSeat {
  FitSide side;
  double size_mm;
  RingTurning turning;
  BearingLoad load;
  std::string_view preferred;
  std::string_view source;  // a word of it
};
class OutsideSeat : public testing::TestWithParam<PrintedSeat> {};
TEST_P(OutsideSeat, IsThePrintedZone) {
  const PrintedSeat& printed = GetParam();
  const auto seats = bearing_seats(printed.side, Diameter::of(printed.size_mm, unit::millimetre),
                                   printed.turning, printed.load);
  ASSERT_TRUE(seats);
  int found = 0;
  for (const BearingSeat& seat : *seats) {
    found += seat.rank == SeatRank::kPreferred && to_string(seat.zone) == printed.preferred &&
                     seat.source.text.find(printed.source) != std::string_view::npos
                 ? 1
                 : 0;
  }
  EXPECT_EQ(found, 1) << printed.preferred;
}
constexpr FitSide kShaft = FitSide::kShaft;
constexpr FitSide kHousing = FitSide::kHole;
constexpr auto kInner = RingTurning::kInner;
constexpr auto kOuter = RingTurning::kOuter;
constexpr auto kLight = BearingLoad::kLight;
constexpr auto kNormal = BearingLoad::kNormal;
constexpr auto kHeavy = BearingLoad::kHeavy;
INSTANTIATE_TEST_SUITE_P(OutsideMaker, OutsideSeat,
                         testing::Values(PrintedSeat{kShaft, 15, kInner, kLight, "js5", "service page"},
                                         PrintedSeat{kShaft, 25, kInner, kLight, "js6", "service page"},
                                         PrintedSeat{kShaft, 120, kInner, kLight, "k6", "service page"},
                                         PrintedSeat{kShaft, 15, kInner, kNormal, "js5", "service page"},
                                         PrintedSeat{kShaft, 25, kInner, kNormal, "k5", "service page"},
                                         PrintedSeat{kShaft, 120, kInner, kNormal, "m5", "service page"},
                                         PrintedSeat{kShaft, 150, kInner, kNormal, "m6", "service page"},
                                         PrintedSeat{kShaft, 25, RingTurning::kEither, kLight, "js6",
                                                     "service page"},
                                         PrintedSeat{kShaft, 25, kOuter, kNormal, "h6", "service page"}));
INSTANTIATE_TEST_SUITE_P(OutsideSupplier, OutsideSeat,
                         testing::Values(PrintedSeat{kShaft, 25, kInner, kLight, "h6", "supplier"},
                                         PrintedSeat{kShaft, 25, kInner, kNormal, "j6", "supplier"},
                                         PrintedSeat{kHousing, 52, kInner, kNormal, "H7", "supplier"},
                                         PrintedSeat{kHousing, 52, kOuter, kNormal, "N7", "supplier"},
                                         PrintedSeat{kHousing, 52, kOuter, kHeavy, "P7", "supplier"}));
INSTANTIATE_TEST_SUITE_P(OutsideAbma, OutsideSeat,
                         testing::Values(PrintedSeat{kHousing, 52, kInner, kNormal, "H6", "ABMA"},
                                         PrintedSeat{kHousing, 52, kInner, kHeavy, "J6", "ABMA"},
                                         PrintedSeat{kHousing, 52, RingTurning::kEither, kHeavy, "K6",
                                                     "ABMA"},
                                         PrintedSeat{kHousing, 52, kOuter, kLight, "M6", "ABMA"},
                                         PrintedSeat{kHousing, 52, kOuter, kNormal, "N6", "ABMA"},
                                         PrintedSeat{kHousing, 52, kOuter, kHeavy, "P6", "ABMA"}));

}  // namespace
}  // namespace sparewright::handbook
