#include "core/part/dimension.hpp"

#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

#include <fmt/format.h>

#include "core/handbook/inch_fits.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::part {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;

struct DutyRow {
  Duty duty;
  std::string_view name;
};
constexpr std::array kDuties{DutyRow{Duty::kFits, "fits"}, DutyRow{Duty::kLocates, "locates"},
                             DutyRow{Duty::kClears, "clears"}, DutyRow{Duty::kFree, "free"}};

std::string below(std::string_view local, std::string_view name) {
  std::string path(local);
  path += '/';
  path += name;
  return path;
}

// A value that was chosen or tabled, as a root.
const Figure& stated(Pen& pen, std::string_view local, quantity::Kind kind, double base, Origin origin,
                     std::string typed, std::string source) {
  ledger::Root root;
  root.kind = kind;
  root.value = base;
  root.origin = origin;
  root.typed = std::move(typed);
  root.source = std::move(source);
  return pen.root(local, root);
}

// A written size as it counts at its place in a row or on a bolt circle.
double in_its_row(const Dimension& d, double written) {
  return d.times * written + d.and_more;
}

// What a formula means by a name: the size accepted for it, else the measured one.
const std::string& figure_named(const std::string& name, const Surroundings& surroundings) {
  for (const auto* figures : {&surroundings.accepted_figures, &surroundings.dimension_figures}) {
    if (const auto path = figures->find(name); path != figures->end()) return path->second;
  }
  return name;
}

const Figure& write_formula(Pen& pen, std::string_view local, const Dimension& d,
                            const formula::Formula& formula, const Surroundings& surroundings) {
  std::vector<const Figure*> figures;
  std::vector<double> values;
  for (const std::string& name : formula.names()) {
    figures.push_back(&pen.ask(figure_named(name, surroundings)));
    values.push_back(figures.back()->value);
  }
  const auto y = formula.at(values);
  std::vector<ledger::Term> terms;
  for (std::size_t i = 0; i < figures.size(); ++i)
    terms.push_back({figures[i], y ? d.times * y->slopes[i] : 0.0});
  const double value = y ? in_its_row(d, y->value) : std::numeric_limits<double>::quiet_NaN();
  const std::string words =
      d.times == 1 ? formula.typed() : fmt::format("{} times ({})", d.times, formula.typed());
  return pen.linear(local, d.kind, words, value, terms);
}

constexpr std::string_view kAngle = "angle";

const Figure& write_at_angle(Pen& pen, std::string_view local, const AtAngle& at) {
  const Figure& radius = pen.ask(fmt::format("{}/{}", pen.stage(), at.radius));
  const Figure& angle = pen.ask(fmt::format("{}/{}", pen.stage(), kAngle));
  const double half = at.is_diameter ? 0.5 : 1.0;
  if (at.sine)
    return pen.work(
        local, quantity::Kind::kLength, fmt::format("{} and sine of the angle", at.radius),
        [half](auto r, auto a) {
          using std::sin;
          return half * r * sin(a);
        },
        radius, angle);
  return pen.work(
      local, quantity::Kind::kLength, fmt::format("{} and cosine of the angle", at.radius),
      [half](auto r, auto a) {
        using std::cos;
        return half * r * cos(a);
      },
      radius, angle);
}

// The nominal size, except for a size taken from a mate, which has limits first.
const Figure& write_nominal(Pen& pen, std::string_view local, const Dimension& d,
                            const Surroundings& surroundings) {
  if (const auto* typed = std::get_if<quantity::Typed>(&d.size)) {
    const bool alone = d.times == 1 && d.and_more == 0.0;
    return stated(pen, local, d.kind, in_its_row(d, typed->base), Origin::kChoice, alone ? d.typed : "",
                  alone ? "" : fmt::format("worked out from {}", d.typed));
  }
  if (const auto* at = std::get_if<AtAngle>(&d.size)) return write_at_angle(pen, local, *at);
  if (const auto* table = std::get_if<FromTable>(&d.size)) {
    return stated(pen, local, d.kind, table->base, Origin::kStandard, d.typed, table->source);
  }
  return write_formula(pen, local, d, std::get<formula::Formula>(d.size), surroundings);
}

Written write_on_mate(Pen& pen, std::string_view local, quantity::Kind kind, const OnMate& on,
                      const Surroundings& surroundings) {
  const auto path = surroundings.dimension_figures.find(on.mate);
  const Figure& mate = pen.ask(path == surroundings.dimension_figures.end() ? on.mate : path->second);
  const auto clearance = [&](std::string_view name, const quantity::Typed& typed) -> const Figure& {
    return stated(pen, below(local, name), quantity::Kind::kLength, typed.base, Origin::kChoice, typed.typed,
                  "");
  };
  const auto plus = [](auto size, auto gap) { return size + gap; };
  Written w;
  w.least = &pen.work(below(local, "least"), kind, "the mate as measured plus the least clearance", plus,
                      mate, clearance("least clearance", on.least_clearance));
  w.most = &pen.work(below(local, "most"), kind, "the mate as measured plus the most clearance", plus, mate,
                     clearance("most clearance", on.most_clearance));
  w.nominal = &pen.work(
      local, kind, "middle of its limits", [](auto a, auto b) { return (a + b) / 2.0; }, *w.least, *w.most);
  return w;
}

