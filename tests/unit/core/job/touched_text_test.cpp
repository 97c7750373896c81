// Touches from texts to figures.
#include <cmath>

#include <gmock/gmock.h>

#include "core/job/job.hpp"
#include "judged_job.hpp"

namespace sparewright {
namespace {

using testing::HasSubstr;
using tests::judged;
using tests::plain_shop;
using tests::troubles_of;

// A plate of an old machine: a hole and its left end, touched with the shop's edge finder (tip 0.200, finds to 0.0001).
std::string plate(const std::string& touched, const std::string& sections = "") {
  return "[job]\ntitle = \"Plate\"\nunits = \"in\"\nhand = \"not handed\"\n" + touched +
         "[blank]\nshape = \"block\"\nmaterial = \"1018 cold drawn\"\n"
         "size = { length = \"9\", width = \"3\", thickness = \"1\" }\n" +
         sections;
}
const std::string kTwoForms = R"(
[[touched]]
name = "hole"
form = "circle"
with = "fine"
tip = "edge finder"
side = "inside"
touches = [["2.4", "1"], ["2", "1.4"], ["1.6", "1"], ["2", "0.6"]]
x = "hole_x"
diameter = "bore"
[[touched]]
name = "left end"
form = "line"
with = "fine"
tip = "edge finder"
side = "left"
touches = [["-0.1", "0.2"], ["-0.1", "1.8"]]
[[between]]
of = ["left end", "hole"]
distance = "end_to_hole"
)";

TEST(TouchedTexts, GiveDimensionsThatPartsAreMadeTo) {
  auto job = judged(plate(kTwoForms, R"(
[[feature]]
name = "new hole"
kind = "hole"
how = "bored"
diameter = "bore + 0.0010"
at = { x = "end_to_hole", y = "1" }
)"));
  EXPECT_NEAR(job.inches("survey/hole_x"), 2.0, 1e-9);
  EXPECT_NEAR(job.inches("survey/bore"), 1.0, 1e-9);
  EXPECT_NEAR(job.inches("survey/end_to_hole"), 2.0, 1e-9);
  EXPECT_EQ(job.ledger.get("survey/bore").kind, quantity::Kind::kDiameter);
  EXPECT_NEAR(job.inches("feature/new hole/x"), 2.0, 1e-9);
  EXPECT_NEAR(job.inches("feature/new hole/diameter"), 1.001, 1e-9);
  EXPECT_NEAR(job.inches("between/left end to hole/distance"), 2.0, 1e-9);
  EXPECT_EQ(job.ledger.get("tip/edge finder").value, 0.2 * 25.4);
  // The edge finder finds each face anew: a cause of its own at each touch.
  bool found = false;
  for (const ledger::Share& share : job.ledger.get("touch/hole/1 x").shares)
    found = found || share.cause.text() == "touch/hole/1 x/found by the tip";
  EXPECT_TRUE(found);
}

TEST(TouchedTexts, TakeABallBySizeAndAPlane) {
  auto job = judged(plate(R"(
[[touched]]
name = "top"
form = "plane"
with = "fine"
tip = "6 mm"
tip_good_to = "0.002 mm"
side = "above"
touches = [["0", "0", "1.118"], ["4", "0", "1.118"], ["0", "2", "1.118"], ["4", "2", "1.118"]]
at = "top_at"
lean_x = "top_lean"
)"));
  EXPECT_NEAR(job.inches("survey/top_at"), 1.118 - 3.0 / 25.4, 1e-9);
  EXPECT_NEAR(job.ledger.get("survey/top_lean").value, 0.0, 1e-12);
  EXPECT_EQ(job.ledger.get("survey/top_lean").kind, quantity::Kind::kAngle);
}

TEST(TouchedTexts, TakeAPatternOfHoles) {
  std::string text;
  for (int k = 0; k < 4; ++k) {
    const double x = 3.0 + (k == 0 ? 1.0 : k == 2 ? -1.0 : 0.0);
    const double y = 1.5 + (k == 1 ? 1.0 : k == 3 ? -1.0 : 0.0);
    const auto number = [](double value) { return "\"" + std::to_string(value) + "\""; };
    text += "[[touched]]\nname = \"h" + std::to_string(k) +
            "\"\nform = \"circle\"\nwith = \"fine\"\ntip = \"0\"\nside = \"inside\"\ntouches = [";
    for (const auto& [dx, dy] : {std::pair{0.1, 0.0}, {0.0, 0.1}, {-0.1, 0.0}, {0.0, -0.1}})
      text += "[" + number(x + dx) + ", " + number(y + dy) + "], ";
    text += "]\n";
  }
  auto job = judged(plate(text + R"(
[[hole_pattern]]
name = "bolts"
of = ["h0", "h1", "h2", "h3"]
diameter = "bolt_circle"
)"));
  EXPECT_NEAR(job.inches("survey/bolt_circle"), 2.0, 1e-9);
  EXPECT_EQ(job.ledger.get("pattern/bolts/places").value, 4.0);
}

std::string with(std::string text, const std::string& what, const std::string& by) {
  const std::size_t at = text.find(what);
  EXPECT_NE(at, std::string::npos) << what;
  return text.replace(at, what.size(), by);
}

TEST(TouchedTexts, SayWhereTheyAreWrong) {
  EXPECT_THAT(troubles_of(plate(with(kTwoForms, "form = \"circle\"", "form = \"oval\""))),
              HasSubstr("circle"));
  EXPECT_THAT(troubles_of(plate(with(kTwoForms, "with = \"fine\"", "with = \"laser\""))),
              HasSubstr("the shop has no instrument 'laser'"));
  EXPECT_THAT(troubles_of(plate(with(kTwoForms, "side = \"inside\"", "side = \"left\""))),
              HasSubstr("accepted: inside, outside"));
  EXPECT_THAT(troubles_of(plate(with(kTwoForms, "[\"2\", \"1.4\"]", "[\"2\", \"1.4\", \"0\"]"))),
              HasSubstr("x and y of each touch"));
  EXPECT_THAT(troubles_of(plate(with(kTwoForms, "\"hole\"]", "\"halo\"]"))),
              HasSubstr("the job has no touched form 'halo'"));
  EXPECT_THAT(troubles_of(plate(with(kTwoForms, "diameter = \"bore\"", "lean = \"bore\""))),
              HasSubstr("accepted: x, y, diameter, radius"));
  EXPECT_THAT(troubles_of(plate(with(kTwoForms, "tip = \"edge finder\"", "tip = \"edge finger\""))),
              HasSubstr("edge finger"));
  EXPECT_THAT(troubles_of(plate(with(kTwoForms, "[\"1.6\", \"1\"], [\"2\", \"0.6\"]", ""))),
              HasSubstr("3 touches or more"));
  EXPECT_THAT(troubles_of(plate(with(kTwoForms, "diameter = \"bore\"",
                                     "diameter = \"bore\"\n"
                                     "[dimension]\nbore = \"angle\"\n"))),
              HasSubstr("bore"));
}

}  // namespace
}  // namespace sparewright
