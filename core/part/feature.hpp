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

// kThroughAndTapped: clearance for a screw up to a slit or a split, tapped beyond it.
enum class HoleMake {
  kDrilled,
  kBored,
  kReamed,
  kTapped,
  kCounterbored,
  kSpotfaced,
  kCountersunk,
  kThroughAndTapped
};
[[nodiscard]] std::string_view name_of(HoleMake make);
[[nodiscard]] std::optional<HoleMake> find_hole_make(std::string_view name);

// How the head of a screw is to stand.
enum class HeadStands { kFlushOrBelow, kProud };

// The screw a hole takes. Sizes from the handbook, greatest head first to be safe.
struct ScrewHead {
  std::string designation;                 // "1/4-20 socket head", "5/16-18 x 2 socket head"
  std::string size;                        // "5/16-18", as the handbook reads it
  std::optional<double> length_mm;         // under the head, where the designation gives it
  std::string grade;                       // "A574", "12.9", as written; empty where not said
  std::optional<quantity::Torque> torque;  // it is tightened to, where the job says
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

// What a hole goes on as beyond a slit or a split: tapped for the screw that comes through its near part.
struct TappedBeyond {
  std::string gap;  // the slit or split
  Dimension tap_drill;
};

struct Hole {
  HoleMake make = HoleMake::kDrilled;
  Face into = Face::kTop;  // the side it starts on
  std::map<Axis, Position>
      at;  // the two axes that lie in that side; round a bar the one along it; on its axis none
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
  std::optional<Dimension>
      through;  // of a tapped hole with a screw: what the screw goes through before it, under its head
  std::optional<TappedBeyond> beyond;
  std::string thread;                        // of a tapped hole, as written
  std::string mate;                          // the named dimension that goes in; empty where none
  std::optional<Dimension> clearance_asked;  // with a mate: the clearance wanted, as limits
};

// In an end of a bar and given no place: on the bar's axis.
[[nodiscard]] bool is_on_axis(const Hole& hole);

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
