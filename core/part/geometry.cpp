// From figures to geometry: the blank's body, the cutters of each feature, the recipe.
#include <cmath>

#include <fmt/format.h>

#include "core/base/messages.hpp"
#include "core/part/form_cutters.hpp"
#include "core/part/hole_cutters.hpp"
#include "core/part/writing.hpp"
#include "core/shape/cutters.hpp"
#include "core/shape/volume.hpp"

namespace sparewright::part {
namespace {

using quantity::Diameter;
using quantity::Length;

double figure(const Ask& ask, const Feature& feature, std::string_view local) {
  return ask(fmt::format("{}/{}", feature_path(feature.name), local));
}

shape::Point point(const shape::Vector& v) {
  return {v.x, v.y, v.z};
}

shape::Cutter flat_cutter(const Feature& feature, const Flat& flat, const Ask& ask) {
  const Axis axis = axis_of(flat.side);
  const Face closed = opposite(flat.side);
  shape::Vector low;
  shape::Vector high;
  shape::Open open = shape::Open::kNone;
  for (const Face face : kFaces) {
    shape::Vector& corner = at_greater_end(face) ? high : low;
    component(corner, axis_of(face)) = ask(blank_side_path(face));
    if (face != closed) open = open | open_side(face);
  }
  component(at_greater_end(flat.side) ? low : high, axis) =
      figure(ask, feature, fmt::format("at {}", name_of(axis)));
  if (flat.region) {
    const Axis along = flat.region->along;
    component(flat.region->towards_greater ? low : high, along) =
        figure(ask, feature, fmt::format("at {}", name_of(along)));
    const auto wall_side = static_cast<unsigned>(open_side(face_at(along, !flat.region->towards_greater)));
    open = static_cast<shape::Open>(static_cast<unsigned>(open) & ~wall_side);
  }
  return shape::milled_box(feature.name, shape::Frame{}, point(low), point(high), open);
}

void write_volume(ledger::Pen& pen, const Blank& blank, const shape::Recipe& recipe) {
  constexpr double kNormal99 =
      2.5758293035489004;  // half-width of 99 in 100 over the standard deviation, normal
  const shape::RayVolume volume = shape::metal_volume(recipe.work());
  ledger::Root root;
  root.kind = quantity::Kind::kVolume;
  root.value = volume.volume_mm3;
  root.origin = ledger::Origin::kStandard;
  root.source = fmt::format("by {} rays through the exact shapes at nominal size", volume.rays);
  if (volume.error_mm3 > 0.0) root.shares = {{"part/volume/rays", volume.error_mm3 / kNormal99}};
  const ledger::Figure& metal = pen.root("volume", root);
  ledger::Root density;
  density.kind = quantity::Kind::kDensity;
  density.origin = ledger::Origin::kStandard;
  density.source = blank.density_source;
  if (blank.density_kg_per_mm3 > 0.0) density.value = blank.density_kg_per_mm3;
  pen.work(
      "weight", quantity::Kind::kMass, "volume times density", [](auto v, auto d) { return v * d; }, metal,
      pen.root("density", density));
}

}  // namespace

std::vector<shape::Cutter> cutters_of(const Feature& feature, const Ask& ask) {
  if (const auto* hole = std::get_if<Hole>(&feature.shape)) return hole_cutters(feature, *hole, ask);
  if (const auto* formed = std::get_if<Formed>(&feature.shape)) return form_cutters(feature, *formed, ask);
  return {flat_cutter(feature, std::get<Flat>(feature.shape), ask)};
}

shape::Blank blank_body(const Blank& blank, const Ask& ask) {
  const double length = ask(blank_path(blank, Axis::kX));
  const shape::Vector size{length, ask(blank_path(blank, Axis::kY)), ask(blank_path(blank, Axis::kZ))};
  const shape::Point middle{0.0, size.y / 2.0, size.z / 2.0};
  if (is_round(blank.shape)) {
    const auto frame = shape::Frame::along(middle, {1.0, 0.0, 0.0});
    return {std::string(name_of(blank.shape)), shape::Cylinder{frame, size.y / 2.0, length}};
  }
  if (blank.shape == BlankShape::kHexBar) {  // a flat is its top
    const auto frame = shape::Frame::along(middle, {1.0, 0.0, 0.0}, {0.0, 0.0, 1.0});
    return {std::string(name_of(blank.shape)), shape::hexagonal_prism(frame, size.z, length)};
  }
  return {std::string(name_of(blank.shape)), shape::Box{shape::Frame{}, size}};
}

namespace {

// Air that is in the blank from the start.
shape::Cutter cored_hole(const CoredHole& hole, const Ask& ask) {
  const std::string below = fmt::format("blank/cored {}/", hole.name);
  shape::Vector entry;
  component(entry, axis_of(hole.into)) = ask(blank_side_path(hole.into));
  for (const Axis axis : axes_in(hole.into))
    component(entry, axis) = ask(fmt::format("{}at {}", below, name_of(axis)));
  const double through =
      std::abs(ask(blank_side_path(hole.into)) - ask(blank_side_path(opposite(hole.into))));
  return shape::through_hole(hole.name, point(entry), -outward(hole.into),
                             Diameter::from_base(ask(below + "diameter")), Length::from_base(through));
}

}  // namespace

base::Result<shape::Recipe> recipe_of(const Blank& blank, std::span<const Feature* const> made,
                                      const Ask& ask) {
  std::vector<shape::Cutter> cutters;
  if (blank.bore) {
    const double length = ask(blank_path(blank, Axis::kX));
    const double middle = ask(blank_path(blank, Axis::kY)) / 2.0;
    cutters.push_back(shape::through_hole(std::string(name_of(blank.shape)), {0.0, middle, middle},
                                          {1.0, 0.0, 0.0}, Diameter::from_base(ask("blank/bore")),
                                          Length::from_base(length)));
  }
  for (const CoredHole& hole : blank.cored)
    cutters.push_back(cored_hole(hole, ask));
  for (const Feature* feature : made) {
    for (shape::Cutter& cutter : cutters_of(*feature, ask))
      cutters.push_back(std::move(cutter));
  }
  return shape::Recipe::make(blank_body(blank, ask), cutters);
}

void write_geometry(ledger::Pen& pen, const Part& part) {
  const Ask ask = [&](const std::string& name) { return pen.need(name).value; };
  std::vector<const Feature*> made;
  for (const bool flats : {true, false}) {
    for (const Feature& feature : part.features) {
      if (std::holds_alternative<Flat>(feature.shape) == flats) made.push_back(&feature);
    }
  }
  auto recipe = recipe_of(part.blank, made, ask);
  if (!recipe) {
    pen.state({.check = "geometry",
               .subject = recipe.error().subject,
               .state = ledger::State::kNo,
               .reason = base::sentence(recipe.error()),
               .source = "plain geometry",
               .todo = recipe.error().accepted});
    return;
  }
  const base::Fingerprint print = recipe->fingerprint();
  write_volume(pen, part.blank, *recipe);
  pen.publish("recipe", std::move(*recipe), print);
}

}  // namespace sparewright::part
