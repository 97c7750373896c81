// The groove a thread runs out in is turned before the thread.
#include <fmt/format.h>

#include "core/judge/order.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Pen;

const part::Formed* formed_as(const part::Feature& feature, part::Form form) {
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  return formed != nullptr && formed->form == form ? formed : nullptr;
}

// Whether the thread ends in the groove.
bool runs_out_in(Pen& pen, const Step& thread, const Step& groove) {
  const auto size = [&](const Step& step, const char* local) -> const Figure& {
    return pen.need(fmt::format("{}/{}", part::feature_path(step.feature->name), local));
  };
  const double end = size(thread, "length").value;
  const double from = size(groove, "from end").value;
  const double width = size(groove, "width").value;
  constexpr double kSame_mm = 1e-6;
  return end > from - width && end < from + width + kSame_mm;
}

void judge_groove(Pen& pen, const Step& thread, const Step& groove) {
  if (!runs_out_in(pen, thread, groove)) return;
  say(pen, {"the groove comes before the thread", thread.feature->name, ledger::State::kNo,
            fmt::format("it runs out in {}, which is turned only later, in {}: the tool has nowhere to stop",
                        groove.feature->name, op_of(groove)),
            fmt::format("turn {} first", groove.feature->name)});
}

}  // namespace

void add_order_thread_checks(const Shared& subject, Stages& stages) {
  const std::vector<Step> steps = steps_of(*subject);
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const part::Formed* thread = formed_as(*steps[i].feature, part::Form::kThread);
    if (thread == nullptr || steps[i].joins()) continue;
    for (std::size_t j = i + 1; j < steps.size(); ++j) {
      const part::Formed* groove = formed_as(*steps[j].feature, part::Form::kGroove);
      if (groove == nullptr || groove->side != thread->side) continue;
      stages.push_back(check_stage(
          subject, "runs out in " + steps[j].feature->name, steps[i].feature->name,
          [subject, one = steps[i], other = steps[j]](Pen& pen) { judge_groove(pen, one, other); }));
    }
  }
}

}  // namespace sparewright::judge
