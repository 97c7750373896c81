#include "core/route/lathe_works.hpp"

#include <cmath>

#include <fmt/format.h>

#include "core/route/deburr.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using part::Form;
using quantity::Kind;

bool hole_is_worked_out(const OnLathe& on, const part::Hole& hole) {
  const bool plain = !hole.lean && !hole.around_bar && !hole.countersink && !hole.counterbore &&
                     hole.placed_by == part::PlacedBy::kCoordinates;
  const bool from_here =
      hole.into == on.free_end || (!hole.depth && hole.into == part::opposite(on.free_end));
  return plain && from_here;
}

bool form_is_worked_out(const OnLathe& on, const part::Formed& formed) {
  switch (formed.form) {
    case Form::kTurned:
    case Form::kGroove:
    case Form::kTaper:
    case Form::kThread:
    case Form::kCentreHole:
    case Form::kKnurl:
    case Form::kChamfer:
      return formed.side == on.free_end;
    case Form::kChuckingPiece:
      return formed.side == part::opposite(on.free_end);
    default:
      return false;
  }
}

// How far the hole lies from the axis of the work.
const Figure& off_the_axis(LatheBench& bench, const std::string& feature, const part::Hole& hole) {
  const auto blank = [&](part::Axis axis, bool greater) -> const Figure& {
    return bench.pen.ask(fmt::format("blank/{}", part::name_of(part::face_at(axis, greater))));
  };
  const auto axes = part::axes_in(hole.into);
  const auto off = [&](std::size_t i) -> const Figure& {
    return bench.pen.work(
        fmt::format("{}/off the axis along {}", feature, part::name_of(axes.at(i))), Kind::kLength,
        "its place less the middle of the blank",
        [](auto at, auto low, auto high) { return at - (low + high) / 2.0; },
        bench.feature_figure(feature, fmt::format("at {}", part::name_of(axes.at(i)))),
        blank(axes.at(i), false), blank(axes.at(i), true));
  };
  const Figure& first = off(0);
  const Figure& second = off(1);
  return bench.choice(feature + "/off the axis", Kind::kLength, std::hypot(first.value, second.value),
                      "from the axis of the work to its middle", {&first, &second});
}

void make_hole(LatheBench& bench, const Work& work, const part::Feature& feature, const part::Hole& hole) {
  const Figure& off = off_the_axis(bench, feature.name, hole);
  if (off.known() && off.value <= kOnAxis_mm) return turn_hole(bench, work, hole);
  write_not_worked_out(bench, feature);
}

void make_form(LatheBench& bench, const Work& work, const part::Feature& feature,
               const part::Formed& formed) {
  switch (formed.form) {
    case Form::kTurned:
      return turn_diameter(bench, work, formed);
    case Form::kGroove:
      return turn_groove(bench, work, formed);
    case Form::kTaper:
      return turn_taper(bench, work, formed);
    case Form::kThread:
      return turn_thread(bench, work, formed);
    case Form::kCentreHole:
      return turn_centre_hole(bench, work, formed);
    case Form::kKnurl:
      return turn_knurl(bench, work, formed);
    case Form::kChamfer:
      return turn_chamfer(bench, work, formed);
    case Form::kChuckingPiece:
      return part_off(bench, work, formed);
    default:
      return write_not_worked_out(bench, feature);
  }
}

}  // namespace

bool lathe_works_it_out(const OnLathe& on, const part::Feature& feature) {
  if (const auto* flat = std::get_if<part::Flat>(&feature.shape))
    return flat->side == on.free_end && !flat->region;
  if (const auto* hole = std::get_if<part::Hole>(&feature.shape)) return hole_is_worked_out(on, *hole);
  return form_is_worked_out(on, std::get<part::Formed>(feature.shape));
}

void write_lathe_works(LatheBench& bench) {
  for (std::size_t i = 0; i < bench.setup.works.size(); ++i) {
    const Work& work = bench.setup.works[i];
    const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
    if (feature == nullptr) continue;  // refused when the text was read
    write_deburring(bench, i);
    if (work.joins || !lathe_works_it_out(bench.on, *feature)) {
      write_not_worked_out(bench, *feature);
    } else if (const auto* hole = std::get_if<part::Hole>(&feature->shape)) {
      make_hole(bench, work, *feature, *hole);
    } else if (const auto* flat = std::get_if<part::Flat>(&feature->shape)) {
      turn_face(bench, work, *flat);
    } else {
      make_form(bench, work, *feature, std::get<part::Formed>(feature->shape));
    }
    leave(bench, *feature);
  }
  write_deburring(bench, bench.setup.works.size());
}

}  // namespace sparewright::route
