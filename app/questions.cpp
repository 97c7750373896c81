#include "app/questions.hpp"

#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include "app/printing.hpp"
#include "core/answers/subjects.hpp"
#include "core/job/job.hpp"
#include "sheets/card.hpp"

namespace sparewright::app {
namespace {

std::span<const answers::Subject> subjects_of(Book book) {
  return book == Book::kHandbook ? answers::handbook_subjects() : answers::quick_subjects();
}

tl::unexpected<Troubles> failed(const base::Failure& failure) {
  return tl::unexpected<Troubles>(Troubles{trouble_of(failure)});
}

Outcome<answers::Answer> answered(const BenchQuestion& asked) {
  answers::Question question{asked.words, asked.entries, nullptr, quantity::UnitSystem::kInch};
  std::optional<job::ShopText> shop;
  if (asked.shop) {
    const auto document = text::Document::parse(asked.shop->content, asked.shop->name);
    if (!document) return failed(document.error());
    auto read = job::read_shop(*document);
    if (!read) return tl::unexpected<Troubles>(troubles_of(read.error()));
    shop = std::move(*read);
    question.shop = &shop->shop;
    question.system = shop->shop.units;
  }
  auto answer = answers::ask(subjects_of(asked.book), asked.subject, question);
  if (!answer) return failed(answer.error());
  return std::move(*answer);
}

std::size_t number_of(const std::vector<std::string>& sources, const std::string& source) {
  const auto found = std::find(sources.begin(), sources.end(), source);
  return found == sources.end() ? 0 : static_cast<std::size_t>(found - sources.begin()) + 1;
}

AnswerRow row_of(const answers::Answer& answer) {
  AnswerRow row{answer.asked, answer.says, answer.assumed, {}, answer.cautions, answers::sources_of(answer)};
  for (const answers::Table& table : answer.tables) {
    AnswerTable lines{table.heading, {}};
    for (const answers::Row& one : table.rows) {
      const std::string source = cite(one.source);
      lines.lines.push_back(
          {one.what, one.value, one.numbers, one.unit, one.note, source, number_of(row.sources, source)});
    }
    row.tables.push_back(std::move(lines));
  }
  return row;
}

sheets::Card card_of(const AnswerRow& answer) {
  sheets::Card card;
  card.title = answer.asked;
  card.asked = answer.asked;
  card.answer = answer.says;
  for (const std::string& assumed : answer.assumed)
    card.how += (card.how.empty() ? "" : "; ") + assumed;
  card.cautions = answer.cautions;
  card.rows_label.clear();
  for (const AnswerTable& table : answer.tables) {
    card.rows.push_back({table.heading, "", ""});
    for (const AnswerLine& line : table.lines)
      card.rows.push_back(
          {line.what, line.value,
           fmt::format("{}{}[{}]", line.note, line.note.empty() ? "" : "  ", line.source_number)});
  }
  for (const std::string& source : answer.sources)
    card.notes.push_back(fmt::format("[{}] {}", card.notes.size() + 1, source));
  return card;
}

}  // namespace

std::vector<SubjectRow> subjects(Book book) {
  std::vector<SubjectRow> rows;
  for (const answers::Subject& subject : subjects_of(book)) {
    SubjectRow row{std::string(subject.name),
                   std::string(subject.about),
                   std::string(subject.words),
                   std::string(subject.example),
                   {}};
    for (const answers::Entry& entry : subject.entries)
      row.entries.push_back(
          {std::string(entry.name), std::string(entry.takes), std::string(entry.about), entry.required});
    rows.push_back(std::move(row));
  }
  return rows;
}

Outcome<AnswerRow> answer(const BenchQuestion& question) {
  const auto found = answered(question);
  if (!found) return tl::unexpected(found.error());
  return row_of(*found);
}

Outcome<std::string> answer_card_pdf(const BenchQuestion& question, Paper paper) {
  const auto found = answered(question);
  if (!found) return tl::unexpected(found.error());
  sheets::PaperOptions options;
  options.paper = paper == Paper::kA4 ? sheets::Paper::kA4 : sheets::Paper::kLetter;
  auto bytes = sheets::render_card(card_of(row_of(*found)), options);
  if (!bytes) return failed(bytes.error());
  return std::move(*bytes);
}

}  // namespace sparewright::app
