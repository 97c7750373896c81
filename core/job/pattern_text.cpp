#include "core/job/pattern_text.hpp"

#include <algorithm>
#include <numbers>

#include <fmt/format.h>

#include "core/job/place_text.hpp"
#include "core/job/vocabulary.hpp"

namespace sparewright::job {
namespace {

using base::Code;
using quantity::Kind;
using text::field;
using text::TableReader;

constexpr std::int64_t kMostInARow = 200;

// --- how many -----------------------------------------------------------------------------------------------------
// 1 where the count is left out or told as wrong.
std::size_t count_in(const TableReader& in) {
  const std::int64_t count = in.whole("count").value_or(1);
  return count >= 1 && count <= kMostInARow ? static_cast<std::size_t>(count) : 1;
}

void check_count(const TableReader& in) {
  const auto node = in.node().find("count");
  if (!node) return;
  const std::int64_t count = in.whole("count").value_or(2);
  if (count >= 2 && count <= kMostInARow) return;
  in.problems().add(text::failure_at(*node, Code::kValueNotAccepted, node->typed(),
                                     fmt::format("a whole number from 2 to {}", kMostInARow)));
}

std::string numbered(const std::string& name, std::size_t index) {
  return fmt::format("{} {}", name, index + 1);
}

// --- rows and grids -----------------------------------------------------------------------------------------------
struct Row {
  part::Axis axis = part::Axis::kX;
  part::Dimension pitch;
  bool towards_smaller = false;
  std::size_t count = 1;
};

std::optional<Row> read_row(const TableReader& in, part::Face side, const Names& names) {
  check_count(in);
  const auto pitch = read_dimension(in, "pitch", Kind::kLength, "outside jaws", names);
  const auto towards = in.word("towards", kFaces);
  if (!pitch || !towards) return std::nullopt;
  if (part::axis_of(*towards) == part::axis_of(side)) {
    in.problems().add(text::failure_at(*in.node().find("towards"), Code::kValueNotAccepted,
                                       part::name_of(*towards),
                                       fmt::format("a side that meets the {}", part::name_of(side))));
    return std::nullopt;
  }
  return Row{part::axis_of(*towards), *pitch, !part::at_greater_end(*towards), count_in(in)};
}

part::Position along_row(const Row& row, std::size_t step, const std::string& first) {
  part::Position position;
  position.distance = row.pitch;
  position.distance.times = static_cast<int>(step);
  position.from = first;
  position.towards_smaller = row.towards_smaller;
  return position;
}

std::vector<part::Hole> in_rows(const TableReader& in, const part::Hole& first, const std::string& name,
                                const Names& names) {
  std::vector<Row> rows;
  for (const TableReader& table : in.tables("row")) {
    if (auto row = read_row(table, first.into, names)) rows.push_back(std::move(*row));
  }
  if (rows.size() == 2 && rows[0].axis == rows[1].axis) {
    in.problems().add(text::failure_at(*in.node().find("row"), Code::kValueNotAccepted, "two rows one way",
                                       "rows along two different axes: a grid"));
    return {first};
  }
  const std::size_t across = rows.size() < 2 ? 1 : rows[1].count;
  const std::size_t along = rows.empty() ? 1 : rows[0].count;
  std::vector<part::Hole> holes;
  for (std::size_t j = 0; j < across; ++j) {
    for (std::size_t i = 0; i < along; ++i) {
      part::Hole hole = first;
      if (i > 0) hole.at[rows[0].axis] = along_row(rows[0], i, numbered(name, 0));
      if (j > 0) hole.at[rows[1].axis] = along_row(rows[1], j, numbered(name, 0));
      holes.push_back(std::move(hole));
    }
  }
  return holes;
}

// --- by angle -----------------------------------------------------------------------------------------------------
// `key` names another hole, from whose middle radius and angle count.
std::optional<std::string> read_middle(const TableReader& in, const Names& names) {
  const auto around = in.text("around");
  if (!around) return std::nullopt;
  if (std::find(names.features.begin(), names.features.end(), *around) != names.features.end()) return around;
  auto failure = text::failure_at(*in.node().find("around"), Code::kNotInTheJob, *around,
                                  base::known_words(*around, names.features));
  failure.subject = "hole";
  in.problems().add(std::move(failure));
  return std::nullopt;
}

// The place along each axis of the side, worked out from the angle: it keeps the duty and the instrument of the radius.
void set_places(part::Hole& hole) {
  const part::ByAngle& by = *hole.by_angle;
  const auto axes = part::axes_in(hole.into);
  for (const part::Axis axis : axes) {
    part::Position position;
    position.distance.kind = Kind::kLength;
    position.distance.size =
        part::AtAngle{by.is_diameter ? "bolt circle" : "radius", by.is_diameter, axis == axes[1]};
    position.distance.duty = by.radius.duty;
    position.distance.instrument = by.radius.instrument;
    position.distance.jaws = by.radius.jaws;
    position.distance.typed = fmt::format("{} at {}", by.radius.typed, by.angle.typed);
    position.from = by.from;
    hole.at[axis] = std::move(position);
  }
}

std::vector<part::Hole> on_bolt_circle(const TableReader& in, const part::Hole& common, const Names& names) {
  check_count(in);
  const auto middle = read_middle(in, names);
  const auto circle = read_dimension(in, "diameter", Kind::kDiameter, "outside jaws", names);
  auto first = read_signed_dimension(in, "first_angle", Kind::kAngle, "", names);
  if (!first) {
    first.emplace();
    first->kind = Kind::kAngle;
    first->typed = "0 degrees";
    quantity::Typed none;
    none.kind = Kind::kAngle;
    first->size = none;
  }
  const std::size_t count = count_in(in);
  std::vector<part::Hole> holes;
  for (std::size_t i = 0; i < count; ++i) {
    part::Hole hole = common;
    if (middle && circle) {
      part::Dimension angle = *first;
      angle.and_more = 2.0 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(count);
      hole.by_angle = part::ByAngle{*middle, *circle, true, std::move(angle)};
      set_places(hole);
    }
    holes.push_back(std::move(hole));
  }
  return holes;
}

// at = { around = "bore", radius = ..., angle = ... }
void read_by_angle(const TableReader& at, part::Hole& hole, const Names& names) {
  for (const char* key : {"radius", "angle"}) {
    if (!at.node().find(key)) need_key(at, key);
  }
  const auto middle = read_middle(at, names);
  const auto radius = read_dimension(at, "radius", Kind::kRadius, "outside jaws", names);
  const auto angle = read_signed_dimension(at, "angle", Kind::kAngle, "", names);
  for (const char* key : {"x", "y", "z"}) {
    if (const auto extra = at.node().find(key))
      at.problems().add(
          text::failure_at(*extra, Code::kValueNotAccepted, key, "around, radius and angle alone"));
  }
  if (!middle || !radius || !angle) return;
  hole.by_angle = part::ByAngle{*middle, *radius, false, *angle};
  set_places(hole);
}

// --- round a bar --------------------------------------------------------------------------------------------------
std::vector<part::Hole> round_bar(const TableReader& in, const part::Hole& common, part::BlankShape blank,
                                  const Names& names) {
  const text::Node node = *in.node().find("around_bar");
  const TableReader around = *in.table("around_bar");
  check_count(around);
  if (!part::is_bar(blank))
    in.problems().add(
        text::failure_at(node, Code::kValueNotAccepted, "around_bar", "bar or tube as the blank"));
  if (common.into != part::Face::kTop)
    in.problems().add(text::failure_at(node, Code::kValueNotAccepted, part::name_of(common.into),
                                       "top, which the angle counts from"));
  const auto angle = read_signed_dimension(around, "angle", Kind::kAngle, "", names);
  const std::size_t count = count_in(around);
  std::vector<part::Hole> holes;
  for (std::size_t i = 0; angle && i < count; ++i) {
    part::Hole hole = common;
    hole.around_bar = angle;
    hole.around_bar->and_more = 2.0 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(count);
    holes.push_back(std::move(hole));
  }
  if (holes.empty()) holes.push_back(common);
  return holes;
}

std::vector<part::Hole> at_places(const TableReader& in, part::Hole hole, const Names& names) {
  const auto at = in.table("at");
  if (at && at->node().find("around")) {
    read_by_angle(*at, hole, names);
  } else {
    for (const char* key : {"radius", "angle"}) {
      if (at && at->node().find(key)) need_key(*at, "around");
    }
    hole.at = read_places(in, names, hole.into);
  }
  if (!in.node().find("row")) return {hole};
  return in_rows(in, hole, in.text("name").value_or(""), names);
}

// A place that comes from the mate is as good as the mate; a tolerance here would be checked against nothing.
void refuse_duties(const TableReader& in, const part::Hole& hole) {
  if (hole.placed_by == part::PlacedBy::kCoordinates) return;
  for (const auto& [axis, position] : hole.at) {
    const part::Duty duty = position.distance.duty;
    if (duty != part::Duty::kFits && duty != part::Duty::kLocates) continue;
    in.problems().add(text::failure_at(
        *in.node().find("placed_by"), Code::kValueNotAccepted, part::name_of(hole.placed_by),
        fmt::format("a place in {} that is free: the mate locates it", part::name_of(axis))));
  }
}

}  // namespace

std::vector<text::Field> place_fields(const text::Shape& dimension, const text::Shape& position) {
  const auto count = [] { return field("count", text::whole_number()).required().says("how many"); };
  const text::Shape row =
      text::table({count(), field("pitch", dimension).required().says("from one to the next"),
                   field("towards", text::word_of(kFaces)).required().says("the side the row leads to")});
  const text::Shape by_angle = text::table(
      {field("x", position), field("y", position), field("z", position),
       field("around", text::free_text("a hole")).says("by angle and radius: the hole they count from"),
       field("radius", dimension).says("from its middle"),
       field("angle", dimension)
           .says("from +x towards +y on top and underside; in the other sides from the "
                 "first of their two axes towards the second")});
  return {
      field("at", by_angle)
          .says("its place along the two axes that lie in that side; left out on a bolt circle, and in "
                "the end of a bar on its axis"),
      field("row", text::one_of({row, text::list_of(row).at_least(1).at_most(2)}))
          .says("several in a row from this one; two rows are a grid"),
      field("bolt_circle",
            text::table({field("around", text::free_text("a hole")).required().says("the hole in its middle"),
                         field("diameter", dimension).required().says("of the circle"), count(),
                         field("first_angle", dimension).says("of the first one; 0 where left out")}))
          .says("several, spread evenly round a hole"),
      field("around_bar",
            text::table(
                {field("angle", dimension).required().says("from the top towards the back"),
                 field("count", text::whole_number()).says("several, spread evenly; one where left out")}))
          .says("into round work, towards its middle; at then has x alone"),
      field("placed_by", text::word_of(kPlacedBy)).says("coordinates where it is left out")};
}

std::vector<std::string> names_made_by(const TableReader& feature) {
  const std::string name = feature.text("name").value_or("");
  std::size_t count = 1;
  for (const TableReader& row : feature.tables("row"))
    count *= count_in(row);
  for (const char* key : {"bolt_circle", "around_bar"}) {
    if (const auto table = feature.table(key)) count *= count_in(*table);
  }
  if (count == 1) return {name};
  std::vector<std::string> names;
  for (std::size_t i = 0; i < count; ++i)
    names.push_back(numbered(name, i));
  return names;
}

std::vector<part::Hole> placed_holes(const TableReader& in, const part::Hole& common, part::BlankShape blank,
                                     const Names& names) {
  const auto circle = in.table("bolt_circle");
  const auto around = in.table("around_bar");
  if (circle && (in.node().find("at") || in.node().find("row") || around))
    in.problems().add(text::failure_at(circle->node(), Code::kValueNotAccepted,
                                       "bolt_circle with another place",
                                       "one of at, row, bolt_circle, around_bar"));
  if (around && in.node().find("row"))
    in.problems().add(text::failure_at(around->node(), Code::kValueNotAccepted, "around_bar with row",
                                       "one of row and around_bar"));
  if (!circle && !in.node().find("at")) {
    const bool on_axis = part::is_bar(blank) && part::axis_of(common.into) == part::Axis::kX &&
                         !in.node().find("row") && !around && !common.lean;
    if (!on_axis) need_key(in, "at");
    return {common};
  }
  part::Hole hole = common;
  if (around) hole.at = read_places(in, names, hole.into, PlaceAxes::kAlongBarAlone);
  auto holes = circle   ? on_bolt_circle(*circle, hole, names)
               : around ? round_bar(in, hole, blank, names)
                        : at_places(in, hole, names);
  refuse_duties(in, holes.front());
  return holes;
}

}  // namespace sparewright::job
