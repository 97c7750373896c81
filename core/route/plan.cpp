#include "core/route/plan.hpp"

#include <array>

#include <fmt/format.h>

namespace sparewright::route {
namespace {

void add(base::Hasher& h, const OnMill& on) {
  std::visit([&](const auto& in) { h.add(fingerprint(in)); }, on.holding.in);
  h.add(static_cast<std::uint64_t>(on.holding.in.index())).add(static_cast<int>(on.holding.sits_on));
  h.add(static_cast<int>(on.holding.away));
  h.add(on.holding.under.height.base()).add(on.holding.under.thickness.base());
  for (const EdgePickUp& pick_up : {on.x, on.y}) {
    h.add(static_cast<int>(pick_up.side)).add(fingerprint(pick_up.edge_finder));
  }
}

void add(base::Hasher& h, const OnLathe& on) {
  h.add(fingerprint(on.holder)).add(static_cast<int>(on.free_end)).add(on.on);
  h.add(on.gripped.has_value()).add(on.gripped ? on.gripped->base() : 0.0);
  h.add(static_cast<int>(on.tail)).add(on.compound.has_value());
  h.add(on.compound ? on.compound->base() : 0.0);
}

void add(base::Hasher& h, const ByMarks& by) {
  std::visit([&](const auto& holder) { h.add(fingerprint(holder)); }, by.in);
  h.add(static_cast<int>(by.up));
}

}  // namespace

std::string_view name_of(TailSupport tail) {
  constexpr std::array kNames{"nothing", "live centre", "dead centre", "steady"};
  return kNames.at(static_cast<std::size_t>(tail));
}

std::string_view name_of_holder(const ByMarks& by) {
  return std::visit([](const auto& holder) -> std::string_view { return holder.name; }, by.in);
}

const std::string& Holding::name() const {
  return std::visit([](const auto& each) -> const std::string& { return each.name; }, in);
}

base::Fingerprint fingerprint(const Setup& setup) {
  base::Hasher h;
  h.add(setup.op).add(setup.name).add(fingerprint(setup.machine));
  h.add(static_cast<std::uint64_t>(setup.held.index()));
  std::visit([&](const auto& held) { add(h, held); }, setup.held);
  for (const Work& work : setup.works) {
    h.add(work.feature).add(static_cast<std::uint64_t>(work.tools.size()));
    for (const shop::Tool& tool : work.tools)
      h.add(fingerprint(tool));
    h.add(work.found.has_value()).add(work.joins);
    if (work.found) h.add(work.found->base).add(work.found->typed);
  }
  h.add(static_cast<std::uint64_t>(setup.deburrings.size()));
  for (const Deburring& burrs : setup.deburrings) {
    h.add(static_cast<std::uint64_t>(burrs.after)).add(static_cast<std::uint64_t>(burrs.features.size()));
    for (const std::string& feature : burrs.features)
      h.add(feature);
    for (const shop::Tool& tool : burrs.tools)
      h.add(fingerprint(tool));
  }
  return h.add(setup.done_before).done();
}

part::Face worked_side(const Setup& setup) {
  if (const auto* on = std::get_if<OnMill>(&setup.held)) return part::opposite(on->holding.sits_on);
  if (const auto* on = std::get_if<OnLathe>(&setup.held)) return on->free_end;
  return std::get<ByMarks>(setup.held).up;
}

std::string setup_path(const Setup& setup) {
  return fmt::format("op {}", setup.op);
}

}  // namespace sparewright::route
