// The search for a witness of a wall: a stretch of metal from one body to another.
#pragma once

#include <limits>
#include <optional>
#include <vector>

#include "core/shape/region.hpp"
#include "core/shape/wall.hpp"

namespace sparewright::shape {

// What a wall is looked for between. `to` is another cutter's body, or the outside of a face as a half-space.
struct WallSubject {
  const Primitive& blank;
  const Primitive& from;
  const Primitive& to;
  std::vector<const Primitive*> air;     // every cutter of the work, the two themselves among them
  std::vector<const Primitive*> others;  // every cutter but the two
  bool to_outside = false;
  bool to_round_side = false;  // then `to` only touches the side, and the witness ends where the blank does
};

struct Witness {
  Point from;
  Point to;
  double length_mm = 0.0;
};

// The metal from one body to the other along the straight line through p and q, if there is metal and nothing
// else. One longer than limit_mm may not be looked for.
[[nodiscard]] std::optional<Witness> witness_along(const WallSubject& subject, const Point& p, const Point& q,
                                                   double limit_mm = std::numeric_limits<double>::infinity());

// The same for a line that may run in a face, where metal and air meet: if it is not in metal itself, one
// within kRegionAccuracy_mm of it.
[[nodiscard]] std::optional<Witness> witness_near(const WallSubject& subject, const Point& p, const Point& q);

// The nearest pair that has both its points in the blank (that from has, where `to` is outside).
[[nodiscard]] std::optional<NearestPair> nearest_in_blank(const WallSubject& subject);

// The shortest witness found from many starts between the two surfaces; of length 0 where it leads to a place
// outside the other cutters where the two bodies touch. One clearly longer than limit_mm is not drawn out to its end.
[[nodiscard]] std::optional<Witness> shortest_witness(const WallSubject& subject, double limit_mm);

// More than kTouch_mm inside one of them.
[[nodiscard]] bool in_air_of(Region others, const Point& point);

// The ball round a blank that region.hpp asks for.
[[nodiscard]] Ball ball_round(const Primitive& blank);

}  // namespace sparewright::shape
