// The commands that need no job: handbook and quick.
#include "app/questions.hpp"

#include <algorithm>
#include <string_view>

#include <fmt/format.h>

#include "cli/commands.hpp"
#include "cli/file_kinds.hpp"
#include "cli/json.hpp"
#include "cli/output.hpp"

namespace sparewright::cli {
namespace {

constexpr std::size_t kWidestWhat = 40;
constexpr std::size_t kWidestValue = 48;

void print_table(const app::AnswerTable& table) {
  std::size_t what = 0;
  std::size_t value = 0;
  for (const app::AnswerLine& line : table.lines) {
    what = std::max(what, std::min(line.what.size(), kWidestWhat));
    value = std::max(value, std::min(line.value.size(), kWidestValue));
  }
  fmt::print("\n{}\n", table.heading);
  for (const app::AnswerLine& line : table.lines) {
    std::string text = fmt::format("  {:<{}}  {:<{}}  {}", line.what, what, line.value, value,
                                   line.source_number == 0 ? "" : fmt::format("[{}]", line.source_number));
    if (!line.note.empty()) text += "  " + line.note;
    while (text.ends_with(' '))
      text.pop_back();
    fmt::print("{}\n", text);
  }
}

void print_answer(const app::AnswerRow& answer) {
  fmt::print("{}{}{}\n", answer.asked, answer.says.empty() ? "" : ": ", answer.says);
  for (const std::string& assumed : answer.assumed)
    fmt::print("  assumed: {}\n", assumed);
  for (const std::string& caution : answer.cautions)
    fmt::print("  CAUTION: {}\n", caution);
  for (const app::AnswerTable& table : answer.tables)
    print_table(table);
  if (!answer.sources.empty()) fmt::print("\nsources\n");
  for (std::size_t i = 0; i < answer.sources.size(); ++i)
    fmt::print("  {:>4} {}\n", fmt::format("[{}]", i + 1), answer.sources[i]);
}

int answer(const Asked& asked, app::Book book) {
  app::BenchQuestion question{book, asked.subject, asked.name, asked.entries, std::nullopt};
  if (!asked.shop.empty()) {
    auto shop = read_text(asked.shop);
    if (!shop) return tell(asked, shop.error());
    question.shop = std::move(*shop);
  }
  if (!asked.output.empty()) {
    if (!is_pdf(asked.output)) return tell(asked, {no_file_kind(asked.output, "card", ".pdf")});
    const auto pdf = app::answer_card_pdf(question, paper_of(asked));
    return pdf ? put(asked, asked.output, *pdf, kAllWell) : tell(asked, pdf.error());
  }
  const auto row = app::answer(question);
  if (!row) return tell(asked, row.error());
  if (asked.json) {
    fmt::print("{}", as_json(*row));
  } else {
    print_answer(*row);
  }
  return kAllWell;
}

}  // namespace

int handbook(const Asked& asked) {
  return answer(asked, app::Book::kHandbook);
}

int quick(const Asked& asked) {
  return answer(asked, app::Book::kQuick);
}

}  // namespace sparewright::cli
