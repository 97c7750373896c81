// The order of work: what has to come before what, each in the right order and in a wrong one.
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "hand_work.hpp"
#include "lathe_job.hpp"
#include "part_text.hpp"

namespace sparewright {
namespace {

using ledger::State;
using testing::HasSubstr;
using tests::form;
using tests::hand_setup;
using tests::hand_shop;
using tests::judged;
using tests::plate;
using tests::step;

bool is_silent(tests::Judged& job, std::string_view check) {
  for (const auto& v : job.ledger.verdicts()) {
    if (v.check == check) return false;
  }
  return true;
}

std::string hole(const std::string& name, const std::string& x, const std::string& rest,
                 const std::string& y = "\"30\"") {
  return fmt::format("[[feature]]\nname = \"{}\"\nkind = \"hole\"\nat.x = {}\nat.y = {}\nhow = {}\n", name, x,
                     y, rest);
}
const std::string kFive = "\"drilled\"\ndiameter = \"5\"";

// --- pieces ------------------------------------------------------------------------------------------------------
// Sawn 40 to 43 from the right end, 57 to 60 from the left one; a bore of 20 from the front right in the joint.
std::string split_block(const std::string& shim) {
  return plate() + form("split", "side = \"right end\"\nfrom_side = \"40\"\nwidth = \"3\"\n" + shim) +
         "[[feature]]\nname = \"bore\"\nkind = \"hole\"\ninto = \"front\"\nat.x = \"58.5\"\nat.z = "
         "\"10\"\nhow = "
         "\"drilled\"\ndiameter = \"9.6\"\n";
}
const std::string kSaw = step("it", "\"blade\"");
const std::string kBore = step("bore", "\"spot\", \"drill 9.6\"");
const std::string kJoin = step("it");

TEST(Pieces, ABoreThroughAJointIsMadeWhenItIsJoined) {
  const std::string shims = "shim = \"3\"";
  const auto in_order = [&](const std::string& shim, const std::vector<std::string>& order) {
    std::string text = split_block(shim);
    int op = 0;
    for (const std::string& one : order)
      text += hand_setup(op += 10,
                         one == kBore  ? "drill press"
                         : one == kSaw ? "saw"
                                       : "bench",
                         "front", one);
    return judged(text, hand_shop());
  };
  const char* check = "bored through the joint when it is joined";
  auto right = in_order(shims, {kSaw, kJoin, kBore});
  EXPECT_EQ(right.state(check, "bore"), State::kOk);
  EXPECT_EQ(right.state("the joint comes back", "it"), State::kOk);
  EXPECT_EQ(right.worse_than_close(), 0U);
  auto first = in_order("", {kBore, kSaw, kJoin});
  EXPECT_EQ(first.state(check, "bore"), State::kNo);
  EXPECT_THAT(first.verdict(check, "bore").reason, HasSubstr("3.00 short of round"));
  EXPECT_EQ(first.state("the joint comes back", "it"), State::kClose);
  auto shimmed = in_order(shims, {kBore, kSaw, kJoin});
  EXPECT_EQ(shimmed.state(check, "bore"), State::kClose);
  auto apart = in_order(shims, {kSaw, kBore, kJoin});
  EXPECT_EQ(apart.state(check, "bore"), State::kNo);
  EXPECT_THAT(apart.verdict(check, "bore").reason, HasSubstr("lie apart"));
  auto never = in_order(shims, {kSaw, kBore});
  EXPECT_EQ(never.state(check, "bore"), State::kNo);
}

TEST(Pieces, ThereAreNoneBeforeTheSaw) {
  auto early = judged(split_block("shim = \"3\"") + hand_setup(10, "bench", "top", kJoin) +
                          hand_setup(20, "saw", "top", kSaw),
                      hand_shop());
  EXPECT_EQ(early.state("sawn before it is joined", "it"), State::kNo);
  auto other =
      judged(split_block("shim = \"3\"") + hand_setup(10, "bench", "top", step("bore")), hand_shop());
  EXPECT_EQ(other.state("what is joined was split", "bore"), State::kNo);
}

TEST(Pieces, WhatReachesBothIsNotMadeWhileTheyLieApart) {
  const std::string top =
      "[[feature]]\nname = \"skim\"\nkind = \"flat\"\nleaves = { size = \"19\", tol = \"±0.3\" }\n";
  const std::string filed = hand_setup(10, "bench", "top", step("skim", "\"file\""));
  const std::string sawn = hand_setup(20, "saw", "top", kSaw);
  auto before = judged(split_block("") + top + filed + sawn, hand_shop());
  EXPECT_TRUE(is_silent(before, "made on one piece"));
  auto between = judged(
      split_block("") + top + sawn + hand_setup(30, "bench", "top", step("skim", "\"file\"")), hand_shop());
  EXPECT_EQ(between.state("made on one piece", "skim"), State::kClose);
}

// --- what a place is measured from -------------------------------------------------------------------------------
TEST(Datum, HasToBeThere) {
  const std::string text =
      plate() + hole("first", "\"20\"", kFive) + hole("second", "{ size = \"30\", from = \"first\" }", kFive);
  const std::string first = step("first", "\"drill 5\"");
  const std::string second = step("second", "\"drill 5\"");
  auto right = judged(text + hand_setup(10, "drill press", "top", first + second), hand_shop());
  EXPECT_TRUE(is_silent(right, "what it is measured from is there"));
  auto wrong = judged(text + hand_setup(10, "drill press", "top", second + first), hand_shop());
  EXPECT_EQ(wrong.state("what it is measured from is there", "second"), State::kNo);
}

TEST(Datum, HasToBeThereStill) {  // wide takes away all of small, and what is measured from small comes after
  const std::string text = plate() + hole("small", "\"20\"", kFive) +
                           hole("wide", "\"20\"", "\"drilled\"\ndiameter = \"19\"") +
                           hole("other", "{ size = \"40\", from = \"small\" }", kFive);
  const std::string small = step("small", "\"drill 5\"");
  const std::string wide = step("wide", "\"drill 19\"");
  const std::string other = step("other", "\"drill 5\"");
  auto gone = judged(text + hand_setup(10, "drill press", "top", small + wide + other), hand_shop());
  const auto verdict = gone.verdict("what it is measured from is there", "other");
  EXPECT_EQ(verdict.state, State::kNo);
  EXPECT_THAT(verdict.reason, HasSubstr("cut away by then"));
  auto later = judged(text + hand_setup(10, "drill press", "top", small + other + wide), hand_shop());
  EXPECT_EQ(later.state("what it is measured from stays", "other"), State::kClose);
  auto turned_round = judged(text + hand_setup(10, "drill press", "top", wide + small + other), hand_shop());
  EXPECT_EQ(turned_round.state("it takes metal when its turn comes", "small"), State::kNo);
  EXPECT_TRUE(is_silent(later, "it takes metal when its turn comes"));
}

TEST(Datum, ASideIsFinishedBeforeItIsMeasuredFrom) {
  const std::string text =
      plate() + hole("hole", "\"20\"", kFive) +
      "[[feature]]\nname = \"end\"\nkind = \"flat\"\nside = \"left end\"\nleaves = { size = "
      "\"96\", tol = \"±2\" }\n";
  const auto drilled = [](int op) {
    return hand_setup(op, "drill press", "top", step("hole", "\"drill 5\""));
  };
  const auto sawn = [](int op) { return hand_setup(op, "saw", "top", step("end", "\"blade\"")); };
  auto right = judged(text + sawn(10) + drilled(20), hand_shop());
  EXPECT_TRUE(is_silent(right, "the side it is measured from is finished"));
  auto wrong = judged(text + drilled(10) + sawn(20), hand_shop());
  EXPECT_EQ(wrong.state("the side it is measured from is finished", "hole, x"), State::kNo);
}

// On a mill the numbers are from the side as it is finished; picked up before, all of them are off.
TEST(Datum, TheZeroIsPickedUpOnAFinishedSide) {
  const std::string end =
      "[[feature]]\nname = \"end\"\nkind = \"flat\"\nside = \"left end\"\nleaves = \"3.9\"\n";
  const std::string bore =
      "[[feature]]\nname = \"bore\"\nkind = \"hole\"\nhow = \"drilled\"\nat.x = \"2\"\nat.y = "
      "\"1.5\"\ndiameter "
      "= \"0.500\"\n";
  const std::string drilled = tests::setup_with("[[setup.do]]\nmake = \"bore\"\nwith = [\"drill 1/2\"]\n");
  auto as_it_is = judged(tests::job_with(bore + drilled));
  EXPECT_TRUE(is_silent(as_it_is, "the side it is measured from is finished"));
  std::string later = tests::setup_with("[[setup.do]]\nmake = \"end\"\nwith = [\"end mill\"]\n");
  later.replace(later.find("op = 10"), 7, "op = 20");
  auto wrong = judged(tests::job_with(end + bore + drilled + later));
  EXPECT_EQ(wrong.state("the side it is measured from is finished", "op 10, left end"), State::kNo);
}

// --- bushes ------------------------------------------------------------------------------------------------------
TEST(BushOrder, PressedAfterItsHoleAndReamedAfterThat) {
  const std::string text =
      plate() + hole("hub", "\"30\"", "\"drilled\"\ndiameter = \"20 H12\"") +
      form("bush",
           "in = \"hub\"\nhow = \"pressed in\"\ndiameter = \"20.3\"\nlength = \"20\"\nbore = { size = "
           "\"10\", tol = \"+0.03/-0.00\", duty = \"fits\", with = \"caliper\" }");
  const std::string hub = hand_setup(10, "drill press", "top", step("hub", "\"drill 20\""));
  const auto bush = [](int op, const std::string& tools) {
    return hand_setup(op, "bench", "top", step("it", tools));
  };
  const char* check = "its bore is finished after it is in";
  auto right = judged(text + hub + bush(20, "\"press\", \"reamer 10\""), hand_shop());
  EXPECT_EQ(right.state(check, "it"), State::kOk);
  EXPECT_TRUE(is_silent(right, "its hole is there first"));
  auto reamed_first = judged(text + hub + bush(20, "\"reamer 10\", \"press\""), hand_shop());
  EXPECT_EQ(reamed_first.state(check, "it"), State::kNo);
  auto not_reamed = judged(text + hub + bush(20, "\"press\""), hand_shop());
  EXPECT_EQ(not_reamed.state(check, "it"), State::kClose);
  auto no_hole = judged(text + bush(5, "\"press\", \"reamer 10\"") + hub, hand_shop());
  EXPECT_EQ(no_hole.state("its hole is there first", "it"), State::kNo);
}

// --- tools of one hole -------------------------------------------------------------------------------------------
TEST(ToolOrder, EachFindsWhatItNeeds) {
  const auto with = [](const std::string& tools) {
    return judged(plate() + hole("hole", "\"30\"", "\"tapped\"\nthread = \"M8x1.25-6H\"") +
                      hand_setup(10, "drill press", "top", step("hole", tools)),
                  hand_shop());
  };
  const char* check = "its tools are in order";
  auto right = with("\"spot\", \"drill 6.8\", \"countersink\", \"tap M8\"");
  EXPECT_TRUE(is_silent(right, check));
  auto tap_first = with("\"tap M8\", \"drill 6.8\"");
  EXPECT_EQ(tap_first.state(check, "hole"), State::kNo);
  EXPECT_THAT(tap_first.verdict(check, "hole").reason, HasSubstr("a tap wants a hole"));
  auto spot_last = with("\"drill 6.8\", \"spot\", \"tap M8\"");
  EXPECT_EQ(spot_last.state(check, "hole"), State::kNo);
  auto countersunk_last = with("\"drill 6.8\", \"tap M8\", \"countersink\"");
  EXPECT_EQ(countersunk_last.state(check, "hole"), State::kClose);
}

// --- threads -----------------------------------------------------------------------------------------------------
// A thread of 20 runs out in a groove from 20 to 23, not in one from 40 to 43.
TEST(ThreadOrder, TheGrooveItRunsOutInComesFirst) {
  const auto with = [](const std::string& from, const std::string& first, const std::string& then) {
    const auto one = [](const std::string& name, const std::string& kind, const std::string& rest) {
      return fmt::format("[[feature]]\nname = \"{}\"\nkind = \"{}\"\nside = \"right end\"\n{}\n", name, kind,
                         rest);
    };
    return judged(
        tests::bar() +
            one("thread", "thread", "thread = \"M30x3.5-6g\"\ndiameter = \"29.9\"\nlength = \"20\"") +
            one("groove", "groove", "diameter = \"25\"\nwidth = \"3\"\nfrom_end = \"" + from + "\"") +
            "[[setup]]\nop = 10\nname = \"test\"\nmachine = \"lathe\"\nhold = { in = \"chuck\", "
            "free_end = \"right end\" }\n" +
            step(first, "\"tool\"") + step(then, "\"tool\""),
        hand_shop());
  };
  const char* check = "the groove comes before the thread";
  auto right = with("20", "groove", "thread");
  EXPECT_TRUE(is_silent(right, check));
  auto wrong = with("20", "thread", "groove");
  EXPECT_EQ(wrong.state(check, "thread"), State::kNo);
  auto apart = with("40", "thread", "groove");
  EXPECT_TRUE(is_silent(apart, check));
}

// --- parting off ---------------------------------------------------------------------------------------------------
TEST(PartedOrder, NothingIsMadeOnWhatIsPartedOff) {
  const std::string text =
      "[[feature]]\nname = \"stub\"\nkind = \"chucking piece\"\nside = \"left end\"\nlength = \"40\"\n"
      "[[feature]]\nname = \"hole\"\nkind = \"hole\"\nhow = \"drilled\"\ninto = \"right end\"\ndiameter = "
      "\"12\"\ndepth = \"20\"\n";
  const std::string parting = tests::lathe_work("stub", "\"parter\"");
  const std::string drilling = tests::lathe_work("hole", "\"centre drill\", \"drill 12\"");
  const char* check = "it is still held when its turn comes";
  auto right = judged(tests::lathe_job(text, drilling + parting), tests::lathe_shop());
  EXPECT_TRUE(is_silent(right, check));
  auto wrong = judged(tests::lathe_job(text, parting + drilling), tests::lathe_shop());
  EXPECT_EQ(wrong.state(check, "hole"), State::kNo);
  EXPECT_THAT(wrong.verdict(check, "hole").reason, HasSubstr("after stub has parted the part off"));
}

// 80 long, 30 in the chuck: 50 stand out. Parted 40 from the free end with 3 wide the tool reaches 43, 7 off the jaws.
TEST(PartedOrder, TheWidthOfThePartingToolLiesTowardsTheJaws) {
  auto job = judged(tests::lathe_job("[[feature]]\nname = \"stub\"\nkind = \"chucking piece\"\nside = \"left "
                                     "end\"\nlength = \"40\"\n",
                                     tests::lathe_work("stub", "\"parter\"")),
                    tests::lathe_shop());
  EXPECT_NEAR(job.ledger.get("op 20/hold/room to the jaws").value, 7.0, 1e-9);
}

// --- a smaller drill after a larger one ----------------------------------------------------------------------------
TEST(ToolOrder, ASmallerDrillAfterALargerFindsNothing) {
  const auto with = [](const std::string& tools) {
    return judged(plate() + hole("hole", "\"30\"", "\"drilled\"\ndiameter = \"8.5\"") +
                      hand_setup(10, "drill press", "top", step("hole", tools)),
                  hand_shop());
  };
  auto right = with("\"spot\", \"drill 5\", \"drill 8.5\"");
  EXPECT_TRUE(is_silent(right, "its tools are in order"));
  auto wrong = with("\"spot\", \"drill 8.5\", \"drill 5\"");
  EXPECT_EQ(wrong.state("its tools are in order", "hole"), State::kNo);
  EXPECT_THAT(wrong.verdict("its tools are in order", "hole").reason,
              HasSubstr("drill 5 comes after drill 8.5 and finds nothing left to cut"));
}

}  // namespace
}  // namespace sparewright
