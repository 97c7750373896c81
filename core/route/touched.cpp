#include "core/route/touched.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include <fmt/format.h>

namespace sparewright::route {
namespace {

using ledger::Figure;
using part::Duty;
using quantity::Kind;

std::optional<part::Axis> axis_named(std::string_view local) {
  for (const part::Axis axis : part::kAxes) {
    if (local == part::name_of(axis)) return axis;
  }
  return std::nullopt;
}

bool has_duty(const part::Dimension& dimension) {
  return dimension.duty == Duty::kFits || dimension.duty == Duty::kLocates;
}

const std::map<part::Axis, part::Position>* places_of(const part::Feature& feature) {
  if (const auto* hole = std::get_if<part::Hole>(&feature.shape)) return &hole->at;
  if (const auto* formed = std::get_if<part::Formed>(&feature.shape)) return &formed->at;
  return nullptr;
}

// The size of a feature along an axis on both sides of its middle: "diameter", "width"; empty where it has none.
std::string extent_along(const part::Feature& feature, part::Axis axis) {
  // The edge of a hole that leans is an ellipse.
  if (const auto* hole = std::get_if<part::Hole>(&feature.shape)) return hole->lean ? "" : "diameter";
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  if (formed == nullptr) return "";
  const std::optional<part::Axis> runs_along = formed->along;
  const std::string extent = !runs_along ? "diameter" : *runs_along == axis ? "length" : "width";
  return formed->sizes.contains(extent) ? extent : "";
}

// "29.0-31.0 degrees"
std::string degrees(double least_rad, double most_rad) {
  constexpr int kPlaces = 1;
  const auto shown = [](double rad) {
    return quantity::fixed(quantity::unit::degree.from_base(rad), kPlaces);
  };
  return fmt::format("{}-{} degrees", shown(least_rad), shown(most_rad));
}

const part::Hole* hole_named(const part::Part& part, const std::string& name) {
  const part::Feature* found = part::find_feature(part, name);
  return found == nullptr ? nullptr : std::get_if<part::Hole>(&found->shape);
}

bool is_square(const part::Hole* hole) {
  return hole != nullptr && !hole->around_bar && !hole->lean;
}

// Whether the edges of both holes lie on one side of the work: into the same side, or right through from the other with
// nothing wider at its mouth.
bool have_edges_together(const part::Hole* one, const part::Hole* other) {
  if (!is_square(one) || !is_square(other) || part::axis_of(one->into) != part::axis_of(other->into))
    return false;
  const auto is_plain = [](const part::Hole& hole) {
    return !hole.depth && !hole.counterbore && !hole.countersink;
  };
  return one->into == other->into || is_plain(*one) || is_plain(*other);
}

// The hole on the same circle that comes before this one in the part; nullptr where it is the first.
const part::Feature* neighbour_on_circle(const part::Part& part, const part::Feature& feature,
                                         const part::Hole& hole) {
  const part::Feature* before = nullptr;
  for (const part::Feature& other : part.features) {
    if (other.name == feature.name) return before;
    const auto* one = std::get_if<part::Hole>(&other.shape);
    if (one == nullptr || !one->by_angle || one->into != hole.into) continue;
    const bool same = one->by_angle->from == hole.by_angle->from &&
                      one->by_angle->is_diameter == hole.by_angle->is_diameter &&
                      one->by_angle->radius.typed == hole.by_angle->radius.typed;
    if (same) before = &other;
  }
  return nullptr;
}

}  // namespace

std::string what_of(const part::Feature& feature, const part::NamedDimension& d) {
  if (d.local == "diameter") return feature.name;
  if (!d.from.empty() && axis_named(d.local)) {
    return fmt::format("{} to {}, along {}:", d.from, feature.name, d.local);
  }
  return fmt::format("{}, {}", feature.name, d.local);
}

std::string room_of(ledger::Pen& pen, const Printing& print, const part::Feature& feature,
                    const part::NamedDimension& d) {
  const std::string path = fmt::format("{}/{}", part::feature_path(feature.name), d.local);
  const Figure& nominal = pen.ask(path);
  const Figure& least = pen.ask(path + "/least");
  const Figure& most = pen.ask(path + "/most");
  const bool fits = d.dimension->duty == Duty::kFits;
  return or_not_known(least, fits ? print.limits(least.value, most.value, true)
                                  : print.size_with_room(nominal.value, least.value, most.value));
}

const Figure& Touch::figure(std::string_view feature, std::string_view local) {
  return pen_.ask(fmt::format("{}/{}", part::feature_path(feature), local));
}

std::string_view Touch::hides_hole(const std::string& feature) const {
  const part::Hole* hole = hole_named(part_, feature);
  if (bushed_.contains(feature)) return "bush ";
  if (hole == nullptr) return "";
  return hole->counterbore ? "counterbore " : hole->countersink ? "countersink " : "";
}

bool Touch::is_in_a_bush(const part::Feature& feature, const std::string& local) const {
  if (local != "diameter") return false;
  if (bushed_.contains(feature.name)) return true;
  return std::any_of(bushed_.begin(), bushed_.end(),
                     [&](const auto& bush) { return bush.second == feature.name; });
}

// From the side the hole starts on: a bush, a counterbore or a countersink hides the hole.
const Figure& Touch::touched_diameter(const std::string& feature) {
  const part::Hole* hole = hole_named(part_, feature);
  if (const auto bush = bushed_.find(feature); bush != bushed_.end()) {
    const Figure& aim = figure(bush->second, "bore/aim");
    return aim.known() ? aim : figure(bush->second, "bore");
  }
  if (hole != nullptr && hole->counterbore) return figure(feature, "counterbore diameter");
  if (hole != nullptr && hole->countersink) return figure(feature, "countersink diameter");
  return figure(feature, hole != nullptr && has_duty(hole->diameter) ? "diameter/aim" : "diameter");
}

// The least of two positions; round another hole it is the circle's own, for the angle does not change the distance.
double Touch::room_apart(const part::Feature& feature, const part::Hole& hole, const std::string& other) {
  const auto half = [&](const std::string& local) {
    return (figure(feature.name, local + "/most").value - figure(feature.name, local + "/least").value) / 2.0;
  };
  if (hole.by_angle && hole.by_angle->from == other)
    return hole.by_angle->is_diameter ? half("bolt circle") / 2.0 : half("radius");
  if (hole.by_angle) {  // on the same circle: what the angle moves it by along the circle
    const double radius = hole.by_angle->is_diameter ? figure(feature.name, "bolt circle").value / 2.0
                                                     : figure(feature.name, "radius").value;
    return radius * half("angle");
  }
  double room = std::numeric_limits<double>::infinity();
  for (const auto& [axis, position] : hole.at)
    room = std::min(room, half(std::string(part::name_of(axis))));
  return room;
}

std::optional<ProofReading> Touch::holes_apart(const part::Feature& feature, const part::Hole& hole,
                                               const std::string& other) {
  const std::string name = fmt::format("{}/edge to {}", feature.name, other);
  if (!pairs_.insert(name).second) return std::nullopt;
  const auto axes = part::axes_in(hole.into);
  const auto at = [&](const std::string& of, part::Axis axis) -> const Figure& {
    return figure(of, fmt::format("at {}", part::name_of(axis)));
  };
  const auto apart = [](auto ax, auto ay, auto bx, auto by, auto da, auto db) {
    using std::sqrt;
    return sqrt((ax - bx) * (ax - bx) + (ay - by) * (ay - by)) - da / 2.0 - db / 2.0;
  };
  const Figure& gap = pen_.work(name, Kind::kLength, "centre distance less half of each hole", apart,
                                at(feature.name, axes[0]), at(feature.name, axes[1]), at(other, axes[0]),
                                at(other, axes[1]), touched_diameter(feature.name), touched_diameter(other));
  const double room = room_apart(feature, hole, other);
  const auto moved = [&](const char* which, double by_mm) -> const Figure& {
    return pen_.work(
        name + which, Kind::kLength, "as far as the place may be off", [by_mm](auto g) { return g + by_mm; },
        gap);
  };
  const Figure& least = moved("/least", -room);
  const Figure& most = moved("/most", room);
  const auto edge_of = [&](const std::string& of) {
    return fmt::format("{} ({}{})", of, hides_hole(of), print_.fine(touched_diameter(of).value));
  };
  return ProofReading{fmt::format("nearest edges, {} and {}", edge_of(other), edge_of(feature.name)),
                      or_not_known(gap, print_.size_with_room(gap.value, least.value, most.value))};
}

// From the hole in the middle of the circle, and from the neighbour on it; the angle itself where there is neither.
std::optional<ProofReading> Touch::on_circle(const part::Feature& feature, const part::Hole& hole,
                                             const part::NamedDimension& d) {
  const std::string& middle = hole.by_angle->from;
  const bool edges = have_edges_together(&hole, hole_named(part_, middle));
  if (d.local == "bolt circle" || d.local == "radius") {
    if (edges) return holes_apart(feature, hole, middle);
  } else {
    const part::Feature* neighbour = neighbour_on_circle(part_, feature, hole);
    if (neighbour != nullptr) return holes_apart(feature, hole, neighbour->name);
  }
  const Figure& least = figure(feature.name, d.local + "/least");
  const Figure& most = figure(feature.name, d.local + "/most");
  return ProofReading{
      what_of(feature, d),
      or_not_known(least, d.local == "angle" ? degrees(least.value, most.value)
                                             : print_.limits(least.value, most.value, false))};
}

std::optional<ProofReading> Touch::place(const part::Feature& feature, const part::NamedDimension& d,
                                         part::Axis axis, const part::Position& position) {
  const auto* hole = std::get_if<part::Hole>(&feature.shape);
  const std::string extent = extent_along(feature, axis);
  if (const auto* other = std::get_if<std::string>(&position.from)) {
    if (have_edges_together(hole, hole_named(part_, *other))) return holes_apart(feature, *hole, *other);
    return ProofReading{fmt::format("{} to {}, middles, along {}", *other, feature.name, d.local),
                        room_of(pen_, print_, feature, d)};
  }
  if (extent.empty()) {
    return ProofReading{fmt::format("{} to the middle of {}, along {}", d.from, feature.name, d.local),
                        room_of(pen_, print_, feature, d)};
  }
  const Figure& across = hole != nullptr ? touched_diameter(feature.name) : figure(feature.name, extent);
  const auto near_edge = [](auto distance, auto size) { return distance - size / 2.0; };
  const auto edge = [&](const char* which) -> const Figure& {
    return pen_.work(fmt::format("{}/{} near edge{}", feature.name, d.local, which), Kind::kLength,
                     hole != nullptr ? "distance less half the hole" : "distance less half the size across",
                     near_edge, figure(feature.name, d.local + which), across);
  };
  const Figure& nominal = edge("");
  const Figure& least = edge("/least");
  const Figure& most = edge("/most");
  return ProofReading{fmt::format("{} to near edge of {} ({}{})", d.from, feature.name,
                                  hides_hole(feature.name), or_not_known(across, print_.fine(across.value))),
                      or_not_known(nominal, print_.size_with_room(nominal.value, least.value, most.value))};
}

// From the floor of a keyseat to the far side of what is turned there.
ProofReading Touch::over_the_back(const part::Feature& feature, part::Axis axis) {
  const auto side = [&](bool greater) -> const Figure& {
    return pen_.ask(fmt::format("blank/{}", part::name_of(part::face_at(axis, greater))));
  };
  const auto back = [&](const char* which, const char* depth) -> const Figure& {
    return pen_.work(
        fmt::format("{}/floor to far side{}", feature.name, which), Kind::kLength,
        "twice from the crest to the middle of the bar, less the depth",
        [](auto crest, auto low, auto high, auto down) {
          using std::abs;
          return abs(2.0 * crest - low - high) - down;
        },
        figure(feature.name, "starts at"), side(false), side(true), figure(feature.name, depth));
  };
  const Figure& least = back("/least", "depth/most");
  const Figure& most = back("/most", "depth/least");
  return {feature.name + ", over the back: floor to the far side of the bar",
          or_not_known(least, print_.limits(least.value, most.value, false))};
}

std::optional<ProofReading> Touch::reading(const part::Feature& feature, const part::NamedDimension& d) {
  const auto* keyseat = std::get_if<part::Formed>(&feature.shape);
  if (keyseat != nullptr && keyseat->form == part::Form::kKeyseat && d.local == "depth" &&
      part::is_bar(part_.blank.shape) && part::axis_of(keyseat->side) != part::Axis::kX)
    return over_the_back(feature, part::axis_of(keyseat->side));
  if (is_in_a_bush(feature, d.local)) return std::nullopt;
  const auto axis = axis_named(d.local);
  const auto* places = places_of(feature);
  const auto* hole = std::get_if<part::Hole>(&feature.shape);
  if (hole != nullptr && hole->by_angle) {
    if (axis) return std::nullopt;  // follows from circle and angle
    if (d.local == "bolt circle" || d.local == "radius" || d.local == "angle")
      return on_circle(feature, *hole, d);
  }
  if (axis && places != nullptr) {
    const auto position = places->find(*axis);
    if (position != places->end()) return place(feature, d, *axis, position->second);
  }
  const bool is_hole_size = d.local == "diameter" && hole != nullptr;
  const Figure& least = figure(feature.name, d.local + "/least");
  const Figure& most = figure(feature.name, d.local + "/most");
  if (d.dimension->kind == quantity::Kind::kAngle)
    return ProofReading{what_of(feature, d), or_not_known(least, degrees(least.value, most.value))};
  return ProofReading{
      is_hole_size ? feature.name + ", top and bottom, two ways" : what_of(feature, d),
      or_not_known(least, print_.limits(least.value, most.value, d.dimension->duty == Duty::kFits))};
}

}  // namespace sparewright::route
