// One screw by name: every dimension of it with its holes and its strength.
#include "core/handbook/screw_card.hpp"

#include <variant>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"

namespace sparewright::handbook {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
namespace unit = quantity::unit;

TEST(ScrewCards, A516SocketHead) {
  const auto card = screw_card("5/16-18 socket head");
  ASSERT_TRUE(card);
  EXPECT_EQ(card->screw.thread.name, "5/16-18 UNC");
  const auto& head = std::get<SocketHeadScrew>(card->head);
  EXPECT_NEAR(head.head_max.in(unit::inch), 0.469, 1e-12);
  EXPECT_EQ(head.key_name, "1/4 in");
  ASSERT_EQ(card->clearance_holes.size(), 3U);
  EXPECT_NEAR(card->clearance_holes[1].hole.in(unit::inch), 0.3438, 1e-12);
  EXPECT_EQ(card->counterbores.size(), 4U);
  EXPECT_EQ(card->tap_drill->choice.drill.name, "letter F");
  EXPECT_EQ(card->grade->grade, "A574");
  // 0.0524 in2 at 140 ksi: 7,340 lbf.
  EXPECT_NEAR(card->loads->proof.in(unit::pound_force), 7340, 5);
  EXPECT_TRUE(card->oiled);
  EXPECT_THAT(card->screw.assumed, Contains(HasSubstr("A574")));
}

TEST(ScrewCards, OtherHeads) {
  const auto flat = screw_card("1/4-20 flat head");
  ASSERT_TRUE(flat);
  EXPECT_NEAR(flat->sink->diameter.in(unit::inch), 0.531, 1e-12);
  EXPECT_FALSE(flat->grade);
  EXPECT_THAT(flat->screw.assumed, Contains("flat head taken as the socket screw"));
  const auto hex = screw_card("1/2-13 UNC-2A Hex Head Cap Screw", "grade 5");
  ASSERT_TRUE(hex);
  EXPECT_NEAR(hex->nut->flats_max.in(unit::inch), 0.75, 1e-12);
  EXPECT_TRUE(hex->washer);
  EXPECT_TRUE(hex->face);
  EXPECT_EQ(hex->grade->grade, "grade 5");
  const auto set = screw_card("M6 set screw");
  ASSERT_TRUE(set);
  EXPECT_TRUE(set->clearance_holes.empty());
  EXPECT_NEAR(std::get<SetScrew>(set->head).key.in(unit::millimetre), 3, 1e-12);
  EXPECT_EQ(screw_card("M8 button head", "10.9")->grade->grade, "class 10.9");
  EXPECT_EQ(screw_card("1/4 flat head machine screw")->screw.head, HeadKind::kFlatMachineHead);
}

TEST(ScrewCards, ASizeAloneIsTheCoarseThread) {
  const auto ten = read_named_screw("10 SHCS");
  ASSERT_TRUE(ten);
  EXPECT_EQ(ten->thread.name, "#10-24 UNC");
  EXPECT_THAT(ten->assumed,
              ElementsAre("10 read as the numbered size #10", "#10 taken as the coarse thread #10-24 UNC"));
  EXPECT_EQ(read_named_screw("5/16\xC2\xA0socket\xC2\xA0head")->thread.name, "5/16-18 UNC");
}

TEST(ScrewCards, WhatIsNoScrewIsSaid) {
  const auto none = screw_card("5/16-18 round head");
  ASSERT_FALSE(none);
  EXPECT_EQ(none.error().code, base::Code::kNameUnknown);
  EXPECT_THAT(base::report(none.error()), HasSubstr("5/16-18 socket head"));
  EXPECT_EQ(screw_card("5/16-18").error().code, base::Code::kNameUnknown);
  EXPECT_EQ(screw_card("socket head").error().code, base::Code::kNameUnknown);
  EXPECT_EQ(screw_card("").error().code, base::Code::kNameUnknown);
  EXPECT_EQ(screw_card("M30 socket head").error().code, base::Code::kNotTabled);
  EXPECT_EQ(screw_card("M8 socket head", "grade 5").error().code, base::Code::kNotTabled);
}

}  // namespace
}  // namespace sparewright::handbook
