// Larger than before the cut: an outside size larger than the stock or than what was cut before; a bore smaller than its
// drill, its core or the tube's bore.
#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <utility>

#include <fmt/format.h>

#include "core/judge/queries.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Pen;
using part::Axis;

constexpr double kSame_mm = 1e-6;

void ask(Pen& pen, const std::string& id, const Figure& about, std::string says, std::string happens,
         std::string todo) {
  ledger::Query query;
  query.id = "larger/" + id;
  query.about = about.name;
  query.says = std::move(says);
  query.happens = std::move(happens);
  query.todo = std::move(todo);
  query.serious = true;
  pen.query(std::move(query));
}

// --- turned from a bar ------------------------------------------------------------------------------------------------------

// A form turned outside, from an end, and the local name of its largest diameter; nullptr for all else.
const char* turned_size(part::Form form) {
  switch (form) {
    case part::Form::kTurned:
    case part::Form::kThread:
    case part::Form::kKnurl:
    case part::Form::kGroove:
    case part::Form::kEccentric:
      return "diameter";
    case part::Form::kTaper:
      return "large diameter";
    default:
      return nullptr;
  }
}

// How far the bar reaches all round: over its corners where it has some.
const Figure& over_bar(Pen& pen, const part::Blank& blank) {
  const Figure& most = pen.need(part::blank_path(blank, Axis::kY) + "/most");
  if (blank.shape != part::BlankShape::kSquareBar) return most;
  return pen.work(
      "over corners", quantity::Kind::kLength, "across its sides, times root 2",
      [](auto across) {
        constexpr double kRoot2 = 1.4142135623730951;
        return kRoot2 * across;
      },
      most);
}

void ask_of_bar(Pen& pen, const Subject& subject, const part::Feature& feature, const part::Formed& formed) {
  const route::Printing print(subject.route.system);
  const std::string path = part::feature_path(feature.name);
  const Figure& size = pen.need(fmt::format("{}/{}", path, turned_size(formed.form)));
  const Figure& least = pen.need(size.name.text() + "/least");
  const Figure& bar = over_bar(pen, subject.route.part.blank);
  const bool is_off = formed.form == part::Form::kEccentric;
  const double wanted = least.value + (is_off ? 2.0 * pen.need(path + "/throw").value : 0.0);
  if (wanted <= bar.value + kSame_mm) return;
  ask(pen, feature.name, size,
      fmt::format("{} {} {}, and the bar is {}", feature.name, is_off ? "wants" : "is to be",
                  print.fine(is_off ? wanted : size.value), print.fine(bar.value)),
      "The metal is not there.", "Take a larger bar, or look at the number.");
}

// From where to where a form reaches, from the end.
struct Stretch {
  double from_mm = 0.0;
  double to_mm = 0.0;
};
std::optional<Stretch> stretch_of(Pen& pen, const part::Feature& feature, const part::Formed& formed) {
  if (formed.form == part::Form::kTaper || formed.form == part::Form::kEccentric ||
      turned_size(formed.form) == nullptr)
    return std::nullopt;
  const auto size = [&](std::string_view local) {
    return formed.sizes.contains(local)
               ? pen.need(fmt::format("{}/{}", part::feature_path(feature.name), local)).value
               : 0.0;
  };
  const double from = size("from end");
  return Stretch{from, from + size("length") + size("width")};
}

// What an earlier form of the same end has turned away all along cannot come back.
void ask_of_turned_before(Pen& pen, const Subject& subject, std::size_t index) {
  const auto& features = subject.route.part.features;
  const part::Feature& feature = features[index];
  const auto& formed = std::get<part::Formed>(feature.shape);
  const auto here = stretch_of(pen, feature, formed);
  if (!here) return;
  const Figure& least = pen.need(part::feature_path(feature.name) + "/diameter/least");
  for (std::size_t i = 0; i < index; ++i) {
    const auto* before = std::get_if<part::Formed>(&features[i].shape);
    if (before == nullptr || before->side != formed.side) continue;
    const auto there = stretch_of(pen, features[i], *before);
    if (!there || there->from_mm > here->from_mm + kSame_mm || there->to_mm < here->to_mm - kSame_mm)
      continue;
    const Figure& turned = pen.need(part::feature_path(features[i].name) + "/diameter");
    if (turned.value >= least.value - kSame_mm) continue;
    const route::Printing print(subject.route.system);
    const Figure& size = pen.need(part::feature_path(feature.name) + "/diameter");
    return ask(pen, feature.name, size,
               fmt::format("{} is to be {}, where {} has turned {}", feature.name, print.fine(size.value),
                           features[i].name, print.fine(turned.value)),
               "The metal is gone by then.", "Look at both numbers.");
  }
}

// --- flats --------------------------------------------------------------------------------------------------------------------

