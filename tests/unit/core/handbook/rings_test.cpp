// Retaining rings and O-rings: finding them, and what is not tabled.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/o_rings.hpp"
#include "core/handbook/retaining_rings.hpp"
#include "core/handbook/shaft_card.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
using testing::HasSubstr;
namespace unit = quantity::unit;

TEST(RetainingRings, TheGrooveOfA25MillimetreShaft) {
  const auto groove = ring_groove(RingKind::kExternalMetric, Diameter::of(25, unit::millimetre));
  ASSERT_TRUE(groove);
  EXPECT_DOUBLE_EQ(groove->ring.groove.in(unit::millimetre), 23.9);
  EXPECT_NEAR(groove->depth.in(unit::millimetre), 0.55, 1e-9);
  EXPECT_NEAR(groove->least_edge.in(unit::millimetre), 1.65, 1e-9);
  EXPECT_NEAR(groove->deviations->lower.in(unit::millimetre), -0.21, 1e-9);
  EXPECT_EQ(groove->edge_source.basis, Basis::kFromMemory);
}

TEST(RetainingRings, InchSizesArePrintedRounded) {
  const auto groove = ring_groove(RingKind::kExternalInch, Diameter::of(5.0 / 16, unit::inch));
  ASSERT_TRUE(groove);
  EXPECT_DOUBLE_EQ(groove->ring.groove.in(unit::inch), 0.290);
  EXPECT_FALSE(ring_groove(RingKind::kInternalInch, Diameter::of(1, unit::inch))->deviations);
}

TEST(RetainingRings, SizesWithoutOneNameTheirNeighbours) {
  const auto none = ring_groove(RingKind::kExternalMetric, Diameter::of(23, unit::millimetre));
  ASSERT_FALSE(none);
  EXPECT_EQ(none.error().code, base::Code::kNotTabled);
  EXPECT_THAT(base::report(none.error()), HasSubstr("external ring of DIN 471"));
  EXPECT_THAT(base::report(none.error()), HasSubstr("22 mm, 24 mm"));
  const auto thin = ring_groove(RingKind::kInternalMetric, Diameter::of(5, unit::millimetre));
  EXPECT_THAT(base::report(thin.error()), HasSubstr("10 mm and larger"));
  const auto thick = ring_groove(RingKind::kExternalInch, Diameter::of(3, unit::inch));
  EXPECT_THAT(base::report(thick.error()), HasSubstr("up to 2.0000 in"));
}

// The ring lies in the groove with room, and the groove is below the shaft's surface or beyond the bore's.
TEST(RetainingRings, EveryRowIsOneThatFits) {
  for (const RetainingRing& ring : retaining_rings()) {
    const bool external = ring.kind == RingKind::kExternalMetric || ring.kind == RingKind::kExternalInch;
    EXPECT_GT(ring.groove_width, ring.thickness) << name_of(ring.kind) << " " << ring.nominal.base();
    EXPECT_EQ(ring.groove < ring.nominal, external) << name_of(ring.kind) << " " << ring.nominal.base();
    EXPECT_TRUE(ring_groove(ring.kind, ring.nominal)) << name_of(ring.kind) << " " << ring.nominal.base();
  }
}

TEST(RetainingRings, BySizeAsWritten) {
  EXPECT_NEAR(ring_groove(RingPlace::kOnShaft, "25 mm")->ring.groove.in(unit::millimetre), 23.9, 1e-9);
  EXPECT_NEAR(ring_groove(RingPlace::kInBore, "1 in")->ring.groove.in(unit::inch), 1.066, 1e-9);
  EXPECT_EQ(ring_groove(RingPlace::kInBore, "25").error().code, base::Code::kUnitMissing);
}

TEST(ShaftCards, WhatIsCutIntoAShaft) {
  const auto metric = shaft_card("30 mm");
  ASSERT_TRUE(metric);
  EXPECT_EQ(metric->parallel.size(), 1U);
  EXPECT_TRUE(metric->woodruff.empty());
  EXPECT_EQ(metric->rings.size(), 1U);
  EXPECT_TRUE(metric->not_tabled.empty());
  const auto inch = shaft_card("1 in");
  ASSERT_TRUE(inch);
  EXPECT_EQ(inch->parallel.size(), 2U);
  EXPECT_GT(inch->woodruff.size(), 10U);
  const auto odd = shaft_card("1.030 in");
  ASSERT_TRUE(odd);
  EXPECT_TRUE(odd->rings.empty());
  ASSERT_EQ(odd->not_tabled.size(), 1U);
  EXPECT_THAT(base::report(odd->not_tabled[0]), HasSubstr("1.0000 in, 1.0620 in"));
  EXPECT_FALSE(shaft_card("shaft"));
}

