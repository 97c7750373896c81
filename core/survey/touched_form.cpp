#include "core/survey/touched_form.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include <fmt/format.h>

#include "core/base/messages.hpp"
#include "core/quantity/display.hpp"
#include "core/survey/touched_numbers.hpp"
#include "core/survey/touched_queries.hpp"
#include "core/survey/touched_stages.hpp"

namespace sparewright::survey {
namespace {

using ledger::Figure;
using ledger::Pen;
using ledger::Term;
using quantity::Kind;

constexpr double kNotANumber = std::numeric_limits<double>::quiet_NaN();
constexpr double kRounding =
    1e-12;                          // of the largest coordinate: what touches on the form lie off in rounding
constexpr double kAlikeOff = 1e-6;  // as far off, relative: nothing tells them apart
constexpr std::string_view kFitSource =
    "least squares of the distances square to the form (W. Gander, G. H. Golub, R. Strebel, BIT 34, 1994, "
    "558-578); the tip's radius by geometry";

class FormWriter {
 public:
  FormWriter(const FormPlan& plan, Pen& pen) : plan_(plan), pen_(pen), tip_(pen.need(plan.tip)) {
    for (const auto& touch : plan.coordinates) {
      std::vector<double> at;
      for (const std::string& name : touch) {
        coordinates_.push_back(&pen.need(name));
        at.push_back(coordinates_.back()->value);
      }
      touches_.push_back(std::move(at));
    }
  }

  void write() {
    auto found = touched_numbers(plan_.form, plan_.side, touches_, tip_.value);
    if (!found) return write_wanted(base::sentence(found.error()), found.error().accepted);
    found_ = std::move(*found);
    find_doubts();
    if (!is_told_from_a_line()) {
      const std::string says =
          fmt::format("the touches of '{}' cannot tell its arc from a straight line", plan_.name);
      return write_wanted(says, "touches further round");
    }
    if (plan_.condition != Condition::kSound) write_metal_gone();
    for (std::size_t k = 0; k < found_.numbers.size(); ++k)
      write_number(k);
    write_middles();
    write_form_error();
    write_furthest_off();
    if (plan_.form == TouchedForm::kCircle) write_arc();
    if (plan_.condition == Condition::kSound)
      ask_of_touches(
          pen_,
          {plan_.name, {plan_.form, plan_.side, touches_, tip_.value, doubts_, plan_.turns}, plan_.system},
          found_);
  }

 private:
  [[nodiscard]] std::size_t axes() const { return plan_.coordinates.front().size(); }
  [[nodiscard]] const Figure& coordinate(std::size_t touch, std::size_t axis) const {
    return *coordinates_[touch * axes() + axis];
  }
  [[nodiscard]] std::string shown(double value, Kind kind = Kind::kLength) const {
    return quantity::shown(value, kind, plan_.system, quantity::usual_places(kind, plan_.system));
  }

  // Of one touch along its normal: what is its own, without the zero that all share.
  [[nodiscard]] double own_doubt(std::size_t touch) const {
    double variance = 0.0;
    for (std::size_t axis = 0; axis < axes(); ++axis) {
      const double part = found_.normals[touch][axis];
      for (const ledger::Share& share : coordinate(touch, axis).shares) {
        if (share.cause.text().starts_with("touch/")) variance += part * part * share.amount * share.amount;
      }
    }
    return std::sqrt(variance);
  }

  void find_doubts() {
    double squares = 0.0;
    for (std::size_t i = 0; i < touches_.size(); ++i) {
      doubts_.push_back(own_doubt(i));
      squares += found_.fit.off[i] * found_.fit.off[i];
    }
    if (found_.fit.spare() > 0) scatter_ = std::sqrt(squares / found_.fit.spare());
    double largest = 0.0;
    for (const Figure* figure : coordinates_)
      largest = std::max(largest, std::abs(figure->value));
    if (scatter_ <= kRounding * largest) scatter_ = 0.0;
  }

  [[nodiscard]] bool is_told_from_a_line() const {
    if (plan_.form != TouchedForm::kCircle) return true;
    double variance = 0.0;
    for (std::size_t i = 0; i < touches_.size(); ++i) {
      const double follows = found_.fit.slopes.at(2, i);
      variance += follows * follows * (doubts_[i] * doubts_[i] + scatter_ * scatter_);
    }
    const double radius = found_.numbers.back().value - found_.numbers.back().tip * tip_.value;
    return radius > kArcTold * std::sqrt(variance);
  }

