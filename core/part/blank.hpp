// The piece of stock the part is made from.
#pragma once

#include <array>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/base/hash.hpp"
#include "core/part/face.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::part {

enum class BlankShape { kFlatBar, kBlock, kPlate, kSquareBar, kRoundBar, kHexBar, kTube, kCasting };
[[nodiscard]] std::string_view name_of(BlankShape shape);
[[nodiscard]] std::optional<BlankShape> find_blank_shape(std::string_view name);

// One size of the blank: what it is called, and what it was found to be where it has been measured.
struct BlankSize {
  quantity::Typed nominal;
  std::optional<quantity::Typed> found;
  std::string found_with;       // instrument
  double found_below_mm = 0.0;  // the least and the greatest of several readings, from their mean in `found`
  double found_above_mm = 0.0;
  double mill_lower_mm = 0.0;  // mill limits about the nominal, where they are known
  double mill_upper_mm = 0.0;
  std::string mill_source;  // empty: no mill limits are known for it
};

// The same size across both ways, and given once: round and square bar, and tube.
[[nodiscard]] bool is_one_across(BlankShape shape);
[[nodiscard]] bool is_round(BlankShape shape);  // round bar and tube
// Round, square and hex bar, and tube: they lie along x, and can be turned.
[[nodiscard]] bool is_bar(BlankShape shape);

// A round bar as an indicator sees it, turned in a V-block: lobes that a micrometer goes over without a sign.
struct Lobing {
  int lobes = 3;            // 3, 5, 7: even numbers a micrometer sees
  quantity::Typed v_block;  // included angle
  quantity::Typed swing;    // of the indicator, all of it
  std::string found_with;
};

// A face of a casting as it was found: its lowest spot lies that much below the casting's size there.
struct RoughFace {
  Face side = Face::kTop;
  quantity::Typed uneven;
};

// A hole that is cast in, right through, and the hole that is to clean it up.
struct CoredHole {
  std::string name;
  Face into = Face::kTop;
  std::map<Axis, quantity::Typed>
      at;                    // its middle as found, from left end, front and underside as they are cast
  quantity::Typed diameter;  // its largest as found
  std::string finished_by;   // a feature
};

struct Blank {
  BlankShape shape = BlankShape::kFlatBar;
  std::string material;
  double density_kg_per_mm3 = 0.0;  // 0: not known
  std::string density_source;
  // Along x, y and z. What is one size across has that along y and z (the same entry twice); a hex bar has two of its
  // flats as top and underside, so its size across the flats is along z, and y goes over its corners.
  std::array<BlankSize, 3> sizes;
  std::optional<BlankSize> bore;  // of a tube
  std::optional<Lobing> lobing;   // of a round bar
  std::vector<RoughFace> rough;   // of a casting, as are
  std::vector<CoredHole> cored;
};

[[nodiscard]] base::Fingerprint fingerprint(const Blank& blank);

}  // namespace sparewright::part
