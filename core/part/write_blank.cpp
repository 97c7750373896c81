#include <cmath>

#include <fmt/format.h>

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

const Figure& write_size(Pen& pen, const Blank& blank, Axis axis) {
  const BlankSize& size = blank.sizes.at(static_cast<std::size_t>(axis));
  const std::string local = local_name(blank, axis);
  const Kind kind =
      blank.shape == BlankShape::kRoundBar && axis != Axis::kX ? Kind::kDiameter : Kind::kLength;
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
  if (size.found || size.mill_source.empty()) {
    pen.work(local + "/least", kind, size.found ? "as found" : "nominal", same, figure);
    pen.work(local + "/most", kind, size.found ? "as found" : "nominal", same, figure);
  } else {
    limit("least", size.mill_lower_mm);
    limit("most", size.mill_upper_mm);
  }
  return figure;
}

}  // namespace

void write_blank(Pen& pen, const Blank& blank) {
  for (const Axis axis : kAxes) {
    const bool again = axis == Axis::kZ && blank.shape == BlankShape::kRoundBar;
    const Figure& size = again ? pen.ask(blank_path(blank, axis)) : write_size(pen, blank, axis);
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
