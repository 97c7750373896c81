// The exact solids that blanks and cutters are made of. All are plain values, all sizes mm. All are convex but the last
// two, which are where their contour is (is_convex()).
//
// Each stands in a frame of its own:
//   HalfSpace    everything with local z <= 0; z points out of it
//   Box          0..size.x, 0..size.y, 0..size.z: the origin is a corner
//   Prism        a convex section in local x, y, from z = 0 to height
//   Cylinder     about local z, from z = 0 to height
//   Cone         about local z, start_radius at z = 0 to end_radius at z = height; one may be 0 (a point)
//   DrilledHole  about local z, which points the way the drill goes: full diameter from z = 0 to depth, then the point
//   ProfiledBody a contour in local x, y, from z = 0 to height: a milled pocket, a slot, an outside profile
//   TurnedBody   a contour in radius and local z, carried round local z: a groove, a shoulder, a ring
#pragma once

#include <numbers>
#include <variant>

#include "core/base/hash.hpp"
#include "core/base/result.hpp"
#include "core/shape/contour.hpp"
#include "core/shape/frame.hpp"
#include "core/shape/outline.hpp"

namespace sparewright::shape {

// Included angle of a general-purpose twist drill's point, 118 degrees: common practice.
inline constexpr double kUsualPoint_rad = 118.0 / 180.0 * std::numbers::pi;

// Below this a side is no side: a thousandth of a micrometre times ten, ten steps of the grid.
inline constexpr double kShortestSide_mm = 1e-5;

// Nothing made on a hand-operated machine reaches further; larger numbers are slips and cost digits.
inline constexpr double kFurthest_mm = 1e5;

struct HalfSpace {
  Frame frame;
  friend bool operator==(const HalfSpace&, const HalfSpace&) = default;
};

struct Box {
  Frame frame;
  Vector size;
  friend bool operator==(const Box&, const Box&) = default;
};

struct Prism {
  Frame frame;
  Outline section;
  double height_mm = 0.0;
  friend bool operator==(const Prism&, const Prism&) = default;
};

struct Cylinder {
  Frame frame;
  double radius_mm = 0.0;
  double height_mm = 0.0;
  friend bool operator==(const Cylinder&, const Cylinder&) = default;
};

struct Cone {
  Frame frame;
  double start_radius_mm = 0.0;
  double end_radius_mm = 0.0;
  double height_mm = 0.0;
  friend bool operator==(const Cone&, const Cone&) = default;
};

struct DrilledHole {
  Frame frame;
  double radius_mm = 0.0;
  double depth_mm = 0.0;  // at full diameter
  double point_rad = kUsualPoint_rad;
  friend bool operator==(const DrilledHole&, const DrilledHole&) = default;
};

struct ProfiledBody {
  Frame frame;
  Contour contour;
  double height_mm = 0.0;
  friend bool operator==(const ProfiledBody&, const ProfiledBody&) = default;
};

struct TurnedBody {
  Frame frame;
  Contour half_section;  // u is the radius, nowhere below 0; v is local z
  friend bool operator==(const TurnedBody&, const TurnedBody&) = default;
};

using Primitive = std::variant<HalfSpace, Box, Prism, Cylinder, Cone, DrilledHole, ProfiledBody, TurnedBody>;

// Every straight line between two of its points stays in it. A turned body is only where it reaches the axis.
[[nodiscard]] bool is_convex(const Primitive& primitive);

// The most corners of a contour.
inline constexpr std::size_t kMostCorners = 200;

// A regular six-sided prism; a flat faces local +x. The corners are rounded to the grid.
[[nodiscard]] Prism hexagonal_prism(const Frame& frame, double across_flats_mm, double height_mm);

// How far the point of a drill reaches past its full diameter: r / tan(point angle / 2).
[[nodiscard]] double point_length_mm(double radius_mm, double point_rad);

[[nodiscard]] const Frame& frame_of(const Primitive& primitive);

// The primitive carried along by a motion given as a frame: what stood in the part frame stands in `to`.
[[nodiscard]] Primitive placed(const Primitive& primitive, const Frame& to);

// Sizes and origin on the grid, axes on the direction grid, the point angle to 1e-9 rad.
[[nodiscard]] Primitive snapped(const Primitive& primitive);

// Fails with kSizeNotPositive or kValueNotAccepted, naming the size, where a side is under kShortestSide_mm,
// a coordinate is beyond kFurthest_mm or not a number, a section is not convex and counterclockwise, a cone
// has no slope to either side worth its name (both radii 0), a drill point is not between 30 and 180 degrees,
// or a contour is not sound (fault_of() in contour.hpp), has more than kMostCorners, or crosses the axis.
[[nodiscard]] base::Result<Primitive> checked(const Primitive& primitive, std::string_view subject);

// Exact. Infinite for a half-space.
[[nodiscard]] double volume_mm3(const Primitive& primitive);

void add_to(base::Hasher& hasher, const Primitive& primitive);

}  // namespace sparewright::shape
