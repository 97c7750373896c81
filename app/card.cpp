#include "app/card.hpp"

#include <algorithm>

#include <fmt/format.h>

namespace sparewright::app {
namespace {

std::string came_from(const NumberRow& number) {
  const bool worked_out = number.origin == "worked out";
  std::string words = worked_out ? number.formula : number.source.empty() ? number.origin : number.source;
  if (!worked_out && !number.typed.empty()) words += fmt::format("; as typed: {}", number.typed);
  if (!number.good_to.empty()) words += fmt::format("; good to {}", number.good_to);
  return words;
}

void add(std::vector<sheets::CardRow>& rows, const NumberRow& number) {
  const bool is_there = std::any_of(rows.begin(), rows.end(),
                                    [&](const sheets::CardRow& row) { return row.name == number.name; });
  if (!is_there) rows.push_back({number.name, number.shown, came_from(number)});
}

void add_roots(std::vector<sheets::CardRow>& rows, const TrailRow& trail) {
  if (trail.inputs.empty() && !trail.shown_before) add(rows, trail.number);
  for (const TrailRow& input : trail.inputs)
    add_roots(rows, input);
}

}  // namespace

sheets::Card card_of(const TrailRow& trail) {
  const NumberRow& number = trail.number;
  sheets::Card card;
  card.asked = number.name;
  card.answer = number.shown;
  card.good_to = number.good_to;
  card.missing = number.missing;
  card.how = number.origin == "worked out" || number.typed.empty()
                 ? number.formula
                 : fmt::format("{}; as typed: {}", number.origin, number.typed);
  card.source = number.source;
  for (const TrailRow& input : trail.inputs)
    add(card.rows, input.number);
  for (const TrailRow& input : trail.inputs)
    add_roots(card.rows, input);
  return card;
}

}  // namespace sparewright::app
