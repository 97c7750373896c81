// Heads, nuts, washers, countersinks, spotfaces, stock lengths and pins: found by size, and consistent.
#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/button_head_screws.hpp"
#include "core/handbook/countersinks.hpp"
#include "core/handbook/hex_fasteners.hpp"
#include "core/handbook/pins.hpp"
#include "core/handbook/plain_washers.hpp"
#include "core/handbook/screw_size.hpp"
#include "core/handbook/set_screws.hpp"
#include "core/handbook/socket_head_screws.hpp"
#include "core/handbook/spotfaces.hpp"
#include "core/handbook/stock_lengths.hpp"
#include "core/handbook/thread_lengths.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
using quantity::UnitSystem;
using testing::HasSubstr;
namespace unit = quantity::unit;

double inches(Diameter diameter) {
  return diameter.in(unit::inch);
}
double inches(Length length) {
  return length.in(unit::inch);
}

TEST(HexFasteners, HeadAndNutOfASize) {
  EXPECT_NEAR(inches(hex_head("5/16-18")->flats_max), 0.5, 1e-12);
  EXPECT_NEAR(inches(hex_head("5/16-18")->corners_max()), 0.57735, 1e-5);
  EXPECT_EQ(hex_nut("#10")->kind, HexKind::kMachineScrewNut);
  EXPECT_NEAR(inches(hex_nut("7/16")->flats_max), 0.688, 1e-12);  // wider than its bolt, 0.625
  EXPECT_NEAR(hex_head("M10")->flats_max.in(unit::millimetre), 16, 1e-12);
  EXPECT_NEAR(hex_fastener(HexKind::kOldMetricBolt, "M10")->flats_max.in(unit::millimetre), 17, 1e-12);
  const auto none = hex_head("#10");
  ASSERT_FALSE(none);
  EXPECT_EQ(none.error().code, base::Code::kNotTabled);
  EXPECT_THAT(base::report(none.error()), HasSubstr("1/4, 5/16"));
  EXPECT_EQ(hex_nut("bolt").error().code, base::Code::kNameUnknown);
}

// A hexagon is about 1.5 times as wide as its thread, a nut about 0.8 to 1 times as thick.
TEST(HexFasteners, AreInProportion) {
  for (const HexFastener& one : hex_fasteners()) {
    const double nominal = read_screw_size(one.size)->nominal.base();
    EXPECT_GT(one.flats_max.base(), 1.40 * nominal) << name_of(one.kind) << " " << one.size;
    EXPECT_LT(one.flats_max.base(), 2.55 * nominal) << name_of(one.kind) << " " << one.size;
    if (one.flats_min) {
      EXPECT_LT(*one.flats_min, one.flats_max) << one.size;
    }
    if (one.height_min) {
      EXPECT_LT(*one.height_min, one.height_max) << one.size;
    }
  }
}

TEST(PlainWashers, TheUsualAndTheWide) {
  EXPECT_EQ(plain_washer("5/16")->series, WasherSeries::kNarrow);
  EXPECT_NEAR(inches(plain_washer(WasherSeries::kWide, "5/16")->outside), 0.875, 1e-12);
  EXPECT_EQ(plain_washer("#10")->series, WasherSeries::kStandard);
  EXPECT_NEAR(plain_washer("M8")->outside.in(unit::millimetre), 16, 1e-12);
  EXPECT_EQ(plain_washer("M7").error().code, base::Code::kNotTabled);
  for (const PlainWasher& washer : plain_washers()) {
    EXPECT_GT(washer.inside, read_screw_size(washer.size)->nominal) << washer.size;
    EXPECT_GT(washer.outside, washer.inside) << washer.size;
    if (washer.thickness_max) {
      EXPECT_GT(*washer.thickness_max, washer.thickness) << washer.size;
    }
    if (washer.thickness_min) {
      EXPECT_LT(*washer.thickness_min, washer.thickness) << washer.size;
    }
  }
}