struct DeviationFigures {
  const Figure* lower = nullptr;
  const Figure* upper = nullptr;
};

// Of a length, an angle or a plain number.
DeviationFigures write_deviations(Pen& pen, std::string_view local, quantity::Kind of, double lower,
                                  double upper, Origin origin, const std::string& typed,
                                  const std::string& source) {
  const bool is_length = of != quantity::Kind::kAngle && of != quantity::Kind::kNumber;
  const auto kind = is_length ? quantity::Kind::kLength : of;
  return {&stated(pen, below(local, "lower deviation"), kind, lower, origin, typed, source),
          &stated(pen, below(local, "upper deviation"), kind, upper, origin, typed, source)};
}

// The most a place can move along one axis as its radius and its angle go to their limits.
DeviationFigures deviations_at_angle(Pen& pen, std::string_view local, const AtAngle& at,
                                     const Figure& nominal) {
  const auto limit = [&](std::string_view of, std::string_view which) {
    return pen.need(fmt::format("{}/{}/{}", pen.stage(), of, which)).value;
  };
  const double half = at.is_diameter ? 0.5 : 1.0;
  double low = nominal.value;
  double high = nominal.value;
  for (const std::string_view r : {"least", "most"}) {
    for (const std::string_view a : {"least", "most"}) {
      const double angle = limit(kAngle, a);
      const double place = half * limit(at.radius, r) * (at.sine ? std::sin(angle) : std::cos(angle));
      low = std::min(low, place);
      high = std::max(high, place);
    }
  }
  return write_deviations(pen, local, quantity::Kind::kLength, low - nominal.value, high - nominal.value,
                          Origin::kChoice, "", "what the tolerances of its radius and angle make of it");
}

// Common practice in drawing offices, for angles without a tolerance of their own.
constexpr double kGeneralAngle_rad = std::numbers::pi / 180.0;

const GeneralTolerances::Band& general_band(const Dimension& d, const GeneralTolerances& general) {
  const auto* typed = std::get_if<quantity::Typed>(&d.size);
  const bool coarse = typed != nullptr && typed->places < 3;  // a fraction counts as two places
  return coarse ? general.two_places : general.three_places;
}

DeviationFigures deviations_of(Pen& pen, std::string_view local, const Dimension& d, const Figure& nominal,
                               const Surroundings& surroundings, CutMakesIt cut_makes_it) {
  if (const auto* written = std::get_if<quantity::Deviations>(&d.tolerance.form)) {
    return write_deviations(pen, local, d.kind, written->lower.base, written->upper.base, Origin::kChoice,
                            d.tolerance.typed, "");
  }
  if (const auto* at = std::get_if<AtAngle>(&d.size)) return deviations_at_angle(pen, local, *at, nominal);
  if (const auto* fit = std::get_if<quantity::FitClass>(&d.tolerance.form)) {
    const auto tabled = fit_deviations(fit->name, quantity::Diameter::from_base(nominal.value), cut_makes_it);
    if (!tabled) {  // the job room has refused what is not tabled; a size that has moved since is not known
      ledger::Root unknown;
      unknown.kind = quantity::Kind::kLength;
      unknown.origin = Origin::kStandard;
      return {&pen.root(below(local, "lower deviation"), unknown),
              &pen.root(below(local, "upper deviation"), unknown)};
    }
    return write_deviations(pen, local, d.kind, tabled->lower.base(), tabled->upper.base(), Origin::kStandard,
                            fit->name, handbook::cite(tabled->source));
  }
  if (d.kind == quantity::Kind::kAngle)
    return write_deviations(pen, local, d.kind, -kGeneralAngle_rad, kGeneralAngle_rad, Origin::kDefault,
                            "±1 degree", "general tolerance of angles, common practice");
  if (d.kind == quantity::Kind::kNumber)  // a taper is as good as its reamer
    return write_deviations(pen, local, d.kind, 0.0, 0.0, Origin::kChoice, "", "as written: not a size");
  const auto& band = general_band(d, surroundings.general);
  return write_deviations(pen, local, d.kind, band.lower, band.upper,
                          surroundings.general.given ? Origin::kChoice : Origin::kDefault, band.typed,
                          surroundings.general.given
                              ? "general tolerance of the job"
                              : "general tolerance, common practice: the job states none");
}

