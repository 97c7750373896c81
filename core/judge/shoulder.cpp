// The fillet in a turned shoulder against the corner of what is pushed up to it.
#include <fmt/format.h>

#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Pen;

// A fillet of radius R leads into the shaft R from the shoulder. A part that fits the shaft and has a corner rounded by r,
// or broken by a chamfer of r, meets it R - r from the shoulder and stands off by that.
void judge_shoulder(Pen& pen, const Subject& subject, const part::Feature& feature) {
  const route::Printing print(subject.route.system);
  const std::string path = part::feature_path(feature.name);
  const Figure& fillet = pen.ask(path + "/fillet/most");
  const Figure& corner = pen.ask(path + "/mate corner/least");
  const bool stands_off = fillet.known() && corner.known() && fillet.value > corner.value;
  pen.judge(
      {.check = "mate goes up to the shoulder",
       .subject = feature.name,
       .figure = &fillet,
       .high = &corner,
       .reason = stands_off
                     ? fmt::format("the fillet can be {} and the mate's corner {}: it stands off by {}",
                                   print.plain(fillet.value), print.plain(corner.value),
                                   print.plain(fillet.value - corner.value))
                     : fmt::format("the fillet is at most {} and the mate's corner at least {}",
                                   route::or_not_known(fillet, print.plain(fillet.value)),
                                   route::or_not_known(corner, print.plain(corner.value))),
       .source = "plain geometry: a fillet has to be smaller than the corner that goes over it",
       .todo = fmt::format("make the fillet at most {}, undercut the corner, or break the mate's corner more",
                           route::or_not_known(corner, print.plain(corner.value)))});
}

}  // namespace

void add_shoulder_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* formed = std::get_if<part::Formed>(&feature.shape);
    if (formed == nullptr || !formed->sizes.contains("fillet") || !formed->sizes.contains("mate corner"))
      continue;
    stages.push_back(check_stage(subject, "shoulder", feature.name,
                                 [subject, feature](Pen& pen) { judge_shoulder(pen, *subject, feature); }));
  }
}

}  // namespace sparewright::judge
