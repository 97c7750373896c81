#include "core/survey/worn.hpp"

#include <algorithm>
#include <array>
#include <limits>
#include <map>
#include <set>
#include <utility>

#include <fmt/format.h>

#include "core/survey/corrected.hpp"
#include "core/survey/equation.hpp"
#include "core/survey/trial.hpp"

namespace sparewright::survey {
namespace {

using ledger::Bound;
using ledger::Figure;
using ledger::Pen;
using ledger::Term;

// "'a', 'b' and 'c'"
std::string quoted(const std::vector<std::string>& names) {
  std::string words;
  for (std::size_t i = 0; i < names.size(); ++i)
    words += fmt::format("{}'{}'", i == 0 ? "" : i + 1 < names.size() ? ", " : " and ", names[i]);
  return words;
}

// What the stage knows of a dimension: its kind, and what its readings read for each unit of it.
struct WornPlan {
  WornPlaces places;
  quantity::Kind kind = quantity::Kind::kLength;
  std::map<std::string, double> times;  // by reading: 2 of a radius read across
  std::set<std::string> repeated;       // readings with a most worn place
};

// How the size enclosed by trials is called among the readings; no reading can have the name.
constexpr std::string_view kTried = "what was tried/";

class WornWriter {
 public:
  WornWriter(const WornPlan& plan, Pen& pen)
      : plan_(plan), pen_(pen), sound_(pen.ask("survey/" + plan.places.dimension)) {}

  void write() {
    const WornPlaces& places = plan_.places;
    std::vector<std::string> all = places.readings;
    if (places.tried && pen_.ask(worn_trial_path(places.dimension)).known()) all.emplace_back(kTried);
    std::string worst;
    for (const std::string& name : all) {
      const bool is_worse = worst.empty() || (places.in_a_gap ? size_at(name) > size_at(worst)
                                                              : size_at(name) < size_at(worst));
      if (is_worse) worst = name;
      if (all.size() > 1 && name != kTried) write_wear("wear at/" + name, name);
    }
    if (worst.empty()) return;
    const std::array terms{Term{&figure_of(worst), 1.0 / plan_.times.at(worst)}};
    pen_.exact(places.dimension + "/now", plan_.kind, "as it is now, " + at(worst), size_at(worst), terms);
    write_wear("wear", worst);
  }

 private:
  const Figure& figure_of(const std::string& name) {
    if (name == kTried) return pen_.need(worn_trial_path(plan_.places.dimension));
    return pen_.need(fmt::format("reading/{}{}", name, plan_.repeated.contains(name) ? kMostWorn : ""));
  }
  double size_at(const std::string& name) { return figure_of(name).value / plan_.times.at(name); }
  static std::string at(const std::string& name) {
    return name == kTried ? "by what was tried" : fmt::format("at '{}'", name);
  }

  [[nodiscard]] bool has_sound_size() const { return sound_.known() && sound_.bound == Bound::kExact; }

  void write_wear(const std::string& local, const std::string& name) {
    const WornPlaces& places = plan_.places;
    const double sign = places.in_a_gap ? -1.0 : 1.0;
    const std::array terms{Term{&sound_, sign}, Term{&figure_of(name), -sign / plan_.times.at(name)}};
    const double gone =
        has_sound_size() ? sign * (sound_.value - size_at(name)) : std::numeric_limits<double>::quiet_NaN();
    const std::string sound =
        places.sound.empty() ? "as the readings give it" : "sound at " + quoted(places.sound);
    pen_.exact(places.dimension + "/" + local, quantity::Kind::kLength,
               has_sound_size() ? fmt::format("metal gone {}; {}", at(name), sound)
                                : "no sound reading fixes what the size was",
               gone, terms);
  }

  const WornPlan& plan_;
  Pen& pen_;
  const Figure& sound_;
};

bool is_of(const Reading& reading, const std::string& dimension) {
  return reading.of == std::vector<std::string>{dimension};
}

// Trials that bound a place say nothing by themselves; what goes with a push is a reading.
bool is_a_bound(const Reading& reading) {
  return reading.trial && *reading.trial != Trial::kGoesWithAPush;
}

double times_of(const Reading& reading, const Survey& survey) {
  const auto equation = equation_of(reading, survey.dimensions, survey.system);
  if (!equation) return 1.0;
  const auto one = equation->at(std::array{1.0});
  return one ? one->value : 1.0;
}

std::vector<WornPlan> plans_of(const Survey& survey) {
  std::vector<WornPlan> plans;
  for (WornPlaces& places : worn_places(survey)) {
    WornPlan plan;
    for (const Dimension& dimension : survey.dimensions) {
      if (dimension.name == places.dimension) plan.kind = dimension.kind;
    }
    for (const Reading& reading : survey.readings) {
      if (!is_of(reading, places.dimension) || reading.condition != Condition::kWorn) continue;
      plan.times[is_a_bound(reading) ? std::string(kTried) : reading.name] = times_of(reading, survey);
      if (has_most_worn(reading)) plan.repeated.insert(reading.name);
    }
    plan.places = std::move(places);
    plans.push_back(std::move(plan));
  }
  return plans;
}

base::Fingerprint definition(const std::vector<WornPlan>& plans) {
  base::Hasher h;
  h.add("worn");
  for (const WornPlan& plan : plans) {
    h.add(plan.places.dimension).add(plan.places.in_a_gap).add(static_cast<int>(plan.kind));
    h.add(plan.places.tried);
    for (const auto& [reading, times] : plan.times)
      h.add(reading).add(times).add(plan.repeated.contains(reading));
    h.add(static_cast<std::uint64_t>(plan.places.sound.size()));
    for (const std::string& sound : plan.places.sound)
      h.add(sound);
  }
  return h.done();
}

}  // namespace

std::vector<WornPlaces> worn_places(const Survey& survey) {
  std::vector<WornPlaces> all;
  for (const Dimension& dimension : survey.dimensions) {
    WornPlaces places;
    places.dimension = dimension.name;
    std::vector<bool> in_gaps;
    for (const Reading& reading : survey.readings) {
      if (!is_of(reading, dimension.name)) continue;
      if (reading.condition == Condition::kSound) places.sound.push_back(reading.name);
      if (reading.condition == Condition::kWorn && is_a_bound(reading)) {
        in_gaps.push_back(reading.way == Way::kInside);
        places.tried = true;
        continue;
      }
      if (reading.condition != Condition::kWorn || bound_of(reading) == Bound::kNeither) continue;
      in_gaps.push_back(bound_of(reading) == Bound::kAtMost);
      places.readings.push_back(reading.name);
    }
    const bool is_clear = !in_gaps.empty() && std::count(in_gaps.begin(), in_gaps.end(), in_gaps.front()) ==
                                                  static_cast<std::ptrdiff_t>(in_gaps.size());
    if (!is_clear) continue;
    places.in_a_gap = in_gaps.front();
    all.push_back(std::move(places));
  }
  return all;
}

ledger::Stage worn_stage(const Survey& survey) {
  std::vector<WornPlan> plans = plans_of(survey);
  const base::Fingerprint print = definition(plans);
  return {"worn", print, [plans = std::move(plans)](Pen& pen) {
            for (const WornPlan& plan : plans)
              WornWriter(plan, pen).write();
          }};
}

std::string worn_now_path(std::string_view dimension) {
  return fmt::format("worn/{}/now", dimension);
}
std::string worn_wear_path(std::string_view dimension) {
  return fmt::format("worn/{}/wear", dimension);
}

}  // namespace sparewright::survey