TEST(ORings, SectionsByDashNumber) {
  EXPECT_NEAR(o_ring_section(214)->section.in(unit::inch), 0.139, 1e-12);
  EXPECT_NEAR(o_ring_section(4)->section.in(unit::inch), 0.070, 1e-12);
  const auto none = o_ring_section(2);
  ASSERT_FALSE(none);
  EXPECT_EQ(none.error().code, base::Code::kNotTabled);
  EXPECT_THAT(base::report(none.error()), HasSubstr("-102 to -178"));
  EXPECT_FALSE(o_ring_section(-5));
}

TEST(ORings, GlandsSqueezeAndLeaveRoom) {
  for (const SealDuty duty : {SealDuty::kReciprocating, SealDuty::kStaticRadial, SealDuty::kStaticFace}) {
    for (const ORingSection& section : o_ring_sections()) {
      const auto fit = o_ring_gland(duty, section.section);
      ASSERT_TRUE(fit) << name_of(duty);
      EXPECT_GT(fit->squeeze_least, 8.0) << name_of(duty);
      EXPECT_LT(fit->squeeze_most, 35.0) << name_of(duty);
      EXPECT_LT(fit->fill_most, 100.0) << name_of(duty) << section.section.in(unit::inch);
      EXPECT_GT(fit->fill_most, 60.0) << name_of(duty);
    }
  }
  const auto none = o_ring_gland(SealDuty::kStaticFace, Length::of(0.5, unit::inch));
  ASSERT_FALSE(none);
  EXPECT_THAT(base::report(none.error()), HasSubstr("0.070 in, 0.103 in"));
}

// Sizes remembered one by one, beside the rule they are made by.
TEST(ORings, InsideDiametersByDashNumber) {
  struct Remembered {
    int dash;
    double inside_in;
  };
  for (const Remembered& one : {Remembered{6, 0.114},
                                {8, 0.176},
                                {10, 0.239},
                                {12, 0.364},
                                {28, 1.364},
                                {41, 2.989},
                                {50, 5.239},
                                {110, 0.362},
                                {116, 0.737},
                                {149, 2.799},
                                {201, 0.171},
                                {214, 0.984},
                                {222, 1.484},
                                {223, 1.609},
                                {247, 4.609},
                                {309, 0.412},
                                {324, 1.350},
                                {325, 1.475},
                                {349, 4.475}}) {
    EXPECT_NEAR(o_ring(one.dash)->inside.in(unit::inch), one.inside_in, 0.00051) << one.dash;
  }
  EXPECT_EQ(o_ring(214)->source.basis, Basis::kFromMemory);
  EXPECT_EQ(o_ring(151).error().code, base::Code::kNotTabled);
  EXPECT_THAT(base::report(o_ring(-1).error()), HasSubstr("006 to 009"));
}

TEST(ORings, ForABoreOrARod) {
  const auto piston = o_rings_for(SealPlace::kPiston, Diameter::of(1.25, unit::inch),
                                  SealDuty::kReciprocating, Length::of(0.139, unit::inch));
  ASSERT_TRUE(piston);
  // The groove is 1.25 - 2 x 0.121 = 1.008 in: 214 (0.984) is stretched 2.4 per cent.
  EXPECT_EQ(piston->front().ring.dash, 214);
  EXPECT_NEAR(piston->front().groove.in(unit::inch), 1.008, 1e-9);
  EXPECT_NEAR(piston->front().stretch, 2.44, 0.01);
  const auto rod = o_rings_for(SealPlace::kRod, Diameter::of(0.5, unit::inch), SealDuty::kStaticRadial,
                               Length::of(0.070, unit::inch));
  ASSERT_TRUE(rod);
  EXPECT_EQ(rod->front().ring.dash, 14);
  EXPECT_NEAR(rod->front().groove.in(unit::inch), 0.605, 1e-9);
  EXPECT_EQ(o_rings_for(SealPlace::kRod, Diameter::of(50, unit::inch), SealDuty::kStaticRadial,
                        Length::of(0.070, unit::inch))
                .error()
                .code,
            base::Code::kNotTabled);
}

}  // namespace
}  // namespace sparewright::handbook
