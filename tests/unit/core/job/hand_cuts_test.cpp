// What is sawn, filed, pressed in and joined: the sheets, and each check just inside and just outside.
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "hand_work.hpp"
#include "part_text.hpp"

namespace sparewright {
namespace {

using ledger::State;
using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;
using tests::form;
using tests::hand_setup;
using tests::hand_shop;
using tests::items_of;
using tests::judged;
using tests::line_with;
using tests::plate;
using tests::sheet_of;
using tests::step;
using tests::troubles_of;

std::string flat(const std::string& room) {
  return "[[feature]]\nname = \"it\"\nkind = \"flat\"\nside = \"right end\"\nleaves = { size = \"90\", tol = "
         "\"±" +
         room + "\" }\n";
}
std::string split(const std::string& rest) {
  return form("split", "side = \"right end\"\nfrom_side = \"40\"\n" + rest);
}
std::string blade(const std::string& width) {
  return "[[tool]]\nname = \"thick blade\"\nkind = \"saw blade\"\nwidth = \"" + width + "\"\n";
}

// --- sawn --------------------------------------------------------------------------------------------------------
TEST(Saw, AnEndIsSawnOnTheWasteSide) {
  auto job = judged(plate() + flat("2") + hand_setup(10, "saw", "top", step("it", "\"blade\"")), hand_shop());
  const auto sheet = sheet_of(job, 10);
  EXPECT_EQ(line_with(sheet, "mark it: a line all round, from the left end").x_reads, "90.00");
  EXPECT_THAT(items_of(sheet),
              Contains(HasSubstr("the piece towards the left end is kept. The saw's cut, 1.60")));
  EXPECT_EQ(line_with(sheet, "waste side").expect, "88.00-92.00");
  EXPECT_THAT(sheet.cautions, Contains(HasSubstr("Three teeth")));
}

// 0.5 to 1.5 from the line, so 1.0, not known to 0.57 (a half-width of 0.5, 19 times in 20).
TEST(HandCutCheck, WhatASawHolds) {
  const auto with = [](const std::string& room) {
    return plate() + flat(room) + hand_setup(10, "saw", "top", step("it", "\"blade\""));
  };
  auto inside = judged(with("2"), hand_shop());
  EXPECT_EQ(inside.state("the saw holds it", "it"), State::kOk);
  auto barely = judged(with("1.2"), hand_shop());
  EXPECT_EQ(barely.state("the saw holds it", "it"), State::kClose);
  auto outside = judged(with("0.9"), hand_shop());
  EXPECT_EQ(outside.state("the saw holds it", "it"), State::kNo);
}

// 0.05 to 0.1 from the line, so 0.075, not known to 0.028.
TEST(HandCutCheck, WhatAFileHolds) {
  const auto with = [](const std::string& room) {
    return plate() + flat(room) + hand_setup(10, "bench", "right end", step("it", "\"file\""));
  };
  auto inside = judged(with("0.2"), hand_shop());
  EXPECT_EQ(inside.state("the file holds it", "it"), State::kOk);
  auto outside = judged(with("0.07"), hand_shop());
  EXPECT_EQ(outside.state("the file holds it", "it"), State::kNo);
  EXPECT_THAT(items_of(sheet_of(inside, 10)), Contains(HasSubstr("10.00 is much to file")));  // 100 to 90
}

TEST(Saw, ASplitIsSawnBetweenItsLines) {  // 40 and 43 from the end; (3 - 1.6) / 2 = 0.7 to face off each
  auto job = judged(plate() + split("width = \"3\"") + hand_setup(10, "saw", "top", step("it", "\"blade\"")),
                    hand_shop());
  const auto sheet = sheet_of(job, 10);
  const route::Line marked = line_with(sheet, "two lines all round, from the right end");
  EXPECT_EQ(marked.x_reads, "40.00");
  EXPECT_EQ(marked.y_reads, "43.00");
  EXPECT_THAT(items_of(sheet), Contains(HasSubstr("match-mark both pieces across the lines")));
  EXPECT_THAT(items_of(sheet), Contains(HasSubstr("face both pieces to their lines, 0.70 off each")));
}

TEST(HandCutCheck, TheSawsCutFitsTheSplit) {  // 3 and 0.25 of general tolerance
  const std::string text =
      plate() + split("width = \"3\"") + hand_setup(10, "saw", "top", step("it", "\"thick blade\""));
  auto inside = judged(text, hand_shop(blade("3.2")));
  EXPECT_EQ(inside.state("the saw's cut fits it", "it"), State::kOk);
  auto outside = judged(text, hand_shop(blade("3.3")));
  EXPECT_EQ(outside.state("the saw's cut fits it", "it"), State::kNo);
}

TEST(HandCutCheck, ASlitIsAsWideAsItsSaw) {  // 2 and 0.25 either way
  const std::string text = plate() + tests::bore() +
                           form("slit", "in = \"bore\"\nside = \"left end\"\nwidth = \"2\"") +
                           hand_setup(10, "saw", "left end", step("it", "\"thick blade\""));
  auto inside = judged(text, hand_shop(blade("1.8")));
  EXPECT_EQ(inside.state("the saw's cut fits it", "it"), State::kOk);
  auto outside = judged(text, hand_shop(blade("1.7")));
  EXPECT_EQ(outside.state("the saw's cut fits it", "it"), State::kNo);
}

TEST(ReachCheck, TheBladeComesDownAlongTheCut) {
  const auto held = [](const std::string& up) {
    return plate() + split("width = \"3\"") + hand_setup(10, "saw", up, step("it", "\"blade\""));
  };
  auto along = judged(held("front"), hand_shop());
  EXPECT_EQ(along.worse_than_close(), 0U);
  auto across = judged(held("right end"), hand_shop());
  EXPECT_EQ(across.state("the saw reaches it", "it"), State::kNo);
}

// --- the bench ---------------------------------------------------------------------------------------------------
TEST(Bench, AnOutlineIsMarkedCornerByCorner) {
  auto job =
      judged(plate() +
                 form("profile",
                      "takes = \"outside\"\ncorner = [{ x = \"10\", y = \"10\" }, { x = \"90\", y = \"10\", "
                      "fillet = \"8\" }, { x = \"50\", y = \"50\" }]") +
                 hand_setup(10, "bench", "top", step("it", "\"blade\", \"file\"")),
             hand_shop());
  const auto sheet = sheet_of(job, 10);
  const route::Line corner = line_with(sheet, "mark corner 2 of it");
  EXPECT_EQ(corner.x_reads, "90.00");
  EXPECT_EQ(corner.y_reads, "10.00");
  EXPECT_THAT(corner.says, HasSubstr("rounded to radius 8.00"));
  EXPECT_EQ(job.worse_than_close(), 0U);
}

TEST(Bench, AThreadIsCutWithADie) {
  auto job = judged(tests::bar() +
                        form("thread",
                             "side = \"right end\"\nthread = \"M8x1.25-6g\"\ndiameter = \"7.9\"\n"
                             "length = \"20\"") +
                        hand_setup(10, "bench", "right end", step("it", "\"die\"")),
                    hand_shop());
  EXPECT_THAT(line_with(sheet_of(job, 10), "die M8x1.25-6g").says, HasSubstr("20.00 long"));
}

std::string bushed() {
  return plate() +
         "[[feature]]\nname = \"hub\"\nkind = \"hole\"\nhow = \"reamed\"\nat.x = \"30\"\nat.y = "
         "\"30\"\ndiameter "
         "= \"12 H7\"\n" +
         form("bush",
              "in = \"hub\"\nhow = \"pressed in\"\ndiameter = \"12 s6\"\nlength = \"20\"\nbore = { size = "
              "\"10\", tol = \"+0.03/-0.00\", duty = \"fits\", with = \"caliper\" }");
}

// ISO 286: 12 H7 is 0 to +0.018, 12 s6 +0.028 to +0.039: 0.010 to 0.039 tight.
TEST(Bench, ABushIsProvedPressedAndReamed) {
  auto job =
      judged(bushed() + hand_setup(10, "bench", "top", step("it", "\"press\", \"reamer 10\"")), hand_shop());
  const auto items = items_of(sheet_of(job, 10));
  EXPECT_THAT(items, Contains(HasSubstr("Bush less hole must be 0.010 to 0.039. Loose: do NOT press")));
  EXPECT_THAT(items, Contains(HasSubstr("the force is NOT KNOWN")));
  EXPECT_EQ(line_with(sheet_of(job, 10), "it, reamer 10").expect, "10.000-10.030");
  EXPECT_EQ(job.state("the reamer has its bore", "it"), State::kOk);
}

TEST(Bench, AJointIsClosedAndProved) {
  auto job = judged(plate() + split("width = \"3\"\nshim = \"0.5\"") +
                        hand_setup(10, "saw", "top", step("it", "\"blade\"")) +
                        hand_setup(20, "bench", "top", step("it")),
                    hand_shop());
  const auto items = items_of(sheet_of(job, 20));
  EXPECT_THAT(items, Contains(HasSubstr("shims of 0.50 between")));
  EXPECT_THAT(items, Contains(HasSubstr("it is 2.50 shorter across the joint")));
  EXPECT_THAT(items, Contains(HasSubstr("thinnest feeler")));
}

// --- texts that cannot be meant ----------------------------------------------------------------------------------
TEST(Joining, IsRefusedWhereNothingIsJoined) {
  const std::string sawn = plate() + split("width = \"3\"");
  EXPECT_THAT(troubles_of(sawn + hand_setup(10, "bench", "top", step("it")), hand_shop()), IsEmpty());
  EXPECT_THAT(troubles_of(sawn + hand_setup(10, "bench", "top", step("it") + step("it")), hand_shop()),
              HasSubstr("each joint once"));
  const std::string lathe =
      "[[setup]]\nop = 10\nname = \"test\"\nmachine = \"lathe\"\nhold = { in = \"chuck\", free_end = \"right "
      "end\" }\n";
  EXPECT_THAT(troubles_of(sawn + lathe + step("it"), hand_shop()), HasSubstr("pieces are joined at a bench"));
}

}  // namespace
}  // namespace sparewright
