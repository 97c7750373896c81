#include "core/survey/check.hpp"

#include <algorithm>
#include <optional>
#include <set>
#include <string_view>

#include <fmt/format.h>

#include "core/base/nearest.hpp"
#include "core/quantity/typed_system.hpp"
#include "core/survey/adjust.hpp"
#include "core/survey/equation.hpp"
#include "core/survey/instrument_error.hpp"
#include "core/survey/known.hpp"
#include "core/survey/touched_check.hpp"
#include "core/survey/touched_stages.hpp"
#include "core/survey/trouble_with.hpp"
#include "core/survey/ways.hpp"

namespace sparewright::survey {
namespace {

using base::Code;
using base::Failure;
using quantity::Typed;

constexpr double kInch = 25.4;  // mm, exact

class Checker {
 public:
  explicit Checker(const Survey& survey) : survey_(survey) {}

  std::vector<Trouble> run() {
    if (survey_.readings.empty() && survey_.touched.empty()) {
      add(Trouble::In::kSurvey, 0, "reading", failure_of(Code::kReadingsTooFew, "", "a reading", "anything"));
    }
    if (survey_.readings.size() > kMostReadings) {
      add(Trouble::In::kSurvey, 0, "reading",
          failure_of(Code::kTooMany, fmt::format("{} readings", survey_.readings.size()),
                     fmt::format("at most {}", kMostReadings), "measuring up"));
    }
    add_name_troubles(troubles_, survey_.instruments, Trouble::In::kInstrument, "instrument");
    for (std::size_t i = 0; i < survey_.instruments.size(); ++i)
      check_instrument(i);
    add_name_troubles(troubles_, survey_.dimensions, Trouble::In::kDimension, "dimension");
    for (std::size_t i = 0; i < survey_.dimensions.size(); ++i)
      check_usable(i);
    for (const Known& known : survey_.known) {
      const std::vector<std::string> names = names_in(known);
      measured_.insert(names.begin(), names.end());
    }
    add_name_troubles(troubles_, survey_.readings, Trouble::In::kReading, "reading");
    for (std::size_t i = 0; i < survey_.readings.size(); ++i)
      check_reading(i);
    for (const ToldReading& told : told_readings(survey_))
      measured_.insert(told.dimension);
    for (std::size_t i = 0; i < survey_.dimensions.size(); ++i)
      check_measured(i);
    for (Trouble& trouble : touched_troubles(survey_))
      troubles_.push_back(std::move(trouble));
    for (Trouble& trouble : known_troubles(survey_))
      troubles_.push_back(std::move(trouble));
    std::stable_sort(troubles_.begin(), troubles_.end(),
                     [](const Trouble& a, const Trouble& b) { return a.in < b.in; });
    return std::move(troubles_);
  }

 private:
  void add(Trouble::In in, std::size_t index, std::string_view field, Failure f) {
    troubles_.push_back({in, index, std::string(field), std::move(f)});
  }

  void check_instrument(std::size_t i) {
    const Instrument& instrument = survey_.instruments[i];
    check_positive(i, "good_to", instrument.good_to);
    check_positive(i, "reads", instrument.reads);
    if (instrument.turn) check_positive(i, "turn", *instrument.turn);
    if (instrument.comes_back) check_positive(i, "repeats", *instrument.comes_back);
    if (instrument.to) check_positive(i, "to", *instrument.to);
    if (instrument.from && instrument.to && instrument.from->base >= instrument.to->base)
      add(Trouble::In::kInstrument, i, "from",
          failure_of(Code::kValueNotAccepted, instrument.from->typed,
                     fmt::format("less than 'to', which is {}", instrument.to->typed), "from"));
    if (instrument.zero_within) check_not_negative(i, *instrument.zero_within);
    for (const JawPair& pair : instrument.jaw_pairs) {
      if (pair.zero_within) check_not_negative(i, *pair.zero_within);
    }
  }
  void check_not_negative(std::size_t i, const Typed& zero_within) {
    if (zero_within.base >= 0.0) return;
    add(Trouble::In::kInstrument, i, "zero_within",
        failure_of(Code::kValueNotAccepted, zero_within.typed, "0 or more", "zero_within"));
  }
  void check_positive(std::size_t i, std::string_view field, const Typed& number) {
    if (number.base > 0.0) return;
    add(Trouble::In::kInstrument, i, field,
        failure_of(Code::kSizeNotPositive, number.typed, "",
                   fmt::format("'{}' of {}", field, survey_.instruments[i].name)));
  }

  // A name is usable if it reads as an expression that is just that name.
  void check_usable(std::size_t i) {
    const std::string& name = survey_.dimensions[i].name;
    const auto read = formula::Expression::read(name);
    if (read && read->names() == std::vector<std::string>{name}) return;
    add(Trouble::In::kDimension, i, "name",
        failure_of(Code::kValueNotAccepted, name, "letters, digits, '_' and '.', starting with a letter",
                   "name"));
  }

