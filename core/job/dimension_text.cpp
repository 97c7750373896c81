#include "core/job/dimension_text.hpp"

#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include "core/formula/expression.hpp"
#include "core/handbook/iso286.hpp"
#include "core/job/parallels.hpp"
#include "core/job/place_text.hpp"
#include "core/job/vocabulary.hpp"

namespace sparewright::job {
namespace {

using base::Code;
using quantity::Kind;
using text::Node;
using text::TableReader;

// A text that starts like a name, or combines numbers with + * or brackets, is a formula; the rest are sizes.
bool is_formula(std::string_view typed) {
  const auto first = typed.find_first_not_of(" \t");
  if (first == std::string_view::npos) return false;
  const auto expression = formula::Expression::read(typed);
  if (expression && !expression->names().empty()) return true;
  const char c = typed[first];
  const bool starts_like_a_name = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_' || c == '(';
  const bool is_drill = typed.substr(first).starts_with("letter ");
  if (starts_like_a_name && !is_drill) return true;
  return expression && typed.find_first_of("*(") != std::string_view::npos;
}

base::Result<formula::Formula> read_formula(std::string_view typed, Kind kind, quantity::UnitSystem system,
                                            const Names& names) {
  const auto expression = formula::Expression::read(typed);
  if (!expression) return tl::unexpected(expression.error());
  const auto kind_of = [&](std::string_view name) -> std::optional<Kind> {
    const auto found = names.dimensions.find(std::string(name));
    if (found == names.dimensions.end()) return std::nullopt;
    return found->second;
  };
  return expression->bind(kind_of, kind, system, names.dimension_names);
}

// The size and, where it is written with it, the tolerance.
void read_size_text(const TableReader& in, const Node& node, part::Dimension& d, const Names& names) {
  const std::string typed(node.typed());
  const auto system = in.system();
  if (is_formula(typed)) {
    auto formula = in.problems().keep(text::located(
        read_formula(typed, d.kind, system.value_or(quantity::UnitSystem::kInch), names), node));
    if (formula) d.size = std::move(*formula);
    return;
  }
  if (const auto size = quantity::read_size(typed, d.kind, system);
      size && std::holds_alternative<quantity::Designation>(*size)) {
    const auto& designation = std::get<quantity::Designation>(*size);
    const auto key = node.key();
    if (const auto drill = drill_size(in, key, designation)) {
      d.size = part::FromTable{drill->base, "drill " + designation.typed};
    }
    return;
  }
  auto sized = in.problems().keep(text::located(quantity::read_sized(typed, d.kind, system), node));
  if (!sized) return;
  d.size = std::move(sized->nominal);
  d.tolerance = std::move(sized->tolerance);
}

void read_instrument_name(const TableReader& in, part::Dimension& d, const Names& names) {
  const auto name = in.text("with");
  if (!name) return;
  d.instrument = *name;
  if (std::find(names.instruments.begin(), names.instruments.end(), *name) != names.instruments.end()) return;
  auto failure = text::failure_at(*in.node().find("with"), Code::kNotInTheShop, *name,
                                  base::known_words(*name, names.instruments));
  failure.subject = "instrument";
  in.problems().add(std::move(failure));
}

// A fit that the handbook does not have for this size is told now, at its place.
void check_fit(const TableReader& in, const Node& node, const part::Dimension& d) {
  const auto* fit = std::get_if<quantity::FitClass>(&d.tolerance.form);
  const auto* typed = std::get_if<quantity::Typed>(&d.size);
  if (fit == nullptr || typed == nullptr) return;
  const auto tabled = part::fit_deviations(fit->name, typed->diameter(), part::CutMakesIt::kLarger);
  if (!tabled) in.problems().add(text::located(tabled.error(), node));
}

void read_tolerance_key(const TableReader& in, part::Dimension& d) {
  const auto node = in.node().find("tol");
  if (!node) return;
  if (!std::holds_alternative<quantity::GeneralTolerance>(d.tolerance.form)) {
    auto failure =
        text::failure_at(*node, Code::kNameTwice, node->typed(), "one tolerance, in size or in tol");
    failure.subject = "tolerance";
    in.problems().add(std::move(failure));
  }
  d.tolerance = in.tolerance("tol", d.kind).value_or(quantity::Tolerance{});
}

void read_table(const TableReader& in, part::Dimension& d, const Names& names) {
  if (const auto size = in.node().find("size")) read_size_text(in, *size, d, names);
  read_tolerance_key(in, d);
  if (const auto duty = in.word("duty", kDuties)) d.duty = *duty;
  read_instrument_name(in, d, names);
}

bool is_known(const TableReader& in, std::string_view key, const std::string& name, const Names& names) {
  if (names.dimensions.count(name) > 0) return true;
  auto failure = text::failure_at(*in.node().find(key), Code::kNotInTheJob, name,
                                  base::known_words(name, names.dimension_names));
  failure.subject = "dimension";
  in.problems().add(std::move(failure));
  return false;
}

part::Dimension empty_dimension(const Node& node, Kind kind, std::string_view jaws) {
  part::Dimension d;
  d.kind = kind;
  d.jaws = jaws;
  d.typed = node.type() == text::Type::kTable ? std::string(node.written()) : std::string(node.typed());
  quantity::Typed none;
  none.kind = kind;
  d.size = none;
  return d;
}

// A clearance may be written with its signs or, where both are more than nothing, without.
std::optional<quantity::Deviations> range_of(const quantity::Tolerance& clearance) {
  if (const auto* signed_range = std::get_if<quantity::Deviations>(&clearance.form)) return *signed_range;
  if (const auto* bare = std::get_if<quantity::WrittenLimits>(&clearance.form))
    return quantity::Deviations{bare->low, bare->high};
  return std::nullopt;
}

// "on" and "mate": the dimension the hole is made to, or checked against.
void read_mate(const TableReader& in, HoleDiameter& hole, const Names& names) {
  const auto on = in.text("on");
  const auto mate = in.text("mate");
  const auto clearance = in.tolerance("clearance", Kind::kLength);
  if (!on && !mate) {
    if (clearance) need_key(in, "on");
    return;
  }
  const char* key = on ? "on" : "mate";
  if (!is_known(in, key, on ? *on : *mate, names)) return;
  if (!in.node().find("clearance")) return need_key(in, "clearance");
  const auto range = clearance ? range_of(*clearance) : std::nullopt;
  if (!range) {
    if (clearance) {
      in.problems().add(text::failure_at(*in.node().find("clearance"), Code::kValueNotAccepted,
                                         clearance->typed,
                                         "a range such as +0.0010 to +0.0020; negative is interference"));
    }
    return;
  }
  if (!in.node().find("duty")) hole.diameter->duty = part::Duty::kFits;
  if (on) {
    if (in.node().find("size")) {
      in.problems().add(text::failure_at(*in.node().find("size"), Code::kValueNotAccepted,
                                         in.node().find("size")->typed(), "either a size with mate, or on"));
    }
    hole.diameter->size = part::OnMate{*on, range->lower, range->upper};
    return;
  }
  hole.mate = *mate;
  part::Dimension asked = empty_dimension(*in.node().find("clearance"), Kind::kLength, "");
  asked.tolerance = *clearance;
  asked.tolerance.form = *range;
  hole.clearance_asked = std::move(asked);
}

}  // namespace

std::optional<part::Dimension> read_signed_dimension(const TableReader& in, std::string_view key, Kind kind,
                                                     std::string_view jaws, const Names& names) {
  const auto node = in.node().find(key);
  if (!node) return std::nullopt;
  part::Dimension d = empty_dimension(*node, kind, jaws);
  if (const auto table = in.table(key)) {
    read_table(*table, d, names);
    const bool sized = table->node().find("size") || table->node().find("on");
    const auto* limits = std::get_if<quantity::WrittenLimits>(&d.tolerance.form);
    if (!sized && limits != nullptr) {  // both limits say the size as well
      quantity::Typed middle = limits->low;
      middle.base = (limits->low.base + limits->high.base) / 2.0;
      d.size = middle;
    } else if (!sized) {
      need_key(*table, "size");
    }
  } else {
    read_size_text(in, *node, d, names);
  }
  check_fit(in, *node, d);
  return d;
}

std::optional<part::Dimension> read_dimension(const TableReader& in, std::string_view key, Kind kind,
                                              std::string_view jaws, const Names& names) {
  auto dimension = read_signed_dimension(in, key, kind, jaws, names);
  const auto* typed = dimension ? std::get_if<quantity::Typed>(&dimension->size) : nullptr;
  if (typed != nullptr && !typed->typed.empty() && !(typed->base > 0.0)) {
    const Node node = *in.node().find(key);
    in.problems().add(text::failure_at(node, Code::kSizeNotPositive, typed->typed, "more than 0"));
  }
  return dimension;
}

std::optional<part::Dimension> read_angle(const TableReader& in, std::string_view key, double above_deg,
                                          double below_deg, const Names& names) {
  auto angle = read_signed_dimension(in, key, Kind::kAngle, "", names);
  const auto* typed = angle ? std::get_if<quantity::Typed>(&angle->size) : nullptr;
  const double degree = quantity::unit::degree.to_base(1.0);
  if (typed != nullptr && !(typed->base > above_deg * degree && typed->base < below_deg * degree)) {
    in.problems().add(
        text::failure_at(*in.node().find(key), Code::kValueNotAccepted, typed->typed,
                         fmt::format("more than {:g} and less than {:g} degrees", above_deg, below_deg)));
    return std::nullopt;
  }
  return angle;
}

HoleDiameter read_hole_diameter(const TableReader& in, const Names& names, std::string_view key) {
  HoleDiameter hole;
  hole.diameter = read_dimension(in, key, Kind::kDiameter, "inside jaws", names);
  if (!hole.diameter) return hole;
  if (const auto table = in.table(key)) read_mate(*table, hole, names);
  return hole;
}

std::optional<part::Position> read_position(const TableReader& in, std::string_view key, part::Axis axis,
                                            const Names& names) {
  auto distance = read_signed_dimension(in, key, Kind::kLength, "outside jaws", names);
  if (!distance) return std::nullopt;
  part::Position position;
  position.distance = std::move(*distance);
  position.from = part::face_at(axis, false);
  const auto table = in.table(key);
  if (!table) return position;
  if (const auto from = table->text("from")) {
    const auto face = part::find_face(*from);
    const bool is_feature =
        std::find(names.features.begin(), names.features.end(), *from) != names.features.end();
    if (face && part::axis_of(*face) == axis) {
      position.from = *face;
    } else if (!face && is_feature) {
      position.from = *from;
    } else {
      std::vector<std::string> known{std::string(part::name_of(part::face_at(axis, false))),
                                     std::string(part::name_of(part::face_at(axis, true)))};
      known.insert(known.end(), names.features.begin(), names.features.end());
      in.problems().add(text::failure_at(*table->node().find("from"), Code::kValueNotAccepted, *from,
                                         base::known_words(*from, known)));
    }
  }
  if (const auto towards = table->word("towards", kFaces)) {
    if (part::axis_of(*towards) != axis || std::holds_alternative<part::Face>(position.from)) {
      in.problems().add(text::failure_at(*table->node().find("towards"), Code::kValueNotAccepted,
                                         part::name_of(*towards),
                                         "from a feature, one of the two sides along this axis"));
    }
    position.towards_smaller = !part::at_greater_end(*towards);
  }
  return position;
}

}  // namespace sparewright::job
