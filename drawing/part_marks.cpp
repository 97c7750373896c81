#include "drawing/part_marks.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/route/printing.hpp"
#include "drawing/part_views.hpp"

namespace sparewright::drawing {
namespace {

using part::Axis;
using part::Dimension;
using part::Face;
using part::Feature;
using part::Formed;
using part::Hole;
using quantity::Kind;

// The figures, read as a drawing wants them.
class Figures {
 public:
  Figures(const ledger::Snapshot& figures, quantity::UnitSystem system, bool both)
      : figures_(figures), print_(system), other_(other(system)), both_(both) {}

  [[nodiscard]] double value(const std::string& name) const { return value_or_nan(figures_, name); }

  // A length that is worked out from others.
  [[nodiscard]] std::string plain(const std::string& name) const {
    const double mm = value(name);
    return std::isnan(mm) ? "NOT KNOWN" : print_.plain(mm) + in_brackets(other_.plain(mm));
  }

  // One line, or two limits, the greater first.
  [[nodiscard]] std::vector<std::string> stacked(const std::string& name, const Dimension& d) const {
    const double least = value(name + "/least");
    const double most = value(name + "/most");
    const double nominal = value(name);
    if (has_no_limits(d) || std::isnan(least) || std::isnan(most)) {
      if (!both_ || std::isnan(nominal) || !is_size(d)) return {size(name, d)};
      return {print_.plain(nominal), in_brackets(other_.plain(nominal)).substr(1)};
    }
    const bool is_fine = most - least < fine_below_mm();
    std::vector<std::string> lines{print_.most(most, is_fine), print_.least(least, is_fine)};
    if (both_) lines.push_back(in_brackets(other_.limits(least, most, is_fine)).substr(1));
    return lines;
  }

  // A size as it stands on a drawing.
  [[nodiscard]] std::string size(const std::string& name, const Dimension& d) const {
    const double nominal = value(name);
    if (std::isnan(nominal)) return "NOT KNOWN";
    if (d.kind == Kind::kAngle)
      return fmt::format("{:.6g} deg", nominal / quantity::unit::degree.to_base(1.0));
    if (d.kind == Kind::kNumber) return d.typed;
    const double least = value(name + "/least");
    const double most = value(name + "/most");
    if (has_no_limits(d) || std::isnan(least) || std::isnan(most))
      return print_.plain(nominal) + in_brackets(other_.plain(nominal));
    const bool is_fine = most - least < fine_below_mm();
    return print_.limits(least, most, is_fine) + in_brackets(other_.limits(least, most, is_fine));
  }

 private:
  static quantity::UnitSystem other(quantity::UnitSystem system) {
    return system == quantity::UnitSystem::kInch ? quantity::UnitSystem::kMetric
                                                 : quantity::UnitSystem::kInch;
  }
  static bool is_size(const Dimension& d) { return d.kind != Kind::kAngle && d.kind != Kind::kNumber; }

  // " [15.90]" where both systems are wanted.
  [[nodiscard]] std::string in_brackets(const std::string& text) const {
    return both_ ? fmt::format(" [{}]", text) : "";
  }

  // Of its own: the general tolerance is said once.
  static bool has_no_limits(const Dimension& d) {
    return !is_size(d) || (std::holds_alternative<quantity::GeneralTolerance>(d.tolerance.form) &&
                           !std::holds_alternative<part::OnMate>(d.size));
  }

  // Bands that the plain number of places would swallow.
  [[nodiscard]] double fine_below_mm() const {
    return print_.system() == quantity::UnitSystem::kInch ? 0.004 * 25.4 : 0.1;
  }

  const ledger::Snapshot& figures_;
  route::Printing print_;
  route::Printing other_;
  bool both_;
};

bool is_strong(const Dimension& d) {
  return d.duty == part::Duty::kFits || d.duty == part::Duty::kLocates;
}

class Marking {
 public:
  Marking(const part::Part& part, const Figures& figures, Marks& marks)
      : part_(part), figures_(figures), marks_(marks) {}

  void add_all() {
    for (std::size_t i = 0; i < part_.features.size(); ++i) {
      const Feature& feature = part_.features[i];
      if (const auto* hole = std::get_if<Hole>(&feature.shape)) {
        add_hole(i, *hole);
      } else if (const auto* flat = std::get_if<part::Flat>(&feature.shape)) {
        add_flat(feature, *flat);
      } else {
        add_form(feature, std::get<Formed>(feature.shape));
      }
    }
    add_blank();
  }

