// How the work stands on the lathe between two of its works: where its ends are, what its outside is.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/route/lathe_bench.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using part::Form;
using quantity::Kind;

const Figure& blank_end(const LatheBench& bench, part::Face face) {
  return bench.pen.ask(fmt::format("blank/{}", part::name_of(face)));
}

// Over the corners, where it has any.
const Figure& blank_outside(LatheBench& bench) {
  const part::Blank& blank = bench.route.part.blank;
  const Figure& across = bench.pen.ask(part::blank_path(blank, part::Axis::kY));
  if (part::is_round(blank.shape) || blank.shape == part::BlankShape::kHexBar) return across;
  return bench.pen.work(
      "work/over its corners", Kind::kDiameter, "the diagonal of its section",
      [](auto a, auto b) {
        using std::sqrt;
        return sqrt(a * a + b * b);
      },
      across, bench.pen.ask(part::blank_path(blank, part::Axis::kZ)));
}

// A turned form that changes the outside: its largest diameter, and how long it is.
std::string diameter_of(const part::Formed& formed) {
  switch (formed.form) {
    case Form::kTurned:
    case Form::kThread:
    case Form::kKnurl:
    case Form::kGroove:
      return "diameter";
    case Form::kTaper:
      return "large diameter";
    default:
      return "";
  }
}

double size_of(LatheBench& bench, const std::string& feature, const part::Formed& formed,
               const std::string& local) {
  const auto size = formed.sizes.find(local);
  return size == formed.sizes.end() ? 0.0 : size_to_make(bench, feature, local, size->second).value;
}

double length_of(LatheBench& bench, const std::string& feature, const part::Formed& formed) {
  return size_of(bench, feature, formed, "length") + size_of(bench, feature, formed, "width");
}

void move_end(LatheBench& bench, part::Face side, const Figure& at) {
  if (!at.known()) return;
  (side == bench.on.free_end ? bench.end : bench.far_end) = &at;
  bench.outside.cut_off(at.value, part::at_greater_end(side));
}

void leave_turned(LatheBench& bench, const std::string& feature, const part::Formed& formed) {
  const std::string local = diameter_of(formed);
  if (local.empty()) return;
  const double way = part::at_greater_end(formed.side) ? -1.0 : 1.0;
  const double start = bench.feature_figure(feature, "starts at").value;
  const double from_end = size_of(bench, feature, formed, "from end");
  const double to = start + way * (from_end + length_of(bench, feature, formed));
  double from = start + way * from_end;
  // What still stands out beyond the finished end is turned too.
  const bool from_outside = !formed.sizes.contains("from end") && !formed.behind_piece;
  if (from_outside) from = way > 0.0 ? bench.outside.low_mm() : bench.outside.high_mm();
  const Figure& diameter = size_to_make(bench, feature, local, formed.sizes.find(local)->second);
  if (std::isfinite(from) && std::isfinite(to)) bench.outside.turn(from, to, diameter);
}

}  // namespace

const Figure& size_to_make(LatheBench& bench, const std::string& feature, const std::string& local,
                           const part::Dimension& dimension) {
  const Figure*& made = bench.made[fmt::format("{}/{}", feature, local)];
  if (made == nullptr) made = &to_make(bench, feature, local, dimension);
  return *made;
}

void leave(LatheBench& bench, const part::Feature& feature) {
  if (const auto* flat = std::get_if<part::Flat>(&feature.shape)) {
    if (part::axis_of(flat->side) == part::Axis::kX && !flat->region)
      move_end(bench, flat->side, bench.feature_figure(feature.name, "at x"));
    return;
  }
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  if (formed == nullptr) return;
  if (formed->form == Form::kChuckingPiece) {
    move_end(bench, formed->side, bench.feature_figure(feature.name, "at x"));
  } else {
    leave_turned(bench, feature.name, *formed);
  }
}

void start_from_work_before(LatheBench& bench) {
  const Figure& left = blank_end(bench, part::Face::kLeftEnd);
  const Figure& right = blank_end(bench, part::Face::kRightEnd);
  bench.end = bench.on.free_end == part::Face::kRightEnd ? &right : &left;
  bench.far_end = bench.on.free_end == part::Face::kRightEnd ? &left : &right;
  const Figure& outside = blank_outside(bench);
  if (left.known() && right.known() && outside.known())
    bench.outside = Outside(left.value, right.value, outside);
  for (const Setup& setup : bench.route.plan.setups) {
    if (setup.op == bench.setup.op) break;
    for (const Work& work : setup.works) {
      const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
      if (feature != nullptr && !work.joins) leave(bench, *feature);
    }
  }
  bench.held_far = bench.far_end;
}

double reaches_mm(LatheBench& bench, const part::Feature& feature) {
  // Counted from the end as this setup faces it.
  const Figure& end = bench.side(bench.on.free_end);
  double at = std::nan("");
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  if (formed == nullptr) return 0.0;
  if (formed->form == Form::kChuckingPiece) {
    at = bench.feature_figure(feature.name, "at x").value;
  } else if (formed->side == bench.on.free_end) {
    at = bench.feature_figure(feature.name, "starts at").value +
         bench.way() *
             (size_of(bench, feature.name, *formed, "from end") + length_of(bench, feature.name, *formed));
  }
  const double reaches = bench.way() * (at - end.value);
  return std::isfinite(reaches) ? reaches : 0.0;
}

}  // namespace sparewright::route
