#include "core/text/document.hpp"

#include <map>
#include <ostream>
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
using testing::HasSubstr;

std::string complaint(std::string text) {
  const auto document = Document::parse(std::move(text), "f.toml");
  return document ? "none" : base::report(document.error());
}

TEST(Document, KeepsNumbersAsWritten) {
  const Document document = parsed("a = 0.7498\nb = 80\nc = \"80\"\nd = +1_000\ne = 0x1F\n");
  std::vector<std::string> typed;
  for (const Node node : document.root())
    typed.emplace_back(node.typed());
  EXPECT_THAT(typed, ElementsAre("0.7498", "80", "80", "+1_000", "0x1F"));
  EXPECT_EQ(document.at("d")->whole(), 1000);
  EXPECT_EQ(document.at("e")->whole(), 31);
  EXPECT_EQ(document.at("a")->decimal(), 0.7498);
  EXPECT_EQ(document.at("b")->decimal(), 80.0);
  EXPECT_EQ(document.at("c")->whole(), std::nullopt);
}

TEST(Document, GivesKeysInTheOrderOfTheText) {
  const Document document = parsed("z = 1\na = 2\n[m]\n[b]\n");
  std::vector<std::string> keys;
  for (const Node node : document.root())
    keys.emplace_back(node.key());
  EXPECT_THAT(keys, ElementsAre("z", "a", "m", "b"));
}

// The bytes of every value and key, which is what edits and messages stand on.
TEST(Document, KnowsTheBytesOfEveryValue) {
  const Document document = parsed(samples::kEverything);
  const std::map<std::string, std::string> expected{
      {"a", "1"},
      {"b", "-0.5"},
      {"c", "1e3"},
      {"d", "0x1F"},
      {"e", "inf"},
      {"f", "true"},
      {"g", "1979-05-27T07:32:00Z"},
      {"h", "1979-05-27"},
      {"i", "07:32:00"},
      {"\"quoted key\"", "'literal \\ text'"},
      {"\"literal key\"", "\"\"\"a \"quoted\" word\"\"\""},
      {"j", "'''\nx'''"},
      {"k", "[ 1, [ 2, [] ], { l = 3 }, ]"},
      {"k[2]", "[ 2, [] ]"},
      {"k[2][2]", "[]"},
      {"k[3]", "{ l = 3 }"},
      {"k[3].l", "3"},
      {"m", "{}"},
      {"n.o.\"p q\"", "4"},
      {"n.r", "5"},
      {"\"é is quoted\".\"é\"", "6"},
      {"s", "[s]"},
      {"s.t", "[s.t.u]"},
      {"s.t.u", "[s.t.u]"},
      {"w[1]", "[[w]]"},
      {"w[2].x", "8"},
      {"w[2].y", "[w.y]"},
  };
  for (const auto& [path, written] : expected) {
    const auto node = document.at(path);
    ASSERT_TRUE(node) << path;
    EXPECT_EQ(node->written(), written) << path;
    EXPECT_EQ(node->path(), path);
  }
  EXPECT_EQ(document.at("n.r")->key_span()->length, 1U);
  const auto key = *document.at("n.o.\"p q\"")->key_span();
  EXPECT_EQ(document.text().substr(key.offset, key.length), "\"p q\"");
  EXPECT_EQ(document.at("w[2]")->key_span(), std::nullopt);
}

TEST(Document, KnowsHowTablesAreWritten) {
  const Document document = parsed(samples::kEverything);
  EXPECT_EQ(document.root().layout(), Layout::kSection);
  EXPECT_EQ(document.at("m")->layout(), Layout::kValue);
  EXPECT_EQ(document.at("n")->layout(), Layout::kDotted);
  EXPECT_EQ(document.at("n.o")->layout(), Layout::kDotted);
  EXPECT_EQ(document.at("s")->layout(), Layout::kSection);
  EXPECT_EQ(document.at("s.t")->layout(), Layout::kHeaderless);
  EXPECT_EQ(document.at("s.t.u")->layout(), Layout::kSection);
  EXPECT_EQ(document.at("w")->layout(), Layout::kHeaderless);
  EXPECT_EQ(document.at("w[2]")->layout(), Layout::kSection);
  EXPECT_EQ(document.at("k")->layout(), Layout::kValue);
  EXPECT_EQ(document.at("k[3]")->layout(), Layout::kValue);
}

