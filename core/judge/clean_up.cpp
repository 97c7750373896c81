#include <cmath>

#include <fmt/format.h>

#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

// Less than this does not cut all over but rubs and skips. Common practice.
constexpr double kLeastCut_mm = 0.003 * 25.4;

void judge_clean_up(Pen& pen, const Subject& subject, const part::Feature& feature, const part::Flat& flat) {
  const route::Printing print(subject.route.system);
  const part::Axis axis = part::axis_of(flat.side);
  const std::string size = part::blank_path(subject.route.part.blank, axis);
  const std::string path = part::feature_path(feature.name);
  // The smallest blank the mill may sell, and the largest part: least metal to come off.
  const Figure& metal = pen.work(
      "metal", Kind::kLength,
      "side of the blank to the flat, the blank at its least and the part at its most",
      [](auto side, auto at, auto nominal_blank, auto least_blank, auto leaves, auto most_leaves) {
        using std::abs;
        return abs(side - at) - (nominal_blank - least_blank) - (most_leaves - leaves);
      },
      pen.ask(fmt::format("blank/{}", part::name_of(flat.side))), pen.ask(part::at_path(feature.name, axis)),
      pen.ask(size), pen.ask(size + "/least"), pen.ask(path + "/leaves"), pen.ask(path + "/leaves/most"));
  const Figure& least = limit(pen, "least cut", kLeastCut_mm, Origin::kDefault, "common practice");
  // A flat on the wrong side of the blank's surface takes nothing: say so with its sign.
  const Figure& side = pen.ask(fmt::format("blank/{}", part::name_of(flat.side)));
  const Figure& at = pen.ask(part::at_path(feature.name, axis));
  const bool outside = part::at_greater_end(flat.side) ? at.value > side.value : at.value < side.value;
  const Figure& takes = pen.work(
      "takes", Kind::kLength, outside ? "the flat lies outside the blank" : "metal it takes",
      [outside](auto m) { return outside ? -1.0 * m : m; }, metal);
  pen.judge({.check = "blank cleans up",
             .subject = feature.name,
             .figure = &takes,
             .low = &least,
             .reason = fmt::format("at the least {} comes off the {}; less than {} does not clean up",
                                   route::or_not_known(takes, print.plain(takes.value)),
                                   part::name_of(flat.side), print.plain(least.value)),
             .source = "blank's limits and the part's; least cut by common practice",
             .todo = "take a larger blank, or measure the one in hand and enter what was found"});
}

}  // namespace

void add_clean_up_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    if (!std::holds_alternative<part::Flat>(feature.shape)) continue;
    stages.push_back(check_stage(subject, "clean up", feature.name, [subject, feature](Pen& pen) {
      judge_clean_up(pen, *subject, feature, std::get<part::Flat>(feature.shape));
    }));
  }
}

}  // namespace sparewright::judge
