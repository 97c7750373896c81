#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/inch_fits.hpp"
#include "core/handbook/iso286.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using testing::HasSubstr;
namespace unit = quantity::unit;

Diameter mm(double size) {
  return Diameter::of(size, unit::millimetre);
}
Diameter inch(double size) {
  return Diameter::of(size, unit::inch);
}

TEST(Iso286, ZonesAreRead) {
  EXPECT_EQ(read_iso286_zone("H7")->side, FitSide::kHole);
  EXPECT_EQ(read_iso286_zone("g6")->side, FitSide::kShaft);
  EXPECT_EQ(read_iso286_zone(" js5 ")->letter, "js");
  EXPECT_EQ(read_iso286_zone("JS11")->grade, 11);
  for (const char* text : {"", "7", "H", "Hh7", "Js7", "i6", "H19", "H0", "H07", "H7x", "RC4", "h 7", "é7"}) {
    const auto zone = read_iso286_zone(text);
    ASSERT_FALSE(zone) << text;
    EXPECT_EQ(zone.error().code, base::Code::kNameUnknown) << text;
  }
}

TEST(Iso286, RangesIncludeTheirUpperEnd) {
  EXPECT_NEAR(iso286_deviations("H7", mm(30))->upper.in(unit::micrometre), 21, 1e-9);
  EXPECT_NEAR(iso286_deviations("H7", mm(30.001))->upper.in(unit::micrometre), 25, 1e-9);
  EXPECT_NEAR(iso286_deviations("H7", mm(30.0000000001))->upper.in(unit::micrometre), 21,
              1e-9);  // computed 30
}

TEST(Iso286, SpecialCases) {
  // M6 over 250 up to 315: ES = -9, not -11. N above IT8: ES = 0. JS is not rounded. No delta to 3 mm.
  EXPECT_NEAR(iso286_deviations("M6", mm(300))->upper.in(unit::micrometre), -9, 1e-9);
  EXPECT_NEAR(iso286_deviations("M6", mm(320))->upper.in(unit::micrometre), -21 + 11, 1e-9);
  EXPECT_NEAR(iso286_deviations("N9", mm(25))->upper.in(unit::micrometre), 0, 1e-9);
  EXPECT_NEAR(iso286_deviations("JS7", mm(25))->upper.in(unit::micrometre), 10.5, 1e-9);
  EXPECT_NEAR(iso286_deviations("P7", mm(3))->upper.in(unit::micrometre), -6, 1e-9);
  EXPECT_NEAR(iso286_deviations("k8", mm(25))->lower.in(unit::micrometre), 0, 1e-9);
  EXPECT_NEAR(iso286_deviations("u6", mm(210))->lower.in(unit::micrometre), 258,
              1e-9);  // a textbook prints 256
}

TEST(Iso286, WhatIsNotTabledSaysWhatIs) {
  for (const char* zone : {"H15", "j9", "K9", "t6", "x6", "zc8", "a9"}) {
    const auto deviations = iso286_deviations(zone, mm(zone[0] == 'a' ? 0.5 : 20));
    ASSERT_FALSE(deviations) << zone;
    EXPECT_EQ(deviations.error().code, base::Code::kNotTabled) << zone;
  }
  const auto large = iso286_deviations("H7", mm(501));
  EXPECT_EQ(base::sentence(large.error()), "the ISO 286 zone is not tabled here for H7 at 501 mm");
  EXPECT_THAT(base::report(large.error()), HasSubstr("over 0 up to 500 mm"));
  EXPECT_FALSE(iso286_deviations("H7", mm(0)));
  EXPECT_FALSE(iso286_deviations("H7", mm(-5)));
  EXPECT_EQ(iso286_tolerance(15, mm(20)).error().code, base::Code::kNotTabled);
}

TEST(Iso286, CarriesItsSource) {
  EXPECT_THAT(std::string(iso286_deviations("g6", mm(20))->source.text), HasSubstr("Machinery's Handbook"));
  EXPECT_EQ(iso286_deviations("j6", mm(2))->source.basis, Basis::kFromMemory);
}

TEST(InchFits, LimitsAndClearances) {
  const auto rc4 = inch_fit("RC4", inch(0.875));
  EXPECT_NEAR(rc4->hole_upper.in(unit::thou), 1.2, 1e-9);
  EXPECT_NEAR(rc4->shaft_upper.in(unit::thou), -0.8, 1e-9);
  EXPECT_NEAR(rc4->least_clearance().in(unit::thou), 0.8, 1e-9);
  EXPECT_NEAR(rc4->most_clearance().in(unit::thou), 2.8, 1e-9);
  EXPECT_LT(inch_fit("fn2", inch(1)).value().most_clearance(), quantity::Length());  // a force fit has none
  EXPECT_EQ(rc4->hole_zone, "H8");
}

TEST(InchFits, RangesIncludeTheirUpperEnd) {
  EXPECT_NEAR(inch_fit("RC4", inch(1.19))->hole_upper.in(unit::thou), 1.2, 1e-9);
  EXPECT_NEAR(inch_fit("RC4", inch(1.1901))->hole_upper.in(unit::thou), 1.6, 1e-9);
}

TEST(InchFits, WhatIsNotTabledSaysTheRange) {
  EXPECT_EQ(inch_fit("XY3", inch(1)).error().code, base::Code::kNameUnknown);
  EXPECT_EQ(inch_fit("LC11", inch(1)).error().code, base::Code::kNameUnknown);
  EXPECT_EQ(
      base::report(inch_fit("FN3", inch(0.5)).error()),
      "the fit FN3 is not tabled here for 0.5000 in\n    accepted: nominal sizes over 0.95 up to 5.52 in");
  EXPECT_FALSE(inch_fit("RC4", inch(8)));
}

}  // namespace
}  // namespace sparewright::handbook
