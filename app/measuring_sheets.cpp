#include "app/measuring_sheets.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "app/measuring_words.hpp"
#include "core/survey/sketch.hpp"

namespace sparewright::app {
namespace {

const ReadingRow* reading_named(const Measured& measured, const std::string& name) {
  const auto found = std::find_if(measured.readings.begin(), measured.readings.end(),
                                  [&](const ReadingRow& row) { return row.name == name; });
  return found == measured.readings.end() ? nullptr : &*found;
}

// "over pins: 1.280, 1.281, caliper 6, over the same plugs"
std::string reading_words(const ReadingRow& row) {
  std::string words = fmt::format("{}: {}, {}", row.name, row.counts.typed, row.instrument);
  if (!row.place.empty()) words += ", " + row.place;
  if (row.use != "used") words += fmt::format(" ({})", row.use);
  if (row.differs && row.differs->value) words += "; differs " + row.differs->shown;
  return words;
}

// As typed where that is short; else as it counts.
std::string on_the_line(const ReadingRow& row) {
  constexpr std::size_t kLongest = 24;
  return row.counts.typed.size() <= kLongest ? row.counts.typed : row.counts.shown;
}

// Of a size: the readings that are of it first; where there are none, all that it follows.
std::vector<std::string> readings_of(const Measured& measured, const MeasuredRow& size) {
  std::vector<std::string> words;
  for (const ReadingRow& row : measured.readings) {
    if (!row.of.empty() && row.of.front() == size.name) words.push_back(reading_words(row));
  }
  if (!words.empty() || size.follows.empty()) return words;
  std::vector<std::string> names;
  for (const FollowsRow& row : size.follows)
    names.push_back(row.reading);
  return {fmt::format("worked out of {}", fmt::join(names, "; "))};
}

sheets::MeasuredSize sheet_size(const Measured& measured, const MeasuredRow& row,
                                const std::vector<survey::Sketch>& sketches) {
  sheets::MeasuredSize size;
  size.name = row.name;
  size.value = row.size.shown;
  size.good_to = row.size.good_to;
  for (const std::string& missing : row.size.missing)
    size.says.push_back("not known: " + missing);
  if (!row.without.empty()) size.says.emplace_back(kDisputed);
  for (const NumberRow& without : row.without)
    size.says.push_back(without_words(without));
  if (!row.in_question.empty()) size.says.push_back(question_words(row.in_question));
  for (std::string& words : readings_of(measured, row))
    size.says.push_back(std::move(words));
  if (row.size.missing.empty()) {
    size.says.push_back(checked_words(row));
    if (!row.doubts.empty()) size.says.push_back("its doubt: " + doubts_words(row.doubts));
  }
  if (row.now) size.says.push_back(wear_words(row));
  const auto sketch = std::find_if(sketches.begin(), sketches.end(),
                                   [&](const survey::Sketch& one) { return one.dimension == row.name; });
  if (sketch == sketches.end()) return size;
  size.sketch = *sketch;
  for (const survey::Sketch::Span& span : sketch->spans) {
    const ReadingRow* reading = reading_named(measured, span.reading);
    size.on_sketch.push_back(reading == nullptr ? "" : on_the_line(*reading));
  }
  return size;
}

// What to measure, with a blank for each.
route::ListSheet to_measure(const Measured& measured) {
  route::ListSheet sheet;
  sheet.tab = "TO MEASURE";
  sheet.name = "what the part needs, and with what";
  for (const bool of_new_part : {false, true}) {
    route::ListSection section;
    section.heading = of_new_part ? "ON THE NEW PART" : "ON THE OLD PART AND ITS MATES";
    section.table.headings = {"SIZE", "WITH"};
    section.table.to_fill = true;
    for (const PlanRow& row : measured.plan) {
      if (row.of_new_part != of_new_part) continue;
      section.table.rows.push_back({row.what, row.with.empty() ? row.says : row.with.front()});
    }
    if (!section.table.rows.empty()) sheet.sections.push_back(std::move(section));
  }
  return sheet;
}

}  // namespace

sheets::MeasuringPacket measuring_packet(const job::Job& job, ledger::Ledger& ledger,
                                         const Measured& measured) {
  sheets::MeasuringPacket packet;
  packet.title = job.title;
  packet.revision = job.revision;
  const auto sketches =
      survey::sketches_of(job.survey, [&](const std::string& name) -> std::optional<double> {
        const ledger::Figure figure = ledger.get("survey/" + name);
        const bool is_length =
            quantity::dimension_of(figure.kind) == quantity::dimension_of(quantity::Kind::kLength);
        if (!figure.known() || !is_length || !std::isfinite(figure.value)) return std::nullopt;
        return figure.value;
      });
  if (const auto as_found = ledger.value<route::ListSheet>("as found/sheet"))
    packet.lists.push_back(*as_found);
  if (!measured.plan.empty()) packet.lists.push_back(to_measure(measured));
  for (const MeasuredRow& row : measured.sizes)
    packet.sizes.push_back(sheet_size(measured, row, sketches));
  for (const TouchedRow& row : measured.touched)
    packet.agreement.push_back(
        fmt::format("{}: {}; {}", row.name, touched_words(row), touches_fit_words(row)));
  packet.agreement.push_back(agreement_words(measured));
  for (const QueryRow& query : measured.queries)
    packet.agreement.push_back(fmt::format("{}: {}. {}", query.state == "open" ? "QUERY" : "overruled",
                                           query.says, query.state == "open" ? query.todo : query.reason));
  return packet;
}

}  // namespace sparewright::app
