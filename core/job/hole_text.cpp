#include "core/job/hole_text.hpp"

#include <fmt/format.h>

#include "core/handbook/clearance_holes.hpp"
#include "core/handbook/counterbores.hpp"
#include "core/handbook/socket_head_screws.hpp"
#include "core/handbook/tapping.hpp"
#include "core/job/pattern_text.hpp"
#include "core/job/place_text.hpp"
#include "core/job/vocabulary.hpp"

namespace sparewright::job {
namespace {

using base::Code;
using quantity::Kind;
using text::TableReader;

// How much deeper than the greatest head a counterbore is made, and how much that may vary. Common practice.
constexpr double kBelowFace_mm = 0.010 * 25.4;

part::Dimension tabled(Kind kind, double base, std::string source, std::string typed, std::string_view jaws) {
  part::Dimension d;
  d.kind = kind;
  d.size = part::FromTable{base, std::move(source)};
  d.typed = std::move(typed);
  d.jaws = jaws;
  d.duty = part::Duty::kClears;
  return d;
}

quantity::Tolerance plus_only(double upper_mm, std::string typed) {
  quantity::Typed zero;
  zero.kind = Kind::kLength;
  quantity::Typed upper = zero;
  upper.base = upper_mm;
  return {quantity::Deviations{zero, upper}, std::move(typed)};
}

// "1/4-20 socket head" to "1/4-20"; the only head there is here so far.
std::optional<std::string> screw_size(const TableReader& in) {
  const auto screw = in.text("screw");
  if (!screw) return std::nullopt;
  constexpr std::string_view kHead = " socket head";
  const auto head = screw->find(kHead);
  if (head == std::string::npos) {
    in.problems().add(text::failure_at(*in.node().find("screw"), Code::kValueNotAccepted, *screw,
                                       "a size and its head: 1/4-20 socket head, M6 socket head"));
    return std::nullopt;
  }
  return screw->substr(0, head);
}

void read_screw(const TableReader& in, part::Hole& hole) {
  const auto size = screw_size(in);
  if (!size) return;
  const text::Node node = *in.node().find("screw");
  const auto screw = in.problems().keep(text::located(handbook::socket_head_screw(*size), node));
  if (!screw) return;
  part::ScrewHead head;
  head.designation = *in.text("screw");
  head.head_diameter_mm = screw->knurled_head_max.value_or(screw->head_max).base();
  head.head_height_mm = screw->head_height_max.base();
  head.source = handbook::cite(screw->source);
  head.stands = in.word("head", kHeads).value_or(part::HeadStands::kFlushOrBelow);
  hole.screw = std::move(head);
}

// What the job leaves out of a counterbored hole.
void complete_counterbore(const TableReader& in, const Names& names, part::Hole& hole) {
  part::Counterbore counterbore;
  std::optional<part::Dimension> diameter;
  std::optional<part::Dimension> depth;
  if (const auto table = in.table("counterbore")) {
    diameter = read_dimension(*table, "diameter", Kind::kDiameter, "inside jaws", names);
    depth = read_dimension(*table, "depth", Kind::kLength, "depth rod", names);
  }
  const auto size = hole.screw ? screw_size(in) : std::nullopt;
  if (!diameter && size) {
    const auto row =
        in.problems().keep(text::located(handbook::counterbore(*size), *in.node().find("screw")));
    if (row) {
      diameter = tabled(Kind::kDiameter, row->diameter.base(), handbook::cite(row->source),
                        fmt::format("for {}", hole.screw->designation), "inside jaws");
    }
  }
  if (!depth && size) {
    depth = tabled(Kind::kLength, hole.screw->head_height_mm + kBelowFace_mm,
                   fmt::format("greatest head height, {}, and 0.010 in below the face (common practice)",
                               hole.screw->source),
                   fmt::format("for {}", hole.screw->designation), "depth rod");
    depth->tolerance = plus_only(kBelowFace_mm, "+0.010/-0.000 in (common practice)");
  }
  if (!diameter || !depth) {
    if (in.problems().empty()) need_key(in, in.node().find("screw") ? "counterbore" : "screw");
    return;
  }
  counterbore.diameter = std::move(*diameter);
  counterbore.depth = std::move(*depth);
  hole.counterbore = std::move(counterbore);
}

void complete_body(const TableReader& in, part::Hole& hole) {
  const auto size = hole.screw ? screw_size(in) : std::nullopt;
  if (!size) return need_key(in, "diameter");
  const auto row = in.problems().keep(text::located(
      handbook::clearance_hole(*size, handbook::ClearanceFit::kNormal), *in.node().find("screw")));
  if (!row) return;
  hole.diameter = tabled(Kind::kDiameter, row->hole.base(), handbook::cite(row->source),
                         fmt::format("clearance for {}", hole.screw->designation), "inside jaws");
}

void complete_tap_drill(const TableReader& in, part::Hole& hole) {
  if (hole.thread.empty()) return need_key(in, "thread");
  const auto drill = in.problems().keep(
      text::located(handbook::charted_tap_drill(hole.thread, handbook::TapChartColumn::kNominal75),
                    *in.node().find("thread")));
  if (!drill) return;
  hole.diameter = tabled(Kind::kDiameter, drill->choice.drill.diameter.base(),
                         fmt::format("{}: {}, {:.0f} % of thread", handbook::cite(drill->source),
                                     drill->choice.drill.name, drill->choice.percent),
                         fmt::format("tap drill for {}", hole.thread), "inside jaws");
}

std::optional<part::Counterbore> read_spotface(const TableReader& in, const Names& names) {
  const auto table = in.table("spotface");
  if (!table) {
    need_key(in, "spotface");
    return std::nullopt;
  }
  auto diameter = read_dimension(*table, "diameter", Kind::kDiameter, "inside jaws", names);
  auto depth = read_dimension(*table, "depth", Kind::kLength, "depth rod", names);
  if (!diameter || !depth) return std::nullopt;
  return part::Counterbore{std::move(*diameter), std::move(*depth)};
}

std::optional<part::Countersink> read_countersink(const TableReader& in, const Names& names) {
  const auto table = in.table("countersink");
  if (!table) {
    need_key(in, "countersink");
    return std::nullopt;
  }
  auto diameter = read_dimension(*table, "diameter", Kind::kDiameter, "inside jaws", names);
  auto angle = read_angle(*table, "angle", 10.0, 170.0, names);
  if (!diameter || !angle) return std::nullopt;
  return part::Countersink{std::move(*diameter), std::move(*angle)};
}

// A drill that leans further than this runs along the side rather than into it. A choice made here, without a source.
constexpr double kMostLean_deg = 75.0;

void read_lean(const TableReader& in, const Names& names, part::Hole& hole) {
  const auto table = in.table("leans");
  if (!table) return;
  const auto towards = table->word("towards", kFaces);
  const auto angle = read_angle(*table, "angle", 0.0, kMostLean_deg, names);
  if (!towards || !angle) return;
  if (part::axis_of(*towards) == part::axis_of(hole.into)) {
    in.problems().add(text::failure_at(*table->node().find("towards"), Code::kValueNotAccepted,
                                       part::name_of(*towards),
                                       fmt::format("a side that meets the {}", part::name_of(hole.into))));
    return;
  }
  hole.lean = part::Lean{*towards, *angle};
}

}  // namespace

std::vector<part::Hole> read_holes(const TableReader& in, part::BlankShape blank, const Names& names) {
  part::Hole hole;
  hole.make = in.word("how", kMakes).value_or(part::HoleMake::kDrilled);
  hole.into = in.word("into", kFaces).value_or(part::Face::kTop);
  hole.placed_by = in.word("placed_by", kPlacedBy).value_or(part::PlacedBy::kCoordinates);
  hole.mate_hole = read_dimension(in, "mate_hole", Kind::kDiameter, "inside jaws", names);
  read_lean(in, names, hole);
  hole.depth = read_dimension(in, "depth", Kind::kLength, "depth rod", names);
  hole.thread = in.text("thread").value_or("");
  read_screw(in, hole);
  if (hole.make == part::HoleMake::kCounterbored) complete_counterbore(in, names, hole);
  if (hole.make == part::HoleMake::kSpotfaced) hole.counterbore = read_spotface(in, names);
  if (hole.make == part::HoleMake::kCountersunk) hole.countersink = read_countersink(in, names);
  HoleDiameter read = read_hole_diameter(in, names);
  if (read.diameter) {
    hole.diameter = std::move(*read.diameter);
    hole.mate = std::move(read.mate);
    hole.clearance_asked = std::move(read.clearance_asked);
  } else if (hole.make == part::HoleMake::kTapped) {
    complete_tap_drill(in, hole);
  } else {
    complete_body(in, hole);
  }
  return placed_holes(in, hole, blank, names);
}

}  // namespace sparewright::job
