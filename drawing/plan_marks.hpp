// The lines of a setup's plan view, before any word is written.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/route/sheet.hpp"
#include "drawing/display_list.hpp"
#include "drawing/label.hpp"
#include "drawing/plan_frame.hpp"

namespace sparewright::drawing {

struct PlanMarks {
  struct Round {
    std::string name;  // may be empty
    Disc disc;         // as drawn
    bool cut_here = false;
  };
  struct Flat {
    std::string name;
    Box box;
    bool cut_here = false;
  };

  DisplayList list;
  Ground ground;  // what words must keep clear of
  std::vector<Round> rounds;
  std::vector<Flat> flats;
  std::vector<Flat> forms;             // neither flats nor holes: their boxes
  std::optional<Disc> zero;            // the circle round the diamond, where it is in the picture
  std::vector<std::string> not_shown;  // outside the picture, or not known

  // The largest round about the same centre, or the disc itself.
  [[nodiscard]] Disc outermost(Disc disc) const;
};

// The work as it is seen from above, where held has that; else by its outline and the sizes of its holes and flats.
[[nodiscard]] PlanMarks plan_marks(const route::PlanView& view, const HeldViews* held,
                                   const PlanFrame& frame);

}  // namespace sparewright::drawing