TEST(Document, KnowsATableWhoseHeaderComesAfterItsPart) {
  const Document document = parsed("[ a . b ]\nk = 1\n[a]\n[[c.d]]\n[[c.d]]\ne = [[1], [2]]\n");
  EXPECT_EQ(document.at("a")->layout(), Layout::kSection);
  EXPECT_EQ(document.at("a")->written(), "[a]");
  EXPECT_EQ(document.at("a.b")->layout(), Layout::kSection);
  EXPECT_EQ(document.at("c")->layout(), Layout::kHeaderless);
  EXPECT_EQ(document.at("c.d")->layout(), Layout::kHeaderless);
  EXPECT_EQ(document.at("c.d[2].e")->layout(), Layout::kValue);
}

TEST(Document, ReadsTheContentOfTexts) {
  const Document document = parsed(samples::kJob);
  EXPECT_EQ(document.at("feature[1].note[1].says")->typed(), "two lines, é\n± joined");
  EXPECT_EQ(document.at("reading[2].of")->typed(), "old \"keeper\"");
}

TEST(Document, PlacesCountCharacters) {
  const Document document = parsed("a = \"é\"\nb = { \"é\" = [\"ü\", 2] }\n");
  EXPECT_EQ(base::to_string(document.at("b.\"é\"[2]")->place()), "keeper.job.toml:2:19");
  EXPECT_EQ(base::to_string(document.at("b.\"é\"")->key_place()), "keeper.job.toml:2:7");
}

TEST(Document, AcceptsAByteOrderMark) {
  const Document document = parsed(
      "\xEF\xBB\xBF"
      "a = 1\nb = 2\n");
  EXPECT_TRUE(document.has_byte_order_mark());
  EXPECT_EQ(document.text().size(), 15U);
  EXPECT_EQ(document.at("a")->written(), "1");
  EXPECT_EQ(document.at("a")->key_place().column, 1);
  EXPECT_EQ(document.at("b")->written(), "2");
  EXPECT_EQ(complaint("\xEF\xBB\xBF"
                      "a = \n")
                .substr(0, 11),
            "f.toml:1:5:");
}

TEST(Document, AcceptsBothLineEnds) {
  const Document document = parsed("a = \"\"\"x\r\ny\"\"\"\r\n[b]\r\nc = 2\r\n");
  EXPECT_EQ(document.at("a")->typed(), "x\ny");
  EXPECT_EQ(document.at("b.c")->written(), "2");
  EXPECT_EQ(base::to_string(document.at("b.c")->place()), "keeper.job.toml:4:5");
}

TEST(Document, AcceptsTheEmptyText) {
  EXPECT_EQ(parsed("").root().size(), 0U);
  EXPECT_EQ(parsed("\n# nothing\n").root().size(), 0U);
  EXPECT_EQ(parsed("\xEF\xBB\xBF").root().size(), 0U);
}

TEST(Document, SaysWhatAPathMisses) {
  const Document document = parsed(samples::kJob);
  EXPECT_EQ(base::report(document.at("feature[2].leavs").error()),
            "keeper.job.toml:43:1: feature[2] has no key 'leavs'\n"
            "    accepted: name, kind, leaves (did you mean 'leaves'?)");
  EXPECT_THAT(base::report(document.at("feature[3]").error()), HasSubstr("accepted: [1] to [2]"));
  EXPECT_FALSE(document.at("feature[0]"));
  EXPECT_FALSE(document.at("feature."));
  EXPECT_FALSE(document.at("job.title.x"));
  EXPECT_FALSE(document.at("jo"));
  EXPECT_TRUE(document.at("")->is_root());
  EXPECT_EQ(document.at("original.\"latch throw\".fit")->typed(), "H7");
}

TEST(Document, CopiesShareTheText) {
  std::optional<Document> first = parsed("a = 1\n");
  const Node node = *first->at("a");
  const Document copy = *first;
  first.reset();
  EXPECT_EQ(node.written(), "1");
  EXPECT_EQ(copy.name(), "keeper.job.toml");
}

// --- what people get wrong ---------------------------------------------------------------------------------

struct Fault {
  std::string text;
  std::string starts;    // place and sentence
  std::string contains;  // of what is accepted
};

