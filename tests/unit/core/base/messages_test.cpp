#include "core/base/messages.hpp"

#include <set>
#include <string>
#include <string_view>

#include <gtest/gtest.h>

namespace sparewright::base {
namespace {

Failure every_field(Code code) {
  Failure f;
  f.code = code;
  f.subject = "the subject";
  f.found = "what was found";
  return f;
}

TEST(Messages, EveryCodeHasANameAndASentence) {
  std::set<std::string_view> names;
  for (int c = 0; c < static_cast<int>(Code::kLast); ++c) {
    const auto code = static_cast<Code>(c);
    const std::string_view name = code_name(code);
    EXPECT_TRUE(names.insert(name).second) << name << " is there twice";
    EXPECT_EQ(name.find_first_not_of("abcdefghijklmnopqrstuvwxyz-"), std::string_view::npos) << name;
    const std::string said = sentence(every_field(code));
    const bool names_its_matter =
        said.find("the subject") != std::string::npos || said.find("what was found") != std::string::npos;
    EXPECT_TRUE(names_its_matter) << name << ": " << said;
    EXPECT_EQ(said.find('{'), std::string::npos) << said;
  }
}

TEST(Report, GivesPlaceSentenceAndWhatIsAccepted) {
  Failure f;
  f.code = Code::kKeyUnknown;
  f.subject = "[[feature]]";
  f.found = "diametr";
  f.accepted = "diameter";
  f.place = Place{"pad.job.toml", 12, 1};
  EXPECT_EQ(report(f), "pad.job.toml:12:1: [[feature]] has no key 'diametr'\n    accepted: diameter");
}

TEST(Report, LeavesOutWhatIsNotKnown) {
  Failure f;
  f.code = Code::kDividesByZero;
  f.found = "a/(b-b)";
  EXPECT_EQ(report(f), "'a/(b-b)' divides by zero");
}

TEST(Sentence, ShowsControlCharactersHarmlessly) {
  Failure f = every_field(Code::kNotANumber);
  f.found = "1\n2\t3\r\x1B[31m\x7F\xC2\x9B";
  EXPECT_EQ(sentence(f),
            "'1\\n2\\t3?"
            "?[31m?"
            "?' is not the subject");
}

TEST(Sentence, ShowsInvalidBytesAsQuestionMarks) {
  Failure f = every_field(Code::kNotANumber);
  // lone, cut short, cut short, surrogate (3 bytes), overlong (2 bytes), beyond U+10FFFF
  f.found = "\xFF|\xC3|\xE2\x82|\xED\xA0\x80|\xC0\xAF|\xF5";
  const std::string q2(2, '?');
  EXPECT_EQ(sentence(f), "'?|?|" + q2 + "|?" + q2 + "|" + q2 + "|?' is not the subject");
}

TEST(Sentence, KeepsCharactersOfOtherScripts) {
  Failure f = every_field(Code::kNotANumber);
  f.found = "±0.002 µm 漢 😀";
  EXPECT_EQ(sentence(f), "'±0.002 µm 漢 😀' is not the subject");
}

TEST(Sentence, CutsALongTextAfterEightyCharacters) {
  Failure f = every_field(Code::kNotANumber);
  f.found = std::string(80, 'x');
  EXPECT_EQ(sentence(f), "'" + std::string(80, 'x') + "' is not the subject");
  f.found = std::string(81, 'x');
  EXPECT_EQ(sentence(f), "'" + std::string(80, 'x') + "...' is not the subject");
  std::string umlauts;
  for (int i = 0; i < 81; ++i)
    umlauts += "ä";
  f.found = umlauts;
  EXPECT_EQ(sentence(f), "'" + umlauts.substr(0, 160) + "...' is not the subject");
}

TEST(Sentence, TreatsNamesTheUserMadeLikeWhatHeTyped) {
  Failure f = every_field(Code::kKeyUnknown);
  f.subject = "bore\nx";
  EXPECT_EQ(sentence(f), "bore\\nx has no key 'what was found'");
}

TEST(Fail, CarriesItsParts) {
  const Result<int> r = fail(Code::kNameUnknown, "bor", "bore", "name");
  ASSERT_FALSE(r.has_value());
  EXPECT_EQ(r.error().code, Code::kNameUnknown);
  EXPECT_EQ(report(r.error()), "'bor' is not a known name\n    accepted: bore");
}

}  // namespace
}  // namespace sparewright::base
