// Putting the new part to its mates: in which order, how tight it will go, and what to do before power.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/route/desk.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using part::Form;
using quantity::Kind;

std::string mate_of(const part::Hole& hole) {
  const auto* on = std::get_if<part::OnMate>(&hole.diameter.size);
  return on != nullptr ? on->mate : hole.mate;
}

const part::Formed* formed_as(const part::Feature& feature, Form form) {
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  return formed != nullptr && formed->form == form ? formed : nullptr;
}

std::string by_hand(const Figure& least, const Figure& most, const Printing& print) {
  if (!least.known() || !most.known()) return "NOT KNOWN: the mate's size or the hole's is missing";
  if (least.value >= 0.0) {
    return fmt::format("goes in by hand, {} to {} clear", print.fine(least.value), print.fine(most.value));
  }
  if (most.value <= 0.0) {
    return fmt::format("pressed, {} to {} tight; the force is not computed", print.fine(-most.value),
                       print.fine(-least.value));
  }
  return fmt::format("between {} tight and {} clear: offer it up before anything is finished",
                     print.fine(-least.value), print.fine(most.value));
}

// Hole and mate, at the limits of the one and the other as it was measured.
void add_mates(Desk& desk, ListTable& table) {
  const auto less = [](auto hole, auto mate) { return hole - mate; };
  const auto& named = desk.route.part.surroundings.dimension_figures;
  for (const part::Feature& feature : desk.route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    const std::string mate = hole == nullptr ? std::string() : mate_of(*hole);
    if (mate.empty()) continue;
    const auto figure = named.find(mate);
    const Figure& size = desk.pen.ask(figure == named.end() ? mate : figure->second);
    const std::string path = part::feature_path(feature.name) + "/diameter";
    const Figure& least =
        desk.pen.work(feature.name + "/least clearance", Kind::kLength,
                      "the least hole less the mate as measured", less, desk.pen.ask(path + "/least"), size);
    const Figure& most = desk.pen.work(feature.name + "/most clearance", Kind::kLength,
                                       "the greatest hole less the mate as measured", less,
                                       desk.pen.ask(path + "/most"), size);
    table.rows.push_back({fmt::format("{} into {}", mate, feature.name), by_hand(least, most, desk.print)});
  }
}

// A bush goes in before its bore is finished.
void add_bushes(Desk& desk, ListTable& table) {
  for (const part::Feature& feature : desk.route.part.features) {
    const part::Formed* bush = formed_as(feature, Form::kBush);
    if (bush == nullptr) continue;
    const std::string path = part::feature_path(feature.name);
    const Figure& least = desk.pen.ask(path + "/interference/least");
    const Figure& most = desk.pen.ask(path + "/interference/most");
    const auto fine = [&](const Figure& figure, double value) {
      return or_not_known(figure, desk.print.fine(value));
    };
    const std::string how =
        bush->is_bonded
            ? fmt::format(
                  "bonded, {} to {} clear: degrease both, wet both with retaining compound, turn it as "
                  "it goes in, leave it as long as the maker of the compound says",
                  fine(most, -most.value), fine(least, -least.value))
            : fmt::format(
                  "pressed, {} to {} tight: lead-in on both, oil, start it square, support the boss right "
                  "under the hole; the force is not computed",
                  fine(least, least.value), fine(most, most.value));
    table.rows.push_back({fmt::format("{} into {}", feature.name, bush->of), how});
    const Figure& bore_least = desk.pen.ask(path + "/bore/least");
    const Figure& bore_most = desk.pen.ask(path + "/bore/most");
    table.rows.push_back(
        {fmt::format("bore of {}", feature.name),
         fmt::format("it may have closed: finish it now, to {}",
                     or_not_known(bore_least, desk.print.limits(bore_least.value, bore_most.value, true)))});
  }
}

void add_screws(Desk& desk, ListTable& table) {
  std::vector<std::string> screws;
  std::vector<std::string> holes;
  for (const part::Feature& feature : desk.route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    if (hole == nullptr || !hole->screw) continue;
    const auto known = std::find(screws.begin(), screws.end(), hole->screw->designation);
    if (known == screws.end()) {
      screws.push_back(hole->screw->designation);
      holes.push_back(feature.name);
    } else {
      holes[static_cast<std::size_t>(known - screws.begin())] += ", " + feature.name;
    }
  }
  for (std::size_t i = 0; i < screws.size(); ++i) {
    table.rows.push_back(
        {fmt::format("{} in {}", screws[i], holes[i]),
         "all in by fingers before any is tightened; then evenly, across; torque not computed"});
  }
}

}  // namespace

void write_fit(Desk& desk) {
  desk.sheet.tab = "FIT";
  desk.sheet.name = "put it to its mates";
  desk.sheet.is_signed = true;
  const bool splits =
      std::any_of(desk.route.part.features.begin(), desk.route.part.features.end(),
                  [](const part::Feature& feature) { return formed_as(feature, Form::kSplit) != nullptr; });
  ListSection order;
  order.heading = "IN THIS ORDER";
  order.table.headings = {"", "WHAT", "HOW"};
  order.table.ticks = true;
  ListTable steps;
  steps.rows.push_back({"all edges", "burrs off, a lead-in where something goes in; wash, dry, wipe"});
  if (splits)
    steps.rows.push_back({"the pieces", "joined again as they were, with their shims; marks together"});
  add_bushes(desk, steps);
  add_mates(desk, steps);
  add_screws(desk, steps);
  steps.rows.push_back(
      {"by hand", "turn it through its whole way before any power: no tight spot, nothing touches"});
  steps.rows.push_back({"guards", "back on before power; stand clear of the line of what turns"});
  for (const auto& step : steps.rows)
    order.table.rows.push_back({fmt::format("{}", order.table.rows.size() + 1), step[0], step[1]});
  desk.sheet.sections.push_back(std::move(order));
  desk.sheet.sections.push_back(
      {"", {}, {}, {}, {"How it went in, and where it was tight", "Looked at again after"}});
  desk.sheet.cautions = {
      "Isolate the machine, and let down springs, weights and pressure, before hands go in."};
}

}  // namespace sparewright::route
