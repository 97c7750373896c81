// A thread cut with a single-point tool: the compound half a degree inside the flank, its collar pass by pass.
#include <cmath>

#include <fmt/format.h>

#include "core/handbook/single_point_threads.hpp"
#include "core/route/lathe_bench.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;
using quantity::Length;

// Of the turning speed: the hand has to stop the tool in time. Common practice.
constexpr double kShareOfSpeed = 0.25;

std::string pitch_words(const LatheBench& bench, const handbook::ThreadDepth& depth) {
  return bench.print.system() == quantity::UnitSystem::kInch
             ? fmt::format("{:.4g} tpi", 25.4 / depth.pitch.base())
             : fmt::format("{:.4g} mm pitch", depth.pitch.base());
}

// What the compound's collar shows after each pass, and how many passes more without infeed.
struct Passes {
  std::string readings;
  std::string last;
  int without_infeed = 0;
};

Passes dial_passes(LatheBench& bench, const std::string& feature, const handbook::PassPlan& plan) {
  const shop::Collar* collar = lathe_collar(bench, kCompound);
  Passes passes;
  for (const handbook::ThreadPass& pass : plan.passes) {
    if (pass.spring) {
      ++passes.without_infeed;
      continue;
    }
    const Figure& slide =
        bench.choice(fmt::format("{}/pass {}", feature, pass.number), Kind::kLength, pass.slide_total.base(),
                     "the slide from the touch, chips of one area");
    std::string reads = bench.print.fine(slide.value);
    if (collar != nullptr) {
      const double shows = collar->reads == shop::CollarReads::kDiameter ? 2.0 : 1.0;
      reads = shop::printed(
          shop::collar_reading(*collar, Length::from_base(shows * slide.value), shop::feeds_in(*collar)));
    }
    if (!passes.last.empty()) passes.readings += (passes.readings.empty() ? "" : ", ") + passes.last;
    passes.last = reads;
  }
  return passes;
}

}  // namespace

void cut_single_point(LatheBench& bench, const Work& work, const part::Formed& formed,
                      const shop::Tool& tool) {
  const auto thread = handbook::read_thread(formed.thread);
  if (!thread) return;  // refused when the text was read
  const handbook::ThreadDepth depth = handbook::thread_depth(*thread, handbook::ThreadSide::kScrew);
  handbook::PassOptions options;
  options.compound_angle = handbook::usual_compound_angle(depth);
  const auto plan = handbook::plan_passes(depth, options);
  const Figure& major = size_to_make(bench, work.feature, "diameter", formed.sizes.find("diameter")->second);
  if (!plan || !major.known()) {
    bench.add_line(work.feature + ": thread").expect = "NOT KNOWN";
    return;
  }
  ledger::Root deep;
  deep.kind = Kind::kLength;
  deep.value = plan->depth.depth.base();
  deep.origin = ledger::Origin::kStandard;
  deep.source = handbook::cite(plan->depth.source);
  bench.pen.root(work.feature + "/thread depth", deep);
  bench.choice(work.feature + "/compound angle", Kind::kAngle, plan->compound_angle.base(),
               "from square: half a degree less than half the flank angle (common practice)");
  say_with_tool(
      bench, tool,
      fmt::format(
          "{}: {}, [compound] {:.1f} degrees from square, towards the tail; tool square by the gauge, at "
          "[center] height. Touch the {}: cross and [compound] to 0. Cross out and back to 0 each pass. "
          "First "
          "pass, a scratch: look at the pitch before the next.",
          work.feature, pitch_words(bench, plan->depth), plan->compound_angle.in(quantity::unit::degree),
          bench.print.fine(major.value)));
  const Passes passes = dial_passes(bench, work.feature, *plan);
  Line& line = bench.add_line(
      fmt::format("{}: thread {}, [compound] at {}, then as it reads here; {} more without infeed",
                  work.feature, formed.thread, passes.readings, passes.without_infeed));
  line.x_reads = "0";
  line.y_reads = passes.last;
  line.rpm = rpm_text(bench, fmt::format("{}/{}", work.feature, tool.name), tool,
                      handbook::Operation::kTurningRough, major.value, kShareOfSpeed);
  line.feed = pitch_words(bench, plan->depth);
  line.expect = "its nut goes on";
  line.to_fill = true;
  forget_touch(bench);
}

}  // namespace sparewright::route