std::ostream& operator<<(std::ostream& out, const Fault& fault) {
  return out << fault.text;
}

class Faults : public testing::TestWithParam<Fault> {};

TEST_P(Faults, AreToldWithPlaceAndWhatIsAccepted) {
  const std::string said = complaint(GetParam().text);
  EXPECT_EQ(said.substr(0, GetParam().starts.size()), GetParam().starts);
  EXPECT_THAT(said, HasSubstr("\n    accepted: "));
  EXPECT_THAT(said, HasSubstr(GetParam().contains));
}

const std::vector<Fault> kFaults{
    {"size = 1-3/8 # in", "f.toml:1:9: the text cannot be read: not a value: 1-3/8\n", "in quotes"},
    {"size = 1.375 in", "f.toml:1:14: the text cannot be read: not a value: 1.375 in\n", "in quotes"},
    {"size = 3/8\"", "f.toml:1:9: the text cannot be read: not a value: 3/8\"\n", "in quotes"},
    {"got = [\n  0.5,\n  .5\n]", "f.toml:3:3: the text cannot be read: not a value: .5\n", "1.375"},
    {"got = [0.5, 3/8 in]", "f.toml:1:14: the text cannot be read: not a value: 3/8 in\n", "in quotes"},
    {"got = { a = 3 mm, b = 2}", "f.toml:1:15: the text cannot be read: not a value: 3 mm\n", "in quotes"},
    {"size = 1,375", "f.toml:1:9: the text cannot be read: not a value: 1,375\n", "in quotes"},
    {"drill = #7", "f.toml:1:9: the text cannot be read: no value is written here\n", "in quotes"},
    {"kind = hole", "f.toml:1:8: the text cannot be read: not a value: hole\n", "in quotes"},
    {"over = True", "f.toml:1:8: the text cannot be read: not a value: True\n", "true or false"},
    {"n = 99999999999999999999", "f.toml:1:25: the text cannot be read: not a value: 99999999999999999999\n",
     ""},
    {"a = 1\n\na = 2", "f.toml:3:5: the key 'a' is there twice\n", "once"},
    {"[a]\n[b]\n[a]", "f.toml:3:1: the key '[a]' is there twice\n", "once"},
    {"a.b = 1\na.b.c = 2", "f.toml:2:3: the key 'a.b.c' is there twice\n", "cannot hold other keys"},
    {"a = \"abc\nb = 1", "f.toml:1:9: the text cannot be read: a quote is not closed\n",
     "ends with its quote"},
    {"a = \"\\q\"", "f.toml:1:7: the text cannot be read: ", "a backslash"},
    {"a = {b = 1, }", "f.toml:1:13: the text cannot be read: ", "no comma before the }"},
    {"got = [\n  \"a\"\n  \"b\"\n]", "f.toml:3:3: the text cannot be read: ", "[1, 2, 3]"},
    {"got = [1, 2", "f.toml:1:12: the text cannot be read: it ends too early\n", "[1, 2, 3]"},
    {"title Latch", "f.toml:1:7: the text cannot be read: ", "key = value"},
    {"[[feature]", "f.toml:1:11: the text cannot be read: ", "[[name]]"},
    {"= 1", "f.toml:1:1: the text cannot be read: ", "key = value"},
    {"\xC3\xA9 = 1", "f.toml:1:1: the text cannot be read: ", "key = value"},
    {"a = 1\rb = 2", "f.toml:1:7: the text cannot be read: ", "one 'key = value' a line"},
    {"a = 1\nb = \"\xC3\xA9\xFF\"", "f.toml:2:7: f.toml is not a text in UTF-8: it holds the byte FF",
     "saved as UTF-8"},
    {"a = \"\xED\xA0\x80\"", "f.toml:1:6: f.toml is not a text in UTF-8: it holds the byte ED",
     "saved as UTF-8"},
    {std::string("a = 1\0", 6), "f.toml:1:6: f.toml is not a text in UTF-8: it holds the byte 00",
     "saved as UTF-8"},
    {std::string("\xFF\xFE"
                 "a\0",
                 4),
     "f.toml:1:1: f.toml is not a text in UTF-8: it begins like UTF-16", "saved"},
    {"a = \"\x01\"", "f.toml:1:6: the text cannot be read: ", "a backslash"},
};
INSTANTIATE_TEST_SUITE_P(Document, Faults, testing::ValuesIn(kFaults));

