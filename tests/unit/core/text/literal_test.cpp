#include "core/text/literal.hpp"

#include <string>

#include <gtest/gtest.h>

#include "text_samples.hpp"

namespace sparewright::text {
namespace {

TEST(Literal, QuotesWhatNeedsIt) {
  EXPECT_EQ(in_quotes("3/8\" \\ é"), R"("3/8\" \\ é")");
  EXPECT_EQ(in_quotes("a\nb\tc\r\x01\x7F"), R"("a\nb\tc\u000D\u0001\u007F")");
  EXPECT_EQ(written_key("pivot-pin_2"), "pivot-pin_2");
  EXPECT_EQ(written_key("pivot pin"), "\"pivot pin\"");
  EXPECT_EQ(written_key("a.b"), "\"a.b\"");
  EXPECT_EQ(written_key(""), "\"\"");
}

TEST(Literal, QuotedTextsReadBack) {
  std::string all;
  for (char c = 1; c < 127; ++c)
    all += c;
  all += "\x7F é ± \xF0\x9D\x84\x9E";
  EXPECT_EQ(samples::parsed("a = " + in_quotes(all)).at("a")->typed(), all);
  EXPECT_EQ(samples::parsed(written_key(all) + " = 1").root()[0].key(), all);
}

TEST(Literal, FindsBytesOfTheContent) {
  EXPECT_EQ(offset_in_literal(R"("abc")", 0), 1U);
  EXPECT_EQ(offset_in_literal(R"("abc")", 3), 4U);  // the closing quote
  EXPECT_EQ(offset_in_literal(R"("abc")", 9), 4U);
  EXPECT_EQ(offset_in_literal(R"("a\"b")", 1), 2U);
  EXPECT_EQ(offset_in_literal(R"("a\"b")", 2), 4U);
  EXPECT_EQ(offset_in_literal(R"("a\u00e9b")", 2), 2U);  // the second byte of é
  EXPECT_EQ(offset_in_literal(R"("a\u00e9b")", 3), 8U);
  EXPECT_EQ(offset_in_literal(R"("\u20ac\U0001D11Eb")", 7), 17U);
  EXPECT_EQ(offset_in_literal(R"('a\n')", 2), 3U);
  EXPECT_EQ(offset_in_literal("''", 0), 1U);
  EXPECT_EQ(offset_in_literal("'''\nab'''", 1), 5U);
  EXPECT_EQ(offset_in_literal("\"\"\"\r\na\r\nb\"\"\"", 2), 8U);
  EXPECT_EQ(offset_in_literal("\"\"\"a \\\n   b\"\"\"", 2), 10U);
  EXPECT_EQ(offset_in_literal("\"\"\"a\"\"\"\"\"", 2), 5U);
  EXPECT_EQ(offset_in_literal("\"\"\"a\"\"\"\"\"", 3), 6U);
}

}  // namespace
}  // namespace sparewright::text
