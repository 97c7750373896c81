#include <fmt/format.h>

#include "core/answers/fasteners.hpp"
#include "core/handbook/shaft_card.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using handbook::KeyseatMeasure;
using handbook::KeyWidthFit;
using handbook::ParallelKeyseat;
using handbook::WoodruffKeyseat;
using quantity::Length;
using quantity::UnitSystem;

std::string_view shape_of(const handbook::ParallelKey& key) {
  if (key.system == handbook::KeySystem::kMetric) return "parallel key";
  return key.shape == handbook::KeyShape::kSquare ? "square key" : "rectangular key";
}

std::string zone_note(const KeyWidthFit& fit, std::string_view zone) {
  return zone.empty() ? std::string(fit.name) : fmt::format("{}, {}", fit.name, zone);
}

void add_measure(TableWriter& writer, std::string what, const KeyseatMeasure& measure, std::string note) {
  writer.limits(std::move(what), measure.nominal + measure.lower, measure.nominal + measure.upper,
                measure.tolerance_source, std::move(note));
}

// The keys suggested for the shaft in a line each; --woodruff gives all of one.
Table woodruff_list(const std::vector<WoodruffKeyseat>& seats, UnitSystem system) {
  TableWriter writer("Woodruff keys for the shaft, depth from the crest", system);
  for (const WoodruffKeyseat& seat : seats)
    writer.limits(
        std::string(seat.key.number), seat.crest_depth, seat.crest_depth + seat.deeper, seat.depth_source,
        fmt::format("cutter {} in by {} in wide, over the back {}",
                    to_string(quantity::nearest_64th(across(seat.key.diameter))),
                    to_string(quantity::nearest_64th(seat.key.width)), both_ways(seat.over_back, system)));
  return writer.take();
}

std::string says_of(const handbook::ShaftCard& card) {
  const UnitSystem system = card.shaft.system;
  if (card.parallel.empty())
    return fmt::format("Woodruff key {}, {} deep from the crest", card.woodruff.front().key.number,
                       both_ways(card.woodruff.front().crest_depth, system));
  const ParallelKeyseat& seat = card.parallel.front();
  return fmt::format("{} {}, {} deep from the crest", shape_of(seat.key), seat.key.name,
                     both_ways(seat.crest_depth, system));
}

constexpr std::string_view kExactShaft =
    "the shaft is exactly of that size: over the back, a smaller one measures as much less";

std::string asked_words(const handbook::ShaftSize& shaft) {
  return fmt::format("keyseats of a shaft of {}", both_ways(across(shaft.diameter), shaft.system));
}

base::Result<Answer> one_woodruff(const handbook::ShaftSize& shaft, const std::string& number) {
  const auto key = handbook::woodruff_key(number);
  if (!key) return tl::unexpected(key.error());
  const auto seat = handbook::woodruff_keyseat(*key, shaft.diameter);
  if (!seat) return tl::unexpected(seat.error());
  Answer answer;
  answer.asked = asked_words(shaft);
  answer.says = fmt::format("Woodruff key {}, {} deep from the crest", key->number,
                            both_ways(seat->crest_depth, shaft.system));
  answer.assumed.emplace_back(kExactShaft);
  answer.tables.push_back(keyseat_table(*seat, shaft.system));
  return answer;
}

}  // namespace

Table keyseat_table(const ParallelKeyseat& seat, UnitSystem system) {
  const handbook::ParallelKey& key = seat.key;
  TableWriter writer(fmt::format("{} {}", shape_of(key), key.name), system);
  writer.length("key width", key.width, key.source);
  writer.length("key height", key.height, key.source);
  writer.length("depth from the crest", seat.crest_depth, seat.depth_source,
                "fed down from touching the shaft");
  add_measure(writer, "over the back", seat.over_back,
              "bottom of the keyseat to the other side of a shaft of exactly the size");
  writer.length("depth at the side", seat.side_depth, seat.depth_source);
  writer.length("crest to the edges", seat.arc_height, seat.depth_source);
  writer.length("depth in the hub", seat.hub_depth, seat.depth_source, "from the crest of the bore");
  add_measure(writer, "over the back, hub", seat.hub_over_back,
              "bottom of the keyseat to the other side of the bore");
  writer.length("clearance over the key", seat.top_clearance, seat.depth_source, "all nominal");
  for (const KeyWidthFit& fit : seat.width_fits) {
    writer.limits("width in the shaft", key.width + fit.shaft_width.lower, key.width + fit.shaft_width.upper,
                  fit.source, zone_note(fit, fit.shaft));
    writer.limits("width in the hub", key.width + fit.hub_width.lower, key.width + fit.hub_width.upper,
                  fit.source, zone_note(fit, fit.hub));
  }
  return writer.take();
}

Table keyseat_table(const WoodruffKeyseat& seat, UnitSystem system) {
  const handbook::WoodruffKey& key = seat.key;
  TableWriter writer(fmt::format("Woodruff key {}", key.number), system);
  writer.length("cutter diameter", key.diameter, key.source);
  writer.length("width", key.width, key.source);
  writer.range("key height", key.height_min, key.height_max, key.source);
  writer.limits("depth from the crest", seat.crest_depth, seat.crest_depth + seat.deeper,
                seat.tolerance_source, "fed down from touching the shaft");
  writer.limits("over the back", seat.over_back - seat.deeper, seat.over_back, seat.tolerance_source);
  writer.length("depth at the side", seat.side_depth, seat.depth_source);
  writer.length("length at the edges", seat.length, seat.depth_source);
  writer.length("depth in the hub", seat.hub_depth, seat.depth_source, "at its side");
  writer.length("over the back, hub", seat.hub_over_back, seat.depth_source);
  return writer.take();
}

base::Result<Answer> key(const Question& question) {
  const auto card = handbook::shaft_card(question.words);
  if (!card) return tl::unexpected(card.error());
  if (const std::string* number = find_entry(question, "woodruff")) return one_woodruff(card->shaft, *number);
  if (card->parallel.empty() && card->woodruff.empty()) {
    const auto seats = handbook::keyseats_for_shaft(question.words);
    return tl::unexpected(seats ? card->not_tabled.front() : seats.error());
  }
  const UnitSystem system = card->shaft.system;
  Answer answer;
  answer.asked = asked_words(card->shaft);
  answer.says = says_of(*card);
  answer.assumed.emplace_back(kExactShaft);
  if (system == UnitSystem::kMetric)
    answer.assumed.emplace_back("a metric shaft: Woodruff keys are suggested here for inch shafts alone");
  for (const ParallelKeyseat& seat : card->parallel)
    answer.tables.push_back(keyseat_table(seat, system));
  if (!card->woodruff.empty()) answer.tables.push_back(woodruff_list(card->woodruff, system));
  return answer;
}

}  // namespace sparewright::answers
