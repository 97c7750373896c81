// A keyseat milled with a cutter that was ground: every number worked by hand.
//
// Shaft read 39.96. Middle 39.96 / 2 = 19.98; the edge finder's tip is 10, so 19.98 + 5.00 = 24.98 from the touch. Width 12
// P9: -0.018/-0.061 (ISO 286), 11.939 to 11.982. Cutter 11.72: (11.96 - 11.72) / 2 = 0.12 a side. Collars: Y 4 mm in 200,
// so 19.86 is 4 turns and 193, 20.10 is 5 and 5. Length 45: (45 - 11.72) / 2 = 16.64 either side of 75.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "job_file.hpp"

namespace sparewright {
namespace {

using ledger::State;
using testing::HasSubstr;
using testing::Not;
using tests::judged;
using tests::lines_of;
using tests::mm;
using tests::notes_of;
using tests::text_of_job;
using tests::with;

std::string job() {
  return text_of_job("keyed_shaft.job.toml");
}
std::string shop() {
  return text_of_job("mill.shop.toml");
}

TEST(MilledKeyseat, IsDialledFromTheShaftAsFound) {
  auto made = judged(job(), shop());
  EXPECT_NEAR(mm(made, "op 10/keyseat/y middle wanted"), 19.98, 1e-9);
  EXPECT_NEAR(mm(made, "op 10/keyseat/y from touch"), 24.98, 1e-9);
  EXPECT_NEAR(mm(made, "feature/keyseat/width/least"), 11.939, 1e-9);
  EXPECT_NEAR(mm(made, "feature/keyseat/width/most"), 11.982, 1e-9);
  EXPECT_NEAR(mm(made, "feature/keyseat/width/aim"), 11.96, 1e-9);
  EXPECT_NEAR(mm(made, "op 10/keyseat/half width less cutter"), 0.12, 1e-9);
  EXPECT_NEAR(mm(made, "op 10/keyseat/cutter short by"), 0.28, 1e-9);
  EXPECT_EQ(made.worse_than_close(), 0U);
}

TEST(MilledKeyseat, ItsDepthIsFromTheCrestAndProvedOverTheBack) {
  auto made = judged(job(), shop());
  EXPECT_NEAR(mm(made, "feature/keyseat/depth/unknown"), 0.05, 1e-9);
  EXPECT_NEAR(mm(made, "feature/keyseat/depth/aim"), 5.05, 1e-9);
  // Arc over the keyseat: (39.96 - sqrt(39.96^2 - 11.96^2)) / 2 = 0.9159; 5.05 - 0.9159 = 4.1341.
  EXPECT_NEAR(mm(made, "op 10/keyseat/depth at the side"), 4.1341, 5e-5);
  EXPECT_NEAR(mm(made, "op 10/keyseat/over the back/least"), 34.76, 1e-9);
  EXPECT_NEAR(mm(made, "op 10/keyseat/over the back/most"), 34.96, 1e-9);
  const std::string notes = notes_of(made, 10);
  EXPECT_THAT(notes, HasSubstr("touch the crest of the bar"));
  EXPECT_THAT(notes, HasSubstr("from the crest: 5.05. At its side the same depth is 4.13"));
  EXPECT_THAT(notes, HasSubstr("measure over the back"));
  EXPECT_THAT(notes, HasSubstr("the cutter alone makes 11.720, 0.28 less than 12"));
}

TEST(MilledKeyseat, GoesDownItsMiddleThenOutToBothSides) {
  auto made = judged(job(), shop());
  const auto lines = lines_of(made, 10);
  ASSERT_GE(lines.size(), 4U);
  const route::Line& first = lines.front();
  EXPECT_EQ(first.x_reads, "14t + 118");                    // 75 - 16.64 = 58.36
  EXPECT_EQ(first.y_reads, "4t + 199");                     // 19.98
  EXPECT_THAT(first.says, HasSubstr("X on to 22t + 182"));  // 75 + 16.64 = 91.64
  const route::Line& deep = lines[lines.size() - 3];
  EXPECT_EQ(deep.z_reads, "2t + 105");  // 5.05, 2 mm in 200
  EXPECT_EQ(deep.expect, "over the back 34.76-34.96");
  const route::Line& far = lines[lines.size() - 2];
  EXPECT_EQ(far.y_reads, "5t + 5");
  EXPECT_EQ(far.expect, "11.840");
  const route::Line& near = lines.back();
  EXPECT_EQ(near.y_reads, "4t + 193");
  EXPECT_EQ(near.expect, "11.939-11.982");
  EXPECT_THAT(notes_of(made, 10), HasSubstr("half a turn beyond"));
}

TEST(MilledKeyseat, StandsOverTheMiddleAsFound) {
  auto silent = judged(job(), shop());
  for (const auto& v : silent.ledger.verdicts())
    EXPECT_NE(v.check, "the keyseat stands over the middle of the bar");
  const auto at = [&](const std::string& y) {
    return with(job(), "at.x   = \"75\"", "at.x = \"75\"\nat.y = \"" + y + "\"");
  };
  auto nominal = judged(at("20"), shop());  // half of 40, not of 39.96
  const auto off = nominal.verdict("the keyseat stands over the middle of the bar", "keyseat");
  EXPECT_EQ(off.state, State::kClose);
  EXPECT_THAT(off.reason, HasSubstr("0.02 off"));
  auto inside = judged(at("20.23"), shop());  // 0.254 at most
  EXPECT_EQ(inside.state("the keyseat stands over the middle of the bar", "keyseat"), State::kClose);
  auto outside = judged(at("20.24"), shop());
  EXPECT_EQ(outside.state("the keyseat stands over the middle of the bar", "keyseat"), State::kNo);
}

TEST(MilledKeyseat, ACutterAsWideAsItIsMakesItAlone) {
  auto made = judged(job(), with(shop(), "measured = \"11.72\"", "measured = \"11.95\""));
  EXPECT_THAT(notes_of(made, 10), HasSubstr("the cutter makes its width"));
  EXPECT_THAT(notes_of(made, 10), Not(HasSubstr("half a turn beyond, up to")));
  EXPECT_NEAR(mm(made, "op 10/keyseat/width made"), 11.95, 1e-9);
}

TEST(MilledKeyseat, ACutterThatIsTooWideIsNo) {
  auto inside = judged(job(), with(shop(), "measured = \"11.72\"", "measured = \"11.981\""));
  EXPECT_EQ(inside.state("the cutter is no larger than the width", "keyseat"),
            State::kOk);  // known to 0.0005
  auto outside = judged(job(), with(shop(), "measured = \"11.72\"", "measured = \"11.983\""));
  EXPECT_EQ(outside.state("the cutter is no larger than the width", "keyseat"), State::kNo);
}

// The jaws are 45 deep: over 25 high parallels they reach 20 up a bar whose middle lies 19.98 up.
TEST(MilledKeyseat, TheJawsTakeTheBarPastItsMiddle) {
  const auto on = [&](const std::string& parallels) {
    return judged(with(job(), "\"15 x 5\"", "\"" + parallels + "\""),
                  with(shop(), "\"20 x 5\", \"30 x 5\"", "\"20 x 5\", \"25 x 5\", \"26 x 5\""));
  };
  auto inside = on("25 x 5");
  EXPECT_NEAR(mm(inside, inside.verdict("jaws take the bar past its middle", "op 10").margin), 0.02, 1e-9);
  auto outside = on("26 x 5");
  EXPECT_EQ(outside.state("jaws take the bar past its middle", "op 10"), State::kNo);
}

// --- the other milled jobs ----------------------------------------------------------------------------------------
TEST(MilledJobs, AreNoWorseThanClose) {
  for (const char* file : {"keyed_shaft", "lever_plate", "clamp_hub", "ring_flange"}) {
    auto made = judged(text_of_job(std::string(file) + ".job.toml"), shop());
    EXPECT_EQ(made.worse_than_close(), 0U) << file;
    for (const auto& setup : made.job.subject.route.plan.setups) {
      for (const route::Line& line : lines_of(made, setup.op)) {
        EXPECT_THAT(line.expect + line.x_reads + line.y_reads + line.z_reads + line.rpm,
                    Not(HasSubstr("NOT KNOWN")))
            << file << ": " << line.says;
      }
    }
  }
}

// Six holes on a circle of 70 round 50, 50, the first at 30 degrees: 35 cos 30 = 30.311 and 35 sin 30 = 17.5. From the left
// end and the back: 80.311 is 20 turns and 15.6 of 0.02, 100 - 67.5 = 32.5 is 8 turns and 25 of 0.02;
// from the back the wheel goes counterclockwise and its numbers fall: 200 - 25 = 175.
TEST(MilledJobs, ABoltCircleIsDialledHoleByHole) {
  auto made = judged(text_of_job("ring_flange.job.toml"), shop());
  EXPECT_NEAR(mm(made, "op 10/bolts 1/x wanted"), 80.3109, 5e-5);
  EXPECT_NEAR(mm(made, "op 10/bolts 1/y wanted"), 32.5, 1e-9);
  const auto lines = lines_of(made, 10);
  ASSERT_EQ(lines.size(), 15U);  // seven dimples, the bore drilled and reamed, six holes
  EXPECT_EQ(lines[1].x_reads, "20t + 16");
  EXPECT_EQ(lines[1].y_reads, "8t + 175");
  // 35 - 20 / 2 - 9 / 2 = 20.5; the circle's ±0.2 is ±0.1 on its radius, whatever the angle.
  const auto sheet = tests::sheet_of(made, 10);
  EXPECT_THAT(sheet.before_unclamp,
              testing::Contains(testing::AllOf(HasSubstr("bolts 1"), HasSubstr("20.50 ±0.10"))));
}

}  // namespace
}  // namespace sparewright
