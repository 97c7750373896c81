// What to write down, so that the next one takes an hour.
#include "core/route/desk.hpp"

namespace sparewright::route {

void write_record(Desk& desk) {
  desk.sheet.tab = "RECORD";
  desk.sheet.name = "for the next one";
  ListSection made;
  made.heading = "MADE";
  made.blanks = {"By, and when", "Stock used: bar, marks, where it came from", "Hours, from saw to fitted",
                 "Machines and tools not as on these sheets"};
  ListSection changed;
  changed.heading = "CHANGED AT THE MACHINE";
  changed.table.headings = {"SIZE", "SHEET SAID", "MADE", "WHY"};
  changed.table.rows.assign(5, {"", "", "", ""});
  ListSection kept;
  kept.heading = "FOR THE NEXT ONE";
  kept.blanks = {"What went wrong, and what was done", "What I would do in another order",
                 "Plugs, gauges and fixtures made, and where they are kept",
                 "How the old one failed, and how this one wears"};
  kept.says = {"Bring the sizes found back into the job's text."};
  desk.sheet.sections = {std::move(made), std::move(changed), std::move(kept)};
}

}  // namespace sparewright::route
