// Reading the dimensions of the new part.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/part/feature.hpp"
#include "core/shop/shop.hpp"
#include "core/survey/reading.hpp"
#include "core/text/reading.hpp"

namespace sparewright::job {

// What dimensions may name.
struct Names {
  std::map<std::string, quantity::Kind> dimensions;  // measured ones, and what each is
  std::vector<std::string> dimension_names;          // the same, for messages
  std::vector<std::string> instruments;
  std::vector<std::string> features;
  // The holes of a row or a bolt circle by the name it is written under: "screws" to "screws 1", "screws 2".
  std::map<std::string, std::vector<std::string>> rows;
};

// The entry at a key, a size, a formula or a table; nothing where the key is not there. jaws: the faces an instrument
// would touch it with. What goes wrong is gathered.
[[nodiscard]] std::optional<part::Dimension> read_dimension(const text::TableReader& in, std::string_view key,
                                                            quantity::Kind kind, std::string_view jaws,
                                                            const Names& names);

// The same for a distance or an angle, which may be 0 or less.
[[nodiscard]] std::optional<part::Dimension> read_signed_dimension(const text::TableReader& in,
                                                                   std::string_view key, quantity::Kind kind,
                                                                   std::string_view jaws, const Names& names);

// An angle between two limits (degrees, both left out); what is outside them is told.
[[nodiscard]] std::optional<part::Dimension> read_angle(const text::TableReader& in, std::string_view key,
                                                        double above_deg, double below_deg,
                                                        const Names& names);

// A hole's diameter: as read_dimension, and made to a mate or checked against one.
struct HoleDiameter {
  std::optional<part::Dimension> diameter;
  std::string mate;
  std::optional<part::Dimension> clearance_asked;
};
[[nodiscard]] HoleDiameter read_hole_diameter(const text::TableReader& in, const Names& names,
                                              std::string_view key = "diameter");

// A position along an axis; usually from the left end, the front or the underside.
[[nodiscard]] std::optional<part::Position> read_position(const text::TableReader& in, std::string_view key,
                                                          part::Axis axis, const Names& names);

}  // namespace sparewright::job
