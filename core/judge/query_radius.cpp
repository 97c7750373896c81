// A radius given for a diameter, or the other way round: a size near half or double of what it belongs to.
#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <utility>

#include <fmt/format.h>

#include "core/judge/queries.hpp"
#include "core/shape/metal_bounds.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Pen;
using quantity::Kind;

// Nearer than this is near; a fit does not make more of it. A choice made here, without a source.
constexpr double kNear = 0.03;

bool is_near(double a, double b) {
  return std::abs(a - b) <= kNear * std::abs(b);
}

enum class Slip { kHalf, kDouble };

std::optional<Slip> slip_of(double given, double measured) {
  if (is_near(2.0 * given, measured)) return Slip::kHalf;
  if (is_near(given, 2.0 * measured)) return Slip::kDouble;
  return std::nullopt;
}

// Metal that a hole's double and a shaft's half take is gone; the others can still be cut further.
bool is_serious(Slip slip, bool is_hole) {
  return (slip == Slip::kDouble) == is_hole;
}

void ask(Pen& pen, const Subject& subject, const std::string& feature, const Figure& given, Slip slip,
         const std::string& of, const std::string& happens, bool is_hole) {
  const route::Printing print(subject.route.system);
  const double meant = slip == Slip::kHalf ? 2.0 * given.value : given.value / 2.0;
  ledger::Query query;
  query.id = "radius/" + feature;
  query.about = given.name;
  query.says = fmt::format("{} is {}, {} {}", feature, print.fine(given.value),
                           slip == Slip::kHalf ? "half of" : "twice", of);
  query.happens = happens;
  query.todo = fmt::format("Is {} meant, the diameter?", print.fine(meant));
  query.serious = is_serious(slip, is_hole);
  pen.query(std::move(query));
}

// --- a hole and what goes in it -----------------------------------------------------------------------------------------

void ask_of_mate(Pen& pen, const Subject& subject, const part::Feature& feature, const part::Hole& hole) {
  const Figure& mate = pen.need(intent::measured_path(hole.mate));
  const Figure& given = pen.need(part::feature_path(feature.name) + "/diameter");
  const auto slip = slip_of(given.value, mate.value);
  if (!slip) return;
  const route::Printing print(subject.route.system);
  ask(pen, subject, feature.name, given, *slip, fmt::format("{} at {}", hole.mate, print.fine(mate.value)),
      *slip == Slip::kHalf ? "It does not go in." : "It hangs loose in it.", true);
}

// --- a diameter and the old part ----------------------------------------------------------------------------------------

bool is_hole(const part::Feature& feature) {
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  if (formed == nullptr) return true;
  return formed->form == part::Form::kRecess || formed->form == part::Form::kSpringPinHole ||
         formed->form == part::Form::kTaperPinHole || formed->form == part::Form::kCentreHole;
}

// The size across of a feature, as typed; nothing where it is worked out from something measured or tabled.
const part::Dimension* typed_diameter(const part::Feature& feature) {
  for (const part::NamedDimension& named : part::dimensions_of(feature)) {
    if (named.local == "diameter" && named.dimension->kind == Kind::kDiameter &&
        std::holds_alternative<quantity::Typed>(named.dimension->size))
      return named.dimension;
  }
  return nullptr;
}

bool names(const part::Dimension& dimension, const std::string& name) {
  if (const auto* on = std::get_if<part::OnMate>(&dimension.size)) return on->mate == name;
  const auto* formula = std::get_if<formula::Formula>(&dimension.size);
  return formula != nullptr &&
         std::find(formula->names().begin(), formula->names().end(), name) != formula->names().end();
}

