// Whether the finished part goes where it is to stand, and through what it has to pass on the way.
#include "core/judge/space.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/judge/checks.hpp"
#include "core/shape/metal_bounds.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;

constexpr const char* kSource = "the exact shapes at nominal size; the room is the job's";
constexpr const char* kByRays = "of the finished part, by rays through the exact shapes";

struct Side {
  std::string name;  // "length"
  double part_mm = 0.0;
  double room_mm = 0.0;
};

const Side& tightest(const std::vector<Side>& sides) {
  return *std::min_element(sides.begin(), sides.end(), [](const Side& a, const Side& b) {
    return a.room_mm - a.part_mm < b.room_mm - b.part_mm;
  });
}

struct Asked {
  std::string check;
  std::string where;  // "the room for it is"
};

void judge_side(Pen& pen, const route::Printing& print, const Side& side, const Asked& asked) {
  const Figure& size = limit(pen, side.name, side.part_mm, Origin::kStandard, kByRays);
  const Figure& room =
      limit(pen, side.name + " of the room", side.room_mm, Origin::kChoice, "the job's [space]");
  pen.judge({.check = asked.check,
             .subject = "part",
             .figure = &size,
             .high = &room,
             .reason = fmt::format("its {} is {} and {} {}", side.name, print.plain(side.part_mm),
                                   asked.where, print.plain(side.room_mm)),
             .source = kSource,
             .todo = fmt::format("take {} off its {}", print.plain(side.part_mm - side.room_mm), side.name)});
}

std::array<double, 3> sorted(std::array<double, 3> sizes) {
  std::sort(sizes.begin(), sizes.end());
  return sizes;
}

// Turned by quarters, the best way is longest to longest.
void judge_envelope(Pen& pen, const Subject& subject) {
  const Envelope& room = *subject.space.envelope;
  const shape::Vector size = shape::metal_bounds(pen.need_value<shape::Recipe>(part::kRecipe).work()).size();
  std::array<double, 3> part{size.x, size.y, size.z};
  std::array<double, 3> space{room.length.base, room.width.base, room.height.base};
  std::array<std::string, 3> names{"length", "width", "height"};
  if (room.any_way) {
    part = sorted(part);
    space = sorted(space);
    names = {"least size", "middle size", "greatest size"};
  }
  std::vector<Side> sides;
  for (std::size_t i = 0; i < 3; ++i)
    sides.push_back({names.at(i), part.at(i), space.at(i)});
  judge_side(pen, route::Printing(subject.route.system), tightest(sides),
             {.check = "part has room", .where = "the room for it is"});
}

// The two sides of the part that pass together, against those of the opening: longer to longer.
Side through_rectangle(double one_mm, double other_mm, const Opening& opening) {
  const auto [low, high] = std::minmax(opening.width->base, opening.height->base);
  const auto [least, most] = std::minmax(one_mm, other_mm);
  return tightest({{"smaller side", least, low}, {"larger side", most, high}});
}

void judge_opening(Pen& pen, const Subject& subject) {
  const Opening& opening = *subject.space.opening;
  const shape::Work work = pen.need_value<shape::Recipe>(part::kRecipe).work();
  const shape::Bounds box = shape::metal_bounds(work);
  const shape::Vector size = box.size();
  const std::array<double, 3> sizes{size.x, size.y, size.z};
  std::vector<Side> ways;  // the tightest side of each way to pass it through
  for (std::size_t axis = 0; axis < 3; ++axis) {
    if (opening.diameter) {
      const double across = 2 * shape::metal_radius_mm(work, static_cast<int>(axis), box.middle());
      ways.push_back({"size across corners", across, opening.diameter->base});
    } else {
      ways.push_back(through_rectangle(sizes.at((axis + 1) % 3), sizes.at((axis + 2) % 3), opening));
    }
  }
  const Side& best = *std::max_element(ways.begin(), ways.end(), [](const Side& a, const Side& b) {
    return a.room_mm - a.part_mm < b.room_mm - b.part_mm;
  });
  judge_side(pen, route::Printing(subject.route.system), best,
             {.check = "part passes the opening", .where = "the opening's is"});
}

void add(base::Hasher& h, const quantity::Typed& typed) {
  h.add(typed.base).add(typed.typed);
}
void add(base::Hasher& h, const std::optional<quantity::Typed>& typed) {
  h.add(typed.has_value());
  if (typed) add(h, *typed);
}

}  // namespace

void add_to(base::Hasher& h, const Space& space) {
  h.add(space.envelope.has_value()).add(space.opening.has_value());
  if (space.envelope) {
    for (const quantity::Typed& side :
         {space.envelope->length, space.envelope->width, space.envelope->height})
      add(h, side);
    h.add(space.envelope->any_way);
  }
  if (!space.opening) return;
  add(h, space.opening->width);
  add(h, space.opening->height);
  add(h, space.opening->diameter);
}

void add_space_checks(const Shared& subject, Stages& stages) {
  if (subject->space.envelope)
    stages.push_back(
        check_stage(subject, "envelope", "part", [subject](Pen& pen) { judge_envelope(pen, *subject); }));
  if (subject->space.opening)
    stages.push_back(
        check_stage(subject, "opening", "part", [subject](Pen& pen) { judge_opening(pen, *subject); }));
}

}  // namespace sparewright::judge
