// The order of work as one row of steps. Used inside this room only.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/judge/checks.hpp"

namespace sparewright::judge {

// One thing made, or one split part joined again. Valid as long as the subject.
struct Step {
  const route::Setup* setup = nullptr;
  const route::Work* work = nullptr;
  const part::Feature* feature = nullptr;

  [[nodiscard]] bool joins() const { return work->joins; }
};
[[nodiscard]] std::vector<Step> steps_of(const Subject& subject);

// The place of the step that makes a feature, or that joins it; none where no step does.
[[nodiscard]] std::optional<std::size_t> made_at(const std::vector<Step>& steps, std::string_view feature);
[[nodiscard]] std::optional<std::size_t> joined_at(const std::vector<Step>& steps, std::string_view split);

// "op 20"
[[nodiscard]] std::string op_of(const Step& step);

// A verdict that no margin decides, by the order of work.
struct OrderVerdict {
  std::string check;
  std::string subject;
  ledger::State state = ledger::State::kNo;
  std::string reason;
  std::string todo;
};
void say(ledger::Pen& pen, OrderVerdict verdict);

}  // namespace sparewright::judge