  // All results are not known, and name the touches that are wanted.
  void write_wanted(const std::string& says, const std::string& wanted_touches) {
    ledger::Root root;
    root.kind = Kind::kLength;
    root.source = says;
    const std::string what = wanted_touches.empty() ? "other touches" : wanted_touches;
    const Figure& wanted = pen_.root("wanted/" + what, root);
    const Term term{&wanted, 1.0};
    for (const Told told : plan_.told)
      pen_.linear(row_of(told).figure, row_of(told).kind, says, kNotANumber, {&term, 1});
    ledger::Query query;
    query.id = "touches fix nothing/" + plan_.name;
    query.about = pen_.stage() + "/" + std::string(row_of(plan_.told.front()).figure);
    query.says = fmt::format("'{}': {}", plan_.name, says);
    query.happens = "No size comes out of these touches.";
    query.todo = "Wanted: " + what + ".";
    pen_.query(std::move(query));
  }

  [[nodiscard]] std::string words() const {
    const std::size_t n = touches_.size();
    std::string text = fmt::format("the {} nearest to {} touches", name_of(plan_.form), n);
    if (found_.fit.spare() == 0)
      text = fmt::format("the {} through {} touches: none is checked by another", name_of(plan_.form), n);
    if (tip_.value != 0.0) text += ", half the tip allowed for";
    return text;
  }

  // What the touches scatter by, found from what they lie off, as it comes into one result. The scatter is one number with
  // the touches to spare as its degrees of freedom; it is handed to the touches so that the whole has them too.
  const Figure* write_scatter(const ToldNumber& number) {
    if (found_.fit.spare() <= 0 || scatter_ == 0.0) return nullptr;
    double squares = 0.0;
    double fourths = 0.0;
    for (const double follows : number.follows) {
      squares += follows * follows;
      fourths += follows * follows * follows * follows;
    }
    if (squares == 0.0) return nullptr;
    ledger::Root root;
    root.kind = row_of(number.told).kind;
    root.value = 0.0;
    for (std::size_t i = 0; i < number.follows.size(); ++i) {
      root.shares.push_back({fmt::format("touched/{}/scatter/{}", plan_.name, i + 1),
                             scatter_ * number.follows[i],
                             found_.fit.spare() * fourths / (squares * squares)});
    }
    root.source =
        fmt::format("the touches lie {} off, root mean square, {} more than needed; JCGM 100:2008, 4.2",
                    shown(scatter_), found_.fit.spare());
    return &pen_.root(fmt::format("scatter in {}", row_of(number.told).figure), std::move(root));
  }

  // Terms of what follows the touches along their normals.
  [[nodiscard]] std::vector<Term> terms_of(const std::vector<double>& follows) const {
    std::vector<Term> terms;
    for (std::size_t i = 0; i < follows.size(); ++i) {
      for (std::size_t axis = 0; axis < axes(); ++axis) {
        const double slope = follows[i] * found_.normals[i][axis];
        if (slope != 0.0) terms.push_back({&coordinate(i, axis), slope});
      }
    }
    return terms;
  }

  // At a place that is not sound: no less than nothing has gone, and how much more is not known. It bounds what follows it.
  void write_metal_gone() {
    ledger::Root root;
    root.kind = Kind::kLength;
    root.value = 0.0;
    root.bound = ledger::Bound::kAtLeast;
    root.source = fmt::format("the place is {}", name_of(plan_.condition));
    metal_gone_ = &pen_.root("metal gone", std::move(root));
  }

  // How what was there follows the metal gone: wear opens a hole and takes off a boss or a face. Where it takes the middle
  // or the lean of something, or what a bend or a break did, nobody knows: 0, which leaves it without a bound.
  [[nodiscard]] double slope_of_gone(Told told) const {
    if (plan_.condition != Condition::kWorn) return 0.0;
    const double hole = plan_.side == TipSide::kInside ? -1.0 : 1.0;
    if (told == Told::kDiameter) return 2.0 * hole;
    if (told == Told::kRadius) return hole;
    if (told == Told::kAt) return is_upward(plan_.side) ? 1.0 : -1.0;
    return 0.0;
  }

  void write_number(std::size_t k) {
    const ToldNumber& number = found_.numbers[k];
    const Figure* scatter = write_scatter(number);
    std::vector<Term> terms = terms_of(number.follows);
    if (number.tip != 0.0) terms.push_back({&tip_, number.tip});
    if (scatter != nullptr) terms.push_back({scatter, 1.0});
    if (metal_gone_ != nullptr) terms.push_back({metal_gone_, slope_of_gone(number.told)});
    const ToldRow& row = row_of(number.told);
    pen_.linear(row.figure, row.kind, words(), number.value, terms, kFitSource);
  }

