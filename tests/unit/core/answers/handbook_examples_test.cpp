// The example of every subject of the handbook is answered.
#include <algorithm>
#include <map>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/answers/subjects.hpp"
#include "core/base/messages.hpp"

namespace sparewright::answers {
namespace {

// The arguments of a command line, quoted ones with their blanks.
std::vector<std::string> arguments(std::string_view text) {
  std::vector<std::string> all;
  bool quoted = false;
  bool open = false;
  for (const char c : text) {
    if (c == '"') quoted = !quoted;
    if (c == ' ' && !quoted) {
      open = false;
      continue;
    }
    if (!open) all.emplace_back();
    open = true;
    if (c != '"') all.back() += c;
  }
  return all;
}

Question question_of(std::string_view example) {
  const std::vector<std::string> all = arguments(example);
  Question question;
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (all[i].starts_with("--") && i + 1 < all.size()) {
      question.entries[all[i].substr(2)] = all[i + 1];
      ++i;
    } else {
      question.words = all[i];
    }
  }
  return question;
}

TEST(HandbookExamples, EveryOneIsAnswered) {
  for (const Subject& subject : handbook_subjects()) {
    const Question question = question_of(subject.example);
    for (const auto& entry : question.entries) {
      const auto named = [&](const Entry& one) { return one.name == entry.first; };
      EXPECT_TRUE(std::any_of(subject.entries.begin(), subject.entries.end(), named)) << entry.first;
    }
    const auto answer = ask(handbook_subjects(), subject.name, question);
    ASSERT_TRUE(answer) << subject.name << ": " << base::report(answer.error());
    EXPECT_FALSE(answer->asked.empty()) << subject.name;
    EXPECT_FALSE(answer->tables.empty()) << subject.name;
    for (const Table& table : answer->tables) {
      EXPECT_FALSE(table.rows.empty()) << subject.name << ": " << table.heading;
      for (const Row& row : table.rows)
        EXPECT_FALSE(row.what.empty() || row.value.empty()) << subject.name << ": " << table.heading;
    }
  }
}

}  // namespace
}  // namespace sparewright::answers
