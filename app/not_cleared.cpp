#include "app/not_cleared.hpp"

#include <algorithm>

#include <fmt/format.h>

namespace sparewright::app {
namespace {

// What is judged is named whole, "pivot bore", with a place of it, "pivot bore, x", or as one of a pair, "pivot bore and slot".
bool is_named(const std::string& subject, const std::string& name) {
  return subject == name || subject.starts_with(name + ", ") || subject.starts_with(name + " and ") ||
         subject.ends_with(" and " + name);
}

bool is_of(const route::Setup& setup, const std::string& subject) {
  return is_named(subject, route::setup_path(setup)) ||
         std::any_of(setup.works.begin(), setup.works.end(),
                     [&](const route::Work& work) { return is_named(subject, work.feature); });
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