TEST(ButtonHeads, AreLowerAndWiderThanSocketHeads) {
  for (const ButtonHeadScrew& screw : button_head_screws()) {
    const auto socket = socket_head_screw(screw.size);
    ASSERT_TRUE(socket) << screw.size;
    EXPECT_LT(screw.head_height_max.base(), 0.6 * socket->head_height_max.base()) << screw.size;
    EXPECT_GT(screw.head_max, socket->head_max) << screw.size;
    EXPECT_LT(screw.key, socket->key) << screw.size;
    EXPECT_EQ(screw.source.basis, Basis::kFromMemory);
  }
  EXPECT_EQ(button_head_screw("5/16-18")->key_name, "3/16 in");
  EXPECT_EQ(button_head_screw("M20").error().code, base::Code::kNotTabled);
}

TEST(SetScrews, HaveAKeyAboutHalfTheScrew) {
  for (const SetScrew& screw : set_screws()) {
    const double nominal = read_screw_size(screw.size)->nominal.base();
    EXPECT_NEAR(screw.key.base() / nominal, 0.5, 0.09) << screw.size;
    EXPECT_LT(screw.dog_max.base(), nominal) << screw.size;
    EXPECT_LT(screw.cup_max, screw.dog_max) << screw.size;
  }
  EXPECT_EQ(set_screw("1/4-20")->key_name, "1/8 in");
}

// Rows from memory hold together: the head is a cone from the body to its sharp edge. Machine screws are
// measured to a smaller body, so their heads are up to 5 per cent higher.
TEST(FlatHeads, AreCones) {
  for (const FlatHeadScrew& screw : flat_head_screws()) {
    const double body_mm = read_screw_size(screw.size)->nominal.in(unit::millimetre);
    const double cone_mm =
        countersink_depth_mm(screw.sharp.in(unit::millimetre), body_mm, screw.angle.in(unit::radian));
    const double height_mm = screw.head_height_max.in(unit::millimetre);
    if (screw.style == FlatHeadStyle::kSocket) {
      EXPECT_NEAR(height_mm, cone_mm, 0.0015 * 25.4) << screw.size;
    } else {
      EXPECT_GE(height_mm, cone_mm) << screw.size;
      EXPECT_LE(height_mm, 1.05 * cone_mm) << screw.size;
    }
  }
}

TEST(Countersinks, ForAFlushHead) {
  const auto sink = countersink(FlatHeadStyle::kSocket, "1/4-20");
  ASSERT_TRUE(sink);
  EXPECT_NEAR(inches(sink->diameter), 0.531, 1e-12);
  EXPECT_NEAR(sink->screw.angle.in(unit::degree), 82, 1e-12);
  // (0.531 - 0.2812) / (2 tan 41) = 0.14368 in by hand.
  EXPECT_NEAR(inches(sink->feed), 0.14368, 1e-4);
  EXPECT_NEAR(countersink(FlatHeadStyle::kSocket, "M8")->feed.in(unit::millimetre), (17.92 - 9) / 2, 1e-9);
  EXPECT_EQ(countersink(FlatHeadStyle::kMachine, "M8").error().code, base::Code::kNotTabled);
}

TEST(Spotfaces, LetTheHeadStandAnywhereInTheHole) {
  const auto face = spotface(SpotfaceUnder::kHexHead, "1/2-13");
  ASSERT_TRUE(face);
  EXPECT_NEAR(inches(face->diameter), 0.750 * 2 / std::sqrt(3.0) + 0.0625, 1e-6);
  EXPECT_NEAR(spotface(SpotfaceUnder::kWasher, "M8")->diameter.in(unit::millimetre), 17, 1e-9);
  EXPECT_FALSE(spotface(SpotfaceUnder::kHexHead, "9/16"));  // no clearance hole is tabled
  EXPECT_FALSE(spotface(SpotfaceUnder::kHexHead, "x"));
}

TEST(StockLengths, GrowByTheirSteps) {
  const auto inch = stock_lengths(UnitSystem::kInch);
  EXPECT_NEAR(inches(inch.front()), 0.125, 1e-12);
  EXPECT_NEAR(inches(inch.back()), 10.0, 1e-12);
  EXPECT_EQ(inch.size(), 3U + 6U + 10U + 7U + 3U);
  const auto metric = stock_lengths(UnitSystem::kMetric);
  EXPECT_TRUE(std::is_sorted(metric.begin(), metric.end()));
}

