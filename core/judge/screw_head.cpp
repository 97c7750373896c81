#include <algorithm>
#include <cmath>
#include <vector>

#include <fmt/format.h>

#include "core/judge/ground.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

// Other holes into the same side that the head could reach.
std::vector<const part::Feature*> holes_near(Pen& pen, const part::Part& part, const part::Feature& feature,
                                             const part::Hole& hole) {
  const auto& ground = pen.need_value<Ground>(kGround);
  const auto cuts = ground.recipe->cuts();
  std::vector<const part::Feature*> holes;
  for (std::size_t cut = 0; cut < cuts.size(); ++cut) {
    if (cuts[cut].feature != feature.name) continue;
    for (const auto& [other, gap_mm] : ground.near.within(cut, hole.screw->head_diameter_mm)) {
      const part::Feature* neighbour = part::find_feature(part, cuts[other].feature);
      const auto* near = neighbour == nullptr ? nullptr : std::get_if<part::Hole>(&neighbour->shape);
      if (near != nullptr && near->into == hole.into &&
          std::find(holes.begin(), holes.end(), neighbour) == holes.end())
        holes.push_back(neighbour);
    }
  }
  return holes;
}

// In a counterbore the head needs the counterbore's width, on a plain face twice the way to the nearest edge.
const Figure& width_for_head(Pen& pen, const Subject& subject, const part::Feature& feature,
                             const part::Hole& hole) {
  const std::string path = part::feature_path(feature.name);
  if (hole.counterbore) return pen.ask(path + "/counterbore diameter/least");
  const part::Part& part = subject.route.part;
  const Figure* least = nullptr;
  const auto consider = [&](const Figure& way) {
    if (least == nullptr || !way.known() || way.value < least->value) least = &way;
  };
  for (const part::Axis axis : part::axes_in(hole.into)) {
    const Figure& at = pen.ask(part::at_path(feature.name, axis));
    for (const bool greater : {false, true}) {
      const part::Face side = part::face_at(axis, greater);
      consider(pen.work(
          fmt::format("to {}", part::name_of(side)), Kind::kLength, "axis to the edge of the face",
          [](auto a, auto b) {
            using std::abs;
            return abs(a - b);
          },
          at, pen.ask(part::side_path(part, side))));
    }
  }
  for (const part::Feature* near : holes_near(pen, part, feature, hole)) {
    const part::Feature& other = *near;
    const auto axes = part::axes_in(hole.into);
    consider(pen.work(
        fmt::format("to {}", other.name), Kind::kLength, "axis to the edge of the other hole",
        [](auto ax, auto ay, auto bx, auto by, auto d) {
          using std::sqrt;
          return sqrt((ax - bx) * (ax - bx) + (ay - by) * (ay - by)) - d / 2.0;
        },
        pen.ask(part::at_path(feature.name, axes[0])), pen.ask(part::at_path(feature.name, axes[1])),
        pen.ask(part::at_path(other.name, axes[0])), pen.ask(part::at_path(other.name, axes[1])),
        pen.ask(part::feature_path(other.name) + "/diameter")));
  }
  return pen.work(
      "face across", Kind::kLength, "twice the way to the nearest edge", [](auto w) { return 2.0 * w; },
      *least);
}

void judge_head(Pen& pen, const Subject& subject, const part::Feature& feature, const part::Hole& hole) {
  const route::Printing print(subject.route.system);
  const part::ScrewHead& screw = *hole.screw;
  const Figure& head = limit(pen, "head diameter", screw.head_diameter_mm, Origin::kStandard, screw.source);
  const Figure& width = width_for_head(pen, subject, feature, hole);
  pen.judge(
      {.check = "screw head seats",
       .subject = feature.name,
       .figure = &width,
       .low = &head,
       .reason = fmt::format("the head of a {} screw is up to {} across and has {} {}", screw.designation,
                             print.plain(head.value), route::or_not_known(width, print.plain(width.value)),
                             hole.counterbore ? "of counterbore" : "of plain face"),
       .source = screw.source,
       .todo = hole.counterbore ? fmt::format("counterbore to at least {}", print.plain(head.value))
                                : "move the hole from the edge, use a smaller screw, or leave more face",
       .margin = "head margin"});
  if (screw.stands == part::HeadStands::kProud) return;
  const Figure& height = limit(pen, "head height", screw.head_height_mm, Origin::kStandard, screw.source);
  ledger::Root none;
  none.kind = Kind::kLength;
  none.value = 0.0;
  none.origin = Origin::kChoice;
  none.source = "no counterbore";
  const Figure& depth = hole.counterbore
                            ? pen.ask(part::feature_path(feature.name) + "/counterbore depth/least")
                            : pen.root("no counterbore", none);
  const Figure& below = pen.work(
      "head below", Kind::kLength, "counterbore depth less head height", [](auto d, auto h) { return d - h; },
      depth, height);
  pen.judge({.check = "screw head flush or below",
             .subject = feature.name,
             .figure = &below,
             .low = &limit(pen, "flush", 0.0, Origin::kChoice, "the job asks for flush or below"),
             .reason = below.value < 0 ? fmt::format("the head stands {} proud", print.plain(-below.value))
                                       : fmt::format("the head lies {} below", print.plain(below.value)),
             .source = screw.source,
             .todo = fmt::format("counterbore at least {} deep", print.plain(height.value)),
             .margin = "below margin"});
}

}  // namespace

void add_screw_head_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    if (hole == nullptr || !hole->screw || hole->through) continue;  // its head lies on the mate
    stages.push_back(check_stage(subject, "screw head", feature.name, [subject, feature](Pen& pen) {
      judge_head(pen, *subject, feature, std::get<part::Hole>(feature.shape));
    }));
  }
}

}  // namespace sparewright::judge
