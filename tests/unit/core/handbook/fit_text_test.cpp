#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/fit_found.hpp"
#include "core/handbook/fits.hpp"
#include "core/handbook/recommended_fits.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
using testing::HasSubstr;
namespace unit = quantity::unit;

Diameter mm(double size) {
  return Diameter::of(size, unit::millimetre);
}
Length um(double size) {
  return Length::of(size, unit::micrometre);
}

TEST(FitText, IsReadInTheWaysItIsWritten) {
  for (const char* text : {"25 mm H7/g6", "25mm H7/g6", "25 H7/g6", "25H7/g6", "\u00D825 H7/g6",
                           "25 mm H7-g6", " 25 mm  H7 / g6 "}) {
    const auto fit = read_fit(text);
    ASSERT_TRUE(fit) << text << ": " << base::report(fit.error());
    EXPECT_EQ(fit->name, "H7/g6") << text;
    EXPECT_NEAR(fit->hole.lower.in(unit::millimetre), 25.000, 1e-9) << text;
    EXPECT_NEAR(fit->hole.upper.in(unit::millimetre), 25.021, 1e-9) << text;
    EXPECT_NEAR(fit->shaft.lower.in(unit::millimetre), 24.980, 1e-9) << text;
    EXPECT_NEAR(fit->shaft.upper.in(unit::millimetre), 24.993, 1e-9) << text;
    EXPECT_NEAR(fit->least_clearance().in(unit::micrometre), 7, 1e-6) << text;
    EXPECT_NEAR(fit->most_clearance().in(unit::micrometre), 41, 1e-6) << text;
    EXPECT_FALSE(fit->sources.empty());
  }
  for (const char* text : {"1.0000 in RC4", "1.0000 RC4", "1 in rc4", "1\" RC 4", "25.4 mm RC4"}) {
    const auto fit = read_fit(text);
    ASSERT_TRUE(fit) << text << ": " << base::report(fit.error());
    EXPECT_EQ(fit->name, "RC4") << text;
    EXPECT_NEAR(fit->least_clearance().in(unit::thou), 0.8, 1e-9) << text;
    EXPECT_NEAR(fit->most_clearance().in(unit::thou), 2.8, 1e-9) << text;
  }
}

TEST(FitText, SaysWhichUnitItAssumed) {
  EXPECT_EQ(read_fit("25 mm H7/g6")->assumed, "");
  EXPECT_EQ(read_fit("25 H7/g6")->assumed,
            "no unit written: 25 taken as millimetres, as before a fit of ISO 286");
  EXPECT_EQ(read_fit("1.0000 RC4")->assumed,
            "no unit written: 1.0000 taken as inches, as before a fit of ANSI B4.1");
  EXPECT_THAT(read_fit("1-3/8 H7/g6")->assumed, HasSubstr("1-3/8 taken as inches"));
}

TEST(FitText, OneSideAlone) {
  const auto hole = read_zone_at_size("25 mm H7");
  ASSERT_TRUE(hole);
  EXPECT_EQ(hole->zone.side, FitSide::kHole);
  EXPECT_NEAR(hole->limits.width().in(unit::micrometre), 21, 1e-6);
  EXPECT_EQ(read_zone_at_size("25 g6")->zone.side, FitSide::kShaft);
  EXPECT_FALSE(read_zone_at_size("25 mm RC4"));
  EXPECT_FALSE(read_zone_at_size("0 mm H7"));
}

TEST(FitText, KindsOfFit) {
  EXPECT_EQ(read_fit("25 mm H7/h6")->kind(), FitKind::kClearance);
  EXPECT_EQ(read_fit("25 mm H7/k6")->kind(), FitKind::kTransition);
  EXPECT_EQ(read_fit("25 mm H7/s6")->kind(), FitKind::kInterference);
  EXPECT_EQ(name_of(FitKind::kTransition), "transition");
}