// Whether the new part has that size already, by name or by size.
bool is_taken_up(Pen& pen, const Subject& subject, const intent::Original& original, double measured_mm) {
  for (const part::Feature& feature : subject.route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    if (hole != nullptr && hole->mate == original.name) return true;
    for (const part::NamedDimension& named : part::dimensions_of(feature)) {
      if (names(*named.dimension, original.name)) return true;
      if (!quantity::is_length_like(named.dimension->kind)) continue;
      const Figure& size = pen.ask(fmt::format("{}/{}", part::feature_path(feature.name), named.local));
      if (size.known() && is_near(size.value, measured_mm)) return true;
    }
  }
  return false;
}

// A diameter that is half or double a measured one which the new part does not have otherwise, of the same sort: a hole's
// of a hole's. It is not asked where the diameter is near to another measured size.
void ask_of_old_part(Pen& pen, const Subject& subject, const part::Feature& feature) {
  const route::Printing print(subject.route.system);
  const Figure& given = pen.need(part::feature_path(feature.name) + "/diameter");
  const auto wanted = is_hole(feature) ? intent::Role::kHole : intent::Role::kShaft;
  const intent::Original* suspect = nullptr;
  for (const intent::Original& original : subject.originals.all) {
    const Figure& measured = pen.ask(intent::measured_path(original.name));
    if (!measured.known()) continue;
    if (is_near(given.value, measured.value)) return;
    if (original.role == wanted && slip_of(given.value, measured.value) &&
        !is_taken_up(pen, subject, original, measured.value))
      suspect = &original;
  }
  if (suspect == nullptr) return;
  const Figure& measured = pen.need(intent::measured_path(suspect->name));
  const Slip slip = *slip_of(given.value, measured.value);
  ask(pen, subject, feature.name, given, slip,
      fmt::format("{} at {}", suspect->name, print.fine(measured.value)),
      slip == Slip::kHalf ? "It comes out half the old size." : "It comes out twice the old size.",
      wanted == intent::Role::kHole);
}

// --- a turned part and its bar --------------------------------------------------------------------------------------------

// The bar is bought a little larger than what is turned from it: what is turned, doubled, fills it to this part or more.
// A choice made here, without a source.
constexpr double kFills = 0.85;

// Nothing of the part is left larger than half the bar: a bar of half the size would have done.
void ask_of_bar(Pen& pen, const Subject& subject) {
  const part::Part& part = subject.route.part;
  const Figure& bar = pen.need(part::blank_path(part.blank, part::Axis::kY));
  const shape::Bounds metal = shape::metal_bounds(pen.need_value<shape::Recipe>(part::kRecipe).work());
  if (metal.empty()) return;
  const double largest = std::max(metal.size().y, metal.size().z);
  if (2.0 * largest > (1.0 + 1e-6) * bar.value || 2.0 * largest < kFills * bar.value) return;
  for (const part::Feature& feature : part.features) {
    const auto* formed = std::get_if<part::Formed>(&feature.shape);
    if (formed == nullptr || formed->form != part::Form::kTurned) continue;
    const Figure& given = pen.need(part::feature_path(feature.name) + "/diameter");
    if (typed_diameter(feature) == nullptr || std::abs(given.value - largest) > 1e-3 * largest) continue;
    const route::Printing print(subject.route.system);
    return ask(pen, subject, feature.name, given, Slip::kHalf,
               fmt::format("the bar at {}", print.fine(bar.value)), "Most of the bar is turned away.", false);
  }
}

}  // namespace

void add_radius_queries(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    if (typed_diameter(feature) == nullptr) continue;
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    stages.push_back(query_stage(subject, "radius", feature.name, [subject, &feature, hole](Pen& pen) {
      if (hole != nullptr && !hole->mate.empty()) return ask_of_mate(pen, *subject, feature, *hole);
      ask_of_old_part(pen, *subject, feature);
    }));
  }
  if (subject->route.part.blank.shape == part::BlankShape::kRoundBar)
    stages.push_back(query_stage(subject, "radius of the bar", "part",
                                 [subject](Pen& pen) { ask_of_bar(pen, *subject); }));
}

}  // namespace sparewright::judge
