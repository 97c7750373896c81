// What a drawing says: every size once, and none that belongs to another hole.
#include "drawing/part_marks.hpp"

#include <set>

#include <fmt/ranges.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "dimensions.hpp"

namespace sparewright::drawing {
namespace {

using part::Feature;
using part::Hole;
using tests::sized;

Feature dowel(const std::string& name, double radius, double angle_rad, bool on_circle) {
  Hole hole;
  hole.make = part::HoleMake::kReamed;
  hole.diameter = sized(quantity::Kind::kDiameter, 6.0);
  hole.by_angle = part::ByAngle{"bore", sized(quantity::Kind::kRadius, radius), on_circle,
                                sized(quantity::Kind::kAngle, angle_rad)};
  return {name, hole};
}

std::vector<std::string> titles(const std::vector<Feature>& features) {
  part::Part part;
  part.features = features;
  std::vector<std::string> all;
  for (const NoteMark& note : marks_of(part, ledger::Ledger().keep(), quantity::UnitSystem::kMetric).notes)
    all.push_back(fmt::format("{}", fmt::join(note.lines, " ")));
  return all;
}

TEST(PartMarks, HolesAtRadiiOfTheirOwnHaveNotesOfTheirOwn) {
  const auto notes = titles({dowel("dowel 1", 30.0, 0.5, false), dowel("dowel 2", 25.0, 3.7, false)});
  ASSERT_EQ(notes.size(), 2U);
  EXPECT_THAT(notes[0], testing::StartsWith("dowel 1:"));
  EXPECT_THAT(notes[1], testing::StartsWith("dowel 2:"));
}

TEST(PartMarks, HolesOfOneBoltCircleShareANote) {
  Feature second = dowel("screw 2", 60.0, 0.5, true);
  std::get<Hole>(second.shape).by_angle->angle.and_more = 3.14;
  const auto notes = titles({dowel("screw 1", 60.0, 0.5, true), second});
  ASSERT_EQ(notes.size(), 1U);
  EXPECT_THAT(notes[0], testing::HasSubstr("2 x"));
  Feature other = dowel("screw 2", 70.0, 0.5, true);
  EXPECT_EQ(titles({dowel("screw 1", 60.0, 0.5, true), other}).size(), 2U);
}

TEST(PartMarks, ANoteSaysTheSurfaceAskedFor) {
  Feature bore = dowel("bore", 30.0, 0.5, false);
  bore.surface = "1.6 um";
  EXPECT_THAT(titles({bore}).front(), testing::HasSubstr("surface Ra 1.6 um"));
  Feature other = bore;
  other.name = "bore 2";
  other.surface = "0.8 um";
  bore.name = "bore 1";
  EXPECT_EQ(titles({bore, other}).size(), 2U) << "not alike";
}

// A plate 101.6 x 50.8 x 19.05 whose top is milled to 0.557-0.567 in: 14.148-14.402 mm, rounded inwards 14.15-14.40.
TEST(PartMarks, BothSystemsGiveTheOtherInBrackets) {
  part::Part part;
  part.blank.shape = part::BlankShape::kPlate;
  part.blank.material = "1018 cold drawn";
  for (std::size_t i = 0; i < 3; ++i) {
    const double mm = i == 0 ? 101.6 : i == 1 ? 50.8 : 19.05;
    part.blank.sizes.at(i).nominal = tests::typed(quantity::Kind::kLength, mm);
  }
  part.surroundings.general = part::usual_general_tolerances(quantity::UnitSystem::kInch);
  part::Flat flat;
  flat.leaves = sized(quantity::Kind::kLength, 0.562 * 25.4);
  const quantity::Typed room = tests::typed(quantity::Kind::kLength, 0.005 * 25.4);
  const quantity::Typed under = tests::typed(quantity::Kind::kLength, -room.base);
  flat.leaves.tolerance = {quantity::Deviations{under, room}, "±0.005"};
  part.features = {{"relief", flat}};
  ledger::Ledger ledger;
  ledger.declare(part::stages(part));
  const ledger::Snapshot figures = ledger.keep();
  const auto says = [&](bool both) {
    return marks_of(part, figures, quantity::UnitSystem::kInch, both).lengths.front().says;
  };
  EXPECT_THAT(says(false), testing::ElementsAre("0.567", "0.557"));
  EXPECT_THAT(says(true), testing::ElementsAre("0.567", "0.557", "[14.15-14.40]"));
}

}  // namespace
}  // namespace sparewright::drawing
