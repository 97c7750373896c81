#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include "core/handbook/v_block.hpp"
#include "core/part/writing.hpp"

namespace sparewright::part {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

// The local name below "blank".
std::string local_name(const Blank& blank, Axis axis) {
  return blank_path(blank, axis).substr(std::string_view("blank/").size());
}

const Figure& write_found(Pen& pen, const std::string& local, const BlankSize& size, Kind kind) {
  ledger::Root root;
  root.kind = kind;
  root.value = size.found->base;
  root.typed = size.found->typed;
  root.source = fmt::format("found with {}", size.found_with);
  const Figure& one_reading = pen.ask(fmt::format("good to/{}/outside jaws/one reading", size.found_with));
  if (one_reading.known()) {
    root.shares = {{fmt::format("{}/{}/reading", pen.stage(), local), one_reading.u()}};
  } else {
    root.value.reset();
  }
  return pen.root(local, root);
}

// Within mill limits nothing is said about where the size lies: rectangular (JCGM 100:2008, 4.3.7).
const Figure& write_nominal(Pen& pen, const std::string& local, const BlankSize& size, Kind kind) {
  ledger::Root root;
  root.kind = kind;
  root.value = size.nominal.base + (size.mill_lower_mm + size.mill_upper_mm) / 2.0;
  root.origin = Origin::kChoice;
  root.typed = size.nominal.typed;
  root.source = size.mill_source.empty() ? "nominal; mill limits not known" : size.mill_source;
  const double half_width = (size.mill_upper_mm - size.mill_lower_mm) / 2.0;
  if (half_width > 0.0) {
    root.shares = {{fmt::format("{}/{}/mill limits", pen.stage(), local), half_width / std::sqrt(3.0)}};
  }
  return pen.root(local, root);
}

const Figure& write_size(Pen& pen, const BlankSize& size, const std::string& local, Kind kind) {
  const Figure& figure =
      size.found ? write_found(pen, local, size, kind) : write_nominal(pen, local, size, kind);
  const auto limit = [&](std::string_view name, double deviation) {
    ledger::Root root;
    root.kind = Kind::kLength;
    root.value = size.nominal.base + deviation;
    root.origin = Origin::kStandard;
    root.source = size.mill_source;
    pen.root(fmt::format("{}/{}", local, name), root);
  };
  const auto same = [](auto x) { return x; };
  if (size.found && size.found_below_mm + size.found_above_mm > 0.0) {
    const auto off = [&](std::string_view name, std::string_view words, double by) {
      pen.work(
          fmt::format("{}/{}", local, name), kind, words, [by](auto x) { return x + by; }, figure);
    };
    off("least", "the least of the readings", -size.found_below_mm);
    off("most", "the greatest of the readings", size.found_above_mm);
  } else if (size.found || size.mill_source.empty()) {
    pen.work(local + "/least", kind, size.found ? "as found" : "nominal", same, figure);
    pen.work(local + "/most", kind, size.found ? "as found" : "nominal", same, figure);
  } else {
    limit("least", size.mill_lower_mm);
    limit("most", size.mill_upper_mm);
  }
  return figure;
}

const Figure& write_across_corners(Pen& pen, const std::string& local, const Figure& flats) {
  const auto corners = [](auto across) { return across * (2.0 / std::numbers::sqrt3); };
  pen.work(local + "/least", Kind::kLength, "across flats, times 2 over root 3", corners,
           pen.ask("blank/across flats/least"));
  pen.work(local + "/most", Kind::kLength, "across flats, times 2 over root 3", corners,
           pen.ask("blank/across flats/most"));
  return pen.work(local, Kind::kLength, "across flats, times 2 over root 3", corners, flats);
}

// The size along an axis, written where it is not written yet.
const Figure& write_along(Pen& pen, const Blank& blank, Axis axis) {
  if (axis == Axis::kZ && (is_one_across(blank.shape) || blank.shape == BlankShape::kHexBar))
    return pen.ask(blank_path(blank, axis));
  const Kind kind = is_round(blank.shape) && axis != Axis::kX ? Kind::kDiameter : Kind::kLength;
  const BlankSize& size = blank.sizes.at(static_cast<std::size_t>(axis));
  if (axis == Axis::kY && blank.shape == BlankShape::kHexBar)
    return write_across_corners(pen, local_name(blank, axis),
                                write_size(pen, size, local_name(blank, Axis::kZ), Kind::kLength));
  return write_size(pen, size, local_name(blank, axis), kind);
}

// As it was found with the instrument of the blank's sizes.
void write_as_found(Pen& pen, const Blank& blank, const std::string& local, const quantity::Typed& found,
                    Kind kind) {
  BlankSize size;
  size.found = found;
  size.found_with = blank.sizes.front().found_with;
  write_found(pen, local, size, kind);
}

void write_casting(Pen& pen, const Blank& blank) {
  for (const RoughFace& face : blank.rough)
    write_as_found(pen, blank, fmt::format("uneven {}", name_of(face.side)), face.uneven, Kind::kLength);
  for (const CoredHole& hole : blank.cored) {
    const std::string below = fmt::format("cored {}", hole.name);
    write_as_found(pen, blank, below + "/diameter", hole.diameter, Kind::kDiameter);
    for (const auto& [axis, at] : hole.at)
      write_as_found(pen, blank, fmt::format("{}/at {}", below, name_of(axis)), at, Kind::kCoordinate);
  }
}

// "lobing": how far the bar is out of round, greatest radius less least; what it measures over its lobes is that much more
// than a micrometer shows.
void write_lobing(Pen& pen, const Lobing& lobing) {
  const double factor = handbook::v_block_factor(lobing.lobes, lobing.v_block.base);
  BlankSize swing;
  swing.found = lobing.swing;
  swing.found_with = lobing.found_with;
  pen.work(
      "lobing", Kind::kLength,
      fmt::format("swing over {:.3g}, what {} lobes make of it in that V-block; {}", factor, lobing.lobes,
                  handbook::cite(handbook::kVBlock)),
      [factor](auto s) { return s / factor; }, write_found(pen, "lobing/swing", swing, Kind::kLength));
}

}  // namespace

void write_blank(Pen& pen, const Blank& blank) {
  if (blank.bore) write_size(pen, *blank.bore, "bore", Kind::kDiameter);
  write_casting(pen, blank);
  if (blank.lobing) write_lobing(pen, *blank.lobing);
  for (const Axis axis : kAxes) {
    const Figure& size = write_along(pen, blank, axis);
    ledger::Root zero;
    zero.kind = Kind::kCoordinate;
    zero.value = 0.0;
    zero.origin = Origin::kStandard;
    zero.source = "the part frame starts here";
    pen.root(name_of(face_at(axis, false)), zero);
    pen.work(
        name_of(face_at(axis, true)), Kind::kCoordinate, "the blank's size", [](auto x) { return x; }, size);
  }
}

}  // namespace sparewright::part
