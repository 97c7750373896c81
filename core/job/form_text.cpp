#include "core/job/form_text.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/handbook/metric_threads.hpp"
#include "core/handbook/unified_threads.hpp"
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

std::vector<text::Field> fields_of(const FormRow& row, const text::Shape& dimension,
                                   const text::Shape& position) {
  std::vector<text::Field> fields;
  const bool has_side = !row.in_hole || row.form != part::Form::kRecess;
  if (has_side) {
    auto side = field("side", text::word_of(kFaces))
                    .says(row.round_work ? "the end it is cut from"
                          : row.in_hole  ? "the side it goes towards"
                                         : "the side it is cut from; top where left out");
    fields.push_back(row.round_work || row.in_hole || row.edge ? std::move(side).required()
                                                               : std::move(side));
  }
  if (row.edge) {
    fields.push_back(field("edge", text::word_of(kFaces))
                         .says("the side on the other side of the edge; left out on the rim of a bar's end"));
  }
  if (row.placed) {
    fields.push_back(
        field("at", text::table({field("x", position), field("y", position), field("z", position)}))
            .required()
            .says("its middle, along the two axes that lie in that side"));
  }
  if (row.along)
    fields.push_back(field("along", text::word_of(kAxes))
                         .says("the axis it runs along; the first of its side's where left out"));
  if (row.in_hole)
    fields.push_back(field("in", text::free_text("a hole")).required().says("the hole it belongs to"));
  if (row.form == part::Form::kThread)
    fields.push_back(
        field("thread", text::free_text("a thread")).required().says("3/8-16 UNC-2A, M10x1.5-6g"));
  for (const FormSize& size : row.sizes) {
    auto one = field(key_of(size.name), dimension).says(std::string(size.says));
    fields.push_back(size.required ? std::move(one).required() : std::move(one));
  }
  return fields;
}

// A thread the handbook knows; what it does not is told with what it accepts.
std::string read_thread(const TableReader& in) {
  std::string thread = in.text("thread").value_or("");
  const auto node = in.node().find("thread");
  if (!node || handbook::read_unified_thread(thread)) return thread;
  if (const auto metric = handbook::read_metric_thread(thread); !metric)
    in.problems().add(text::located(metric.error(), *node));
  return thread;
}

void refuse(const TableReader& in, std::string_view key, std::string_view found, std::string accepted) {
  const auto node = in.node().find(key);
  in.problems().add(
      text::failure_at(node.value_or(in.node()), Code::kValueNotAccepted, found, std::move(accepted)));
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
    refuse(in, "edge", part::name_of(*formed.edge),
           fmt::format("a side that meets the {}", part::name_of(formed.side)));
  if (formed.along && *formed.along == part::axis_of(formed.side))
    refuse(in, "along", part::name_of(*formed.along), "an axis that lies in the side");
}

}  // namespace

std::vector<text::Choice> form_choices(const text::Shape& dimension, const text::Shape& position) {
  std::vector<text::Choice> choices;
  for (const FormRow& row : part::forms())
    choices.push_back(
        text::choice(std::string(row.name), std::string(row.says), fields_of(row, dimension, position)));
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
  if (row->placed) formed.at = read_places(in, names, formed.side);
  if (row->in_hole) formed.of = in.text("in").value_or("");
  if (row->form == part::Form::kThread) formed.thread = read_thread(in);
  for (const FormSize& size : row->sizes) {
    if (auto dimension = read_dimension(in, key_of(size.name), size.kind, jaws_of(size), names))
      formed.sizes.emplace(size.name, std::move(*dimension));
  }
  check_side(in, *row, formed, blank);
  return formed;
}

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
      if (formed->form == part::Form::kRecess) formed->side = formed->of_into;
      if (formed->form != part::Form::kRecess &&
          part::axis_of(formed->side) == part::axis_of(formed->of_into))
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
