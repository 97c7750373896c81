#include "core/text/validate.hpp"

#include <string>
#include <vector>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/text/limits.hpp"
#include "text_samples.hpp"

namespace sparewright::text {
namespace {

using samples::parsed;
using testing::ElementsAre;
using testing::IsEmpty;

std::vector<std::string> problems(std::string_view text, const Shape& shape) {
  std::vector<std::string> out;
  for (const base::Failure& failure : validate(parsed(text), shape))
    out.push_back(base::report(failure));
  return out;
}

TEST(Validate, TakesASoundText) {
  EXPECT_THAT(problems(samples::kJob, samples::job_shape()), IsEmpty());
}

TEST(Validate, TellsEveryProblemAtOnceInTheOrderOfTheText) {
  EXPECT_THAT(
      problems("[job]\ntitel = \"x\"\nunits = \"cm\"\nturn_over = 1\n\n[[reading]]\nof = 3\ngot = []\n",
               samples::job_shape()),
      ElementsAre("keeper.job.toml:1:1: job needs the key 'title'\n    accepted: a text in quotes",
                  "keeper.job.toml:2:1: job has no key 'titel'\n"
                  "    accepted: title, units, turn_over, revision, scale (did you mean 'title'?)",
                  "keeper.job.toml:3:9: 'job.units' cannot be 'cm'\n"
                  "    accepted: in, mm (did you mean 'mm'?)",
                  "keeper.job.toml:4:13: 'job.turn_over' is a whole number\n    accepted: true or false",
                  "keeper.job.toml:6:1: reading[1] needs the key 'what'\n"
                  "    accepted: in quotes, one of outside, inside",
                  "keeper.job.toml:7:6: 'reading[1].of' is a whole number\n    accepted: a text in quotes",
                  "keeper.job.toml:8:7: 'reading[1].got' cannot be '[]'\n"
                  "    accepted: a list of at least 1, each item a length, as a number or in quotes"));
}

TEST(Validate, AMissingKeyOfTheWholeTextHasNoLine) {
  EXPECT_THAT(problems("", samples::job_shape()),
              ElementsAre("keeper.job.toml: the text needs the key 'job'\n"
                          "    accepted: a table with the keys title, units, turn_over, revision, scale"));
}

TEST(Validate, AValueMayBeANumberOrATextOrATable) {
  const Shape shape = table({field("d", samples::size_shape())});
  for (const char* sound :
       {"d = 0.5", "d = 1", "d = \"1-3/8\"", "d = { size = 0.5 }", "d.size = \"1\"\nd.fit = \"H7\""}) {
    EXPECT_THAT(problems(sound, shape), IsEmpty()) << sound;
  }
  EXPECT_THAT(
      problems("d = true", shape),
      ElementsAre("keeper.job.toml:1:5: 'd' is true or false\n"
                  "    accepted: a diameter, as a number or in quotes, or a table with the keys size, fit"));
  EXPECT_THAT(problems("d = { fit = \"H7\", sice = 1 }", shape),
              ElementsAre("keeper.job.toml:1:5: d needs the key 'size'\n"
                          "    accepted: a diameter, as a number or in quotes",
                          "keeper.job.toml:1:19: d has no key 'sice'\n"
                          "    accepted: size, fit (did you mean 'size'?)"));
}

TEST(Validate, TheWordOfATableDecidesItsKeys) {
  const std::string job = "[job]\ntitle = \"x\"\nunits = \"in\"\n[[feature]]\nname = \"a\"\n";
  EXPECT_THAT(problems(job + "kind = \"flat\"\ndiameter = 1\n", samples::job_shape()),
              ElementsAre("keeper.job.toml:4:1: feature[1] (kind \"flat\") needs the key 'leaves'\n"
                          "    accepted: a length, as a number or in quotes",
                          "keeper.job.toml:7:1: feature[1] (kind \"flat\") has no key 'diameter'\n"
                          "    accepted: kind, name, note, leaves"));
  EXPECT_THAT(problems(job + "kind = \"hols\"\ndiameter = 1\nplane = 2\n", samples::job_shape()),
              ElementsAre("keeper.job.toml:6:8: 'feature[1].kind' cannot be 'hols'\n"
                          "    accepted: hole, flat (did you mean 'hole'?)",
                          "keeper.job.toml:8:1: feature[1] has no key 'plane'\n"
                          "    accepted: kind, name, note, at, diameter, leaves"));
  EXPECT_THAT(problems(job + "leaves = 1\n", samples::job_shape()),
              ElementsAre("keeper.job.toml:4:1: feature[1] needs the key 'kind'\n"
                          "    accepted: in quotes, one of hole, flat"));
  EXPECT_THAT(problems(job + "kind = 5\n", samples::job_shape()),
              ElementsAre("keeper.job.toml:6:8: 'feature[1].kind' is a whole number\n"
                          "    accepted: in quotes, one of hole, flat"));
}

TEST(Validate, FreeKeysShareOneShape) {
  EXPECT_THAT(
      problems("a = 1\n\"b c\" = []\n", table_of("side", measure(quantity::Kind::kLength))),
      ElementsAre(
          "keeper.job.toml:2:9: '\"b c\"' is a list\n    accepted: a length, as a number or in quotes"));
}

TEST(Validate, CountsItems) {
  const Shape shape = table({field("got", list_of(whole_number()).at_least(2).at_most(3))});
  EXPECT_THAT(problems("got = [1, 2]", shape), IsEmpty());
  EXPECT_THAT(problems("got = [1, 2, 3]", shape), IsEmpty());
  EXPECT_THAT(problems("got = [1]", shape).size(), 1U);
  EXPECT_THAT(problems("got = [1, 2, 3, 4]", shape),
              ElementsAre("keeper.job.toml:1:7: got: 4 items\n    accepted: at most 3"));
  EXPECT_THAT(
      problems("got = [1, 2.0]", shape),
      ElementsAre("keeper.job.toml:1:11: 'got[2]' is a decimal number\n    accepted: a whole number"));
}

TEST(Validate, StopsTellingAtTheLimit) {
  const auto with_problems = [](std::size_t count) {
    std::string text;
    for (std::size_t i = 0; i < count; ++i)
      text += "k" + std::to_string(i) + " = 1\n";
    return problems(text, table({field("title", free_text())}));
  };
  EXPECT_EQ(with_problems(kMostProblems).size(), kMostProblems);
  const auto more = with_problems(kMostProblems + 100);
  EXPECT_EQ(more.size(), kMostProblems + 1);
  EXPECT_EQ(more.back(), "keeper.job.toml: keeper.job.toml: it has more problems than the 200 told");
}

}  // namespace
}  // namespace sparewright::text
