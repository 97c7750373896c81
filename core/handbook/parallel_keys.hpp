// Parallel keys and their keyseats: inch ASME B17.1 (5/16 to 6-1/2 in shafts), metric DIN 6885-1, whose sizes
// are those of ISO 773 (from memory; 6 to 230 mm).
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/iso286.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

enum class KeySystem { kInch, kMetric };
enum class KeyShape { kSquare, kRectangular };

struct ParallelKey {
  KeySystem system = KeySystem::kInch;
  KeyShape shape = KeyShape::kSquare;
  std::string_view name;    // "1/4 x 3/16", "8 x 7": width by height
  quantity::Diameter over;  // shafts over this
  quantity::Diameter up_to;
  quantity::Length width;
  quantity::Length height;
  std::optional<quantity::Length> shaft_depth;      // metric, t1: from the crest of the shaft
  std::optional<quantity::Length> hub_depth;        // metric, t2: from the crest of the bore
  std::optional<quantity::Length> depth_tolerance;  // metric: the + on both depths
  Source source;
};

// Inch square, inch rectangular, metric; smallest first.
[[nodiscard]] std::span<const ParallelKey> parallel_keys();

// The standard key of a shaft. shape is for inch shafts; a metric shaft has one key. Fails with kNotTabled,
// naming the shafts that have one.
[[nodiscard]] base::Result<ParallelKey> parallel_key(quantity::Diameter shaft, KeySystem system,
                                                     KeyShape shape = KeyShape::kSquare);

// How key and keyseat fit sideways: deviations from the nominal width.
struct KeyWidthFit {
  std::string_view name;      // "class 1, clearance"; "tight"
  std::string_view shaft;     // "N9"; empty for inch
  std::string_view hub;       // "JS9"
  FitDeviations key;          // the bar: h9, or as B17.1 has it
  FitDeviations shaft_width;  // the keyseat in the shaft
  FitDeviations hub_width;    // the keyseat in the hub
  Source source;              // of the choice of zones, and of the inch widths
};

// A length to be held: nominal, and what it may be off.
struct KeyseatMeasure {
  quantity::Length nominal;
  quantity::Length lower;  // deviations from nominal
  quantity::Length upper;
  Source tolerance_source;
};

// A keyseat in a shaft and the one in its hub, for a shaft of exactly that diameter: over the back a shaft
// that is 0.1 mm small measures 0.1 mm less.
struct ParallelKeyseat {
  ParallelKey key;
  quantity::Diameter shaft;
  quantity::Length arc_height;     // from the crest of the shaft to the edges of the keyseat
  quantity::Length side_depth;     // of the keyseat in the shaft, below its edges
  quantity::Length crest_depth;    // the same below the crest: what is fed down from touching the shaft
  KeyseatMeasure over_back;        // bottom of the keyseat to the opposite side of the shaft
  quantity::Length hub_depth;      // of the keyseat in the hub, from the crest of the bore
  KeyseatMeasure hub_over_back;    // bottom of the hub's keyseat to the opposite side of the bore
  quantity::Length top_clearance;  // over the key, all nominal
  std::vector<KeyWidthFit> width_fits;
  Source depth_source;
};

// The keyseat of any key in any shaft wider than it, its own or not (an old machine may have another). Inch:
// half the height at the side, 0.005 in of clearance in the hub (kKeyseatGeometry). Metric: t1 and t2 of the
// key. Fails with kOutsideDomain where the key is as wide as the shaft or the keyseat would go through it,
// or with kNotTabled where the fits of that width are not tabled.
[[nodiscard]] base::Result<ParallelKeyseat> parallel_keyseat(const ParallelKey& key,
                                                             quantity::Diameter shaft);

// Every standard keyseat for a shaft as people write it: "30 mm" (metric, one), "1-1/4 in" (inch: square,
// then rectangular where there is one). Fails as read_shaft_size and
// parallel_key do.
[[nodiscard]] base::Result<std::vector<ParallelKeyseat>> keyseats_for_shaft(std::string_view shaft);

}  // namespace sparewright::handbook
