// What is parted off lies in the tray: nothing more is made on it in that holding.
#include <fmt/format.h>

#include "core/judge/order.hpp"

namespace sparewright::judge {
namespace {

bool is_parting(const Step& step) {
  const auto* formed = std::get_if<part::Formed>(&step.feature->shape);
  return formed != nullptr && formed->form == part::Form::kChuckingPiece && !step.joins() &&
         std::holds_alternative<route::OnLathe>(step.setup->held);
}

}  // namespace

void add_order_parted_checks(const Shared& subject, Stages& stages) {
  const std::vector<Step> steps = steps_of(*subject);
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (!is_parting(steps[i])) continue;
    for (std::size_t later = i + 1; later < steps.size() && steps[later].setup == steps[i].setup; ++later) {
      stages.push_back(check_stage(
          subject, "parted off before", steps[later].feature->name,
          [subject, piece = steps[i], step = steps[later]](ledger::Pen& pen) {
            say(pen,
                {"it is still held when its turn comes", step.feature->name, ledger::State::kNo,
                 fmt::format("{} comes after {} has parted the part off, in {}: nothing holds it any more",
                             step.feature->name, piece.feature->name, op_of(step)),
                 fmt::format("make it before {}, or in another setup", piece.feature->name)});
          }));
    }
  }
}

}  // namespace sparewright::judge
