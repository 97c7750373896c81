// Planning the measuring of a job, what is proven after it, the plug gauge, and the list of what is found.
#include "core/measuring/measuring.hpp"

#include <gmock/gmock.h>

#include "core/route/list_sheet.hpp"
#include "judged_job.hpp"

namespace sparewright {
namespace {

using ledger::State;
using measuring::Met;
using measuring::MetRow;
using measuring::Plan;
using measuring::PlanRow;
using testing::HasSubstr;
using tests::judged;
using tests::Judged;
using tests::plain_shop;

// A 0-1 micrometer, a bore gauge and a caliper whose ranges are known; no comparator that does everything.
std::string shop(const std::string& bore_good_to = "0.0002", const std::string& more = "") {
  const std::string all = plain_shop();
  const auto first = all.find("[[instrument]]");
  const auto last = all.find("[[tool]]");
  return all.substr(0, first) +
         "[[instrument]]\nname = \"micrometer\"\nkind = \"outside micrometer\"\nreads = \"0.0001\"\n"
         "good_to = \"0.0001\"\nzero = \"0.0000\"\nfrom = \"0\"\nto = \"1\"\n"
         "[[instrument]]\nname = \"bore gauge\"\nkind = \"bore gauge\"\nreads = \"0.0001\"\ngood_to = \"" +
         bore_good_to +
         "\"\nzero = \"0.0000\"\nfrom = \"0.5\"\nto = \"1\"\n"
         "[[instrument]]\nname = \"caliper\"\nkind = \"dial caliper\"\nreads = \"0.001\"\ngood_to = "
         "\"0.001\"\n"
         "zero = \"0.000\"\nfrom = \"0\"\nto = \"6\"\n" +
         more + all.substr(last);
}

std::string job_of(const std::string& pin_with, const std::string& clearance,
                   const std::string& got = "[\"0.7500\", \"0.7500\"]", const std::string& more = "") {
  return "[job]\ntitle = \"Arm\"\nunits = \"in\"\nhand = \"left\"\n"
         "[[reading]]\nname = \"pin\"\nwhat = \"outside\"\nof = \"pin\"\nwith = \"" +
         pin_with + "\"\ngot = " + got + "\n" + more +
         "[blank]\nshape = \"block\"\nmaterial = \"1018 cold drawn\"\n"
         "size = { length = \"4\", width = \"3\", thickness = \"1\" }\n"
         "[[feature]]\nname = \"bore\"\nkind = \"hole\"\nhow = \"bored\"\nat.x = \"2\"\nat.y = \"1.5\"\n"
         "diameter = { on = \"pin\", clearance = \"" +
         clearance + "\", with = \"bore gauge\", duty = \"fits\" }\n";
}

PlanRow row_of(Judged& job, const std::string& what) {
  const auto plan = job.ledger.value<Plan>(measuring::kPlan);
  EXPECT_TRUE(plan);
  for (const PlanRow& row : plan ? plan->rows : std::vector<PlanRow>()) {
    if (row.what == what) return row;
  }
  ADD_FAILURE() << "no row of " << what;
  return {};
}
MetRow only_fit(Judged& job) {
  const auto met = job.ledger.value<Met>(measuring::kMet);
  if (!met || met->rows.size() != 1) {
    ADD_FAILURE() << "not one fit";
    return {};
  }
  return met->rows.front();
}

// --- before measuring ---------------------------------------------------------------------------------------------
TEST(MeasuringPlan, NamesWhatAFitHangsOnAndTheInstrumentThatReachesIt) {
  auto job = judged(job_of("caliper", "+0.0010 to +0.0020"), shop());
  const PlanRow pin = row_of(job, "pin");
  EXPECT_FALSE(pin.of_new_part);
  EXPECT_EQ(pin.needed_for, "bore, diameter");
  EXPECT_NEAR(pin.tolerance_mm.value_or(0.0), 0.0254, 1e-9);
  ASSERT_EQ(pin.with.size(), 3U);
  EXPECT_EQ(pin.with[0].instrument, "micrometer");  // not the caliper it was read with
  EXPECT_EQ(pin.state, State::kOk);                 // 4 * 0.00014 of 0.0010
  EXPECT_EQ(pin.says, "micrometer knows it to 0.0001 in");
  EXPECT_EQ(pin.with[2].why, "has no outside jaws");
  // The new bore: the bore gauge, four times 0.00024 of 0.0010.
  const PlanRow bore = row_of(job, "bore, diameter");
  EXPECT_TRUE(bore.of_new_part);
  EXPECT_EQ(bore.with[0].instrument, "bore gauge");
  EXPECT_EQ(bore.state, State::kOk);
}

TEST(MeasuringPlan, SaysNotKnownWhereNothingReachesIt) {
  auto job = judged(job_of("micrometer", "+0.0002 to +0.0004"), shop());
  EXPECT_EQ(row_of(job, "pin").state, State::kNotKnown);
  EXPECT_THAT(row_of(job, "pin").says, HasSubstr("NOT KNOWN with what is here: the best, micrometer"));
  EXPECT_EQ(row_of(job, "bore, diameter").state, State::kNotKnown);
}

TEST(MeasuringPlan, GoesByTheRange) {
  auto job = judged(job_of("caliper", "+0.010 to +0.020", "\"1.2500\""), shop());
  const PlanRow pin = row_of(job, "pin");
  EXPECT_EQ(pin.with[0].instrument, "caliper");  // the micrometer ends at 1 in
  EXPECT_EQ(pin.with[0].reaches, survey::Reaches::kYes);
  EXPECT_THAT(row_of(job, "bore, diameter").with[2].why, HasSubstr("measures 0.5 in to 1 in"));
}

TEST(MeasuringPlan, IsThereBeforeAnythingIsMeasured) {
  std::string text = job_of("micrometer", "+0.0010 to +0.0020");
  const auto from = text.find("[[reading]]");
  text.replace(from, text.find("[blank]") - from, "[dimension]\npin = \"diameter\"\n");
  auto job = judged(text, shop());
  const PlanRow pin = row_of(job, "pin");
  EXPECT_FALSE(pin.size_mm);
  EXPECT_NEAR(pin.tolerance_mm.value_or(0.0), 0.0254, 1e-9);
  EXPECT_EQ(pin.with[0].instrument, "micrometer");
  EXPECT_THAT(pin.says, HasSubstr("whether it goes that far is not known"));
}

// --- after measuring ------------------------------------------------------------------------------------------------
TEST(MeasuringMet, AFitThatIsProven) {
  auto job = judged(job_of("micrometer", "+0.0010 to +0.0030"), shop());
  const MetRow fit = only_fit(job);
  EXPECT_EQ(fit.state, State::kOk) << fit.says;
  EXPECT_THAT(fit.says, HasSubstr("proven 19 times in 20"));
}

TEST(MeasuringMet, TheReadingThatTakesMostIsNamedAndHowMuchBetterItMustBe) {
  auto job = judged(job_of("caliper", "+0.0010 to +0.0030"), shop());
  const MetRow fit = only_fit(job);
  EXPECT_EQ(fit.state, State::kClose);
  ASSERT_FALSE(fit.remedies.empty());
  EXPECT_EQ(fit.remedies[0].of, "the reading 'pin'");
  // Error 0.001 and half a step of 0.0005 together: sqrt(1.25) * 0.001 = 0.00111.
  EXPECT_THAT(fit.remedies[0].todo, HasSubstr("where caliper has 0.0011 in"));
  EXPECT_THAT(fit.says, HasSubstr("the reading 'pin' puts "));
  ASSERT_TRUE(fit.remedies[0].doubt.keep);
  const double keep = *fit.remedies[0].doubt.keep;
  EXPECT_GT(keep, 0.0);
  EXPECT_LT(keep, 1.0);
  // An instrument that much better, its zero as good as before, proves it; half as much better does not. The caliper's own
  // error and step shrink, the zero is stated as it was.
  const auto with = [&](double times) {
    const std::string extra =
        "[[instrument]]\nname = \"better\"\nkind = \"comparator\"\nzero = \"0.0000\"\nzero_within = "
        "\"0.0005\"\n"
        "reads = \"" +
        std::to_string(0.001 * times) + "\"\ngood_to = \"" + std::to_string(0.001 * times) + "\"\n";
    auto again = judged(job_of("better", "+0.0010 to +0.0030"), shop("0.0002", extra));
    return only_fit(again).state;
  };
  EXPECT_EQ(with(keep * 0.9), State::kOk);
  EXPECT_EQ(with(keep * 1.1), State::kClose);
}

TEST(MeasuringMet, AScatterIsReadMoreOften) {
  const std::string four = "\"0.7496\", \"0.7500\", \"0.7504\", \"0.7500\"";
  auto job = judged(job_of("micrometer", "+0.0010 to +0.0018", "[" + four + "]"), shop());
  const MetRow fit = only_fit(job);
  EXPECT_EQ(fit.state, State::kClose) << fit.says;
  ASSERT_FALSE(fit.remedies.empty());
  EXPECT_EQ(fit.remedies[0].doubt.largest, "reading/pin/scatter");
  int times = 0;
  ASSERT_EQ(std::sscanf(fit.remedies[0].todo.c_str(), "read it %d times in all", &times), 1)
      << fit.remedies[0].todo;
  EXPECT_GT(times, 4);
  EXPECT_LE(times, 12);
  auto twelve = judged(
      job_of("micrometer", "+0.0010 to +0.0018", "[" + four + ", " + four + ", " + four + "]"), shop());
  EXPECT_EQ(only_fit(twelve).state, State::kOk) << only_fit(twelve).says;
}

TEST(MeasuringMet, WithoutTheMateItIsNotKnown) {
  std::string text = job_of("micrometer", "+0.0010 to +0.0020");
  const auto from = text.find("[[reading]]");
  text.replace(from, text.find("[blank]") - from, "[dimension]\npin = \"diameter\"\n");
  auto job = judged(text, shop());
  EXPECT_EQ(only_fit(job).state, State::kNotKnown);
  EXPECT_THAT(only_fit(job).says, HasSubstr("NOT KNOWN: survey/pin is missing"));
}

// --- finer than the instrument ---------------------------------------------------------------------------------------
route::ListSection plug_of(Judged& job) {
  const auto section = job.ledger.value<route::ListSection>("plug gauge/bore/section");
  return section ? *section : route::ListSection{};
}

TEST(PlugGauge, IsNotProposedWhereAnInstrumentDoes) {
  auto job = judged(job_of("micrometer", "+0.0010 to +0.0020"), shop());
  EXPECT_TRUE(plug_of(job).says.empty());
  EXPECT_FALSE(job.ledger.get("plug gauge/bore/go").known());
}

TEST(PlugGauge, ItsStepsAreTheLimitsLessWhatTheMicrometerLeavesOpen) {
  // A bore gauge good to 0.0010 knows a bore to 0.0012 either way: nothing of 0.0010 is left.
  auto job = judged(job_of("micrometer", "+0.0010 to +0.0020"), shop("0.0010"));
  // Plug and pin read off one micrometer: of each error 0.0001, half a step 0.00005, rectangular; its zero cancels:
  // 1.96 * sqrt(2 * 1.25e-8/3) = 0.000179. 0.7510 and that up: 0.7512; 0.7520 less that down: 0.7518.
  EXPECT_NEAR(job.inches("plug gauge/bore/go"), 0.7512, 1e-9);
  EXPECT_NEAR(job.inches("plug gauge/bore/will not go"), 0.7518, 1e-9);
  EXPECT_NEAR(job.inches("plug gauge/bore/comes before"), 0.7492, 1e-9);
  // 0.0006 apart, steps no closer than 0.00018: two between, 0.0002 apart.
  EXPECT_NEAR(job.inches("plug gauge/bore/step 1"), 0.7514, 1e-9);
  EXPECT_NEAR(job.inches("plug gauge/bore/step 2"), 0.7516, 1e-9);
  EXPECT_FALSE(job.ledger.get("plug gauge/bore/step 3").known());
  EXPECT_NEAR(job.inches("plug gauge/bore/tells to"), 0.0001, 1e-9);
  const auto section = plug_of(job);
  ASSERT_EQ(section.says.size(), 2U);
  EXPECT_THAT(section.says[0], HasSubstr("There is no lathe to turn one on"));
  EXPECT_THAT(section.says[0], HasSubstr("measure each with micrometer"));
  EXPECT_THAT(section.says[1], HasSubstr("Offer up pin while the work is still held"));
  ASSERT_EQ(section.table.rows.size(), 5U);
  EXPECT_EQ(section.table.rows[1][1], "0.7512");
  EXPECT_EQ(section.table.rows[1][2], "MUST GO");
  const auto verdict = job.verdict("fit as it can be measured", "bore");
  EXPECT_THAT(verdict.todo, HasSubstr("stepped plug gauge of the inspection sheet"));
}

TEST(PlugGauge, DoesNotMendAMateThatIsKnownTooPoorly) {
  // The pin by the caliper is known to 0.0014 either way: nothing of 0.0010 is left, however well the plug is read.
  auto job = judged(job_of("caliper", "+0.0010 to +0.0020"), shop("0.0010"));
  EXPECT_FALSE(job.ledger.get("plug gauge/bore/go").known());
  const auto section = plug_of(job);
  ASSERT_EQ(section.says.size(), 2U);
  EXPECT_THAT(section.says[0], HasSubstr("A plug gauge does not tell them either"));
  EXPECT_THAT(section.says[1], HasSubstr("Offer up pin"));
}

// --- as found ---------------------------------------------------------------------------------------------------------
std::string all_words(const route::ListSheet& sheet) {
  std::string all;
  for (const route::ListSection& section : sheet.sections) {
    all += section.heading + "\n";
    for (const auto* list : {&section.says, &section.ticks, &section.blanks}) {
      for (const std::string& one : *list)
        all += one + "\n";
    }
    for (const auto& row : section.table.rows)
      all += row[1] + ": " + row[2] + "\n";
  }
  return all;
}

TEST(AsFound, AsksForWhatThePartHas) {
  auto job = judged(job_of("micrometer", "+0.0010 to +0.0020"), shop());
  const auto sheet = job.ledger.value<route::ListSheet>("as found/sheet");
  ASSERT_TRUE(sheet);
  const std::string words = all_words(*sheet);
  EXPECT_THAT(words, HasSubstr("match marks across every joint"));
  EXPECT_THAT(words, HasSubstr("photographs"));
  EXPECT_THAT(words, HasSubstr("Hand, left or right (the job says: left), and which end faced you"));
  EXPECT_THAT(words, HasSubstr("play of pin"));
  EXPECT_THAT(words, HasSubstr("Shims and washers"));
  EXPECT_THAT(words, testing::Not(HasSubstr("lash")));
  EXPECT_THAT(words, testing::Not(HasSubstr("Bearings")));
}

TEST(AsFound, AGearAKeyAndABearingEachAddTheirOwn) {
  const std::string gear =
      "[[reading]]\nname = \"teeth\"\nwhat = \"over gear teeth\"\nof = \"module\"\ncount = 20\nwith = "
      "\"caliper\"\n"
      "got = \"2.200\"\n";
  std::string text = job_of("micrometer", "+0.0010 to +0.0020", "\"0.7500\"", gear);
  text +=
      "[[feature]]\nname = \"seat\"\nkind = \"keyseat\"\nside = \"top\"\nalong = \"x\"\nat.x = \"3.4\"\nat.y "
      "= "
      "\"0.5\"\nlength = \"0.5\"\nwidth = \"0.1875\"\ndepth = \"0.1\"\n";
  auto job = judged(text, shop());
  const auto sheet = job.ledger.value<route::ListSheet>("as found/sheet");
  ASSERT_TRUE(sheet);
  const std::string words = all_words(*sheet);
  EXPECT_THAT(words, HasSubstr("lash of the teeth: indicator on a tooth, four places round"));
  EXPECT_THAT(words, HasSubstr("rock of the key"));
  EXPECT_THAT(words, HasSubstr("timing marked"));
}

TEST(AsFound, WithoutAnOldPartThereIsNothingToTakeApart) {
  std::string text = job_of("micrometer", "+0.0010 to +0.0020");
  const auto from = text.find("[[reading]]");
  text.replace(from, text.find("[blank]") - from, "[dimension]\npin = \"diameter\"\n");
  auto job = judged(text, shop());
  const auto sheet = job.ledger.value<route::ListSheet>("as found/sheet");
  ASSERT_TRUE(sheet);
  EXPECT_TRUE(sheet->sections.empty());
}

}  // namespace
}  // namespace sparewright
