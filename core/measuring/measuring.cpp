#include "core/measuring/measuring.hpp"

#include <array>
#include <memory>
#include <utility>

#include <fmt/format.h>

#include "core/measuring/plug_gauge.hpp"
#include "core/measuring/room.hpp"

namespace sparewright::measuring {
namespace {

using ledger::Stage;

void add(base::Hasher& h, const survey::Instrument& instrument) {
  h.add(instrument.name).add(instrument.kind).add(instrument.good_to.base).add(instrument.reads.base);
  h.add(static_cast<int>(instrument.shows)).add(static_cast<std::uint64_t>(instrument.jaw_pairs.size()));
  for (const survey::JawPair& pair : instrument.jaw_pairs)
    h.add(static_cast<int>(pair.jaws));
  for (const auto& size :
       {instrument.zero_found, instrument.zero_within, instrument.comes_back, instrument.from, instrument.to})
    h.add(size.has_value()).add(size ? size->base : 0.0).add(size ? size->typed : "");
  for (const survey::AllowedError& row : instrument.allowed)
    h.add(row.error.base).add(row.up_to.value_or(0.0)).add(row.jaws ? static_cast<int>(*row.jaws) : -1);
}

// All that the stages of this room go by beside what they ask.
base::Fingerprint definition(const Subject& subject) {
  base::Hasher h;
  h.add("measuring").add(part::fingerprint(subject.judged.route.part)).add(subject.has_lathe);
  h.add(intent::fingerprint(subject.judged.originals)).add(subject.judged.hand);
  h.add(static_cast<int>(subject.survey.system));
  for (const judge::Seat& seat : subject.judged.seats)
    judge::add_to(h, seat);
  for (const survey::Instrument& instrument : subject.survey.instruments)
    add(h, instrument);
  for (const survey::Dimension& dimension : subject.survey.dimensions)
    h.add(dimension.name).add(static_cast<int>(dimension.kind));
  for (const survey::Reading& reading : subject.survey.readings) {
    h.add(reading.name).add(static_cast<int>(reading.way)).add(reading.instrument);
    h.add(static_cast<int>(survey::jaws_of(reading))).add(static_cast<std::uint64_t>(reading.repeats.size()));
    h.add(reading.repeats.front().base).add(static_cast<int>(reading.condition));
    for (const std::string& name : reading.of)
      h.add(name);
  }
  return h.done();
}

using Write = void (*)(ledger::Pen& pen, const Subject& subject);
struct Row {
  const char* stage;
  Write write;
};
constexpr std::array kRows{Row{"measuring/plan", write_plan}, Row{"measuring/met", write_met},
                           Row{"as found", write_as_found}};

}  // namespace

survey::Jaws jaws_named(std::string_view name) {
  for (const survey::Jaws jaws : {survey::Jaws::kInside, survey::Jaws::kDepth}) {
    if (name == survey::name_of(jaws)) return jaws;
  }
  return survey::Jaws::kOutside;
}

Asked asked_of(const part::Feature& feature, const part::Hole& hole) {
  const std::string path = part::feature_path(feature.name);
  if (std::holds_alternative<part::OnMate>(hole.diameter.size))
    return {path + "/diameter/least clearance", path + "/diameter/most clearance"};
  return {path + "/clearance asked/least", path + "/clearance asked/most"};
}

bool has_fit(const part::Feature& feature) {
  const auto* hole = std::get_if<part::Hole>(&feature.shape);
  return hole != nullptr && !part::mate_of(*hole).empty() && part::has_aim(hole->diameter);
}

std::vector<Stage> stages(const Subject& subject) {
  const auto shared = std::make_shared<const Subject>(subject);
  const base::Fingerprint print = definition(subject);
  std::vector<Stage> all;
  for (const Row& row : kRows) {
    all.push_back({row.stage, base::Hasher().add(row.stage).add(print).done(),
                   [shared, write = row.write](ledger::Pen& pen) { write(pen, *shared); }});
  }
  for (const part::Feature& feature : shared->judged.route.part.features) {
    if (!is_fine_hole(feature)) continue;
    const std::string name = plug_gauge_path(feature.name);
    all.push_back({name, base::Hasher().add(name).add(print).done(),
                   [shared, &feature](ledger::Pen& pen) { write_plug_gauge(pen, *shared, feature); }});
  }
  return all;
}

}  // namespace sparewright::measuring
