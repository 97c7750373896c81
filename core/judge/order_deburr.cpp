// Burrs come off what is cut by then.
#include <algorithm>

#include <fmt/format.h>

#include "core/judge/order.hpp"

namespace sparewright::judge {
namespace {

// Whether a feature is made by a place in a setup: so many of its works come before.
bool is_made_by(const Subject& subject, const std::string& feature, const route::Setup& setup,
                std::size_t works_before) {
  for (const route::Setup& other : subject.route.plan.setups) {
    const bool here = other.op == setup.op;
    const std::size_t count = here ? std::min(works_before, other.works.size()) : other.works.size();
    for (std::size_t i = 0; i < count; ++i) {
      if (!other.works[i].joins && other.works[i].feature == feature) return true;
    }
    if (here) return false;
  }
  return false;
}

}  // namespace

void add_order_deburr_checks(const Shared& subject, Stages& stages) {
  for (const route::Setup& setup : subject->route.plan.setups) {
    for (const route::Deburring& burrs : setup.deburrings) {
      for (const std::string& feature : burrs.features) {
        if (is_made_by(*subject, feature, setup, burrs.after)) continue;
        const std::string op = route::setup_path(setup);
        stages.push_back(
            check_stage(subject, fmt::format("burrs in {}", op), feature, [feature, op](ledger::Pen& pen) {
              say(pen, {"it is cut before its burrs come off", feature, ledger::State::kNo,
                        fmt::format("{} takes its burrs off, and it is not cut yet", op),
                        "make it in a step before, or take its burrs off in one after"});
            }));
      }
    }
  }
}

}  // namespace sparewright::judge
