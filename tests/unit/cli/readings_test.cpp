// Wrong and thin readings through the program: each has a sentence that says what to do.
#include <gmock/gmock.h>

#include "program.hpp"

namespace sparewright {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;
using tests::ProgramTest;
using tests::Ran;

constexpr const char* kPin = "got   = [\"0.6248\", \"0.6247\", \"0.6248\"]";

class WrongInputOfReadings : public ProgramTest {
 protected:
  // The bracket with its idler pin read otherwise.
  Ran pin_read(const std::string& got, const std::string& command = "check wrong.job.toml") {
    change("bracket.job.toml", "wrong.job.toml", kPin, got);
    return run(command);
  }
  // A line of the shop's micrometer put in place of another.
  void micrometer(const std::string& line, const std::string& by) {
    if (by.find("to = ") != std::string::npos)
      change("farm.shop.toml", "farm.shop.toml", "to      = \"1\"\n", "");
    const std::string head = "name    = \"micrometer 0-1\"\nkind    = \"outside micrometer\"\n";
    change("farm.shop.toml", "farm.shop.toml", head + line, head + by);
  }
};

TEST_F(WrongInputOfReadings, AnInstrumentNotInTheShop) {
  change("bracket.job.toml", "wrong.job.toml", "\"micrometer 0-1\"", "\"micrometer 0-2\"");
  const Ran ran = run("check wrong.job.toml");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("wrong.job.toml:19:9: the shop has no instrument 'micrometer 0-2'"),
                             HasSubstr("micrometer 0-1")));
}

TEST_F(WrongInputOfReadings, OutsideTheRangeOfTheInstrument) {
  micrometer("", "from = \"0\"\nto = \"1\"\n");
  const Ran ran = pin_read("got = \"1.6248\"");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("wrong.job.toml:20:7: 'idler pin' cannot be '1.6248'"),
                             HasSubstr("accepted: 0 in to 1 in, which micrometer 0-1 measures")));
}

TEST_F(WrongInputOfReadings, MillimetresTypedInAnInchJobOutsideTheRange) {
  micrometer("", "from = \"0\"\nto = \"1\"\n");
  const Ran ran = pin_read("got = \"15.870\"");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, HasSubstr("15.870 mm would do: was that meant?"));
}

TEST_F(WrongInputOfReadings, ARangeThatEndsBeforeItBegins) {
  micrometer("", "from = \"2\"\nto = \"1\"\n");
  const Ran ran = run("check bracket.job.toml");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("farm.shop.toml:30:8:"), HasSubstr("less than 'to', which is 1")));
}

TEST_F(WrongInputOfReadings, AnInchNumberOffAMetricInstrumentIsAsked) {
  change("farm.shop.toml", "farm.shop.toml", "reads   = \"0.0001\"\ngood_to = \"0.0001\"",
         "reads   = \"0.001 mm\"\ngood_to = \"0.002 mm\"");
  const Ran bare = run("check bracket.job.toml");
  EXPECT_EQ(bare.status, 1);
  EXPECT_THAT(bare.out, HasSubstr("mm or in? 'idler pin' was read 0.6248 with micrometer 0-1, which is "
                                  "graduated in millimetres"));
  change("bracket.job.toml", "inch.job.toml", "got   = [\"0.2811\", \"0.2811\"]",
         "got   = [\"0.2811 in\", \"0.2811 in\"]");
  change("inch.job.toml", "inch.job.toml", kPin, "got = [\"0.6248 in\", \"0.6247 in\", \"0.6248 in\"]");
  EXPECT_THAT(run("check inch.job.toml").out, Not(HasSubstr("mm or in?")));
}

TEST_F(WrongInputOfReadings, ASizeOfZeroOrLess) {
  for (const char* size : {"0.000", "-0.6248"}) {
    const Ran ran = pin_read("got = \"" + std::string(size) + "\"");
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, AllOf(HasSubstr("wrong.job.toml:20:7: 'idler pin' is " + std::string(size)),
                               HasSubstr("it must be more than zero")));
  }
}

