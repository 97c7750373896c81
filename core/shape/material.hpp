// Metal along straight lines through the whole part: the blank less the cutters.
#pragma once

#include <span>
#include <vector>

#include "core/shape/ray.hpp"
#include "core/shape/recipe.hpp"
#include "core/shape/support.hpp"

namespace sparewright::shape {

// Metal or air shorter than this along a ray is where two faces coincide, told apart by rounding alone: a gap
// of that length counts as closed, a sliver of metal as gone.
inline constexpr double kSliver_mm = 1e-8;

// The stretches of metal along a ray, in order, apart from each other. Degenerate rays as in inside(); faces
// of cutters that coincide with each other or with the blank leave neither slivers nor gaps.
[[nodiscard]] std::vector<Interval> metal_along(const Work& work, const Ray& ray);

// The same for a blank and bodies of air given apart, into a vector that is used again and again.
void metal_along(const Primitive& blank, std::span<const Primitive* const> air, const Ray& ray,
                 std::vector<Interval>& out);

// Takes one stretch out of stretches that are in order and apart; no rest shorter than kSliver_mm stays.
void take_out(std::vector<Interval>& metal, const Interval& air);

// The bodies of the cuts, for that form: those only whose bounds meet `within`.
[[nodiscard]] std::vector<const Primitive*> bodies(std::span<const Cut> cuts, const Bounds& within);
[[nodiscard]] std::vector<const Primitive*> bodies(std::span<const Cut> cuts);

// The surface of the part belongs to it: metal is in the blank or on its surface, and in no cutter's inside.
// Within 1e-9 mm of a surface the answer may be either.
[[nodiscard]] bool is_metal(const Work& work, const Point& point);

}  // namespace sparewright::shape
