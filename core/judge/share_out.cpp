// A casting: whether every machined surface cleans up as the part lies in it, and where it would lie best.
#include <cmath>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/judge/checks.hpp"
#include "core/part/sharing.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Pen;
using part::Axis;
using part::Face;

// A face or a cored hole, its metal to come off as a figure.
struct Surface {
  std::string name;
  const Figure* metal = nullptr;
};

struct Casting {
  std::vector<Surface> surfaces;
  std::vector<part::SharedFace> faces;
  std::vector<part::SharedHole> holes;
  std::array<bool, 3> is_cut_low{};
  std::array<bool, 3> is_cut_high{};
};

void add_face(Pen& pen, const part::Part& part, const part::RoughFace& rough, Casting& casting) {
  const std::string side(part::name_of(rough.side));
  const std::string finished = part::side_path(part, rough.side);
  if (finished == "blank/" + side) return;  // it stays as cast
  const double way = part::at_greater_end(rough.side) ? 1.0 : -1.0;
  const Figure& metal = pen.work(
      "metal on " + side, quantity::Kind::kLength, "from the lowest spot of the casting to the finished side",
      [way](auto cast, auto uneven, auto side_at) { return way * (cast - side_at) - uneven; },
      pen.ask("blank/" + side), pen.ask("blank/uneven " + side), pen.ask(finished));
  casting.surfaces.push_back({side, &metal});
  casting.faces.push_back({rough.side, metal.value});
  const auto axis = static_cast<std::size_t>(part::axis_of(rough.side));
  (part::at_greater_end(rough.side) ? casting.is_cut_high : casting.is_cut_low).at(axis) = true;
}

void add_hole(Pen& pen, const part::CoredHole& cored, Casting& casting) {
  const std::string below = fmt::format("blank/cored {}/", cored.name);
  const std::string bore = part::feature_path(cored.finished_by);
  const auto axes = part::axes_in(cored.into);
  const auto at = [&](const std::string& path, Axis axis) -> const Figure& {
    return pen.ask(fmt::format("{}at {}", path, part::name_of(axis)));
  };
  const Figure& metal = pen.work(
      "metal in " + cored.name, quantity::Kind::kLength,
      "the least finished radius less the cored one, less how far their middles are apart",
      [](auto least, auto cast, auto u, auto v, auto cu, auto cv) {
        using std::sqrt;
        constexpr double kOneMiddle_mm2 = 1e-12;  // a root has no slope at nothing
        return (least - cast) / 2.0 - sqrt((u - cu) * (u - cu) + (v - cv) * (v - cv) + kOneMiddle_mm2);
      },
      pen.ask(bore + "/diameter/least"), pen.ask(below + "diameter"), at(bore + "/", axes[0]),
      at(bore + "/", axes[1]), at(below, axes[0]), at(below, axes[1]));
  casting.surfaces.push_back({cored.name, &metal});
  part::SharedHole hole{cored.into, {}, 0.0};
  for (const Axis axis : axes)
    part::component(hole.off, axis) = at(bore + "/", axis).value - at(below, axis).value;
  hole.metal_mm = (pen.need(bore + "/diameter/least").value - pen.need(below + "diameter").value) / 2.0;
  casting.holes.push_back(hole);
}

// "take 3.20 off the left end": the sides that come first, and how much then comes off them.
std::string advice(Pen& pen, const Subject& subject, const part::Sharing& best) {
  constexpr double kWorthSaying_mm = 0.05;
  const route::Printing print(subject.route.system);
  std::vector<std::string> moves;
  for (const Axis axis : part::kAxes) {
    const double shift = part::component(best.shift_mm, axis);
    if (std::abs(shift) < kWorthSaying_mm) continue;
    const Face low = part::face_at(axis, false);
    const double off = pen.need(part::side_path(subject.route.part, low)).value -
                       pen.need(fmt::format("blank/{}", part::name_of(low))).value + shift;
    moves.push_back(fmt::format("take {} off the {}", print.plain(off), part::name_of(low)));
  }
  if (best.least_mm <= 0.0)
    return fmt::format("no sharing cleans it up: {} is missing at best; build it up, or take another casting",
                       print.plain(-best.least_mm));
  return moves.empty() ? ""
                       : fmt::format("{}: then at least {} comes off everywhere", fmt::join(moves, ", "),
                                     print.plain(best.least_mm));
}

void judge_sharing(Pen& pen, const Subject& subject) {
  const part::Part& part = subject.route.part;
  const route::Printing print(subject.route.system);
  Casting casting;
  for (const part::RoughFace& rough : part.blank.rough)
    add_face(pen, part, rough, casting);
  for (const part::CoredHole& cored : part.blank.cored)
    add_hole(pen, cored, casting);
  const Surface* least = nullptr;
  for (const Surface& surface : casting.surfaces) {
    if (least == nullptr || !surface.metal->known() || surface.metal->value < least->metal->value)
      least = &surface;
    if (!surface.metal->known()) break;
  }
  if (least == nullptr) return;
  std::array<bool, 3> free_axes{};
  for (std::size_t axis = 0; axis < free_axes.size(); ++axis)
    free_axes.at(axis) = casting.is_cut_low.at(axis) && casting.is_cut_high.at(axis);
  const part::Sharing best = part::best_sharing(casting.faces, casting.holes, free_axes);
  const Figure& metal = pen.work(
      "least metal", quantity::Kind::kLength, "the least of all machined surfaces", [](auto x) { return x; },
      *least->metal);
  pen.judge({.check = "casting is shared out",
             .subject = "blank",
             .figure = &metal,
             .low = &limit(pen, "nothing to come off", 0.0, ledger::Origin::kStandard, "the surface as cast"),
             .reason = fmt::format("{} comes off at {}, the least of all",
                                   route::or_not_known(metal, print.plain(metal.value)), least->name),
             .source = "plain geometry, at the lowest spots found",
             .todo = advice(pen, subject, best)});
}

}  // namespace

void add_share_out_checks(const Shared& subject, Stages& stages) {
  const part::Blank& blank = subject->route.part.blank;
  if (blank.rough.empty() && blank.cored.empty()) return;
  stages.push_back(
      check_stage(subject, "share out", "blank", [subject](Pen& pen) { judge_sharing(pen, *subject); }));
}

}  // namespace sparewright::judge