  void check_reading(std::size_t i) {
    const Reading& reading = survey_.readings[i];
    note_names(reading);
    if (reading.repeats.empty()) {
      add(Trouble::In::kReading, i, "repeats",
          failure_of(Code::kReadingsTooFew, "", "what was read, once or more",
                     fmt::format("'{}'", reading.name)));
      return;
    }
    check_repeats(i);
    check_with(i);
    const bool can_be_tried = reading.way == Way::kInside || reading.way == Way::kOutside;
    if (reading.trial && !can_be_tried)
      add(Trouble::In::kReading, i, "trial",
          failure_of(Code::kValueNotAccepted, name_of(*reading.trial),
                     "outside or inside: a size that something was tried on", "trial"));
    const auto equation = equation_of(reading, survey_.dimensions, survey_.system);
    std::string_view field = reading.way == Way::kExpression ? "is" : "of";
    if (!equation && equation.error().subject == "count") field = "count";
    if (!equation && equation.error().subject == "spanned") field = "spanned";
    if (!equation) {
      add(Trouble::In::kReading, i, field, equation.error());
    } else if (equation->names().empty()) {
      add(Trouble::In::kReading, i, field,
          failure_of(Code::kValueNotAccepted, equation->typed(), "an expression with a dimension in it",
                     field));
    }
  }

  // The names it is of, whether or not its equation is right.
  void note_names(const Reading& reading) {
    measured_.insert(reading.of.begin(), reading.of.end());
    if (reading.way != Way::kExpression) return;
    const auto read = formula::Expression::read(reading.is);
    if (read) measured_.insert(read->names().begin(), read->names().end());
  }

  void check_repeats(std::size_t i) {
    const Reading& reading = survey_.readings[i];
    const auto wanted = reading.repeats.front().kind;
    for (const Typed& repeat : reading.repeats) {
      if (quantity::dimension_of(repeat.kind) != quantity::dimension_of(wanted)) {
        add(Trouble::In::kReading, i, "repeats",
            failure_of(Code::kUnitOfAnotherKind, repeat.typed, quantity::name_of(wanted),
                       quantity::name_of(wanted)));
      } else if (reading.way != Way::kExpression &&
                 (row_of(reading.way).is_difference ? repeat.base < 0.0 : repeat.base <= 0.0)) {
        add(Trouble::In::kReading, i, "repeats",
            failure_of(Code::kSizeNotPositive, repeat.typed, "", fmt::format("'{}'", reading.name)));
      }
    }
  }

  void check_with(std::size_t i) {
    const Reading& reading = survey_.readings[i];
    const auto found = std::find_if(survey_.instruments.begin(), survey_.instruments.end(),
                                    [&](const Instrument& each) { return each.name == reading.instrument; });
    if (found == survey_.instruments.end()) {
      std::vector<std::string> known;
      for (const Instrument& each : survey_.instruments)
        known.push_back(each.name);
      add(Trouble::In::kReading, i, "instrument",
          failure_of(Code::kNotInTheShop, reading.instrument, base::known_words(reading.instrument, known),
                     "instrument"));
      return;
    }
    const auto kind = reading.repeats.front().kind;
    if (quantity::dimension_of(found->good_to.kind) != quantity::dimension_of(kind) ||
        quantity::dimension_of(found->reads.kind) != quantity::dimension_of(kind)) {
      add(Trouble::In::kReading, i, "instrument",
          failure_of(Code::kUnitOfAnotherKind, reading.instrument, "an instrument for it",
                     quantity::name_of(kind)));
    }
    check_range(i, *found);
    const std::vector<Jaws> faces = faces_of(*found);
    const Jaws jaws = jaws_of(reading);
    if (std::find(faces.begin(), faces.end(), jaws) != faces.end()) return;
    std::vector<std::string_view> has;
    has.reserve(faces.size());
    for (const Jaws face : faces)
      has.push_back(name_of(face));
    add(Trouble::In::kReading, i, "jaws",
        failure_of(Code::kValueNotAccepted, name_of(jaws), fmt::format("{}", fmt::join(has, ", ")),
                   "jaws of " + found->name));
  }

  // A reading that the instrument cannot show. Where it can show the same number in the other unit, that is said.
  void check_range(std::size_t i, const Instrument& instrument) {
    const Reading& reading = survey_.readings[i];
    if (row_of(reading.way).is_difference) return;
    for (const Typed& repeat : reading.repeats) {
      if (repeat.base <= 0.0 || in_range(instrument, repeat.base)) continue;
      std::string accepted = fmt::format("{}, which {} measures", range_words(instrument), instrument.name);
      const bool is_inch = quantity::system_of(repeat) == quantity::UnitSystem::kInch;
      const double other = is_inch ? repeat.base / kInch : repeat.base * kInch;
      if (!repeat.unit_given && in_range(instrument, other))
        accepted += fmt::format("; {} {} would do: was that meant?", repeat.typed, is_inch ? "mm" : "in");
      add(Trouble::In::kReading, i, "repeats",
          failure_of(Code::kValueNotAccepted, repeat.typed, accepted, reading.name));
    }
  }

  void check_measured(std::size_t i) {
    const std::string& name = survey_.dimensions[i].name;
    if (measured_.count(name) > 0) return;
    add(Trouble::In::kDimension, i, "name",
        failure_of(Code::kReadingsTooFew, "", "a reading of it", fmt::format("'{}'", name)));
  }

  const Survey& survey_;
  std::set<std::string, std::less<>> measured_;
  std::vector<Trouble> troubles_;
};

}  // namespace

std::vector<Trouble> troubles(const Survey& survey) {
  return Checker(survey).run();
}

}  // namespace sparewright::survey
