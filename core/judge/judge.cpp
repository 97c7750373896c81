#include "core/judge/judge.hpp"

#include <fmt/format.h>

#include "core/judge/ground.hpp"
#include "core/judge/queries.hpp"
#include "core/judge/screw_joint.hpp"

namespace sparewright::judge {
namespace {

base::Fingerprint fingerprint(const Subject& subject) {
  base::Hasher h;
  h.add(part::fingerprint(subject.route.part)).add(static_cast<int>(subject.route.system));
  for (const route::Setup& setup : subject.route.plan.setups)
    h.add(route::fingerprint(setup));
  for (const shop::Stock& piece : subject.route.on_hand)
    h.add(shop::fingerprint(piece));
  h.add(subject.least_wall.has_value());
  if (subject.least_wall) h.add(subject.least_wall->base).add(subject.least_wall->typed);
  h.add(subject.hand).add(subject.turn_over.has_value()).add(subject.turn_over.value_or(false));
  h.add(subject.drawn_from).add(subject.side_seen ? static_cast<int>(*subject.side_seen) : -1);
  h.add(intent::fingerprint(subject.originals));
  add_to(h, subject.space);
  for (const Seat& seat : subject.seats)
    add_to(h, seat);
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
  add_screw_joints(subject, all);
  add_screw_engagement_checks(subject, all);
  add_blind_thread_checks(subject, all);
  add_screw_tension_checks(subject, all);
  add_screw_float_checks(subject, all);
  add_key_room_checks(subject, all);
  add_clamp_checks(subject, all);
  add_press_checks(subject, all);
  add_seat_checks(subject, all);
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
  add_lathe_holding_checks(subject, all);
  add_lathe_support_checks(subject, all);
  add_lathe_room_checks(subject, all);
  add_turned_size_checks(subject, all);
  add_drill_room_checks(subject, all);
  add_build_up_checks(subject, all);
  add_tooling_checks(subject, all);
  add_tool_size_checks(subject, all);
  add_mill_cutter_checks(subject, all);
  add_tool_reach_checks(subject, all);
  add_right_across_checks(subject, all);
  add_bar_in_vise_checks(subject, all);
  add_on_table_checks(subject, all);
  add_reach_checks(subject, all);
  add_moved_queries(subject, all);
  add_radius_queries(subject, all);
  add_mirror_query(subject, all);
  add_larger_queries(subject, all);
  add_marked_place_checks(subject, all);
  add_mate_float_checks(subject, all);
  add_hand_cut_checks(subject, all);
  add_order_pieces_checks(subject, all);
  add_order_datum_checks(subject, all);
  add_order_cut_checks(subject, all);
  add_order_parted_checks(subject, all);
  add_order_bush_checks(subject, all);
  add_order_tools_checks(subject, all);
  add_order_thread_checks(subject, all);
  add_order_deburr_checks(subject, all);
  add_stock_on_hand_checks(subject, all);
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

ledger::Stage query_stage(const Shared& subject, const std::string& family, const std::string& of,
                          std::function<void(ledger::Pen&)> work) {
  std::string name = fmt::format("query/{}/{}", family, of);
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
