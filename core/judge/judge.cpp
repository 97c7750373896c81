#include "core/judge/judge.hpp"

#include <fmt/format.h>

#include "core/judge/ground.hpp"

namespace sparewright::judge {
namespace {

base::Fingerprint fingerprint(const Subject& subject) {
  base::Hasher h;
  h.add(part::fingerprint(subject.route.part)).add(static_cast<int>(subject.route.system));
  for (const route::Setup& setup : subject.route.plan.setups)
    h.add(route::fingerprint(setup));
  h.add(subject.least_wall.has_value());
  if (subject.least_wall) h.add(subject.least_wall->base).add(subject.least_wall->typed);
  h.add(subject.hand).add(subject.turn_over.has_value()).add(subject.turn_over.value_or(false));
  add_to(h, subject.space);
  return h.done();
}

}  // namespace

Shared::Shared(const Subject& subject)
    : subject_(std::make_shared<const Subject>(subject)), fingerprint_(judge::fingerprint(subject)) {}

std::vector<ledger::Stage> stages(const Subject& judged) {
  const Shared subject(judged);
  Stages all;
  add_ground(subject, all);
  add_share_out_checks(subject, all);
  add_bush_checks(subject, all);
  add_split_checks(subject, all);
  add_thread_size_checks(subject, all);
  add_measuring_checks(subject, all);
  add_bite_checks(subject, all);
  add_fit_checks(subject, all);
  add_screw_head_checks(subject, all);
  add_wall_checks(subject, all);
  add_form_wall_checks(subject, all);
  add_state_wall_checks(subject, all);
  add_edge_distance_checks(subject, all);
  add_drill_start_checks(subject, all);
  add_drill_meets_checks(subject, all);
  add_blind_end_checks(subject, all);
  add_shoulder_checks(subject, all);
  add_space_checks(subject, all);
  add_hand_checks(subject, all);
  add_clean_up_checks(subject, all);
  add_holding_checks(subject, all);
  add_drill_room_checks(subject, all);
  add_build_up_checks(subject, all);
  add_tooling_checks(subject, all);
  add_tool_size_checks(subject, all);
  add_mill_cutter_checks(subject, all);
  add_tool_reach_checks(subject, all);
  add_right_across_checks(subject, all);
  add_bar_in_vise_checks(subject, all);
  add_reach_checks(subject, all);
  return all;
}

std::vector<Made> all_made(const Subject& subject) {
  std::vector<Made> all;
  for (const route::Setup& setup : subject.route.plan.setups) {
    for (const route::Work& work : setup.works) {
      if (work.joins) continue;
      if (const part::Feature* feature = part::find_feature(subject.route.part, work.feature))
        all.push_back({setup, work, *feature});
    }
  }
  return all;
}

ledger::Stage check_stage(const Shared& subject, const std::string& family, const std::string& of,
                          std::function<void(ledger::Pen&)> work) {
  std::string name = fmt::format("check/{}/{}", family, of);
  base::Fingerprint definition = base::Hasher().add(name).add(subject.fingerprint()).done();
  return {std::move(name), definition, std::move(work)};
}

const ledger::Figure& limit(ledger::Pen& pen, std::string_view local, double mm, ledger::Origin origin,
                            std::string source, std::string typed) {
  ledger::Root root;
  root.kind = quantity::Kind::kLength;
  root.value = mm;
  root.origin = origin;
  root.source = std::move(source);
  root.typed = std::move(typed);
  return pen.root(local, root);
}

}  // namespace sparewright::judge
