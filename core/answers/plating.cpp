// Sizes before something is added or after something is taken: plating, and a slit that closes.
#include <cmath>
#include <numbers>
#include <optional>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"

namespace sparewright::answers {
namespace {

using quantity::Length;
using quantity::UnitSystem;

constexpr handbook::Source kBothSides{"plating lies on both sides of a diameter", "",
                                      handbook::Basis::kDerived};
constexpr handbook::Source kSlitAround{"the slit is taken off the length round the bore: slit / pi", "",
                                       handbook::Basis::kDerived};
constexpr handbook::Source kSlitAcross{"halves that close over a slit come nearer by its width", "",
                                       handbook::Basis::kDerived};

}  // namespace

base::Result<Answer> plating(const Question& question) {
  EntryReader read(question);
  const Length thick = read.size("thickness");
  const bool by_mate = !read.has("finish");
  const Length mate = by_mate ? read.size("mate") : Length();
  const Length leave = read.place_or_zero("leave");
  const std::string side = read.word("side", {"shaft", "hole"});
  const bool shaft = side == "shaft";
  const Length finish = by_mate ? (shaft ? mate - leave : mate + leave) : read.size("finish");
  const auto measured = read.maybe_size("measured");
  if (!read.failed()) read.refuse_unless(thick * 2.0 < finish, "thickness", "less than half the size");
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const double sign = shaft ? 1.0 : -1.0;
  const Length before = finish - thick * (2.0 * sign);
  Answer answer;
  answer.asked = fmt::format("{} to be plated {} thick", side, both_ways(thick, system));
  answer.says = fmt::format("{} before plating", both_ways(before, system));
  TableWriter writer("one after the other", system);
  if (by_mate) writer.length(shaft ? "the hole it goes in" : "the shaft that goes in", mate, kBothSides);
  if (by_mate) writer.length("clearance to leave", leave, kBothSides);
  writer.length("finished", finish, kBothSides);
  writer.length("plating, on the diameter", thick * 2.0, kBothSides, "twice its thickness");
  writer.length("before plating", before, kBothSides);
  answer.tables.push_back(writer.take());
  if (measured) {
    TableWriter found("as it measures now", system);
    const Length plated = *measured + thick * (2.0 * sign);
    found.length("still to take off, on the diameter", (*measured - before) * sign, kBothSides,
                 (*measured - before) * sign < Length() ? "too far already: thicker plating" : "");
    found.length("plated as it is", plated, kBothSides);
    if (by_mate)
      found.length("clearance it would have", (mate - plated) * sign, kBothSides,
                   "under zero it does not go");
    answer.tables.push_back(found.take());
  }
  answer.assumed.emplace_back("plating as thick all round as was said, and not ground after");
  return answer;
}

base::Result<Answer> slit(const Question& question) {
  EntryReader read(question);
  const Length bore = read.size("bore");
  const Length width = read.size("slit");
  const std::string kind = read.word("kind", {"one", "halves"});
  const auto closes = read.maybe_size("closes");
  const Length by = closes.value_or(width);
  if (!read.failed()) {
    read.refuse_unless(width < bore, "slit", "less than the bore");
    read.refuse_unless(by <= width, "closes", "up to the width of the slit");
  }
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const bool halves = kind == "halves";
  const Length off = halves ? by : by / std::numbers::pi;
  Answer answer;
  answer.asked = fmt::format("bore of {}, slit {} {}", both_ways(bore, system), both_ways(width, system),
                             halves ? "into halves" : "on one side");
  answer.says = fmt::format("closed, it takes {} off the bore", both_ways(off, system));
  TableWriter writer("as it closes", system);
  const handbook::Source& source = halves ? kSlitAcross : kSlitAround;
  writer.length("the bore loses", off, source,
                halves ? "square to the slits alone: it is no longer round" : "as long as it stays round");
  writer.length("bore, closed", bore - off, source);
  writer.length("bore it first to", bore + off, source, "so that it closes to the size given");
  answer.tables.push_back(writer.take());
  if (!closes) answer.assumed.emplace_back("it closes until the slit is shut");
  answer.assumed.emplace_back(halves
                                  ? "both slits alike; each stays as it is until the screws draw it together"
                                  : "the ring bends evenly; one that hinges at its back closes oval");
  answer.cautions = {
      "Stress in the metal may shut the slit on the saw: wedge it, and leave a web at the first slit until "
      "the second is through.",
      "Rough the bore, slit, then finish it with shims as thick as the slit between the screwed halves."};
  return answer;
}

}  // namespace sparewright::answers