Written write_limits(Pen& pen, std::string_view local, const Dimension& d, const Surroundings& surroundings,
                     CutMakesIt cut_makes_it) {
  Written w;
  if (const auto* on = std::get_if<OnMate>(&d.size))
    return write_on_mate(pen, local, d.kind, *on, surroundings);
  w.nominal = &write_nominal(pen, local, d, surroundings);
  if (const auto* limits = std::get_if<quantity::WrittenLimits>(&d.tolerance.form)) {
    w.least =
        &stated(pen, below(local, "least"), d.kind, limits->low.base, Origin::kChoice, d.tolerance.typed, "");
    w.most =
        &stated(pen, below(local, "most"), d.kind, limits->high.base, Origin::kChoice, d.tolerance.typed, "");
    return w;
  }
  const DeviationFigures deviations = deviations_of(pen, local, d, *w.nominal, surroundings, cut_makes_it);
  const auto plus = [](auto size, auto deviation) { return size + deviation; };
  w.least = &pen.work(below(local, "least"), d.kind, "size and lower deviation", plus, *w.nominal,
                      *deviations.lower);
  w.most = &pen.work(below(local, "most"), d.kind, "size and upper deviation", plus, *w.nominal,
                     *deviations.upper);
  return w;
}

// Up to the next size that is printed, so that a printed aim keeps the whole distance.
double up_to_printed(double mm, quantity::UnitSystem system) {
  const quantity::Unit unit = quantity::display_unit(quantity::Kind::kLength, system);
  const double scale = std::pow(10.0, quantity::usual_places(quantity::Kind::kLength, system));
  constexpr double kSame = 1e-6;  // of a last place
  return unit.to_base(std::ceil(unit.from_base(mm) * scale - kSame) / scale);
}

// What is not known when a reading is held against the limit: the reading's own causes and the limit's (a limit taken
// from a mate is as well known as the mate). A cause behind both counts once. NOT KNOWN, and the instrument named as
// missing, where none is given.
const Figure& write_unknown(Pen& pen, std::string_view local, const Dimension& d, const Figure& limit,
                            quantity::UnitSystem system) {
  if (d.instrument.empty()) {
    ledger::Root none;
    none.kind = quantity::Kind::kLength;
    none.origin = Origin::kChoice;
    const Figure& instrument = pen.root(below(local, "instrument"), none);
    return pen.work(
        below(local, "unknown"), quantity::Kind::kLength, "needs an instrument", [](auto u) { return u; },
        instrument);
  }
  const Figure& held = pen.work(
      below(local, "as read"), d.kind, "the limit, as one reading with the instrument shows it",
      [](auto size, auto error) { return size + error; }, limit, pen.ask(good_to_path(d) + "/one reading"));
  ledger::Decision inset;
  inset.kind = quantity::Kind::kLength;
  inset.value = up_to_printed(held.expanded(), system);
  inset.words = "what a reading does not know against the limit, 19 times in 20, up to the next printed size";
  inset.inputs = {&held};
  inset.source = "JCGM 100:2008, 6.2";
  return pen.decide(below(local, "unknown"), inset);
}

// An aim is a number on paper: what is not known about the limits it was worked out from stays a doubt of theirs and is
// none of its own. Printed, it keeps at least the inset from the limit, but does not go past the middle.
const Figure& write_aim(Pen& pen, std::string_view local, const Dimension& d, const Written& w,
                        CutMakesIt cut_makes_it, quantity::UnitSystem system) {
  const std::string name = below(local, "aim");
  const Figure& limit = cut_makes_it == CutMakesIt::kLarger    ? *w.least
                        : cut_makes_it == CutMakesIt::kSmaller ? *w.most
                                                               : *w.nominal;
  const Figure& inset = write_unknown(pen, local, d, limit, system);
  ledger::Decision aim;
  aim.kind = d.kind;
  if (cut_makes_it == CutMakesIt::kNeither) {
    aim.value = w.nominal->value;
    aim.words = "the nominal";
    aim.inputs = {w.nominal};
    return pen.decide(name, aim);
  }
  const double middle = (w.least->value + w.most->value) / 2.0;
  const bool grows = cut_makes_it == CutMakesIt::kLarger;
  aim.value = grows ? std::min(up_to_printed(w.least->value + inset.value, system), middle)
                    : std::max(-up_to_printed(inset.value - w.most->value, system), middle);
  aim.words =
      fmt::format("{}, inset by what the instrument does not know, as printed, but not past the middle",
                  grows ? "least" : "most");
  aim.inputs = {w.least, w.most, &inset};
  return pen.decide(name, aim);
}

}  // namespace