TEST(FitText, WhatCannotBeReadSaysWhatCan) {
  struct Case {
    const char* text;
    base::Code code;
    const char* accepted;
  };
  for (const Case& one : {Case{"25 mm", base::Code::kNameUnknown, "a fit such as H7/g6"},
                          Case{"25 mm H7", base::Code::kNameUnknown, "a fit such as H7/g6"},
                          Case{"25 mm g6/H7", base::Code::kNameUnknown, "the hole's zone first"},
                          Case{"25 mm H7/H6", base::Code::kNameUnknown, "the hole's zone first"},
                          Case{"25 mm H7/q6", base::Code::kNameUnknown, "a zone such as"},
                          Case{"1 in RC12", base::Code::kNameUnknown, "RC"},
                          Case{"9 in RC4", base::Code::kNotTabled, "up to 7.09 in"},
                          Case{"600 mm H7/g6", base::Code::kNotTabled, "up to 500 mm"},
                          Case{"0 mm H7/g6", base::Code::kSizeNotPositive, "over zero"},
                          Case{"-5 mm H7/g6", base::Code::kSizeNotPositive, "over zero"}}) {
    const auto fit = read_fit(one.text);
    ASSERT_FALSE(fit) << one.text;
    EXPECT_EQ(fit.error().code, one.code) << one.text << ": " << base::report(fit.error());
    EXPECT_THAT(fit.error().accepted, HasSubstr(one.accepted)) << one.text;
  }
  EXPECT_FALSE(read_fit(""));
  EXPECT_FALSE(read_fit("H7/g6"));
}

TEST(RecommendedFits, AreByDutyAndAllTabledSomewhere) {
  for (const RecommendedFit& row : recommended_fits()) {
    const auto fit = fit_at(row.fit, mm(25.4));
    ASSERT_TRUE(fit) << row.fit << ": " << base::report(fit.error());
    EXPECT_EQ(fit->standard, row.standard) << row.fit;
    // what it is called agrees with what its limits do
    if (row.duty == FitDuty::kRunning || row.duty == FitDuty::kSliding) {
      EXPECT_EQ(fit->kind(), FitKind::kClearance) << row.fit;
    }
    if (row.duty == FitDuty::kPress) {
      EXPECT_EQ(fit->kind(), FitKind::kInterference) << row.fit;
    }
    if (row.name.find("transition") != std::string_view::npos) {
      EXPECT_EQ(fit->kind(), FitKind::kTransition) << row.fit;
    }
    if (row.name.find("clearance") != std::string_view::npos) {
      EXPECT_EQ(fit->kind(), FitKind::kClearance) << row.fit;
    }
  }
}

TEST(RecommendedFits, TwinsOfTheTwoBasesHaveOneClearance) {
  // H7/g6 and G7/h6 differ in which part carries the allowance, not in the play.
  for (const auto& [hole, shaft] :
       {std::pair("H7/g6", "G7/h6"), std::pair("H8/f7", "F8/h7"), std::pair("H9/d9", "D9/h9"),
        std::pair("H7/p6", "P7/h6"), std::pair("H7/s6", "S7/h6"), std::pair("H7/k6", "K7/h6")}) {
    const Fit a = fit_at(hole, mm(25)).value();
    const Fit b = fit_at(shaft, mm(25)).value();
    EXPECT_NEAR((a.least_clearance() - b.least_clearance()).in(unit::micrometre), 0, 1e-6) << hole;
    EXPECT_NEAR((a.most_clearance() - b.most_clearance()).in(unit::micrometre), 0, 1e-6) << hole;
  }
}

TEST(RecommendedFits, WordsForDuties) {
  EXPECT_EQ(recommended_fits("sliding")->front().fit, "H7/g6");
  EXPECT_EQ(recommended_fits("Press")->front().name, "medium drive");
  EXPECT_EQ(recommended_fits("shrink")->size(), recommended_fits("press")->size());
  const auto unknown = recommended_fits("slding");
  ASSERT_FALSE(unknown);
  EXPECT_THAT(base::report(unknown.error()), HasSubstr("did you mean 'sliding'?"));
}