void ask_of_flat(Pen& pen, const Subject& subject, std::size_t index) {
  const route::Printing print(subject.route.system);
  const auto& features = subject.route.part.features;
  const auto& flat = std::get<part::Flat>(features[index].shape);
  const std::string path = part::feature_path(features[index].name) + "/leaves";
  const Figure& leaves = pen.need(path);
  const Figure& least = pen.need(path + "/least");
  const Figure* before =
      &pen.need(part::blank_path(subject.route.part.blank, part::axis_of(flat.side)) + "/most");
  std::string what = "the stock is";
  for (std::size_t i = 0; i < index; ++i) {
    const auto* other = std::get_if<part::Flat>(&features[i].shape);
    if (other == nullptr || other->side != flat.side || other->region) continue;
    before = &pen.need(part::feature_path(features[i].name) + "/leaves");
    what = features[i].name + " leaves";
  }
  if (least.value <= before->value + kSame_mm) return;
  ask(pen, features[index].name, leaves,
      fmt::format("{} is to leave {}, and {} {}", features[index].name, print.fine(leaves.value), what,
                  print.fine(before->value)),
      "The metal is not there.", "Take thicker stock, or look at the number.");
}

// --- holes --------------------------------------------------------------------------------------------------------------------

void ask_of_hole(Pen& pen, const Subject& subject, const part::Feature& feature, const Figure& before,
                 const std::string& what, const char* todo) {
  const Figure& most = pen.need(part::feature_path(feature.name) + "/diameter/most");
  if (before.value <= most.value + kSame_mm) return;
  const route::Printing print(subject.route.system);
  const Figure& size = pen.need(part::feature_path(feature.name) + "/diameter");
  ask(pen, feature.name, size,
      fmt::format("{} is to be {}, and {} {}", feature.name, print.fine(size.value), what,
                  print.fine(before.value)),
      "It is too large already.", todo);
}

// The largest drill of a hole that is bored or reamed after it.
void ask_of_drill(Pen& pen, const Subject& subject, const Made& made) {
  const Figure* largest = nullptr;
  std::string name;
  for (const shop::Tool& tool : made.work.tools) {
    if (tool.kind != shop::ToolKind::kTwistDrill || !tool.diameter) continue;
    const Figure& size = pen.ask(
        fmt::format("{}/{}/{} diameter", route::setup_path(made.setup), made.work.feature, tool.name));
    if (!size.known() || (largest != nullptr && largest->value >= size.value)) continue;
    largest = &size;
    name = tool.name;
  }
  if (largest != nullptr)
    ask_of_hole(pen, subject, made.feature, *largest, name + " makes", "Take a smaller drill.");
}

bool is_finished_after_drilling(const part::Hole& hole) {
  return hole.make == part::HoleMake::kBored || hole.make == part::HoleMake::kReamed;
}

// A hole along the tube, where the tube's own bore is.
void ask_of_tube(Pen& pen, const Subject& subject, const part::Feature& feature) {
  const Figure& across = pen.need(part::blank_path(subject.route.part.blank, Axis::kY));
  for (const Axis axis : {Axis::kY, Axis::kZ}) {
    if (std::abs(pen.need(part::at_path(feature.name, axis)).value - across.value / 2.0) > kSame_mm) return;
  }
  ask_of_hole(pen, subject, feature, pen.need("blank/bore"), "the tube's bore is",
              "Take a tube with less bore.");
}

void add_bores(const Shared& subject, Stages& stages) {
  const part::Part& part = subject->route.part;
  for (const Made& made : all_made(*subject)) {
    const part::Hole* hole = made.hole();
    if (hole == nullptr || !is_finished_after_drilling(*hole)) continue;
    stages.push_back(query_stage(subject, "larger drill in " + route::setup_path(made.setup),
                                 made.work.feature,
                                 [subject, made](Pen& pen) { ask_of_drill(pen, *subject, made); }));
  }
  for (const part::CoredHole& cored : part.blank.cored) {
    const part::Feature* feature = part::find_feature(part, cored.finished_by);
    if (feature == nullptr || !std::holds_alternative<part::Hole>(feature->shape)) continue;
    stages.push_back(query_stage(subject, "larger core", cored.name, [subject, &cored, feature](Pen& pen) {
      ask_of_hole(pen, *subject, *feature, pen.need(fmt::format("blank/cored {}/diameter", cored.name)),
                  "its core is", "Look at both numbers.");
    }));
  }
  if (part.blank.shape != part::BlankShape::kTube) return;
  for (const part::Feature& feature : part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    if (hole == nullptr || part::axis_of(hole->into) != Axis::kX || hole->lean) continue;
    stages.push_back(query_stage(subject, "larger tube", feature.name,
                                 [subject, &feature](Pen& pen) { ask_of_tube(pen, *subject, feature); }));
  }
}

}  // namespace

void add_larger_queries(const Shared& subject, Stages& stages) {
  const auto& features = subject->route.part.features;
  for (std::size_t i = 0; i < features.size(); ++i) {
    const part::Feature& feature = features[i];
    if (std::holds_alternative<part::Flat>(feature.shape)) {
      stages.push_back(query_stage(subject, "larger", feature.name,
                                   [subject, i](Pen& pen) { ask_of_flat(pen, *subject, i); }));
      continue;
    }
    const auto* formed = std::get_if<part::Formed>(&feature.shape);
    if (formed == nullptr || turned_size(formed->form) == nullptr ||
        !part::is_bar(subject->route.part.blank.shape))
      continue;
    stages.push_back(query_stage(subject, "larger", feature.name, [subject, &feature, formed](Pen& pen) {
      ask_of_bar(pen, *subject, feature, *formed);
    }));
    stages.push_back(query_stage(subject, "larger than before", feature.name,
                                 [subject, i](Pen& pen) { ask_of_turned_before(pen, *subject, i); }));
  }
  add_bores(subject, stages);
}

}  // namespace sparewright::judge