// --- limits ------------------------------------------------------------------------------------------------

std::string nested(std::size_t levels) {
  return "a = " + std::string(levels, '[') + std::string(levels, ']');
}

std::string dotted(std::size_t parts, const std::string& before, const std::string& after) {
  std::string out = before;
  for (std::size_t i = 0; i + 1 < parts; ++i)
    out += "a.";
  return out + "a" + after;
}

TEST(Limits, DepthIsTakenUpToTheLimitOnly) {
  const std::string deep = "more than 64 tables and lists inside each other";
  EXPECT_EQ(complaint(nested(kDeepest)), "none");
  EXPECT_THAT(complaint(nested(kDeepest + 1)), HasSubstr(deep));
  EXPECT_EQ(complaint(dotted(kDeepest, "", " = 1")), "none");
  EXPECT_THAT(complaint(dotted(kDeepest + 2, "", " = 1")), HasSubstr(deep));
  EXPECT_EQ(complaint(dotted(kDeepest - 2, "[", "]\nx.y = 1")), "none");
  EXPECT_THAT(complaint(dotted(kDeepest - 2, "[", "]\nx.y.z.q = 1")), HasSubstr(deep));
  EXPECT_THAT(complaint(dotted(kDeepest + 2, "[[", "]]")), HasSubstr(deep));
}

TEST(Limits, BombsGetAMessage) {
  const std::string deep = "more than 64 tables and lists inside each other";
  for (const std::size_t levels : {1000U, 1000000U}) {
    EXPECT_THAT(complaint("a = " + std::string(levels, '[')), HasSubstr(deep));
    EXPECT_THAT(complaint(dotted(levels, "", " = 1")), HasSubstr(deep));
    EXPECT_THAT(complaint(dotted(levels, "[", "]")), HasSubstr(deep));
  }
  std::string braces = "a = ";
  for (int i = 0; i < 100000; ++i)
    braces += "{a = ";
  EXPECT_THAT(complaint(braces), HasSubstr(deep));
}

TEST(Limits, BracketsInTextsAndCommentsDoNotCount) {
  const std::string brackets(200, '[');
  EXPECT_EQ(complaint("a = \"" + brackets + "\" # " + brackets + "\nb = '" + brackets + "'\nc = \"\"\"\n" +
                      brackets + "\\\"\"\"\"\"\nd = '''" + brackets + "'''''\ne = \"\\\\\" #" + brackets),
            "none");
}

TEST(Limits, SizeIsTakenUpToTheLimitOnly) {
  const std::string comment(kLargestText - 1, 'x');
  EXPECT_EQ(complaint("#" + comment), "none");
  EXPECT_EQ(complaint("##" + comment),
            "f.toml: f.toml is 4194305 bytes long\n    accepted: at most 4194304 bytes (4 MiB)");
}

TEST(Limits, ValuesAreTakenUpToTheLimitOnly) {
  std::string items = "a = [";
  for (std::size_t i = 0; i < kMostValues - 2; ++i)
    items += "1,";
  EXPECT_EQ(complaint(items + "]"), "none");
  EXPECT_THAT(complaint(items + "1,1]"), HasSubstr("more than 100000 values"));
  std::string sections;
  for (std::size_t i = 0; i <= kMostValues; ++i)
    sections += "[[a]]\n";
  EXPECT_THAT(complaint(sections), HasSubstr("more than 100000 values"));
}

TEST(Limits, ALongLineIsReadQuickly) {
  std::string line = "a = [";
  for (std::size_t i = 0; i < 50'000; ++i)
    line += "\"\xC3\xA9\xC3\xA9\xC3\xA9\xC3\xA9\", ";
  line += "7]\nb = {";
  for (std::size_t i = 0; i < 20'000; ++i)
    line += (i == 0 ? "k" : ", k") + std::to_string(i) + " = \"\xC3\xA9\"";
  const Document document = parsed(line + "}");
  EXPECT_EQ(document.at("a")->size(), 50'001U);
  EXPECT_EQ(document.at("a[50001]")->written(), "7");
  EXPECT_EQ(document.at("b.k19999")->written(), "\"\xC3\xA9\"");
}

}  // namespace
}  // namespace sparewright::text
