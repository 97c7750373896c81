#include "core/survey/next_reading.hpp"

#include <algorithm>
#include <array>
#include <limits>
#include <span>
#include <tuple>
#include <utility>

#include <fmt/format.h>

#include "core/survey/equation.hpp"
#include "core/survey/open_ways.hpp"
#include "core/survey/ways.hpp"

namespace sparewright::survey {
namespace {

using quantity::Kind;

// Ways that take the same names in the same order and read something else of them.
constexpr std::array kHolesApart{Way::kBetweenHoles, Way::kOverHoles, Way::kSameSides};
constexpr std::array kPinsApart{Way::kOverPins, Way::kBetweenPins};
constexpr std::array kEdgeToHole{Way::kEdgeToHoleNear, Way::kEdgeToHoleFar};
constexpr std::array kFaceToPin{Way::kFaceToPinNear, Way::kFaceOverPin};

std::span<const Way> ways_like(Way way) {
  for (const std::span<const Way> family :
       {std::span<const Way>(kHolesApart), std::span<const Way>(kPinsApart),
        std::span<const Way>(kEdgeToHole), std::span<const Way>(kFaceToPin)}) {
    if (std::find(family.begin(), family.end(), way) != family.end()) return family;
  }
  return {};
}

// What lies between middles is touched by no pair of faces.
bool is_between_middles(const Survey& survey, const std::string& dimension) {
  return std::any_of(survey.readings.begin(), survey.readings.end(), [&](const Reading& reading) {
    const bool is_first = !reading.of.empty() && reading.of.front() == dimension;
    return is_first && (reading.way == Way::kCentres || !ways_like(reading.way).empty());
  });
}

bool is_a_hole(const Survey& survey, const std::string& dimension) {
  return std::any_of(survey.readings.begin(), survey.readings.end(), [&](const Reading& reading) {
    const auto place = std::find(reading.of.begin(), reading.of.end(), dimension) - reading.of.begin();
    const bool of_it = static_cast<std::size_t>(place) < reading.of.size();
    const bool alone = reading.way == Way::kInside;
    const auto is_hole_way = [&](std::span<const Way> ways) {
      return std::find(ways.begin(), ways.end(), reading.way) != ways.end();
    };
    return of_it && (alone || (place > 0 && (is_hole_way(kHolesApart) || is_hole_way(kEdgeToHole))));
  });
}

class Chooser {
 public:
  Chooser(const Survey& survey, const Adjustment& report) : survey_(survey), report_(report) {
    for (const Found& found : report.unknowns)
      values_.push_back(found.value);
  }

  std::optional<NextReading> run() {
    for (const Reading& reading : survey_.readings) {
      for (const Way way : ways_like(reading.way)) {
        const bool is_there =
            std::any_of(survey_.readings.begin(), survey_.readings.end(),
                        [&](const Reading& r) { return r.way == way && r.of == reading.of; });
        if (!is_there) consider(way, reading.of);
      }
    }
    for (std::size_t j = 0; j < survey_.dimensions.size(); ++j) {
      if (!report_.unknowns[j].fixed) by_itself(survey_.dimensions[j]);
    }
    return std::move(best_);
  }

 private:
  void by_itself(const Dimension& dimension) {
    if (is_between_middles(survey_, dimension.name)) return;
    if (dimension.kind == Kind::kAngle) return consider(Way::kAngle, {dimension.name});
    if (!quantity::is_length_like(dimension.kind)) return;
    consider(is_a_hole(survey_, dimension.name) ? Way::kInside : Way::kOutside, {dimension.name});
  }

  void consider(Way way, const std::vector<std::string>& of) {
    const auto slopes = slopes_of(way, of);
    if (!slopes) return;
    OpenWays open(report_.gap_directions);
    if (!open.close(*slopes)) return;
    NextReading next{way, of, "", {}};
    for (std::size_t j = 0; j < survey_.dimensions.size(); ++j) {
      if (!report_.unknowns[j].fixed && !open.moves(j)) next.fixes.push_back(survey_.dimensions[j].name);
    }
    const double error = pick_instrument(next);
    const auto worth = std::tuple(next.fixes.size(), -static_cast<double>(of.size()), -error);
    if (next.fixes.empty() || (best_ && worth <= best_worth_)) return;
    best_ = std::move(next);
    best_worth_ = worth;
  }

