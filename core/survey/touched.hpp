// Forms touched with a tip at table coordinates, what follows between them, and patterns of touched holes. Plain input;
// reading.hpp holds them beside the readings.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/kind.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/typed.hpp"
#include "core/survey/condition.hpp"

namespace sparewright::survey {

enum class TouchedForm { kCircle, kLine, kPlane };

// Where the tip stands. Of a circle: inside a hole, or outside round a boss. Of a line or a plane: to the left of the face
// (towards smaller x), to the right, in front (smaller y), behind, below (smaller z) or above.
enum class TipSide { kInside, kOutside, kLeft, kRight, kFront, kBack, kBelow, kAbove };

[[nodiscard]] std::string_view name_of(TouchedForm form);  // "circle"
[[nodiscard]] std::string_view name_of(TipSide side);      // "to the left"
[[nodiscard]] bool is_round(TipSide side);                 // inside, outside
// 0, 1, 2 for x, y, z, of a side that is not round; and whether the tip stands towards larger numbers.
[[nodiscard]] std::size_t axis_of(TipSide side);
[[nodiscard]] bool is_upward(TipSide side);

// What touched: an edge finder or a ball. All touches with a tip of one name share its doubt.
struct Tip {
  std::string name;                       // no '/'
  quantity::Typed diameter;               // 0 where the readings are of the surface itself
  std::optional<quantity::Typed> within;  // half-width of what the diameter may be out by
  std::optional<quantity::Length> finds;  // half-width of what it finds a face within, each time anew
};

// What can be told of touches. The figure it is, and the key that names a dimension in job texts.
enum class Told {
  kX,
  kY,
  kDiameter,
  kRadius,
  kAt,
  kLean,
  kLeanX,
  kLeanY,
  kLeanZ,
  kDistance,
  kAngle,
  kStart,
  kPitch,
};
struct ToldRow {
  Told told;
  std::string_view key;     // "lean_x"
  std::string_view figure;  // "lean along x"
  quantity::Kind kind;
  std::string_view says;
};
inline constexpr std::array kToldRows{
    ToldRow{Told::kX, "x", "x", quantity::Kind::kLength, "of a circle's middle"},
    ToldRow{Told::kY, "y", "y", quantity::Kind::kLength, "of a circle's middle"},
    ToldRow{Told::kDiameter, "diameter", "diameter", quantity::Kind::kDiameter, "of the hole or the boss"},
    ToldRow{Told::kRadius, "radius", "radius", quantity::Kind::kRadius, "the same as a radius"},
    ToldRow{Told::kAt, "at", "at", quantity::Kind::kLength,
            "where a face stands in the middle of its touches: x of one touched from the left or the right"},
    ToldRow{Told::kLean, "lean", "lean", quantity::Kind::kAngle,
            "of a line: how its x (or y) grows along the other axis"},
    ToldRow{Told::kLeanX, "lean_x", "lean along x", quantity::Kind::kAngle, "of a plane, along x"},
    ToldRow{Told::kLeanY, "lean_y", "lean along y", quantity::Kind::kAngle, "of a plane, along y"},
    ToldRow{Told::kLeanZ, "lean_z", "lean along z", quantity::Kind::kAngle, "of a plane, along z"},
    ToldRow{Told::kDistance, "distance", "distance", quantity::Kind::kLength,
            "middle to middle, or middle to face, square to it"},
    ToldRow{
        Told::kAngle, "angle", "angle", quantity::Kind::kAngle,
        "between two faces; of two circles the way from the first to the second, from x counterclockwise"},
    ToldRow{Told::kStart, "start", "start", quantity::Kind::kAngle,
            "of the first hole, from x counterclockwise"},
    ToldRow{Told::kPitch, "pitch", "pitch", quantity::Kind::kLength, "from hole to hole"}};
[[nodiscard]] const ToldRow& row_of(Told told);

// A dimension that gets what is told.
struct Gives {
  Told told = Told::kX;
  std::string dimension;
};

// One form: its touches are where the tip's middle stood, as the readout or the collars showed it.
struct Touched {
  std::string name;  // "left hole"; no '/', unique
  TouchedForm form = TouchedForm::kCircle;
  std::string instrument;  // the readout, or the collars as one
  Tip tip;
  TipSide side = TipSide::kInside;
  std::vector<std::vector<quantity::Typed>> touches;  // x, y of a circle and a line; x, y, z of a plane
  std::vector<Gives> gives;
  std::string place;
  Condition condition = Condition::kSound;
};

// What is told of a form, in order: circle x, y, diameter, radius; line at, lean; plane at and two leans.
[[nodiscard]] std::vector<Told> told_of(const Touched& touched);

// From one touched form to another: two circles, a circle and a line, two lines or two planes.
struct Between {
  std::string name;  // "left hole to right hole"
  std::string first;
  std::string second;
  std::vector<Gives> gives;  // distance, angle
};

// Touched circles that may be one pattern.
enum class HoleLayout { kCircle, kRow };
[[nodiscard]] std::string_view name_of(HoleLayout layout);
struct HolePattern {
  std::string name;
  HoleLayout layout = HoleLayout::kCircle;
  std::vector<std::string> of;  // touched circles, at least three
  std::vector<Gives> gives;     // circle: x, y, diameter, start; row: pitch
};

// Something told that counts as a reading of a dimension.
struct ToldReading {
  std::string name;  // "left hole diameter"
  std::string path;  // its figure
  std::string dimension;
  quantity::Kind kind = quantity::Kind::kLength;
};

[[nodiscard]] std::string touched_path(std::string_view form, Told told);  // "touched/left hole/lean along x"

}  // namespace sparewright::survey
