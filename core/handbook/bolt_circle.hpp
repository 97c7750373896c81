// Holes on a circle and in rows, as coordinates from a datum, and the chords to check them by.
#pragma once

#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

inline constexpr Source kBoltCircle{"x = R cos(360 deg k / N), y = R sin(360 deg k / N), geometry", "",
                                    Basis::kDerived};
inline constexpr Source kChord{"chord = D sin(180 deg / N), geometry; table of chord factors",
                               "http://shopswarf.orcon.net.nz/spacing", Basis::kPublished};

struct HolePosition {
  int number = 0;  // from 1
  quantity::Coordinate x;
  quantity::Coordinate y;
};

// Equal holes on a circle. Angles count from the x axis towards y, counter-clockwise where y points away from the
// operator.
struct BoltCircle {
  quantity::Diameter diameter;
  int holes = 0;
  quantity::Angle first;   // of hole 1; others follow counter-clockwise
  quantity::Coordinate x;  // of the centre, in the datum's frame
  quantity::Coordinate y;
};

inline constexpr int kMostHolesInPattern = 10000;

// Every position is worked out from the centre, so that errors do not add up. Fails with kSizeNotPositive for the
// diameter, kValueNotAccepted for fewer than 1 or more than 10000 holes.
[[nodiscard]] base::Result<std::vector<HolePosition>> bolt_circle(const BoltCircle& circle);

// Straight from hole to hole, `apart` holes on: D sin(180 deg apart / N). Measured over pins it is larger by one pin,
// between them smaller by one. Wants 2 or more holes.
[[nodiscard]] quantity::Length chord_between_holes(quantity::Diameter diameter, int holes, int apart = 1);

// The circle on which `holes` holes are that chord from each other: chord / sin(180 deg / N). Fails with
// kSizeNotPositive or kValueNotAccepted (fewer than 2 holes).
[[nodiscard]] base::Result<quantity::Diameter> bolt_circle_for_chord(quantity::Length chord, int holes);

// Rows and columns, `columns` holes along each row; the pattern is turned about its first hole by `turned`, which
// stands at x, y. Numbered along the rows. Fails as bolt_circle does.
struct HoleGrid {
  int columns = 1;
  int rows = 1;
  quantity::Length column_pitch;
  quantity::Length row_pitch;
  quantity::Angle turned;
  quantity::Coordinate x;
  quantity::Coordinate y;
};
[[nodiscard]] base::Result<std::vector<HolePosition>> hole_grid(const HoleGrid& grid);

// Positions as they stand from another datum: the new datum's origin in the old frame, and the angle of its x axis
// there.
[[nodiscard]] std::vector<HolePosition> from_datum(const std::vector<HolePosition>& holes,
                                                   quantity::Coordinate x, quantity::Coordinate y,
                                                   quantity::Angle turned = {});

}  // namespace sparewright::handbook