 private:
  [[nodiscard]] std::string path(const Feature& feature, std::string_view local) const {
    return fmt::format("{}/{}", part::feature_path(feature.name), local);
  }
  [[nodiscard]] double side(Face face) const { return figures_.value(part::side_path(part_, face)); }

  // The place of a feature on its side; the middle of the part along axes it says nothing of.
  [[nodiscard]] shape::Point place(const Feature& feature, Face on) const {
    shape::Vector at;
    for (const Axis axis : part::kAxes) {
      const double there = figures_.value(part::at_path(feature.name, axis));
      const double middle = (side(part::face_at(axis, false)) + side(part::face_at(axis, true))) / 2.0;
      part::component(at, axis) = std::isnan(there) ? middle : there;
    }
    const double start = figures_.value(path(feature, "starts at"));
    if (!std::isnan(start)) part::component(at, part::axis_of(on)) = start;
    return {at.x, at.y, at.z};
  }

  void add_position(const Feature& feature, Axis axis, const part::Position& position,
                    const std::string& local, const shape::Point& at, Face on) {
    const auto* face = std::get_if<Face>(&position.from);
    const double start = face != nullptr
                             ? side(*face)
                             : figures_.value(part::at_path(std::get<std::string>(position.from), axis));
    LengthMark mark;
    mark.from = at;
    mark.to = at;
    shape::Vector from = at - shape::Point{};
    if (face == nullptr) {
      const Feature* other = part::find_feature(part_, std::get<std::string>(position.from));
      if (other != nullptr) from = place(*other, on) - shape::Point{};
    }
    part::component(from, axis) = start;
    mark.from = {from.x, from.y, from.z};
    mark.along = axis;
    mark.seen_from = on;
    mark.names = {path(feature, local)};
    mark.says = figures_.stacked(mark.names.front(), position.distance);
    mark.strong = is_strong(position.distance);
    const double apart = std::abs(part::component(mark.to - mark.from, axis));
    if (apart > shape::kShortestSide_mm) {
      add(std::move(mark));
    } else if (mark.strong) {
      add_in_line(feature, axis, position, mark);
    }
  }

  // The limits of stacked(), the least first.
  static std::string in_one_line(const std::vector<std::string>& says) {
    const bool has_limits = says.size() > 1 && !says[1].starts_with('[');
    std::string line = has_limits ? fmt::format("{} to {}", says[1], says[0]) : says.front();
    if (says.back().starts_with('[')) line += " " + says.back();
    return line;
  }

  // A length of nothing cannot be drawn; where it matters that two features stand in line, a note says so.
  void add_in_line(const Feature& feature, Axis axis, const part::Position& position,
                   const LengthMark& mark) {
    const auto* other = std::get_if<std::string>(&position.from);
    NoteMark note;
    note.at = mark.to;
    note.seen_from = mark.seen_from;
    if (const auto* hole = std::get_if<Hole>(&feature.shape); hole != nullptr && !hole->lean) {
      const double diameter = figures_.value(path(feature, "diameter"));
      note.radius_mm = std::isnan(diameter) ? 0.0 : diameter / 2.0;
    }
    note.lines = {
        fmt::format("{}: {} from {}", feature.name, part::name_of(axis),
                    other != nullptr ? *other : std::string(part::name_of(std::get<Face>(position.from)))),
        in_one_line(mark.says)};
    note.strong = true;
    note.names = mark.names;
    marks_.notes.push_back(std::move(note));
  }

  // One length for features that stand in line: the same ends along the same axis, and the same words.
  void add(LengthMark mark) {
    const auto at = [&](const shape::Point& p) { return part::component(p - shape::Point{}, mark.along); };
    const auto same = [&](double a, double b) { return std::abs(a - b) < shape::kShortestSide_mm; };
    const auto there =
        std::find_if(marks_.lengths.begin(), marks_.lengths.end(), [&](const LengthMark& other) {
          return other.along == mark.along && other.says == mark.says &&
                 same(at(other.from), at(mark.from)) && same(at(other.to), at(mark.to)) &&
                 part::axis_of(other.seen_from) == part::axis_of(mark.seen_from);
        });
    if (there == marks_.lengths.end()) {
      marks_.lengths.push_back(std::move(mark));
      return;
    }
    there->names.push_back(mark.names.front());
    there->strong = there->strong || mark.strong;
  }

