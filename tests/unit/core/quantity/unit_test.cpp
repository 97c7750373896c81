#include "core/quantity/unit.hpp"

#include <set>
#include <string>

#include <gtest/gtest.h>

namespace sparewright::quantity {
namespace {

std::vector<Kind> all_kinds() {
  std::vector<Kind> kinds;
  for (int k = 0; k < kKinds; ++k)
    kinds.push_back(static_cast<Kind>(k));
  return kinds;
}

TEST(UnitTable, EveryUnitHasTheDimensionOfItsKind) {
  for (const Kind kind : all_kinds()) {
    ASSERT_FALSE(units_of(kind).empty()) << name_of(kind);
    for (const UnitWords& words : units_of(kind)) {
      EXPECT_EQ(words.unit.dimension, dimension_of(kind)) << name_of(kind) << ": " << words.unit.symbol;
      EXPECT_EQ(words.spellings.front(), words.unit.symbol)
          << name_of(kind) << ": the first spelling is printed";
    }
  }
}

TEST(UnitTable, NoSpellingNamesTwoUnitsOfAKind) {
  for (const Kind kind : all_kinds()) {
    for (const UnitWords& words : units_of(kind)) {
      for (const std::string_view spelling : words.spellings) {
        std::string capitals(spelling);
        for (char& c : capitals) {
          if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
        }
        for (const std::string& written : {std::string(spelling), capitals}) {
          for (const UnitWords& other : units_of(kind)) {
            if (other.unit == words.unit) continue;
            for (const std::string_view theirs : other.spellings) {
              EXPECT_FALSE(is_spelled(written, spelling) && is_spelled(written, theirs))
                  << written << " could be " << words.unit.symbol << " or " << other.unit.symbol;
            }
          }
        }
      }
    }
  }
}

TEST(UnitTable, NoUnitOfTheSameKindHasTheSymbolOfAnother) {
  for (const Kind kind : all_kinds()) {
    std::set<std::string_view> symbols;
    for (const UnitWords& words : units_of(kind))
      EXPECT_TRUE(symbols.insert(words.unit.symbol).second);
  }
}

TEST(UnitTable, PrintedUnitsCanBeReadBack) {
  for (const Kind kind : all_kinds()) {
    for (const auto system : {UnitSystem::kInch, UnitSystem::kMetric}) {
      const Unit printed = display_unit(kind, system);
      EXPECT_EQ(printed.dimension, dimension_of(kind));
      const auto found = find_unit(kind, printed.symbol);
      ASSERT_TRUE(found) << printed.symbol;
      EXPECT_EQ(*found, printed);
    }
  }
}

TEST(Spelling, TakesCapitalsWhereTheyTellNothingApart) {
  EXPECT_TRUE(is_spelled("IN", "in"));
  EXPECT_TRUE(is_spelled("MM", "mm"));
  EXPECT_TRUE(is_spelled("Inch", "inch"));
  EXPECT_TRUE(is_spelled("FT/MIN", "ft/min"));
  EXPECT_FALSE(is_spelled("Mm", "mm"));  // a megametre
  EXPECT_FALSE(is_spelled("M", "m"));
  EXPECT_FALSE(is_spelled("iN", "in"));
  EXPECT_FALSE(is_spelled("INch", "inch"));
  EXPECT_FALSE(is_spelled("mpa", "MPa"));
  EXPECT_FALSE(is_spelled("MPA", "MPa"));
  EXPECT_FALSE(is_spelled("KN", "kN"));
  EXPECT_FALSE(is_spelled("inc", "inch"));
  EXPECT_FALSE(is_spelled("", "in"));
}

TEST(FindUnit, LooksOnlyAmongTheKind) {
  EXPECT_EQ(find_unit(Kind::kLength, "'"), std::optional<Unit>(unit::foot));
  EXPECT_EQ(find_unit(Kind::kAngle, "'"), std::optional<Unit>(unit::arc_minute));
  EXPECT_EQ(find_unit(Kind::kMass, "lb"), std::optional<Unit>(unit::pound));
  EXPECT_EQ(find_unit(Kind::kForce, "lb"), std::optional<Unit>(unit::pound_force));
  EXPECT_EQ(find_unit(Kind::kLength, "deg"), std::nullopt);
  EXPECT_EQ(find_unit(Kind::kLength, "furlong"), std::nullopt);
}

TEST(UnitEquality, TellsATemperatureFromADifference) {
  EXPECT_FALSE(Unit(unit::degree_celsius) == Unit(unit::celsius_difference));
  EXPECT_TRUE(Unit(unit::inch) == *find_unit(Kind::kDiameter, "inches"));
}

TEST(SpellingsOf, ListsWhatIsAccepted) {
  EXPECT_EQ(spellings_of(Kind::kLength), "in, mm, thou, uin, ft, um, cm, m");
  EXPECT_EQ(spellings_of(Kind::kAngle), "deg, arcmin, arcsec, rad, turn");
  EXPECT_EQ(spellings_of(Kind::kNumber), "%");
}

TEST(BareUnit, IsKnownOnlyWhereASystemHasOne) {
  EXPECT_EQ(bare_unit(Kind::kDiameter, UnitSystem::kInch), std::optional<Unit>(unit::inch));
  EXPECT_EQ(bare_unit(Kind::kDiameter, UnitSystem::kMetric), std::optional<Unit>(unit::millimetre));
  EXPECT_EQ(bare_unit(Kind::kAngle, UnitSystem::kMetric), std::optional<Unit>(unit::degree));
  EXPECT_EQ(bare_unit(Kind::kFeedPerTurn, UnitSystem::kInch), std::optional<Unit>(unit::inch_per_turn));
  for (const Kind kind : {Kind::kForce, Kind::kPressure, Kind::kTorque, Kind::kPower, Kind::kTemperature,
                          Kind::kMass, Kind::kSpeed, Kind::kTime, Kind::kTemperatureDifference}) {
    EXPECT_EQ(bare_unit(kind, UnitSystem::kInch), std::nullopt) << name_of(kind);
  }
}

TEST(KindTable, NamesEveryKindOnce) {
  std::set<std::string_view> names;
  for (const Kind kind : all_kinds()) {
    EXPECT_TRUE(names.insert(code_name(kind)).second);
    const std::string said(name_of(kind));
    EXPECT_TRUE(said.starts_with("a ") || said.starts_with("an ")) << said;
  }
  EXPECT_TRUE(is_length_like(Kind::kRadius));
  EXPECT_FALSE(is_length_like(Kind::kAngle));
  EXPECT_FALSE(is_length_like(Kind::kArea));
}

}  // namespace
}  // namespace sparewright::quantity
