// Questions of the bench that need no job: the handbook, and quick sums with the user's own shop.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "app/session.hpp"

namespace sparewright::app {

enum class Book { kHandbook, kQuick };

// What may be asked.
struct EntryRow {
  std::string name;   // "percent"
  std::string takes;  // "PERCENT"
  std::string about;
  bool required = false;
};
struct SubjectRow {
  std::string name;
  std::string about;
  std::string words;  // what it takes in words; empty where it takes none
  std::string example;
  std::vector<EntryRow> entries;
};
[[nodiscard]] std::vector<SubjectRow> subjects(Book book);

struct BenchQuestion {
  Book book = Book::kHandbook;
  std::string subject;
  std::string words;
  std::map<std::string, std::string> entries;
  std::optional<Text> shop;
};

struct AnswerLine {
  std::string what;
  std::string value;
  std::vector<double> numbers;  // in `unit`
  std::string unit;
  std::string note;
  std::string source;
  std::size_t source_number = 0;  // of AnswerRow::sources, from 1; 0 where it has none
};
struct AnswerTable {
  std::string heading;
  std::vector<AnswerLine> lines;
};
struct AnswerRow {
  std::string asked;
  std::string says;
  std::vector<std::string> assumed;
  std::vector<AnswerTable> tables;
  std::vector<std::string> cautions;
  std::vector<std::string> sources;  // each once, in the order they are met
};

// Fails with name-unknown for a subject that is not there, and as the subject does.
[[nodiscard]] Outcome<AnswerRow> answer(const BenchQuestion& question);

// The same as a bench card, a quarter of a sheet, PDF.
[[nodiscard]] Outcome<std::string> answer_card_pdf(const BenchQuestion& question, Paper paper);

}  // namespace sparewright::app
