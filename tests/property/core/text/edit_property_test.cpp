// Random edits of random texts: what was edited reads back, everything else stays, bytes and values.
#include <algorithm>
#include <map>
#include <string>
#include <vector>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/text/edit.hpp"
#include "core/text/literal.hpp"
#include "property.hpp"
#include "text_samples.hpp"

namespace sparewright::text {
namespace {

using Values =
    std::map<std::string, std::string>;  // written, by path; of tables and lists only that they are there

void gather(const Node& node, Values& values) {
  const bool holds_others = node.type() == Type::kTable || node.type() == Type::kList;
  values[node.path()] = holds_others ? std::string(name_of(node.type())) : std::string(node.written());
  for (const Node child : node)
    gather(child, values);
}

Values values_of(const Document& document) {
  Values values;
  gather(document.root(), values);
  return values;
}

bool is_inside(const std::string& path, const std::string& outer) {
  return path == outer ||
         (path.starts_with(outer) && (path[outer.size()] == '.' || path[outer.size()] == '['));
}

Values without_those_inside(Values values, const std::string& path) {
  std::erase_if(values, [&](const auto& entry) { return is_inside(entry.first, path); });
  return values;
}

// From 0 to n - 1, as likely in the first trial as in the last.
int below(int n) {
  return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange(0, n));
}

std::string any_scalar() {
  return *rc::gen::element<std::string>("1", "-0.7498", "true", "\"1-3/8\"", "'a # b'", "\"é ] } ,\"",
                                        "1979-05-27", "\"\"\"x\ny\"\"\"", "\"\\\"\"");
}

std::string any_value(int depth) {
  const int sort = below(depth > 0 ? 4 : 2);
  if (sort < 2) return any_scalar();
  std::string inside;
  const int count = below(3);
  for (int i = 0; i < count; ++i) {
    if (i > 0) inside += *rc::gen::element<std::string>(",", ", ", " , ");
    if (sort == 3) {
      const std::string key = *rc::gen::element<std::string>("x", "p.q", "p . r");
      inside += below(3) == 0 ? fmt::format("\"y {}\" = ", i) : fmt::format("{}{} = ", key, i);
    }
    inside += any_value(depth - 1);
  }
  return sort == 2 ? "[" + inside + *rc::gen::element<std::string>("]", " ]", "\n# c ]\n]")
                   : "{ " + inside + " }";
}

// Lines of a table: keys of their own, comments, blank lines, values of all sorts.
std::string any_lines(const std::string& prefix, int depth) {
  std::string lines;
  const int count = below(4);
  for (int i = 0; i < count; ++i) {
    lines += *rc::gen::element<std::string>("", "", "\n", "# = [ \"\n", "  ");
    const std::string key = *rc::gen::element<std::string>("", "", "d.", "d . \"e\".");
    const std::string value = any_value(depth);
    lines += fmt::format("{}{}{} = {}{}\n", key, prefix, i, value,
                         *rc::gen::element<std::string>("", " # c", "  "));
  }
  return lines;
}

std::string any_text() {
  std::string text = any_lines("r", 2);
  const int sections = below(6);
  std::size_t plain = 0;
  for (int i = 0; i < sections; ++i) {
    text += *rc::gen::element<std::string>("", "\n", "# c [x]\n\n");
    const int sort = below(4);
    if (sort == 0) text += fmt::format("[s{}]\n", plain++);
    if (sort == 1) text += fmt::format("[ \"t u\" . s{} ] # c\n", plain++);
    if (sort == 2) text += "[[f]]\n";
    if (sort == 3) text += fmt::format("[[f]]\n[[f.g]]\n");
    text += any_lines("k", 2);
  }
  if (!text.empty() && below(4) == 0) text.pop_back();
  if (below(4) == 0) {
    std::string with_returns;
    for (const char c : text)
      with_returns += c == '\n' ? "\r\n" : std::string(1, c);
    text = with_returns;
  }
  return text;
}

std::optional<Document> any_document() {
  std::string text = any_text();
  const auto document = Document::parse(text.empty() || text.back() == '\r' ? text + "\n" : text, "random");
  return document ? std::optional(*document) : std::nullopt;  // a key may have come twice
}

std::vector<Node> all_nodes(const Document& document) {
  std::vector<Node> all{document.root()};
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Node parent = all[i];
    for (const Node child : parent)
      all.push_back(child);
  }
  return all;
}

// Discards the trial where there is none.
template <typename Wanted>
Node any_node(const Document& document, const Wanted& wanted) {
  std::vector<Node> nodes = all_nodes(document);
  std::erase_if(nodes, [&](const Node& node) { return !wanted(node); });
  RC_PRE(!nodes.empty());
  return nodes[static_cast<std::size_t>(below(static_cast<int>(nodes.size())))];
}

TEST(EditProperty, WithValueChangesOneValueOnly) {
  int done = 0;
  EXPECT_TRUE(tests::holds("a value replaced", [&] {
    const auto before = any_document();
    RC_PRE(before.has_value());
    const Node node = any_node(*before, [](const Node&) { return true; });
    const std::string value = any_value(1);
    const auto after = with_value(*before, node.path(), value);
    if (node.layout() != Layout::kValue) {
      RC_ASSERT(!after);
      return;
    }
    if (!after) return;  // a line end inside braces
    ++done;
    std::string expected = before->text();
    expected.replace(node.span().offset, node.span().length, value);
    RC_ASSERT(after->text() == expected);
    RC_ASSERT(after->at(node.path())->written() == value);
    RC_ASSERT(without_those_inside(values_of(*before), node.path()) ==
              without_those_inside(values_of(*after), node.path()));
    RC_ASSERT(with_value(*after, node.path(), node.written())->text() == before->text());
  }));
  EXPECT_GT(done, 100);
}

