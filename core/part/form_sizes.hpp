// What the figures say of one formed feature, and the frames its cutters stand in. Used inside this room only.
#pragma once

#include <string_view>
#include <vector>

#include "core/part/form_cutters.hpp"

namespace sparewright::part {

// The figures of one feature, and of the blank it is cut from. All in mm and radians.
struct Sizes {
  const Feature& feature;
  const Formed& formed;
  const Ask& ask;

  [[nodiscard]] double of(std::string_view local) const;
  [[nodiscard]] bool has(std::string_view size) const { return formed.sizes.contains(size); }
  [[nodiscard]] double side(Face face) const;    // of the blank, as a coordinate
  [[nodiscard]] double across(Axis axis) const;  // the blank's size along it
  [[nodiscard]] double middle(Axis axis) const;  // of the blank
  [[nodiscard]] double at(Axis axis) const;
  [[nodiscard]] double above() const;  // from the blank's outside to the surface the feature is measured from
  [[nodiscard]] double hole(std::string_view local) const;  // a figure of the hole it belongs to
};

[[nodiscard]] shape::Vector axis_vector(Axis axis);
[[nodiscard]] shape::Cutter as_cutter(const Sizes& s, shape::Primitive nominal,
                                      shape::Open open = shape::Open::kNone);

// Local z leads into the metal, local x along the given axis; the origin lies on the blank's side, over the place.
[[nodiscard]] shape::Frame on_side(const Sizes& s, Axis along);
// Local z leads along the bar's axis into the metal; the origin lies in the middle of the blank's end.
[[nodiscard]] shape::Frame on_end(const Sizes& s);
// A radius past the corners of any bar.
[[nodiscard]] double outside(const Sizes& s);
// How deep a form goes from the blank's side, and which of its ends are open: through where it has no depth.
[[nodiscard]] double depth_of(const Sizes& s);
[[nodiscard]] shape::Open open_of(const Sizes& s);

// --- the cutters, by what makes them --------------------------------------------------------------------------------
[[nodiscard]] std::vector<shape::Cutter> milled_cutters(const Sizes& s);
[[nodiscard]] std::vector<shape::Cutter> turned_cutters(const Sizes& s);
[[nodiscard]] std::vector<shape::Cutter> edge_cutters(const Sizes& s);
[[nodiscard]] std::vector<shape::Cutter> cutters_in_hole(const Sizes& s);
[[nodiscard]] std::vector<shape::Cutter> profile_cutters(const Sizes& s);

}  // namespace sparewright::part
