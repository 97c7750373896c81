#include "core/survey/good_to.hpp"

#include <fmt/format.h>

#include "core/survey/corrected.hpp"
#include "core/survey/instrument_error.hpp"

namespace sparewright::survey {
namespace {

ledger::Root one_reading(const Instrument& instrument, Jaws jaws) {
  Reading reading;
  reading.name = fmt::format("one with {}, {}", instrument.name, name_of(jaws));
  reading.jaws = jaws;
  quantity::Typed size =
      instrument.to.value_or(instrument.reads);  // the most it measures: there it is least good
  if (!instrument.to) size.base = 0.0;
  reading.repeats = {size};
  const ErrorLimit limit = error_limit(instrument, jaws, size.base);
  ledger::Root root;
  root.kind = instrument.reads.kind;
  root.value = 0.0;
  root.shares = corrected(reading, instrument).shares;
  root.source =
      fmt::format("{}: good to {}{}, reads {}", instrument.name, limit.typed,
                  limit.source.empty() ? "" : fmt::format(" ({})", limit.source), instrument.reads.typed);
  return root;
}

void write_good_to(ledger::Pen& pen, const Instrument& instrument, Jaws jaws) {
  const ledger::Figure& error = pen.root("one reading", one_reading(instrument, jaws));
  ledger::Decision width;
  width.kind = error.kind;
  width.value = error.expanded();
  width.words = "what one reading does not know, 19 times in 20";
  width.inputs = {&error};
  width.source = "JCGM 100:2008, 6.2";
  pen.decide("unknown", width);
}

base::Fingerprint definition(const Instrument& instrument, Jaws jaws) {
  base::Hasher h;
  const ledger::Root root = one_reading(instrument, jaws);
  h.add("good to").add(instrument.name).add(static_cast<int>(jaws)).add(root.source);
  h.add(static_cast<int>(root.kind));
  for (const ledger::Share& share : root.shares)
    h.add(share.cause.text()).add(share.amount);
  return h.done();
}

}  // namespace

std::vector<ledger::Stage> good_to_stages(const std::vector<Instrument>& instruments) {
  std::vector<ledger::Stage> stages;
  for (const Instrument& instrument : instruments) {
    for (const Jaws jaws : faces_of(instrument)) {
      stages.push_back({good_to_path(instrument.name, jaws), definition(instrument, jaws),
                        [instrument, jaws](ledger::Pen& pen) { write_good_to(pen, instrument, jaws); }});
    }
  }
  return stages;
}

std::string good_to_path(std::string_view instrument, Jaws jaws) {
  return fmt::format("good to/{}/{}", instrument, name_of(jaws));
}

}  // namespace sparewright::survey
