#include "core/survey/pattern_work.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include <fmt/format.h>

#include "core/base/messages.hpp"
#include "core/quantity/display.hpp"
#include "core/survey/placed_pattern.hpp"

namespace sparewright::survey {
namespace {

using ledger::Figure;
using ledger::Pen;
using ledger::Term;
using quantity::Kind;

constexpr std::string_view kPatternSource = "the circle or the line nearest to the middles, least squares";
constexpr double kSure = 0.95;  // odds of the count of places from which nothing is asked

class PatternWriter {
 public:
  PatternWriter(const PatternPlan& plan, Pen& pen) : plan_(plan), pen_(pen) {
    for (const std::string& hole : plan.of) {
      middles_.push_back(&pen.need(touched_path(hole, Told::kX)));
      middles_.push_back(&pen.need(touched_path(hole, Told::kY)));
    }
  }

  void write() {
    std::vector<Point2> points;
    double most_u = 0.0;
    for (std::size_t i = 0; i < middles_.size(); i += 2) {
      points.push_back({middles_[i]->value, middles_[i + 1]->value});
      most_u = std::max({most_u, middles_[i]->u(), middles_[i + 1]->u()});
    }
    auto found = placed_pattern(plan_.layout, points, most_u, kHolesMade_mm);
    if (!found) return tell_failure(found.error());
    found_ = std::move(*found);
    write_places();
    if (plan_.layout == HoleLayout::kCircle) {
      write_number("x", Kind::kLength, "middle of the circle nearest to the holes", found_.x);
      write_number("y", Kind::kLength, "middle of the circle nearest to the holes", found_.y);
      write_number("diameter", Kind::kDiameter, "of the circle nearest to the holes", found_.size);
      write_number("start", Kind::kAngle, "of the first hole, from x counterclockwise, by all holes",
                   found_.start);
    } else {
      write_number("pitch", Kind::kLength, "from place to place, by all holes", found_.size);
      write_number("angle", Kind::kAngle, "the way the row goes, from x counterclockwise", found_.start);
    }
    for (std::size_t hole = 0; hole < plan_.of.size(); ++hole)
      write_hole(hole);
    ask_places();
  }

 private:
  [[nodiscard]] std::string shown(double value) const {
    return quantity::shown(value, Kind::kLength, plan_.system,
                           quantity::usual_places(Kind::kLength, plan_.system));
  }

  const Figure& write_number(std::string_view local, Kind kind, std::string_view words,
                             const FollowingNumber& number) {
    std::vector<Term> terms;
    for (std::size_t i = 0; i < middles_.size(); ++i) {
      if (number.slopes[i] != 0.0) terms.push_back({middles_[i], number.slopes[i]});
    }
    return pen_.linear(local, kind, words, number.value, terms, kPatternSource);
  }

  void tell_failure(const base::Failure& failure) {
    for (const Told told : told_of(plan_.layout))
      pen_.linear(row_of(told).figure, row_of(told).kind, base::sentence(failure),
                  std::numeric_limits<double>::quiet_NaN(), {});
    ledger::Query query;
    query.id = "no pattern/" + plan_.name;
    query.about = "touched/" + plan_.of.front() + "/x";
    query.says =
        fmt::format("'{}' is no {} of holes: {}", plan_.name, name_of(plan_.layout), base::sentence(failure));
    query.happens = "No size of it comes out.";
    query.todo = "Look for a hole that does not belong to it.";
    pen_.query(std::move(query));
  }

  void write_places() {
    ledger::Decision places;
    places.kind = Kind::kNumber;
    places.value = found_.places;
    places.words =
        fmt::format("the count that explains the holes best, odds {:.0f} in 100", 100.0 * found_.odds);
    for (const Figure* middle : middles_)
      places.inputs.push_back(middle);
    pen_.decide("places", places);
  }

  // Whether a hole is off its place, and whether the touches could tell.
  void write_hole(std::size_t hole) {
    const std::string& name = plan_.of[hole];
    const bool circle = plan_.layout == HoleLayout::kCircle;
    const Figure& along = write_number(name + " along", Kind::kLength,
                                       circle ? "off its equal place, counterclockwise along the circle"
                                              : "off its equal place, along the row",
                                       found_.along[hole]);
    const Figure& across =
        write_number(name + " across", Kind::kLength,
                     circle ? "outside the circle" : "to the left of the row", found_.across[hole]);
    for (const Figure* off : {&along, &across}) {
      if (std::abs(off->value) <= off->expanded()) continue;
      ledger::Query query;
      query.id = fmt::format("hole off its place/{}/{}", plan_.name, name);
      query.about = off->name;
      query.says = fmt::format("'{}' is {} off its place in '{}', {}; the touches tell {}", name,
                               shown(std::abs(off->value)), plan_.name,
                               off == &along ? "along it" : "across it", shown(off->expanded()));
      query.happens = "Evenly spaced holes would not all meet the mate.";
      query.todo = "Keep the hole where it is, or measure the mate.";
      pen_.query(std::move(query));
      return;
    }
  }

  void ask_places() {
    if (found_.odds >= kSure) return;
    ledger::Query query;
    query.id = "how many places/" + plan_.name;
    query.about = pen_.stage() + "/places";
    query.says =
        found_.no_pattern_odds > found_.next_odds
            ? fmt::format("'{}' may not be evenly spaced: {} places, odds {:.0f} in 100", plan_.name,
                          found_.places, 100.0 * found_.odds)
            : fmt::format("'{}' has {} places or {}: odds {:.0f} and {:.0f} in 100", plan_.name,
                          found_.places, found_.next_places, 100.0 * found_.odds, 100.0 * found_.next_odds);
    query.happens = "A hole too many or too few would be laid out.";
    query.todo = "Count the places, or touch one hole more.";
    pen_.query(std::move(query));
  }

  const PatternPlan& plan_;
  Pen& pen_;
  std::vector<const Figure*> middles_;  // x, y of each hole
  PlacedPattern found_;
};

}  // namespace

std::vector<Told> told_of(HoleLayout layout) {
  if (layout == HoleLayout::kRow) return {Told::kPitch, Told::kAngle};
  return {Told::kX, Told::kY, Told::kDiameter, Told::kStart};
}

void write_pattern(const PatternPlan& plan, Pen& pen) {
  PatternWriter(plan, pen).write();
}

}  // namespace sparewright::survey
