#include "core/base/nearest.hpp"

#include <string>
#include <vector>

#include <gtest/gtest.h>

namespace sparewright::base {
namespace {

const std::vector<std::string> kKeys{"diameter", "depth", "at", "along", "how"};

TEST(EditDistance, CountsSlips) {
  EXPECT_EQ(edit_distance("", ""), 0U);
  EXPECT_EQ(edit_distance("", "abc"), 3U);
  EXPECT_EQ(edit_distance("diameter", "diameter"), 0U);
  EXPECT_EQ(edit_distance("diametr", "diameter"), 1U);
  EXPECT_EQ(edit_distance("diamteer", "diameter"), 1U);  // two neighbours swapped are one slip
  EXPECT_EQ(edit_distance("dismeter", "diameter"), 1U);
  EXPECT_EQ(edit_distance("kitten", "sitting"), 3U);  // the usual worked example of Levenshtein's distance
  EXPECT_EQ(edit_distance("ca", "abc"),
            3U);  // optimal string alignment edits no piece twice (unrestricted: 2)
}

TEST(Nearest, FindsTheWordThatWasMeant) {
  EXPECT_EQ(nearest("diametr", kKeys), "diameter");
  EXPECT_EQ(nearest("dpeth", kKeys), "depth");
  EXPECT_EQ(nearest("hwo", kKeys), "how");
}

TEST(Nearest, GivesNothingFarOff) {
  EXPECT_EQ(nearest("chamfer", kKeys), "");
  EXPECT_EQ(nearest("", kKeys), "");
  EXPECT_EQ(nearest("at", {}), "");
}

TEST(Nearest, AllowsAThirdOfTheLengthAndAtLeastOneSlip) {
  const std::vector<std::string> words{"spotface"};
  EXPECT_EQ(nearest("spotfa", words), "spotface");  // 2 slips in 6 letters
  EXPECT_EQ(nearest("spotf", words), "");           // 3 slips in 5
  const std::vector<std::string> small{"at"};
  EXPECT_EQ(nearest("a", small), "at");
  EXPECT_EQ(nearest("xyt", small), "");
}

TEST(Nearest, TakesTheFirstOfEquals) {
  EXPECT_EQ(nearest("bar", std::vector<std::string>{"bat", "car"}), "bat");
}

TEST(Nearest, DoesNotCompareEndlessWords) {
  const std::string endless(65, 'x');
  EXPECT_EQ(nearest(endless, std::vector<std::string>{endless}), "");
  EXPECT_EQ(nearest("xx", std::vector<std::string>{endless, "xy"}), "xy");
}

TEST(KnownWords, ListsThemWithASuggestion) {
  EXPECT_EQ(known_words("diametr", kKeys), "diameter, depth, at, along, how (did you mean 'diameter'?)");
  EXPECT_EQ(known_words("zzzz", kKeys), "diameter, depth, at, along, how");
}

TEST(KnownWords, ShortensALongListButStillSuggests) {
  std::vector<std::string> many;
  for (int i = 10; i < 40; ++i)
    many.push_back("size" + std::to_string(i));
  const std::string out = known_words("siez39", many);
  EXPECT_NE(out.find("size33, ... (did you mean 'size39'?)"), std::string::npos) << out;
  EXPECT_EQ(out.find("size34"), std::string::npos);
}

}  // namespace
}  // namespace sparewright::base
