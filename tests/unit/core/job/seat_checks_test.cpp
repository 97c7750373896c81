// The checks of presses and of what sits on the part: for each a job just inside its limit and one just outside, the limits
// from the tables named beside them.
#include <fmt/format.h>
#include <gmock/gmock.h>

#include "core/handbook/v_block.hpp"
#include "judged_job.hpp"
#include "part_text.hpp"

namespace sparewright {
namespace {

using ledger::State;
using testing::HasSubstr;
using tests::bar;
using tests::blank;
using tests::form;
using tests::judged;
using tests::troubles_of;

std::string with_seat(const std::string& text, const std::string& takes, const std::string& rest) {
  return text + fmt::format("[[seat]]\nname = \"seat\"\ntakes = \"{}\"\n{}\n", takes, rest);
}

std::string turned(const std::string& diameter) {
  return fmt::format(
      "[[feature]]\nname = \"journal\"\nkind = \"turned\"\nside = \"left end\"\ndiameter = {}\n"
      "length = \"60\"\n",
      diameter);
}

// --- bearings -------------------------------------------------------------------------------------------------------
// 25 mm, turning inner ring, normal load: k5 and k6 (25.002 to 25.015), j6 (24.996 to 25.009); ISO 286.
TEST(BearingSeatCheck, OfAShaft) {
  const auto seat = [](const std::string& diameter) {
    return with_seat(bar() + turned(diameter), "bearing", "on = \"journal\"\nnumber = \"6205\"");
  };
  auto k6 = judged(seat("\"25 k6\""));
  EXPECT_EQ(k6.state("bearing seat", "seat"), State::kOk);
  EXPECT_THAT(k6.verdict("bearing seat", "seat").reason, HasSubstr("k6"));
  EXPECT_EQ(judged(seat("{ size = \"25\", tol = \"+0.009/-0.004\" }")).state("bearing seat", "seat"),
            State::kOk);
  EXPECT_EQ(judged(seat("{ size = \"25\", tol = \"+0.009/-0.005\" }")).state("bearing seat", "seat"),
            State::kNo);
  EXPECT_EQ(judged(seat("{ size = \"25\", tol = \"+0.016/+0.002\" }")).state("bearing seat", "seat"),
            State::kNo);
  // Between the loosest and the tightest, but in no one zone.
  EXPECT_EQ(judged(seat("{ size = \"25\", tol = \"+0.015/-0.004\" }")).state("bearing seat", "seat"),
            State::kClose);
}

// A standing outer ring of 52 mm sits in H7 (52.000 to 52.030) or closer.
TEST(BearingSeatCheck, OfAHousing) {
  const auto seat = [](const std::string& diameter) {
    return with_seat(tests::plate() + fmt::format("[[feature]]\nname = \"bore\"\nkind = \"hole\"\nhow = "
                                                  "\"bored\"\nat.x = \"40\"\nat.y = \"30\"\ndiameter = {}\n",
                                                  diameter),
                     "bearing", "on = \"bore\"\nnumber = \"6205\"");
  };
  EXPECT_EQ(judged(seat("\"52 H7\"")).state("bearing seat", "seat"), State::kOk);
  EXPECT_EQ(judged(seat("\"52 D9\"")).state("bearing seat", "seat"), State::kNo);
}

TEST(BearingSeatCheck, AHeavyLoadIsNotTabled) {
  const std::string text = with_seat(bar() + turned("\"25 k6\""), "bearing",
                                     "on = \"journal\"\nnumber = \"6205\"\nload = \"heavy\"");
  EXPECT_EQ(judged(text).state("bearing seat", "seat"), State::kNotKnown);
}

TEST(SeatText, RefusesWhatCannotBe) {
  EXPECT_THAT(troubles_of(with_seat(bar(), "bearing", "on = \"nothing\"\nnumber = \"6205\"")),
              HasSubstr("nothing"));
  EXPECT_THAT(troubles_of(with_seat(bar(), "bearing", "on = \"bar\"\nnumber = \"6999999\"")),
              HasSubstr("6999999"));
  EXPECT_THAT(troubles_of(with_seat(bar(), "bearing", "on = \"bar\"")), HasSubstr("either number or ring"));
  EXPECT_THAT(troubles_of(with_seat(bar(), "bearing", "on = \"bar\"\nring = \"25\"")),
              HasSubstr("tolerance"));
  EXPECT_THAT(troubles_of(with_seat(tests::plate(), "bearing", "on = \"bar\"\nnumber = \"6205\"")),
              HasSubstr("round bar"));
  EXPECT_THAT(
      troubles_of(with_seat(bar() + turned("\"25\""), "key", "on = \"journal\"\nshaft = \"journal\"")),
      HasSubstr("a keyseat"));
}

// --- a drawn bar in a V-block ---------------------------------------------------------------------------------------
// At 90 degrees: 3 and 5 lobes swing twice what they are out of round, 7 not at all (ISO 4292, from memory).
TEST(VBlock, ShowsThreeLobesTwice) {
  const double right_angle = std::numbers::pi / 2.0;
  EXPECT_NEAR(handbook::v_block_factor(3, right_angle), 2.0, 1e-12);
  EXPECT_NEAR(handbook::v_block_factor(5, right_angle), 2.0, 1e-12);
  EXPECT_NEAR(handbook::v_block_factor(7, right_angle), 0.0, 1e-12);
  EXPECT_NEAR(handbook::v_block_factor(3, 2.0 * right_angle / 3.0), 3.0, 1e-12);  // 60 degrees
}

// The same by turning the shape itself: its height over the V, wherever its two tangent contacts lie.
TEST(VBlock, AgreesWithALobedShapeTurnedInIt) {
  constexpr double kRadius = 1.0;
  constexpr double kOut = 1e-4;  // greatest radius less least is twice it
  for (const int lobes : {3, 5}) {
    for (const double included : {std::numbers::pi / 3.0, std::numbers::pi / 2.0, 2.0}) {
      // How far the shape reaches in a direction, turned by t.
      const auto reach = [&](double direction, double t) {
        double most = 0.0;
        for (double off = -0.02; off <= 0.02; off += 1e-4)
          most = std::max(most, (kRadius + kOut * std::cos(lobes * (direction + off - t))) * std::cos(off));
        return most;
      };
      double low = 10.0;
      double high = 0.0;
      const double b = std::numbers::pi / 2.0 - included / 2.0;
      constexpr double kDown = -std::numbers::pi / 2.0;
      for (double t = 0.0; t < 2.0 * std::numbers::pi / lobes; t += 0.01) {
        const double middle = (reach(kDown - b, t) + reach(kDown + b, t)) / (2.0 * std::cos(b));
        const double top = middle + reach(std::numbers::pi / 2.0, t);
        low = std::min(low, top);
        high = std::max(high, top);
      }
      const double factor = handbook::v_block_factor(lobes, included);
      EXPECT_NEAR((high - low) / (2.0 * kOut), factor, 0.02 * std::max(1.0, factor))
          << lobes << " " << included;
    }
  }
}

TEST(VBlock, RefusesLobesItDoesNotShow) {
  std::string text = blank("round bar", "length = \"100\", diameter = \"25\"");
  const auto lobing = [&](int lobes) {
    return text +
           fmt::format("lobing = {{ v_block = \"90 deg\", swing = \"0.02\", lobes = {}, with = \"fine\" }}\n",
                       lobes);
  };
  EXPECT_EQ(troubles_of(lobing(3)), "");
  EXPECT_THAT(troubles_of(lobing(7)), HasSubstr("do not show"));
  EXPECT_THAT(troubles_of(lobing(4)), HasSubstr("3, 5 or 7"));
}

// --- keys, rings, O-rings -------------------------------------------------------------------------------------------
// DIN 6885-1, shaft 25: key 8 x 7, t1 4.0 (+0.2/0); width P9 7.949 to 7.985.
TEST(KeySeatCheck, WidthAndDepth) {
  const auto keyseat = [](const std::string& width, const std::string& depth) {
    return with_seat(bar() + turned("{ size = \"25\", tol = \"+0.000/-0.010\" }") +
                         form("keyseat", fmt::format("side = \"top\"\nat.x = \"30\"\nat.y = \"20\"\nlength = "
                                                     "\"30\"\nwidth = {}\ndepth = {}",
                                                     width, depth)),
                     "key", "on = \"it\"\nshaft = \"journal\"");
  };
  auto good = judged(keyseat("\"8 P9\"", "{ size = \"4\", tol = \"+0.2/-0.0\" }"));
  EXPECT_EQ(good.state("keyseat has the width", "seat"), State::kOk);
  EXPECT_EQ(good.state("keyseat has the depth", "seat"), State::kOk);
  auto bad =
      judged(keyseat("{ size = \"8\", tol = \"+0.100/-0.050\" }", "{ size = \"4\", tol = \"+0.21/-0.0\" }"));
  EXPECT_EQ(bad.state("keyseat has the width", "seat"), State::kNo);
  EXPECT_EQ(bad.state("keyseat has the depth", "seat"), State::kNo);
}

// DIN 471, shaft 25: groove 23.9 h12 (23.690 to 23.900), 1.3 wide (+0.14/0), 3 x 0.55 = 1.65 from the end.
TEST(RingSeatCheck, DiameterWidthAndEdge) {
  const auto groove = [](const std::string& diameter, const std::string& width, const std::string& from_end) {
    return with_seat(
        bar() + turned("{ size = \"25\", tol = \"+0.000/-0.010\" }") +
            form("groove", fmt::format("side = \"left end\"\ndiameter = {}\nwidth = {}\nfrom_end = {}",
                                       diameter, width, from_end)),
        "retaining ring", "on = \"it\"\nshaft = \"journal\"");
  };
  const std::string good_edge = "{ size = \"1.65\", tol = \"+0.10/-0.00\" }";
  auto good = judged(groove("\"23.9 h12\"", "{ size = \"1.3\", tol = \"+0.14/-0.00\" }", good_edge));
  EXPECT_EQ(good.state("ring's groove has the diameter", "seat"), State::kOk);
  EXPECT_EQ(good.state("ring's groove has the width", "seat"), State::kOk);
  EXPECT_NE(good.state("metal beyond the groove", "seat"), State::kNo);
  auto bad =
      judged(groove("{ size = \"23.9\", tol = \"+0.02/-0.10\" }", "{ size = \"1.3\", tol = \"+0.10/-0.02\" }",
                    "{ size = \"1.65\", tol = \"+0.10/-0.02\" }"));
  EXPECT_EQ(bad.state("ring's groove has the diameter", "seat"), State::kNo);
  EXPECT_EQ(bad.state("ring's groove has the width", "seat"), State::kNo);
  EXPECT_EQ(bad.state("metal beyond the groove", "seat"), State::kNo);
}

// O-ring guide, reciprocating, section 0.139: depth 0.119 to 0.123, width 0.185 +-0.005. In a bore of 2.000 the bottom of the
// groove lies between 1.754 and 1.762.
TEST(ORingSeatCheck, DepthAndWidth) {
  const auto groove = [](double diameter, double width) {
    const std::string text =
        "[job]\ntitle = \"Test\"\nunits = \"in\"\n[blank]\nshape = \"round bar\"\nmaterial = \"not known\"\n"
        "size = { length = \"4\", diameter = \"1.997\" }\n";
    return with_seat(
        text + form("groove", fmt::format("side = \"left end\"\ndiameter = {{ size = \"{:.4f}\", tol = "
                                          "\"±0.0020\" }}\nwidth = {{ size = \"{:.4f}\", tol = "
                                          "\"±0.0020\" }}\nfrom_end = \"0.5\"",
                                          diameter, width)),
        "O-ring", "on = \"it\"\nsection = \"0.139\"\nseals_in = \"2.000\"");
  };
  const std::string depth = "O-ring is squeezed enough and not too much";
  EXPECT_EQ(judged(groove(1.7565, 0.1875)).state(depth, "seat"), State::kOk);
  EXPECT_EQ(judged(groove(1.7555, 0.1875)).state(depth, "seat"), State::kNo);
  EXPECT_EQ(judged(groove(1.7605, 0.1875)).state(depth, "seat"), State::kNo);
  EXPECT_EQ(judged(groove(1.7580, 0.1875)).state("O-ring's groove has the width", "seat"), State::kOk);
  EXPECT_EQ(judged(groove(1.7580, 0.1885)).state("O-ring's groove has the width", "seat"), State::kNo);
}

// --- presses --------------------------------------------------------------------------------------------------------
// A bush 24 over 18 in a ring of so much outside, made of a plate: Lame, boss 205 GPa and 0.29.
std::string pressed(double boss, const std::string& outside) {
  const double x = boss / 2.0;
  return blank("round bar", fmt::format("length = \"20\", diameter = \"{:.3f}\"", boss)) +
         fmt::format(
             "[[feature]]\nname = \"bore\"\nkind = \"hole\"\nhow = \"bored\"\ninto = \"left end\"\nat.y = "
             "\"{0:.4f}\"\nat.z = \"{0:.4f}\"\ndiameter = {{ size = \"24\", tol = \"+0.000/-0.001\" }}\n",
             x) +
         form(
             "bush",
             fmt::format("in = \"bore\"\nhow = \"pressed in\"\nmaterial = \"SAE 660\"\ndiameter = {}\nbore = "
                         "\"18 H7\"\nlength = \"20\"",
                         outside));
}

// 1018 cold drawn yields at 372 MPa. With 0.10 to 0.11 of interference in a ring of 28: hoop p (28^2 + 24^2)/(28^2 - 24^2) =
// 6.54 p. A thick ring, 60, has 1.38 p.
TEST(PressCheck, ABossThatYieldsIsNoAndNoneIsOk) {
  EXPECT_EQ(judged(pressed(28.0, "{ size = \"24.1\", tol = \"+0.010/-0.000\" }"))
                .state("boss stands the press", "it"),
            State::kNo);
  auto thick = judged(pressed(60.0, "{ size = \"24.02\", tol = \"+0.010/-0.000\" }"));
  EXPECT_EQ(thick.state("boss stands the press", "it"), State::kClose);
  EXPECT_EQ(thick.state("press holds", "it"), State::kClose);
}

TEST(PressCheck, WithoutTheBushsMaterialItIsNotKnown) {
  std::string text = pressed(60.0, "\"24 s6\"");
  text.replace(text.find("material = \"SAE 660\""), 20, "");
  EXPECT_EQ(judged(text).state("what pressing does", "it"), State::kNotKnown);
}

TEST(PressText, TheClassGivesTheOutsideOfTheBush) {
  std::string text = pressed(60.0, "\"24 s6\"");
  text.replace(text.find("diameter = \"24 s6\""), 18, "press = \"s6\"");
  auto job = judged(text);
  // s6 at 24: +0.035 to +0.048 (ISO 286-2).
  EXPECT_NEAR(job.ledger.get("feature/it/diameter/least").value, 24.035, 1e-9);
  EXPECT_NEAR(job.ledger.get("feature/it/diameter/most").value, 24.048, 1e-9);
  text.replace(text.find("press = \"s6\""), 12, "press = \"z99\"");
  EXPECT_NE(troubles_of(text), "");
  text.replace(text.find("press = \"z99\""), 13, "");
  EXPECT_THAT(troubles_of(text), HasSubstr("diameter"));
}

}  // namespace
}  // namespace sparewright
