// A part as a recipe: one blank and the cutters that go through it, in order.
//
// A cutter is given as the metal it is meant to take (its nominal body) and which of its ends lie open to the
// air. Every open end is carried on kOverrun_mm into the air, so that no cutter ends in the very face it
// breaks: this is done in one place, with_overrun(), and everything else (rays, walls, the kernel) sees the
// body with its overrun.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/base/hash.hpp"
#include "core/base/result.hpp"
#include "core/shape/primitive.hpp"

namespace sparewright::shape {

inline constexpr double kOverrun_mm = 1.0;

// More cutters than a hand-made part has features; keeps every loop over them short.
inline constexpr std::size_t kMostCutters = 2000;

// The ends of a nominal body that lie open, in its own frame. A body of revolution has its start (z = 0) and
// its end (z = height), a prism these two, a box all six.
enum class Open : unsigned {
  kNone = 0,
  kXLow = 1,
  kXHigh = 2,
  kYLow = 4,
  kYHigh = 8,
  kZLow = 16,
  kZHigh = 32,
  kStart = kZLow,
  kEnd = kZHigh,
  kThrough = kZLow + kZHigh,
};
[[nodiscard]] constexpr Open operator|(Open a, Open b) {
  return static_cast<Open>(static_cast<unsigned>(a) | static_cast<unsigned>(b));
}
[[nodiscard]] constexpr bool has(Open all, Open one) {
  return (static_cast<unsigned>(all) & static_cast<unsigned>(one)) != 0;
}

// The nominal body carried on past its open ends. A cone goes on at its own slope, but never past its point;
// a half-space, and the point of a drill, have no end to carry on. The contour of a profiled or turned body is made with
// its overrun; only the ends of a profiled body are carried on here.
[[nodiscard]] Primitive with_overrun(const Primitive& nominal, Open open);

// What the caller asks to be cut.
struct Cutter {
  std::string
      feature;  // the name a failure or a wall is told with; several cutters may belong to one feature
  Primitive nominal;
  Open open = Open::kNone;
};

// A cutter as it stands in a recipe: on the grid, with its overrun.
struct Cut {
  std::string feature;
  Primitive nominal;
  Open open = Open::kNone;
  Primitive body;
};

struct Blank {
  std::string name;
  Primitive body;
};

// A view of the work after some of the cuts. Valid as long as its recipe.
struct Work {
  const Primitive& blank;
  std::span<const Cut> cuts;
};

class Recipe {
 public:
  // Snaps everything to the grid. Fails as checked() does, with kValueNotAccepted for a blank that is no
  // box, prism, cylinder or cone, and with kTooMany past kMostCutters; the failure names the blank or the
  // feature.
  [[nodiscard]] static base::Result<Recipe> make(const Blank& blank, std::span<const Cutter> cutters);

  [[nodiscard]] const Blank& blank() const { return blank_; }
  [[nodiscard]] std::span<const Cut> cuts() const { return cuts_; }

  // The work after the first `count` cuts; all of them at most.
  [[nodiscard]] Work work_after(std::size_t count) const;
  [[nodiscard]] Work work() const { return work_after(cuts_.size()); }

  // The same as a recipe of its own: equal to one made from the first `count` cutters.
  [[nodiscard]] Recipe first(std::size_t count) const;

  // Of everything that stands in the recipe, names and order included. fingerprint_after(k) is the
  // fingerprint of first(k), so a keeper of solids can look for the longest prefix it knows.
  [[nodiscard]] const base::Fingerprint& fingerprint() const { return fingerprints_.back(); }
  [[nodiscard]] const base::Fingerprint& fingerprint_after(std::size_t count) const {
    return fingerprints_.at(count);
  }

 private:
  Recipe() = default;

  Blank blank_;
  std::vector<Cut> cuts_;
  std::vector<base::Fingerprint> fingerprints_;  // one more than cuts
};

}  // namespace sparewright::shape
