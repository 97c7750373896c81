// What an instrument may be out by, what it can measure, and what of that is in a reading.
#include "core/survey/instrument_error.hpp"

#include <cmath>

#include <gtest/gtest.h>

#include "core/survey/corrected.hpp"
#include "core/survey/unit_mix.hpp"
#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using tests::instrument;
using tests::reading;
using tests::typed;

constexpr double kInch = 25.4;
const double kRoot3 = std::sqrt(3.0);

double share_of(const Corrected& corrected, std::string_view cause) {
  for (const ledger::Share& share : corrected.shares) {
    if (share.cause.text() == cause) return share.amount;
  }
  return 0.0;
}

Instrument by_table() {
  Instrument caliper = instrument("caliper", "0.02 mm", "0.01 mm");
  caliper.kind = "digital caliper";
  caliper.allowed = {{Jaws::kOutside, 200.0, typed("0.02 mm"), "DIN 862"},
                     {Jaws::kInside, 200.0, typed("0.04 mm"), "DIN 862"},
                     {Jaws::kOutside, 300.0, typed("0.03 mm"), "DIN 862"},
                     {Jaws::kInside, 300.0, typed("0.05 mm"), "DIN 862"}};
  return caliper;
}

TEST(ErrorLimit, GoesByJawsAndSize) {
  const Instrument caliper = by_table();
  EXPECT_DOUBLE_EQ(error_limit(caliper, Jaws::kOutside, 200.0).half_width, 0.02);
  EXPECT_DOUBLE_EQ(error_limit(caliper, Jaws::kInside, 200.0).half_width, 0.04);
  EXPECT_DOUBLE_EQ(error_limit(caliper, Jaws::kOutside, 200.01).half_width, 0.03);
  EXPECT_DOUBLE_EQ(error_limit(caliper, Jaws::kInside, 5000.0).half_width, 0.05);  // past the last, the last
  EXPECT_EQ(error_limit(caliper, Jaws::kInside, 5.0).source, "DIN 862");
  EXPECT_EQ(error_limit(instrument("mic", "0.0002", "0.0001"), Jaws::kInside, 5.0).source, "");
}

TEST(ErrorLimit, IsInTheReadingAndItsTrail) {
  auto inside = reading("bore", Way::kInside, {"b"}, "caliper", {"250 mm"});
  const Corrected as_it_counts = corrected(inside, by_table());
  EXPECT_NEAR(share_of(as_it_counts, "reading/bore/good to"), 0.05 / kRoot3, 1e-15);
  EXPECT_EQ(as_it_counts.source,
            "caliper, inside jaws, taken to be good to 0.05 mm (DIN 862); read once, so its scatter is not "
            "known");
  // A zero nobody looked at may be out by all that is allowed of these jaws.
  EXPECT_NEAR(share_of(as_it_counts, "instrument/caliper/inside jaws/zero"), 0.04 / kRoot3, 1e-15);
}

TEST(Repeatability, StandsForTheScatterOfOneReading) {
  Instrument mic = instrument("mic", "0.0002", "0.0001");
  mic.comes_back = typed("0.0003");
  const auto once = corrected(reading("pin", Way::kOutside, {"p"}, "mic", {"0.7498"}), mic);
  EXPECT_NEAR(share_of(once, "reading/pin/comes back"), 0.0003 / kRoot3 * kInch, 1e-15);
  EXPECT_NE(once.source.find("read once, its scatter taken as the instrument's, 0.0003"), std::string::npos);
  // Four that agree: a half of it is left of their mean.
  const auto four =
      corrected(reading("pin", Way::kOutside, {"p"}, "mic", {"0.7498", "0.7498", "0.7498", "0.7498"}), mic);
  EXPECT_NEAR(share_of(four, "reading/pin/comes back"), 0.0003 / kRoot3 / 2.0 * kInch, 1e-15);
  EXPECT_EQ(share_of(four, "reading/pin/scatter"), 0.0);
}

TEST(Repeatability, GivesWayToAWiderScatter) {
  Instrument mic = instrument("mic", "0.0002", "0.0001");
  mic.comes_back = typed("0.0003");
  // Two readings 0.0010 apart: s = 0.0010/sqrt 2, of the mean 0.0005; said: 0.0003/sqrt 3/sqrt 2 = 0.00012.
  const auto two = corrected(reading("pin", Way::kOutside, {"p"}, "mic", {"0.7493", "0.7503"}), mic);
  EXPECT_NEAR(share_of(two, "reading/pin/scatter"), 0.0005 * kInch, 1e-13);
  EXPECT_EQ(share_of(two, "reading/pin/comes back"), 0.0);
}

TEST(ReadingConvention, WhatShowsHalfIsDoubledWithItsDoubt) {
  Instrument half = instrument("bridge", "0.001", "0.0005");
  half.zero_found = typed("0.002");
  half.shows = Shows::kHalfOfIt;
  const auto as_it_counts = corrected(reading("bore", Way::kInside, {"b"}, "bridge", {"1.502"}), half);
  EXPECT_NEAR(as_it_counts.value, 3.000 * kInch, 1e-12);
  EXPECT_NEAR(share_of(as_it_counts, "reading/bore/good to"), 0.002 / kRoot3 * kInch, 1e-15);
  half.shows = Shows::kTwiceIt;
  EXPECT_NEAR(corrected(reading("bore", Way::kInside, {"b"}, "bridge", {"1.502"}), half).value, 0.75 * kInch,
              1e-12);
}

TEST(MeasuringRange, HasALittleOverItsEnds) {
  Instrument mic = instrument("mic", "0.0001", "0.0001");
  EXPECT_TRUE(in_range(mic, 1000.0));  // nobody said
  EXPECT_EQ(range_words(mic), "");
  mic.from = typed("1");
  mic.to = typed("2");
  EXPECT_EQ(range_words(mic), "1 in to 2 in");
  EXPECT_TRUE(in_range(mic, 1.0 * kInch));
  EXPECT_TRUE(in_range(mic, 2.004 * kInch));
  EXPECT_FALSE(in_range(mic, 2.006 * kInch));
  EXPECT_FALSE(in_range(mic, 0.994 * kInch));
  mic.from.reset();
  EXPECT_EQ(range_words(mic), "up to 2 in");
  EXPECT_TRUE(in_range(mic, 0.5));
}

TEST(UnitMix, ABareNumberOffAnInstrumentOfTheOtherUnitIsAsked) {
  const Instrument metric = instrument("caliper 150", "0.03 mm", "0.02 mm");
  const auto bare = unit_asked(reading("pin", Way::kOutside, {"p"}, "caliper 150", {"0.750"}), metric);
  ASSERT_TRUE(bare);
  EXPECT_EQ(bare->id, "unit/pin");
  EXPECT_EQ(bare->says, "mm or in? 'pin' was read 0.750 with caliper 150, which is graduated in millimetres");
  EXPECT_TRUE(bare->serious);
  EXPECT_FALSE(unit_asked(reading("pin", Way::kOutside, {"p"}, "caliper 150", {"0.750 in"}), metric));
  EXPECT_FALSE(unit_asked(reading("pin", Way::kOutside, {"p"}, "caliper 150", {"19.05 mm"}), metric));
  EXPECT_FALSE(unit_asked(reading("pin", Way::kOutside, {"p"}, "mic", {"0.750"}),
                          instrument("mic", "0.0001", "0.0001")));
}

}  // namespace
}  // namespace sparewright::survey