  // --- holes ---
  void add_hole(std::size_t index, const Hole& hole) {
    const Feature& feature = part_.features[index];
    const shape::Point at = place(feature, hole.into);
    if (!hole.by_angle && hole.placed_by == part::PlacedBy::kCoordinates) {
      for (const auto& [axis, position] : hole.at)
        add_position(feature, axis, position, std::string(part::name_of(axis)), at, hole.into);
    }
    if (index > 0 && is_like(part_.features[index - 1], feature)) return;
    std::size_t alike = 1;
    while (index + alike < part_.features.size() && is_like(part_.features[index + alike], feature))
      ++alike;
    add_hole_note(index, alike, hole, at);
  }

  // Another hole of the same row: all it says of itself is the same.
  static bool is_like(const Feature& one, const Feature& other) {
    const auto* a = std::get_if<Hole>(&one.shape);
    const auto* b = std::get_if<Hole>(&other.shape);
    if (a == nullptr || b == nullptr) return false;
    const auto stem = [](const std::string& name) { return name.substr(0, name.find_last_of(' ')); };
    Hole same = *b;
    const bool by_angle =
        a->by_angle && same.by_angle && a->by_angle->is_diameter && same.by_angle->is_diameter;
    if (by_angle) same.by_angle->angle.and_more = a->by_angle->angle.and_more;  // the next on the same circle
    if (a->around_bar && same.around_bar) same.around_bar->and_more = a->around_bar->and_more;
    if (!a->by_angle == !same.by_angle) same.at = a->at;  // places of their own are drawn apart
    return stem(one.name) == stem(other.name) && part::fingerprint(Feature{"", *a, one.surface}) ==
                                                     part::fingerprint(Feature{"", same, other.surface});
  }

  void add_hole_note(std::size_t index, std::size_t alike, const Hole& hole, const shape::Point& at) {
    const Feature& feature = part_.features[index];
    NoteMark note;
    note.at = at;
    note.seen_from = hole.into;
    const double diameter = figures_.value(path(feature, "diameter"));
    note.radius_mm = std::isnan(diameter) || hole.lean || hole.around_bar ? 0.0 : diameter / 2.0;
    note.strong = is_strong(hole.diameter);
    const auto size = [&](std::string_view local, const Dimension& d) {
      note.names.push_back(path(feature, local));
      return figures_.size(note.names.back(), d);
    };
    const std::string count = alike > 1 ? fmt::format("{} x ", alike) : "";
    std::string title = feature.name;
    if (alike > 1) title = title.substr(0, title.find_last_of(' '));
    note.lines.push_back(fmt::format("{}:", title));
    const bool names_thread = !hole.thread.empty() && !hole.beyond;
    if (names_thread) note.lines.push_back(count + hole.thread);
    const std::string depth = hole.depth ? ", " + size("depth", *hole.depth) + " deep" : " through";
    note.lines.push_back(fmt::format("{}{}dia {}{}", names_thread ? "" : count, made(hole),
                                     size("diameter", hole.diameter),
                                     hole.beyond ? " to " + hole.beyond->gap : depth));
    if (hole.beyond)
      note.lines.push_back(fmt::format("beyond it {}, drill {}{}", hole.thread,
                                       size("tap drill", hole.beyond->tap_drill), depth));
    if (hole.counterbore)
      note.lines.push_back(fmt::format("{} dia {} x {} deep",
                                       hole.make == part::HoleMake::kSpotfaced ? "spotface" : "counterbore",
                                       size("counterbore diameter", hole.counterbore->diameter),
                                       size("counterbore depth", hole.counterbore->depth)));
    if (hole.countersink)
      note.lines.push_back(fmt::format("countersink dia {} x {}",
                                       size("countersink diameter", hole.countersink->diameter),
                                       size("countersink angle", hole.countersink->angle)));
    if (hole.lean)
      note.lines.push_back(fmt::format("leans {} to the {}", size("lean", hole.lean->angle),
                                       part::name_of(hole.lean->towards)));
    if (hole.around_bar)
      note.lines.push_back(fmt::format("{} round the bar from the top{}",
                                       size("around bar", *hole.around_bar), alike > 1 ? ", evenly" : ""));
    if (hole.by_angle) note.lines.push_back(by_angle(feature, *hole.by_angle, alike, note));
    if (hole.placed_by != part::PlacedBy::kCoordinates)
      note.lines.push_back(std::string(part::name_of(hole.placed_by)));
    add_surface(feature, note);
    marks_.notes.push_back(std::move(note));
  }

  static std::string made(const Hole& hole) {
    if (hole.make == part::HoleMake::kReamed) return "ream ";
    return hole.make == part::HoleMake::kBored ? "bore " : "";
  }

