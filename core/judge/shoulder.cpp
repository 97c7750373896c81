// The fillet in a turned shoulder, or the nose of the tool that turns it, against the corner of what is pushed up to it.
#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;

// Noses tools are bought with. ISO 1832 (from memory) in millimetres; inch tools have 1/64, 1/32, 3/64 in, the like of
// them.
constexpr std::array kNoses_mm{0.2, 0.4, 0.8, 1.2, 1.6, 2.4};

// The tool that turns it, where the order of work says one; a nose larger than the fillet leaves its own.
const shop::Tool* turned_with(const Subject& subject, const std::string& feature) {
  for (const Made& made : all_made(subject)) {
    if (made.feature.name != feature || !made.on_lathe()) continue;
    const auto tool = std::find_if(made.work.tools.begin(), made.work.tools.end(), [](const shop::Tool& t) {
      return t.kind == shop::ToolKind::kTurningTool && t.nose_radius.has_value();
    });
    if (tool != made.work.tools.end()) return &*tool;
  }
  return nullptr;
}

struct Corner {
  const Figure* radius = nullptr;
  std::string what;  // "the fillet can be", "R1.2 turning tool has a nose of"
  bool is_nose = false;
};

Corner corner_left(Pen& pen, const Subject& subject, const part::Feature& feature, bool has_fillet) {
  const shop::Tool* tool = turned_with(subject, feature.name);
  const Figure* fillet = has_fillet ? &pen.ask(part::feature_path(feature.name) + "/fillet/most") : nullptr;
  const bool nose_counts =
      tool != nullptr && (fillet == nullptr || !fillet->known() || tool->nose_radius->base() > fillet->value);
  if (!nose_counts) return {fillet, "the fillet can be", false};
  return {
      &limit(pen, "nose of the tool", tool->nose_radius->base(), Origin::kChoice, "the shop, " + tool->name),
      fmt::format("the nose of {} is", tool->name), true};
}

std::string what_to_do(const route::Printing& print, const Figure& corner, bool is_nose) {
  const std::string least = route::or_not_known(corner, print.plain(corner.value));
  if (!is_nose)
    return fmt::format("make the fillet at most {}, undercut the corner, or break the mate's corner more",
                       least);
  double nose = 0.0;
  for (const double one : kNoses_mm) {
    if (corner.known() && one < corner.value) nose = one;
  }
  return nose > 0.0 ? fmt::format("use a tool with a nose of {} or less, or undercut the corner",
                                  print.nominal(nose))
                    : "undercut the corner";
}

// A fillet of radius R leads into the shaft R from the shoulder. A part that fits the shaft and has a corner rounded by r,
// or broken by a chamfer of r, meets it R - r from the shoulder and stands off by that. Without an undercut the corner is
// never sharper than the nose of the tool.
void judge_shoulder(Pen& pen, const Subject& subject, const part::Feature& feature, bool has_fillet) {
  const route::Printing print(subject.route.system);
  const Corner left = corner_left(pen, subject, feature, has_fillet);
  const Figure& corner = pen.ask(part::feature_path(feature.name) + "/mate corner/least");
  const Figure& radius = *left.radius;
  const bool stands_off = radius.known() && corner.known() && radius.value > corner.value;
  const std::string radius_text = route::or_not_known(radius, print.plain(radius.value));
  pen.judge({.check = "mate goes up to the shoulder",
             .subject = feature.name,
             .figure = &radius,
             .high = &corner,
             .reason = stands_off ? fmt::format("{} {} and the mate's corner {}: it stands off by {}",
                                                left.what, radius_text, print.plain(corner.value),
                                                print.plain(radius.value - corner.value))
                       : left.is_nose
                           ? fmt::format("{} {} and the mate's corner at least {}", left.what, radius_text,
                                         route::or_not_known(corner, print.plain(corner.value)))
                           : fmt::format("the fillet is at most {} and the mate's corner at least {}",
                                         radius_text, route::or_not_known(corner, print.plain(corner.value))),
             .source = "plain geometry: a fillet has to be smaller than the corner that goes over it",
             .todo = what_to_do(print, corner, left.is_nose)});
}

}  // namespace

void add_shoulder_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* formed = std::get_if<part::Formed>(&feature.shape);
    if (formed == nullptr || !formed->sizes.contains("mate corner")) continue;
    const bool has_fillet = formed->sizes.contains("fillet");
    if (!has_fillet && turned_with(*subject, feature.name) == nullptr) continue;
    stages.push_back(check_stage(subject, "shoulder", feature.name, [subject, feature, has_fillet](Pen& pen) {
      judge_shoulder(pen, *subject, feature, has_fillet);
    }));
  }
}

}  // namespace sparewright::judge
