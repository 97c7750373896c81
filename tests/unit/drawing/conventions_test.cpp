// Threads and knurls are shown by thin lines.
#include "drawing/conventions.hpp"

#include <cmath>
#include <numbers>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "dimensions.hpp"

namespace sparewright::drawing {
namespace {

using part::Face;
using quantity::Kind;
using tests::sized;
using tests::typed;

// A round bar 25 by 200.
part::Part bar() {
  part::Part part;
  part.blank.shape = part::BlankShape::kRoundBar;
  part.blank.material = "1018 cold drawn";
  for (std::size_t i = 0; i < 3; ++i)
    part.blank.sizes.at(i).nominal = typed(Kind::kLength, i == 0 ? 200.0 : 25.0);
  part.surroundings.general = part::usual_general_tolerances(quantity::UnitSystem::kInch);
  part.surroundings.system = quantity::UnitSystem::kMetric;
  return part;
}

part::Feature formed(part::Form form, Face end, const std::string& thread,
                     const std::vector<std::pair<std::string, double>>& sizes) {
  part::Formed f;
  f.form = form;
  f.side = end;
  f.thread = thread;
  for (const auto& [name, mm] : sizes)
    f.sizes[name] = sized(name == "diameter" ? Kind::kDiameter : Kind::kLength, mm);
  return {"feature", f};
}

PartViews shown(part::Part part, const part::Feature& feature) {
  part.features = {feature};
  ledger::Ledger ledger;
  auto stages = part::stages(part);
  std::erase_if(stages, [](const ledger::Stage& stage) { return stage.name.starts_with("part"); });
  ledger.declare(std::move(stages));
  PartViews views;
  views.top = View{};
  views.end = View{};
  add_conventions(part, ledger.keep(), views);
  return views;
}

// M16x1.5: the root is 17/24 H = 0.6134 P deep, 16 - 2 x 0.6134 x 1.5 = 14.160.
TEST(Conventions, AnOutsideThreadHasItsRootThin) {
  const PartViews views = shown(
      bar(), formed(part::Form::kThread, Face::kRightEnd, "M16x1.5", {{"diameter", 16.0}, {"length", 22.0}}));
  ASSERT_EQ(views.front.thin_lines.size(), 2U);
  for (const ViewLine& line : views.front.thin_lines) {
    EXPECT_NEAR(std::abs(line.from.v - 12.5), 7.08, 5e-4);
    EXPECT_NEAR(line.from.u, 200.0, 1e-9);
    EXPECT_NEAR(line.to.u, 178.0, 1e-9);
  }
  ASSERT_EQ(views.end->thin_arcs.size(), 1U);
  EXPECT_NEAR(views.end->thin_arcs[0].radius_mm, 7.08, 5e-4);
  EXPECT_NEAR(views.end->thin_arcs[0].to_rad - views.end->thin_arcs[0].from_rad, 1.5 * std::numbers::pi,
              1e-9);
}

TEST(Conventions, AtTheFarEndTheThreadIsNotSeenFromTheRight) {
  const PartViews views = shown(bar(), formed(part::Form::kThread, Face::kLeftEnd, "5/8-11 UNC",
                                              {{"diameter", 15.8}, {"length", 22.0}}));
  ASSERT_EQ(views.front.thin_lines.size(), 2U);
  EXPECT_NEAR(views.front.thin_lines[0].to.u, 22.0, 1e-9);
  EXPECT_TRUE(views.end->thin_arcs.empty());
}

TEST(Conventions, AThreadThatCannotBeReadHasItsNoteAlone) {
  const PartViews views = shown(bar(), formed(part::Form::kThread, Face::kRightEnd, "as the nut",
                                              {{"diameter", 16.0}, {"length", 22.0}}));
  EXPECT_TRUE(views.front.thin_lines.empty());
}

TEST(Conventions, AKnurlStaysWithinItsStretch) {
  const PartViews views =
      shown(bar(), formed(part::Form::kKnurl, Face::kLeftEnd, "",
                          {{"diameter", 25.0}, {"pitch", 1.0}, {"from end", 8.0}, {"length", 40.0}}));
  EXPECT_GE(views.front.thin_lines.size(), 16U);
  for (const ViewLine& line : views.front.thin_lines) {
    for (const shape::FlatPoint& p : {line.from, line.to}) {
      EXPECT_GE(p.u, 8.0 - 1e-9);
      EXPECT_LE(p.u, 48.0 + 1e-9);
      EXPECT_LE(std::abs(p.v - 12.5), 12.5 + 1e-9);
    }
    EXPECT_NEAR(std::abs((line.to.v - line.from.v) / (line.to.u - line.from.u)),
                std::tan(std::numbers::pi / 6.0), 1e-9);
  }
}

// Seen from above: the thread's major diameter about the tap drill's circle.
TEST(Conventions, ATappedHoleHasItsMajorDiameterThin) {
  part::Part plate = bar();
  plate.blank.shape = part::BlankShape::kPlate;
  part::Hole hole;
  hole.thread = "M6";
  hole.diameter = sized(Kind::kDiameter, 5.0);
  hole.at[part::Axis::kX] = {sized(Kind::kLength, 60.0), Face::kLeftEnd, false};
  hole.at[part::Axis::kY] = {sized(Kind::kLength, 10.0), Face::kFront, false};
  const PartViews views = shown(plate, {"tapped", hole});
  ASSERT_EQ(views.top->thin_arcs.size(), 1U);
  EXPECT_NEAR(views.top->thin_arcs[0].radius_mm, 3.0, 1e-9);
  EXPECT_NEAR(views.top->thin_arcs[0].centre.u, 60.0, 1e-9);
  EXPECT_NEAR(views.top->thin_arcs[0].centre.v, 10.0, 1e-9);
}

}  // namespace
}  // namespace sparewright::drawing
