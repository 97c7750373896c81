#include "core/route/work_after.hpp"

#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include "core/ledger/pen.hpp"
#include "core/part/part.hpp"

namespace sparewright::route {
namespace {

std::string work_path(const Setup& setup) {
  return fmt::format("work after {}", setup_path(setup));
}

// The features made in the first `setups` setups, in the order of work. One named twice is cut twice; that takes
// nothing more.
std::vector<std::string> made_in(const Plan& plan, std::size_t setups) {
  std::vector<std::string> made;
  for (std::size_t i = 0; i < setups; ++i) {
    for (const Work& work : plan.setups[i].works) {
      if (!work.joins) made.push_back(work.feature);
    }
  }
  return made;
}

void write_work(ledger::Pen& pen, const part::Part& part, const std::vector<std::string>& made) {
  std::vector<const part::Feature*> features;
  for (const std::string& name : made) {
    const part::Feature* feature = part::find_feature(part, name);
    if (feature != nullptr) features.push_back(feature);  // others are refused when the text is read
  }
  auto recipe =
      part::recipe_of(part.blank, features, [&](const std::string& name) { return pen.need(name).value; });
  if (!recipe) return;  // the part's own stage says so
  const base::Fingerprint print = recipe->fingerprint();
  pen.publish("recipe", std::move(*recipe), print);
}

}  // namespace

std::vector<ledger::Stage> work_stages(const Route& route) {
  std::vector<ledger::Stage> all;
  const base::Fingerprint part = part::fingerprint(route.part);
  for (std::size_t i = 0; i < route.plan.setups.size(); ++i) {
    std::vector<std::string> made = made_in(route.plan, i + 1);
    base::Hasher definition;
    definition.add("work after").add(part);
    for (const std::string& name : made)
      definition.add(name);
    all.push_back(
        {work_path(route.plan.setups[i]), definition.done(),
         [part = route.part, made = std::move(made)](ledger::Pen& pen) { write_work(pen, part, made); }});
  }
  return all;
}

base::Result<std::string> recipe_path_after(const Plan& plan, int op) {
  const auto setup =
      std::find_if(plan.setups.begin(), plan.setups.end(), [&](const Setup& s) { return s.op == op; });
  if (setup != plan.setups.end()) return work_path(*setup) + "/recipe";
  std::string known;
  for (const Setup& s : plan.setups)
    known += fmt::format("{}{}", known.empty() ? "" : ", ", s.op);
  if (known.empty()) known = "an order of work first: the job has no [[setup]]";
  return base::fail(base::Code::kNotInTheJob, fmt::format("{}", op), known, "op");
}

}  // namespace sparewright::route
