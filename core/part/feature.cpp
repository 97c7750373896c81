#include "core/part/feature.hpp"

#include <array>

#include <fmt/format.h>

namespace sparewright::part {
namespace {

struct MakeRow {
  HoleMake make;
  std::string_view name;
};
constexpr std::array kMakes{MakeRow{HoleMake::kDrilled, "drilled"},
                            MakeRow{HoleMake::kBored, "bored"},
                            MakeRow{HoleMake::kReamed, "reamed"},
                            MakeRow{HoleMake::kTapped, "tapped"},
                            MakeRow{HoleMake::kCounterbored, "counterbored"},
                            MakeRow{HoleMake::kSpotfaced, "spotfaced"},
                            MakeRow{HoleMake::kCountersunk, "countersunk"},
                            MakeRow{HoleMake::kThroughAndTapped, "screw through and tapped"}};

struct PlacedRow {
  PlacedBy placed;
  std::string_view name;
};
constexpr std::array kPlaced{PlacedRow{PlacedBy::kCoordinates, "coordinates"},
                             PlacedRow{PlacedBy::kMate, "spotted through the mate"},
                             PlacedRow{PlacedBy::kDrilledTogether, "drilled together with the mate"},
                             PlacedRow{PlacedBy::kDowelled, "dowelled after lining up"}};

void add(base::Hasher& h, const std::optional<Dimension>& dimension) {
  h.add(dimension.has_value());
  if (dimension) h.add(fingerprint(*dimension));
}

void add(base::Hasher& h, const Hole& hole) {
  h.add(static_cast<int>(hole.make)).add(static_cast<int>(hole.into));
  for (const auto& [axis, position] : hole.at) {
    h.add(static_cast<int>(axis));
    add_to(h, position);
  }
  h.add(hole.by_angle.has_value());
  if (hole.by_angle) {
    h.add(hole.by_angle->from).add(fingerprint(hole.by_angle->radius)).add(hole.by_angle->is_diameter);
    h.add(fingerprint(hole.by_angle->angle));
  }
  h.add(hole.lean.has_value());
  if (hole.lean) h.add(static_cast<int>(hole.lean->towards)).add(fingerprint(hole.lean->angle));
  add(h, hole.around_bar);
  h.add(static_cast<int>(hole.placed_by)).add(fingerprint(hole.diameter));
  add(h, hole.mate_hole);
  add(h, hole.depth);
  h.add(hole.countersink.has_value());
  if (hole.countersink)
    h.add(fingerprint(hole.countersink->diameter)).add(fingerprint(hole.countersink->angle));
  h.add(hole.counterbore.has_value());
  if (hole.counterbore)
    h.add(fingerprint(hole.counterbore->diameter)).add(fingerprint(hole.counterbore->depth));
  h.add(hole.screw.has_value());
  if (hole.screw) {
    h.add(hole.screw->designation).add(hole.screw->head_diameter_mm).add(hole.screw->head_height_mm);
    h.add(hole.screw->source).add(static_cast<int>(hole.screw->stands));
    h.add(hole.screw->size).add(hole.screw->length_mm.has_value()).add(hole.screw->length_mm.value_or(0.0));
    h.add(hole.screw->grade).add(hole.screw->torque.has_value());
    h.add(hole.screw->torque.value_or(quantity::Torque()).base());
  }
  add(h, hole.through);
  h.add(hole.beyond.has_value());
  if (hole.beyond) h.add(hole.beyond->gap).add(fingerprint(hole.beyond->tap_drill));
  h.add(hole.thread).add(hole.mate);
  add(h, hole.clearance_asked);
}

void add(base::Hasher& h, const Flat& flat) {
  h.add(static_cast<int>(flat.side)).add(fingerprint(flat.leaves)).add(flat.region.has_value());
  if (!flat.region) return;
  h.add(static_cast<int>(flat.region->along)).add(flat.region->towards_greater);
  add_to(h, flat.region->start);
}

void add(base::Hasher& h, const Formed& formed) {
  h.add(fingerprint(formed));
}

std::string from_words(const Position& position) {
  if (const auto* face = std::get_if<Face>(&position.from)) return std::string(name_of(*face));
  return std::get<std::string>(position.from);
}

}  // namespace

std::string_view name_of(HoleMake make) {
  for (const MakeRow& row : kMakes) {
    if (row.make == make) return row.name;
  }
  return "";
}

std::optional<HoleMake> find_hole_make(std::string_view name) {
  for (const MakeRow& row : kMakes) {
    if (row.name == name) return row.make;
  }
  return std::nullopt;
}

std::string_view name_of(PlacedBy placed) {
  for (const PlacedRow& row : kPlaced) {
    if (row.placed == placed) return row.name;
  }
  return "";
}

std::string mate_of(const Hole& hole) {
  const auto* on = std::get_if<OnMate>(&hole.diameter.size);
  return on != nullptr ? on->mate : hole.mate;
}

bool is_on_axis(const Hole& hole) {
  return hole.at.empty() && !hole.around_bar && axis_of(hole.into) == Axis::kX;
}

bool cuts_are_worked_out(const Feature& feature) {
  if (std::holds_alternative<Flat>(feature.shape)) return true;
  const auto* hole = std::get_if<Hole>(&feature.shape);
  return hole != nullptr && !hole->lean && !hole->around_bar && !hole->countersink &&
         hole->make != HoleMake::kSpotfaced && hole->make != HoleMake::kThroughAndTapped &&
         hole->placed_by == PlacedBy::kCoordinates;
}

std::string_view kind_of(const Feature& feature) {
  if (const auto* formed = std::get_if<Formed>(&feature.shape)) return row_of(formed->form).name;
  return std::holds_alternative<Hole>(feature.shape) ? "hole" : "flat";
}

base::Fingerprint fingerprint(const Feature& feature) {
  base::Hasher h;
  h.add(feature.name).add(kind_of(feature)).add(feature.surface);
  std::visit([&](const auto& shape) { add(h, shape); }, feature.shape);
  return h.done();
}

namespace {

void add_dimensions(const Hole& hole, std::vector<NamedDimension>& all) {
  all.push_back({"diameter", &hole.diameter, ""});
  if (hole.beyond) all.push_back({"tap drill", &hole.beyond->tap_drill, ""});
  const bool is_placed_here = hole.placed_by == PlacedBy::kCoordinates;
  if (hole.by_angle && is_placed_here) {
    all.push_back(
        {hole.by_angle->is_diameter ? "bolt circle" : "radius", &hole.by_angle->radius, hole.by_angle->from});
    all.push_back({"angle", &hole.by_angle->angle, hole.by_angle->from});
  }
  for (const auto& [axis, position] : hole.at) {
    if (is_placed_here) all.push_back({std::string(name_of(axis)), &position.distance, from_words(position)});
  }
  if (hole.around_bar) all.push_back({"around bar", &*hole.around_bar, std::string(name_of(Face::kTop))});
  if (hole.lean) all.push_back({"lean", &hole.lean->angle, std::string(name_of(hole.into))});
  if (hole.depth) all.push_back({"depth", &*hole.depth, std::string(name_of(hole.into))});
  if (hole.counterbore) {
    all.push_back({"counterbore diameter", &hole.counterbore->diameter, ""});
    all.push_back({"counterbore depth", &hole.counterbore->depth, std::string(name_of(hole.into))});
  }
  if (hole.countersink) {
    all.push_back({"countersink diameter", &hole.countersink->diameter, ""});
    all.push_back({"countersink angle", &hole.countersink->angle, ""});
  }
}

}  // namespace

std::vector<NamedDimension> dimensions_of(const Feature& feature) {
  std::vector<NamedDimension> all;
  if (const auto* hole = std::get_if<Hole>(&feature.shape)) {
    add_dimensions(*hole, all);
    return all;
  }
  if (const auto* formed = std::get_if<Formed>(&feature.shape)) {
    for (const auto& [axis, position] : formed->at)
      all.push_back({std::string(name_of(axis)), &position.distance, from_words(position)});
    const auto axes = axes_in(formed->side);
    for (std::size_t i = 0; i < formed->corners.size(); ++i) {
      const ProfileCorner& corner = formed->corners[i];
      const auto local = [&](std::string_view name) { return fmt::format("corner {}/{}", i + 1, name); };
      all.push_back({local(name_of(axes[0])), &corner.first.distance, from_words(corner.first)});
      all.push_back({local(name_of(axes[1])), &corner.second.distance, from_words(corner.second)});
      if (corner.fillet) all.push_back({local("fillet"), &*corner.fillet, ""});
      if (corner.arc) all.push_back({local("arc"), &*corner.arc, ""});
    }
    for (const FormSize& size : row_of(formed->form).sizes) {
      const auto found = formed->sizes.find(size.name);
      if (found != formed->sizes.end())
        all.push_back({std::string(size.name), &found->second, std::string(name_of(formed->side))});
    }
    return all;
  }
  const auto& flat = std::get<Flat>(feature.shape);
  all.push_back({"leaves", &flat.leaves, std::string(name_of(opposite(flat.side)))});
  if (flat.region) all.push_back({"wall", &flat.region->start.distance, from_words(flat.region->start)});
  return all;
}

}  // namespace sparewright::part
