// Texts broken at random: no crash, no hang, and whatever is still a text keeps its promises.
#include <array>
#include <cstdint>
#include <random>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/text/document.hpp"
#include "core/text/edit.hpp"
#include "core/text/literal.hpp"
#include "core/text/reading.hpp"
#include "core/text/validate.hpp"
#include "text_samples.hpp"
#include "toml_values.hpp"

namespace sparewright::text {
namespace {

constexpr std::uint64_t kSeed = 1959;
constexpr std::size_t kMutants = 4000;

// What TOML is made of, whole and broken.
constexpr std::array<std::string_view, 48> kTokens{"\"",
                                                   "\"\"\"",
                                                   "'",
                                                   "'''",
                                                   "[",
                                                   "]",
                                                   "[[",
                                                   "]]",
                                                   "{",
                                                   "}",
                                                   "=",
                                                   ",",
                                                   ".",
                                                   "#",
                                                   "\n",
                                                   "\r\n",
                                                   "\r",
                                                   " ",
                                                   "\t",
                                                   "\\",
                                                   "\\u00e9",
                                                   "\\U0010FFFF",
                                                   "\\uD800",
                                                   "0",
                                                   "-1",
                                                   ".5",
                                                   "1e9",
                                                   "0x",
                                                   "inf",
                                                   "nan",
                                                   "true",
                                                   "1979-05-27",
                                                   "07:32",
                                                   "a",
                                                   "a.b",
                                                   "\"a b\"",
                                                   "[a]",
                                                   "[[a]]",
                                                   "a = 1\n",
                                                   "\xC3\xA9",
                                                   "\xEF\xBB\xBF",
                                                   "\xFF",
                                                   "\xED\xA0\x80",
                                                   "\x7F",
                                                   "\xE2\x80\xA8",
                                                   "kind = \"hole\"\n",
                                                   "[[feature]]\n",
                                                   "a = [1, 2]\n"};

// Fragments that broke something once, or nearly did.
const std::vector<std::string> kCorpus{
    std::string(samples::kJob),
    std::string(samples::kEverything),
    "a.b.c = 1\na.d = 2\n[a.e]\nx = 1\n",
    "[a.b.c]\nk = 1\n[a]\nb.d = 2\n",
    "a = { b.c = [ { d = \"\"\"x\n\"\"\" }, ], e = '' }\n",
    "[[a]]\n[a.b]\n[[a.b.c]]\n[[a]]\nb = [ [ ], # c\n [ ] ]",
    "\xEF\xBB\xBF# c\r\na = \"\\u00e9\\\"\"\r\n[[f]]\r\n\r\n[[f]]",
};

class Mutator {
 public:
  explicit Mutator(std::uint64_t seed) : engine_(seed) {}

  std::size_t below(std::size_t n) { return n == 0 ? 0 : engine_() % n; }
  std::string_view token() { return kTokens[below(kTokens.size())]; }

  std::string mutant() {
    std::string text = kCorpus[below(kCorpus.size())];
    for (std::size_t changes = 1 + below(3); changes > 0; --changes)
      change(text);
    return text;
  }

 private:
  void change(std::string& text) {
    const std::size_t at = below(text.size() + 1);
    const std::size_t length = below(std::min<std::size_t>(text.size() - at, 12) + 1);
    switch (below(12)) {
      case 0:
        text.insert(at, token());
        break;
      case 1:
        text.replace(at, length, token());
        break;
      case 2:
        text.erase(at, length);
        break;
      case 3:
        text.insert(below(text.size() + 1), text.substr(at, length));
        break;
      case 4:
        text.insert(at, 1, static_cast<char>(below(below(4) == 0 ? 256 : 128)));
        break;
      case 5:
        text.insert(at, std::string(below(100), kTokens[below(12)].front()));
        break;
      default:
        move_line(text, at);
        break;
    }
  }

  void move_line(std::string& text, std::size_t at) {
    const std::size_t begin = at == 0 ? 0 : text.rfind('\n', at - 1) + 1;
    const std::size_t end = std::min(text.find('\n', begin), text.size() - 1) + 1;
    const std::string line = text.substr(begin, end - begin);
    if (below(2) == 0) text.erase(begin, end - begin);
    const std::size_t other = text.find('\n', below(text.size() + 1));
    text.insert(other == std::string::npos ? text.size() : other + 1, line);
  }

