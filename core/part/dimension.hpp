// A dimension of the new part: how it is given, its duty, and the figures that come of it.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "core/base/hash.hpp"
#include "core/formula/expression.hpp"
#include "core/handbook/iso286.hpp"
#include "core/ledger/pen.hpp"
#include "core/quantity/tolerance.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::part {

// Only what fits or locates gets an instrument, an aim and a line on the inspection sheet; what clears has a limit on
// one side; what is free takes the general tolerance.
enum class Duty { kFits, kLocates, kClears, kFree };
[[nodiscard]] std::string_view name_of(Duty duty);
[[nodiscard]] std::optional<Duty> find_duty(std::string_view name);

// A size taken from the mate in hand: the mate as measured plus a clearance (negative: interference).
struct OnMate {
  std::string mate;  // a named dimension
  quantity::Typed least_clearance;
  quantity::Typed most_clearance;
};

// A size from a table: a screw's clearance hole, a tap drill.
struct FromTable {
  double base = 0.0;  // base unit
  std::string source;
};

// How far a place at an angle and a radius lies along one axis: radius times cosine or sine. Both are figures of the
// same feature, written before it.
struct AtAngle {
  std::string radius;  // "radius", or "bolt circle": then half of it
  bool is_diameter = false;
  bool sine = false;
};

struct Dimension {
  quantity::Kind kind = quantity::Kind::kLength;
  std::variant<quantity::Typed, formula::Formula, OnMate, FromTable, AtAngle> size;
  // What a row or a bolt circle makes of one written size: so many times it, and so much more (base unit). The
  // tolerance is that of one.
  int times = 1;
  double and_more = 0.0;
  quantity::Tolerance tolerance;
  Duty duty = Duty::kFree;
  std::string instrument;             // what it will be measured with; empty where not said
  std::string jaws = "outside jaws";  // which of its faces touch
  std::string typed;                  // the whole entry as the user wrote it
};
[[nodiscard]] base::Fingerprint fingerprint(const Dimension& dimension);

// What fits or locates has one.
[[nodiscard]] bool has_aim(const Dimension& dimension);

// "good to/caliper 8/outside jaws": what its instrument is good to, with the figures "unknown" and "one reading".
[[nodiscard]] std::string good_to_path(const Dimension& dimension);

// The job's tolerance for dimensions that have none of their own, by decimal places as typed.
struct GeneralTolerances {
  struct Band {
    double lower = 0.0;  // mm
    double upper = 0.0;
    std::string typed;
  };
  Band two_places;     // two or fewer, and fractions
  Band three_places;   // three or more, and sizes that are worked out
  bool given = false;  // false where the job says nothing and the usual ones were taken
};

// Common practice in drawing offices: 0.010 in on two places, 0.005 in on three; in millimetres the like of them in round
// numbers, 0.25 mm and 0.13 mm.
[[nodiscard]] GeneralTolerances usual_general_tolerances(quantity::UnitSystem system);

// What a part's dimensions are worked out with.
struct Surroundings {
  std::map<std::string, std::string> dimension_figures;  // named dimension -> name of its figure, as measured
  // Named dimension -> name of the size accepted as its original one: formulas go by it, mates by what was measured.
  std::map<std::string, std::string> accepted_figures;
  GeneralTolerances general;
  quantity::UnitSystem system = quantity::UnitSystem::kInch;  // sizes are printed in
};
[[nodiscard]] base::Fingerprint fingerprint(const Surroundings& surroundings);

// Which way the size goes as metal comes off: a hole grows, a thickness shrinks, a position does neither.
enum class CutMakesIt { kLarger, kSmaller, kNeither };

// The deviations of a fit class at a nominal size: H7 and g6 say their side themselves; RC4 means the hole's limits
// where a cut makes the size larger, else the shaft's. Fails as the handbook does.
[[nodiscard]] base::Result<handbook::FitDeviations> fit_deviations(const std::string& fit,
                                                                   quantity::Diameter nominal,
                                                                   CutMakesIt cut_makes_it);

// The figures of one dimension.
struct Written {
  const ledger::Figure* nominal = nullptr;
  const ledger::Figure* least = nullptr;
  const ledger::Figure* most = nullptr;
  const ledger::Figure* aim = nullptr;  // only where it fits or locates
};

// Writes <local>, <local>/least, <local>/most, and for what fits or locates <local>/unknown (what a reading
// with its instrument does not know against the limit) and <local>/aim.
//
// The aim lies on the side where metal can still come off, inset from that limit by what the instrument does not know: a
// bore is aimed at its least plus the inset, a thickness at its most less the
// inset; never past the middle. A position is aimed at its nominal. Without an instrument the aim of a size cut is NOT KNOWN.
// A fit class (H7, RC4) takes its deviations from the handbook; a size it does not table is NOT KNOWN.
Written write_dimension(ledger::Pen& pen, std::string_view local, const Dimension& dimension,
                        const Surroundings& surroundings, CutMakesIt cut_makes_it);

}  // namespace sparewright::part
