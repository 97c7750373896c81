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

enum class HoleMake { kDrilled, kBored, kReamed, kTapped, kCounterbored };
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

struct Hole {
  HoleMake make = HoleMake::kDrilled;
  Face into = Face::kTop;          // the side it starts on
  std::map<Axis, Position> at;     // the two axes that lie in that side
  Dimension diameter;              // of a tapped hole: the tap drill
  std::optional<Dimension> depth;  // full diameter; none: through
  std::optional<Counterbore> counterbore;
  std::optional<ScrewHead> screw;
  std::string thread;                        // of a tapped hole, as written
  std::string mate;                          // the named dimension that goes in; empty where none
  std::optional<Dimension> clearance_asked;  // with a mate: the clearance wanted, as limits
};

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

struct Feature {
  std::string name;
  std::variant<Hole, Flat, Formed> shape;
};

[[nodiscard]] std::string_view kind_of(const Feature& feature);  // "hole", "flat", "slot", ...
[[nodiscard]] base::Fingerprint fingerprint(const Feature& feature);

// Every dimension of a feature with the local name its figures have below "feature/<name>".
struct NamedDimension {
  std::string local;
  const Dimension* dimension = nullptr;
  std::string from;  // what it is measured from, in words
};
[[nodiscard]] std::vector<NamedDimension> dimensions_of(const Feature& feature);

}  // namespace sparewright::part
