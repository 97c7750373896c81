// What must be measured while the work is still held, what matters, and what to do if a size is lost.
#include <algorithm>

#include <fmt/format.h>

#include "core/route/bench.hpp"
#include "core/route/touched.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using part::Duty;

void add_size_that_matters(Bench& bench, const part::Feature& feature, const part::NamedDimension& d) {
  bench.sheet.sizes_that_matter.push_back(
      fmt::format("{} {}", what_of(feature, d), room_of(bench.pen, bench.print, feature, d)));
}

// Whether a size of a form grows as metal comes off.
bool form_grows(const part::Feature& feature, const std::string& local) {
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  if (formed == nullptr) return false;
  const auto sizes = part::row_of(formed->form).sizes;
  return std::any_of(sizes.begin(), sizes.end(), [&](const part::FormSize& size) {
    return size.name == local && size.cut_makes_it == part::CutMakesIt::kLarger;
  });
}

void add_if_wrong(Bench& bench, const part::Feature& feature, const part::NamedDimension& d) {
  if (d.dimension->duty != Duty::kFits) return;
  const Figure& least = bench.feature_figure(feature.name, d.local + "/least");
  const Figure& most = bench.feature_figure(feature.name, d.local + "/most");
  if (!most.known()) return;
  const bool is_hole = std::holds_alternative<part::Hole>(feature.shape);
  const bool grows = is_hole || form_grows(feature, d.local) || d.local == "bore";
  bench.sheet.if_wrong.push_back(
      grows
          ? fmt::format(
                "{} over {}: stop, leave it clamped, write down the size found. {} may still save the part.",
                is_hole ? feature.name : fmt::format("{}, {}", feature.name, d.local),
                bench.print.most(most.value, true),
                is_hole ? "A sleeve, or a mate made to it," : "A mate made to it")
          : fmt::format("{} under {}: stop, leave it clamped, write down the size found.", feature.name,
                        bench.print.least(least.value, true)));
}

// The outside of a bush is in its hole by then.
bool is_hidden(const part::Feature& feature, const part::NamedDimension& d) {
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  return formed != nullptr && formed->form == part::Form::kBush && d.local == "diameter";
}

// The coordinates of a hole on a circle: nobody sets or measures them, the circle and the angle are what matters.
bool follows_from_circle(const part::Feature& feature, const part::NamedDimension& d) {
  const auto* hole = std::get_if<part::Hole>(&feature.shape);
  return hole != nullptr && hole->by_angle && (d.local == "x" || d.local == "y" || d.local == "z");
}

// Whether anything is cut here that leaves a burr.
bool cuts_edges(const Bench& bench) {
  return std::any_of(bench.setup.works.begin(), bench.setup.works.end(), [&](const Work& work) {
    const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
    const auto* formed = feature == nullptr ? nullptr : std::get_if<part::Formed>(&feature->shape);
    return feature != nullptr && !work.joins && (formed == nullptr || formed->form != part::Form::kBush);
  });
}

// Whether the setup drills anything that has a place.
bool places_holes(const Bench& bench) {
  return std::any_of(bench.setup.works.begin(), bench.setup.works.end(), [&](const Work& work) {
    const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
    return feature != nullptr && !work.joins && std::holds_alternative<part::Hole>(feature->shape);
  });
}

}  // namespace

void write_before_unclamp(Bench& bench) {
  Touch touch(bench.pen, bench.route.part, bench.print);
  for (const Work& work : bench.setup.works) {
    const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
    if (feature == nullptr || work.joins) continue;
    for (const part::NamedDimension& d : part::dimensions_of(*feature)) {
      if (d.dimension->duty != Duty::kFits && d.dimension->duty != Duty::kLocates) continue;
      if (follows_from_circle(*feature, d)) continue;
      add_size_that_matters(bench, *feature, d);
      if (is_hidden(*feature, d)) continue;
      if (const auto reading = touch.reading(*feature, d))
        bench.sheet.before_unclamp.push_back(fmt::format("{} {}", reading->what, reading->expect));
      add_if_wrong(bench, *feature, d);
    }
  }
  if (cuts_edges(bench)) bench.sheet.before_unclamp.emplace_back("burrs off what is cut here");
  bench.sheet.before_unclamp.emplace_back("nothing else wants this holding");
  if (std::holds_alternative<OnLathe>(bench.setup.held))
    bench.sheet.if_wrong.emplace_back(
        "A size lost: stop, leave it where it is held; write down what was found.");
  else if (!std::holds_alternative<ByMarks>(bench.setup.held) || places_holes(bench))
    bench.sheet.if_wrong.emplace_back(
        "A place more than its limit out: do not drill, do not unclamp; write down what was found.");
  const auto& general = bench.route.part.surroundings.general;
  bench.sheet.the_rest = fmt::format("all others: two places and fractions {}, three places {}",
                                     general.two_places.typed, general.three_places.typed);
}

}  // namespace sparewright::route
