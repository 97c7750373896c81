#include <array>

#include <fmt/format.h>

#include "core/answers/fasteners.hpp"
#include "core/handbook/lookup.hpp"
#include "core/handbook/retaining_rings.hpp"
#include "core/handbook/shaft_size.hpp"

namespace sparewright::answers {
namespace {

using handbook::RingGroove;
using handbook::RingPlace;
using quantity::UnitSystem;

struct PlaceWord {
  std::string_view written;
  RingPlace place;
};
constexpr std::array kPlaces{PlaceWord{" shaft", RingPlace::kOnShaft}, PlaceWord{" bore", RingPlace::kInBore},
                             PlaceWord{" hole", RingPlace::kInBore},
                             PlaceWord{" housing", RingPlace::kInBore}};

struct Asked {
  std::string size;
  std::vector<RingPlace> places;
};

Asked read(const std::string& words) {
  std::string text = handbook::folded(words);
  for (const PlaceWord& one : kPlaces) {
    if (text.ends_with(one.written)) return {text.substr(0, text.size() - one.written.size()), {one.place}};
  }
  return {std::move(text), {RingPlace::kOnShaft, RingPlace::kInBore}};
}

Table groove_table(const RingGroove& groove, UnitSystem system) {
  const handbook::RetainingRing& ring = groove.ring;
  TableWriter writer(std::string(name_of(ring.kind)), system);
  if (groove.deviations) {
    writer.limits("groove diameter", across(ring.groove) + groove.deviations->lower,
                  across(ring.groove) + groove.deviations->upper, ring.source, std::string(ring.note));
  } else {
    writer.length("groove diameter", ring.groove, ring.source, "no tolerance is known here");
  }
  const quantity::Length more = ring.width_more.value_or(quantity::Length());
  writer.limits("groove width", ring.groove_width, ring.groove_width + more, ring.source,
                ring.width_more ? "" : "the least");
  writer.length("groove depth", groove.depth, ring.source, "on one side");
  writer.length("ring thickness", ring.thickness, ring.source);
  writer.length("least metal to the end", groove.least_edge, groove.edge_source);
  return writer.take();
}

}  // namespace

base::Result<Answer> ring(const Question& question) {
  const Asked asked = read(question.words);
  const auto size = handbook::read_shaft_size(asked.size);
  if (!size) return tl::unexpected(size.error());
  Answer answer;
  std::optional<base::Failure> missing;
  for (const RingPlace place : asked.places) {
    const auto groove = handbook::ring_groove(place, asked.size);
    if (!groove) {
      if (!missing) missing = groove.error();
      continue;
    }
    if (answer.says.empty())
      answer.says = fmt::format("groove {}, {} wide", both_ways(across(groove->ring.groove), size->system),
                                both_ways(groove->ring.groove_width, size->system));
    answer.tables.push_back(groove_table(*groove, size->system));
  }
  if (answer.tables.empty()) return tl::unexpected(*missing);
  if (answer.tables.size() > 1) {
    answer.says.clear();
    answer.assumed.emplace_back("neither shaft nor bore was named: both are given");
  } else if (asked.places.size() > 1) {
    answer.assumed.push_back(
        fmt::format("neither shaft nor bore was named: a ring of that size is tabled here only as {}",
                    answer.tables.front().heading));
  }
  answer.asked = fmt::format("retaining ring of {}", both_ways(across(size->diameter), size->system));
  answer.cautions.emplace_back("rings fly when they slip off the pliers: wear eye protection");
  return answer;
}

}  // namespace sparewright::answers
