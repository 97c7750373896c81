// Parallel and Woodruff keys: finding them, measuring them, and what has none.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/keyseat_formulas.hpp"
#include "core/handbook/parallel_keys.hpp"
#include "core/handbook/woodruff_keys.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
using testing::HasSubstr;
namespace unit = quantity::unit;

double mm(Length length) {
  return length.in(unit::millimetre);
}

TEST(ParallelKeys, TheKeyOfA30MillimetreShaft) {
  const auto seats = keyseats_for_shaft("30 mm");
  ASSERT_TRUE(seats);
  ASSERT_EQ(seats->size(), 1U);
  const ParallelKeyseat& seat = seats->front();
  EXPECT_EQ(seat.key.name, "8 x 7");
  EXPECT_DOUBLE_EQ(mm(seat.crest_depth), 4.0);
  EXPECT_DOUBLE_EQ(mm(seat.over_back.nominal), 26.0);
  EXPECT_DOUBLE_EQ(mm(seat.over_back.lower), -0.2);
  EXPECT_DOUBLE_EQ(mm(seat.hub_over_back.nominal), 33.3);
  EXPECT_EQ(seat.over_back.tolerance_source.basis, Basis::kFromMemory);
  EXPECT_NEAR(mm(seat.arc_height), 15 - std::sqrt(225.0 - 16.0), 1e-12);
  ASSERT_EQ(seat.width_fits.size(), 3U);
  const KeyWidthFit& easy = seat.width_fits[0];
  EXPECT_EQ(easy.shaft, "N9");
  EXPECT_NEAR(mm(easy.shaft_width.lower), -0.036, 1e-12);
  EXPECT_NEAR(mm(easy.shaft_width.upper), 0.0, 1e-12);
  EXPECT_NEAR(mm(easy.hub_width.upper), 0.018, 1e-12);
  EXPECT_NEAR(mm(seat.width_fits[1].shaft_width.upper), -0.015, 1e-12);  // P9
  EXPECT_NEAR(mm(seat.width_fits[1].shaft_width.lower), -0.051, 1e-12);
  EXPECT_NEAR(mm(easy.key.lower), -0.036, 1e-12);  // h9
}

TEST(ParallelKeys, InchShaftsHaveTwo) {
  const auto seats = keyseats_for_shaft("1-1/4");
  ASSERT_TRUE(seats);
  ASSERT_EQ(seats->size(), 2U);
  EXPECT_EQ((*seats)[0].key.name, "1/4 x 1/4");
  EXPECT_EQ((*seats)[1].key.name, "1/4 x 3/16");
  EXPECT_NEAR((*seats)[1].side_depth.in(unit::inch), 3.0 / 32, 1e-12);
  EXPECT_NEAR(((*seats)[0].crest_depth - (*seats)[0].arc_height).in(unit::inch), 0.125, 1e-12);
  EXPECT_EQ((*seats)[0].width_fits.size(), 2U);
  EXPECT_EQ(keyseats_for_shaft("3/8 in")->size(), 1U);  // square only
}

// What is measured comes from one geometry: over the back and below the crest make the shaft.
TEST(ParallelKeys, EveryKeyseatAddsUp) {
  for (const ParallelKey& key : parallel_keys()) {
    const auto seat = parallel_keyseat(key, key.up_to);
    if (!seat) {
      EXPECT_GT(key.width.in(unit::millimetre), 50.0) << key.name;
      continue;
    }
    EXPECT_NEAR(seat->over_back.nominal.base() + seat->crest_depth.base(), key.up_to.base(), 1e-9)
        << key.name;
    EXPECT_NEAR(seat->hub_over_back.nominal.base() - seat->hub_depth.base(), key.up_to.base(), 1e-9)
        << key.name;
    EXPECT_NEAR((seat->crest_depth + seat->hub_depth - key.height).base(), seat->top_clearance.base(), 1e-9)
        << key.name;
    EXPECT_FALSE(seat->width_fits.empty()) << key.name;
  }
}