TEST(RecommendedFits, AtASize) {
  const auto press = fits_for_duty(FitDuty::kPress, mm(300)).value();
  for (const FitForDuty& one : press)
    EXPECT_EQ(one.recommended.standard, FitStandard::kIso286);  // B4.1 is not tabled so far
  EXPECT_EQ(fits_for_duty(FitDuty::kPress, mm(600)).error().code, base::Code::kNotTabled);
  EXPECT_EQ(fits_for_duty(FitDuty::kPress, mm(0)).error().code, base::Code::kSizeNotPositive);
}

TEST(FitsFound, AnIsoPairAndHowFarTheNextLie) {
  const auto found = fits_found({mm(25.012), um(2)}, {mm(24.986), um(2)}).value();
  EXPECT_NEAR(found.clearance.in(unit::micrometre), 26, 1e-6);
  EXPECT_NEAR(found.uncertainty.in(unit::micrometre), 4, 1e-6);
  ASSERT_EQ(found.iso286.size(), 3U);
  EXPECT_EQ(found.iso286.front().fit.name, "H7/g6");
  EXPECT_TRUE(found.iso286.front().certain);
  EXPECT_EQ(found.iso286.front().hole_off, Length());
}

TEST(FitsFound, AnInchPairIsNotTakenForAMetricOne) {
  // 1-3/8 RC4 in the middle: hole +0.8 thou, shaft -1.5 thou
  const Fit rc4 = fit_at("RC4", Diameter::of(1.375, unit::inch)).value();
  const MeasuredSize hole{quantity::as_diameter((rc4.hole.lower + rc4.hole.upper) / 2.0), um(3)};
  const MeasuredSize shaft{quantity::as_diameter((rc4.shaft.lower + rc4.shaft.upper) / 2.0), um(3)};
  const auto found = fits_found(hole, shaft).value();
  ASSERT_FALSE(found.ansi_b41.empty());
  EXPECT_TRUE(found.ansi_b41.front().possible);
  EXPECT_NEAR(found.ansi_b41.front().fit.nominal.in(unit::inch), 1.375, 1e-9);
  EXPECT_FALSE(found.iso286.front().possible);
}

TEST(FitsFound, AWornShaftShowsByHowMuch) {
  const auto found = fits_found({mm(25.010), um(2)}, {mm(24.900), um(2)}, 50).value();
  const auto g6 = std::find_if(found.iso286.begin(), found.iso286.end(),
                               [](const FoundFit& one) { return one.fit.name == "H7/g6"; });
  ASSERT_NE(g6, found.iso286.end());
  EXPECT_FALSE(g6->possible);
  EXPECT_EQ(g6->hole_off, Length());
  EXPECT_NEAR(g6->shaft_off.in(unit::micrometre), -80, 1e-6);
}

TEST(FitsFound, AWiderUncertaintyIsNoCertainty) {
  const auto found = fits_found({mm(25.012), um(30)}, {mm(24.986), um(30)}).value();
  EXPECT_TRUE(found.iso286.front().possible);
  for (const FoundFit& one : found.iso286) {
    EXPECT_FALSE(one.certain && one.fit.name == "H7/g6");
  }
}

TEST(FitsFound, WhatIsNoPairIsRefused) {
  EXPECT_EQ(fits_found({mm(25), um(1)}, {mm(20), um(1)}).error().code, base::Code::kOutsideDomain);
  EXPECT_EQ(fits_found({mm(0), um(1)}, {mm(20), um(1)}).error().code, base::Code::kSizeNotPositive);
  EXPECT_EQ(fits_found({mm(20), um(-1)}, {mm(20), um(1)}).error().code, base::Code::kSizeNotPositive);
}

}  // namespace
}  // namespace sparewright::handbook
