#include "core/shape/blank_face.hpp"

#include <array>
#include <cassert>

#include "core/shape/profile.hpp"
#include "core/shape/support.hpp"

namespace sparewright::shape {
namespace {

BlankFace flat(std::string_view name, const Point& on, const Vector& out) {
  return {name, false, {Frame::along(on, -out)}};
}

std::vector<BlankFace> faces_of(const HalfSpace& h) {
  return {flat("end", h.frame.origin, h.frame.z)};
}

std::vector<BlankFace> faces_of(const Box& b) {
  const Point far = b.frame.to_world(Point{b.size.x, b.size.y, b.size.z});
  const Frame& f = b.frame;
  return {flat("x low", f.origin, -f.x), flat("x high", far, f.x),      flat("y low", f.origin, -f.y),
          flat("y high", far, f.y),      flat("z low", f.origin, -f.z), flat("z high", far, f.z)};
}

constexpr std::array<std::string_view, 12> kSides{"side 1", "side 2",  "side 3",  "side 4",
                                                  "side 5", "side 6",  "side 7",  "side 8",
                                                  "side 9", "side 10", "side 11", "side 12"};

std::vector<BlankFace> faces_of(const Prism& p) {
  std::vector<BlankFace> all;
  for (std::size_t i = 0; i < p.section.size(); ++i) {
    const FlatPoint& a = p.section[i];
    const FlatPoint& b = p.section[i + 1 == p.section.size() ? 0 : i + 1];
    const Vector out = p.frame.to_world(direction(Vector{b.v - a.v, a.u - b.u, 0.0}));
    all.push_back(
        flat(i < kSides.size() ? kSides.at(i) : "side", p.frame.to_world(Point{a.u, a.v, 0.0}), out));
  }
  all.push_back(flat("start", p.frame.origin, -p.frame.z));
  all.push_back(flat("end", p.frame.to_world(Point{0.0, 0.0, p.height_mm}), p.frame.z));
  return all;
}

template <Turned Shape>
std::vector<BlankFace> faces_of(const Shape& shape) {
  const Profile profile(shape);
  const auto corners = profile.corners();
  std::vector<BlankFace> all;
  if (corners[0].v == corners[1].v) {
    all.push_back(flat("start", shape.frame.to_world(Point{0.0, 0.0, corners[0].v}), -shape.frame.z));
  }
  if (corners[corners.size() - 2].v == corners.back().v) {
    all.push_back(flat("end", shape.frame.to_world(Point{0.0, 0.0, corners.back().v}), shape.frame.z));
  }
  all.push_back({"side", true, {}});
  return all;
}

template <typename NoStock>
std::vector<BlankFace> no_faces(const NoStock& /*refused as a blank*/) {
  assert(!"no blank has this shape");
  return {};
}
std::vector<BlankFace> faces_of(const ProfiledBody& body) {
  return no_faces(body);
}
std::vector<BlankFace> faces_of(const TurnedBody& body) {
  return no_faces(body);
}

// The slope of the mantle as a direction in the half section, pointing out.
template <typename Shape>
FlatPoint mantle_out(const Shape& shape) {
  if constexpr (Turned<Shape>) {
    const Profile profile(shape);
    const auto corners = profile.corners();
    for (std::size_t i = 0; i < 2; ++i) {  // the first edge is the start face, where there is one
      const FlatPoint edge{corners[i + 1].u - corners[i].u, corners[i + 1].v - corners[i].v};
      const double length = std::hypot(edge.u, edge.v);
      if (edge.v != 0.0) return {edge.v / length, -edge.u / length};
    }
  }
  assert(!"this blank has no round side");
  return {1.0, 0.0};
}

}  // namespace

std::vector<BlankFace> faces(const Primitive& blank) {
  return std::visit([](const auto& b) { return faces_of(b); }, blank);
}

HalfSpace beyond_side(const Primitive& blank, double angle_rad) {
  const FlatPoint out = std::visit([](const auto& b) { return mantle_out(b); }, blank);
  const Vector local{out.u * std::cos(angle_rad), out.u * std::sin(angle_rad), out.v};
  const Vector world = frame_of(blank).to_world(local);
  return {Frame::along(farthest(blank, world), -world)};
}

}  // namespace sparewright::shape
