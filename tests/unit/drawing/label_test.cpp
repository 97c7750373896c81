#include "drawing/label.hpp"

#include <gtest/gtest.h>

#include "fixed_ruler.hpp"

namespace sparewright::drawing {
namespace {

const tests::FixedRuler kRuler;
constexpr TextStyle kStyle{2.5, Face::kRegular};  // 2 mm a character, 3.5 high

Label named(const std::string& name, Disc disc) {
  return {{name}, kStyle, disc, std::nullopt, true};
}

Ground empty_ground(std::vector<Disc> rounds) {
  Ground ground;
  ground.area = {0.0, 0.0, 80.0, 50.0};
  ground.rounds = std::move(rounds);
  return ground;
}

TEST(Labels, StandCloseByWithoutALeaderWhereThereIsRoom) {
  const Disc hole{{30.0, 25.0}, 3.0};
  const auto standing = place_labels(kRuler, {named("bore", hole)}, empty_ground({hole}));
  ASSERT_TRUE(standing[0].has_value());
  EXPECT_FALSE(standing[0]->leader.has_value());
  EXPECT_LT(distance(standing[0]->box, hole.centre), hole.radius_mm + 1.5);
}

TEST(Labels, TakeALeaderWhereAnotherHoleIsAsNear) {
  const Disc hole{{30.0, 25.0}, 2.0};
  std::vector<Disc> all{hole};
  for (const double x : {24.5, 30.0, 35.5}) {  // a ring of other holes round it
    for (const double y : {19.5, 25.0, 30.5}) {
      if (x != 30.0 || y != 25.0) all.push_back({{x, y}, 1.4});
    }
  }
  const auto standing = place_labels(kRuler, {named("bore", hole)}, empty_ground(all));
  ASSERT_TRUE(standing[0].has_value());
  ASSERT_TRUE(standing[0]->leader.has_value());
  EXPECT_NEAR(distance(standing[0]->leader->to, hole.centre), hole.radius_mm, 1e-9);
  for (std::size_t i = 1; i < all.size(); ++i)
    EXPECT_FALSE(crosses(*standing[0]->leader, all[i]));
}

TEST(Labels, StandWithinWhereTheyMust) {
  const Box jaw{0.0, 0.0, 80.0, 8.0};
  const Label label{{"FIXED JAW"}, kStyle, {jaw.middle(), 0.0}, jaw, false};
  Ground ground = empty_ground({});
  ground.hatched = {jaw};
  auto standing = place_labels(kRuler, {label}, ground);
  ASSERT_TRUE(standing[0].has_value());
  EXPECT_EQ(standing[0]->box.middle(), jaw.middle());
  ground.taken = {{30.0, 0.0, 50.0, 8.0}};
  standing = place_labels(kRuler, {label}, ground);
  ASSERT_TRUE(standing[0].has_value());
  EXPECT_TRUE(holds(jaw, standing[0]->box));
  EXPECT_FALSE(overlap(standing[0]->box, ground.taken[0]));
  ground.taken = {jaw};
  EXPECT_FALSE(place_labels(kRuler, {label}, ground)[0].has_value());
}

TEST(Labels, KeepOutOfHatching) {
  const Disc hole{{30.0, 25.0}, 3.0};
  Ground ground = empty_ground({hole});
  ground.hatched = {{0.0, 10.0, 80.0, 50.0}};
  const auto standing = place_labels(kRuler, {named("bore", hole)}, ground);
  ASSERT_TRUE(standing[0].has_value());
  EXPECT_LE(standing[0]->box.bottom_mm, 10.0);
  EXPECT_TRUE(standing[0]->leader.has_value());
}

TEST(Labels, SayWhereThereIsNoRoom) {
  const Disc hole{{30.0, 25.0}, 3.0};
  const Label endless = named(std::string(60, 'x'), hole);
  EXPECT_FALSE(place_labels(kRuler, {endless}, empty_ground({hole}))[0].has_value());
}

TEST(Labels, DrawLinesOfTextWithinTheirBox) {
  const Label label{{"idler", "step"}, kStyle, {{40.0, 25.0}, 2.0}, std::nullopt, true};
  const Standing standing{{10.0, 20.0, 20.0, 27.0}, Segment{{20.6, 23.5}, {38.0, 24.8}}};
  DisplayList list;
  add_label(list, kRuler, label, standing);
  ASSERT_EQ(list.size(), 4U);
  const auto& first = std::get<Text>(list[0]);
  const auto& second = std::get<Text>(list[1]);
  EXPECT_TRUE(holds(standing.box, first.box));
  EXPECT_TRUE(holds(standing.box, second.box));
  EXPECT_FALSE(overlap(first.box, second.box));
  EXPECT_EQ(first.anchor, Anchor::kRight);  // towards what it names
  EXPECT_EQ(std::get<Filled>(list[3]).corners[0], standing.leader->to);
}

}  // namespace
}  // namespace sparewright::drawing