  // The place a face is said to stand at: a choice, so it has no doubt.
  void write_middles() {
    if (plan_.form == TouchedForm::kCircle) return;
    constexpr std::string_view kAxes = "xyz";
    for (std::size_t axis = 0; axis < axes(); ++axis) {
      if (axis == axis_of(plan_.side)) continue;
      ledger::Decision middle;
      middle.kind = Kind::kLength;
      middle.words = "the mean of the touches: where the face is said to stand";
      const double first = touches_.front()[axis];
      double sum = 0.0;
      for (std::size_t i = 0; i < touches_.size(); ++i) {
        sum += touches_[i][axis] - first;
        middle.inputs.push_back(&coordinate(i, axis));
      }
      middle.value = first + sum / static_cast<double>(touches_.size());
      pen_.decide(fmt::format("middle {}", kAxes[axis]), middle);
    }
  }

  // What a touch lies off, by each touch moved by 1 along its normal.
  [[nodiscard]] std::vector<double> off_follows(std::size_t touch) const {
    const OrthogonalFit& fit = found_.fit;
    std::vector<double> follows(touches_.size(), 0.0);
    follows[touch] = 1.0;
    for (std::size_t i = 0; i < touches_.size(); ++i) {
      for (std::size_t k = 0; k < fit.slopes.rows; ++k)
        follows[i] += fit.equation_slopes.at(touch, k) * fit.slopes.at(k, i);
    }
    return follows;
  }

  // How far the worst touch lies off, either way. Where several do, as four of a circle have to, no one is named.
  void write_furthest_off() {
    const OrthogonalFit& fit = found_.fit;
    if (fit.spare() <= 0) return;
    const auto nearer = [](double a, double b) { return std::abs(a) < std::abs(b); };
    const auto worst =
        static_cast<std::size_t>(std::max_element(fit.off.begin(), fit.off.end(), nearer) - fit.off.begin());
    const double off = std::abs(fit.off[worst]);
    const auto as_far = std::count_if(fit.off.begin(), fit.off.end(),
                                      [&](double each) { return std::abs(each) >= off * (1.0 - kAlikeOff); });
    std::vector<double> follows = off_follows(worst);
    for (double& follow : follows)
      follow *= fit.off[worst] < 0.0 ? -1.0 : 1.0;
    const std::string which =
        as_far > 1 ? fmt::format("{} touches alike", as_far) : fmt::format("touch {}", worst + 1);
    pen_.linear("furthest off", Kind::kLength, which, off, terms_of(follows), kFitSource);
  }

  void write_form_error() {
    const OrthogonalFit& fit = found_.fit;
    if (fit.spare() <= 0) {
      ledger::Root root;
      root.kind = Kind::kLength;
      root.source = fmt::format("{} touches fit any {}", touches_.size(), name_of(plan_.form));
      const Figure& wanted = pen_.root("wanted/one touch more", root);
      const Term term{&wanted, 1.0};
      pen_.linear("form error", Kind::kLength, "not known: no touch to spare", kNotANumber, {&term, 1});
      return;
    }
    std::vector<double> follows = off_follows(fit.most());
    const std::vector<double> least = off_follows(fit.least());
    for (std::size_t i = 0; i < touches_.size(); ++i)
      follows[i] -= least[i];
    pen_.linear("form error", Kind::kLength,
                fmt::format("what touch {} lies off outwards less touch {}", fit.most() + 1, fit.least() + 1),
                fit.form_error(), terms_of(follows), kFitSource);
  }

  void write_arc() {
    ledger::Decision arc;
    arc.kind = Kind::kAngle;
    arc.value = found_.arc_rad;
    arc.words = "a turn less the widest gap between touches";
    for (const Figure* figure : coordinates_)
      arc.inputs.push_back(figure);
    pen_.decide("arc", arc);
    double squares = 0.0;
    for (const double follows : found_.fit.slopes.row(2))
      squares += follows * follows;
    if (std::sqrt(squares) <= kShortArc) return;
    ledger::Query query;
    query.id = "short arc/" + plan_.name;
    query.about = pen_.stage() + "/radius";
    query.says = fmt::format(
        "the touches of '{}' cover {:.0f} deg: its radius is doubted {:.1f} times as much as one touch",
        plan_.name, quantity::unit::degree.from_base(found_.arc_rad), std::sqrt(squares));
    query.happens = "A small misreading moves the middle and the size by a lot.";
    query.todo = "Touch further round, opposite if that can be reached.";
    pen_.query(std::move(query));
  }

  const FormPlan& plan_;
  Pen& pen_;
  const Figure& tip_;
  std::vector<const Figure*> coordinates_;
  std::vector<std::vector<double>> touches_;
  TouchedNumbers found_;
  std::vector<double> doubts_;          // of each touch, along its normal
  double scatter_ = 0.0;                // of one touch, from what they lie off
  const Figure* metal_gone_ = nullptr;  // where the place is not sound
};

}  // namespace

void write_form(const FormPlan& plan, Pen& pen) {
  FormWriter(plan, pen).write();
}

}  // namespace sparewright::survey