TEST_F(WrongInputOfReadings, OneRepeatSaysThatItsScatterIsNotKnown) {
  const Ran ran = pin_read("got = \"0.6248\"", "why wrong.job.toml \"survey/idler_pin\"");
  EXPECT_EQ(ran.status, 0);
  EXPECT_THAT(ran.out, HasSubstr("read once, so its scatter is not known"));
  micrometer("", "repeats = \"0.0001\"\n");
  EXPECT_THAT(run("why wrong.job.toml \"survey/idler_pin\"").out,
              HasSubstr("read once, its scatter taken as the instrument's, 0.0001"));
}

TEST_F(WrongInputOfReadings, NoRedundancySaysThatNothingChecksIt) {
  const Ran ran = run("why bracket.job.toml \"survey/idler_pin\"");
  EXPECT_EQ(ran.status, 0);
  EXPECT_THAT(ran.out, HasSubstr("not checked by another reading"));
}

TEST_F(WrongInputOfReadings, TenThousandReadings) {
  std::string many;
  for (int i = 0; i < 10000; ++i)
    many += "[[reading]]\nname = \"r" + std::to_string(i) +
            "\"\nwhat = \"outside\"\nof = \"a\"\nwith = \"micrometer 0-1\"\ngot = \"0.5\"\n";
  write("many.job.toml", read("bracket.job.toml") + many);
  const Ran ran = run("check many.job.toml");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("measuring up: 10007 readings"), HasSubstr("at most 3000")));
  EXPECT_LT(ran.err.size(), 400U);
}

TEST_F(WrongInputOfReadings, TheErrorOfAnInstrumentIsTheStandards) {
  micrometer("reads   = \"0.0001\"\ngood_to = \"0.0001\"\n", "reads = \"0.0001\"\n");
  const Ran ran = run("why bracket.job.toml \"survey/idler_pin\"");
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_THAT(ran.out, HasSubstr("taken to be good to 0.00010 in (ASME B89.1.13"));
  change("farm.shop.toml", "farm.shop.toml",
         "kind    = \"dial caliper\"\nreads   = \"0.001\"\ngood_to = \"0.001\"",
         "kind    = \"dial caliper\"\nreads   = \"0.02 mm\"");
  EXPECT_THAT(run("why bracket.job.toml \"survey/edge_to_bore\"").out, HasSubstr("DIN 862"));
}

TEST_F(WrongInputOfReadings, OfAnInstrumentNobodyTablesTheErrorHasToBeSaid) {
  change("farm.shop.toml", "farm.shop.toml", "good_to = \"0.0002\"\n", "");
  const Ran ran = run("check bracket.job.toml");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("farm.shop.toml:35:"), HasSubstr("needs the key 'good_to'"),
                             HasSubstr("nothing is tabled for a dial bore gauge")));
}

TEST_F(WrongInputOfReadings, ATemperatureWantsItsDoubt) {
  change("farm.shop.toml", "farm.shop.toml", "[shop]\n", "[shop]\ntemperature = \"95 degF\"\n");
  const Ran ran = run("check bracket.job.toml");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("needs the key 'temperature_within'"), HasSubstr("2 degC")));
}

TEST_F(WrongInputOfReadings, AWarmReadingWantsItsMaterial) {
  const Ran warm =
      pin_read(std::string(kPin) + "\ntemperature = \"60 degC\"\ntemperature_within = \"5 degC\"");
  EXPECT_THAT(warm.err, HasSubstr("needs the key 'material'"));
  const Ran unknown = pin_read(std::string(kPin) + "\nmaterial = \"unobtainium\"");
  EXPECT_THAT(unknown.err, AllOf(HasSubstr("wrong.job.toml:21:12:"), HasSubstr("unobtainium")));
}

TEST_F(WrongInputOfReadings, AWarmSizeIsReducedAndSaysSo) {
  const Ran ran = pin_read(
      std::string(kPin) + "\nmaterial = \"1018\"\ntemperature = \"60 degC\"\ntemperature_within = \"5 degC\"",
      "why wrong.job.toml \"survey/idler_pin\"");
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_THAT(ran.out, HasSubstr("reduced to 20 degC from 60 degC, steel 1018"));
  EXPECT_THAT(ran.out, HasSubstr("0.6245 in"));  // 0.62477 (1 - 11.7e-6 * 40) = 0.62447
}

}  // namespace
}  // namespace sparewright
