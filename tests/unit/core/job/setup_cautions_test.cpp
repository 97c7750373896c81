// The dangers of a machine, of what holds the work and of each tool, named on the setup they sit in and on no other.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "hand_work.hpp"
#include "lathe_job.hpp"
#include "part_text.hpp"

namespace sparewright {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::Not;
using tests::hand_setup;
using tests::hand_shop;
using tests::judged;
using tests::lathe_work;
using tests::sheet_of;
using tests::step;

const std::string kSeat =
    "[[feature]]\nname = \"seat\"\nkind = \"turned\"\nside = \"right end\"\ndiameter = \"25\"\nlength = "
    "\"15\"\n";
const std::string kTurn = lathe_work("seat", "\"R0.8\"");

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  return at == std::string::npos ? text : text.replace(at, from.size(), to);
}

std::vector<std::string> on_lathe(const std::string& holder, const std::string& features = kSeat,
                                  const std::string& works = kTurn) {
  auto job = judged(tests::lathe_job(features, works),
                    replaced(tests::lathe_shop(), "kind = \"three-jaw chuck\"", "kind = \"" + holder + "\""));
  return sheet_of(job, 20).cautions;
}

TEST(SetupCautions, AChuckHasAKeyAndWhatStandsOutIsTurnedByHandFirst) {
  const auto key = Contains(HasSubstr("Chuck key out"));
  const auto by_hand = Contains(HasSubstr("round once by hand"));
  EXPECT_THAT(on_lathe("three-jaw chuck"), testing::AllOf(key, Not(by_hand)));
  EXPECT_THAT(on_lathe("four-jaw chuck"), testing::AllOf(key, by_hand));
  EXPECT_THAT(on_lathe("faceplate"), testing::AllOf(Not(key), by_hand));
  EXPECT_THAT(on_lathe("mandrel"), testing::AllOf(Not(key), Contains(HasSubstr("light cuts"))));
  EXPECT_THAT(on_lathe("centres"), testing::AllOf(Not(key), Contains(HasSubstr("dog swings"))));
}

TEST(SetupCautions, EachToolOfALatheHasItsOwn) {
  const auto plain = on_lathe("three-jaw chuck");
  for (const char* words : {"Parting off", "Boring", "Threading", "Knurling"})
    EXPECT_THAT(plain, Not(Contains(HasSubstr(words))));
  const std::string stub =
      "[[feature]]\nname = \"stub\"\nkind = \"chucking piece\"\nside = \"left end\"\nlength = \"45\"\n";
  EXPECT_THAT(on_lathe("three-jaw chuck", stub, lathe_work("stub", "\"parter\"")),
              Contains(HasSubstr("no hand under the part")));
  const std::string hole =
      "[[feature]]\nname = \"hole\"\nkind = \"hole\"\ninto = \"right end\"\nhow = \"bored\"\ndiameter = "
      "\"14\"\n";
  EXPECT_THAT(on_lathe("three-jaw chuck", hole, lathe_work("hole", "\"drill 12\", \"bar\"")),
              Contains(HasSubstr("Boring: it turns where nobody sees it")));
  const std::string thread =
      "[[feature]]\nname = \"nut\"\nkind = \"thread\"\nside = \"right end\"\nthread = \"M20x1.5\"\ndiameter "
      "= "
      "\"19.9\"\nlength = \"15\"\n";
  EXPECT_THAT(on_lathe("three-jaw chuck", thread, lathe_work("nut", "\"R0.8\", \"threader\"")),
              Contains(HasSubstr("half-nut lever")));
}

TEST(SetupCautions, OfTheSawTheDrillPressAndTheBench) {
  const std::string hole =
      "[[feature]]\nname = \"hole\"\nkind = \"hole\"\nhow = \"drilled\"\ndiameter = \"5\"\nat.x = "
      "\"30\"\nat.y = "
      "\"30\"\n";
  auto drilled = judged(
      tests::plate() + hole + hand_setup(10, "drill press", "top", step("hole", "\"drill 5\"")), hand_shop());
  EXPECT_THAT(sheet_of(drilled, 10).cautions, Contains(HasSubstr("Never hold the work by hand")));
  auto sawn = judged(tests::plate() +
                         tests::form("split", "side = \"right end\"\nfrom_side = \"40\"\nwidth = \"3\"") +
                         hand_setup(10, "saw", "front", step("it", "\"blade\"")),
                     hand_shop());
  EXPECT_THAT(sheet_of(sawn, 10).cautions, Contains(HasSubstr("Hands out of the line of the blade")));
  const auto bushed = [](const std::string& how, const std::string& outside) {
    auto job =
        judged(tests::plate() +
                   "[[feature]]\nname = \"hub\"\nkind = \"hole\"\nhow = \"reamed\"\nat.x = \"30\"\nat.y = "
                   "\"30\"\ndiameter = \"12 H7\"\n" +
                   tests::form("bush", "in = \"hub\"\nhow = \"" + how + "\"\ndiameter = \"" + outside +
                                           "\"\nlength = \"20\"\nbore = \"10\"") +
                   hand_setup(10, "bench", "top", step("it", "\"press\", \"reamer 10\"")),
               hand_shop());
    return sheet_of(job, 10).cautions;
  };
  EXPECT_THAT(bushed("bonded", "11.9"), Contains(HasSubstr("Retaining compound: gloves")));
  EXPECT_THAT(bushed("pressed in", "12 s6"), Not(Contains(HasSubstr("Retaining compound"))));
}

}  // namespace
}  // namespace sparewright
