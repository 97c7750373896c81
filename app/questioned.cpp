#include "app/questioned.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/survey/reading.hpp"
#include "core/survey/touched_stages.hpp"

namespace sparewright::app {
namespace {

// Empty where it does not begin so.
std::string behind(std::string_view name, std::string_view room) {
  return name.starts_with(room) ? std::string(name.substr(room.size())) : std::string();
}

bool is_of_a_dispute(const ledger::Query& query) {
  return query.id.starts_with("misread/") || query.id.starts_with("zero out/");
}

bool is_about_readings(const ledger::Query& query) {
  constexpr std::array<std::string_view, 9> kRooms{"reading/", "survey/",  "touched/",
                                                   "touch/",   "between/", "pattern/",
                                                   "known/",   "trial/",   "next reading/"};
  return std::any_of(kRooms.begin(), kRooms.end(),
                     [&](std::string_view room) { return query.about.starts_with(room); });
}

}  // namespace

std::vector<ledger::Query> queries_of_readings(const job::Job& job, ledger::Ledger& ledger) {
  std::vector<ledger::Query> all;
  for (ledger::Query& query : job::queries(job, ledger.queries())) {
    if (is_about_readings(query)) all.push_back(std::move(query));
  }
  return all;
}

Questioned::Questioned(const job::Job& job, ledger::Ledger& ledger)
    : job_(job), report_(ledger.value<survey::MeasuredUp>("survey/report")) {
  for (const ledger::Query& query : queries_of_readings(job, ledger)) {
    if (!query.serious || query.state != ledger::QueryState::kOpen || is_of_a_dispute(query)) continue;
    const std::string about(query.about);
    Asked asked;
    asked.query = query.id;
    asked.dimension = behind(about, "survey/");
    if (std::string reading = behind(about, "reading/"); !reading.empty())
      asked.readings.push_back(std::move(reading));
    if (const std::string touched = behind(about, "touched/"); !touched.empty())
      add_touches_of(touched.substr(0, touched.find('/')), asked.readings);
    asked_.push_back(std::move(asked));
  }
}

void Questioned::add_touches_of(const std::string& form, std::vector<std::string>& readings) const {
  const survey::Survey& survey = job_.survey;
  std::vector<std::string> rooms{"touched/" + form + "/"};
  for (const survey::Between& between : survey.between) {
    if (between.first == form || between.second == form) rooms.push_back("between/" + between.name + "/");
  }
  for (const survey::HolePattern& pattern : survey.patterns) {
    const bool has = std::find(pattern.of.begin(), pattern.of.end(), form) != pattern.of.end();
    if (has) rooms.push_back("pattern/" + pattern.name + "/");
  }
  for (const survey::ToldReading& told : survey::told_readings(survey)) {
    const bool follows = std::any_of(rooms.begin(), rooms.end(),
                                     [&](const std::string& room) { return told.path.starts_with(room); });
    if (follows) readings.push_back(told.name);
  }
}

bool Questioned::hangs_on(std::string_view dimension, const std::string& reading) const {
  for (const survey::Reading& one : job_.survey.readings) {
    if (one.name == reading && !one.of.empty() && one.of.front() == dimension) return true;
  }
  for (const survey::ToldReading& told : survey::told_readings(job_.survey)) {
    if (told.name == reading && told.dimension == dimension) return true;
  }
  if (!report_) return false;
  const survey::Adjustment& adjustment = report_->adjustment;
  const auto named = [](std::string_view name) {
    return [name](const auto& one) { return one.name == name; };
  };
  const auto size = std::find_if(adjustment.unknowns.begin(), adjustment.unknowns.end(), named(dimension));
  const auto read = std::find_if(adjustment.readings.begin(), adjustment.readings.end(), named(reading));
  if (size == adjustment.unknowns.end() || read == adjustment.readings.end()) return false;
  const auto j = static_cast<std::size_t>(size - adjustment.unknowns.begin());
  const auto i = static_cast<std::size_t>(read - adjustment.readings.begin());
  return std::abs(adjustment.slopes.at(j, i)) >= kHangs;
}

std::vector<std::string> Questioned::about(std::string_view dimension) const {
  std::vector<std::string> names;
  for (const Asked& asked : asked_) {
    const bool hangs = asked.dimension == dimension ||
                       std::any_of(asked.readings.begin(), asked.readings.end(),
                                   [&](const std::string& reading) { return hangs_on(dimension, reading); });
    if (hangs) names.push_back(asked.query);
  }
  return names;
}

}  // namespace sparewright::app
