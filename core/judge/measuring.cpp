// Whether the instrument named for a size can touch it, and can prove that it lies within its limits.
#include <algorithm>
#include <array>
#include <vector>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Pen;

// An outside micrometer does not go into a bore. Silent where it touches.
void judge_touch(Pen& pen, const part::Feature& feature, const part::NamedDimension& named) {
  const part::Dimension& dimension = *named.dimension;
  const auto has = [&](std::string_view jaws) {
    part::Dimension with_these = dimension;
    with_these.jaws = jaws;
    return !pen.names(part::good_to_path(with_these)).empty();
  };
  if (has(dimension.jaws)) return;
  constexpr std::array<std::string_view, 3> kAll{"outside jaws", "inside jaws", "depth rod"};
  std::vector<std::string_view> own;
  std::copy_if(kAll.begin(), kAll.end(), std::back_inserter(own), has);
  pen.state({.check = fmt::format("instrument touches {}", named.local),
             .subject = feature.name,
             .state = ledger::State::kNo,
             .reason = fmt::format("{} has {} and the {} is touched with {}", dimension.instrument,
                                   fmt::join(own, " and "), named.local, dimension.jaws),
             .source = "the shop: the instrument's jaws, or what its kind has",
             .todo = fmt::format("name an instrument that has {}; if this one has, say so in the shop text",
                                 dimension.jaws)});
}

// Silent where the instrument takes less than half of the tolerance.
void judge_instrument(Pen& pen, const Subject& subject, const part::Feature& feature,
                      const part::NamedDimension& named) {
  const route::Printing print(subject.route.system);
  const std::string path = fmt::format("{}/{}", part::feature_path(feature.name), named.local);
  const Figure& least = pen.ask(path + "/least");
  const Figure& most = pen.ask(path + "/most");
  const Figure& as_read = pen.ask(path + "/as read");
  if (!least.known() || !most.known() || !as_read.known()) return;  // the aim says what is missing
  ledger::Decision not_known;
  not_known.kind = quantity::Kind::kLength;
  not_known.value = as_read.expanded();
  not_known.words = "what a reading does not know against a limit, 19 times in 20";
  not_known.inputs = {&as_read};
  not_known.source = "JCGM 100:2008, 6.2";
  const Figure& unknown = pen.decide(fmt::format("{} not known", named.local), not_known);
  const double tolerance = most.value - least.value;
  if (4.0 * unknown.value < tolerance) return;
  const Figure& room = pen.work(
      fmt::format("{} room", named.local), quantity::Kind::kLength,
      "the tolerance, less what a reading does not know at both limits",
      [](auto low, auto high, auto u) { return high - low - 2.0 * u; }, least, most, unknown);
  pen.judge(
      {.check = fmt::format("instrument proves {}", named.local),
       .subject = feature.name,
       .figure = &room,
       .low = &limit(pen, fmt::format("{} no room", named.local), 0.0, ledger::Origin::kStandard,
                     "nothing left to aim at"),
       .reason = fmt::format("the tolerance is {} and {} does not know {} at either limit",
                             print.fine(tolerance), named.dimension->instrument, print.fine(unknown.value)),
       .source =
           "ISO 14253-1 (named from memory): a size is proven only so far inside its limits as a reading is "
           "uncertain",
       .todo = "name a finer instrument, offer up the mate, or widen the tolerance",
       .margin = fmt::format("{} margin", named.local),
       .close_at_best = true});
}

}  // namespace

void add_measuring_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    for (const part::NamedDimension& named : part::dimensions_of(feature)) {
      const bool is_length =
          quantity::dimension_of(named.dimension->kind) == quantity::dimension_of(quantity::Kind::kLength);
      if (!is_length || named.dimension->instrument.empty()) continue;
      stages.push_back(check_stage(subject, "measuring " + named.local, feature.name,
                                   [subject, &feature, named](Pen& pen) {
                                     judge_touch(pen, feature, named);
                                     if (part::has_aim(*named.dimension))
                                       judge_instrument(pen, *subject, feature, named);
                                   }));
    }
  }
}

}  // namespace sparewright::judge
