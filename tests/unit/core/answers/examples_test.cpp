// Every example that a subject shows can be asked.
#include <algorithm>
#include <utility>

#include <gtest/gtest.h>

#include "core/answers/subjects.hpp"
#include "core/base/messages.hpp"

namespace sparewright::answers {
namespace {

// As a shell takes arguments apart: blanks, and double quotes.
std::vector<std::string> arguments(std::string_view line) {
  std::vector<std::string> out;
  std::string word;
  bool quoted = false;
  bool any = false;
  for (const char c : line) {
    if (c == '"') {
      quoted = !quoted;
      any = true;
    } else if (c == ' ' && !quoted) {
      if (any) out.push_back(std::exchange(word, {}));
      any = false;
    } else {
      word += c;
      any = true;
    }
  }
  if (any) out.push_back(word);
  return out;
}

Question question_of(std::string_view example) {
  Question question{{}, {}, nullptr, quantity::UnitSystem::kInch};
  const std::vector<std::string> words = arguments(example);
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (words[i].starts_with("--") && i + 1 < words.size()) {
      question.entries[words[i].substr(2)] = words[i + 1];
      ++i;
    } else {
      question.words += (question.words.empty() ? "" : " ") + words[i];
    }
  }
  return question;
}

void expect_whole(const Subject& subject, const Answer& answer) {
  EXPECT_FALSE(answer.asked.empty()) << subject.name;
  EXPECT_FALSE(answer.tables.empty()) << subject.name;
  for (const Table& table : answer.tables) {
    EXPECT_FALSE(table.rows.empty()) << subject.name << ": " << table.heading;
    for (const Row& row : table.rows)
      EXPECT_FALSE(row.what.empty() || row.value.empty()) << subject.name << ": " << table.heading;
  }
}

TEST(Examples, OfEverySubjectWork) {
  for (const auto subjects : {handbook_subjects(), quick_subjects()}) {
    for (const Subject& subject : subjects) {
      const Question question = question_of(subject.example);
      for (const auto& [name, value] : question.entries) {
        const bool known = std::any_of(subject.entries.begin(), subject.entries.end(),
                                       [&](const Entry& entry) { return entry.name == name; });
        EXPECT_TRUE(known) << subject.name << " --" << name;
      }
      const auto answer = subject.answer(question);
      EXPECT_TRUE(answer) << subject.name << ": " << (answer ? "" : base::report(answer.error()));
      if (answer) expect_whole(subject, *answer);
    }
  }
}

}  // namespace
}  // namespace sparewright::answers
