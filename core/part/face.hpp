// The six sides of the work and the axes between them.
//
// Part frame: x runs from the left end to the right end, y from the front to the back, z from the underside to the
// top; the origin is the corner where left end, front and underside of the blank meet. A round bar lies along x; its
// front, back, underside and top are the planes that touch it.
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "core/shape/recipe.hpp"
#include "core/shape/vector.hpp"

namespace sparewright::part {

enum class Axis { kX, kY, kZ };
enum class Face { kLeftEnd, kRightEnd, kFront, kBack, kUnderside, kTop };

inline constexpr std::array kFaces{Face::kLeftEnd, Face::kRightEnd,  Face::kFront,
                                   Face::kBack,    Face::kUnderside, Face::kTop};
inline constexpr std::array kAxes{Axis::kX, Axis::kY, Axis::kZ};

[[nodiscard]] std::string_view name_of(Axis axis);  // "x"
[[nodiscard]] std::string_view name_of(Face face);  // "left end"
[[nodiscard]] std::optional<Face> find_face(std::string_view name);

// The side of the work a face of a blank's body is, by the name that core/shape/blank_face.hpp gives it: "x low", and of
// a bar "start" and "end"; none for the round side of a bar and the flats of a hex bar.
[[nodiscard]] std::optional<Face> find_blank_face(std::string_view name);

[[nodiscard]] Axis axis_of(Face face);
[[nodiscard]] bool at_greater_end(Face face);  // right end, back, top
[[nodiscard]] Face opposite(Face face);
[[nodiscard]] Face face_at(Axis axis, bool greater_end);

// The two axes that lie in the face, in the order x, y, z.
[[nodiscard]] std::array<Axis, 2> axes_in(Face face);

// Which end of a body that stands in the part frame lies on that side.
[[nodiscard]] shape::Open open_side(Face face);

// Length 1, out of the work.
[[nodiscard]] shape::Vector outward(Face face);

[[nodiscard]] double& component(shape::Vector& vector, Axis axis);
[[nodiscard]] double component(const shape::Vector& vector, Axis axis);

}  // namespace sparewright::part
