#include "cli/commands.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <cstdio>
#include <filesystem>
#include <optional>
#include <string_view>
#include <utility>

#include <fmt/format.h>

#include "app/reference.hpp"
#include "app/session.hpp"
#include "cli/file_kinds.hpp"
#include "cli/files.hpp"
#include "cli/json.hpp"
#include "cli/opening.hpp"
#include "cli/output.hpp"

namespace sparewright::cli {
namespace {

constexpr std::array<std::string_view, 4> kWorstFirst{"NO", "NOT KNOWN", "CLOSE", "OK"};

void print_verdict(const app::VerdictRow& row) {
  fmt::print("{:<9}  {}: {}\n", row.verdict, row.check, row.subject);
  if (row.verdict == "OK") return;
  fmt::print("           {}\n", row.reason);
  for (const std::string& missing : row.missing)
    fmt::print("           not known: {}\n", missing);
  if (!row.margin_shown.empty()) fmt::print("           margin {} {}\n", row.margin_shown, row.unit);
  if (!row.todo.empty()) fmt::print("           do: {}\n", row.todo);
}

void print_check(const std::string& title, const std::vector<app::VerdictRow>& verdicts,
                 const std::vector<app::QueryRow>& queries) {
  fmt::print("{}\n\n", title);
  for (const app::QueryRow& query : queries)
    print_query(query);
  std::string counts;
  for (const std::string_view state : kWorstFirst) {
    std::size_t count = 0;
    for (const app::VerdictRow& verdict : verdicts) {
      if (verdict.verdict != state) continue;
      print_verdict(verdict);
      ++count;
    }
    counts += fmt::format("{}{} {}", counts.empty() ? "" : ", ", count, state);
  }
  fmt::print("\n{}. Queries: {}.\n", counts, queries.size());
  fmt::print("NOT CHECKED FOR STRENGTH by a qualified person; local codes come first.\n");
}

void print_number(const app::NumberRow& row) {
  std::string line = fmt::format("{:<52} {}", row.name, row.shown);
  if (!row.good_to.empty()) line += fmt::format("  (good to {})", row.good_to);
  if (row.origin == "default") line += "  (default)";
  fmt::print("{}\n", line);
}

// "  x            1.0620 in  1.0580 in to 1.0660 in  locates  aim 1.0620 in  caliper 6  from left end to its middle"
void print_dimension(const app::DimensionRow& row) {
  std::string line = fmt::format("  {:<22} {:>11}  {:<26} {:<8}", row.name, row.nominal.shown,
                                 fmt::format("{} to {}", row.least.shown, row.most.shown), row.duty);
  if (row.aim) line += fmt::format("  aim {}", row.aim->shown);
  if (!row.instrument.empty()) line += fmt::format("  {}", row.instrument);
  if (!row.from.empty()) line += fmt::format("  from {} to {}", row.from, row.to);
  while (line.ends_with(' '))
    line.pop_back();
  fmt::print("{}\n", line);
}

void print_dimensions(const std::vector<app::DimensionRow>& rows) {
  std::string of;
  for (const app::DimensionRow& row : rows) {
    if (row.of != of) fmt::print("{}{}\n", of.empty() ? "" : "\n", row.of);
    of = row.of;
    print_dimension(row);
  }
}

void print_trail(const app::TrailRow& trail, int depth) {
  const app::NumberRow& row = trail.number;
  const std::string indent(static_cast<std::size_t>(depth) * 3, ' ');
  std::string line = fmt::format("{}{} = {}", indent, row.name, row.shown);
  if (!row.good_to.empty()) line += fmt::format(", good to {}", row.good_to);
  fmt::print("{}\n", line);
  const auto say = [&](std::string_view what, std::string_view text) {
    if (!text.empty()) fmt::print("{}   {}: {}\n", indent, what, text);
  };
  if (row.origin == "worked out") {
    say("worked out", row.formula);
  } else {
    say(row.origin, row.formula);
    say("as typed", row.typed);
  }
  say("from", row.source);
  for (const std::string& missing : row.missing)
    say("not known", missing);
  if (trail.shown_before) {
    fmt::print("{}   (its trail is given above)\n", indent);
    return;
  }
  for (const app::TrailRow& input : trail.inputs)
    print_trail(input, depth + 1);
}

// "brackets/pad.job.toml" to "pad.pdf".
std::string default_output(const Asked& asked, std::string_view extension) {
  std::string stem = std::filesystem::path(asked.job).filename().string();
  for (const std::string_view ending : {".toml", ".job"}) {
    if (stem.ends_with(ending)) stem.erase(stem.size() - ending.size());
  }
  return stem + std::string(extension);
}

app::TextKind text_kind(const Asked& asked) {
  return asked.text == "shop" ? app::TextKind::kShop : app::TextKind::kJob;
}

}  // namespace

int check(const Asked& asked) {
  auto session = open(asked);
  if (!session) return tell(asked, session.error());
  const auto verdicts = session->verdicts();
  const auto queries = session->queries();
  if (asked.json) {
    fmt::print("{}", as_json(Printed{{}, verdicts, queries}));
  } else {
    print_check(session->title(), verdicts, queries);
  }
  return status_of(*session, Judged::kNewPart);
}

int numbers(const Asked& asked) {
  auto session = open(asked);
  if (!session) return tell(asked, session.error());
  auto rows = session->numbers();
  rows.erase(std::remove_if(rows.begin(), rows.end(),
                            [&](const app::NumberRow& row) { return !row.name.starts_with(asked.name); }),
             rows.end());
  if (asked.json) {
    fmt::print("{}", as_json(Printed{rows, session->verdicts(), session->queries()}));
  } else {
    for (const app::NumberRow& row : rows)
      print_number(row);
  }
  return status_of(*session);
}

int dimensions(const Asked& asked) {
  auto session = open(asked);
  if (!session) return tell(asked, session.error());
  const auto rows = session->dimensions();
  if (asked.json) {
    fmt::print("{}", as_json(rows));
  } else {
    print_dimensions(rows);
  }
  return status_of(*session);
}

namespace {

int put_card(const Asked& asked, app::Session& session) {
  if (!is_pdf(asked.output)) return tell(asked, {no_file_kind(asked.output, "card", ".pdf")});
  const auto pdf = session.card_pdf(asked.name, paper_of(asked));
  if (!pdf) return tell(asked, pdf.error());
  return put(asked, asked.output, *pdf, status_of(session));
}

}  // namespace

int why(const Asked& asked) {
  auto session = open(asked);
  if (!session) return tell(asked, session.error());
  if (!asked.output.empty()) return put_card(asked, *session);
  const auto trail = session->why(asked.name);
  if (!trail) return tell(asked, trail.error());
  if (asked.json) {
    fmt::print("{}", as_json(*trail));
  } else {
    print_trail(*trail, 0);
  }
  return status_of(*session);
}

int sheets(const Asked& asked) {
  auto session = open(asked);
  if (!session) return tell(asked, session.error());
  const auto pdf = session->sheets_pdf(paper_of(asked), asked.only);
  if (!pdf) return tell(asked, pdf.error());
  const std::string ending = asked.only ? fmt::format(".op{}.pdf", *asked.only) : ".pdf";
  return put(asked, asked.output.empty() ? default_output(asked, ending) : asked.output, *pdf,
             status_of(*session));
}

namespace {

// "cover.svg" to "cover-2.svg"
std::string of_sheet(const std::string& path, int sheet) {
  const std::filesystem::path whole(path);
  const std::string name = fmt::format("{}-{}{}", whole.stem().string(), sheet, whole.extension().string());
  return (whole.parent_path() / name).string();
}

app::Trouble no_sheet(int sheet, int sheets) {
  app::Trouble trouble;
  trouble.code = "not-in-the-job";
  trouble.says = fmt::format("the drawing has no sheet {}", sheet);
  trouble.accepted = fmt::format("1 to {}", sheets);
  return trouble;
}

}  // namespace

int drawing(const Asked& asked) {
  auto session = open(asked);
  if (!session) return tell(asked, session.error());
  const std::string path = asked.output.empty() ? default_output(asked, ".svg") : asked.output;
  const auto kind = drawing_kind(path);
  if (!kind) return tell(asked, {no_file_kind(path, "drawing", kDrawingEndings)});
  const auto files = session->drawing_files(*kind, paper_of(asked));
  if (!files) return tell(asked, files.error());
  const auto sheets = static_cast<int>(files->size());
  if (asked.sheet && (*asked.sheet < 1 || *asked.sheet > sheets))
    return tell(asked, {no_sheet(*asked.sheet, sheets)});
  if (path == "-" && !asked.sheet && sheets > 1)
    fmt::print(stderr, "sheet 1 of {}; --sheet names another\n", sheets);
  for (int sheet = 1; sheet <= sheets; ++sheet) {
    const bool wanted = asked.sheet ? *asked.sheet == sheet : path != "-" || sheet == 1;
    if (!wanted) continue;
    const int status = put(asked, sheets > 1 && path != "-" ? of_sheet(path, sheet) : path,
                           (*files)[static_cast<std::size_t>(sheet) - 1], kAllWell);
    if (status != kAllWell) return status;
  }
  return status_of(*session);
}

int order(const Asked& asked) {
  auto session = open(asked);
  if (!session) return tell(asked, session.error());
  const auto rows = session->order();
  if (asked.json) {
    fmt::print("{}", as_json(rows));
  } else {
    if (rows.empty()) fmt::print("The job gives no order of work.\n");
    for (const app::OrderRow& row : rows) {
      fmt::print("OP {}  {}  ({})\n", row.op, row.name, row.machine);
      for (const std::string& line : row.lines)
        fmt::print("  {}\n", line);
      fmt::print("\n");
    }
  }
  return status_of(*session);
}

namespace {

// Blanks and what a file name had better not have become '-'.
std::string file_words(std::string name) {
  std::replace_if(
      name.begin(), name.end(), [](unsigned char c) { return std::isalnum(c) == 0; }, '-');
  return name;
}

}  // namespace

int solid(const Asked& asked) {
  auto session = open(asked);
  if (!session) return tell(asked, session.error());
  std::string which = asked.after ? fmt::format(".op{}", *asked.after) : "";
  if (!asked.piece.empty()) which += fmt::format(".{}", file_words(asked.piece));
  const std::string path = asked.output.empty() ? default_output(asked, which + ".step") : asked.output;
  const auto kind = solid_kind(path);
  if (!kind) return tell(asked, {no_file_kind(path, "solid", kSolidEndings)});
  const auto bytes = session->solid_file(*kind, {asked.after, asked.piece});
  if (!bytes) return tell(asked, bytes.error());
  return put(asked, path, *bytes, status_of(*session));
}

int schema(const Asked& asked) {
  fmt::print("{}", app::json_schema(text_kind(asked)));
  return kAllWell;
}

int keys(const Asked& asked) {
  fmt::print("{}", app::key_list(text_kind(asked)));
  return kAllWell;
}

}  // namespace sparewright::cli
