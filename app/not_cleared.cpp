#include "app/not_cleared.hpp"

#include <algorithm>

#include <fmt/format.h>

namespace sparewright::app {
namespace {

// The setup itself, "op 20", one of its features, "pivot bore", or a place or a pair of it, "pivot bore, x".
bool is_of(const route::Setup& setup, const std::string& subject) {
  if (subject == route::setup_path(setup) || subject.starts_with(route::setup_path(setup) + ",")) return true;
  return std::any_of(setup.works.begin(), setup.works.end(), [&](const route::Work& work) {
    return subject.find(work.feature) != std::string::npos;
  });
}

}  // namespace

std::vector<std::string> not_cleared(const route::Setup& setup, const std::vector<ledger::Verdict>& verdicts,
                                     const std::vector<ledger::Query>& queries) {
  std::vector<std::string> lines;
  std::size_t elsewhere = 0;
  for (const ledger::Verdict& verdict : verdicts) {
    if (verdict.state != ledger::State::kNo) continue;
    if (!is_of(setup, verdict.subject)) {
      ++elsewhere;
      continue;
    }
    lines.push_back(fmt::format("NO, {}, {}: {}", verdict.check, verdict.subject, verdict.reason));
  }
  for (const ledger::Query& query : queries) {
    if (query.serious && query.state == ledger::QueryState::kOpen)
      lines.push_back(fmt::format("QUERY: {}. {}", query.says, query.happens));
  }
  if (elsewhere > 0)
    lines.push_back(fmt::format("{} more NO elsewhere in this job: see the first sheet.", elsewhere));
  return lines;
}

}  // namespace sparewright::app
