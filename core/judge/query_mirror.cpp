// Drawn from one side, and which one is not said: every length is right in the mirror image too.
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <string>
#include <utility>

#include <fmt/format.h>

#include "core/judge/hand.hpp"
#include "core/judge/queries.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Pen;
using part::Axis;

// The feature a hole is measured from; empty where it is measured from the sides of the work.
std::string measured_from(const part::Hole& hole) {
  if (hole.by_angle) return hole.by_angle->from;
  for (const auto& [axis, position] : hole.at) {
    if (const auto* feature = std::get_if<std::string>(&position.from)) return *feature;
  }
  return "";
}

// The way the keyway of a hole lies: what holds the part at its angle on its shaft.
std::optional<Axis> keyway_along(const part::Part& part, const std::string& hole) {
  for (const part::Feature& feature : part.features) {
    const auto* formed = std::get_if<part::Formed>(&feature.shape);
    if (formed != nullptr && formed->form == part::Form::kKeyway && formed->of == hole)
      return part::axis_of(formed->side);
  }
  return std::nullopt;
}

// A hole as it stands from another one, and how far from there it lies in the mirror image.
struct Offset {
  std::string hole;
  std::string from;
  std::array<Axis, 2> axes{};
  std::array<double, 2> off_mm{};
  double mirrored_mm = 0.0;
};

// With a keyway the image leaves the keyway where it is; without one it is the image that moves the hole less.
Offset offset_of(Pen& pen, const part::Part& part, const part::Feature& feature, const std::string& from) {
  Offset offset{feature.name, from, part::axes_in(std::get<part::Hole>(feature.shape).into), {}, 0.0};
  for (std::size_t i = 0; i < 2; ++i) {
    offset.off_mm.at(i) = pen.need(part::at_path(feature.name, offset.axes.at(i))).value -
                          pen.need(part::at_path(from, offset.axes.at(i))).value;
  }
  const double first = 2.0 * std::abs(offset.off_mm[0]);
  const double second = 2.0 * std::abs(offset.off_mm[1]);
  const auto keyway = keyway_along(part, from);
  offset.mirrored_mm = keyway == offset.axes[0]   ? second
                       : keyway == offset.axes[1] ? first
                                                  : std::min(first, second);
  return offset;
}

std::optional<Offset> farthest_offset(Pen& pen, const Subject& subject) {
  const part::Part& part = subject.route.part;
  std::optional<Offset> most;
  for (const part::Feature& feature : part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    const std::string from = hole == nullptr || hole->around_bar ? "" : measured_from(*hole);
    const part::Feature* other = part::find_feature(part, from);
    const auto* other_hole = other == nullptr ? nullptr : std::get_if<part::Hole>(&other->shape);
    if (other_hole == nullptr || part::axis_of(other_hole->into) != part::axis_of(hole->into)) continue;
    Offset offset = offset_of(pen, part, feature, from);
    if (offset.mirrored_mm > alike_mm(subject) && (!most || offset.mirrored_mm > most->mirrored_mm))
      most = std::move(offset);
  }
  return most;
}

// What stands proud of one side or lies off the middle: why it cannot be turned over. Empty where nothing says so plainly.
std::string one_sided(const part::Part& part) {
  std::string step;
  for (const part::Feature& feature : part.features) {
    if (const auto* formed = std::get_if<part::Formed>(&feature.shape)) {
      const bool is_boss =
          formed->form == part::Form::kProfile && formed->keeps_inside && formed->sizes.contains("depth");
      if (is_boss || formed->form == part::Form::kEccentric) return feature.name;
    }
    const auto* flat = std::get_if<part::Flat>(&feature.shape);
    if (flat != nullptr && flat->region && step.empty()) step = feature.name;
  }
  return step;
}

std::string capital(Axis axis) {
  return axis == Axis::kX ? "X" : axis == Axis::kY ? "Y" : "Z";
}

std::string signed_size(double mm, quantity::UnitSystem system) {
  const quantity::Unit unit = quantity::display_unit(quantity::Kind::kLength, system);
  return quantity::signed_fixed(unit.from_base(mm), system == quantity::UnitSystem::kInch ? 3 : 2);
}

void ask_which_end(Pen& pen, const Subject& subject) {
  const shape::Work work = pen.need_value<shape::Recipe>(part::kRecipe).work();
  if (work.cuts.empty() || is_its_own_mirror_image(subject, work)) return;
  const route::Printing print(subject.route.system);
  const std::string stays = one_sided(subject.route.part);
  const std::string over = stays.empty() ? "turning over does not mend it" : stays + " bars turning over";
  ledger::Query query;
  query.id = "mirror/part";
  query.about = "part/volume";
  query.says = "Which end was seen? Its mirror image is another part";
  query.happens = fmt::format("It may come out mirrored; {}.", over);
  if (const auto offset = farthest_offset(pen, subject)) {
    query.about = part::at_path(offset->hole, offset->axes[1]);
    query.says =
        fmt::format("Which end was seen? {} is {} {}, {} {} from {}", offset->hole, capital(offset->axes[0]),
                    signed_size(offset->off_mm[0], subject.route.system), capital(offset->axes[1]),
                    signed_size(offset->off_mm[1], subject.route.system), offset->from);
    query.happens = fmt::format("Mirrored it lies {} away; {}.", print.plain(offset->mirrored_mm), over);
  }
  query.todo = "Say side_seen.";
  query.serious = true;
  pen.query(std::move(query));
}

}  // namespace

void add_mirror_query(const Shared& subject, Stages& stages) {
  if (subject->drawn_from.empty() || subject->side_seen) return;
  stages.push_back(
      query_stage(subject, "mirror", "part", [subject](Pen& pen) { ask_which_end(pen, *subject); }));
}

}  // namespace sparewright::judge