  std::mt19937_64 engine_;
};

void gather(const Node& node, std::vector<Node>& nodes) {
  nodes.push_back(node);
  for (const Node child : node)
    gather(child, nodes);
}

void expect_sound(const Document& document, const Node& node) {
  const base::Span span = node.span();
  ASSERT_LE(span.end(), document.text().size());
  ASSERT_EQ(*document.at(node.path()), node) << node.path();
  if (node.type() == Type::kText) {
    const std::size_t quotes =
        node.written().starts_with("\"\"\"") || node.written().starts_with("'''") ? 3 : 1;
    ASSERT_EQ(offset_in_literal(node.written(), node.typed().size()), span.length - quotes) << node.written();
    ASSERT_LE(offset_in_literal(node.written(), 0), span.length - quotes);
  }
  if (node.layout() != Layout::kValue) return;
  const auto same = with_value(document, node.path(), node.written());
  ASSERT_TRUE(same) << node.path() << '\n' << base::report(same.error());
  ASSERT_EQ(same->text(), document.text());
}

base::Result<Document> any_edit(Mutator& random, const Document& document, const Node& node) {
  const std::string_view token = random.token();
  switch (random.below(6)) {
    case 0:
      return with_value(document, node.path(), token);
    case 1:
      return with_value(document, node.path() + '.' + std::string(random.token()), token);
    case 2:
      return with_item(document, node.path(), token);
    case 3:
      return with_another(document, node.path(), token);
    case 4:
      return with_section(document, std::string(random.token()), token);
    default:
      return without(document, node.path());
  }
}

TEST(TextFuzz, BrokenTextsAreReadCheckedAndEditedOrRefused) {
  SCOPED_TRACE(testing::Message() << "seed " << kSeed);
  Mutator random(kSeed);
  const Shape shape = samples::job_shape();
  std::size_t read = 0;
  std::size_t edited = 0;
  for (std::size_t i = 0; i < kMutants; ++i) {
    const std::string text = random.mutant();
    SCOPED_TRACE(text);
    const auto document = Document::parse(text, "mutant");
    if (!document) {
      ASSERT_TRUE(document.error().place.has_value());
      ASSERT_FALSE(base::report(document.error()).empty());
      continue;
    }
    ++read;
    ASSERT_EQ(document->text(), text);
    for (const base::Failure& failure : validate(*document, shape))
      ASSERT_FALSE(base::report(failure).empty());
    std::vector<Node> nodes;
    gather(document->root(), nodes);
    for (const Node& node : nodes) {
      const auto number = read_sized(node, quantity::Kind::kLength, quantity::UnitSystem::kInch);
      ASSERT_TRUE(number || number.error().place);
    }
    expect_sound(*document, nodes[random.below(nodes.size())]);
    if (HasFatalFailure()) return;
    const auto after = any_edit(random, *document, nodes[random.below(nodes.size())]);
    ASSERT_TRUE(after || after.error().code == base::Code::kEditRefused);
    edited += after ? 1U : 0U;
  }
  EXPECT_GT(read, kMutants / 8);
  EXPECT_GT(edited, kMutants / 40);
}

// Of each text the two readers make the same values, or both refuse it. Known to differ, and in none of these: of a
// number too large for a double (1e999) tomllib makes infinity, and we refuse it.
void expect_same_values(const std::vector<std::string>& texts) {
  const auto judgement = tests::values_by_tomllib(texts);
  ASSERT_EQ(judgement.size(), texts.size());
  std::size_t taken = 0;
  for (std::size_t i = 0; i < texts.size(); ++i) {
    EXPECT_EQ(tests::values_of(texts[i]), judgement[i]) << texts[i];
    taken += judgement[i] == "refused" ? 0U : 1U;
  }
  EXPECT_GT(taken, texts.size() / 8);
}

TEST(TextFuzz, BrokenTextsReadAsTomllibReadsThem) {
  Mutator random(kSeed + 1);
  std::vector<std::string> texts;
  for (std::size_t i = 0; i < kMutants; ++i)
    texts.push_back(random.mutant());
  expect_same_values(texts);
}

// Headers and dotted keys of few names, in every order: which tables may be opened twice.
TEST(TextFuzz, TablesInAnyOrderReadAsTomllibReadsThem) {
  constexpr std::array<std::string_view, 3> kNames{"a", "b", "c"};
  Mutator random(kSeed + 2);
  const auto path = [&] {
    std::string names(kNames[random.below(kNames.size())]);
    for (std::size_t more = random.below(3); more > 0; --more) {
      names += '.' + std::string(kNames[random.below(kNames.size())]);
    }
    return names;
  };
  std::vector<std::string> texts;
  for (std::size_t i = 0; i < kMutants; ++i) {
    std::string text;
    for (std::size_t lines = 2 + random.below(4); lines > 0; --lines) {
      switch (random.below(5)) {
        case 0:
          text += '[' + path() + "]\n";
          break;
        case 1:
          text += "[[" + path() + "]]\n";
          break;
        case 2:
          text += path() + " = {}\n";
          break;
        case 3:
          text += path() + " = [{}]\n";
          break;
        default:
          text += path() + " = 1\n";
          break;
      }
    }
    texts.push_back(text);
  }
  expect_same_values(texts);
}

}  // namespace
}  // namespace sparewright::text
