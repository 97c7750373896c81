#include "core/survey/touched_queries.hpp"

#include <cmath>
#include <optional>
#include <utility>

#include <fmt/format.h>

#include "core/quantity/display.hpp"
#include "core/survey/adjust.hpp"
#include "core/survey/chi_square.hpp"

namespace sparewright::survey {
namespace {

// The largest a sound touch's odds should be, once in a thousand (normal distribution, two-sided): the usual limit of this
// test (W. Baarda, A Testing Procedure for Use in Geodetic Networks, 1968; from memory).
constexpr double kTouchOddsLimit = 3.29;

constexpr double kAlikeOdds = 1e-6;  // odds this close, relative, tell nothing apart

class Asker {
 public:
  Asker(ledger::Pen& pen, const AskedForm& about, const OrthogonalFit& fit, const std::vector<double>& doubts)
      : pen_(pen), about_(about), fit_(fit), doubts_(doubts) {}

  void ask() {
    if (fit_.spare() <= 0) return;
    double total = 0.0;
    std::optional<std::size_t> worst;
    for (std::size_t i = 0; i < fit_.off.size(); ++i) {
      const auto odds = odds_of(i);
      if (!odds) continue;
      total += fit_.off[i] * fit_.off[i] / (doubts_[i] * doubts_[i]);
      if (!worst || std::abs(*odds) > std::abs(*odds_of(*worst))) worst = i;
    }
    if (!worst) return;
    const bool misread = std::abs(*odds_of(*worst)) > kTouchOddsLimit;
    if (!misread && total <= chi_square_limit(kAgreeProbability, fit_.spare())) return;
    if (misread && is_alone(*worst)) {
      ask_misread(*worst);
    } else {
      ask_form();
    }
  }

 private:
  // What a touch lies off, over what that may be; none where it has to be met.
  [[nodiscard]] std::optional<double> odds_of(std::size_t touch) const {
    const double left = fit_.redundancy(touch);
    if (!(left > kCheckedPart) || !(doubts_[touch] > 0.0)) return std::nullopt;
    return fit_.off[touch] / (doubts_[touch] * std::sqrt(left));
  }

  [[nodiscard]] bool is_alone(std::size_t worst) const {
    const double most = std::abs(*odds_of(worst));
    for (std::size_t i = 0; i < fit_.off.size(); ++i) {
      const auto odds = odds_of(i);
      if (i != worst && odds && std::abs(*odds) >= most * (1.0 - kAlikeOdds)) return false;
    }
    return true;
  }

  void ask_misread(std::size_t touch) {
    const double out = fit_.off[touch] / fit_.redundancy(touch);
    ledger::Query query;
    query.id = fmt::format("misread touch/{}", about_.form);
    query.about = pen_.stage() + "/form error";
    query.says = fmt::format("misread? touch {} of '{}' is {} off the {} that the others make", touch + 1,
                             about_.form, shown(std::abs(out)), about_.kind);
    query.happens = "What is found from it is out too.";
    query.todo = "Touch it there again; where it comes out the same, the work is not true there.";
    query.serious = true;
    pen_.query(std::move(query));
  }

  void ask_form() {
    ledger::Query query;
    query.id = "touches scatter/" + about_.form;
    query.about = pen_.stage() + "/form error";
    query.says =
        fmt::format("the touches of '{}' lie {} off a {}, most less least: more than the readout's doubt",
                    about_.form, shown(fit_.form_error()), about_.kind);
    query.happens = "A touch is misread, or the work is not true; the doubts are widened by the scatter.";
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
  const std::vector<double>& doubts_;
};

}  // namespace

void ask_of_touches(ledger::Pen& pen, const AskedForm& about, const OrthogonalFit& fit,
                    const std::vector<double>& doubts) {
  Asker(pen, about, fit, doubts).ask();
}

}  // namespace sparewright::survey
