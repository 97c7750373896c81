// Jobs that cannot be made as they are written, through the program: each is told with the place it sits in and what to do,
// by a verdict where the text itself is right (status 1), by a message where it is not (status 2).
#include <cstdlib>

#include <gmock/gmock.h>

#include "program.hpp"

namespace sparewright {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;
using tests::ProgramTest;
using tests::Ran;

class WrongJob : public ProgramTest {
 protected:
  // Of the verdict on a check: its line and those below that belong to it.
  static std::string told(const Ran& ran, const std::string& verdict) {
    const std::size_t at = ran.out.find(verdict);
    if (at == std::string::npos) return "no '" + verdict + "' in:\n" + ran.out + ran.err;
    std::size_t end = ran.out.find('\n', at);
    while (end != std::string::npos && ran.out.compare(end + 1, 4, "    ") == 0)
      end = ran.out.find('\n', end + 1);
    return ran.out.substr(at, end - at);
  }
  void add(const std::string& shop, const std::string& text) { write(shop, read(shop) + text); }
  Ran check(const std::string& job) { return run("check " + job); }
};

// --- a tool larger than what it makes -------------------------------------------------------------------------------
TEST_F(WrongJob, ADrillLargerThanTheBore) {  // 41/64 is 0.6406
  add("farm.shop.toml", "\n[[tool]]\nname = \"drill 41/64\"\nkind = \"twist drill\"\ndiameter = \"41/64\"\n");
  change("bracket.job.toml", "bracket.job.toml", "\"drill 9/16\", \"boring head\"",
         "\"drill 9/16\", \"drill 41/64\", \"boring head\"");
  const Ran ran = check("bracket.job.toml");
  EXPECT_EQ(ran.status, 1) << ran.err;
  EXPECT_THAT(told(ran, "the drill leaves metal for the bore: pivot bore"),
              AllOf(HasSubstr("drill 41/64 is 0.641 and the bore at its least 0.6258"),
                    HasSubstr("do: take a smaller drill")));
}

TEST_F(WrongJob, ABoringBarThickerThanTheHole) {
  change("farm.shop.toml", "farm.shop.toml", "least_bore = \"5/8\"", "least_bore = \"7/8\"");
  const Ran ran = check("spacer.job.toml");
  EXPECT_EQ(ran.status, 1) << ran.err;
  EXPECT_THAT(told(ran, "the boring bar goes in: bore"), AllOf(HasSubstr("wants 0.875"), HasSubstr("do: ")));
}

TEST_F(WrongJob, AReamerLargerThanTheBore) {
  change("smithy.shop.toml", "smithy.shop.toml", "diameter = \"0.7505\"", "diameter = \"0.7605\"");
  const Ran ran = check("shift_arm.job.toml");
  EXPECT_EQ(ran.status, 1) << ran.err;
  EXPECT_THAT(told(ran, "the reamer has its bore: pivot bush"),
              AllOf(HasSubstr("0.7605"), HasSubstr("0.7497-0.7513"), HasSubstr("do: take a reamer")));
}

TEST_F(WrongJob, ACutterWiderThanTheKeyseat) {
  change("town.shop.toml", "town.shop.toml", "measured = \"5.98\"", "measured = \"6.10\"");
  const Ran ran = check("shaft.job.toml");
  EXPECT_EQ(ran.status, 1) << ran.err;
  EXPECT_THAT(told(ran, "the cutter is no larger than the width: pulley key"),
              AllOf(HasSubstr("slot drill 6 is 6.100"), HasSubstr("do: ")));
}

// --- a tap drill larger than the thread ----------------------------------------------------------------------------
TEST_F(WrongJob, ATapDrillLargerThanTheThread) {  // 25/64 is 0.3906, the thread 0.3750
  add("smithy.shop.toml",
      "\n[[tool]]\nname = \"drill 25/64\"\nkind = \"twist drill\"\ndiameter = \"25/64\"\n");
  change("shift_arm.job.toml", "shift_arm.job.toml", "\"drill 5/16\", \"countersink\"",
         "\"drill 25/64\", \"countersink\"");
  EXPECT_THAT(told(check("shift_arm.job.toml"), "the drill has the size: stop screw"),
              AllOf(HasSubstr("drill 25/64 is 0.3906"), HasSubstr("do: take a drill of the hole's size")));
  change("shift_arm.job.toml", "shift_arm.job.toml", "thread = \"3/8-16 UNC-2B\"",
         "thread = \"3/8-16 UNC-2B\"\ndiameter = \"25/64\"");
  const Ran ran = check("shift_arm.job.toml");
  EXPECT_EQ(ran.status, 1) << ran.err;
  EXPECT_THAT(told(ran, "the drill leaves metal for the thread: stop screw"),
              AllOf(HasSubstr("the outside of the thread 0.3750"), HasSubstr("do: take a smaller drill")));
}

// --- the machine ---------------------------------------------------------------------------------------------------
TEST_F(WrongJob, AMachineThatIsTooFast) {
  const std::string speeds = "[80, 135, 210, 325, 660, 1115, 1750, 2720]";
  change("farm.shop.toml", "farm.shop.toml", speeds, "[1750, 2720]");
  const Ran ran = check("bracket.job.toml");
  EXPECT_EQ(ran.status, 1) << ran.err;
  EXPECT_THAT(told(ran, "the machine has the speed: pivot bore/boring head"),
              AllOf(HasSubstr("1750"), HasSubstr("do: ")));
}

TEST_F(WrongJob, AMachineWithoutSpeeds) {
  change("farm.shop.toml", "farm.shop.toml", "speeds    = [80, 135, 210, 325, 660, 1115, 1750, 2720]\n", "");
  const Ran ran = check("bracket.job.toml");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("farm.shop.toml:8:1:"), HasSubstr("needs the key 'speeds'"),
                             HasSubstr("a vertical mill has it")));
}

