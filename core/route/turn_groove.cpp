// A groove turned into the outside: plunged, side by side where the tool is narrower.
#include <cmath>

#include <fmt/format.h>

#include "core/route/lathe_bench.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;

const shop::Tool* grooving_tool(const Work& work) {
  const shop::Tool* tool = tool_of_kind(work, shop::ToolKind::kGroovingTool);
  return tool != nullptr ? tool : tool_of_kind(work, shop::ToolKind::kPartingTool);
}

// Where the tool's edge nearer the headstock stands for each plunge, from the free end: the first, and the others.
struct Plunges {
  std::string others;  // "12.40, 14.20"
  std::string last;
};

// It touched the end with that edge, so the width of the tool counts once at the near side.
// wide_enough: it makes the width by itself, in the middle of the groove.
Plunges plunges(LatheBench& bench, const std::string& feature, const Figure& from_end, const Figure& width,
                double tool_mm, bool wide_enough) {
  const double more = width.value - tool_mm;
  const int count = wide_enough ? 1 : 1 + static_cast<int>(std::ceil(more / tool_mm - 1e-9));
  Plunges all;
  for (int i = 1; i <= count; ++i) {
    const double from_far = count == 1 ? more / 2.0 : more * (count - i) / (count - 1);
    const std::string name = fmt::format("{}/plunge {}", feature, i);
    const Figure& at = along_wanted(bench, name, feature, {&from_end, &width}, from_far);
    const std::string reads = along_reads(bench, name, at);
    if (i < count) {
      all.others += (all.others.empty() ? "" : ", ") + reads;
    } else {
      all.last = reads;
    }
  }
  return all;
}

}  // namespace

void turn_groove(LatheBench& bench, const Work& work, const part::Formed& groove) {
  const std::string& feature = work.feature;
  const shop::Tool* tool = grooving_tool(work);
  const Figure& bottom = size_to_make(bench, feature, "diameter", groove.sizes.find("diameter")->second);
  const Figure& from_end = size_to_make(bench, feature, "from end", groove.sizes.find("from end")->second);
  const Figure& width = size_to_make(bench, feature, "width", groove.sizes.find("width")->second);
  const double start = bench.feature_figure(feature, "starts at").value + bench.way() * from_end.value;
  const Figure* stands = bench.outside.largest(start, start + bench.way() * width.value);
  const bool fits = tool != nullptr && tool->width && width.known() &&
                    tool->width->base() <= bench.feature_figure(feature, "width/most").value;
  if (!fits || stands == nullptr || !bottom.known()) {
    bench.add_line(feature + ": groove").expect = "NOT KNOWN";
    return;
  }
  touch(bench, *tool, *stands);
  const Plunges at = plunges(bench, feature, from_end, width, tool->width->base(),
                             tool->width->base() >= bench.feature_figure(feature, "width/least").value);
  const std::string name = fmt::format("{}/{}", feature, tool->name);
  const CrossReading in =
      cross_reads(bench, feature + "/bottom", bottom, bench.feature_figure(feature, "diameter/least").value);
  Line& line = bench.add_line(
      fmt::format("{}: groove, plunge to AIM {}{}", feature, bench.print.plain(bottom.value),
                  at.others.empty() ? std::string()
                                    : fmt::format(", first along at {}, then as it reads here", at.others)));
  line.x_reads = in.reads;
  line.z_reads = at.last;
  line.rpm = rpm_text(bench, name, *tool, handbook::Operation::kParting, stands->value);
  line.feed = "hand, oil";
  line.expect = fmt::format("{}, {} wide", limits_of(bench, feature, "diameter", false),
                            limits_of(bench, feature, "width", false));
  line.to_fill = true;
}

}  // namespace sparewright::route