TEST(StockLengths, AScrewForAThicknessAndAnEngagement) {
  const Length plate = Length::of(0.5, unit::inch);
  const auto length = screw_length(UnitSystem::kInch, plate, Length::of(0.55, unit::inch));
  ASSERT_TRUE(length);
  EXPECT_NEAR(inches(length->length), 1.25, 1e-12);
  EXPECT_NEAR(inches(length->engagement), 0.75, 1e-12);
  EXPECT_NEAR(inches(*length->shorter), 1.0, 1e-12);
  EXPECT_NEAR(inches(screw_length(UnitSystem::kInch, plate, plate)->length), 1.0, 1e-12);
  const auto deep =
      screw_length(UnitSystem::kInch, plate, Length::of(0.55, unit::inch), Length::of(0.6, unit::inch));
  ASSERT_FALSE(deep);
  EXPECT_EQ(deep.error().code, base::Code::kOutsideDomain);
  EXPECT_THAT(base::report(deep.error()), HasSubstr("a stock screw of 1.250 in"));
  EXPECT_EQ(screw_length(UnitSystem::kMetric, Length::of(300, unit::millimetre), plate).error().code,
            base::Code::kNotTabled);
  EXPECT_EQ(screw_length(UnitSystem::kMetric, Length{}, plate).error().code, base::Code::kSizeNotPositive);
}

TEST(Pins, DowelsArePressedIn) {
  const auto quarter = dowel_pin("1/4 in");
  ASSERT_TRUE(quarter);
  EXPECT_NEAR(inches(quarter->pin.low), 0.2501, 1e-9);
  EXPECT_NEAR(inches(quarter->pin.high), 0.2503, 1e-9);
  EXPECT_NEAR(inches(quarter->pressed_hole.low), 0.2495, 1e-9);
  EXPECT_NEAR(inches(quarter->pressed_hole.high), 0.2500, 1e-9);
  const auto six = dowel_pin("6 mm");
  ASSERT_TRUE(six);
  EXPECT_NEAR(six->pin.low.in(unit::millimetre), 6.004, 1e-9);  // m6
  EXPECT_NEAR(six->pin.high.in(unit::millimetre), 6.012, 1e-9);
  EXPECT_NEAR(six->pressed_hole.high.in(unit::millimetre), 6.012, 1e-9);  // H7
  EXPECT_EQ(dowel_pin("7 mm").error().code, base::Code::kNotTabled);
  EXPECT_EQ(dowel_pin("6").error().code, base::Code::kUnitMissing);
}

TEST(Pins, SpringPinsGoInHolesOfTheirSize) {
  EXPECT_NEAR(inches(spring_pin("1/8")->hole.high), 0.129, 1e-9);
  EXPECT_NEAR(spring_pin("5 mm")->hole.high.in(unit::millimetre), 5.12, 1e-9);  // H12
  EXPECT_EQ(spring_pin("1 in").error().code, base::Code::kNotTabled);
}

TEST(ThreadLengths, SocketAndHex) {
  const ScrewThread half = read_screw_thread("1/2-13").value();
  const ScrewThread ten = read_screw_thread("#10-24").value();
  const ScrewThread m8 = read_screw_thread("M8").value();
  EXPECT_NEAR(inches(socket_thread_length(half, Length::of(3, unit::inch))->thread), 1.5, 1e-9);
  EXPECT_NEAR(inches(socket_thread_length(half, Length::of(1, unit::inch))->shank), 0.0, 1e-9);
  EXPECT_NEAR(inches(socket_thread_length(ten, Length::of(2, unit::inch))->thread), 0.88, 1e-9);
  EXPECT_NEAR(socket_thread_length(m8, Length::of(60, unit::millimetre))->thread.in(unit::millimetre), 28,
              1e-9);
  EXPECT_NEAR(inches(hex_thread_length(half, Length::of(3, unit::inch))->thread), 1.25, 1e-9);
  EXPECT_NEAR(inches(hex_thread_length(half, Length::of(8, unit::inch))->thread), 1.5, 1e-9);
  EXPECT_NEAR(hex_thread_length(m8, Length::of(60, unit::millimetre))->thread.in(unit::millimetre), 22, 1e-9);
  EXPECT_EQ(hex_thread_length(ten, Length::of(2, unit::inch)).error().code, base::Code::kNotTabled);
  EXPECT_EQ(socket_thread_length(half, Length{}).error().code, base::Code::kSizeNotPositive);
  EXPECT_FALSE(socket_thread_length(read_screw_thread("#2-56").value(), Length::of(1, unit::inch)));
}

}  // namespace
}  // namespace sparewright::handbook
