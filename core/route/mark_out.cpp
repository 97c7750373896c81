// The lines to scribe before the first cut: a check on the collars, and the way to find a place where there are none.
#include <algorithm>
#include <map>
#include <optional>
#include <vector>

#include <fmt/format.h>

#include "core/route/desk.hpp"
#include "core/route/marks.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using part::Axis;
using part::Face;

// A line across one side of the work.
struct Scribed {
  Face on = Face::kTop;
  Face from = Face::kLeftEnd;  // the side the work stands on while it is scribed
  double height_mm = 0.0;
  bool known = true;
  std::vector<std::string> what;
};

struct Placed {
  Face on = Face::kTop;
  std::vector<Axis> axes;
  bool is_wall = false;
};

// Round work has no side to stand on or to measure from across its axis: what lies there is found from its middle.
std::vector<Axis> scribed_along(const part::Blank& blank, const std::map<Axis, part::Position>& at) {
  std::vector<Axis> axes;
  for (const auto& [axis, position] : at) {
    if (!part::is_round(blank.shape) || axis == Axis::kX) axes.push_back(axis);
  }
  return axes;
}

// Where a feature has a place that can be scribed.
std::optional<Placed> placed(const part::Blank& blank, const part::Feature& feature) {
  if (const auto* hole = std::get_if<part::Hole>(&feature.shape)) {
    if (hole->placed_by != part::PlacedBy::kCoordinates || hole->around_bar) return std::nullopt;
    return Placed{hole->into, scribed_along(blank, hole->at), false};
  }
  if (const auto* formed = std::get_if<part::Formed>(&feature.shape)) {
    return Placed{formed->side, scribed_along(blank, formed->at), false};
  }
  const auto& flat = std::get<part::Flat>(feature.shape);
  if (!flat.region) return std::nullopt;
  return Placed{flat.side, {flat.region->along}, true};
}

const Figure& height(Desk& desk, Face on, Face from, const std::string& feature, Axis axis) {
  const bool from_above = part::at_greater_end(from);
  return desk.pen.work(
      fmt::format("{}/{}/{}", part::name_of(on), feature, part::name_of(axis)), quantity::Kind::kLength,
      fmt::format("from the {} to its place", part::name_of(from)),
      [from_above](auto at, auto side) { return from_above ? side - at : at - side; },
      desk.pen.ask(part::at_path(feature, axis)), desk.pen.ask(part::side_path(desk.route.part, from)));
}

void add_line(std::vector<Scribed>& all, Scribed line, const Printing& print) {
  const auto same = std::find_if(all.begin(), all.end(), [&](const Scribed& other) {
    return line.known && other.known && other.on == line.on && other.from == line.from &&
           print.plain(other.height_mm) == print.plain(line.height_mm);
  });
  if (same == all.end()) {
    all.push_back(std::move(line));
  } else {
    same->what.push_back(line.what.front());
  }
}

std::vector<Scribed> lines_of(Desk& desk) {
  std::vector<Scribed> all;
  for (const part::Feature& feature : desk.route.part.features) {
    const auto place = placed(desk.route.part.blank, feature);
    if (!place) continue;
    for (const Axis axis : place->axes) {
      const Face from = marked_from(desk.route, feature.name, axis);
      const Figure& up = height(desk, place->on, from, feature.name, axis);
      add_line(all,
               {place->on, from, up.value, up.known(), {feature.name + (place->is_wall ? ", wall" : "")}},
               desk.print);
    }
  }
  std::stable_sort(all.begin(), all.end(), [](const Scribed& a, const Scribed& b) {
    if (a.on != b.on) return a.on > b.on;  // the top first
    if (a.from != b.from) return a.from < b.from;
    if (a.known != b.known) return a.known;
    return a.known && a.height_mm < b.height_mm;
  });
  return all;
}

std::string from_words(const part::Part& part, Face side) {
  return is_cut(part, side) ? fmt::format("{}, once it is cut", part::name_of(side))
                            : std::string(part::name_of(side));
}

}  // namespace

void write_mark_out(Desk& desk) {
  desk.sheet.tab = "MARK OUT";
  desk.sheet.name = "lines to scribe";
  ListSection section;
  section.says = {"Stand the work on the side named FROM, scribe across the side named ON.",
                  "The lines are a check: they show a turn missed on a collar. Where there is a collar, "
                  "drill by the collar."};
  section.table.headings = {"ON", "FROM", "HEIGHT", "FOR"};
  section.table.figures = 2;
  section.table.ticks = true;
  for (const Scribed& line : lines_of(desk)) {
    section.table.rows.push_back({std::string(part::name_of(line.on)), from_words(desk.route.part, line.from),
                                  line.known ? desk.print.plain(line.height_mm) : "NOT KNOWN",
                                  listed(line.what)});
  }
  if (!section.table.rows.empty()) desk.sheet.sections.push_back(std::move(section));
}

}  // namespace sparewright::route
