#include "core/text/edit.hpp"

#include <string>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "text_samples.hpp"

namespace sparewright::text {
namespace {

using samples::parsed;
using testing::HasSubstr;
using testing::StartsWith;

std::string outcome(const base::Result<Document>& edited) {
  return edited ? edited->text() : base::report(edited.error());
}
std::string valued(std::string_view text, std::string_view path, std::string_view value) {
  return outcome(with_value(parsed(text), path, value));
}
std::string listed(std::string_view text, std::string_view path, std::string_view value) {
  return outcome(with_item(parsed(text), path, value));
}
std::string another(std::string_view text, std::string_view path, std::string_view body) {
  return outcome(with_another(parsed(text), path, body));
}
std::string sectioned(std::string_view text, std::string_view path, std::string_view body) {
  return outcome(with_section(parsed(text), path, body));
}
std::string less(std::string_view text, std::string_view path) {
  return outcome(without(parsed(text), path));
}

TEST(WithValue, ReplacesAValueAndNothingElse) {
  EXPECT_EQ(valued("# c\na = 1   # one\n\nb = [ 2 ]\n", "a", "\"1-3/8\""),
            "# c\na = \"1-3/8\"   # one\n\nb = [ 2 ]\n");
  EXPECT_EQ(valued("a = [1, 2 , 3]", "a[2]", "{ x = 0 }"), "a = [1, { x = 0 } , 3]");
  EXPECT_EQ(valued("a = { b = 1, c = 2 }", "a.b", "[\n1,\n]"), "a = { b = [\n1,\n], c = 2 }");
  EXPECT_EQ(valued("a = { b = 1 }", "a", " 5 \n"), "a = 5");
  EXPECT_EQ(valued("[[f]]\nx = 1\n[[f]]\nx = 2\n", "f[2].x", "'''m\nl'''"),
            "[[f]]\nx = 1\n[[f]]\nx = '''m\nl'''\n");
  EXPECT_EQ(valued("\xEF\xBB\xBF"
                   "a = 1\r\n",
                   "a", "2"),
            "\xEF\xBB\xBF"
            "a = 2\r\n");
}

TEST(WithValue, AddsAKeyAfterTheOthers) {
  EXPECT_EQ(valued("[a]\n  x = 1 # c\n# d\n\n[b]\n", "a.y", "2"), "[a]\n  x = 1 # c\n  y = 2\n# d\n\n[b]\n");
  EXPECT_EQ(valued("[a]\r\nx = 1", "a.\"y z\"", "2"), "[a]\r\nx = 1\r\n\"y z\" = 2\r\n");
  EXPECT_EQ(valued("[a] # c\n[b]\n", "a.x", "2"), "[a] # c\nx = 2\n[b]\n");
  EXPECT_EQ(valued("[[f]]\n[f.g]\nx = 1\n[[f]]", "f[1].y", "2"), "[[f]]\ny = 2\n[f.g]\nx = 1\n[[f]]");
  EXPECT_EQ(valued("a.b.c = 1\nz = 2\n", "a.b.d", "3"), "a.b.c = 1\na.b.d = 3\nz = 2\n");
  EXPECT_EQ(valued("[a]\n", "a.p.q", "3"), "[a]\np.q = 3\n");
}

TEST(WithValue, AddsAKeyOfTheWholeTextBeforeTheHeaders) {
  EXPECT_EQ(valued("", "a", "1"), "a = 1\n");
  EXPECT_EQ(valued("# c", "a", "1"), "# c\na = 1\n");
  EXPECT_EQ(valued("\xEF\xBB\xBF"
                   "# c\n[b]\n",
                   "a", "1"),
            "\xEF\xBB\xBF"
            "# c\na = 1\n[b]\n");
  EXPECT_EQ(valued("[b.c]\n[b]\n", "a", "1"), "a = 1\n[b.c]\n[b]\n");
}

TEST(WithValue, AddsAKeyInsideBraces) {
  EXPECT_EQ(valued("a = { x = 1 } # c", "a.y", "2"), "a = { x = 1, y = 2 } # c");
  EXPECT_EQ(valued("a = {}", "a.y", "2"), "a = { y = 2 }");
  EXPECT_EQ(valued("a = {  }", "a.y", "2"), "a = {y = 2  }");
  EXPECT_EQ(valued("a = { b.c = 1, z = 2 }", "a.b.d", "3"), "a = { b.c = 1, b.d = 3, z = 2 }");
  EXPECT_EQ(valued("a = [ { x = 1 }, { x = 2 } ]", "a[2].y", "3"), "a = [ { x = 1 }, { x = 2, y = 3 } ]");
}

TEST(WithValue, RefusesWhatIsNotOneValue) {
  for (const char* value :
       {"", "1 # c", "1\nb = 2", "1, 2", "x", "\"a", "1 2", "1\n[c]", "]", "[1]\nx.y = 3", "1\n#"}) {
    EXPECT_THAT(valued("a = 1\n", "a", value), StartsWith("the edit of a is refused: ")) << value;
    EXPECT_THAT(valued("a = [1]\n", "a[1]", value), StartsWith("the edit of a[1] is refused: ")) << value;
    EXPECT_THAT(valued("a = {b = 1}\n", "a.c", value), StartsWith("the edit of a.c is refused: ")) << value;
  }
  EXPECT_THAT(valued("a = 1\n", "a", "1-3/8"),
              HasSubstr("not a value: 1-3/8\n    accepted: a number such as"));
}

TEST(WithValue, RefusesWhereThereIsNoPlaceForIt) {
  EXPECT_THAT(valued("[a]\n", "", "1"), HasSubstr("the edit of the text is refused: "));
  EXPECT_THAT(valued("[a]\n", "a", "1"), HasSubstr("it is written in several lines"));
  EXPECT_THAT(valued("[[a]]\n", "a", "1"), HasSubstr("it is written in several lines"));
  EXPECT_THAT(valued("a = 1\n", "a.b", "1"), HasSubstr("a has no b"));
  EXPECT_THAT(valued("a = [1]\n", "a[2]", "1"), HasSubstr("a has no [2]"));
  EXPECT_THAT(valued("[a.b]\n", "a.c", "1"), HasSubstr("there is no header [a]"));
  for (const char* key : {"b = 2 #", "b c", "b\n", "", " b", "b]", "\"b\" .c", "x.", "é"}) {
    EXPECT_THAT(valued("[a]\n", std::string("a.") + key, "1"), HasSubstr("is refused: ")) << key;
  }
}

TEST(WithItem, AddsAnItemAtTheEnd) {
  EXPECT_EQ(listed("a = []", "a", "1"), "a = [1]");
  EXPECT_EQ(listed("a = [# c\n]", "a", "1"), "a = [1 # c\n]");
  EXPECT_EQ(listed("a = [ 1 ]  # c", "a", "\"2\""), "a = [ 1, \"2\" ]  # c");
  EXPECT_EQ(listed("a = [\n  1,  # c\n]", "a", "2"), "a = [\n  1, 2,  # c\n]");
  EXPECT_EQ(listed("a = { b = [[1], [2]] }", "a.b[1]", "3"), "a = { b = [[1, 3], [2]] }");
  EXPECT_THAT(listed("a = [1]", "a", "2, 3"), HasSubstr("is refused"));
  EXPECT_THAT(listed("a = 1", "a", "2"), HasSubstr("not a list in brackets"));
  EXPECT_THAT(listed("[[a]]", "a", "2"), HasSubstr("not a list in brackets"));
  EXPECT_THAT(listed("a = 1", "b", "2"), HasSubstr("has no key 'b'"));
}

TEST(WithAnother, AddsATableAfterTheOthers) {
  EXPECT_EQ(another("[[f]]\nx = 1 # c\n\n# then\n[g]\n", "f", "x = 2\n"),
            "[[f]]\nx = 1 # c\n\n[[f]]\nx = 2\n\n# then\n[g]\n");
  EXPECT_EQ(another("[[f]]", "f", ""), "[[f]]\n\n[[f]]\n");
  EXPECT_EQ(another("[[f]]\r\n[[f.g]]\r\n", "f", "# c\r\nx.y = 2"),
            "[[f]]\r\n[[f.g]]\r\n\r\n[[f]]\r\n# c\r\nx.y = 2\r\n");
  EXPECT_EQ(another("[[f]]\n[[f.g]]\nx = 1\n[[f]]\n", "f[1].g", "x = 2"),
            "[[f]]\n[[f.g]]\nx = 1\n\n[[f.g]]\nx = 2\n[[f]]\n");
}

TEST(WithAnother, AddsTheFirst) {
  EXPECT_EQ(another("", "f", "x = 2"), "[[f]]\nx = 2\n");
  EXPECT_EQ(another("a = 1\n# c\n", "f", "x = 2"), "a = 1\n# c\n\n[[f]]\nx = 2\n");
  EXPECT_EQ(another("a = 1\n\n", "f", "x = 2"), "a = 1\n\n[[f]]\nx = 2\n");
  EXPECT_EQ(another("[[f]]\ny = 1\n[[f]]\n", "f[1].\"g h\"", "x = 2"),
            "[[f]]\ny = 1\n\n[[f.\"g h\"]]\nx = 2\n[[f]]\n");
}

TEST(WithAnother, RefusesWhatIsNotTheLinesOfATable) {
  EXPECT_THAT(another("[[f]]", "f", "[g]\n"), HasSubstr("a header in the lines of a table"));
  EXPECT_THAT(another("[[f]]", "f", "x = 1\n[[g]]\n"), HasSubstr("a header in the lines of a table"));
  EXPECT_THAT(another("[[f]]", "f", "x = \n"), HasSubstr("no value is written here"));
  EXPECT_THAT(another("[f]", "f", "x = 1"), HasSubstr("not a list of tables with headers"));
  EXPECT_THAT(another("f = []", "f", "x = 1"), HasSubstr("not a list of tables with headers"));
  EXPECT_THAT(another("f = { g = 1 }", "f.h", "x = 1"), HasSubstr("is refused"));
}

TEST(WithSection, AddsATableThatIsNotThere) {
  EXPECT_EQ(sectioned("[a]\nx = 1\n[b]\n", "a.c", "y = 2"), "[a]\nx = 1\n\n[a.c]\ny = 2\n[b]\n");
  EXPECT_EQ(sectioned("[a]\n", "\"b c\"", "y = 2"), "[a]\n\n[\"b c\"]\ny = 2\n");
  EXPECT_EQ(sectioned("[[a]]\n[[a]]\n", "a[1].c", "y = 2"), "[[a]]\n\n[a.c]\ny = 2\n[[a]]\n");
  EXPECT_THAT(sectioned("[a]\n", "a", "y = 2"), HasSubstr("it is there already"));
  EXPECT_THAT(sectioned("[a]\n", "b]\n[c", "y = 2"), HasSubstr("is refused"));
}

TEST(Without, TakesAKeyAndItsLine) {
  EXPECT_EQ(less("# a\nx = 1\n\ny = 2\n", "x"), "# a\n\ny = 2\n");
  EXPECT_EQ(less("x = 1\ny = [\n2,\n]", "y"), "x = 1\n");
  EXPECT_EQ(less("  x = 1  # why\r\ny = 2\r\n", "x"), "  # why\r\ny = 2\r\n");
  EXPECT_EQ(less("[a]\nx = 1\n[b]\n", "a.x"), "[a]\n[b]\n");
  EXPECT_EQ(less("a.x = 1\na.y.z = 2\n", "a.y.z"), "a.x = 1\n");
  EXPECT_EQ(less("a.x = 1\na.y.z = 2\n", "a.y"), "a.x = 1\n");
}

TEST(Without, TakesOneOfSeveralAndItsComma) {
  EXPECT_EQ(less("a = { x = 1, y = 2, z = 3 }", "a.x"), "a = { y = 2, z = 3 }");
  EXPECT_EQ(less("a = { x = 1, y = 2, z = 3 }", "a.y"), "a = { x = 1, z = 3 }");
  EXPECT_EQ(less("a = { x = 1, y = 2, z = 3 }", "a.z"), "a = { x = 1, y = 2 }");
  EXPECT_EQ(less("a = { x = 1 }", "a.x"), "a = {  }");
  EXPECT_EQ(less("a = { b.x = 1, y = 2, b.z = 3 }", "a.b.z"), "a = { b.x = 1, y = 2 }");
  EXPECT_EQ(less("a = { b.x = 1, y = 2 }", "a.b.x"), "a = { y = 2 }");
  EXPECT_EQ(less("a = [1, 2]", "a[2]"), "a = [1]");
  EXPECT_EQ(less("a = [1, 2,]", "a[2]"), "a = [1,]");
  EXPECT_EQ(less("a = [1]", "a[1]"), "a = []");
}

TEST(Without, LeavesTheCommentsOfAList) {
  EXPECT_EQ(less("a = [\n  1,\n  2,\n  3\n]", "a[2]"), "a = [\n  1,\n  3\n]");
  EXPECT_EQ(less("a = [\n  1, # one\n  2, # two\n]", "a[2]"), "a = [\n  1, # one\n  # two\n]");
  EXPECT_EQ(less("a = [\n  1, # one\n  2 # two\n]", "a[2]"), "a = [\n  1 # one\n   # two\n]");
  EXPECT_EQ(less("a = [\n  1 # one\n  , 2\n]", "a[1]"), "a = [\n   # one\n  2\n]");
}

TEST(Without, TakesATableWithItsHeader) {
  EXPECT_EQ(less("# c\n[a]\nx = 1 # d\n# e\n[b]\n", "a"), "# c\n# e\n[b]\n");
  EXPECT_EQ(less("[[f]]\nx = 1\n[[f.g]]\ny = 1\n\n[[f]]\nx = 2\n", "f[1]"), "\n[[f]]\nx = 2\n");
  EXPECT_EQ(less("[[f]]\nx = 1\n[[f.g]]\ny = 1\n\n[[f]]\nx = 2\n", "f[2]"),
            "[[f]]\nx = 1\n[[f.g]]\ny = 1\n\n");
  EXPECT_EQ(less("[[f]]\nx = 1\n[[f.g]]\ny = 1\n\n[[f]]\nx = 2\n", "f[1].g[1]"),
            "[[f]]\nx = 1\n\n[[f]]\nx = 2\n");
  EXPECT_EQ(less("[[f]]\n[[f]]\n[k]\n", "f"), "[k]\n");
  EXPECT_EQ(less("[a.b]\nx = 1\n[c]", "a.b"), "[c]");
}

TEST(Without, RefusesWhatStandsAmongOthers) {
  EXPECT_THAT(less("[a.b]\nx = 1\n[c]\n[a]\n", "a"), HasSubstr("other values would change"));
  EXPECT_THAT(less("a.x = 1\na.y = 2\n", "a"), HasSubstr("it is written in several lines"));
  EXPECT_THAT(less("a = 1\n", ""), HasSubstr("the text as a whole stays"));
  EXPECT_THAT(less("a = 1\n", "b"), HasSubstr("has no key 'b'"));
}

TEST(Edits, KeepAByteOrderMark) {
  const std::string mark = "\xEF\xBB\xBF";
  EXPECT_EQ(less(mark + "a = 1\nb = 2\n", "a"), mark + "b = 2\n");
  EXPECT_EQ(less(mark + "a = 1 # c\nb = 2\n", "a"), mark + "# c\nb = 2\n");
  EXPECT_EQ(less(mark + "[a]\n", "a"), mark);
  EXPECT_EQ(valued(mark + "[a]\n", "b", "1"), mark + "b = 1\n[a]\n");
  EXPECT_EQ(valued(mark + "a = 1", "b", "2"), mark + "a = 1\nb = 2\n");
  EXPECT_EQ(valued(mark, "b", "2"), mark + "b = 2\n");
  EXPECT_EQ(another(mark, "b", ""), mark + "[[b]]\n");
}

TEST(Edits, LeaveTheOldDocumentAsItWas) {
  const Document before = parsed(samples::kJob);
  const auto after = with_value(before, "job.revision", "4");
  ASSERT_TRUE(after);
  EXPECT_EQ(before.text(), samples::kJob);
  EXPECT_EQ(after->name(), before.name());
  EXPECT_EQ(with_value(*after, "job.revision", "3")->text(), samples::kJob);
  EXPECT_EQ(with_value(before, "job", "4").error().code, base::Code::kEditRefused);
}

}  // namespace
}  // namespace sparewright::text
