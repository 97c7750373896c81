// A setup on a lathe: the machine, how the work is held, where the zeros are, and its works in their order.
#include <algorithm>

#include <fmt/format.h>

#include "core/route/lathe_bench.hpp"
#include "core/route/lathe_works.hpp"

namespace sparewright::route {
namespace {

// A compound goes about so far. Common practice.
constexpr double kCompoundGoes_mm = 60.0;

bool swivels(const Bench& bench, const Work& work) {
  const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
  const auto* formed = feature == nullptr ? nullptr : std::get_if<part::Formed>(&feature->shape);
  if (formed == nullptr) return false;
  return formed->form == part::Form::kTaper ||
         (formed->form == part::Form::kThread &&
          tool_of_kind(work, shop::ToolKind::kThreadingTool) != nullptr);
}

AlongBy along_by(LatheBench& bench) {
  if (lathe_collar(bench, kCarriage) != nullptr) return AlongBy::kCarriage;
  const bool is_turned = bench.on.compound || std::any_of(bench.setup.works.begin(), bench.setup.works.end(),
                                                          [&](const Work& w) { return swivels(bench, w); });
  const bool reaches = bench.farthest_mm <= kCompoundGoes_mm;
  return !is_turned && reaches && lathe_collar(bench, kCompound) != nullptr ? AlongBy::kCompound
                                                                            : AlongBy::kStop;
}

bool is_parted(const part::Feature& feature) {
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  return formed != nullptr && formed->form == part::Form::kChuckingPiece;
}

void find_farthest(LatheBench& bench) {
  for (const Work& work : bench.setup.works) {
    const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
    if (feature == nullptr || work.joins) continue;
    // The free end's edge of a parting tool makes the length: all of its width lies nearer the jaws.
    const shop::Tool* parting = tool_of_kind(work, shop::ToolKind::kPartingTool);
    const double width =
        is_parted(*feature) && parting != nullptr && parting->width ? parting->width->base() : 0.0;
    bench.cut_to_mm = std::max(bench.cut_to_mm, reaches_mm(bench, *feature) + width);
    double tool_goes = bench.cut_to_mm;
    if (width == 0.0 && parting != nullptr && parting->width) tool_goes += parting->width->base();
    const auto* hole = std::get_if<part::Hole>(&feature->shape);
    if (hole != nullptr && hole->depth) {
      const ledger::Figure& depth = bench.feature_figure(feature->name, "depth");
      if (depth.known()) tool_goes = std::max(tool_goes, depth.value);
    }
    bench.farthest_mm = std::max(bench.farthest_mm, tool_goes);
  }
}

}  // namespace

void write_lathe_setup(LatheBench& bench) {
  bench.sheet.dials = {"CROSS READS", "[COMPOUND] READS", "ALONG READS"};
  start_from_work_before(bench);
  find_farthest(bench);
  bench.along_by = along_by(bench);
  write_lathe_machine(bench);
  write_lathe_hold(bench);
  write_lathe_zeros(bench);
  write_lathe_works(bench);
  write_before_unclamp(bench);
  write_cautions(bench);
  write_lathe_cautions(bench);
  write_turned_view(bench);
}

}  // namespace sparewright::route
