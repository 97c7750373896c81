#include "core/handbook/materials.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Length;
using testing::HasSubstr;
namespace unit = quantity::unit;

std::string found(std::string_view text) {
  const auto material = find_material(text);
  if (!material) return base::sentence(material.error());
  return to_string(material->material) + (material->assumed.empty() ? "" : " (" + material->assumed + ")");
}

TEST(Materials, AreFoundByTheirWords) {
  EXPECT_EQ(found("1018 cold drawn"), "steel 1018, cold drawn");
  EXPECT_EQ(found("CD 1018 steel"), "steel 1018, cold drawn");
  EXPECT_EQ(found("AISI 1018, hot-rolled"), "steel 1018, hot rolled");
  EXPECT_EQ(found("aluminum 6061-T6"), "aluminium 6061, T6");
  EXPECT_EQ(found("12L14"), "steel 12L14, cold drawn");
  EXPECT_EQ(found("360 brass"), "brass C360, half hard bar");
  EXPECT_EQ(found("4140 prehardened"), "steel 4140, prehardened 28-32 HRC");
}

TEST(Materials, WhatIsAssumedIsSaid) {
  EXPECT_EQ(found("1018"), "steel 1018, cold drawn (no condition written: cold drawn, the usual one)");
  EXPECT_EQ(found("mild steel"), "steel 1018, cold drawn ('mild steel' taken as steel 1018, cold drawn)");
  EXPECT_EQ(found("SAE 660"),
            "bronze C932, continuous cast ('SAE 660' taken as bronze C932, continuous cast)");
  EXPECT_EQ(found("17-4 PH"),
            "stainless 17-4PH, condition A ('17-4 PH' taken as stainless 17-4PH, condition A)");
}

TEST(Materials, AWordThatFitsSeveralNamesFails) {
  const auto steel = find_material("steel");
  ASSERT_FALSE(steel);
  EXPECT_EQ(steel.error().code, base::Code::kNameUnknown);
  EXPECT_THAT(base::report(steel.error()), HasSubstr("steel 1018, cold drawn"));
  EXPECT_FALSE(find_material(""));
  EXPECT_FALSE(find_material("unobtainium"));
  EXPECT_THAT(base::report(find_material("steel 1018, cold drwn").error()),
              HasSubstr("did you mean 'steel 1018, cold drawn'?"));
}

// Every trade word leads to a material that is in the table.
TEST(Materials, TradeWordsLeadSomewhere) {
  for (const char* word :
       {"mild steel", "cold rolled steel", "crs", "hot rolled steel", "key steel", "leaded steel",
        "drill rod", "silver steel", "bearing bronze", "SAE 660", "free cutting brass", "cartridge brass",
        "cast iron", "nodular iron", "acetal", "nylon", "17-4 PH"}) {
    const auto material = find_material(word);
    ASSERT_TRUE(material) << word;
    EXPECT_THAT(material->assumed, HasSubstr("taken as")) << word;
  }
}

TEST(Materials, EveryOneIsFoundByItsOwnName) {
  for (const Material& material : materials()) {
    const auto again = find_material(to_string(material));
    ASSERT_TRUE(again) << to_string(material);
    EXPECT_EQ(to_string(again->material), to_string(material));
    EXPECT_GT(material.density, quantity::Density()) << to_string(material);
  }
}

TEST(Materials, PropertiesSayWhereTheyComeFrom) {
  const Material steel = find_material("1018 cold drawn")->material;
  EXPECT_DOUBLE_EQ(steel.density.in(unit::gram_per_cubic_centimetre), 7.87);
  EXPECT_DOUBLE_EQ(steel.modulus->in(unit::gigapascal), 205);
  EXPECT_EQ(source_of(steel, MaterialProperty::kDensity).basis, Basis::kFromMemory);
  EXPECT_EQ(source_of(steel, MaterialProperty::kYield).basis, Basis::kPublished);
  EXPECT_EQ(work_of(steel).group, WorkGroup::kLowCarbonSteel);
  EXPECT_DOUBLE_EQ(work_of(steel).hardness->low, 126);
  EXPECT_FALSE(work_of(find_material("brass C360")->material).hardness);
}

TEST(BarStock, ColdDrawnSteelIsAllMinus) {
  const Material steel = find_material("1018 cold drawn")->material;
  const auto round = bar_tolerance(*steel.inch_bar, BarForm::kRound, Length::of(1, unit::inch));
  EXPECT_EQ(round->plus, Length());
  EXPECT_NEAR(round->minus.in(unit::inch), 0.002, 1e-12);
  const auto flat = bar_tolerance(*steel.inch_bar, BarForm::kFlat, Length::of(2.5, unit::inch));
  EXPECT_NEAR(flat->minus.in(unit::inch), 0.005, 1e-12);
  EXPECT_NEAR(
      bar_tolerance(*steel.inch_bar, BarForm::kFlat, Length::of(20, unit::inch))->minus.in(unit::inch), 0.013,
      1e-12);  // no upper end
}

TEST(BarStock, AluminiumRangesStartAtTheirFirstSize) {
  const auto minus_in = [](double inches) {
    return bar_tolerance(BarStandard::kExtrudedAluminium, BarForm::kSquare, Length::of(inches, unit::inch))
        ->minus.in(unit::inch);
  };
  EXPECT_NEAR(minus_in(0.499), 0.008, 1e-12);
  EXPECT_NEAR(minus_in(0.4995), 0.008, 1e-12);
  EXPECT_NEAR(minus_in(0.5), 0.009, 1e-12);
}

TEST(BarStock, WhatIsNotTabledSaysWhatIs) {
  const auto large = bar_tolerance(BarStandard::kA108LowCarbon, BarForm::kRound, Length::of(10, unit::inch));
  EXPECT_EQ(large.error().code, base::Code::kNotTabled);
  EXPECT_THAT(base::report(large.error()), HasSubstr("9.0000 in"));
  EXPECT_FALSE(
      bar_tolerance(BarStandard::kEn10278Turned, BarForm::kHexagon, Length::of(10, unit::millimetre)));
  EXPECT_FALSE(bar_tolerance(BarStandard::kA108LowCarbon, BarForm::kRound, Length()));
  EXPECT_FALSE(bar_tolerance(BarStandard::kEn10278Drawn, BarForm::kRound, Length::of(1, unit::millimetre)));
}

}  // namespace
}  // namespace sparewright::handbook
