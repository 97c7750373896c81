#include "core/job/job.hpp"

#include <algorithm>
#include <iterator>
#include <set>

#include <fmt/format.h>

#include "core/measuring/measuring.hpp"
#include "core/route/lists.hpp"
#include "core/survey/good_to.hpp"
#include "core/survey/stage.hpp"

namespace sparewright::job {
namespace {

void append(std::vector<ledger::Stage>& all, std::vector<ledger::Stage> more) {
  all.insert(all.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

// A job that only measures has nothing that could be OK.
ledger::Stage no_part_stage() {
  return {"check/new part", base::Hasher().add("no part").done(), [](ledger::Pen& pen) {
            ledger::Verdict verdict;
            verdict.check = "new part";
            verdict.subject = "the job";
            verdict.reason = "There is no blank: the old part is only being measured.";
            verdict.missing = {"[blank]"};
            verdict.todo = "Say what the new part is made of, and what is made of it.";
            pen.state(std::move(verdict));
          }};
}

}  // namespace

base::ResultOrAll<std::vector<ledger::Stage>> stages(const Job& job) {
  std::vector<ledger::Stage> all = survey::good_to_stages(job.survey.instruments);
  if (!job.survey.readings.empty() || !job.survey.touched.empty()) {
    auto measured = survey::survey_stages(job.survey);
    if (!measured) return tl::unexpected(measured.error());
    append(all, std::move(*measured));
  }
  append(all, intent::stages(job.subject.originals, job.subject.route.part));
  append(all, measuring::stages({job.subject, job.survey, job.shop_has_lathe}));
  if (!job.has_part) {
    all.push_back(no_part_stage());
    return all;
  }
  append(all, part::stages(job.subject.route.part));
  append(all, route::stages(job.subject.route));
  append(all, route::list_stages(job.subject.route));
  append(all, judge::stages(job.subject));
  return all;
}

namespace {

int rank_of(const ledger::Query& query) {
  if (query.state == ledger::QueryState::kOverruled) return 2;
  return query.serious ? 0 : 1;
}

ledger::Query overrules_nothing(const std::string& id) {
  ledger::Query query;
  query.id = "overrules nothing/" + id;
  query.about = "overrule";
  query.says = fmt::format("'{}' is overruled, and no query of that name is asked", id);
  query.happens = "Nothing is set aside by it.";
  query.todo = "Take it out, or write the name as check prints it.";
  return query;
}

}  // namespace

std::vector<ledger::Query> queries(const Job& job, std::vector<ledger::Query> all) {
  std::set<std::string> met;
  for (ledger::Query& query : all) {
    const auto overruled = job.overruled.find(query.id);
    if (overruled == job.overruled.end()) continue;
    met.insert(query.id);
    query.state = ledger::QueryState::kOverruled;
    query.reason = overruled->second;
  }
  for (const auto& [id, reason] : job.overruled) {
    if (met.count(id) == 0) all.push_back(overrules_nothing(id));
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const auto& a, const auto& b) { return rank_of(a) < rank_of(b); });
  return all;
}

}  // namespace sparewright::job
