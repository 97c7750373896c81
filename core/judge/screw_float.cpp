// What a clearance hole lets its screw move, against how far the hole can be out of its place.
#include <cmath>

#include <fmt/format.h>

#include "core/handbook/socket_head_screws.hpp"
#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

constexpr const char* kSource =
    "fixed screws: hole less screw takes up what the places of both parts are out (ASME Y14.5, from memory)";

// How far the hole's middle can lie from its place, its two tolerances square to each other.
const Figure& write_out_of_place(Pen& pen, const part::Feature& feature, const part::Hole& hole) {
  double squares = 0.0;
  std::vector<const Figure*> inputs;
  for (const auto& [axis, position] : hole.at) {
    const std::string place = fmt::format("{}/{}", part::feature_path(feature.name), part::name_of(axis));
    const Figure& least = pen.need(place + "/least");
    const Figure& most = pen.need(place + "/most");
    const double half = (most.value - least.value) / 2.0;
    squares += half * half;
    inputs.insert(inputs.end(), {&least, &most});
  }
  ledger::Decision out;
  out.kind = Kind::kLength;
  out.value = std::sqrt(squares);
  out.words = "its tolerances along both axes, square to each other";
  out.inputs = inputs;
  return pen.decide("out of place", out);
}

void judge_float(Pen& pen, const Subject& subject, const part::Feature& feature, const part::Hole& hole) {
  const auto screw = handbook::socket_head_screw(hole.screw->size);
  if (!screw) return;
  const route::Printing print(subject.route.system);
  const Figure& body =
      limit(pen, "screw body", screw->body_max.base(), Origin::kStandard, handbook::cite(screw->source));
  const Figure& out = write_out_of_place(pen, feature, hole);
  const Figure& room = pen.work(
      "float", Kind::kLength, "least hole less the greatest screw", [](auto h, auto s) { return h - s; },
      pen.ask(part::feature_path(feature.name) + "/diameter/least"), body);
  const Figure& taken = pen.work(
      "taken by its place", Kind::kLength, "twice what the hole can be out", [](auto o) { return 2.0 * o; },
      out);
  pen.judge({.check = "screw finds its thread",
             .subject = feature.name,
             .figure = &room,
             .low = &taken,
             .reason = fmt::format("the screw has {} of float and the hole can be out by {}, which takes {}; "
                                   "the rest is for its mate",
                                   route::or_not_known(room, print.plain(room.value)), print.plain(out.value),
                                   print.plain(taken.value)),
             .source = kSource,
             .todo = "spot the hole through its mate, hold its place closer, or drill it larger"});
}

bool is_placed_here(const part::Hole& hole) {
  return hole.placed_by == part::PlacedBy::kCoordinates && !hole.at.empty();
}

}  // namespace

void add_screw_float_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    // A hole that is tapped for its own screw is drilled in one line with its thread.
    if (hole == nullptr || !hole->screw || hole->beyond || hole->through || !is_placed_here(*hole)) continue;
    stages.push_back(check_stage(subject, "screw float", feature.name, [subject, feature](Pen& pen) {
      judge_float(pen, *subject, feature, std::get<part::Hole>(feature.shape));
    }));
  }
}

}  // namespace sparewright::judge
