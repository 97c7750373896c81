// What is turned for an outside thread against the thread's own limits of major diameter.
#include <fmt/format.h>

#include "core/handbook/metric_threads.hpp"
#include "core/handbook/unified_threads.hpp"
#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;

// Nothing where the handbook has no limits for it.
std::optional<handbook::ExternalThreadLimits> limits_of(const std::string& written) {
  if (const auto unified = handbook::read_unified_thread(written))
    return handbook::screw_limits(*unified, handbook::screw_class(*unified).thread_class);
  const auto metric = handbook::read_metric_thread(written);
  if (!metric) return std::nullopt;
  const auto limits = handbook::screw_limits(*metric, handbook::screw_class(*metric).thread_class);
  return limits ? std::optional(*limits) : std::nullopt;
}

void judge_size(Pen& pen, const Subject& subject, const part::Feature& feature, const std::string& thread,
                const handbook::ExternalThreadLimits& limits) {
  const route::Printing print(subject.route.system);
  const std::string source = fmt::format("{}, class {}", handbook::cite(limits.source), limits.thread_class);
  const Figure& low = limit(pen, "least major", limits.major.low.base(), Origin::kStandard, source);
  const Figure& high = limit(pen, "most major", limits.major.high.base(), Origin::kStandard, source);
  const std::string path = part::feature_path(feature.name) + "/diameter";
  for (const bool at_least : {true, false}) {
    const Figure& size = pen.ask(path + (at_least ? "/least" : "/most"));
    pen.judge({.check = at_least ? "thread is full enough" : "thread goes into its nut",
               .subject = feature.name,
               .figure = &size,
               .low = at_least ? &low : nullptr,
               .high = at_least ? nullptr : &high,
               .reason = fmt::format("what is turned for {} is {} at the {}, and its major diameter is {}",
                                     thread, route::or_not_known(size, print.fine(size.value)),
                                     at_least ? "least" : "most", print.limits(low.value, high.value, true)),
               .source = source,
               .todo = fmt::format("turn it to {}", print.limits(low.value, high.value, true)),
               .margin = at_least ? "least margin" : "most margin"});
  }
}

}  // namespace

void add_thread_size_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* formed = std::get_if<part::Formed>(&feature.shape);
    if (formed == nullptr || formed->form != part::Form::kThread) continue;
    const auto limits = limits_of(formed->thread);
    if (!limits) continue;
    stages.push_back(check_stage(subject, "thread size", feature.name,
                                 [subject, &feature, thread = formed->thread, limits = *limits](Pen& pen) {
                                   judge_size(pen, *subject, feature, thread, limits);
                                 }));
  }
}

}  // namespace sparewright::judge
