// What is known without measuring, from the text to the figures.
#include <gmock/gmock.h>

#include "judged_job.hpp"

namespace sparewright {
namespace {

using testing::HasSubstr;
using tests::judged;
using tests::troubles_of;

std::string holes(const std::string& known) {
  const auto hole = [](const std::string& name, const std::string& got) {
    return "[[reading]]\nname = \"" + name + "\"\nwhat = \"inside\"\nof = \"" + name +
           "\"\nwith = \"caliper\"\ngot = [\"" + got + "\"]\n";
  };
  return tests::job_with(hole("left", "0.500") + hole("right", "0.501") + known);
}

TEST(KnownText, EqualSizesAreTheMeanOfBoth) {
  auto job = judged(holes("[[known]]\nis = \"left = right\"\nwhy = \"bored in one setting\"\n"));
  EXPECT_NEAR(job.inches("survey/left"), 0.5005, 1e-8);
  EXPECT_EQ(job.ledger.get("known/known 1").source, "bored in one setting");
}

TEST(KnownText, WithinIsReadInTheUnitsOfTheJob) {
  auto job = judged(holes("[[known]]\nname = \"alike\"\nis = \"left = right\"\nwithin = \"0.003\"\n"));
  EXPECT_NEAR(job.ledger.get("known/alike").u() / 25.4, 0.003 / std::sqrt(3.0), 1e-12);
  EXPECT_EQ(job.ledger.get("known/alike").typed, "left = right, within 0.003");
  auto metric = judged(holes("[[known]]\nname = \"alike\"\nis = \"left = right\"\nwithin = \"0.1 mm\"\n"));
  EXPECT_NEAR(metric.ledger.get("known/alike").u(), 0.1 / std::sqrt(3.0), 1e-12);
}

TEST(KnownText, WrongEntriesAreToldAtTheirPlace) {
  EXPECT_THAT(troubles_of(holes("[[known]]\nis = \"left = rigth\"\n")), HasSubstr("did you mean 'right'?"));
  EXPECT_THAT(troubles_of(holes("[[known]]\nis = \"left\"\n")), HasSubstr("one '=' between two formulas"));
  EXPECT_THAT(troubles_of(holes("[[known]]\nis = \"left = right\"\nwithin = \"1 deg\"\n")),
              HasSubstr("'deg' does not measure a length"));
  EXPECT_THAT(
      troubles_of(holes("[[known]]\nis = \"left = right\"\n[[known]]\nis = \"left = right + 0.1\"\n")),
      HasSubstr("no sizes make all of them true"));
  EXPECT_THAT(troubles_of(holes("[[known]]\nwhy = \"so\"\n")), HasSubstr("needs the key 'is'"));
  EXPECT_THAT(troubles_of(holes("[[known]]\nis = \"left = right\"\nby = \"1\"\n")), HasSubstr("no key 'by'"));
}

// --- worn pairs ----------------------------------------------------------------------------------------------------

std::string worn_pair(const std::string& more) {
  const auto reading = [](const std::string& name, const std::string& what, const std::string& of,
                          const std::string& got, const std::string& rest) {
    return "[[reading]]\nname = \"" + name + "\"\nwhat = \"" + what + "\"\nof = \"" + of +
           "\"\nwith = \"caliper\"\njaws = \"outside\"\ngot = [\"" + got + "\"]\n" + rest;
  };
  return tests::job_with(reading("bore mouth", "inside", "bore", "0.7510", "") +
                         reading("shaft end", "outside", "shaft", "0.7500", "") +
                         reading("shaft band", "outside", "shaft", "0.7460", "condition = \"worn\"\n") +
                         more + "[original.bore]\nmate = \"shaft\"\n");
}
const std::string kWornBore =
    "[[reading]]\nname = \"bore middle\"\nwhat = \"inside\"\nof = \"bore\"\nwith = \"caliper\"\njaws = "
    "\"outside\"\n"
    "got = [\"0.7540\"]\ncondition = \"worn\"\n";

TEST(WornPair, TheClearanceHasGrownByTheWearOfBoth) {
  auto job = judged(worn_pair(kWornBore));
  const std::string fit = "fit of bore and shaft/";
  EXPECT_NEAR(job.inches(fit + "clearance then"), 0.0010, 1e-9);
  EXPECT_NEAR(job.inches(fit + "clearance now"), 0.0080, 1e-9);
  EXPECT_NEAR(job.inches(fit + "clearance grown"), 0.0070, 1e-9);
  EXPECT_NEAR(job.inches("worn/shaft/wear"), 0.0040, 1e-9);
  EXPECT_NEAR(job.inches("worn/bore/wear"), 0.0030, 1e-9);
  EXPECT_NEAR(job.inches(fit + "new hole for the shaft as it is"), 0.7470, 1e-9);
  EXPECT_NEAR(job.inches(fit + "new shaft for the hole as it is"), 0.7530, 1e-9);
  EXPECT_NEAR(job.inches(fit + "hole restored"), 0.7510, 1e-9);
  EXPECT_NEAR(job.inches(fit + "shaft restored"), 0.7500, 1e-9);
  EXPECT_THAT(job.ledger.get(fit + "clearance now").formula, HasSubstr("bore and shaft are worn"));
  // Four readings with one zero, (1 + 0.25)/3 e-6 in2 each.
  EXPECT_NEAR(job.ledger.get(fit + "clearance grown").u() / 25.4, std::sqrt(4.0 * 1.25 / 3.0) * 1e-3, 1e-9);
}

TEST(WornPair, OneWornAgainstASoundMate) {
  auto job = judged(worn_pair(""));
  const std::string fit = "fit of bore and shaft/";
  EXPECT_NEAR(job.inches(fit + "clearance grown"), 0.0040, 1e-9);
  EXPECT_NEAR(job.inches(fit + "new hole for the shaft as it is"), 0.7470, 1e-9);
  EXPECT_THAT(job.ledger.get(fit + "clearance now").formula,
              HasSubstr("shaft is worn, bore is taken as sound"));
  EXPECT_NEAR(job.ledger.get(fit + "clearance grown").u() / 25.4, std::sqrt(2.0 * 1.25 / 3.0) * 1e-3, 1e-9);
}

TEST(WornPair, ASoundPairSaysNothingOfWear) {
  auto job =
      judged(tests::job_with("[[reading]]\nname = \"bore\"\nwhat = \"inside\"\nof = \"bore\"\nwith = "
                             "\"caliper\"\ngot = [\"0.7510\"]\n"
                             "[original.bore]\nmate = \"pin\"\n"));
  EXPECT_TRUE(job.ledger.get("fit of bore and pin/clearance").known());
  EXPECT_FALSE(job.ledger.get("fit of bore and pin/clearance now").known());
}

}  // namespace
}  // namespace sparewright