  [[nodiscard]] std::string by_angle(const Feature& feature, const part::ByAngle& by, std::size_t alike,
                                     NoteMark& note) const {
    const auto size = [&](std::string_view local, const Dimension& d) {
      note.names.push_back(path(feature, local));
      return figures_.size(note.names.back(), d);
    };
    if (by.is_diameter)
      return fmt::format("on {} bolt circle of {}, {}from {}", size("bolt circle", by.radius), by.from,
                         alike > 1 ? "evenly " : "", size("angle", by.angle));
    return fmt::format("{} from {} at {}", size("radius", by.radius), by.from, size("angle", by.angle));
  }

  // --- flats ---
  void add_flat(const Feature& feature, const part::Flat& flat) {
    const Axis axis = part::axis_of(flat.side);
    const shape::Point at = place(feature, flat.side);
    shape::Vector from = at - shape::Point{};
    shape::Vector to = from;
    part::component(to, axis) = figures_.value(part::at_path(feature.name, axis));
    part::component(from, axis) = side(part::opposite(flat.side));
    if (flat.region) {  // beside the wall, in the part that is milled
      const Axis along = flat.region->along;
      const double end = side(part::face_at(along, flat.region->towards_greater));
      part::component(to, along) = end;
      part::component(from, along) = end;
    }
    LengthMark mark{{from.x, from.y, from.z},
                    {to.x, to.y, to.z},
                    axis,
                    axis == Axis::kY ? Face::kTop : Face::kFront,
                    figures_.stacked(path(feature, "leaves"), flat.leaves),
                    is_strong(flat.leaves),
                    {path(feature, "leaves")}};
    if (!feature.surface.empty()) {
      NoteMark note;
      note.at = mark.to;
      note.seen_from = mark.seen_from;
      note.lines.push_back(feature.name + ":");
      add_surface(feature, note);
      marks_.notes.push_back(std::move(note));
    }
    if (part::is_on_finished(part_, feature, "leaves")) add(std::move(mark));
    if (flat.region)
      add_position(feature, flat.region->along, flat.region->start, "wall", at,
                   flat.region->along == Axis::kY ? Face::kTop : Face::kFront);
  }

  static void add_surface(const Feature& feature, NoteMark& note) {
    if (!feature.surface.empty()) note.lines.push_back("surface Ra " + feature.surface);
  }

  // --- forms ---
  void add_form(const Feature& feature, const Formed& formed) {
    const shape::Point at = form_place(feature, formed);
    for (const auto& [axis, position] : formed.at)
      add_position(feature, axis, position, std::string(part::name_of(axis)), at, formed.side);
    if (formed.form == part::Form::kChuckingPiece) return add_over_all(feature, formed);
    NoteMark note;
    note.at = at;
    const part::FormRow& row = part::row_of(formed.form);
    note.seen_from = row.round_work ? Face::kFront : row.in_hole ? formed.of_into : formed.side;
    const std::string kind(part::kind_of(feature));
    note.lines.push_back(fmt::format("{}{}{}", feature.name, feature.name == kind ? "" : ": " + kind,
                                     formed.thread.empty() ? "" : " " + formed.thread));
    std::vector<std::string> sizes;
    for (const part::FormSize& size : part::row_of(formed.form).sizes) {
      const auto found = formed.sizes.find(size.name);
      if (found == formed.sizes.end() || !part::is_on_finished(part_, feature, size.name)) continue;
      note.names.push_back(path(feature, size.name));
      note.strong = note.strong || is_strong(found->second);
      sizes.push_back(fmt::format("{} {}", size.name, figures_.size(note.names.back(), found->second)));
    }
    const double width = figures_.value(path(feature, "width"));
    note.across_mm = std::isnan(width) ? 0.0 : width;
    constexpr std::size_t kOnOneLine = 2;
    for (std::size_t i = 0; i < sizes.size(); i += kOnOneLine) {
      const std::size_t end = std::min(sizes.size(), i + kOnOneLine);
      note.lines.push_back(
          fmt::format("{}", fmt::join(sizes.begin() + static_cast<std::ptrdiff_t>(i),
                                      sizes.begin() + static_cast<std::ptrdiff_t>(end), ", ")));
    }
    add_corners(feature, formed, note);
    add_surface(feature, note);
    marks_.notes.push_back(std::move(note));
  }