TEST(EditProperty, AddedThenRemovedIsAsBefore) {
  int done = 0;
  EXPECT_TRUE(tests::holds("a key added", [&] {
    const auto before = any_document();
    RC_PRE(before.has_value());
    const Node table = any_node(*before, [](const Node& node) { return node.type() == Type::kTable; });
    const std::string path = table.path() + (table.is_root() ? "new" : ".new");
    const std::string value = any_value(1);
    const auto after = with_value(*before, path, value);
    if (!after) {
      RC_LOG() << before->text() << "\nadd " << path << " = " << value << "\n" << base::report(after.error());
      RC_ASSERT(table.layout() != Layout::kSection);
      return;
    }
    ++done;
    RC_ASSERT(after->at(path)->written() == value);
    RC_ASSERT(without_those_inside(values_of(*after), path) == values_of(*before));
    const auto back = without(*after, path);
    RC_ASSERT(back.has_value());
    RC_ASSERT(values_of(*back) == values_of(*before));
    if (table.size() > 0) {
      RC_LOG() << before->text() << "\nadd " << path << "\n" << back->text();
      // The same bytes but for the line end that a last line may have been given.
      RC_ASSERT(back->text().starts_with(before->text()));
      RC_ASSERT(trimmed(back->text()) == trimmed(before->text()));
    }
  }));
  EXPECT_GT(done, 50);
}

TEST(EditProperty, WithItemAddsOneItemOnly) {
  int done = 0;
  EXPECT_TRUE(tests::holds("an item added", [&] {
    const auto before = any_document();
    RC_PRE(before.has_value());
    const Node list = any_node(*before, [](const Node& node) {
      return node.type() == Type::kList && node.layout() == Layout::kValue;
    });
    const auto after = with_item(*before, list.path(), "\"new\"");
    RC_ASSERT(after.has_value());
    ++done;
    const std::string path = fmt::format("{}[{}]", list.path(), list.size() + 1);
    RC_ASSERT(after->at(path)->typed() == "new");
    RC_ASSERT(without_those_inside(values_of(*after), path) == values_of(*before));
  }));
  EXPECT_GT(done, 50);
}

TEST(EditProperty, WithAnotherAddsOneTableOnly) {
  int done = 0;
  EXPECT_TRUE(tests::holds("a table added", [&] {
    const auto before = any_document();
    RC_PRE(before.has_value());
    const std::string path = *rc::gen::element<std::string>("f", "f[1].g", "f[1].h", "new", "s0.new");
    const auto reached = before->reach(path);
    const std::string body = any_lines("b", 1);
    const auto after = with_another(*before, path, body);
    if (!after) return;
    ++done;
    const std::size_t count = reached.rest.empty() ? reached.node.size() : 0;
    std::string added = fmt::format("{}[{}]", path, count + 1);
    if (count == 0) {
      const std::string there = path.substr(0, path.size() - reached.rest.size());
      added = there + std::string(reached.rest.substr(0, reached.rest.find('.')));
    }
    RC_ASSERT(after->at(path)->size() == count + 1);
    RC_ASSERT(without_those_inside(values_of(*after), added) == values_of(*before));
    const auto back = without(*after, added);
    RC_ASSERT(back.has_value());
    RC_ASSERT(values_of(*back) == values_of(*before));
  }));
  EXPECT_GT(done, 100);
}

TEST(EditProperty, WithoutTakesNothingElse) {
  int done = 0;
  EXPECT_TRUE(tests::holds("a value taken away", [&] {
    const auto before = any_document();
    RC_PRE(before.has_value());
    const Node node = any_node(*before, [](const Node& any) { return !any.is_root(); });
    const bool is_item = node.parent()->type() == Type::kList;
    const auto after = without(*before, node.path());
    if (!after) {
      RC_ASSERT(node.layout() != Layout::kValue || node.parent()->layout() == Layout::kDotted);
      return;
    }
    ++done;
    if (is_item) return;  // the items behind it have new paths; the edit itself compares them
    const Values left = without_those_inside(values_of(*before), node.path());
    for (const auto& [path, written] : values_of(*after))
      RC_ASSERT(left.contains(path) && left.at(path) == written);
    const auto comments = [](const std::string& text) { return std::count(text.begin(), text.end(), '#'); };
    if (node.layout() == Layout::kValue) {
      RC_ASSERT(comments(after->text()) == comments(before->text()) - comments(std::string(node.written())));
    }
  }));
  EXPECT_GT(done, 100);
}

TEST(LiteralProperty, QuotedTextsReadBack) {
  EXPECT_TRUE(tests::holds("quotes", [] {
    std::string content;
    const int count = below(20);
    for (int i = 0; i < count; ++i)
      content += *rc::gen::element<std::string>("\"", "\\", "\n", "é", "a", "\x01", "'", "#");
    const auto document = Document::parse("a = " + in_quotes(content), "quotes");
    RC_ASSERT(document.has_value());
    const Node node = document->root()[0];
    RC_ASSERT(node.typed() == content);
    // Byte by byte the literal is walked from the first quote to the last.
    std::size_t last = 0;
    for (std::size_t i = 0; i <= content.size(); ++i) {
      const std::size_t at = offset_in_literal(node.written(), i);
      RC_ASSERT(at > last || i == 0 || (static_cast<unsigned char>(content[i]) & 0xC0U) == 0x80U);
      last = at;
    }
    RC_ASSERT(last == node.written().size() - 1);
  }));
}

}  // namespace
}  // namespace sparewright::text
