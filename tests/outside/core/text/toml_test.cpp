// The texts of the TOML v1.0.0 specification (toml.io/en/v1.0.0), its own examples by section, as remembered;
// and Python's tomllib as a second judge of every one of them.
#include <algorithm>
#include <ostream>
#include <string>
#include <vector>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/text/document.hpp"
#include "judge.hpp"
#include "text_samples.hpp"
#include "toml_values.hpp"

namespace sparewright::text {
namespace {

using tests::values_by_tomllib;
using tests::values_of;

struct Example {
  const char* section;
  std::string text;
  const char* path;
  std::string typed;  // the content, or the number as written
};
std::ostream& operator<<(std::ostream& out, const Example& example) {
  return out << example.section << ": " << example.text;
}

class TomlExamples : public testing::TestWithParam<Example> {};

TEST_P(TomlExamples, AreReadAsTheSpecificationSays) {
  const auto document = Document::parse(GetParam().text, "toml");
  ASSERT_TRUE(document);
  const auto node = document->at(GetParam().path);
  ASSERT_TRUE(node);
  EXPECT_EQ(node->typed(), GetParam().typed);
}

const std::vector<Example> kExamples{
    {"Comment", "# This is a full-line comment\nkey = \"value\"  # This is a comment at the end of a line\n",
     "key", "value"},
    {"Comment", "another = \"# This is not a comment\"\n", "another", "# This is not a comment"},
    {"Keys", "bare_key = \"value\"\nbare-key = \"value\"\n1234 = \"value\"\n", "1234", "value"},
    {"Keys", "\"127.0.0.1\" = \"value\"\n", "\"127.0.0.1\"", "value"},
    {"Keys", "\"character encoding\" = \"value\"\n", "\"character encoding\"", "value"},
    {"Keys", "'quoted \"value\"' = \"value\"\n", "\"quoted \\\"value\\\"\"", "value"},
    {"Keys", "\"\" = \"blank\"\n", "\"\"", "blank"},
    {"Keys", "physical.color = \"orange\"\nphysical.shape = \"round\"\nsite.\"google.com\" = true\n",
     "site.\"google.com\"", "true"},
    {"Keys", "fruit.name = \"banana\"\nfruit. color = \"yellow\"\nfruit . flavor = \"banana\"\n",
     "fruit.flavor", "banana"},
    {"Keys", "fruit.apple.smooth = true\nfruit.orange = 2\n", "fruit.orange", "2"},
    {"Keys", "apple.type = \"fruit\"\norange.type = \"fruit\"\napple.skin = \"thin\"\n", "apple.skin",
     "thin"},
    {"Keys", "3.14159 = \"pi\"\n", "3.14159", "pi"},
    {"String", "str = \"I'm a string. \\\"You can quote me\\\". Name\\tJos\\u00E9\\nLocation\\tSF.\"\n",
     "str", "I'm a string. \"You can quote me\". Name\tJos\xC3\xA9\nLocation\tSF."},
    {"String", "str1 = \"\"\"\nRoses are red\nViolets are blue\"\"\"\n", "str1",
     "Roses are red\nViolets are blue"},
    {"String", "str2 = \"\"\"\nThe quick brown \\\n\n\n  fox jumps over \\\n    the lazy dog.\"\"\"\n",
     "str2", "The quick brown fox jumps over the lazy dog."},
    {"String",
     "str3 = \"\"\"\\\n       The quick brown \\\n       fox jumps over \\\n       the lazy dog.\\\n       "
     "\"\"\"\n",
     "str3", "The quick brown fox jumps over the lazy dog."},
    {"String", "str4 = \"\"\"Here are two quotation marks: \"\". Simple enough.\"\"\"\n", "str4",
     "Here are two quotation marks: \"\". Simple enough."},
    {"String", "str5 = \"\"\"Here are three quotation marks: \"\"\\\".\"\"\"\n", "str5",
     "Here are three quotation marks: \"\"\"."},
    {"String", "str7 = \"\"\"\"This,\" she said, \"is just a pointless statement.\"\"\"\"\n", "str7",
     "\"This,\" she said, \"is just a pointless statement.\""},
    {"String", "winpath  = 'C:\\Users\\nodejs\\templates'\n", "winpath", "C:\\Users\\nodejs\\templates"},
    {"String", "regex2 = '''I [dw]on't need \\d{2} apples'''\n", "regex2", "I [dw]on't need \\d{2} apples"},
    {"String",
     "lines  = '''\nThe first newline is\ntrimmed in raw strings.\n   All other whitespace\n   is "
     "preserved.\n'''\n",
     "lines", "The first newline is\ntrimmed in raw strings.\n   All other whitespace\n   is preserved.\n"},
    {"String", "quot15 = '''Here are fifteen quotation marks: \"\"\"\"\"\"\"\"\"\"\"\"\"\"\"'''\n", "quot15",
     "Here are fifteen quotation marks: \"\"\"\"\"\"\"\"\"\"\"\"\"\"\""},
    {"String", "str = ''''That,' she said, 'is still pointless.''''\n", "str",
     "'That,' she said, 'is still pointless.'"},
    {"Integer", "int1 = +99\nint2 = 42\nint3 = 0\nint4 = -17\n", "int1", "+99"},
    {"Integer", "int5 = 1_000\nint6 = 5_349_221\nint7 = 53_49_221\nint8 = 1_2_3_4_5\n", "int8", "1_2_3_4_5"},
    {"Integer",
     "hex1 = 0xDEADBEEF\nhex2 = 0xdeadbeef\nhex3 = 0xdead_beef\noct1 = 0o01234567\nbin1 = 0b11010110\n",
     "hex3", "0xdead_beef"},
    {"Float",
     "flt1 = +1.0\nflt2 = 3.1415\nflt3 = -0.01\nflt4 = 5e+22\nflt5 = 1e06\nflt6 = -2E-2\nflt7 = 6.626e-34\n",
     "flt7", "6.626e-34"},
    {"Float", "flt8 = 224_617.445_991_228\n", "flt8", "224_617.445_991_228"},
    {"Float", "sf1 = inf\nsf2 = +inf\nsf3 = -inf\n", "sf3", "-inf"},
    {"Boolean", "bool1 = true\nbool2 = false\n", "bool2", "false"},
    {"Offset Date-Time", "odt1 = 1979-05-27T07:32:00Z\nodt3 = 1979-05-27T00:32:00.999999-07:00\n", "odt3",
     "1979-05-27T00:32:00.999999-07:00"},
    {"Offset Date-Time", "odt4 = 1979-05-27 07:32:00Z\n", "odt4", "1979-05-27 07:32:00Z"},
    {"Local Date-Time", "ldt1 = 1979-05-27T07:32:00\n", "ldt1", "1979-05-27T07:32:00"},
    {"Local Date", "ld1 = 1979-05-27\n", "ld1", "1979-05-27"},
    {"Local Time", "lt1 = 07:32:00\nlt2 = 00:32:00.999999\n", "lt2", "00:32:00.999999"},
    {"Array", "nested_mixed_array = [ [ 1, 2 ], [\"a\", \"b\", \"c\"] ]\n", "nested_mixed_array[2][3]", "c"},
    {"Array",
     "contributors = [\n  \"Foo Bar <foo@example.com>\",\n  { name = \"Baz Qux\", url = \"x\" }\n]\n",
     "contributors[2].name", "Baz Qux"},
    {"Array", "integers3 = [\n  1,\n  2, # this is ok\n]\n", "integers3[2]", "2"},
    {"Table",
     "[table-1]\nkey1 = \"some string\"\nkey2 = 123\n\n[table-2]\nkey1 = \"another string\"\nkey2 = 456\n",
     "table-2.key2", "456"},
    {"Table", "[dog.\"tater.man\"]\ntype.name = \"pug\"\n", "dog.\"tater.man\".type.name", "pug"},
    {"Table", "[ g .  h  . i ]\n[ j . \"\xCA\x9E\" . 'l' ]\nx = 1\n", "j.\"\xCA\x9E\".l.x", "1"},
    {"Table", "[x.y.z.w]\n[x]\na = 1\n", "x.a", "1"},
    {"Table", "name = \"Fido\"\nbreed = \"pug\"\n[owner]\nname = \"Regina Dogman\"\n", "owner.name",
     "Regina Dogman"},
    {"Table", "[fruit]\napple.color = \"red\"\napple.taste.sweet = true\n", "fruit.apple.taste.sweet",
     "true"},
    {"Inline Table", "name = { first = \"Tom\", last = \"Preston-Werner\" }\npoint = { x = 1, y = 2 }\n",
     "point.y", "2"},
    {"Inline Table", "animal = { type.name = \"pug\" }\n", "animal.type.name", "pug"},
    {"Array of Tables",
     "[[products]]\nname = \"Hammer\"\nsku = 738594937\n\n[[products]]  # empty table within the "
     "array\n\n[[products]]\n"
     "name = \"Nail\"\nsku = 284758393\n\ncolor = \"gray\"\n",
     "products[3].color", "gray"},
    {"Array of Tables",
     "[[fruits]]\nname = \"apple\"\n[fruits.physical]\ncolor = \"red\"\n[[fruits.varieties]]\nname = \"red "
     "delicious\"\n"
     "[[fruits.varieties]]\nname = \"granny smith\"\n[[fruits]]\nname = \"banana\"\n[[fruits.varieties]]\n"
     "name = \"plantain\"\n",
     "fruits[1].varieties[2].name", "granny smith"},
    {"Array of Tables", "points = [ { x = 1, y = 2, z = 3 },\n           { x = 7, y = 8, z = 9 } ]\n",
     "points[2].z", "9"},
};
INSTANTIATE_TEST_SUITE_P(OutsideToml10, TomlExamples, testing::ValuesIn(kExamples));

class TomlInvalid : public testing::TestWithParam<const char*> {};

TEST_P(TomlInvalid, IsRefused) {
  EXPECT_FALSE(Document::parse(GetParam(), "toml"));
}

const std::vector<const char*> kInvalid{
    "key = # INVALID\n",
    "first = \"Tom\" last = \"Preston-Werner\" # INVALID\n",
    "= \"no key name\"  # INVALID\n",
    "name = \"Tom\"\nname = \"Pradyun\"\n",
    "spelling = \"favorite\"\n\"spelling\" = \"favourite\"\n",
    "fruit.apple = 1\nfruit.apple.smooth = true\n",
    "str5 = \"\"\"Here are three quotation marks: \"\"\".\"\"\"  # INVALID\n",
    "apos15 = '''Here are fifteen apostrophes: ''''''''''''''''''  # INVALID\n",
    "invalid_float_1 = .7\n",
    "invalid_float_2 = 7.\n",
    "invalid_float_3 = 3.e+20\n",
    "[fruit]\napple = \"red\"\n[fruit]\norange = \"orange\"\n",
    "[fruit]\napple = \"red\"\n[fruit.apple]\ntexture = \"smooth\"\n",
    "[fruit]\napple.color = \"red\"\napple.taste.sweet = true\n[fruit.apple]  # INVALID\n",
    "[fruit]\napple.color = \"red\"\napple.taste.sweet = true\n[fruit.apple.taste]  # INVALID\n",
    "[product]\ntype = { name = \"Nail\" }\ntype.edible = false  # INVALID\n",
    "[product]\ntype.name = \"Nail\"\ntype = { edible = false }  # INVALID\n",
    "[fruit.physical]\ncolor = \"red\"\n[[fruit]]\nname = \"apple\"\n",
    "fruits = []\n[[fruits]] # Not allowed\n",
    "[[fruits]]\nname = \"apple\"\n[[fruits.varieties]]\nname = \"red delicious\"\n[fruits.varieties]\n",
    "[[fruits]]\nname = \"apple\"\n[fruits.physical]\ncolor = \"red\"\n[[fruits.physical]]\n",
    "# INVALID\npoint = { x = 1, y = 2, }\n",
    "point = { x = 1,\n y = 2 }\n",
};
INSTANTIATE_TEST_SUITE_P(OutsideToml10, TomlInvalid, testing::ValuesIn(kInvalid));

// Every text above and the samples of the room, read by us and by Python.
TEST(OutsideTomllib, ReadsTheSameValues) {
  std::vector<std::string> texts{std::string(samples::kJob), std::string(samples::kEverything)};
  for (const Example& example : kExamples)
    texts.push_back(example.text);
  for (const char* text : kInvalid)
    texts.emplace_back(text);
  const auto judgement = values_by_tomllib(texts);
  ASSERT_EQ(judgement.size(), texts.size());
  for (std::size_t i = 0; i < texts.size(); ++i)
    EXPECT_EQ(values_of(texts[i]), judgement[i]) << texts[i];
}

}  // namespace
}  // namespace sparewright::text
