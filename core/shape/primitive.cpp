#include "core/shape/primitive.hpp"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <limits>

#include <fmt/format.h>

namespace sparewright::shape {
namespace {

using base::Code;
using base::fail;
using base::Result;

// Every size of a primitive with its name, for the checks that are the same for all.
struct NamedSize {
  std::string_view name;
  double size_mm = 0.0;
};

struct Sizes {
  std::array<NamedSize, 3> all{};
  std::size_t count = 0;

  Sizes(std::initializer_list<NamedSize> given) : count(given.size()) {
    std::copy(given.begin(), given.end(), all.begin());
  }
};

Sizes sizes(const HalfSpace& /*unsized*/) {
  return {};
}
Sizes sizes(const Box& b) {
  return {{"length", b.size.x}, {"width", b.size.y}, {"height", b.size.z}};
}
Sizes sizes(const Prism& p) {
  return {{"height", p.height_mm}};
}
Sizes sizes(const Cylinder& c) {
  return {{"radius", c.radius_mm}, {"height", c.height_mm}};
}
Sizes sizes(const Cone& c) {
  return {{"larger radius", std::max(c.start_radius_mm, c.end_radius_mm)}, {"height", c.height_mm}};
}
Sizes sizes(const ProfiledBody& p) {
  return {{"height", p.height_mm}};
}
Sizes sizes(const TurnedBody& /*its contour has them*/) {
  return {};
}
Sizes sizes(const DrilledHole& h) {
  return {{"radius", h.radius_mm}, {"depth", h.depth_mm}};
}

bool within_reach(const Point& p) {
  const auto near = [](double x) { return std::abs(x) <= kFurthest_mm; };  // false for a NaN
  return near(p.x) && near(p.y) && near(p.z);
}

bool has_axes(const Frame& f) {
  constexpr double kNearly = 1e-9;
  const auto square = [](const Vector& a, const Vector& b, double want) {
    return std::abs(dot(a, b) - want) <= kNearly;
  };
  return square(f.x, f.x, 1.0) && square(f.y, f.y, 1.0) && square(f.z, f.z, 1.0) && square(f.x, f.y, 0.0) &&
         square(f.y, f.z, 0.0) && square(f.z, f.x, 0.0);
}

// What the kinds have of their own; empty where all is well.
std::string own_fault(const Prism& p) {
  for (const FlatPoint& corner : p.section) {
    if (!within_reach({corner.u, corner.v, 0.0})) return "a section out of reach";
  }
  return is_convex(p.section, kShortestSide_mm) ? "" : "a section that is not convex and counterclockwise";
}
std::string own_fault(const Cone& c) {
  for (const double radius_mm : {c.start_radius_mm, c.end_radius_mm}) {  // one of them may be a point
    if (radius_mm != 0.0 && !(radius_mm >= kShortestSide_mm))
      return fmt::format("a cone with a radius of {} mm", radius_mm);
  }
  return "";
}
std::string own_fault(const DrilledHole& h) {
  constexpr double kBluntest_rad = std::numbers::pi - 1e-3;
  constexpr double kSharpest_rad = std::numbers::pi / 6;
  if (h.point_rad >= kSharpest_rad && h.point_rad <= kBluntest_rad) return "";
  return fmt::format("a drill point of {:.1f} deg", h.point_rad * 180.0 / std::numbers::pi);
}
std::string fault_within_reach(const Contour& contour) {
  if (contour.size() > kMostCorners) return fmt::format("a profile of {} corners", contour.size());
  for (const Corner& corner : contour) {
    if (!within_reach({corner.at.u, corner.at.v, 0.0})) return "a profile out of reach";
  }
  return fault_of(contour, kShortestSide_mm);
}
std::string own_fault(const ProfiledBody& p) {
  return fault_within_reach(p.contour);
}
std::string own_fault(const TurnedBody& t) {
  std::string fault = fault_within_reach(t.half_section);
  if (fault.empty() && farthest(t.half_section, -1.0, 0.0).u < 0.0)
    fault = "a half section that crosses its axis";
  return fault;
}
std::string accepted_for(const Primitive& primitive) {
  const bool has_contour =
      std::holds_alternative<ProfiledBody>(primitive) || std::holds_alternative<TurnedBody>(primitive);
  return has_contour ? "sizes and radii that find room beside each other" : "";
}

template <typename Other>
std::string own_fault(const Other& /*sizes say it all*/) {
  return "";
}

Vector snapped_size(const Vector& v) {
  return {snapped(v.x), snapped(v.y), snapped(v.z)};
}
void snap_sizes(HalfSpace& /*unsized*/) {}
void snap_sizes(Box& b) {
  b.size = snapped_size(b.size);
}
void snap_sizes(Prism& p) {
  p.height_mm = snapped(p.height_mm);
  for (FlatPoint& corner : p.section)
    corner = {snapped(corner.u), snapped(corner.v)};
}
void snap_sizes(Cylinder& c) {
  c.radius_mm = snapped(c.radius_mm);
  c.height_mm = snapped(c.height_mm);
}
void snap_sizes(Cone& c) {
  c.start_radius_mm = snapped(c.start_radius_mm);
  c.end_radius_mm = snapped(c.end_radius_mm);
  c.height_mm = snapped(c.height_mm);
}
void snap_sizes(ProfiledBody& p) {
  p.contour = snapped(p.contour);
  p.height_mm = snapped(p.height_mm);
}
void snap_sizes(TurnedBody& t) {
  t.half_section = snapped(t.half_section);
}
void snap_sizes(DrilledHole& h) {
  constexpr double kPerRadian = 1e9;
  h.radius_mm = snapped(h.radius_mm);
  h.depth_mm = snapped(h.depth_mm);
  h.point_rad = std::round(h.point_rad * kPerRadian) / kPerRadian;
}

double volume(const HalfSpace& /*endless*/) {
  return std::numeric_limits<double>::infinity();
}
double volume(const Box& b) {
  return b.size.x * b.size.y * b.size.z;
}
double volume(const Prism& p) {
  return area_mm2(p.section) * p.height_mm;
}
double frustum(double r, double s, double h) {
  return std::numbers::pi / 3 * h * (r * r + r * s + s * s);
}
double volume(const Cylinder& c) {
  return std::numbers::pi * c.radius_mm * c.radius_mm * c.height_mm;
}
double volume(const Cone& c) {
  return frustum(c.start_radius_mm, c.end_radius_mm, c.height_mm);
}
double volume(const DrilledHole& h) {
  return std::numbers::pi * h.radius_mm * h.radius_mm * h.depth_mm +
         frustum(h.radius_mm, 0.0, point_length_mm(h.radius_mm, h.point_rad));
}

double volume(const ProfiledBody& p) {
  return area_mm2(p.contour) * p.height_mm;
}
// Pappus: the area times the way of its centroid.
double volume(const TurnedBody& t) {
  return 2.0 * std::numbers::pi * centroid(t.half_section).u * area_mm2(t.half_section);
}

void add(base::Hasher& to, const Vector& v) {
  to.add(v.x).add(v.y).add(v.z);
}
void add_own(base::Hasher& /*to*/, const HalfSpace& /*frame only*/) {}
void add_own(base::Hasher& to, const Box& b) {
  add(to, b.size);
}
void add_own(base::Hasher& to, const Prism& p) {
  to.add(static_cast<std::uint64_t>(p.section.size())).add(p.height_mm);
  for (const FlatPoint& corner : p.section)
    to.add(corner.u).add(corner.v);
}
void add_own(base::Hasher& to, const Cylinder& c) {
  to.add(c.radius_mm).add(c.height_mm);
}
void add_own(base::Hasher& to, const Cone& c) {
  to.add(c.start_radius_mm).add(c.end_radius_mm).add(c.height_mm);
}
void add_own(base::Hasher& to, const ProfiledBody& p) {
  add_to(to, p.contour);
  to.add(p.height_mm);
}
void add_own(base::Hasher& to, const TurnedBody& t) {
  add_to(to, t.half_section);
}
void add_own(base::Hasher& to, const DrilledHole& h) {
  to.add(h.radius_mm).add(h.depth_mm).add(h.point_rad);
}

}  // namespace

bool is_convex(const Primitive& primitive) {
  if (const auto* p = std::get_if<ProfiledBody>(&primitive)) return is_convex(p->contour);
  if (const auto* t = std::get_if<TurnedBody>(&primitive)) {
    return farthest(t->half_section, -1.0, 0.0).u == 0.0 && is_convex(t->half_section);
  }
  return true;
}

Prism hexagonal_prism(const Frame& frame, double across_flats_mm, double height_mm) {
  const double corner_mm = across_flats_mm / std::numbers::sqrt3;
  Prism prism{frame, {}, height_mm};
  for (int i = 0; i < 6; ++i) {
    const double angle_rad = std::numbers::pi / 6 * (2 * i - 1);
    prism.section.push_back(
        {snapped(corner_mm * std::cos(angle_rad)), snapped(corner_mm * std::sin(angle_rad))});
  }
  return prism;
}

double point_length_mm(double radius_mm, double point_rad) {
  return radius_mm / std::tan(point_rad / 2);
}

const Frame& frame_of(const Primitive& primitive) {
  return std::visit([](const auto& p) -> const Frame& { return p.frame; }, primitive);
}

Primitive placed(const Primitive& primitive, const Frame& to) {
  Primitive moved = primitive;
  std::visit([&](auto& p) { p.frame = p.frame.in(to); }, moved);
  return moved;
}

Primitive snapped(const Primitive& primitive) {
  Primitive on_grid = primitive;
  std::visit(
      [](auto& p) {
        p.frame = snapped(p.frame);
        snap_sizes(p);
      },
      on_grid);
  return on_grid;
}

Result<Primitive> checked(const Primitive& primitive, std::string_view subject) {
  if (!within_reach(frame_of(primitive).origin)) {
    return fail(Code::kValueNotAccepted, "a place out of reach", fmt::format("within {} mm", kFurthest_mm),
                subject);
  }
  if (!has_axes(frame_of(primitive)))
    return fail(Code::kValueNotAccepted, "without a direction", {}, subject);
  const Sizes named = std::visit([](const auto& p) { return sizes(p); }, primitive);
  for (std::size_t i = 0; i < named.count; ++i) {
    const NamedSize& size = named.all.at(i);
    if (!(size.size_mm >= kShortestSide_mm)) {
      return fail(Code::kSizeNotPositive, fmt::format("{} mm", size.size_mm),
                  fmt::format("at least {} mm", kShortestSide_mm),
                  fmt::format("the {} of {}", size.name, subject));
    }
    if (size.size_mm > kFurthest_mm) {
      return fail(Code::kNumberTooLarge, fmt::format("the {} {} mm", size.name, size.size_mm),
                  fmt::format("within {} mm", kFurthest_mm), subject);
    }
  }
  const std::string fault = std::visit([](const auto& p) { return own_fault(p); }, primitive);
  if (!fault.empty()) return fail(Code::kValueNotAccepted, fault, accepted_for(primitive), subject);
  return primitive;
}

double volume_mm3(const Primitive& primitive) {
  return std::visit([](const auto& p) { return volume(p); }, primitive);
}

void add_to(base::Hasher& hasher, const Primitive& primitive) {
  hasher.add(static_cast<std::uint64_t>(primitive.index()));
  const Frame& frame = frame_of(primitive);
  hasher.add(frame.origin.x).add(frame.origin.y).add(frame.origin.z);
  for (const Vector& axis : {frame.x, frame.y, frame.z})
    add(hasher, axis);
  std::visit([&](const auto& p) { add_own(hasher, p); }, primitive);
}

}  // namespace sparewright::shape
