// What a drawing says: every size once, and none that belongs to another hole.
#include "drawing/part_marks.hpp"

#include <set>

#include <fmt/ranges.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sparewright::drawing {
namespace {

using part::Dimension;
using part::Feature;
using part::Hole;

Dimension typed(quantity::Kind kind, double base, const std::string& as) {
  Dimension d;
  d.kind = kind;
  quantity::Typed size;
  size.kind = kind;
  size.base = base;
  size.typed = as;
  d.size = size;
  d.typed = as;
  return d;
}

Feature dowel(const std::string& name, double radius, double angle_rad, bool on_circle) {
  Hole hole;
  hole.make = part::HoleMake::kReamed;
  hole.diameter = typed(quantity::Kind::kDiameter, 6.0, "6");
  hole.by_angle = part::ByAngle{"bore", typed(quantity::Kind::kRadius, radius, "r"), on_circle,
                                typed(quantity::Kind::kAngle, angle_rad, "a")};
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

}  // namespace
}  // namespace sparewright::drawing
