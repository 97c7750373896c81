#include "core/route/joint_words.hpp"

#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include "core/quantity/display.hpp"
#include "core/route/printing.hpp"

namespace sparewright::route {
namespace {

using quantity::Kind;

// Holes by what their screws are tightened to, in the order of the first of each.
using ByTorque = std::vector<std::pair<std::string, std::string>>;

void add(ByTorque& all, const std::string& torque, const std::string& hole) {
  auto same = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.first == torque; });
  if (same == all.end()) {
    all.emplace_back(torque, hole);
  } else {
    same->second += ", " + hole;
  }
}

}  // namespace

std::string press_force_words(ledger::Pen& pen, quantity::UnitSystem system, const std::string& bush) {
  const ledger::Figure& force = pen.ask(fmt::format("check/press/{}/force at most", bush));
  if (!force.known()) return "the force is NOT KNOWN";
  return fmt::format("up to {} to push it in, calculated: friction is known to a factor of two",
                     quantity::shown(force.value, Kind::kForce, system, 0));
}

std::string torque_words(ledger::Pen& pen, quantity::UnitSystem system,
                         const std::vector<std::string>& holes) {
  ByTorque all;
  for (const std::string& hole : holes) {
    const ledger::Figure& torque = pen.ask(fmt::format("check/screw tension/{}/torque", hole));
    if (torque.known()) add(all, quantity::shown(torque.value, Kind::kTorque, system, 1), hole);
  }
  const bool one_for_all =
      all.size() == 1 && std::count(all.front().second.begin(), all.front().second.end(), ',') + 1 ==
                             static_cast<std::ptrdiff_t>(holes.size());
  std::string words;
  for (const auto& [torque, of] : all)
    words += fmt::format("{}to {}{}", words.empty() ? "" : ", ", torque, one_for_all ? "" : " (" + of + ")");
  return words;
}

std::string length_to_buy_words(ledger::Pen& pen, quantity::UnitSystem system, const std::string& hole) {
  const ledger::Figure& length = pen.ask(fmt::format("check/screw engagement/{}/length to buy", hole));
  return length.known() ? Printing(system).nominal(length.value) + " long" : "";
}

}  // namespace sparewright::route
