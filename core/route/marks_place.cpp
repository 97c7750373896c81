// Places found by marks: which side a line is scribed from, how high, and how far a punched place can be out.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/route/marks.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using part::Axis;
using part::Face;
using quantity::Kind;

// A place punched on scribed lines and drilled by hand lies this far out, from a careful hand to a usual one. Common
// practice.
struct GoodTo {
  double careful_mm = 0.0;
  double usual_mm = 0.0;
};
GoodTo punched_good_to(quantity::UnitSystem system) {
  if (system == quantity::UnitSystem::kMetric) return {0.25, 0.5};
  return {0.010 * 25.4, 0.020 * 25.4};
}

const part::Position* position_of(const part::Feature& feature, Axis axis) {
  if (const auto* flat = std::get_if<part::Flat>(&feature.shape))
    return flat->region && flat->region->along == axis ? &flat->region->start : nullptr;
  const auto* hole = std::get_if<part::Hole>(&feature.shape);
  const auto& at = hole != nullptr ? hole->at : std::get<part::Formed>(feature.shape).at;
  const auto found = at.find(axis);
  return found == at.end() ? nullptr : &found->second;
}

const Setup* setup_that_makes(const Route& route, const std::string& feature) {
  for (const Setup& setup : route.plan.setups) {
    for (const Work& work : setup.works) {
      if (work.feature == feature && !work.joins) return &setup;
    }
  }
  return nullptr;
}

}  // namespace

bool is_cut(const part::Part& part, Face side) {
  return part::side_path(part, side) != fmt::format("blank/{}", part::name_of(side));
}

Face marked_from(const Route& route, const std::string& feature, Axis axis) {
  Face side = part::face_at(axis, false);
  const Setup* setup = setup_that_makes(route, feature);
  if (setup != nullptr && std::holds_alternative<ByMarks>(setup->held)) {
    const part::Feature* made = part::find_feature(route.part, feature);
    const part::Position* position = made == nullptr ? nullptr : position_of(*made, axis);
    const Face* from = position == nullptr ? nullptr : std::get_if<Face>(&position->from);
    if (from != nullptr) return *from;
  }
  if (setup != nullptr) {
    if (const auto* on = std::get_if<OnMill>(&setup->held)) {
      for (const EdgePickUp& pick_up : {on->x, on->y}) {
        if (part::axis_of(pick_up.side) == axis) side = pick_up.side;
      }
    }
  }
  return is_cut(route.part, side) && !is_cut(route.part, part::opposite(side)) ? part::opposite(side) : side;
}

Mark mark_at(MarksBench& bench, const std::string& name, const std::string& feature, Axis axis,
             const Figure& at) {
  Mark mark{axis, marked_from(bench.route, feature, axis), nullptr};
  const bool from_above = part::at_greater_end(mark.from);
  mark.height = &bench.pen.work(
      name + " mark", Kind::kLength, fmt::format("from the {} to its place", part::name_of(mark.from)),
      [from_above](auto place, auto side) { return from_above ? side - place : place - side; }, at,
      bench.side(mark.from));
  return mark;
}

std::vector<Mark> marks_of(MarksBench& bench, const Work& work, const part::Hole& hole) {
  std::vector<Mark> marks;
  for (const auto& [axis, position] : hole.at) {
    if (part::is_round(bench.route.part.blank.shape) && axis != Axis::kX) continue;
    marks.push_back(mark_at(bench, fmt::format("{}/{}", work.feature, part::name_of(axis)), work.feature,
                            axis,
                            bench.feature_figure(work.feature, fmt::format("at {}", part::name_of(axis)))));
  }
  return marks;
}

Line& put(MarksBench& bench, Line& line, const std::vector<Mark>& marks) {
  const auto text = [&](const Mark& mark) {
    return or_not_known(*mark.height, bench.print.plain(mark.height->value));
  };
  if (!marks.empty()) line.x_reads = text(marks[0]);
  if (marks.size() > 1) line.y_reads = text(marks[1]);
  return line;
}

std::string from_words(const std::vector<Mark>& marks) {
  std::string words;
  for (const Mark& mark : marks)
    words += fmt::format("{}from the {}", words.empty() ? "" : ", then ", part::name_of(mark.from));
  return words;
}

void write_place_good_to(MarksBench& bench, const std::string& feature) {
  const GoodTo good = punched_good_to(bench.print.system());
  const std::string name = feature + "/place good to";
  const auto root = [&](const std::string& local, double mm, double half_width_mm) {
    ledger::Root one;
    one.kind = Kind::kLength;
    one.value = mm;
    one.origin = ledger::Origin::kDefault;
    one.source = fmt::format("punched and drilled by hand: {} to {}, common practice",
                             bench.print.nominal(good.careful_mm), bench.print.nominal(good.usual_mm));
    // One hand does it all: what is not known about it is common to all its places.
    if (half_width_mm > 0.0) one.shares = {{"the hand that punches", from_half_width(half_width_mm)}};
    bench.pen.root(local, one);
  };
  root(name, (good.careful_mm + good.usual_mm) / 2.0, (good.usual_mm - good.careful_mm) / 2.0);
  root(name + "/least", good.careful_mm, 0.0);
  root(name + "/most", good.usual_mm, 0.0);
}

std::string limits_of(const Bench& bench, const std::string& feature, const part::Dimension& dimension,
                      const std::string& local) {
  const Figure& least = bench.feature_figure(feature, local + "/least");
  const Figure& most = bench.feature_figure(feature, local + "/most");
  return or_not_known(least, bench.print.limits(least.value, most.value, is_fine(dimension)));
}

}  // namespace sparewright::route
