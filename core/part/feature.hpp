// The features a part is made of, as the job gives them.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/base/hash.hpp"
#include "core/part/dimension.hpp"
#include "core/part/face.hpp"
#include "core/part/form.hpp"
#include "core/part/position.hpp"

namespace sparewright::part {

enum class HoleMake { kDrilled, kBored, kReamed, kTapped, kCounterbored, kSpotfaced, kCountersunk };
[[nodiscard]] std::string_view name_of(HoleMake make);
[[nodiscard]] std::optional<HoleMake> find_hole_make(std::string_view name);

// How the head of a screw is to stand.
enum class HeadStands { kFlushOrBelow, kProud };

// The screw a counterbored or plain hole takes. Sizes from the handbook, greatest head first to be safe.
struct ScrewHead {
  std::string designation;  // "1/4-20 socket head"
  double head_diameter_mm = 0.0;
  double head_height_mm = 0.0;
  std::string source;
  HeadStands stands = HeadStands::kFlushOrBelow;
};

struct Counterbore {
  Dimension diameter;
  Dimension depth;
};

struct Countersink {
  Dimension diameter;  // at the surface
  Dimension angle;     // included
};

// A hole that is not square to its side: going in, it leads towards another side.
struct Lean {
  Face towards = Face::kRightEnd;
  Dimension angle;  // from square
};

// A place by angle and distance from the middle of another hole.
struct ByAngle {
  std::string from;
  Dimension radius;
  bool is_diameter = false;  // the radius is given as the diameter of a bolt circle
  Dimension angle;  // from the first axis of the side towards the second: from +x towards +y on the top
};

// Where a hole's place comes from at the machine. What comes from the mate has no tolerance of its own here.
enum class PlacedBy { kCoordinates, kMate, kDrilledTogether, kDowelled };
[[nodiscard]] std::string_view name_of(PlacedBy placed);

struct Hole {
  HoleMake make = HoleMake::kDrilled;
  Face into = Face::kTop;           // the side it starts on
  std::map<Axis, Position> at;      // the two axes that lie in that side; round a bar the one along it
  std::optional<ByAngle> by_angle;  // what `at` is worked out from, where it is
  std::optional<Lean> lean;
  std::optional<Dimension>
      around_bar;  // angle round the bar, from its top towards its back; towards its middle
  PlacedBy placed_by = PlacedBy::kCoordinates;
  std::optional<Dimension> mate_hole;      // diameter of the mate's hole that lies over it, for its screw
  Dimension diameter;                      // of a tapped hole: the tap drill
  std::optional<Dimension> depth;          // full diameter; none: through
  std::optional<Counterbore> counterbore;  // or spotface
  std::optional<Countersink> countersink;
  std::optional<ScrewHead> screw;
  std::string thread;                        // of a tapped hole, as written
  std::string mate;                          // the named dimension that goes in; empty where none
  std::optional<Dimension> clearance_asked;  // with a mate: the clearance wanted, as limits
};

// The named dimension of the old parts that goes into the hole, whether its size is taken from it or not; empty where none.
[[nodiscard]] std::string mate_of(const Hole& hole);

// A plane milled on one side. Without a region it takes the whole side.
struct Flat {
  struct Region {
    Axis along = Axis::kX;
    Position start;               // the wall
    bool towards_greater = true;  // which way the milled part lies from the wall
  };
  Face side = Face::kTop;
  Dimension leaves;  // from the opposite side as it stands then
  std::optional<Region> region;
};

// Whether speeds, cuts and collar readings of it are worked out by the order of work.
struct Feature;
[[nodiscard]] bool cuts_are_worked_out(const Feature& feature);

struct Feature {
  std::string name;
  std::variant<Hole, Flat, Formed> shape;
  std::string surface = {};  // its roughness Ra as written, "1.6 um"; empty where it is not asked for
};

[[nodiscard]] std::string_view kind_of(const Feature& feature);  // "hole", "flat", "slot", ...
[[nodiscard]] base::Fingerprint fingerprint(const Feature& feature);

// Every dimension of a feature with the local name its figures have below "feature/<name>". A place that comes from the
// mate is none: it is not measured here.
struct NamedDimension {
  std::string local;
  const Dimension* dimension = nullptr;
  std::string from;  // what it is measured from, in words
};
[[nodiscard]] std::vector<NamedDimension> dimensions_of(const Feature& feature);

}  // namespace sparewright::part