TEST_F(WrongJob, ACollarOfNoDivisions) {
  change("farm.shop.toml", "farm.shop.toml",
         "turn = \"0.200\", divisions = 200, numbers_rise = \"clockwise\", "
         "clockwise_moves_work = \"left\"",
         "turn = \"0.200\", divisions = 0, numbers_rise = \"clockwise\", clockwise_moves_work = \"left\"");
  const Ran ran = check("bracket.job.toml");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("farm.shop.toml:17:43:"), HasSubstr("divisions' cannot be '0'"),
                             HasSubstr("a whole number from 1 to 10000")));
}

// --- the work and what holds it -------------------------------------------------------------------------------------
TEST_F(WrongJob, AShaftLongerThanTheBed) {
  change("town.shop.toml", "town.shop.toml", "between_centres     = \"700\"",
         "between_centres     = \"150\"");
  const Ran ran = check("shaft.job.toml");
  EXPECT_EQ(ran.status, 1) << ran.err;
  EXPECT_THAT(
      told(ran, "goes between the centres: op 30"),
      AllOf(HasSubstr("164.00 long"), HasSubstr("takes 150.00"), HasSubstr("do: use a longer lathe")));
}

TEST_F(WrongJob, ABarThatStandsOutPastTheEndOfTheBed) {  // 1.855 of 3 in stands out
  change("farm.shop.toml", "farm.shop.toml", "between_centres     = \"24\"", "between_centres     = \"4\"");
  const Ran ran = check("spacer.job.toml");
  EXPECT_EQ(ran.status, 1) << ran.err;
  EXPECT_THAT(told(ran, "the bed is long enough: op 10"),
              AllOf(HasSubstr("stands out"), HasSubstr("do: use a longer lathe")));
}

TEST_F(WrongJob, AViseThatDoesNotOpenSoFar) {
  change("farm.shop.toml", "farm.shop.toml", "opens = \"5-1/2\"", "opens = \"1-1/2\"");
  const Ran ran = check("bracket.job.toml");
  EXPECT_EQ(ran.status, 1) << ran.err;
  EXPECT_THAT(told(ran, "jaws open far enough: op 20"),
              AllOf(HasSubstr("1.998 across"), HasSubstr("open 1.500"), HasSubstr("do: ")));
}

TEST_F(WrongJob, AChuckThatDoesNotOpenSoFar) {
  change("spacer.job.toml", "spacer.job.toml", "diameter = \"1-1/4\"", "diameter = \"5-1/2\"");
  const Ran ran = check("spacer.job.toml");
  EXPECT_EQ(ran.status, 1) << ran.err;
  EXPECT_THAT(told(ran, "the chuck takes it: op 10"), AllOf(HasSubstr("5.000"), HasSubstr("do: ")));
}

