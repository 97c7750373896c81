#include "core/job/form_text.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/handbook/materials.hpp"
#include "core/handbook/thread_designation.hpp"
#include "core/job/place_text.hpp"
#include "core/job/vocabulary.hpp"

namespace sparewright::job {
namespace {

using base::Code;
using part::FormRow;
using part::FormSize;
using text::field;
using text::TableReader;

// "corner radius" to "corner_radius"
std::string key_of(std::string_view name) {
  std::string key(name);
  std::replace(key.begin(), key.end(), ' ', '_');
  return key;
}

std::string_view jaws_of(const FormSize& size) {
  if (size.name == "depth") return "depth rod";
  return size.cut_makes_it == part::CutMakesIt::kLarger ? "inside jaws" : "outside jaws";
}

constexpr std::array kBushes{text::Meaning{"pressed in", false, "bigger than its hole"},
                             text::Meaning{"bonded", true, "smaller than its hole, with retaining compound"}};
constexpr std::array kTakes{text::Meaning{"inside", false, "milled out"},
                            text::Meaning{"outside", true, "milled round: the inside stays"}};
constexpr std::array kBulges{text::Meaning{"out", true, "the profile is the larger for it"},
                             text::Meaning{"in", false, "the profile is the smaller for it"}};
constexpr std::size_t kMostProfileCorners = 60;

void add_profile_fields(std::vector<text::Field>& fields, const text::Shape& dimension,
                        const text::Shape& position) {
  fields.push_back(field("takes", text::word_of(kTakes)).required().says("what is milled away"));
  fields.push_back(
      field("corner",
            text::list_of(
                text::table({field("x", position), field("y", position), field("z", position),
                             field("fillet", dimension).says("rounds it, touching both its edges"),
                             field("arc", dimension)
                                 .says("radius of the edge to the next corner; straight where left out"),
                             field("bulges", text::word_of(kBulges)).says("of the arc; out where left out")}))
                .at_least(2)
                .at_most(kMostProfileCorners))
          .required()
          .says("its corners in order, along the two axes that lie in its side"));
}

constexpr std::array kFinished{text::Meaning{"open", false, "before the screw closes the slit"},
                               text::Meaning{"clamped", true, "with the screw pulled up as it will be"}};

void add_bush_fields(std::vector<text::Field>& fields) {
  fields.push_back(field("how", text::word_of(kBushes)).required().says("how it is held in its hole"));
  fields.push_back(field("press", text::free_text("a fit class"))
                       .says("s6, p6: its outside is its hole's size in this class"));
  fields.push_back(field("material", text::free_text("a material"))
                       .says("SAE 660, brass C360: what pressing does to it is NOT KNOWN where left out"));
}

std::vector<text::Field> fields_of(const FormRow& row, const text::Shape& dimension,
                                   const text::Shape& position, const text::Shape& bush_bore) {
  std::vector<text::Field> fields;
  if (row.has_side) {
    auto side = field("side", text::word_of(kFaces))
                    .says(row.round_work ? "the end it is cut from"
                          : row.in_hole  ? "the side it goes towards"
                                         : "the side it is cut from; top where left out");
    fields.push_back(row.round_work || row.in_hole || row.edge ? std::move(side).required()
                                                               : std::move(side));
  }
  if (row.towards)
    fields.push_back(
        field("towards", text::word_of(kFaces)).required().says("the side it is thrown towards"));
  if (row.edge) {
    fields.push_back(field("edge", text::word_of(kFaces))
                         .says("the side on the other side of the edge; left out on the rim of a bar's end"));
  }
  if (row.placed) {
    fields.push_back(
        field("at", text::table({field("x", position), field("y", position), field("z", position)}))
            .required()
            .says("its middle, along the two axes that lie in that side; across a bar its middle where left "
                  "out"));
  }
  if (row.along)
    fields.push_back(field("along", text::word_of(kAxes))
                         .says("the axis it runs along; the first of its side's where left out"));
  if (row.in_hole)
    fields.push_back(field("in", text::free_text("a hole")).required().says("the hole it belongs to"));
  if (row.form == part::Form::kThread)
    fields.push_back(
        field("thread", text::free_text("a thread")).required().says("3/8-16 UNC-2A, M10x1.5-6g"));
  if (row.form == part::Form::kBush) add_bush_fields(fields);
  if (row.form == part::Form::kSlit)
    fields.push_back(field("hole_finished", text::word_of(kFinished))
                         .says("when the hole, or the bush in it, gets its size; open where left out"));
  if (row.form == part::Form::kProfile) add_profile_fields(fields, dimension, position);
  for (const FormSize& size : row.sizes) {
    const bool on_mate = row.form == part::Form::kBush && size.name == "bore";
    auto one = field(key_of(size.name), on_mate ? bush_bore : dimension).says(std::string(size.says));
    fields.push_back(size.required ? std::move(one).required() : std::move(one));
  }
  return fields;
}

void refuse(const TableReader& in, std::string_view key, std::string_view found, std::string accepted) {
  const auto node = in.node().find(key);
  in.problems().add(
      text::failure_at(node.value_or(in.node()), Code::kValueNotAccepted, found, std::move(accepted)));
}

// A thread the handbook knows; what it does not is told with what it accepts.
std::string read_thread(const TableReader& in) {
  std::string thread = in.text("thread").value_or("");
  const auto node = in.node().find("thread");
  if (!node || handbook::read_unified_thread(thread) || handbook::read_metric_thread(thread)) return thread;
  const auto other = handbook::read_thread(thread);
  const base::Failure failure =
      other ? base::fail(Code::kNotSupported, thread,
                         "Unified and metric threads, such as 3/8-16 UNC and M8x1.25", "the thread of a form")
                  .value()
            : other.error();
  in.problems().add(text::located(failure, *node));
  return thread;
}

// The outside of a pressed bush by its class; its size is its hole's, and taken when all features are read.
void read_press(const TableReader& in, part::Formed& formed) {
  const auto node = in.node().find("press");
  if (!node && !in.node().find("diameter")) return need_key(in, "diameter");
  if (!node) return;
  const auto tolerance = in.tolerance("press", quantity::Kind::kDiameter);
  if (!tolerance) return;
  if (!std::holds_alternative<quantity::FitClass>(tolerance->form) || formed.is_bonded ||
      in.node().find("diameter"))
    return refuse(in, "press", node->typed(),
                  "a fit class such as s6 of a bush that is pressed in, without a diameter");
  part::Dimension outside;
  outside.kind = quantity::Kind::kDiameter;
  outside.size = quantity::Typed{};
  outside.tolerance = *tolerance;
  outside.typed = node->typed();
  formed.sizes["diameter"] = std::move(outside);
}

void read_bush(const TableReader& in, const Names& names, part::Formed& formed) {
  formed.is_bonded = in.word("how", kBushes).value_or(false);
  read_press(in, formed);
  HoleDiameter bore = read_hole_diameter(in, names, "bore");
  if (bore.diameter) {
    if (const auto* on = std::get_if<part::OnMate>(&bore.diameter->size)) formed.mate = on->mate;
    formed.sizes.insert_or_assign("bore", std::move(*bore.diameter));
  }
  formed.material = in.text("material").value_or("");
  if (formed.material.empty()) return;
  (void)in.problems().keep(
      text::located(handbook::find_material(formed.material), *in.node().find("material")));
}

std::optional<part::Dimension> read_form_size(const TableReader& in, const FormSize& size,
                                              const Names& names) {
  if (size.kind == quantity::Kind::kAngle) return read_angle(in, key_of(size.name), 0.0, 180.0, names);
  return read_dimension(in, key_of(size.name), size.kind, jaws_of(size), names);
}

// ISO 8752 asks for a hole H12 of the pin's nominal diameter (from memory).
void set_spring_pin_limits(part::Formed& formed) {
  const auto diameter = formed.sizes.find("diameter");
  if (diameter == formed.sizes.end()) return;
  quantity::Tolerance& tolerance = diameter->second.tolerance;
  if (!std::holds_alternative<quantity::GeneralTolerance>(tolerance.form)) return;
  tolerance.form = quantity::FitClass{"H12"};
  tolerance.typed = "H12 (ISO 8752, from memory)";
}

// The mate is no size of this part: without limits of its own its corner is taken as written, the least there is.
void set_mate_corner_limits(part::Formed& formed) {
  const auto corner = formed.sizes.find("mate corner");
  if (corner == formed.sizes.end()) return;
  quantity::Tolerance& tolerance = corner->second.tolerance;
  if (!std::holds_alternative<quantity::GeneralTolerance>(tolerance.form)) return;
  quantity::Typed nothing;
  nothing.kind = quantity::Kind::kLength;
  tolerance.form = quantity::Deviations{nothing, nothing};
  tolerance.typed = "as written: the mate's, at the least";
}

void read_profile(const TableReader& in, const Names& names, part::Formed& formed) {
  formed.keeps_inside = in.word("takes", kTakes).value_or(false);
  const auto axes = part::axes_in(formed.side);
  for (const TableReader& table : in.tables("corner")) {
    part::ProfileCorner corner;
    for (const part::Axis axis : axes) {
      auto position = read_position(table, part::name_of(axis), axis, names);
      if (!table.node().find(part::name_of(axis))) need_key(table, part::name_of(axis));
      if (position) (axis == axes[0] ? corner.first : corner.second) = std::move(*position);
    }
    corner.fillet = read_dimension(table, "fillet", quantity::Kind::kRadius, "radius gauge", names);
    corner.arc = read_dimension(table, "arc", quantity::Kind::kRadius, "radius gauge", names);
    corner.bulges = table.word("bulges", kBulges).value_or(true);
    formed.corners.push_back(std::move(corner));
  }
}

// What the blank and the side allow.
void check_side(const TableReader& in, const FormRow& row, const part::Formed& formed,
                part::BlankShape blank) {
  const bool on_end = part::axis_of(formed.side) == part::Axis::kX;
  const bool rim = row.edge && !formed.edge;
  if (row.round_work || rim) {
    if (!part::is_bar(blank))
      refuse(in, rim ? "side" : "kind", rim ? part::name_of(formed.side) : row.name,
             rim ? "an edge towards another side, in edge" : "bar or tube as the blank");
    if (!on_end) refuse(in, "side", part::name_of(formed.side), "left end or right end");
  }
  if (formed.edge && part::axis_of(*formed.edge) == part::axis_of(formed.side))
    refuse(in, row.towards ? "towards" : "edge", part::name_of(*formed.edge),
           fmt::format("a side that meets the {}", part::name_of(formed.side)));
  if (formed.along && *formed.along == part::axis_of(formed.side))
    refuse(in, "along", part::name_of(*formed.along), "an axis that lies in the side");
}

}  // namespace

std::vector<text::Choice> form_choices(const text::Shape& dimension, const text::Shape& position,
                                       const text::Shape& bush_bore) {
  std::vector<text::Choice> choices;
  for (const FormRow& row : part::forms())
    choices.push_back(text::choice(std::string(row.name), std::string(row.says),
                                   fields_of(row, dimension, position, bush_bore)));
  return choices;
}

std::optional<part::Formed> read_form(const TableReader& in, part::BlankShape blank, const Names& names) {
  const auto kind = in.text("kind");
  const auto rows = part::forms();
  const auto row = std::find_if(rows.begin(), rows.end(), [&](const FormRow& r) { return kind == r.name; });
  if (row == rows.end()) return std::nullopt;
  part::Formed formed;
  formed.form = row->form;
  formed.side = in.word("side", kFaces).value_or(part::Face::kTop);
  if (row->edge) formed.edge = in.word("edge", kFaces);
  if (row->along) formed.along = in.word("along", kAxes);
  const bool across_bar = part::is_bar(blank) && part::axis_of(formed.side) != part::Axis::kX;
  if (row->placed)
    formed.at =
        read_places(in, names, formed.side, across_bar ? PlaceAxes::kAcrossBarIfSaid : PlaceAxes::kBoth);
  if (row->in_hole) formed.of = in.text("in").value_or("");
  if (row->form == part::Form::kThread) formed.thread = read_thread(in);
  if (row->towards) formed.edge = in.word("towards", kFaces);
  if (row->form == part::Form::kBush) read_bush(in, names, formed);
  if (row->form == part::Form::kSlit)
    formed.is_finished_clamped = in.word("hole_finished", kFinished).value_or(false);
  if (row->form == part::Form::kProfile) read_profile(in, names, formed);
  for (const FormSize& size : row->sizes) {
    if (formed.sizes.contains(size.name)) continue;
    if (auto dimension = read_form_size(in, size, names))
      formed.sizes.emplace(size.name, std::move(*dimension));
  }
  if (row->form == part::Form::kSpringPinHole) set_spring_pin_limits(formed);
  set_mate_corner_limits(formed);
  check_side(in, *row, formed, blank);
  return formed;
}

void find_chucking_pieces(std::vector<part::Feature>& features) {
  for (const part::Feature& feature : features) {
    const auto* piece = std::get_if<part::Formed>(&feature.shape);
    if (piece == nullptr || piece->form != part::Form::kChuckingPiece) continue;
    for (part::Feature& other : features) {
      auto* formed = std::get_if<part::Formed>(&other.shape);
      if (formed != nullptr && formed->side == piece->side && part::row_of(formed->form).round_work)
        formed->behind_piece = true;
    }
  }
}

namespace {

// The outside of a bush that is given by its class alone: the size of its hole. A class the handbook does not have at that
// size is told, and so is a hole that takes its own size from a mate.
void size_press(const TableReader& in, const part::Hole& hole, part::Formed& bush) {
  const auto outside = bush.sizes.find("diameter");
  if (bush.form != part::Form::kBush || !in.node().find("press") || outside == bush.sizes.end()) return;
  if (std::holds_alternative<part::OnMate>(hole.diameter.size))
    return refuse(in, "press", in.node().find("press")->typed(), "a diameter: its hole is made to a mate");
  outside->second.size = hole.diameter.size;
  const auto* typed = std::get_if<quantity::Typed>(&hole.diameter.size);
  const auto* fit = std::get_if<quantity::FitClass>(&outside->second.tolerance.form);
  if (typed == nullptr || fit == nullptr) return;
  (void)in.problems().keep(
      text::located(part::fit_deviations(fit->name, typed->diameter(), part::CutMakesIt::kSmaller),
                    *in.node().find("press")));
}

}  // namespace

void find_holes(const std::vector<TableReader>& tables, std::vector<part::Feature>& features) {
  std::vector<std::string> holes;
  for (const part::Feature& feature : features) {
    if (std::holds_alternative<part::Hole>(feature.shape)) holes.push_back(feature.name);
  }
  for (std::size_t i = 0; i < features.size(); ++i) {
    auto* formed = std::get_if<part::Formed>(&features[i].shape);
    if (formed == nullptr || formed->of.empty()) continue;
    const auto found = std::find_if(features.begin(), features.end(), [&](const part::Feature& f) {
      return f.name == formed->of && std::holds_alternative<part::Hole>(f.shape);
    });
    if (found != features.end()) {
      formed->of_into = std::get<part::Hole>(found->shape).into;
      size_press(tables[i], std::get<part::Hole>(found->shape), *formed);
      const bool has_side = part::row_of(formed->form).has_side;
      if (!has_side) formed->side = formed->of_into;
      if (has_side && part::axis_of(formed->side) == part::axis_of(formed->of_into))
        refuse(tables[i], "side", part::name_of(formed->side), "a side along the hole, not across it");
      continue;
    }
    auto failure = text::failure_at(tables[i].node().find("in").value_or(tables[i].node()),
                                    Code::kNotInTheJob, formed->of, base::known_words(formed->of, holes));
    failure.subject = "hole";
    tables[i].problems().add(std::move(failure));
  }
}

}  // namespace sparewright::job
