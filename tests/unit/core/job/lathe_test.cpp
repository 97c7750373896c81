// Numbers and verdicts of work on a lathe. The numbers expected are worked by hand beside each test.
#include <algorithm>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/route/sheet.hpp"
#include "lathe_job.hpp"

namespace sparewright {
namespace {

using ledger::State;
using testing::HasSubstr;
using tests::judged;
using tests::Judged;
using tests::lathe_job;
using tests::lathe_shop;
using tests::lathe_work;
using tests::LatheShop;

constexpr double kThousandth_mm = 0.0005;

double mm(Judged& job, const std::string& figure) {
  return job.ledger.get("op 20/" + figure).value;
}

// A seat 25 k6 (25.002-25.015, ISO 286-2) for a ball bearing whose corner is 1.0 at least (ISO 15).
std::string seat(const std::string& length = "15") {
  return fmt::format(
      "[[feature]]\nname = \"seat\"\nkind = \"turned\"\nside = \"right end\"\ndiameter = {{ size = \"25\", "
      "tol = \"k6\", "
      "duty = \"fits\", with = \"micrometer 25-50\" }}\nlength = {{ size = \"{}\", tol = \"+0.20/-0.00\" "
      "}}\nmate_corner = \"1.0\"\n",
      length);
}
const std::string kFine = "compound = \"5.74 deg\"\n";

std::vector<std::string> lines_of(Judged& job) {
  std::vector<std::string> lines;
  const auto sheet = job.ledger.value<route::SetupSheet>("op 20/sheet");
  if (sheet == nullptr) return lines;
  for (const route::Item& item : sheet->items) {
    if (const auto* line = std::get_if<route::Line>(&item))
      lines.push_back(
          fmt::format("{} | {} | {} | {}", line->says, line->x_reads, line->y_reads, line->z_reads));
  }
  return lines;
}

// --- the fine feed -------------------------------------------------------------------------------------------------
TEST(BearingSeat, TwoLikeCutsInWholeDivisionsThenTheCompound) {
  // 25.570: a division is 0.04 on diameter, six of them 0.24. Found 25.094, aim 25.011; sin 5.74 deg = 0.1000, so a
  // division of the compound is 0.0040: 0.083 / 0.0040 = 20.7, 21 make 25.010 and go 21 x 0.02 x cos 5.74 = 0.418 along.
  auto job = judged(lathe_job(seat(), lathe_work("seat", "\"R1.2\"", "25.094"), kFine), lathe_shop());
  EXPECT_NEAR(mm(job, "seat/cut 1 lands"), 25.330, kThousandth_mm);
  EXPECT_NEAR(mm(job, "seat/cut 2 lands"), 25.090, kThousandth_mm);
  EXPECT_EQ(mm(job, "seat/cut 1 division"), 6.0);
  EXPECT_EQ(mm(job, "seat/cut 2 division"), 12.0);
  EXPECT_EQ(mm(job, "seat/compound divisions"), 21.0);
  EXPECT_NEAR(mm(job, "seat/compound lands"), 25.010, kThousandth_mm);
  EXPECT_NEAR(mm(job, "seat/compound along"), 0.418, kThousandth_mm);
  EXPECT_LE(job.ledger.get("feature/seat/diameter/aim").value,
            25.012 + 1e-9);  // 25.015 less the micrometer's 0.003
  const auto lines = lines_of(job);
  ASSERT_EQ(lines.size(), 3U);
  EXPECT_THAT(lines[2],
              HasSubstr("21 divisions, makes 25.010. It goes 0.42 along too: stay off the shoulder | "));
  EXPECT_EQ(job.state("collar against tolerance", "seat"), State::kOk);
}

TEST(BearingSeat, WithNothingFoundItGoesOnFromWhatTheCutsMake) {
  // 25.090 less 25.011 is 0.079: 19.7 divisions, 20 make 25.010.
  auto job = judged(lathe_job(seat(), lathe_work("seat", "\"R0.8\""), kFine), lathe_shop());
  EXPECT_EQ(mm(job, "seat/compound divisions"), 20.0);
}

TEST(BearingSeat, ADivisionCoarserThanTheLimitsIsCloseWithWhatToDo) {
  auto job = judged(lathe_job(seat(), lathe_work("seat", "\"R0.8\"")), lathe_shop());
  const auto verdict = job.verdict("collar against tolerance", "seat");
  EXPECT_EQ(verdict.state, State::kClose);
  EXPECT_THAT(verdict.reason, HasSubstr("0.040 on diameter and the limits are 0.013 apart"));
  EXPECT_THAT(verdict.todo, HasSubstr("5.74 degrees"));
}

TEST(BearingSeat, JustInsideADivisionDoes) {  // h9 of 25 is 0.052 wide, h8 0.033: a division is 0.040
  const auto with_class = [](const std::string& fit) {
    std::string text = seat();
    text.replace(text.find("k6"), 2, fit);
    return judged(lathe_job(text, lathe_work("seat", "\"R0.8\"")), lathe_shop());
  };
  auto wide = with_class("h9");
  EXPECT_EQ(wide.state("collar against tolerance", "seat"), State::kOk);
  auto narrow = with_class("h8");
  EXPECT_EQ(narrow.state("collar against tolerance", "seat"), State::kClose);
}

// --- the corner ----------------------------------------------------------------------------------------------------
TEST(BearingSeat, TheNoseOfTheToolHoldsTheBearingOff) {  // 1.2 - 1.0 = 0.2
  auto job = judged(lathe_job(seat(), lathe_work("seat", "\"R1.2\""), kFine), lathe_shop());
  const auto verdict = job.verdict("mate goes up to the shoulder", "seat");
  EXPECT_EQ(verdict.state, State::kNo);
  EXPECT_THAT(verdict.reason, HasSubstr("it stands off by 0.20"));
  EXPECT_THAT(verdict.todo, HasSubstr("nose of 0.8 mm or less, or undercut"));
  auto sharper = judged(lathe_job(seat(), lathe_work("seat", "\"R0.8\""), kFine), lathe_shop());
  EXPECT_NE(sharper.state("mate goes up to the shoulder", "seat"), State::kNo);
}

// --- holding -------------------------------------------------------------------------------------------------------
TEST(LatheHolding, CutsStayOffTheJaws) {  // 80 - 30 = 50 stand out; 0.51 is kept off
  const auto room = [](const std::string& length) {
    auto job = judged(lathe_job(seat(length), lathe_work("seat", "\"R0.8\"")), lathe_shop());
    return job.state("cuts stay off the jaws", "op 20");
  };
  EXPECT_NE(room("49.0"), State::kNo);
  EXPECT_EQ(room("49.6"), State::kNo);
}

TEST(LatheHolding, TheChuckTakesTheBar) {
  const auto grips = [](const std::string& to) {
    LatheShop shop;
    shop.grips_to = to;
    auto job = judged(lathe_job(seat(), lathe_work("seat", "\"R0.8\"")), lathe_shop(shop));
    return job.state("the chuck takes it", "op 20");
  };
  EXPECT_EQ(grips("26"), State::kOk);
  EXPECT_EQ(grips("25"), State::kNo);
}

TEST(LatheHolding,
     TheHeadstockTurnsItStraightEnough) {  // over 15 of 150: a tenth of what it tapers; limits 0.013 apart
  const auto tapers = [](const std::string& by) {
    LatheShop shop;
    shop.tapers = "{ by = \"" + by + "\", over = \"150\" }";
    auto job = judged(lathe_job(seat(), lathe_work("seat", "\"R0.8\"")), lathe_shop(shop));
    return job.state("the headstock turns it straight enough", "seat");
  };
  EXPECT_EQ(tapers("0.12"), State::kOk);
  EXPECT_EQ(tapers("0.14"), State::kNo);
}

// --- along the bed -------------------------------------------------------------------------------------------------
TEST(AlongTheBed, WithoutACarriageCollarSpacersAtTheStop) {
  LatheShop shop;
  shop.carriage = "";
  const std::string groove =
      "[[feature]]\nname = \"groove\"\nkind = \"groove\"\nside = \"right end\"\ndiameter = \"23\"\nfrom_end "
      "= "
      "\"4\"\nwidth = \"2\"\n";
  auto job = judged(
      lathe_job(seat() + groove, lathe_work("seat", "\"R0.8\"") + lathe_work("groove", "\"groover\""), kFine),
      lathe_shop(shop));
  // Farthest is the shoulder, 15.10 to the middle of its limits; the groove's far side lies 6 in.
  EXPECT_NEAR(mm(job, "seat/shoulder spacer"), 0.0, kThousandth_mm);
  EXPECT_NEAR(mm(job, "groove/plunge 1 spacer"), 15.1 - 6.0, kThousandth_mm);
}

TEST(AlongTheBed, TheCarriageCountsFromTheFacedEnd) {  // 0.1 a division
  auto job = judged(lathe_job(seat(), lathe_work("seat", "\"R0.8\"")), lathe_shop());
  EXPECT_EQ(mm(job, "seat/shoulder turns"), 0.0);
  EXPECT_EQ(mm(job, "seat/shoulder division"), 151.0);
}

// --- holes on the axis ---------------------------------------------------------------------------------------------
std::string hole(const std::string& rest) {
  return "[[feature]]\nname = \"hole\"\nkind = \"hole\"\ninto = \"right end\"\n" + rest;
}

TEST(HoleOnTheAxis, WithoutAPlaceItLiesThereAndIsWorkedOut) {
  auto job = judged(lathe_job(hole("how = \"drilled\"\ndiameter = \"12\"\ndepth = \"20\"\n"),
                              lathe_work("hole", "\"centre drill\", \"drill 12\"")),
                    lathe_shop());
  EXPECT_NEAR(mm(job, "hole/off the axis"), 0.0, 1e-9);
  EXPECT_NEAR(mm(job, "hole/drill 12 travel"), 20.0 + 3.605,
              0.01);  // the point of a 118 degree drill: 0.3004 x 12
  EXPECT_EQ(lines_of(job).size(), 2U);
}

TEST(HoleOnTheAxis, OffTheAxisIsNotKnown) {
  const auto placed = [](const std::string& y) {
    return judged(
        lathe_job(hole("how = \"drilled\"\ndiameter = \"12\"\nat.y = \"" + y + "\"\nat.z = \"12.785\"\n"),
                  lathe_work("hole", "\"drill 12\"")),
        lathe_shop());
  };
  auto off = placed("12.9");  // the axis lies at 12.785
  EXPECT_EQ(off.state("how it is cut", "hole"), State::kNotKnown);
  EXPECT_THAT(off.verdict("how it is cut", "hole").reason, HasSubstr("off the axis"));
  auto on = placed("12.8");
  for (const auto& v : on.ledger.verdicts())
    EXPECT_NE(v.check, "how it is cut");
}

TEST(Bore, TheFirstCutIsMeasuredAndCounts) {
  // From the 12 drill to 14 H7 (14.000-14.018), half of a 0.04 division on diameter being too coarse: CLOSE.
  auto job = judged(
      lathe_job(hole("how = \"bored\"\ndiameter = { size = \"14\", tol = \"H7\", with = \"bore gauge\", "
                     "duty = \"fits\" }\n"),
                lathe_work("hole", "\"drill 12\", \"bar\"")),
      lathe_shop());
  EXPECT_EQ(job.state("collar against tolerance", "hole"), State::kClose);
  EXPECT_GT(mm(job, "hole/cut 1"), 12.0);
  const auto lines = lines_of(job);
  ASSERT_GE(lines.size(), 3U);
  EXPECT_THAT(lines[1], HasSubstr("first cut: out until it cuts all round"));
  EXPECT_THAT(lines.back(), HasSubstr("to AIM 14.0"));
}

// --- forms ---------------------------------------------------------------------------------------------------------
TEST(Groove, TheToolGoesIn) {
  const auto groove = [](const std::string& width) {
    auto job = judged(
        lathe_job("[[feature]]\nname = \"groove\"\nkind = \"groove\"\nside = \"right end\"\ndiameter = "
                  "\"23\"\nfrom_end = \"4\"\nwidth = { size = \"" +
                      width + "\", tol = \"±0.05\" }\n",
                  lathe_work("groove", "\"groover\"")),
        lathe_shop());
    return job.state("the tool goes into the groove", "groove");
  };
  EXPECT_EQ(groove("1.96"), State::kOk);  // 2.01 at most, the tool is 2
  EXPECT_EQ(groove("1.94"), State::kNo);
}

TEST(Taper, TheCompoundsAngleAndTravel) {
  // 20 to 24 over 40: atan(4/80) = 2.862 degrees; 40 / cos = 40.050.
  auto job = judged(
      lathe_job("[[feature]]\nname = \"taper\"\nkind = \"taper\"\nside = \"right end\"\nsmall_diameter = "
                "\"20\"\nlarge_diameter = \"24\"\nlength = \"40\"\n",
                lathe_work("taper", "\"R0.8\"")),
      lathe_shop());
  EXPECT_NEAR(quantity::unit::degree.from_base(mm(job, "taper/compound angle")), 2.862, 0.001);
  EXPECT_NEAR(mm(job, "taper/compound travel"), 40.050, 0.001);
}

TEST(Thread, PassesOfOneAreaDownToTheDepth) {
  // M24x2: 0.6134 x 2 = 1.227 deep; at 29.5 degrees the slide goes 1.227 / cos 29.5 = 1.410.
  auto job =
      judged(lathe_job("[[feature]]\nname = \"thread\"\nkind = \"thread\"\nside = \"right end\"\nthread = "
                       "\"M24x2\"\ndiameter = { size = \"23.8\", tol = \"+0.10/-0.10\" }\nlength = \"20\"\n",
                       lathe_work("thread", "\"R0.8\", \"threader\"")),
             lathe_shop());
  EXPECT_NEAR(mm(job, "thread/thread depth"), 1.227, 0.001);
  double last = 0.0;
  for (const auto& figure : job.ledger.figures()) {
    if (std::string(figure.name).rfind("op 20/thread/pass ", 0) == 0) last = std::max(last, figure.value);
  }
  EXPECT_NEAR(last, 1.410, 0.001);
}

TEST(Metal, WhatIsSmallerAlreadyIsNo) {
  const auto from = [](const std::string& bar) {
    return judged(lathe_job(seat(), lathe_work("seat", "\"R0.8\""), "", bar), lathe_shop());
  };
  auto small = from("25.00");
  EXPECT_EQ(small.state("there is metal to cut", "seat"), State::kNo);
  auto large = from("25.30");
  for (const auto& v : large.ledger.verdicts())
    EXPECT_NE(v.check, "there is metal to cut");
}

TEST(Unmade, WhatIsNotWorkedOutSaysSo) {
  auto job =
      judged(lathe_job("[[feature]]\nname = \"throw\"\nkind = \"eccentric\"\nside = \"right end\"\ntowards = "
                       "\"top\"\ndiameter = \"20\"\nlength = \"10\"\nthrow = \"2\"\n",
                       lathe_work("throw", "\"R0.8\"")),
             lathe_shop());
  EXPECT_EQ(job.state("how it is cut", "throw"), State::kNotKnown);
}

// The compound stands where the last cut left it: the next touch sets it to 0 again.
TEST(BearingSeat, EachTouchSetsTheFineFeedToZeroToo) {
  const auto touch_of = [](const std::string& more) {
    auto job = judged(lathe_job(seat(), lathe_work("seat", "\"R1.2\"", "25.094"), more), lathe_shop());
    const auto sheet = job.ledger.value<route::SetupSheet>("op 20/sheet");
    std::string touch;
    for (const route::Item& item : sheet->items) {
      if (const auto* note = std::get_if<route::Note>(&item); note != nullptr && touch.empty())
        touch = note->says;
    }
    return touch;
  };
  EXPECT_THAT(touch_of(kFine), HasSubstr("cross and [compound] to 0."));
  EXPECT_THAT(touch_of(""), HasSubstr("cross to 0."));
}

// Sawn or parted lengths are known to no better than the last cuts take: it is measured before the first, and the last goes
// on in whole divisions of the carriage, 0.1, to the side where metal comes off. The limits, 78.85 to 79.05, leave room.
TEST(Facing, TheLengthIsMeasuredBeforeTheFirstCut) {
  const std::string end =
      "[[feature]]\nname = \"end\"\nkind = \"flat\"\nside = \"right end\"\nleaves = { size = \"78.95\", tol "
      "= "
      "\"±0.10\", duty = \"fits\", with = \"micrometer 25-50\" }\n";
  auto job = judged(lathe_job(end, lathe_work("end", "\"R1.2\"")), lathe_shop());
  const auto sheet = job.ledger.value<route::SetupSheet>("op 20/sheet");
  ASSERT_NE(sheet, nullptr);
  std::vector<std::string> stops;
  const route::Line* last = nullptr;
  for (const route::Item& item : sheet->items) {
    if (const auto* stop = std::get_if<route::Stop>(&item)) stops.push_back(stop->says);
    if (const auto* line = std::get_if<route::Line>(&item)) last = line;
  }
  ASSERT_FALSE(stops.empty());
  EXPECT_THAT(stops.front(), HasSubstr("measure the length before the first cut"));
  ASSERT_NE(last, nullptr);
  const double in = 80.0 - job.ledger.get("feature/end/leaves/aim").value;
  const double set = std::ceil(in / 0.1 - 1e-6) * 0.1;
  EXPECT_THAT(last->z_reads, testing::StrEq(fmt::format("{:.0f}", set / 0.1)));
}

}  // namespace
}  // namespace sparewright
