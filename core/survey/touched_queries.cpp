#include "core/survey/touched_queries.hpp"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "core/quantity/display.hpp"
#include "core/survey/adjust.hpp"
#include "core/survey/chi_square.hpp"
#include "core/survey/touch_odds.hpp"

namespace sparewright::survey {
namespace {

constexpr std::size_t kMostNamed = 4;  // of touches that explain it alike; of more the count is said
constexpr std::string_view kAxes = "xyz";

// Of a circle its diameter; of a face how far apart its touches lie.
double size_of(const FormTouched& form, const TouchedNumbers& found) {
  for (const ToldNumber& number : found.numbers) {
    if (number.told == Told::kDiameter) return number.value;
  }
  double squares = 0.0;
  for (std::size_t axis = 0; axis < form.touches.front().size(); ++axis) {
    const auto [least, most] =
        std::minmax_element(form.touches.begin(), form.touches.end(),
                            [&](const auto& a, const auto& b) { return a[axis] < b[axis]; });
    squares += ((*most)[axis] - (*least)[axis]) * ((*most)[axis] - (*least)[axis]);
  }
  return std::sqrt(squares);
}

class Asker {
 public:
  Asker(ledger::Pen& pen, const AskedForm& about, const TouchedNumbers& found)
      : pen_(pen),
        about_(about),
        fit_(found.fit),
        kind_(name_of(about.touched.form)),
        rough_(rough_mm(size_of(about.touched, found))) {}

  void ask() {
    if (fit_.spare() <= 0) return;
    const TouchOdds odds = touch_odds(fit_, about_.touched.doubts);
    if (!odds.worst) return;
    const bool misread = odds.has_misread();
    if (!misread && odds.total <= chi_square_limit(kAgreeProbability, fit_.spare())) return;
    const std::vector<TurnInTouch> turns = turns_in_touches(about_.touched, fit_);
    if (!turns.empty()) return ask_turn(turns);
    const bool stands_out = odds.others_agree(fit_.spare()) || std::abs(fit_.off[*odds.worst]) > rough_;
    if (misread && odds.is_alone && stands_out) return ask_misread(*odds.worst);
    ask_form(odds.is_alone ? fmt::format(", touch {} the furthest", *odds.worst + 1) : "");
  }

 private:
  [[nodiscard]] ledger::Query misread_touch() const {
    ledger::Query query;
    query.id = fmt::format("misread touch/{}", about_.name);
    query.about = pen_.stage() + "/form error";
    query.happens = "What is found from it is out too.";
    query.serious = true;
    return query;
  }

  [[nodiscard]] std::string out_from_others(std::size_t touch) const {
    const double out = fit_.off[touch] / fit_.redundancy(touch);
    return fmt::format("misread? touch {} of '{}' is {} off the {} that the others make", touch + 1,
                       about_.name, shown(std::abs(out)), kind_);
  }

  void ask_misread(std::size_t touch) {
    ledger::Query query = misread_touch();
    query.says = out_from_others(touch);
    query.todo = "Touch it there again; where it comes out the same, the work is not true there.";
    pen_.query(std::move(query));
  }

  // "y of touch 2 at 0.8510 in"
  [[nodiscard]] std::string put_right(const TurnInTouch& turn) const {
    const double at = about_.touched.touches[turn.touch][turn.axis] + turn.by;
    return fmt::format("{} of touch {} at {}", kAxes[turn.axis], turn.touch + 1, shown(at));
  }
  // "one turn of the collar (0.2 in) less"
  [[nodiscard]] static std::string turn_words(const TurnInTouch& turn) {
    return fmt::format("one {} ({}) {}", turn.turn.of, turn.turn.size, turn.by > 0.0 ? "more" : "less");
  }
  // "the diameter then 1.4995 in", "the face then at 0.9000 in"
  [[nodiscard]] std::string then_words(const TurnInTouch& turn) const {
    for (const ToldNumber& number : turn.then.numbers) {
      if (number.told == Told::kDiameter) return "the diameter then " + shown(number.value);
    }
    return "the face then at " + shown(turn.then.numbers.front().value);
  }

  void ask_turn(const std::vector<TurnInTouch>& turns) {
    const TurnInTouch& best = turns.front();
    ledger::Query query = misread_touch();
    query.says = fmt::format("misread? the touches of '{}' lie {} off a {}; ", about_.name,
                             shown(fit_.form_error()), kind_);
    if (turns.size() == 1) {
      query.says += fmt::format("they agree to {} with {}, {}; {}", shown(best.then.fit.form_error()),
                                put_right(best), turn_words(best), then_words(best));
      query.todo = "Touch it there again, counting the turns.";
    } else {
      query.says += which_words(turns);
      query.todo = "Touch at one more place, or these again, counting the turns.";
    }
    pen_.query(std::move(query));
  }

  // "one turn of the collar (0.2 in) out in one of them explains it, which they cannot tell: ..."; each with its own turn where
  // several would do.
  [[nodiscard]] std::string which_words(const std::vector<TurnInTouch>& turns) const {
    const Turn& first = turns.front().turn;
    const bool is_one = std::all_of(turns.begin(), turns.end(),
                                    [&](const TurnInTouch& each) { return each.turn.size == first.size; });
    std::string words =
        fmt::format("one {}{} out in one of them explains it, which they cannot tell: ", first.of,
                    is_one ? fmt::format(" ({})", first.size) : "");
    for (std::size_t i = 0; i < std::min(turns.size(), kMostNamed); ++i) {
      words += fmt::format("{}{}{} ({})", i == 0 ? "" : "; ", put_right(turns[i]),
                           is_one ? "" : ", " + turn_words(turns[i]), then_words(turns[i]));
    }
    if (turns.size() > kMostNamed) words += fmt::format("; or {} more", turns.size() - kMostNamed);
    return words;
  }

  void ask_form(const std::string& furthest) {
    ledger::Query query;
    query.id = "touches scatter/" + about_.name;
    query.about = pen_.stage() + "/form error";
    query.serious = fit_.form_error() > rough_;
    query.says = fmt::format(
        "the touches of '{}' lie {} off a {}, most less least{}: more than {}", about_.name,
        shown(fit_.form_error()), kind_, furthest,
        query.serious ? fmt::format("the roughest work is out ({})", shown(rough_)) : "the readout's doubt");
    query.happens =
        query.serious ? "A touch is misread, or the place is worn: no size comes out of them."
                      : "A touch is misread, or the work is not true; the doubts are widened by the scatter.";
    query.todo = "Touch again, at more places.";
    pen_.query(std::move(query));
  }

  [[nodiscard]] std::string shown(double value) const {
    using quantity::Kind;
    return quantity::shown(value, Kind::kLength, about_.system,
                           quantity::usual_places(Kind::kLength, about_.system));
  }

  ledger::Pen& pen_;
  const AskedForm& about_;
  const OrthogonalFit& fit_;
  std::string_view kind_;
  double rough_ = 0.0;
};

}  // namespace

double rough_mm(double size_mm) {
  constexpr double kSteps_mm = 500.0;
  const double unit_um =
      size_mm <= kSteps_mm ? 0.45 * std::cbrt(size_mm) + 0.001 * size_mm : 0.004 * size_mm + 2.1;
  return unit_um;  // a thousand units, in thousandths of a millimetre
}

void ask_of_touches(ledger::Pen& pen, const AskedForm& about, const TouchedNumbers& found) {
  Asker(pen, about, found).ask();
}

}  // namespace sparewright::survey
