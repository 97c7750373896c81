// What the measured sizes were made to, and the fits of mates, as text.
#include <fmt/format.h>
#include <fmt/ranges.h>

#include "app/measuring_words.hpp"
#include "cli/commands.hpp"
#include "cli/json.hpp"
#include "cli/opening.hpp"
#include "cli/output.hpp"

namespace sparewright::cli {
namespace {

void print_candidate(const app::CandidateRow& row, std::size_t place) {
  fmt::print("  {}. {:<12} {:<11}  {}: {}\n", place, row.name, row.size.shown, row.odds, row.reason);
}

void print_at_odds(const app::SizeRow& row) {
  if (!row.without.empty()) fmt::print("  {}\n", app::kDisputed);
  for (const app::WithoutRow& without : row.without) {
    fmt::print("  {}\n", app::without_words(without.size));
    if (without.made_to)
      fmt::print("     {:<12} {:<11}  {}: {}\n", without.made_to->name, without.made_to->size.shown,
                 without.made_to->odds, without.made_to->reason);
  }
  if (!row.in_question.empty()) fmt::print("  {}\n", app::question_words(row.in_question));
  if (row.candidates.empty()) return;
  if (!row.without.empty())
    fmt::print("  proposed of the disputed size:\n");
  else if (!row.in_question.empty())
    fmt::print("  proposed of the size in question:\n");
}

void print_size(const app::SizeRow& row) {
  fmt::print("{:<22} {}{}\n", row.name, row.measured.shown,
             row.measured.good_to.empty() ? "" : fmt::format("  (good to {})", row.measured.good_to));
  for (const std::string& missing : row.measured.missing)
    fmt::print("  not known: {}\n", missing);
  print_at_odds(row);
  for (std::size_t i = 0; i < row.candidates.size(); ++i)
    print_candidate(row.candidates[i], i + 1);
  if (row.candidates.empty() && row.measured.missing.empty()) fmt::print("  no standard size stands out\n");
  if (!row.decides.empty() && !row.accepted)
    fmt::print("  what it was made to: NOT KNOWN; {}\n", row.decides);
  if (row.accepted) {
    fmt::print("  ACCEPTED {}{}, leaves over {}{}\n", row.accepted->shown,
               row.least && row.most ? fmt::format(" ({} to {})", row.least->shown, row.most->shown) : "",
               row.leaves_over ? row.leaves_over->shown : "NOT KNOWN",
               row.duty.empty() ? "" : fmt::format("; it {}", row.duty == "free" ? "is free" : row.duty));
  }
  if (row.mate_of.empty()) return;
  fmt::print("  {} made to it: the mate in hand, {}, outranks the nominal{}\n",
             fmt::format("{} {}", fmt::join(row.mate_of, ", "), row.mate_of.size() == 1 ? "is" : "are"),
             row.measured.shown, row.accepted ? fmt::format(" {}", row.accepted->shown) : "");
}

void print_fit(const app::NearFitRow& row, const std::string& unit) {
  fmt::print("  {:<9} {:<10} {:<8} {} {}  {}{}\n", row.duty, row.standard, row.fit, row.shown, unit, row.name,
             row.out_shown.empty() ? "; it lies within" : fmt::format("; {} out of it", row.out_shown));
}

void print_pair(const app::PairRow& row) {
  fmt::print("{} on {}, {}\n", row.hole, row.shaft,
             row.is_measured ? "both as measured" : "as it is to be made");
  if (row.clearance) {
    fmt::print("  clearance {}{}\n", row.clearance->shown,
               row.clearance->good_to.empty() ? "" : fmt::format("  (good to {})", row.clearance->good_to));
  }
  if (row.near.empty()) {
    fmt::print("  which fit it was: NOT KNOWN{}\n",
               row.clearance && !row.clearance->bound.empty() ? ", a worn place leaves it open" : "");
    return;
  }
  fmt::print("  clearance {} to {}; negative is interference\n", row.least.shown, row.most.shown);
  for (const std::string& fit : row.made_to)
    fmt::print("  may have been made to {}\n", fit);
  for (const app::NearFitRow& near : row.near)
    print_fit(near, row.unit);
}

void print_sizes(const app::Sizes& sizes) {
  if (sizes.sizes.empty()) fmt::print("The job has no measured sizes.\n");
  if (!sizes.machine.empty()) fmt::print("Sizes of {}\n\n", sizes.machine);
  for (const app::SizeRow& row : sizes.sizes) {
    print_size(row);
    fmt::print("\n");
  }
  for (const app::PairRow& row : sizes.pairs) {
    print_pair(row);
    fmt::print("\n");
  }
  for (const app::QueryRow& query : sizes.queries)
    print_query(query);
}

}  // namespace

int sizes(const Asked& asked) {
  auto session = open(asked);
  if (!session) return tell(asked, session.error());
  const auto rows = session->sizes();
  if (asked.json) {
    fmt::print("{}", as_json(rows));
  } else {
    print_sizes(rows);
  }
  return status_of(*session);
}

}  // namespace sparewright::cli
