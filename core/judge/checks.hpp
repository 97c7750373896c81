// The single checks, and what they share. Used inside this room only.
#pragma once

#include <string>
#include <vector>

#include "core/judge/judge.hpp"
#include "core/route/printing.hpp"

namespace sparewright::judge {

using Stages = std::vector<ledger::Stage>;

void add_share_out_checks(const Subject& subject, Stages& stages);
void add_bush_checks(const Subject& subject, Stages& stages);
void add_bite_checks(const Subject& subject, Stages& stages);
void add_fit_checks(const Subject& subject, Stages& stages);
void add_screw_head_checks(const Subject& subject, Stages& stages);
void add_wall_checks(const Subject& subject, Stages& stages);
void add_form_wall_checks(const Subject& subject, Stages& stages);
void add_drill_room_checks(const Subject& subject, Stages& stages);
void add_clean_up_checks(const Subject& subject, Stages& stages);
void add_holding_checks(const Subject& subject, Stages& stages);
void add_build_up_checks(const Subject& subject, Stages& stages);
void add_tooling_checks(const Subject& subject, Stages& stages);
void add_tool_size_checks(const Subject& subject, Stages& stages);
void add_reach_checks(const Subject& subject, Stages& stages);

// A feature as one setup of the order of work makes it. Valid as long as the subject.
struct Made {
  const route::Setup& setup;
  const route::Work& work;
  const part::Feature& feature;

  // A hole whose cuts are worked out; none for all else.
  [[nodiscard]] const part::Hole* hole() const {
    return part::cuts_are_worked_out(feature) ? std::get_if<part::Hole>(&feature.shape) : nullptr;
  }
};
// In the order of work.
[[nodiscard]] std::vector<Made> all_made(const Subject& subject);

// A stage "check/<family>/<subject>" whose definition covers everything in the subject.
[[nodiscard]] ledger::Stage check_stage(const Subject& subject, const std::string& family,
                                        const std::string& of, std::function<void(ledger::Pen&)> work);

// Writes a limit that is not a figure of the job: a default or a rule of the trade.
const ledger::Figure& limit(ledger::Pen& pen, std::string_view local, double mm, ledger::Origin origin,
                            std::string source, std::string typed = {});

}  // namespace sparewright::judge
