// Putting the new part to its mates: in which order, how tight it will go, and what to do before power.
#include <algorithm>

#include <fmt/format.h>

#include "core/route/desk.hpp"
#include "core/route/joint_words.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;

// What is not known about a size, 19 times in 20, may be the difference between by hand and tight.
std::string how_tight(const Figure& least, const Figure& most, const Printing& print) {
  if (!least.known() || !most.known()) return "NOT KNOWN: the mate's size or the hole's is missing";
  if (least.value > 0.0 && least.value >= least.expanded()) {
    return fmt::format("goes in by hand, {} to {} clear", print.fine(least.value), print.fine(most.value));
  }
  if (least.value >= 0.0) {
    return fmt::format("{} to {} clear, and may be tight: offer it up before anything is finished",
                       print.fine(least.value), print.fine(most.value));
  }
  if (most.value <= 0.0) {
    return fmt::format(
        "pressed, {} to {} tight; the force is NOT KNOWN: what the mate is made of is not told",
        print.fine(-most.value), print.fine(-least.value));
  }
  return fmt::format("between {} tight and {} clear: offer it up before anything is finished",
                     print.fine(-least.value), print.fine(most.value));
}

// By what the bush is larger than its hole.
std::string how_it_goes_in(Desk& desk, const std::string& bush, bool is_bonded) {
  const std::string path = part::feature_path(bush) + "/interference";
  const Figure& least = desk.pen.ask(path + "/least");
  const Figure& most = desk.pen.ask(path + "/most");
  const Printing& print = desk.print;
  if (!least.known() || !most.known()) return "NOT KNOWN: a size of the bush or of its hole is missing";
  if (is_bonded && most.value < 0.0) {
    return fmt::format(
        "bonded, {} to {} clear: degrease both, wet both with retaining compound, turn it as it goes in, "
        "leave it as long as the maker of the compound says",
        print.fine(-most.value), print.fine(-least.value));
  }
  if (!is_bonded && least.value > 0.0) {
    return fmt::format(
        "pressed, {} to {} tight: lead-in on both, oil, start it square, support the boss right under the "
        "hole; {}",
        print.fine(least.value), print.fine(most.value), press_force_words(desk.pen, print.system(), bush));
  }
  return is_bonded ? "STOP: at the limits there is no room for the compound; see the checks"
                   : "STOP: at the limits it does not stay in its hole; see the checks";
}

// Hole and mate, at the limits of the one and the other as it was measured.
void add_mates(Desk& desk, ListTable& table) {
  const auto less = [](auto hole, auto mate) { return hole - mate; };
  const auto& named = desk.route.part.surroundings.dimension_figures;
  for (const part::Feature& feature : desk.route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    const std::string mate = hole == nullptr ? std::string() : part::mate_of(*hole);
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
    table.rows.push_back({fmt::format("{} into {}", mate, feature.name), how_tight(least, most, desk.print)});
  }
}

// Whether a setup does it: put a bush in, or a split part's pieces together.
bool is_done_in_a_setup(const Route& route, const std::string& feature, bool joins) {
  const auto does = [&](const Work& work) { return work.feature == feature && work.joins == joins; };
  return std::any_of(route.plan.setups.begin(), route.plan.setups.end(), [&](const Setup& setup) {
    return std::any_of(setup.works.begin(), setup.works.end(), does);
  });
}

// A bush goes in before its bore is finished.
void add_bushes(Desk& desk, ListTable& table) {
  for (const auto& [feature, bush] : bushes_of(desk.route.part)) {
    if (is_done_in_a_setup(desk.route, feature.name, false)) continue;
    const std::string path = part::feature_path(feature.name);
    table.rows.push_back({fmt::format("{} into {}", feature.name, bush.of),
                          how_it_goes_in(desk, feature.name, bush.is_bonded)});
    const Figure& least = desk.pen.ask(path + "/bore/least");
    const Figure& most = desk.pen.ask(path + "/bore/most");
    table.rows.push_back(
        {fmt::format("bore of {}", feature.name),
         fmt::format("{}finish it now, to {}", bush.is_bonded ? "" : "it may have closed: ",
                     or_not_known(least, desk.print.limits(least.value, most.value, true)))});
  }
}

void add_screws(const Desk& desk, ListTable& table) {
  for (const Screws& screws : screws_of(desk.route.part)) {
    const std::string torque = torque_words(desk.pen, desk.print.system(), screws.holes);
    table.rows.push_back(
        {fmt::format("{} in {}", screws.designation, listed(screws.holes)),
         fmt::format(
             "all in by fingers before any is tightened; then evenly, across, {}",
             torque.empty() ? "as hard as the mate's thread stands: that is NOT KNOWN here" : torque)});
  }
}

// Sawn in two, and no setup joins it again.
bool lies_in_pieces(const Route& route) {
  return std::any_of(route.part.features.begin(), route.part.features.end(),
                     [&](const part::Feature& feature) {
                       const auto* formed = std::get_if<part::Formed>(&feature.shape);
                       return formed != nullptr && formed->form == part::Form::kSplit &&
                              !is_done_in_a_setup(route, feature.name, true);
                     });
}

}  // namespace

void write_fit(Desk& desk) {
  desk.sheet.tab = "FIT";
  desk.sheet.name = "put it to its mates";
  desk.sheet.is_signed = true;
  ListSection order;
  order.heading = "IN THIS ORDER";
  order.table.headings = {"", "WHAT", "HOW"};
  order.table.ticks = true;
  ListTable steps;
  steps.rows.push_back({"all edges", "burrs off, a lead-in where something goes in; wash, dry, wipe"});
  if (lies_in_pieces(desk.route))
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
