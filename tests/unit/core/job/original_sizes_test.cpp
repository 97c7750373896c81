// Original sizes from texts to figures: what is accepted, what formulas and mates go by, and the fits of pairs.
#include <cmath>

#include <gmock/gmock.h>

#include "judged_job.hpp"

namespace sparewright {
namespace {

using testing::HasSubstr;
using tests::judged;
using tests::plain_shop;
using tests::troubles_of;

// Two pins of which the centres were read over and between: (6.6275 + 5.3775) / 2 = 6.0025.
std::string centres(const std::string& sections) {
  const auto reading = [](const std::string& name, const std::string& rest) {
    return "[[reading]]\nname = \"" + name + "\"\nwith = \"caliper\"\n" + rest + "\n";
  };
  return "[job]\ntitle = \"Arm\"\nunits = \"in\"\nhand = \"not handed\"\n" +
         reading("pivot", "what = \"outside\"\nof = \"pivot_pin\"\ngot = [\"0.7500\"]") +
         reading("stud", "what = \"outside\"\nof = \"stud\"\ngot = [\"0.5000\"]") +
         reading("over",
                 "what = \"over pins\"\nof = [\"centres\", \"pivot_pin\", \"stud\"]\ngot = [\"6.6275\"]") +
         reading("between",
                 "what = \"between pins\"\nof = [\"centres\", \"pivot_pin\", \"stud\"]\ngot = [\"5.3775\"]") +
         "[blank]\nshape = \"block\"\nmaterial = \"1018 cold drawn\"\n"
         "size = { length = \"9\", width = \"3\", thickness = \"1\" }\n" +
         sections;
}
std::string holes(const std::string& tolerance) {
  return "[[feature]]\nname = \"pivot bore\"\nkind = \"hole\"\nhow = \"bored\"\nat.x = \"1.5\"\nat.y = "
         "\"1.5\"\n"
         "diameter = { on = \"pivot_pin\", clearance = \"+0.0010 to +0.0020\" }\n"
         "[[feature]]\nname = \"stud hole\"\nkind = \"hole\"\nhow = \"drilled\"\ndiameter = \"1/2\"\nat.y = "
         "\"1.5\"\n"
         "at.x = { size = \"centres\", from = \"pivot bore\", tol = \"" +
         tolerance + "\" }\n";
}

TEST(OriginalSizes, AreProposedForEveryMeasuredLength) {
  auto job = judged(centres(""));
  EXPECT_NEAR(job.inches("survey/centres"), 6.0025, 1e-9);
  EXPECT_NEAR(job.inches("original/centres/proposed 1"), 6.0, 1e-12);
  EXPECT_NEAR(job.inches("original/centres/proposed 1 leaves over"), 0.0025, 1e-9);
  EXPECT_NEAR(job.inches("original/pivot_pin/proposed 1"), 0.75, 1e-12);
  EXPECT_FALSE(job.ledger.get("original/centres/size").known());  // nothing is accepted by itself
}

TEST(OriginalSizes, AFormulaGoesByTheAcceptedSizeAndTheTrailShowsTheMeasuredOne) {
  auto job = judged(centres("[original]\ncentres = \"6.000\"\n" + holes("±0.002")));
  EXPECT_NEAR(job.inches("feature/stud hole/x"), 6.0, 1e-12);
  EXPECT_NEAR(job.inches("original/centres/leaves over"), 0.0025, 1e-9);
  EXPECT_GT(job.ledger.get("original/centres/leaves over").u(), 0.0);
  const ledger::Figure accepted = job.ledger.get("original/centres/size");
  EXPECT_EQ(accepted.origin, ledger::Origin::kChoice);
  EXPECT_EQ(accepted.u(), 0.0);
  const ledger::Trail trail = job.ledger.why("feature/stud hole/x");
  ASSERT_EQ(trail.inputs.size(), 1U);
  EXPECT_EQ(trail.inputs[0].figure.name.text(), "original/centres/size");
  ASSERT_EQ(trail.inputs[0].inputs.size(), 1U);
  EXPECT_EQ(trail.inputs[0].inputs[0].figure.name.text(), "survey/centres");
}

TEST(OriginalSizes, WithoutOneAFormulaGoesByWhatWasMeasured) {
  auto job = judged(centres(holes("±0.002")));
  EXPECT_NEAR(job.inches("feature/stud hole/x"), 6.0025, 1e-9);
}

TEST(OriginalSizes, TheMateInHandOutranksTheNominal) {
  auto job = judged(centres("[original]\npivot_pin = \"0.7510\"\n" + holes("±0.002")));
  EXPECT_NEAR(job.inches("feature/pivot bore/diameter/least"), 0.7510, 1e-9);  // 0.7500 as measured + 0.0010
}

TEST(OriginalSizes, HaveTheLimitsAcceptedWithThem) {
  auto job =
      judged(centres("[original]\npivot_pin = \"0.7505 -0.0002/-0.0008\"\n"
                     "stud = { size = \"0.5000\", tol = \"g6\", duty = \"fits\" }\n"));
  EXPECT_NEAR(job.inches("original/pivot_pin/least"), 0.7497, 1e-9);
  EXPECT_NEAR(job.inches("original/pivot_pin/most"), 0.7503, 1e-9);
  // ISO 286: g6 over 10 to 18 mm is -6 to -17 um.
  EXPECT_NEAR(job.ledger.get("original/stud/least").value, 12.7 - 0.017, 1e-9);
  EXPECT_NEAR(job.ledger.get("original/stud/most").value, 12.7 - 0.006, 1e-9);
}

TEST(OriginalSizes, AWrongEntryIsToldAtItsPlace) {
  EXPECT_THAT(troubles_of(centres("[original]\ncentre = \"6\"\n")),
              HasSubstr("the job has no measured length or diameter 'centre'"));
  EXPECT_THAT(troubles_of(centres("[original]\ncentre = \"6\"\n")), HasSubstr("did you mean 'centres'?"));
  EXPECT_THAT(troubles_of(centres("[original]\ncentres = \"0\"\n")), HasSubstr("it must be more than zero"));
  EXPECT_THAT(troubles_of(centres("[original.centres]\nduty = \"fits\"\n")),
              HasSubstr("needs the key 'size'"));
  EXPECT_THAT(troubles_of(centres("[original.centres]\nsize = \"6\"\nmate = \"centres\"\n")),
              HasSubstr("'centres'"));
  EXPECT_THAT(troubles_of(centres("[original.stud]\nmate = \"pivot_pin\"\n")),
              HasSubstr("a hole: both are measured over metal"));
  EXPECT_THAT(troubles_of(centres("[original.stud]\nsize = \"0.5 g6\"\ntol = \"±0.001\"\n")),
              HasSubstr("one tolerance"));
  EXPECT_EQ(troubles_of(centres("[original]\ncentres = \"6\"\n")), "");
}

std::string with_head(const std::string& more) {
  std::string job = centres("");
  const std::string head = "units = \"in\"\n";
  return job.replace(job.find(head), head.size(), head + more);
}

TEST(OriginalSizes, WhereAndWhenTheMachineWasMadeWeighs) {
  const auto inch = [](const std::string& more) {
    auto job = judged(with_head(more));
    return job.ledger.value<intent::Proposals>("original/centres/proposals")->chance_of_inch;
  };
  EXPECT_LT(inch("made_in = \"the Continent\"\n"), inch(""));
  EXPECT_GT(inch("made_in = \"America\"\nmade_about = 1942\n"), inch(""));
  EXPECT_EQ(troubles_of(with_head("made_in = \"Britain\"\nmade_about = 1955\n")), "");
  EXPECT_THAT(troubles_of(with_head("made_about = 52\n")), HasSubstr("a year, 1750 to 2100"));
  EXPECT_THAT(troubles_of(with_head("made_in = \"Atlantis\"\n")), HasSubstr("America"));
}

// --- pairs ---------------------------------------------------------------------------------------------------------------

std::string with_micrometers() {
  const auto micrometer = [](const std::string& name) {
    return "[[instrument]]\nname = \"" + name +
           "\"\nkind = \"outside micrometer\"\nreads = \"0.0001\"\ngood_to = \"0.0001\"\njaws = "
           "[\"outside\"]\n";
  };
  return plain_shop() + micrometer("micrometer") + micrometer("other micrometer");
}

// A bore taken with a telescoping gauge and read off a micrometer, and a shaft.
std::string bore_and_shaft(const std::string& with, const std::string& condition = "sound") {
  return "[job]\ntitle = \"Pair\"\nunits = \"in\"\nhand = \"not handed\"\n"
         "[[reading]]\nname = \"bore\"\nwhat = \"inside\"\nof = \"bore\"\njaws = \"outside\"\nwith = \"" +
         with + "\"\ngot = [\"0.7512\"]\ncondition = \"" + condition +
         "\"\n"
         "[[reading]]\nname = \"shaft\"\nwhat = \"outside\"\nof = \"shaft\"\nwith = \"micrometer\"\n"
         "got = [\"0.7498\"]\n"
         "[original.bore]\nmate = \"shaft\"\n"
         "[blank]\nshape = \"block\"\nmaterial = \"1018 cold drawn\"\n"
         "size = { length = \"4\", width = \"3\", thickness = \"1\" }\n";
}

// Each reading: good to 0.0001 and half a step of 0.0001, rectangular: (1e-4)^2/3 + (0.5e-4)^2/3 = 4.1667e-9 in2; and a
// zero nobody looked at, (1e-4)^2/3 = 3.3333e-9, that both share where the micrometer is one.
TEST(FitOfAPair, TheZeroOfOneInstrumentCancels) {
  auto one = judged(bore_and_shaft("micrometer"), with_micrometers());
  const ledger::Figure clearance = one.ledger.get("fit of bore and shaft/clearance");
  EXPECT_NEAR(clearance.value / 25.4, 0.0014, 1e-9);
  EXPECT_NEAR(clearance.u() / 25.4, std::sqrt(2 * 4.166667e-9), 1e-9);
  auto two = judged(bore_and_shaft("other micrometer"), with_micrometers());
  EXPECT_NEAR(two.ledger.get("fit of bore and shaft/clearance").u() / 25.4, std::sqrt(2 * 7.5e-9), 1e-9);
}

TEST(FitOfAPair, TheNearestStandardFitsAreNamed) {
  auto job = judged(bore_and_shaft("micrometer"), with_micrometers());
  const auto fits = job.ledger.value<intent::FitOfPair>("fit of bore and shaft/fits");
  ASSERT_TRUE(fits);
  EXPECT_NEAR(fits->nominal_mm, 19.05, 1e-9);  // the shaft's 3/4
  ASSERT_EQ(fits->near.size(), 8U);
  // 0.0014 +- 0.00018: within RC3, 0.0008 to 0.0021.
  EXPECT_THAT(fits->near, testing::Contains(testing::AllOf(testing::Field(&intent::NearFit::fit, "RC3"),
                                                           testing::Field(&intent::NearFit::out_mm, 0.0))));
}

TEST(FitOfAPair, AWornBoreLeavesItOpen) {
  auto job = judged(bore_and_shaft("micrometer", "worn"), with_micrometers());
  const ledger::Figure clearance = job.ledger.get("fit of bore and shaft/clearance");
  EXPECT_TRUE(clearance.known());
  EXPECT_NE(clearance.bound, ledger::Bound::kExact);
  EXPECT_FALSE(job.ledger.value<intent::FitOfPair>("fit of bore and shaft/fits"));
  // The worn bore is proposed the size of its mate.
  EXPECT_NEAR(job.inches("original/bore/proposed 1"), 0.75, 1e-12);
}

TEST(FitOfAPair, AHoleOfTheNewPartOnItsMate) {
  auto job = judged(centres(holes("±0.002")));
  EXPECT_NEAR(job.inches("fit of pivot bore and pivot_pin/least"), 0.0010, 1e-9);
  EXPECT_NEAR(job.inches("fit of pivot bore and pivot_pin/most"), 0.0020, 1e-9);
  const auto fits = job.ledger.value<intent::FitOfPair>("fit of pivot bore and pivot_pin/fits");
  ASSERT_TRUE(fits);
  EXPECT_FALSE(fits->is_measured);
}

}  // namespace
}  // namespace sparewright
