// What came of measuring up, as text.
#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "app/measuring_words.hpp"
#include "cli/commands.hpp"
#include "cli/file_kinds.hpp"
#include "cli/json.hpp"
#include "cli/opening.hpp"
#include "cli/output.hpp"

namespace sparewright::cli {
namespace {

void print_size(const app::MeasuredRow& row) {
  if (!row.size.missing.empty()) {
    fmt::print("{:<20} NOT KNOWN\n", row.name);
    for (const std::string& missing : row.size.missing)
      fmt::print("    not known: {}\n", missing);
    return;
  }
  fmt::print("{:<20} {:<12}", row.name, row.size.shown);
  if (!row.size.good_to.empty()) fmt::print("  good to {}", row.size.good_to);
  if (row.k) fmt::print(" (k = {:.2f})", *row.k);
  fmt::print("; {}\n", app::checked_words(row));
  if (!row.doubts.empty()) fmt::print("    its doubt: {}\n", app::doubts_words(row.doubts));
  if (!row.without.empty()) fmt::print("    {}\n", app::kDisputed);
  for (const app::NumberRow& without : row.without)
    fmt::print("    {}\n", app::without_words(without));
  if (!row.in_question.empty()) fmt::print("    {}\n", app::question_words(row.in_question));
  if (row.now) fmt::print("    {}\n", app::wear_words(row));
  for (const app::TogetherRow& other : row.together)
    fmt::print("    out together with {}: correlation {:+.2f}\n", other.name, other.correlation);
}

std::string misfit_words(const app::ReadingRow& row) {
  if (!row.differs) return "not checked by another reading";
  std::string words = "differs " + row.differs->shown;
  if (row.times_its_doubt) words += fmt::format(", {:.1f} times its doubt", std::abs(*row.times_its_doubt));
  return words;
}

void print_reading(const app::ReadingRow& row) {
  const std::string of = row.is.empty() ? fmt::format("{}", fmt::join(row.of, ", ")) : row.is;
  fmt::print("{:<28} {} of {}, {}\n", row.name, row.way, of, row.instrument);
  fmt::print("    read {}; counts as {}; {}; {}\n", row.counts.typed, row.counts.shown, row.use,
             misfit_words(row));
}

void print_touched(const app::TouchedRow& row) {
  fmt::print("{:<28} {}\n    {}; {}\n", row.name, app::touched_words(row), row.use,
             app::touches_fit_words(row));
}

void print_plan(const app::Measured& measured) {
  if (!measured.plan.empty()) fmt::print("\nTO MEASURE, and with what\n");
  for (const app::PlanRow& row : measured.plan) {
    fmt::print("{:<9}  {}{}\n           {}\n", row.verdict, row.what,
               row.needed_for.empty() ? "" : fmt::format(", for {}", row.needed_for), row.says);
  }
  if (!measured.met.empty()) fmt::print("\nFITS, 19 times in 20\n");
  for (const app::MetRow& row : measured.met) {
    fmt::print("{:<9}  {} on {}\n           {}\n", row.verdict, row.feature, row.mate, row.says);
    for (const std::string& missing : row.missing)
      fmt::print("           not known: {}\n", missing);
    for (const std::string& todo : row.todo)
      fmt::print("           do: {}\n", todo);
  }
}

void print_measured(const app::Measured& measured) {
  fmt::print("{}\n", measured.sizes.empty() ? "The job has no measured sizes."
                                            : "SIZES as the readings together make them");
  for (const app::MeasuredRow& row : measured.sizes)
    print_size(row);
  if (!measured.readings.empty() || !measured.touched.empty()) fmt::print("\nREADINGS\n");
  for (const app::ReadingRow& row : measured.readings)
    print_reading(row);
  for (const app::TouchedRow& row : measured.touched)
    print_touched(row);
  if (!measured.sizes.empty()) fmt::print("\n{}\n", app::agreement_words(measured));
  print_plan(measured);
  for (const app::QueryRow& query : measured.queries)
    print_query(query);
}

bool all_known(const app::Measured& measured) {
  return std::all_of(measured.sizes.begin(), measured.sizes.end(),
                     [](const app::MeasuredRow& row) { return row.size.missing.empty(); });
}

void print_drawn(const app::Drawn& drawn) {
  fmt::print("\nSIZES by {} draws of the readings' errors (JCGM 101:2008)\n", drawn.draws);
  for (const app::DrawnRow& row : drawn.sizes) {
    fmt::print("{:<20} {}; {}\n", row.name, row.shown,
               row.holds ? "as above" : "NOT as above: go by these limits, or read more often");
  }
  if (drawn.unsettled > 0) fmt::print("{} draws came to no answer and are left out.\n", drawn.unsettled);
}

}  // namespace

int measure(const Asked& asked) {
  auto session = open(asked);
  if (!session) return tell(asked, session.error());
  const auto measured = session->measured();
  // An open serious query is not well either: status_of.
  const int status = all_known(measured) ? status_of(*session) : kNotWell;
  if (!asked.output.empty()) {
    if (!is_pdf(asked.output)) return tell(asked, {no_file_kind(asked.output, "sheet", ".pdf")});
    const auto pdf = session->measuring_pdf(paper_of(asked));
    if (!pdf) return tell(asked, pdf.error());
    return put(asked, asked.output, *pdf, status);
  }
  std::optional<app::Outcome<app::Drawn>> drawn;
  if (asked.draws) drawn = session->drawn(*asked.draws);
  const bool is_drawn = drawn && drawn->has_value();
  if (asked.json) {
    fmt::print("{}", as_json(measured, is_drawn ? std::optional(**drawn) : std::nullopt));
  } else {
    print_measured(measured);
    if (is_drawn) print_drawn(**drawn);
  }
  if (!drawn || is_drawn) return status;
  for (const app::Trouble& trouble : drawn->error())
    fmt::print(stderr, "draws: NOT KNOWN: {}\n", app::report(trouble));
  return kNotWell;
}

}  // namespace sparewright::cli
