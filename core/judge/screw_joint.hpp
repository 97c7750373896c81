// A screw that is tapped into this part: what the checks of it share. Used inside this room only.
#pragma once

#include <optional>
#include <string>

#include "core/handbook/screw_grades.hpp"
#include "core/handbook/screw_thread.hpp"
#include "core/judge/checks.hpp"

namespace sparewright::judge {

struct ScrewJoint {
  handbook::ScrewThread thread;
  handbook::ScrewGrade grade;
  bool grade_is_assumed = false;

  [[nodiscard]] std::string grade_words() const;  // "A574 (assumed)"
};

// The screw of a hole and its strength: A574 or class 12.9, what socket head cap screws are usually sold in, where the job
// does not say. None without a screw, or where the handbook has no such strength.
[[nodiscard]] std::optional<ScrewJoint> screw_joint(const part::Hole& hole);

// Whether the screw ends in a thread of this part: beyond a slit or a split, or in a tapped hole.
[[nodiscard]] bool is_tapped_here(const part::Hole& hole);

// Lead of a plug tap and one pitch below it for chips, which are no full thread (common practice); 0 where the hole has no
// thread that can be read.
[[nodiscard]] double lead_and_room_mm(const part::Hole& hole);

// The stage "check/screw joint/<feature>" of such a hole writes, all of them lengths:
//   grip      metal under the head that is not tapped for it
//   gap       the slit or split, open; 0 where there is none
//   there     full thread in the hole: all of a through hole; of a blind one what a plug tap leaves
//   reaches   how far the point of the screw gets into the tapped part
//   engaged   thread of the screw in thread of the hole: the lesser of the two
// and asks for the screw's length, which is not known where the job does not give it.
[[nodiscard]] std::string screw_joint_path(std::string_view feature, std::string_view local);
void add_screw_joints(const Shared& subject, Stages& stages);

}  // namespace sparewright::judge
