// A setup on a lathe: the machine, how the work is held, where the zeros are, and its works in their order.
#include <fmt/format.h>

#include "core/route/bench.hpp"

namespace sparewright::route {
namespace {

std::string collar_sentence(const Bench& bench, const std::string& wheel, const shop::Collar& collar) {
  std::string name = wheel;
  name.front() = static_cast<char>(name.front() - 'a' + 'A');
  return fmt::format("{} collar {} a turn, {} divisions, reads {}, slack {}; feed in {}.", name,
                     bench.print.plain(collar.per_turn.base()), collar.divisions,
                     collar.reads == shop::CollarReads::kDiameter ? "DIAMETER" : "travel",
                     bench.print.plain(collar.slack.base()), shop::name_of(shop::feeds_in(collar)));
}

void write_lathe(LatheBench& bench) {
  const shop::Machine& machine = bench.setup.machine;
  bench.sheet.machine.push_back(fmt::format("{}, no readout. Sizes in {}.", machine.name,
                                            bench.print.unit_name() == "in" ? "inches" : "mm"));
  for (const auto& [wheel, collar] : machine.collars)
    bench.sheet.machine.push_back(collar_sentence(bench, wheel, collar));
  bench.sheet.hold.push_back(
      fmt::format("{}. {} towards the tailstock.", bench.on.holder.name, part::name_of(bench.on.free_end)));
}

}  // namespace

void write_lathe_setup(LatheBench& bench) {
  bench.sheet.dials = {"CROSS READS", "[COMPOUND] READS", "ALONG READS"};
  write_lathe(bench);
  for (const Work& work : bench.setup.works) {
    const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
    if (feature != nullptr) write_not_worked_out(bench, *feature);
  }
  write_before_unclamp(bench);
  write_cautions(bench);
}

}  // namespace sparewright::route