  // The finished length beside the piece that is cut off; of the piece itself nothing is left to draw.
  void add_over_all(const Feature& feature, const Formed& formed) {
    if (!part::is_on_finished(part_, feature, "over all")) return;
    const std::string name = path(feature, "over all");
    const double z = side(Face::kUnderside);
    LengthMark mark;
    mark.from = {side(part::opposite(formed.side)), side(Face::kFront), z};
    mark.to = {side(formed.side), side(Face::kFront), z};
    mark.seen_from = Face::kFront;
    mark.says = {figures_.plain(name)};
    mark.names = {name};
    add(std::move(mark));
  }

  // Where the leader of a form points.
  [[nodiscard]] shape::Point form_place(const Feature& feature, const Formed& formed) const {
    if (!formed.of.empty()) {
      const Feature* hole = part::find_feature(part_, formed.of);
      if (hole != nullptr) return place(*hole, formed.of_into);
    }
    shape::Point at = place(feature, formed.side);
    if (formed.form == part::Form::kSplit) {
      const Axis axis = part::axis_of(formed.side);
      shape::Vector split = at - shape::Point{};
      const double into = part::at_greater_end(formed.side) ? -1.0 : 1.0;
      part::component(split, axis) += into * figures_.value(path(feature, "from side"));
      return {split.x, split.y, split.z};
    }
    if (!part::row_of(formed.form).round_work) return at;
    const double way = part::at_greater_end(formed.side) ? -1.0 : 1.0;
    const auto mm = [&](std::string_view local) {
      const double value = figures_.value(path(feature, local));
      return std::isnan(value) ? 0.0 : value;
    };
    at.x += way * (mm("from end") + mm("length") / 2.0 + mm("width") / 2.0);
    const double diameter = std::max({mm("diameter"), mm("large diameter"), mm("small diameter")});
    at.z = (side(Face::kUnderside) + side(Face::kTop) + diameter) / 2.0;
    return at;
  }

  // Every corner of a profile by its coordinates: a table in the note.
  void add_corners(const Feature& feature, const Formed& formed, NoteMark& note) const {
    const auto axes = part::axes_in(formed.side);
    for (std::size_t i = 0; i < formed.corners.size(); ++i) {
      const part::ProfileCorner& corner = formed.corners[i];
      const auto size = [&](std::string_view local, const Dimension& d) {
        note.names.push_back(path(feature, fmt::format("corner {}/{}", i + 1, local)));
        return figures_.size(note.names.back(), d);
      };
      std::string line =
          fmt::format("corner {}: {} {}, {} {}", i + 1, part::name_of(axes[0]),
                      size(part::name_of(axes[0]), corner.first.distance), part::name_of(axes[1]),
                      size(part::name_of(axes[1]), corner.second.distance));
      if (corner.fillet) line += ", R " + size("fillet", *corner.fillet);
      if (corner.arc)
        line += fmt::format(", then arc R {}{}", size("arc", *corner.arc), corner.bulges ? "" : " inwards");
      note.lines.push_back(std::move(line));
    }
  }

  // --- the blank ---
  // Overall sizes of what is not cut to size.
  void add_blank() {
    for (const Axis axis : part::kAxes) {
      if (part::is_bar(part_.blank.shape) && axis == Axis::kY) continue;  // one across: from the front
      const Face low = part::face_at(axis, false);
      const Face high = part::face_at(axis, true);
      const bool is_cut = part::side_path(part_, low) != "blank/" + std::string(part::name_of(low)) ||
                          part::side_path(part_, high) != "blank/" + std::string(part::name_of(high));
      if (is_cut) continue;
      shape::Vector from{side(Face::kLeftEnd), side(Face::kFront), side(Face::kUnderside)};
      shape::Vector to = from;
      part::component(to, axis) = side(high);
      LengthMark mark;
      mark.from = {from.x, from.y, from.z};
      mark.to = {to.x, to.y, to.z};
      mark.along = axis;
      mark.seen_from = axis == Axis::kY ? Face::kTop : Face::kFront;
      mark.names = {part::blank_path(part_.blank, axis)};
      const part::BlankSize& size = part_.blank.sizes.at(static_cast<std::size_t>(axis));
      mark.says = {fmt::format("{} stock", size.nominal.typed)};
      add(std::move(mark));
    }
  }

  const part::Part& part_;
  const Figures& figures_;
  Marks& marks_;
};

}  // namespace

Marks marks_of(const part::Part& part, const ledger::Snapshot& figures, quantity::UnitSystem system,
               bool both_systems) {
  Marks marks;
  const Figures read(figures, system, both_systems);
  Marking(part, read, marks).add_all();
  return marks;
}

}  // namespace sparewright::drawing
