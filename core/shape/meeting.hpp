// Where two bodies run into each other in what would be metal without them.
#pragma once

#include <optional>

#include "core/shape/witness.hpp"

namespace sparewright::shape {

// The blank; for a face a thin copy of it pushed out through that face, so that what lies on the face has a depth.
[[nodiscard]] Primitive meeting_place(const WallSubject& subject);

// A place in both bodies and in the place of meeting, and in no other cutter, found by rays that are in all of them for
// more than kTouch_mm. They stand over the box the two have in common; what lies between them is overlooked. Good for
// bodies that are not convex.
[[nodiscard]] std::optional<Point> meeting_in_metal(const WallSubject& subject, const Primitive& place);

// The same close by a point where the two seem to do no more than touch: rays square to the surface there, within 1 mm
// of it and then within a tenth.
[[nodiscard]] std::optional<Point> meeting_at_touch(const WallSubject& subject, const Primitive& place,
                                                    const Point& touching);

}  // namespace sparewright::shape
