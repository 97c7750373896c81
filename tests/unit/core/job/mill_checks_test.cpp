// Cutters, saws, points and reach on the mill: each a job just inside its limit and one just outside. The plain block is
// 4 x 3 x 1 in, its shop's end mill 1/2 as marked (so known to 0.002 in).
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "job_file.hpp"

namespace sparewright {
namespace {

using ledger::State;
using testing::HasSubstr;
using tests::job_with;
using tests::judged;
using tests::notes_of;
using tests::plain_shop;
using tests::setup_with;
using tests::with;

std::string feature(const std::string& kind, const std::string& rest) {
  return fmt::format("[[feature]]\nname = \"it\"\nkind = \"{}\"\n{}\n", kind, rest);
}
std::string made(const std::string& tools) {
  return setup_with("[[setup.do]]\nmake = \"it\"\nwith = [" + tools + "]\n");
}
std::string tool(const std::string& name, const std::string& kind, const std::string& rest) {
  return fmt::format("[[tool]]\nname = \"{}\"\nkind = \"{}\"\n{}\n", name, kind, rest);
}
std::string slot(const std::string& sizes) {
  return feature("slot", "along = \"x\"\nat.x = \"2\"\nat.y = \"1.5\"\n" + sizes);
}

// --- cutters ------------------------------------------------------------------------------------------------------
TEST(MillCutterCheck, AnEndMillGoesIntoTheSlot) {
  const auto wide = [](const std::string& width) {
    return job_with(slot("length = \"1\"\nwidth = \"" + width + "\"\ndepth = \"0.2\"") +
                    made("\"end mill\""));
  };
  auto inside = judged(wide("0.5005 ±0.0005"));  // 0.501 at most
  EXPECT_NEAR(inside.margin_in("the cutter is no larger than the width", "it"), 0.001, 1e-9);
  auto outside = judged(wide("0.4985 ±0.0005"));  // 0.499 at most
  EXPECT_EQ(outside.state("the cutter is no larger than the width", "it"), State::kNo);
}

TEST(MillCutterCheck, AnEndMillGetsIntoTheCorners) {  // half of 1/2 is 0.250
  const auto pocket = [](const std::string& radius) {
    return job_with(
        feature("pocket",
                "along = \"x\"\nat.x = \"2\"\nat.y = \"1.5\"\nlength = \"2\"\nwidth = \"1\"\ndepth = "
                "\"0.2\"\ncorner_radius = \"" +
                    radius + "\"") +
        made("\"end mill\""));
  };
  auto inside = judged(pocket("0.249 ±0.002"));
  EXPECT_NEAR(inside.margin_in("the cutter gets into the corners", "it"), 0.001, 1e-9);
  auto outside = judged(pocket("0.247 ±0.002"));
  EXPECT_EQ(outside.state("the cutter gets into the corners", "it"), State::kNo);
  auto sharper = judged(pocket("0.300 ±0.002"));
  EXPECT_EQ(sharper.state("the cutter gets into the corners", "it"), State::kClose);
}

TEST(MillCutterCheck, AChamferWantsNinetyDegreesAndEnoughFlank) {
  const auto with_tool = [](const std::string& size, const std::string& angle) {
    return judged(
        job_with(feature("chamfer", "side = \"top\"\nedge = \"front\"\nsize = \"" + size + "\"") +
                 made("\"sink\"")),
        plain_shop() + tool("sink", "countersink", "diameter = \"0.5\"\nangle = \"" + angle + "\""));
  };
  auto inside = with_tool("0.249", "90");
  EXPECT_NEAR(inside.margin_in("the flank is long enough", "it"), 0.001, 1e-9);
  EXPECT_EQ(inside.state("the point has the angle", "it"), State::kOk);
  EXPECT_EQ(with_tool("0.251", "90").state("the flank is long enough", "it"), State::kNo);
  EXPECT_EQ(with_tool("0.1", "82").state("the point has the angle", "it"), State::kNo);
}

TEST(MillCutterCheck, ACountersinkWithoutItsAngleIsNotKnown) {
  const std::string sunk = job_with(
      feature(
          "hole",
          "how = \"countersunk\"\nat.x = \"2\"\nat.y = \"1.5\"\ndiameter = \"0.500 ±0.005\"\ncountersink = "
          "{ diameter = \"0.8\", angle = \"82\" }") +
      made("\"drill 1/2\", \"sink\""));
  auto missing = judged(sunk, plain_shop() + tool("sink", "countersink", "diameter = \"1\""));
  EXPECT_EQ(missing.state("the point has the angle", "it"), State::kNotKnown);
  auto other = judged(sunk, plain_shop() + tool("sink", "countersink", "diameter = \"1\"\nangle = \"90\""));
  EXPECT_EQ(other.state("the point has the angle", "it"), State::kNo);
  auto right = judged(sunk, plain_shop() + tool("sink", "countersink", "diameter = \"1\"\nangle = \"82\""));
  EXPECT_EQ(right.state("the point has the angle", "it"), State::kOk);
  // (0.8 - 0.5) / 2 over tan 41 degrees = 0.15 / 0.869287 = 0.172555
  EXPECT_NEAR(right.inches("op 10/it/sink down"), 0.172555, 1e-6);
}

// --- saws ---------------------------------------------------------------------------------------------------------
// A slit from the right end into a hole 1 in from it: laid on its front, its back is up.
std::string slit() {
  return job_with(R"(
[[feature]]
name = "hole"
kind = "hole"
how = "drilled"
at.x = "3"
at.y = "1.5"
diameter = "0.500"
[[feature]]
name = "it"
kind = "slit"
in = "hole"
side = "right end"
width = { size = "0.062", tol = "±0.002" }
[[setup]]
op = 10
name = "slit"
machine = "mill"
hold = { in = "vise", sits_on = "front", fixed_jaw = "top", parallels = "1/4 x 1/8" }
pick_up = { x = "left end", y = "top", with = "edge finder" }
[[setup.do]]
make = "it"
with = ["saw"]
)");
}

TEST(SawCheck, ASawGoesDeepEnough) {
  const auto saw = [](const std::string& rest) {
    return judged(slit(), plain_shop() + tool("saw", "slitting saw", "width = \"0.062\"\n" + rest));
  };
  auto inside = saw("diameter = \"4\"\nreach = \"1.001\"");
  EXPECT_NEAR(inside.margin_in("the saw goes deep enough", "it"), 0.001, 1e-9);
  EXPECT_EQ(saw("diameter = \"4\"\nreach = \"0.999\"").state("the saw goes deep enough", "it"), State::kNo);
  EXPECT_EQ(saw("diameter = \"4\"").state("the saw goes deep enough", "it"), State::kNotKnown);
  EXPECT_EQ(saw("diameter = \"1.9\"").state("the saw goes deep enough", "it"),
            State::kNo);  // not with no arbor at all
  // The middle of the saw: 4 from the left end, and half of 4 less 1 outside.
  EXPECT_NEAR(inside.inches("op 10/it/x wanted"), 5.0, 1e-9);
  // Its lower face: the hole's middle lies 3 - 1.5 down from the back, and half of 0.062.
  EXPECT_NEAR(inside.inches("op 10/it/saw down"), 1.531, 1e-9);
}

TEST(SawCheck, ASawIsNoThickerThanTheCut) {
  const auto thick = [](const std::string& width) {
    return judged(slit(),
                  plain_shop() + tool("saw", "slitting saw",
                                      "diameter = \"4\"\nreach = \"1.2\"\nwidth = \"" + width + "\""));
  };
  auto inside = thick("0.063");
  EXPECT_NEAR(inside.margin_in("the saw is no thicker than the cut", "it"), 0.001, 1e-9);
  EXPECT_EQ(thick("0.065").state("the saw is no thicker than the cut", "it"), State::kNo);
}

TEST(SawCheck, ASawThatStandsUprightIsNotWorkedOut) {  // the hole is up: the saw would have to stand
  auto job =
      judged(with(with(slit(), "\"front\", fixed_jaw = \"top\"", "\"underside\", fixed_jaw = \"back\""),
                  "y = \"top\"", "y = \"back\""),
             plain_shop() + tool("saw", "slitting saw", "diameter = \"4\"\nwidth = \"0.062\""));
  EXPECT_EQ(job.state("how it is cut", "it"), State::kNotKnown);
}

// --- reach --------------------------------------------------------------------------------------------------------
TEST(ToolReachCheck,
     EveryToolOfTheChainReaches) {  // through 1 in; a 1/2 drill's point is 0.25 / tan 59 = 0.15022
  const auto drilled = [](const std::string& reach) {
    return judged(
        job_with(feature("hole", "how = \"reamed\"\nat.x = \"2\"\nat.y = \"1.5\"\ndiameter = \"0.500\"") +
                 made("\"long\", \"short\"")),
        plain_shop() + tool("long", "twist drill", "diameter = \"1/2\"\nreach = \"" + reach + "\"") +
            tool("short", "reamer", "diameter = \"0.5\"\nreach = \"0.9\""));
  };
  auto inside = drilled("1.151");
  EXPECT_NEAR(inside.margin_in("long reaches", "it"), 0.00078, 1e-5);
  EXPECT_EQ(inside.state("short reaches", "it"), State::kNo);  // 0.9 of 1
  EXPECT_EQ(drilled("1.149").state("long reaches", "it"), State::kNo);
}

TEST(ToolReachCheck, AnEndMillReachesTheFloor) {
  const auto deep = [](const std::string& depth) {
    return judged(
        job_with(slot("length = \"1\"\nwidth = \"0.5\"\ndepth = \"" + depth + "\"") + made("\"stub\"")),
        plain_shop() + tool("stub", "end mill", "diameter = \"1/2\"\nreach = \"0.5\""));
  };
  auto inside = deep("0.499");
  EXPECT_NEAR(inside.margin_in("stub reaches", "it"), 0.001, 1e-9);
  EXPECT_EQ(deep("0.501").state("stub reaches", "it"), State::kNo);
}

TEST(ReachCheck, ASlotWantsItsSideUp) {
  const std::string front = job_with(
      feature(
          "slot",
          "side = \"front\"\nalong = \"x\"\nat.x = \"2\"\nat.z = \"0.5\"\nwidth = \"0.5\"\ndepth = \"0.2\"") +
      made("\"end mill\""));
  auto job = judged(front);
  EXPECT_EQ(job.state("spindle reaches it", "it"), State::kNo);
  EXPECT_EQ(job.state("how it is cut", "it"), State::kNotKnown);
}

// The walls of a slot lie farther apart than its middle: 2 and (1 - 0.5) / 2 from the left end.
TEST(ReachCheck, TheSlideGoesToTheEndsOfASlot) {
  const auto shop = [](const std::string& x) {
    return with(plain_shop(), "quiet_cut = ", "travel = { x = \"" + x + "\", y = \"6\" }\nquiet_cut = ");
  };
  const std::string text =
      job_with(slot("length = \"1\"\nwidth = \"0.5\"\ndepth = \"0.2\"") + made("\"end mill\""));
  auto inside = judged(text, shop("2.26"));
  for (const auto& v : inside.ledger.verdicts())
    EXPECT_NE(v.check, "the slide goes that far");
  auto outside = judged(text, shop("2.24"));
  EXPECT_EQ(outside.state("the slide goes that far", "op 10, x"), State::kNo);
}

// The block is 4 long and the cutter 1/2: 4.5 from air to air.
TEST(ReachCheck, TheSlideGoesRightAcrossTheWork) {
  const auto shop = [](const std::string& x) {
    return with(plain_shop(), "quiet_cut = ", "travel = { x = \"" + x + "\", y = \"6\" }\nquiet_cut = ");
  };
  const std::string text = job_with(slot("width = \"0.5\"\ndepth = \"0.2\"") + made("\"end mill\""));
  auto inside = judged(text, shop("4.501"));
  EXPECT_NEAR(inside.margin_in("the slide goes right across", "it"), 0.001, 1e-9);
  auto outside = judged(text, shop("4.499"));
  EXPECT_EQ(outside.state("the slide goes right across", "it"), State::kNo);
}

// --- drills before a tap or a bore --------------------------------------------------------------------------------
TEST(ToolSizeCheck, ATapDrillLeavesMetalForTheThread) {  // 1/4-20: 0.250 over its crests
  const auto drilled = [](const std::string& size) {
    return judged(
        job_with(
            feature("hole", "how = \"tapped\"\nthread = \"1/4-20 UNC-2B\"\nat.x = \"2\"\nat.y = \"1.5\"") +
            made("\"drill\", \"tap\"")),
        plain_shop() + tool("drill", "twist drill", "diameter = \"" + size + "\""));
  };
  auto inside = drilled("0.249");
  EXPECT_NEAR(inside.margin_in("the drill leaves metal for the thread", "it"), 0.001, 1e-9);
  EXPECT_EQ(drilled("0.251").state("the drill leaves metal for the thread", "it"), State::kNo);
}

TEST(ToolSizeCheck, ADrillLeavesMetalForTheBore) {
  const auto drilled = [](const std::string& size) {
    return judged(
        job_with(
            feature("hole", "how = \"bored\"\nat.x = \"2\"\nat.y = \"1.5\"\ndiameter = \"0.500 ±0.001\"") +
            made("\"drill\", \"boring head\"")),
        plain_shop() + tool("drill", "twist drill", "diameter = \"" + size + "\""));
  };
  auto inside = drilled("0.498");
  EXPECT_NEAR(inside.margin_in("the drill leaves metal for the bore", "it"), 0.001, 1e-9);
  EXPECT_EQ(drilled("0.500").state("the drill leaves metal for the bore", "it"), State::kNo);
}

TEST(ToolSizeCheck, ACounterboreIsWhatItIs) {
  const auto spotface = [](const std::string& size) {
    return judged(job_with(feature("hole",
                                   "how = \"spotfaced\"\nat.x = \"2\"\nat.y = \"1.5\"\ndiameter = \"0.500 "
                                   "±0.005\"\nspotface = { diameter = \"" +
                                       size + "\", depth = \"0.1\" }") +
                           made("\"drill 1/2\", \"facer\"")),
                  plain_shop() + tool("facer", "counterbore", "diameter = \"1\""));
  };
  auto inside = spotface("1.004 ±0.005");
  EXPECT_NEAR(inside.margin_in("the counterbore has the size", "it"), 0.001, 1e-9);
  EXPECT_EQ(spotface("1.006 ±0.005").state("the counterbore has the size", "it"), State::kNo);
  EXPECT_EQ(inside.state("the drill has the size", "it"), State::kOk);
}

// --- pins ---------------------------------------------------------------------------------------------------------
// 1/48 over 1 in: 0.250 at the top is 0.229167 below; 0.1 mm left to ream, 0.225230 goes through. A drill of 0.240 may go (0.250 - 0.240 - 0.1 mm) x 48 = 0.291 deep.
TEST(PinHoleCheck, ADrillGoesThroughTheSmallEnd) {
  const auto drilled = [](const std::string& size) {
    return judged(
        job_with(feature("taper pin hole",
                         "at.x = \"2\"\nat.y = \"1.5\"\ndiameter = \"0.250\"\ntaper = \"0.0208333333333\"") +
                 made("\"spot\", \"thin\", \"step\", \"pin reamer\"")),
        plain_shop() + tool("thin", "twist drill", "diameter = \"" + size + "\"") +
            tool("step", "twist drill", "diameter = \"0.240\"") +
            tool("pin reamer", "reamer", "diameter = \"0.25\""));
  };
  auto inside = drilled("0.2245");
  EXPECT_NEAR(inside.margin_in("a drill goes through the small end", "it"), 0.2291667 - 0.1 / 25.4 - 0.2245,
              1e-6);
  EXPECT_NEAR(inside.inches("op 10/it/step step"), (0.010 - 0.1 / 25.4) * 48.0, 1e-6);
  EXPECT_THAT(notes_of(inside, 10), HasSubstr("try the pin by hand"));
  EXPECT_EQ(drilled("0.2260").state("a drill goes through the small end", "it"), State::kNo);
}

TEST(PinHoleCheck, ASpringPinHoleIsItsDrills) {  // 6 H12: 6.00 to 6.12
  const auto drilled = [](const std::string& size) {
    return judged(job_with(feature("spring pin hole", "at.x = \"2\"\nat.y = \"1.5\"\ndiameter = \"6 mm\"") +
                           made("\"spot\", \"thin\"")),
                  plain_shop() + tool("thin", "twist drill", "diameter = \"" + size + " mm\""));
  };
  EXPECT_NE(drilled("6.1").state("the drill has the size", "it"), State::kNo);
  EXPECT_EQ(drilled("6.15").state("the drill has the size", "it"), State::kNo);
}

// --- rounding -----------------------------------------------------------------------------------------------------
// 25 mm is 984.252 divisions of 0.001 in: 0.252 of one is 0.0064 mm.
TEST(Rounding, IsSaidWhereItCostsMoreThanAQuarterOfATolerance) {
  const auto located = [](const std::string& tolerance) {
    return judged(
        job_with(feature("hole", "how = \"drilled\"\nat.x = { size = \"25 mm\", tol = \"" + tolerance +
                                     "\", duty = \"locates\", with = \"fine\" }\nat.y = \"1.5\"\ndiameter = "
                                     "\"0.500 ±0.005\"") +
                 made("\"spot\", \"drill 1/2\"")));
  };
  const auto says = [](tests::Judged& job) {
    std::string all;
    for (const std::string& line : tests::sheet_of(job, 10).machine)
      all += line + "\n";
    return all;
  };
  auto silent = located("±0.0129 mm");  // a quarter of 0.0258 is 0.00645
  EXPECT_THAT(says(silent), testing::Not(HasSubstr("Whole divisions cost")));
  auto said = located("±0.0127 mm");  // 0.00635
  EXPECT_THAT(says(said), HasSubstr("Whole divisions cost"));
  // It is in the place as made, and so in the build-up.
  EXPECT_NEAR(said.ledger.get("op 10/it/x made").value, 984.0 * 0.0254, 1e-9);
}

// --- clamped on the table ------------------------------------------------------------------------------------------
std::string clamps_shop() {
  return plain_shop() + "[[holding]]\nname = \"clamps\"\nkind = \"clamps\"\n";
}
std::string on_table(const std::string& job, const std::string& packing) {
  return with(job,
              "in = \"vise\", sits_on = \"underside\", fixed_jaw = \"back\", parallels = \"1-1/2 x 1/8\"",
              "in = \"clamps\", sits_on = \"underside\", away = \"back\"" +
                  (packing.empty() ? "" : ", packing = \"" + packing + "\""));
}
const std::string kThrough =
    "[[feature]]\nname = \"it\"\nkind = \"hole\"\nhow = \"drilled\"\nat.x = \"2\"\nat.y = \"1.5\"\ndiameter "
    "= "
    "\"1/2\"\n";

// The point of 1/2 goes (1/4) / tan 59 degrees = 0.150 and 1.5 mm = 0.059 past the far side: 0.209.
TEST(OnTheTable, PackingKeepsTheDrillOffTheTable) {
  const std::string job = job_with(kThrough + made("\"drill 1/2\""));
  const char* check = "drill point clears what is under the work";
  auto high = judged(on_table(job, "0.210"), clamps_shop());
  EXPECT_EQ(high.state(check, "it"), State::kOk);
  auto low = judged(on_table(job, "0.208"), clamps_shop());
  EXPECT_EQ(low.state(check, "it"), State::kNo);
  EXPECT_THAT(low.verdict(check, "it").todo, HasSubstr("higher packing"));
  auto none = judged(on_table(job, ""), clamps_shop());
  EXPECT_EQ(none.state(check, "it"), State::kNo);
  for (const ledger::Verdict& verdict : high.ledger.verdicts()) {
    EXPECT_NE(verdict.check, "grip");
    EXPECT_NE(verdict.check, "jaws open far enough");
    EXPECT_NE(verdict.check, "drill clears the parallels");
  }
}

// The collars do not know how it is held.
TEST(OnTheTable, TheNumbersAreThoseOfTheVise) {
  const std::string job = job_with(kThrough + made("\"drill 1/2\""));
  auto vise = judged(job);
  auto table = judged(on_table(job, "0.5"), clamps_shop());
  const auto reads = [](tests::Judged& judged_job) {
    const auto sheet = judged_job.ledger.value<route::SetupSheet>("op 10/sheet");
    std::string all;
    for (const route::Item& item : sheet->items) {
      if (const auto* line = std::get_if<route::Line>(&item))
        all += line->x_reads + " " + line->y_reads + ";";
    }
    return all;
  };
  EXPECT_EQ(reads(vise), reads(table));
  const auto sheet = table.ledger.value<route::SetupSheet>("op 10/sheet");
  EXPECT_THAT(sheet->hold, testing::Contains(HasSubstr("Indicator along the back")));
}

TEST(OnTheTable, ClampsDoNotStandOnWhatIsMilledAllOver) {
  const auto flat = [](const std::string& region) {
    return on_table(
        job_with("[[feature]]\nname = \"it\"\nkind = \"flat\"\nside = \"top\"\nleaves = \"0.9\"\n" + region +
                 made("\"end mill\"")),
        "0.5");
  };
  auto all_over = judged(flat(""), clamps_shop());
  EXPECT_EQ(all_over.state("the clamps have a place to stand", "op 10"), State::kNo);
  auto step =
      judged(flat("region = { along = \"x\", start = \"2\", towards = \"right end\" }\n"), clamps_shop());
  EXPECT_EQ(step.state("the clamps have a place to stand", "op 10"), State::kOk);
}

TEST(OnTheTable, ABarRollsUnderClamps) {
  const std::string bar =
      with(with(job_with(kThrough + made("\"drill 1/2\"")), "\"block\"", "\"round bar\""),
           "{ length = \"4\", width = \"3\", thickness = \"1\" }", "{ length = \"4\", diameter = \"2\" }");
  auto job = judged(on_table(with(bar, "at.y = \"1.5\"", "at.y = \"1\""), "0.5"), clamps_shop());
  EXPECT_EQ(job.state("work under clamps lies flat", "op 10"), State::kNo);
  auto block = judged(on_table(job_with(kThrough + made("\"drill 1/2\"")), "0.5"), clamps_shop());
  for (const ledger::Verdict& verdict : block.ledger.verdicts())
    EXPECT_NE(verdict.check, "work under clamps lies flat");
}

}  // namespace
}  // namespace sparewright
