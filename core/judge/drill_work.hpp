// What a drill meets: the work as it stands when a hole is drilled. Used inside this room only.
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "core/judge/checks.hpp"
#include "core/shape/primitive.hpp"
#include "core/shape/recipe.hpp"

namespace sparewright::judge {

// A hole with the setup that drills it; none where no setup does.
struct Drilling {
  const part::Feature& feature;
  const route::Setup* setup = nullptr;
  const route::Work* work = nullptr;  // of that setup

  // In the order they are used; none without a setup.
  [[nodiscard]] std::span<const shop::Tool> tools() const;

  [[nodiscard]] const part::Hole& hole() const { return std::get<part::Hole>(feature.shape); }
  [[nodiscard]] bool uses(shop::ToolKind kind) const;
};
// Every hole of the part, in the order of the text. Valid as long as the subject.
[[nodiscard]] std::vector<Drilling> all_drillings(const Subject& subject);

// Valid as long as the stage that asked for it.
struct DrillWork {
  // As the setup leaves the work; without a setup the finished part. The cut of a split that is joined again before the
  // drill comes is not in it: it is closed, or filled with shims.
  std::shared_ptr<const shape::Recipe> recipe;
  std::size_t cut = 0;  // the hole's own in it; what stands before it is cut before
  shape::Frame frame;   // z: the way the drill goes; the origin lies on the blank's outside
  double radius_mm = 0.0;
  double length_mm = 0.0;  // at full diameter, from the origin

  [[nodiscard]] shape::Work before() const { return recipe->work_after(cut); }
  [[nodiscard]] shape::Work with() const { return recipe->work_after(cut + 1); }
};
// In the order of work; where no setup makes the hole, flats are cut first and the rest as the text lists it. A through
// hole comes from the side that is up. Ends the stage where the recipe is not known; none where the hole is not in it.
[[nodiscard]] std::optional<DrillWork> drill_work(ledger::Pen& pen, const Subject& subject,
                                                  const Drilling& drilling);

}  // namespace sparewright::judge
