// A blind thread of no screw that the job names: that there is full thread in it at all, and as much as is usual.
#include <fmt/format.h>

#include "core/handbook/thread_designation.hpp"
#include "core/judge/screw_joint.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

// Of full thread: half a diameter holds nothing to speak of, one diameter is usual in steel. Common practice.
constexpr double kLeastDiameters = 0.5;
constexpr double kUsualDiameters = 1.0;

void judge_blind_thread(Pen& pen, const Subject& subject, const part::Feature& feature,
                        const part::Hole& hole, double major_mm) {
  const route::Printing print(subject.route.system);
  const double lead = lead_and_room_mm(hole);
  const Figure& full = pen.work(
      "full thread", Kind::kLength, "depth less the longest lead of a plug tap and one pitch for chips",
      [lead](auto depth) { return depth - lead; }, pen.ask(part::feature_path(feature.name) + "/depth"));
  pen.judge(
      {.check = "a blind thread has full thread",
       .subject = feature.name,
       .figure = &full,
       .low = &limit(pen, "least full thread", kLeastDiameters * major_mm, Origin::kDefault,
                     "half a diameter (common practice)"),
       .reason = full.value > 0.0 ? fmt::format("{} of full thread is left above the tap's lead; one "
                                                "diameter, {}, is usual",
                                                route::or_not_known(full, print.plain(full.value)),
                                                print.plain(kUsualDiameters * major_mm))
                                  : fmt::format("the hole is no deeper than a plug tap's lead and its "
                                                "chips, {}: there is no full thread",
                                                print.plain(lead)),
       .source = "a plug tap leads in 3 to 5 pitches; one diameter of thread in steel (common practice)",
       .todo = fmt::format("drill {} deep or more, finish with a bottoming tap, or go through",
                           print.plain(lead + kUsualDiameters * major_mm)),
       .margin = "thread margin",
       .close_at_best = full.known() && full.value < kUsualDiameters * major_mm});
}

}  // namespace

void add_blind_thread_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    if (hole == nullptr || !hole->depth || is_tapped_here(*hole)) continue;
    const auto thread = handbook::read_thread(hole->thread);
    if (!thread) continue;
    stages.push_back(check_stage(
        subject, "blind thread", feature.name,
        [subject, feature, hole = *hole, major = handbook::shape_of(*thread).major.base()](Pen& pen) {
          judge_blind_thread(pen, *subject, feature, hole, major);
        }));
  }
}

}  // namespace sparewright::judge