TEST(ParallelKeys, WhatHasNoKeyIsSaid) {
  const auto thin = keyseats_for_shaft("5 mm");
  ASSERT_FALSE(thin);
  EXPECT_EQ(thin.error().code, base::Code::kNotTabled);
  EXPECT_THAT(base::report(thin.error()), HasSubstr("a shaft of 5 mm"));
  EXPECT_THAT(base::report(thin.error()), HasSubstr("shafts over 6 up to 230 mm"));
  EXPECT_THAT(base::report(keyseats_for_shaft("7 in").error()), HasSubstr("over 0.3125 up to 6.5000 in"));
  EXPECT_EQ(keyseats_for_shaft("30").error().code, base::Code::kUnitMissing);
  EXPECT_EQ(keyseats_for_shaft("-30 mm").error().code, base::Code::kSizeNotPositive);
  EXPECT_EQ(keyseats_for_shaft("0 mm").error().code, base::Code::kSizeNotPositive);
  EXPECT_FALSE(keyseats_for_shaft(""));
  EXPECT_FALSE(keyseats_for_shaft("shaft"));
}

TEST(ParallelKeys, AKeyTooWideForTheShaft) {
  const ParallelKey key = parallel_key(Diameter::of(30, unit::millimetre), KeySystem::kMetric).value();
  EXPECT_TRUE(parallel_keyseat(key, Diameter::of(25, unit::millimetre)));
  EXPECT_EQ(parallel_keyseat(key, Diameter::of(8, unit::millimetre)).error().code,
            base::Code::kOutsideDomain);
  const ParallelKey small = parallel_key(Diameter::of(7, unit::millimetre), KeySystem::kMetric).value();
  const auto through = parallel_keyseat(small, Diameter::of(2.2, unit::millimetre));  // t1 is 1.2
  ASSERT_FALSE(through);
  EXPECT_EQ(through.error().code, base::Code::kOutsideDomain);
}

TEST(WoodruffKeys, Number606InAOneInchShaft) {
  const auto seat = woodruff_keyseat(woodruff_key("606").value(), Diameter::of(1, unit::inch));
  ASSERT_TRUE(seat);
  EXPECT_NEAR(seat->side_depth.in(unit::inch), 0.2143, 0.00006);
  // Y = (1 - sqrt(1 - 0.1875^2))/2 = 0.008868 by hand.
  EXPECT_NEAR(seat->arc_height.in(unit::inch), 0.008868, 1e-6);
  EXPECT_NEAR(seat->crest_depth.in(unit::inch), 0.22312, 1e-5);
  EXPECT_NEAR(seat->over_back.in(unit::inch), 0.77688, 1e-5);
  // 2 sqrt(0.21425 (0.75 - 0.21425)) = 0.6776 by hand.
  EXPECT_NEAR(seat->length.in(unit::inch), 0.6776, 1e-4);
  EXPECT_EQ(seat->tolerance_source.basis, Basis::kFromMemory);
}

TEST(WoodruffKeys, NumbersSayWidthAndDiameter) {
  for (const WoodruffKey& key : woodruff_keys()) {
    const std::string number(key.number);
    const std::size_t eighths =
        number.find('.') == std::string::npos ? number.size() - 2 : number.find('.') - 2;
    EXPECT_NEAR(key.width.in(unit::inch), std::stod(number.substr(0, eighths)) / 32, 1e-12) << number;
    EXPECT_NEAR(key.diameter.in(unit::inch), std::stod(number.substr(eighths)) / 8, 1e-12) << number;
    EXPECT_LT(key.height_max.base(), key.diameter.base() / 2) << number;
  }
}

TEST(WoodruffKeys, AreSuggestedByShaft) {
  const auto keys = woodruff_keys_for(Diameter::of(0.3125, unit::inch));
  ASSERT_FALSE(keys.empty());
  for (const WoodruffKey& key : keys)
    EXPECT_NEAR(key.width.in(unit::inch), 1.0 / 16, 1e-12) << key.number;
  EXPECT_TRUE(woodruff_keys_for(Diameter::of(5, unit::inch)).empty());
}

TEST(WoodruffKeys, UnknownOnesNameTheNearest) {
  EXPECT_EQ(woodruff_key("#606")->number, "606");
  const auto none = woodruff_key("6006");
  ASSERT_FALSE(none);
  EXPECT_EQ(none.error().code, base::Code::kNameUnknown);
  EXPECT_THAT(base::report(none.error()), HasSubstr("did you mean '606'"));
  EXPECT_EQ(woodruff_keyseat(woodruff_key("606").value(), Diameter::of(0.25, unit::inch)).error().code,
            base::Code::kOutsideDomain);
}

}  // namespace
}  // namespace sparewright::handbook
