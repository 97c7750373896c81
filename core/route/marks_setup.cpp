// A setup at a drill press, a saw or a bench: places are marked, nothing is dialled across.
#include <fmt/format.h>

#include "core/route/bench.hpp"

namespace sparewright::route {

void write_marks_setup(MarksBench& bench) {
  bench.sheet.dials = {"", "", "DEPTH READS"};
  bench.sheet.machine.push_back(fmt::format("{}. Sizes in {}.", bench.setup.machine.name,
                                            bench.print.unit_name() == "in" ? "inches" : "mm"));
  bench.sheet.hold.push_back(fmt::format("{}. {} up.", name_of_holder(bench.by), part::name_of(bench.by.up)));
  for (const Work& work : bench.setup.works) {
    const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
    if (feature != nullptr) write_not_worked_out(bench, *feature);
  }
  write_before_unclamp(bench);
  write_cautions(bench);
}

}  // namespace sparewright::route
