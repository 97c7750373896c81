#include <utility>

#include <fmt/format.h>

#include "core/part/writing.hpp"

namespace sparewright::part {
namespace {

using ledger::Figure;
using ledger::Pen;
using quantity::Kind;

// The coordinate of a position: from a face inwards, from another feature along or against the axis.
const Figure& write_at(Pen& pen, const Part& part, Axis axis, const Position& position,
                       const Figure& distance, const std::string& local) {
  const auto* face = std::get_if<Face>(&position.from);
  const bool backwards = face != nullptr ? at_greater_end(*face) : position.towards_smaller;
  const Figure& start =
      pen.ask(face != nullptr ? side_path(part, *face) : at_path(std::get<std::string>(position.from), axis));
  if (backwards) {
    return pen.work(
        local, Kind::kCoordinate, "start less distance", [](auto s, auto d) { return s - d; }, start,
        distance);
  }
  return pen.work(
      local, Kind::kCoordinate, "start and distance", [](auto s, auto d) { return s + d; }, start, distance);
}

// A flat with a wall that lies over the hole's place: the hole starts from its floor, not from the side.
bool lies_over(Pen& pen, const Flat& flat, const std::string& flat_name, const Hole& hole,
               const std::string& local) {
  if (!flat.region || flat.side != hole.into || hole.at.count(flat.region->along) == 0) return false;
  const Figure& wall = pen.ask(at_path(flat_name, flat.region->along));
  const Figure& place = pen.ask(fmt::format("{}/at {}", local, name_of(flat.region->along)));
  return flat.region->towards_greater ? place.value > wall.value : place.value < wall.value;
}

// The diameter that a turned form leaves at a place along the bar; none where it does not reach so far.
const Figure* turned_to(Pen& pen, const Feature& feature, const Formed& formed, const Figure& along_bar) {
  const std::string path = feature_path(feature.name);
  const auto size = [&](std::string_view local) -> double {
    return formed.sizes.contains(local) ? pen.need(fmt::format("{}/{}", path, local)).value : 0.0;
  };
  const double way = at_greater_end(formed.side) ? -1.0 : 1.0;
  const Figure& end = pen.need(path + "/starts at");
  const double in = way * (along_bar.value - end.value);  // from its end into the bar
  const double from = size("from end");
  if (in < from || in > from + size("length") + size("width")) return nullptr;
  if (formed.form != Form::kTaper) return &pen.need(path + "/diameter");
  return &pen.work(
      "diameter of " + feature.name, Kind::kDiameter,
      "the taper's small end and its part of the way to the large one",
      [way](auto small, auto large, auto length, auto start, auto x) {
        return small + (large - small) * (way * (x - start)) / length;
      },
      pen.need(path + "/small diameter"), pen.need(path + "/large diameter"), pen.need(path + "/length"), end,
      along_bar);
}

bool is_turned(Form form) {
  return form == Form::kTurned || form == Form::kThread || form == Form::kKnurl || form == Form::kGroove ||
         form == Form::kTaper;
}

// On a bar a side is what has been turned there: the least diameter over the place. None where nothing is turned.
const Figure* turned_under(Pen& pen, const Part& part, Face side) {
  if (!is_bar(part.blank.shape) || axis_of(side) == Axis::kX) return nullptr;
  const Figure& along_bar = pen.ask(fmt::format("{}/at x", pen.stage()));
  if (!along_bar.known()) return nullptr;
  const Figure* least = nullptr;
  for (const Feature& feature : part.features) {
    const auto* formed = std::get_if<Formed>(&feature.shape);
    if (formed == nullptr || !is_turned(formed->form)) continue;
    const Figure* diameter = turned_to(pen, feature, *formed, along_bar);
    if (diameter != nullptr && (least == nullptr || diameter->value < least->value)) least = diameter;
  }
  return least;
}

// The surface a feature starts from: the side, or what has been turned there if that lies deeper.
void write_starts_at(Pen& pen, const Part& part, Face side, const Figure& surface) {
  const Figure* diameter = turned_under(pen, part, side);
  const double way = at_greater_end(side) ? 1.0 : -1.0;
  if (diameter != nullptr) {
    const Figure& low = pen.need(blank_side_path(face_at(axis_of(side), false)));
    const Figure& high = pen.need(blank_side_path(face_at(axis_of(side), true)));
    const double crest = (low.value + high.value + way * diameter->value) / 2.0;
    if (way * (surface.value - crest) > 0.0) {
      pen.work(
          "starts at", Kind::kCoordinate, "the middle of the bar and half of what is turned there",
          [way](auto a, auto b, auto d) { return (a + b + way * d) / 2.0; }, low, high, *diameter);
      return;
    }
  }
  pen.work(
      "starts at", Kind::kCoordinate, "the surface it starts from", [](auto x) { return x; }, surface);
}

void write_start(Pen& pen, const Part& part, const Hole& hole) {
  std::string surface = side_path(part, hole.into);
  for (const Feature& feature : part.features) {
    const auto* flat = std::get_if<Flat>(&feature.shape);
    if (flat != nullptr && lies_over(pen, *flat, feature.name, hole, pen.stage())) {
      surface = at_path(feature.name, axis_of(hole.into));
    }
  }
  write_starts_at(pen, part, hole.into, pen.ask(surface));
}

void write_clearance_asked(Pen& pen, const Hole& hole, const Surroundings& surroundings) {
  if (hole.mate.empty() || !hole.clearance_asked) return;
  write_dimension(pen, "clearance asked", *hole.clearance_asked, surroundings, CutMakesIt::kNeither);
}

// Where the slit or split lies across the hole, from the side the hole starts on: "gap/near", "gap/middle" and "gap/far".
void write_gap(Pen& pen, const Part& part, const Hole& hole) {
  const Feature* gap = find_feature(part, hole.beyond->gap);
  const auto* formed = gap == nullptr ? nullptr : std::get_if<Formed>(&gap->shape);
  if (formed == nullptr) return;  // the text's reader refuses it
  const std::string path = feature_path(gap->name);
  const Figure& width = pen.ask(path + "/width");
  const double out = at_greater_end(hole.into) ? 1.0 : -1.0;
  const Figure* middle = nullptr;
  if (formed->form == Form::kSlit) {
    middle = &pen.work(
        "gap/middle", Kind::kCoordinate, "the middle of the hole the slit leads into",
        [](auto x) { return x; }, pen.ask(at_path(formed->of, axis_of(hole.into))));
  } else {
    const double in = at_greater_end(formed->side) ? -1.0 : 1.0;
    middle = &pen.work(
        "gap/middle", Kind::kCoordinate,
        "the side the split is measured from, its distance and half its width",
        [in](auto side, auto from, auto wide) { return side + in * (from + wide / 2.0); },
        pen.ask(path + "/starts at"), pen.ask(path + "/from side"), width);
  }
  pen.work(
      "gap/near", Kind::kCoordinate, "its middle and half its width",
      [out](auto m, auto w) { return m + out * w / 2.0; }, *middle, width);
  pen.work(
      "gap/far", Kind::kCoordinate, "its middle and half its width",
      [out](auto m, auto w) { return m - out * w / 2.0; }, *middle, width);
}

// A hole into an end of a bar that is given no place lies on its axis.
void write_on_axis(Pen& pen, Face into) {
  for (const Axis axis : axes_in(into)) {
    pen.work(
        fmt::format("at {}", name_of(axis)), Kind::kCoordinate, "the middle of the bar",
        [](auto low, auto high) { return (low + high) / 2.0; },
        pen.ask(blank_side_path(face_at(axis, false))), pen.ask(blank_side_path(face_at(axis, true))));
  }
}

void write_hole(Pen& pen, const Part& part, const Hole& hole) {
  const Surroundings& s = part.surroundings;
  write_dimension(pen, "diameter", hole.diameter, s, CutMakesIt::kLarger);
  if (hole.mate_hole) write_dimension(pen, "mate hole", *hole.mate_hole, s, CutMakesIt::kNeither);
  if (hole.by_angle) {
    write_dimension(pen, hole.by_angle->is_diameter ? "bolt circle" : "radius", hole.by_angle->radius, s,
                    CutMakesIt::kNeither);
    write_dimension(pen, "angle", hole.by_angle->angle, s, CutMakesIt::kNeither);
  }
  if (hole.around_bar) write_dimension(pen, "around bar", *hole.around_bar, s, CutMakesIt::kNeither);
  if (hole.lean) write_dimension(pen, "lean", hole.lean->angle, s, CutMakesIt::kNeither);
  for (const auto& [axis, position] : hole.at) {
    const Written distance = write_dimension(pen, name_of(axis), position.distance, s, CutMakesIt::kNeither);
    write_at(pen, part, axis, position, *distance.nominal, fmt::format("at {}", name_of(axis)));
  }
  if (is_on_axis(hole)) write_on_axis(pen, hole.into);
  if (hole.depth) write_dimension(pen, "depth", *hole.depth, s, CutMakesIt::kLarger);
  if (hole.counterbore) {
    write_dimension(pen, "counterbore diameter", hole.counterbore->diameter, s, CutMakesIt::kLarger);
    write_dimension(pen, "counterbore depth", hole.counterbore->depth, s, CutMakesIt::kLarger);
  }
  if (hole.countersink) {
    write_dimension(pen, "countersink diameter", hole.countersink->diameter, s, CutMakesIt::kLarger);
    write_dimension(pen, "countersink angle", hole.countersink->angle, s, CutMakesIt::kNeither);
  }
  if (hole.beyond) {
    write_dimension(pen, "tap drill", hole.beyond->tap_drill, s, CutMakesIt::kLarger);
    write_gap(pen, part, hole);
  }
  if (hole.through) write_dimension(pen, "through", *hole.through, s, CutMakesIt::kNeither);
  write_clearance_asked(pen, hole, s);
  write_start(pen, part, hole);
}

void write_flat(Pen& pen, const Part& part, const Flat& flat, std::size_t index) {
  const Surroundings& s = part.surroundings;
  const Written leaves = write_dimension(pen, "leaves", flat.leaves, s, CutMakesIt::kSmaller);
  const Figure& opposite_side = pen.ask(side_path_before(part, opposite(flat.side), index));
  const std::string local = fmt::format("at {}", name_of(axis_of(flat.side)));
  if (at_greater_end(flat.side)) {
    pen.work(
        local, Kind::kCoordinate, "opposite side and what is left", [](auto o, auto l) { return o + l; },
        opposite_side, *leaves.nominal);
  } else {
    pen.work(
        local, Kind::kCoordinate, "opposite side less what is left", [](auto o, auto l) { return o - l; },
        opposite_side, *leaves.nominal);
  }
  if (!flat.region) return;
  const Position& start = flat.region->start;
  const Written wall = write_dimension(pen, "wall", start.distance, s, CutMakesIt::kNeither);
  write_at(pen, part, flat.region->along, start, *wall.nominal,
           fmt::format("at {}", name_of(flat.region->along)));
}

// Stands on the part frame's origin, along x.
void write_bush_recipe(Pen& pen, const std::string& name) {
  const auto size = [&](std::string_view local) {
    return pen.need(fmt::format("{}/{}", pen.stage(), local)).value;
  };
  const auto frame = shape::Frame::along({}, {1.0, 0.0, 0.0});
  const shape::Blank blank{name, shape::Cylinder{frame, size("diameter") / 2.0, size("length")}};
  const std::vector<shape::Cutter> bore{
      {name, shape::Cylinder{frame, size("bore") / 2.0, size("length")}, shape::Open::kThrough}};
  auto recipe = shape::Recipe::make(blank, bore);
  if (!recipe) return;  // its wall says it cannot be
  const base::Fingerprint print = recipe->fingerprint();
  pen.publish("recipe", std::move(*recipe), print);
}

void write_corners(Pen& pen, const Part& part, const Formed& formed) {
  const auto axes = axes_in(formed.side);
  for (std::size_t i = 0; i < formed.corners.size(); ++i) {
    const ProfileCorner& corner = formed.corners[i];
    const std::string local = fmt::format("corner {}", i + 1);
    const auto place = [&](Axis axis, const Position& position) {
      const std::string name = fmt::format("{}/{}", local, name_of(axis));
      const Written distance =
          write_dimension(pen, name, position.distance, part.surroundings, CutMakesIt::kNeither);
      write_at(pen, part, axis, position, *distance.nominal, fmt::format("{}/at {}", local, name_of(axis)));
    };
    place(axes[0], corner.first);
    place(axes[1], corner.second);
    for (const auto& [key, radius] : {std::pair{"fillet", &corner.fillet}, std::pair{"arc", &corner.arc}}) {
      if (*radius)
        write_dimension(pen, fmt::format("{}/{}", local, key), **radius, part.surroundings,
                        CutMakesIt::kNeither);
    }
  }
}

// Where the finished end lies behind the chucking piece: the end that other features are measured from.
void write_finished_end(Pen& pen, const Part& part, const Formed& formed, const Figure& blank_end) {
  const double way = at_greater_end(formed.side) ? -1.0 : 1.0;
  pen.work(
      fmt::format("at {}", name_of(axis_of(formed.side))), Kind::kCoordinate,
      "the blank's end and what is left on", [way](auto end, auto length) { return end + way * length; },
      blank_end, pen.ask(pen.stage() + "/length"));
  pen.work(
      "over all", Kind::kLength, "from the finished end to the other one",
      [way](auto end, auto other) { return way * (other - end); },
      pen.ask(fmt::format("{}/at {}", pen.stage(), name_of(axis_of(formed.side)))),
      pen.ask(side_path(part, opposite(formed.side))));
}

// What a bush is bigger than its hole by, over their limits, and the bush as a piece of its own.
void write_bush(Pen& pen, const std::string& name, const Formed& formed) {
  const std::string hole = feature_path(formed.of) + "/diameter";
  const std::string own = pen.stage() + "/diameter";
  const auto less = [](auto bush, auto bore) { return bush - bore; };
  pen.work("interference", Kind::kLength, "the bush less its hole", less, pen.ask(own), pen.ask(hole));
  pen.work("interference/least", Kind::kLength, "the least bush less the largest hole", less,
           pen.ask(own + "/least"), pen.ask(hole + "/most"));
  pen.work("interference/most", Kind::kLength, "the largest bush less the least hole", less,
           pen.ask(own + "/most"), pen.ask(hole + "/least"));
  pen.work(
      "wall", Kind::kLength, "half its outside less its bore, at their limits",
      [](auto outside, auto bore) { return (outside - bore) / 2.0; }, pen.ask(own + "/least"),
      pen.ask(pen.stage() + "/bore/most"));
  write_bush_recipe(pen, name);
}

// On a bar a place that is left out is the bar's own middle, as it was found.
void write_middle_of_bar(Pen& pen, const Formed& formed) {
  for (const Axis axis : axes_in(formed.side)) {
    if (formed.at.contains(axis)) continue;
    pen.work(
        fmt::format("at {}", name_of(axis)), Kind::kCoordinate, "the middle of the bar",
        [](auto low, auto high) { return (low + high) / 2.0; },
        pen.ask(blank_side_path(face_at(axis, false))), pen.ask(blank_side_path(face_at(axis, true))));
  }
}

void write_formed(Pen& pen, const Part& part, const std::string& name, const Formed& formed) {
  const Surroundings& s = part.surroundings;
  for (const FormSize& size : row_of(formed.form).sizes) {
    const auto found = formed.sizes.find(size.name);
    if (found != formed.sizes.end()) write_dimension(pen, size.name, found->second, s, size.cut_makes_it);
  }
  for (const auto& [axis, position] : formed.at) {
    const Written distance = write_dimension(pen, name_of(axis), position.distance, s, CutMakesIt::kNeither);
    write_at(pen, part, axis, position, *distance.nominal, fmt::format("at {}", name_of(axis)));
  }
  if (row_of(formed.form).placed) write_middle_of_bar(pen, formed);
  write_corners(pen, part, formed);
  const bool is_piece = formed.form == Form::kChuckingPiece;  // the side is where it ends
  const Figure& side = pen.ask(is_piece ? blank_side_path(formed.side) : side_path(part, formed.side));
  write_starts_at(pen, part, formed.side, side);
  if (is_piece) write_finished_end(pen, part, formed, side);
  if (formed.form == Form::kBush) write_bush(pen, name, formed);
  if (!formed.edge) return;
  pen.work(
      "edge at", Kind::kCoordinate, "the side the edge leads to", [](auto x) { return x; },
      pen.ask(side_path(part, *formed.edge)));
}

}  // namespace

void write_feature(Pen& pen, const Part& part, std::size_t index) {
  const Feature& feature = part.features[index];
  if (const auto* hole = std::get_if<Hole>(&feature.shape)) {
    write_hole(pen, part, *hole);
  } else if (const auto* formed = std::get_if<Formed>(&feature.shape)) {
    write_formed(pen, part, feature.name, *formed);
  } else {
    write_flat(pen, part, std::get<Flat>(feature.shape), index);
  }
}

}  // namespace sparewright::part