std::string_view name_of(Duty duty) {
  for (const DutyRow& row : kDuties) {
    if (row.duty == duty) return row.name;
  }
  return "";
}

std::optional<Duty> find_duty(std::string_view name) {
  for (const DutyRow& row : kDuties) {
    if (row.name == name) return row.duty;
  }
  return std::nullopt;
}

bool has_aim(const Dimension& dimension) {
  return dimension.duty == Duty::kFits || dimension.duty == Duty::kLocates;
}

std::string good_to_path(const Dimension& dimension) {
  return fmt::format("good to/{}/{}", dimension.instrument, dimension.jaws);
}

GeneralTolerances usual_general_tolerances(quantity::UnitSystem system) {
  if (system == quantity::UnitSystem::kMetric)
    return {{-0.25, 0.25, "±0.25 mm"}, {-0.13, 0.13, "±0.13 mm"}, false};
  const double ten_thou = quantity::Length::of(0.010, quantity::unit::inch).base();
  const double five_thou = quantity::Length::of(0.005, quantity::unit::inch).base();
  return {{-ten_thou, ten_thou, "±0.010 in"}, {-five_thou, five_thou, "±0.005 in"}, false};
}

base::Result<handbook::FitDeviations> fit_deviations(const std::string& fit, quantity::Diameter nominal,
                                                     CutMakesIt cut_makes_it) {
  if (fit.find_first_of("0123456789") == 1 || fit.starts_with("js") || fit.starts_with("JS")) {
    return handbook::iso286_deviations(fit, nominal);
  }
  auto row = handbook::inch_fit(fit, nominal);
  if (!row) return tl::unexpected(row.error());
  if (cut_makes_it == CutMakesIt::kSmaller) {
    return handbook::FitDeviations{row->shaft_lower, row->shaft_upper, row->source};
  }
  return handbook::FitDeviations{row->hole_lower, row->hole_upper, row->source};
}

Written write_dimension(Pen& pen, std::string_view local, const Dimension& dimension,
                        const Surroundings& surroundings, CutMakesIt cut_makes_it) {
  Written w = write_limits(pen, local, dimension, surroundings, cut_makes_it);
  if (has_aim(dimension)) {
    w.aim = &write_aim(pen, local, dimension, w, cut_makes_it, surroundings.system);
  }
  return w;
}

namespace {

void add(base::Hasher& h, const quantity::Typed& t) {
  h.add(t.base).add(static_cast<int>(t.kind)).add(t.unit.symbol).add(t.typed).add(t.places);
}

void add(base::Hasher& h, const quantity::Tolerance& t) {
  h.add(static_cast<std::uint64_t>(t.form.index())).add(t.typed);
  if (const auto* d = std::get_if<quantity::Deviations>(&t.form)) {
    add(h, d->lower);
    add(h, d->upper);
  } else if (const auto* l = std::get_if<quantity::WrittenLimits>(&t.form)) {
    add(h, l->low);
    add(h, l->high);
  } else if (const auto* f = std::get_if<quantity::FitClass>(&t.form)) {
    h.add(f->name);
  }
}

}  // namespace

base::Fingerprint fingerprint(const Dimension& d) {
  base::Hasher h;
  h.add(static_cast<int>(d.kind)).add(static_cast<std::uint64_t>(d.size.index()));
  if (const auto* typed = std::get_if<quantity::Typed>(&d.size)) {
    add(h, *typed);
  } else if (const auto* formula = std::get_if<formula::Formula>(&d.size)) {
    h.add(formula->fingerprint());
  } else if (const auto* on = std::get_if<OnMate>(&d.size)) {
    h.add(on->mate);
    add(h, on->least_clearance);
    add(h, on->most_clearance);
  } else if (const auto* table = std::get_if<FromTable>(&d.size)) {
    h.add(table->base).add(table->source);
  } else if (const auto* at = std::get_if<AtAngle>(&d.size)) {
    h.add(at->radius).add(at->is_diameter).add(at->sine);
  }
  h.add(d.times).add(d.and_more);
  add(h, d.tolerance);
  return h.add(static_cast<int>(d.duty)).add(d.instrument).add(d.jaws).add(d.typed).done();
}

base::Fingerprint fingerprint(const Surroundings& s) {
  base::Hasher h;
  for (const auto* figures : {&s.dimension_figures, &s.accepted_figures}) {
    h.add(static_cast<std::uint64_t>(figures->size()));
    for (const auto& [name, figure] : *figures)
      h.add(name).add(figure);
  }
  for (const auto& band : {s.general.two_places, s.general.three_places}) {
    h.add(band.lower).add(band.upper).add(band.typed);
  }
  return h.add(s.general.given).add(static_cast<int>(s.system)).done();
}

}  // namespace sparewright::part
