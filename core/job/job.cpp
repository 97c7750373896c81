#include "core/job/job.hpp"

#include <iterator>

#include "core/route/lists.hpp"
#include "core/survey/good_to.hpp"
#include "core/survey/stage.hpp"

namespace sparewright::job {
namespace {

void append(std::vector<ledger::Stage>& all, std::vector<ledger::Stage> more) {
  all.insert(all.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

}  // namespace

base::ResultOrAll<std::vector<ledger::Stage>> stages(const Job& job) {
  std::vector<ledger::Stage> all = survey::good_to_stages(job.survey.instruments);
  if (!job.survey.readings.empty()) {
    auto measured = survey::survey_stages(job.survey);
    if (!measured) return tl::unexpected(measured.error());
    append(all, std::move(*measured));
  }
  append(all, part::stages(job.subject.route.part));
  append(all, route::stages(job.subject.route));
  append(all, route::list_stages(job.subject.route));
  append(all, judge::stages(job.subject));
  return all;
}

}  // namespace sparewright::job