  // Nothing where the dimensions are not of the kinds the way wants, or it cannot be worked out there.
  [[nodiscard]] std::optional<std::vector<double>> slopes_of(Way way,
                                                             const std::vector<std::string>& of) const {
    Reading reading;
    reading.way = way;
    reading.of = of;
    reading.repeats.emplace_back();
    reading.repeats.front().kind = row_of(way).repeats;
    const auto equation = equation_of(reading, survey_.dimensions, survey_.system);
    if (!equation) return std::nullopt;
    std::vector<std::size_t> places;
    std::vector<double> own;
    for (const std::string& name : equation->names()) {
      const auto found = std::find_if(survey_.dimensions.begin(), survey_.dimensions.end(),
                                      [&](const Dimension& d) { return d.name == name; });
      places.push_back(static_cast<std::size_t>(found - survey_.dimensions.begin()));
      own.push_back(values_[places.back()]);
    }
    const auto value = equation->at(own);
    if (!value) return std::nullopt;
    std::vector<double> slopes(values_.size(), 0.0);
    for (std::size_t k = 0; k < places.size(); ++k)
      slopes[places[k]] = value->slopes[k];
    return slopes;
  }

  // The finest that measures such a thing and has the jaws; its permissible error.
  double pick_instrument(NextReading& next) const {
    const WayRow& row = row_of(next.way);
    double least = std::numeric_limits<double>::infinity();
    for (const Instrument& instrument : survey_.instruments) {
      const std::vector<Jaws> faces = faces_of(instrument);
      const bool measures_it =
          quantity::dimension_of(instrument.good_to.kind) == quantity::dimension_of(row.repeats);
      const bool has_jaws = std::find(faces.begin(), faces.end(), row.jaws) != faces.end();
      if (!measures_it || !has_jaws || instrument.good_to.base >= least) continue;
      least = instrument.good_to.base;
      next.instrument = instrument.name;
    }
    return least;
  }

  const Survey& survey_;
  const Adjustment& report_;
  std::vector<double> values_;
  std::optional<NextReading> best_;
  std::tuple<std::size_t, double, double> best_worth_;
};

std::string all_of(const std::vector<std::string>& names) {
  std::string words;
  for (std::size_t i = 0; i < names.size(); ++i)
    words += (i == 0 ? "" : i + 1 < names.size() ? ", " : " and ") + names[i];
  return words;
}

base::Fingerprint definition(const Survey& survey) {
  base::Hasher h;
  h.add("next reading").add(static_cast<int>(survey.system));
  for (const Dimension& dimension : survey.dimensions)
    h.add(dimension.name).add(static_cast<int>(dimension.kind));
  for (const Reading& reading : survey.readings) {
    h.add(static_cast<int>(reading.way)).add(static_cast<std::uint64_t>(reading.of.size()));
    for (const std::string& name : reading.of)
      h.add(name);
  }
  for (const Instrument& instrument : survey.instruments) {
    h.add(instrument.name).add(instrument.good_to.base).add(static_cast<int>(instrument.good_to.kind));
    for (const Jaws jaws : faces_of(instrument))
      h.add(static_cast<int>(jaws));
  }
  return h.done();
}

void write(const Survey& survey, ledger::Pen& pen) {
  const auto* measured = pen.value<MeasuredUp>("survey/report");
  if (measured == nullptr || measured->adjustment.gaps.empty()) return;
  const auto next = next_reading(survey, *measured);
  if (!next) return;
  ledger::Decision fixes;
  fixes.kind = Kind::kNumber;
  fixes.value = static_cast<double>(next->fixes.size());
  fixes.words = fmt::format("{} would fix {}", words_of(*next), all_of(next->fixes));
  const ledger::Figure& figure = pen.decide("fixes", fixes);
  std::vector<std::string> open;
  for (const Found& found : measured->adjustment.unknowns) {
    if (!found.fixed) open.push_back(found.name);
  }
  ledger::Query query;
  query.id = "one more reading/" + all_of(next->of);
  query.about = figure.name;
  query.says = fmt::format("the readings do not fix {}", all_of(open));
  query.happens = "What hangs on it is NOT KNOWN.";
  query.todo = fmt::format("Read {}: it fixes {}.", words_of(*next), all_of(next->fixes));
  pen.query(std::move(query));
}

}  // namespace

std::string words_of(const NextReading& next) {
  return fmt::format(
      "'{}' of {}{}", row_of(next.way).key, all_of(next.of),
      next.instrument.empty() ? ", with an instrument that has the jaws for it" : " with " + next.instrument);
}

std::optional<NextReading> next_reading(const Survey& survey, const MeasuredUp& measured) {
  return Chooser(survey, measured.adjustment).run();
}

ledger::Stage next_reading_stage(const Survey& survey) {
  return {"next reading", definition(survey), [survey](ledger::Pen& pen) { write(survey, pen); }};
}

}  // namespace sparewright::survey
