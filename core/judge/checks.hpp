// The single checks, and what they share. Used inside this room only.
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "core/judge/judge.hpp"
#include "core/route/printing.hpp"

namespace sparewright::judge {

using Stages = std::vector<ledger::Stage>;

// The subject as the stages of all checks hold it: one copy for all, its fingerprint worked out once. A stage that holds
// it may hold references into it.
class Shared {
 public:
  explicit Shared(const Subject& subject);

  const Subject& operator*() const { return *subject_; }
  const Subject* operator->() const { return subject_.get(); }
  [[nodiscard]] const base::Fingerprint& fingerprint() const { return fingerprint_; }

 private:
  std::shared_ptr<const Subject> subject_;
  base::Fingerprint fingerprint_;
};

void add_bite_checks(const Shared& subject, Stages& stages);
void add_fit_checks(const Shared& subject, Stages& stages);
void add_screw_head_checks(const Shared& subject, Stages& stages);
void add_screw_engagement_checks(const Shared& subject, Stages& stages);
void add_screw_tension_checks(const Shared& subject, Stages& stages);
void add_screw_float_checks(const Shared& subject, Stages& stages);
void add_key_room_checks(const Shared& subject, Stages& stages);
void add_clamp_checks(const Shared& subject, Stages& stages);
void add_press_checks(const Shared& subject, Stages& stages);
void add_seat_checks(const Shared& subject, Stages& stages);
void add_wall_checks(const Shared& subject, Stages& stages);
void add_form_wall_checks(const Shared& subject, Stages& stages);
void add_state_wall_checks(const Shared& subject, Stages& stages);
void add_edge_distance_checks(const Shared& subject, Stages& stages);
void add_drill_start_checks(const Shared& subject, Stages& stages);
void add_drill_meets_checks(const Shared& subject, Stages& stages);
void add_blind_end_checks(const Shared& subject, Stages& stages);
void add_shoulder_checks(const Shared& subject, Stages& stages);
void add_space_checks(const Shared& subject, Stages& stages);
void add_hand_checks(const Shared& subject, Stages& stages);
void add_drill_room_checks(const Shared& subject, Stages& stages);
void add_clean_up_checks(const Shared& subject, Stages& stages);
void add_holding_checks(const Shared& subject, Stages& stages);
void add_lathe_holding_checks(const Shared& subject, Stages& stages);
void add_lathe_support_checks(const Shared& subject, Stages& stages);
void add_lathe_room_checks(const Shared& subject, Stages& stages);
void add_turned_size_checks(const Shared& subject, Stages& stages);
void add_build_up_checks(const Shared& subject, Stages& stages);
void add_tooling_checks(const Shared& subject, Stages& stages);
void add_tool_size_checks(const Shared& subject, Stages& stages);
void add_mill_cutter_checks(const Shared& subject, Stages& stages);
void add_tool_reach_checks(const Shared& subject, Stages& stages);
void add_right_across_checks(const Shared& subject, Stages& stages);
void add_blind_thread_checks(const Shared& subject, Stages& stages);
void add_on_table_checks(const Shared& subject, Stages& stages);
void add_bar_in_vise_checks(const Shared& subject, Stages& stages);
void add_reach_checks(const Shared& subject, Stages& stages);
void add_share_out_checks(const Shared& subject, Stages& stages);
void add_measuring_checks(const Shared& subject, Stages& stages);
void add_thread_size_checks(const Shared& subject, Stages& stages);
void add_split_checks(const Shared& subject, Stages& stages);
void add_bush_checks(const Shared& subject, Stages& stages);
void add_marked_place_checks(const Shared& subject, Stages& stages);
void add_mate_float_checks(const Shared& subject, Stages& stages);
void add_hand_cut_checks(const Shared& subject, Stages& stages);
void add_order_pieces_checks(const Shared& subject, Stages& stages);
void add_order_datum_checks(const Shared& subject, Stages& stages);
void add_order_cut_checks(const Shared& subject, Stages& stages);
void add_order_parted_checks(const Shared& subject, Stages& stages);
void add_order_bush_checks(const Shared& subject, Stages& stages);
void add_order_tools_checks(const Shared& subject, Stages& stages);
void add_order_thread_checks(const Shared& subject, Stages& stages);
void add_stock_on_hand_checks(const Shared& subject, Stages& stages);
void add_order_deburr_checks(const Shared& subject, Stages& stages);

// A feature as one setup of the order of work makes it. Valid as long as the subject.
struct Made {
  const route::Setup& setup;
  const route::Work& work;
  const part::Feature& feature;

  [[nodiscard]] bool on_mill() const { return std::holds_alternative<route::OnMill>(setup.held); }
  [[nodiscard]] bool on_lathe() const { return std::holds_alternative<route::OnLathe>(setup.held); }
  [[nodiscard]] bool by_marks() const { return std::holds_alternative<route::ByMarks>(setup.held); }
  // A hole whose cuts are worked out, on a mill or by marks; none for all else.
  [[nodiscard]] const part::Hole* drilled() const {
    const bool worked_out = (on_mill() || by_marks()) && route::cuts_are_worked_out(setup, feature);
    return worked_out ? std::get_if<part::Hole>(&feature.shape) : nullptr;
  }
  // A hole that a mill makes and whose cuts are worked out; none for all else.
  [[nodiscard]] const part::Hole* hole() const {
    const bool worked_out = on_mill() && route::cuts_are_worked_out(setup, feature);
    return worked_out ? std::get_if<part::Hole>(&feature.shape) : nullptr;
  }
  // A hole that a lathe makes from its free end.
  [[nodiscard]] const part::Hole* hole_on_lathe() const {
    const bool worked_out = on_lathe() && route::cuts_are_worked_out(setup, feature);
    return worked_out ? std::get_if<part::Hole>(&feature.shape) : nullptr;
  }
};
// In the order of work.
[[nodiscard]] std::vector<Made> all_made(const Subject& subject);

// A stage "check/<family>/<subject>" whose definition covers everything in the subject.
[[nodiscard]] ledger::Stage check_stage(const Shared& subject, const std::string& family,
                                        const std::string& of, std::function<void(ledger::Pen&)> work);

// Writes a limit that is not a figure of the job: a default or a rule of the trade.
const ledger::Figure& limit(ledger::Pen& pen, std::string_view local, double mm, ledger::Origin origin,
                            std::string source, std::string typed = {});

}  // namespace sparewright::judge
