#include "core/shape/ray.hpp"

#include <cassert>
#include <limits>

#include "core/shape/local_ray.hpp"
#include "core/shape/profile.hpp"

namespace sparewright::shape {
namespace {

constexpr double kEndless = std::numeric_limits<double>::infinity();
// An interval under construction. Starts as the whole line.
struct Clip {
  double enter = -kEndless;
  double exit = kEndless;

  [[nodiscard]] bool empty() const { return !(enter < exit); }
  void after(double t) {
    if (t > enter) enter = t;
  }
  void before(double t) {
    if (t < exit) exit = t;
  }
  void clear() { exit = enter = 0.0; }
  [[nodiscard]] std::optional<Interval> done() const {
    if (empty()) return std::nullopt;
    return Interval{enter, exit};
  }
};

// Keeps low <= x + t * dx, and x + t * dx < high.
void clip_slab(Clip& clip, double x, double dx, double low, double high) {
  if (std::abs(dx) < kParallel) {
    if (!(x >= low && x < high)) clip.clear();
    return;
  }
  const double at_low = (low - x) / dx;
  const double at_high = (high - x) / dx;
  clip.after(dx > 0.0 ? at_low : at_high);
  clip.before(dx > 0.0 ? at_high : at_low);
}

// Keeps what is at most 0 of s + t * ds.
void clip_plane(Clip& clip, double s, double ds) {
  if (std::abs(ds) < kParallel) {
    if (!(s < 0.0)) clip.clear();
  } else if (ds > 0.0) {
    clip.before(-s / ds);
  } else {
    clip.after(-s / ds);
  }
}

std::optional<Interval> cross(const HalfSpace& h, const Ray& ray) {
  Clip clip;
  clip_plane(clip, dot(ray.origin - h.frame.origin, h.frame.z), dot(ray.direction, h.frame.z));
  return clip.done();
}

std::optional<Interval> cross(const Box& b, const Ray& ray) {
  const LocalRay r = in_frame(ray, b.frame);
  Clip clip;
  clip_slab(clip, r.o.x, r.d.x, 0.0, b.size.x);
  clip_slab(clip, r.o.y, r.d.y, 0.0, b.size.y);
  clip_slab(clip, r.o.z, r.d.z, 0.0, b.size.z);
  return clip.done();
}

std::optional<Interval> cross(const Prism& p, const Ray& ray) {
  const LocalRay r = in_frame(ray, p.frame);
  Clip clip;
  clip_slab(clip, r.o.z, r.d.z, 0.0, p.height_mm);
  for (std::size_t i = 0; i < p.section.size(); ++i) {
    const FlatPoint& a = p.section[i];
    const FlatPoint& b = p.section[i + 1 == p.section.size() ? 0 : i + 1];
    const double length = std::hypot(b.u - a.u, b.v - a.v);
    const double nu = (b.v - a.v) / length;
    const double nv = (a.u - b.u) / length;
    clip_plane(clip, nu * (r.o.x - a.u) + nv * (r.o.y - a.v), nu * r.d.x + nv * r.d.y);
  }
  return clip.done();
}

// Keeps what is inside the mantle radius = w0 + w1 * s where that is positive, s = t - nearest: the solutions
// of A s^2 + 2 B s + C <= 0 with w0 + w1 s >= 0. The slab of the edge, clipped elsewhere, keeps the wrong
// nappe out.
void clip_mantle(Clip& clip, const AboutAxis& ray, double w0, double w1) {
  const double A = ray.flat - w1 * w1;
  const double B = -w0 * w1;
  const double C = ray.least2 - w0 * w0;
  if (A == 0.0) {
    if (B == 0.0) {
      if (!(C < 0.0)) clip.clear();
    } else if (B > 0.0) {
      clip.before(ray.nearest - C / (2 * B));
    } else {
      clip.after(ray.nearest - C / (2 * B));
    }
    return;
  }
  const double discriminant = B * B - A * C;
  if (A > 0.0 && discriminant <= 0.0) return clip.clear();
  const double root = std::sqrt(std::max(discriminant, 0.0));
  const double q = B >= 0.0 ? -(B + root) : root - B;  // the sum without cancellation
  const double one = q / A;
  const double other = q == 0.0 ? 0.0 : C / q;
  const double first = ray.nearest + std::min(one, other);
  const double last = ray.nearest + std::max(one, other);
  if (A > 0.0) {
    clip.after(first);
    clip.before(last);
  } else if (w1 > 0.0) {  // steeper than the mantle: through one nappe only, the one the radius grows into
    clip.after(last);
  } else {
    clip.before(first);
  }
}

template <Turned Shape>
std::optional<Interval> cross(const Shape& shape, const Ray& ray) {
  const Profile profile(shape);
  const auto corners = profile.corners();
  const LocalRay local = in_frame(ray, shape.frame);
  Clip clip;
  clip_slab(clip, local.o.z, local.d.z, profile.start_mm(), profile.end_mm());
  if (clip.empty()) return std::nullopt;
  const AboutAxis about = about_axis(local);
  for (std::size_t i = 0; i + 1 < corners.size() && !clip.empty(); ++i) {
    const FlatPoint& a = corners[i];
    const FlatPoint& b = corners[i + 1];
    if (a.v == b.v) continue;  // an end face: the slab has it
    const double slope = (b.u - a.u) / (b.v - a.v);
    clip_mantle(clip, about, a.u + slope * (about.z - a.v), slope * about.dz);
  }
  return clip.done();
}

std::optional<Interval> cross(const ProfiledBody& /*several*/, const Ray& /*ray*/) {
  assert(!"stretches_inside() has these");
  return std::nullopt;
}
std::optional<Interval> cross(const TurnedBody& /*several*/, const Ray& /*ray*/) {
  assert(!"stretches_inside() has these");
  return std::nullopt;
}

}  // namespace

std::optional<Interval> inside(const Primitive& primitive, const Ray& ray) {
  return std::visit([&](const auto& p) { return cross(p, ray); }, primitive);
}

}  // namespace sparewright::shape
