#include "core/job/hole_text.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/handbook/clearance_holes.hpp"
#include "core/handbook/counterbores.hpp"
#include "core/handbook/tapping.hpp"
#include "core/job/pattern_text.hpp"
#include "core/job/place_text.hpp"
#include "core/job/screw_text.hpp"
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

// A key that a screw would have stood in for; one that cannot be read has been told.
void need_unless_screw(const TableReader& in, std::string_view key) {
  if (!in.node().find("screw")) need_key(in, key);
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
  if (!diameter && hole.screw) {
    const auto row =
        in.problems().keep(text::located(handbook::counterbore(hole.screw->size), *in.node().find("screw")));
    if (row) {
      diameter = tabled(Kind::kDiameter, row->diameter.base(), handbook::cite(row->source),
                        fmt::format("for {}", hole.screw->designation), "inside jaws");
    }
  }
  if (!depth && hole.screw) {
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
  if (!hole.screw) return need_unless_screw(in, "diameter");
  const auto row = in.problems().keep(text::located(
      handbook::clearance_hole(hole.screw->size, handbook::ClearanceFit::kNormal), *in.node().find("screw")));
  if (!row) return;
  hole.diameter = tabled(Kind::kDiameter, row->hole.base(), handbook::cite(row->source),
                         fmt::format("clearance for {}", hole.screw->designation), "inside jaws");
}

// The charted one of the thread, which stands at `key`.
std::optional<part::Dimension> tap_drill(const TableReader& in, const std::string& thread,
                                         std::string_view key) {
  const auto drill = in.problems().keep(text::located(
      handbook::charted_tap_drill(thread, handbook::TapChartColumn::kNominal75), *in.node().find(key)));
  if (!drill) return std::nullopt;
  return tabled(Kind::kDiameter, drill->choice.drill.diameter.base(),
                fmt::format("{}: {}, {:.0f} % of thread", handbook::cite(drill->source),
                            drill->choice.drill.name, drill->choice.percent),
                fmt::format("tap drill for {}", thread), "inside jaws");
}

void complete_tap_drill(const TableReader& in, part::Hole& hole) {
  if (hole.thread.empty()) return need_unless_screw(in, "thread");
  const bool has_thread = in.node().find("thread").has_value();
  if (auto drill = tap_drill(in, hole.thread, has_thread ? "thread" : "screw"))
    hole.diameter = std::move(*drill);
}

// The screw of a tapped hole comes through something first, and says the thread where that is left out.
void read_tapped_screw(const TableReader& in, const Names& names, part::Hole& hole) {
  if (!hole.screw) return;
  hole.through = read_dimension(in, "through", Kind::kLength, "outside jaws", names);
  if (!in.node().find("through")) need_key(in, "through");
  if (hole.thread.empty()) hole.thread = hole.screw->size;
}

// What a hole that is tapped beyond a slit or split is there; its gap is looked up when all features are read.
void read_beyond(const TableReader& in, const Names& names, part::Hole& hole) {
  if (!hole.screw) return need_unless_screw(in, "screw");
  hole.thread = hole.screw->size;
  auto drill = read_dimension(in, "tap_drill", Kind::kDiameter, "inside jaws", names);
  if (!drill) drill = tap_drill(in, hole.thread, "screw");
  if (drill) hole.beyond = part::TappedBeyond{in.text("across").value_or(""), std::move(*drill)};
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
  hole.screw = read_screw(in);
  const bool is_through_and_tapped = hole.make == part::HoleMake::kThroughAndTapped;
  if (hole.make == part::HoleMake::kTapped) read_tapped_screw(in, names, hole);
  if (is_through_and_tapped) read_beyond(in, names, hole);
  // A head that may stand proud of a hole through a slit needs no counterbore.
  const bool sunk = !is_through_and_tapped || in.node().find("counterbore") ||
                    (hole.screw && hole.screw->stands == part::HeadStands::kFlushOrBelow);
  if (hole.make == part::HoleMake::kCounterbored || (is_through_and_tapped && sunk))
    complete_counterbore(in, names, hole);
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

namespace {

// The axis across which a slit or a split opens; none of anything else.
std::optional<part::Axis> opens_across(const part::Feature& feature) {
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  if (formed == nullptr) return std::nullopt;
  if (formed->form == part::Form::kSplit) return part::axis_of(formed->side);
  if (formed->form != part::Form::kSlit) return std::nullopt;
  for (const part::Axis axis : part::kAxes) {
    if (axis != part::axis_of(formed->side) && axis != part::axis_of(formed->of_into)) return axis;
  }
  return std::nullopt;
}

}  // namespace

void find_gaps(const std::vector<TableReader>& tables, std::vector<part::Feature>& features) {
  for (std::size_t i = 0; i < features.size(); ++i) {
    auto* hole = std::get_if<part::Hole>(&features[i].shape);
    if (hole == nullptr || !hole->beyond) continue;
    std::vector<std::string> gaps;  // those that lie across it
    for (const part::Feature& feature : features) {
      if (opens_across(feature) == part::axis_of(hole->into)) gaps.push_back(feature.name);
    }
    std::string& gap = hole->beyond->gap;
    if (gap.empty() && gaps.size() == 1) gap = gaps.front();
    if (std::find(gaps.begin(), gaps.end(), gap) != gaps.end()) continue;
    const text::Node node = tables[i].node().find("across").value_or(tables[i].node());
    auto failure = text::failure_at(node, Code::kNotInTheJob, gap.empty() ? "nothing" : gap,
                                    base::known_words(gap, gaps));
    failure.subject = "slit or split across the hole";
    tables[i].problems().add(std::move(failure));
  }
}

}  // namespace sparewright::job