// --- a piece that is not there yet ----------------------------------------------------------------------------------
TEST_F(WrongJob, PiecesJoinedBeforeTheyAreSawn) {
  std::string job = read("line_bearing.job.toml");
  const auto section = [&](const char* op) { return job.find("[[setup]]\nop      = " + std::string(op)); };
  const std::size_t saw = section("20");
  const std::size_t join = section("30");
  const std::size_t bore = section("40");
  ASSERT_LT(saw, join);
  ASSERT_LT(join, bore);
  write("early.job.toml",
        job.substr(0, saw) + job.substr(join, bore - join) + job.substr(saw, join - saw) + job.substr(bore));
  const Ran ran = check("early.job.toml");
  EXPECT_EQ(ran.status, 1) << ran.err;
  EXPECT_THAT(told(ran, "sawn before it is joined: joint"),
              AllOf(HasSubstr("there are no pieces"), HasSubstr("do: saw it in a setup before")));
}

TEST_F(WrongJob, ABushBeforeItsHole) {
  std::string job = read("shift_arm.job.toml");
  const std::size_t bench = job.find("[[setup]]\nop      = 40");
  const std::size_t mill = job.find("[[setup]]\nop          = 20");
  ASSERT_LT(mill, bench);
  write("early.job.toml", job.substr(0, mill) + job.substr(bench) + "\n" + job.substr(mill, bench - mill));
  const Ran ran = check("early.job.toml");
  EXPECT_EQ(ran.status, 1) << ran.err;
  EXPECT_THAT(told(ran, "its hole is there first: pivot bush"), HasSubstr("do: make pivot before"));
}

TEST_F(WrongJob, AMandrelInABoreThatIsNotThere) {
  std::string job = read("spacer.job.toml");
  const std::size_t first = job.find("[[setup]]\nop      = 10");
  const std::size_t second = job.find("[[setup]]\nop      = 20");
  ASSERT_LT(first, second);
  write("early.job.toml",
        job.substr(0, first) + job.substr(second) + "\n" + job.substr(first, second - first));
  const Ran ran = check("early.job.toml");
  EXPECT_EQ(ran.status, 1) << ran.err;
  EXPECT_THAT(told(ran, "it is gripped on what is there: op 20"), HasSubstr("do: "));
}

// --- what stands against cutting stands on the sheet that is taken to the machine -----------------------------------
// The relief is milled in op 20; op 10 of the same job only hears that something stands against it elsewhere.
TEST_F(WrongJob, ANoStandsOnTheSheetOfItsSetup) {
  change("bracket.job.toml", "bracket.job.toml", "parallels = \"1-1/4 x 1/8\"", "parallels = \"1 x 1/8\"");
  EXPECT_EQ(run("sheets bracket.job.toml -o low.pdf").status, 1);
  ASSERT_EQ(std::system(("cd '" + at(".").string() + "' && pdftotext -layout low.pdf low.txt").c_str()), 0);
  const std::string printed = read("low.txt");
  EXPECT_THAT(printed, HasSubstr("NOT CLEARED TO CUT"));
  EXPECT_THAT(printed,
              HasSubstr("NO, cutter clears the jaws, relief: the floor of the cut lies 0.186 below"));
  EXPECT_EQ(run("sheets spacer.job.toml -o well.pdf").status, 0);
  ASSERT_EQ(std::system(("cd '" + at(".").string() + "' && pdftotext -layout well.pdf well.txt").c_str()), 0);
  EXPECT_THAT(read("well.txt"), Not(HasSubstr("NOT CLEARED")));
}

// A NO of op 10 alone: op 20 says that it is elsewhere, and does not take it for its own.
TEST_F(WrongJob, ANoOfAnotherSetupIsSaidToBeElsewhere) {
  change("spacer.job.toml", "spacer.job.toml", "\"centre drill 3\", \"drill 1/2\", \"drill 47/64\"",
         "\"centre drill 3\", \"drill 47/64\", \"drill 1/2\"");
  EXPECT_EQ(run("sheets spacer.job.toml -o order.pdf").status, 1);
  ASSERT_EQ(std::system(("cd '" + at(".").string() + "' && pdftotext -layout order.pdf order.txt").c_str()),
            0);
  const std::string printed = read("order.txt");
  const std::size_t first = printed.find("NOT CLEARED TO CUT");
  const std::size_t second = printed.find("NOT CLEARED TO CUT", first + 1);
  ASSERT_NE(second, std::string::npos);
  EXPECT_THAT(printed.substr(first, second - first), HasSubstr("NO, its tools are in order, bore"));
  EXPECT_THAT(printed.substr(second), HasSubstr("more NO elsewhere in this job"));
  EXPECT_THAT(printed.substr(second), Not(HasSubstr("NO, its tools are in order")));
}

}  // namespace
}  // namespace sparewright
