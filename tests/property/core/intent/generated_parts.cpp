#include "generated_parts.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "published_sizes.hpp"

namespace sparewright::tests {
namespace {

using intent::Role;
using ledger::Bound;
using quantity::Kind;

constexpr double kInch_mm = 25.4;
constexpr double kThou_mm = 0.0254;

double normal(SplitMix& random) {
  const double radius = std::sqrt(-2.0 * std::log(1.0 - random.unit()));
  return radius * std::cos(2.0 * std::numbers::pi * random.unit());
}

template <class List>
const auto& one_of(SplitMix& random, const List& list) {
  return list[random.below(list.size())];
}

// Deviations of hole and shaft of one fit, drawn within its limits; in mm.
struct Fit {
  double hole = 0.0;
  double shaft = 0.0;
  bool runs = false;
};

class Maker {
 public:
  explicit Maker(SplitMix& random) : random_(random) {
    part_.is_inch = !random.one_in(2);
    const bool is_usual = !random.one_in(6);
    part_.units = part_.is_inch == is_usual ? quantity::UnitSystem::kInch : quantity::UnitSystem::kMetric;
    if (random.one_in(4))
      part_.made_in = part_.is_inch ? intent::Country::kAmerica : intent::Country::kContinent;
  }

  GeneratedPart make() {
    switch (random_.below(7)) {
      case 0:
        pivot();
        break;
      case 1:
        shaft();
        break;
      case 2:
        bush();
        break;
      case 3:
        hub();
        break;
      case 4:
        bracket();
        break;
      case 5:
        housing();
        break;
      default:
        gear();
        break;
    }
    return part_;
  }

 private:
  double mm(double size) const { return part_.is_inch ? size * kInch_mm : size; }

  // A shaft's nominal size: rounds by sixteenths to an inch and by eighths above, or as metric bar comes; in its own unit.
  double round_size() {
    if (!part_.is_inch) return one_of(random_, kMetricRounds_mm);
    if (random_.one_in(3)) return static_cast<double>(random_.below(12) + 4) / 16.0;
    return static_cast<double>(random_.below(12) + 2) / 8.0;
  }

  Fit fit_at(double size, const std::vector<std::string_view>& classes) {
    return part_.is_inch ? inch_fit(size, classes) : metric_fit(size, classes);
  }

  Fit inch_fit(double size, const std::vector<std::string_view>& classes) {
    const std::string_view wanted = one_of(random_, classes);
    for (const InchFit& row : kInchFits) {
      if (row.name != wanted || size <= row.over_in || size > row.to_in) continue;
      return {random_.between(row.hole_low, row.hole_high) * kThou_mm,
              random_.between(row.shaft_low, row.shaft_high) * kThou_mm, wanted.starts_with("RC")};
    }
    return {};
  }

  // RC2 to RC6, LC2 to LC5, LT, LN and FN stand for H7/g6 and H8/f7, H7/h6 and H9/h9, H7/k6 and H7/p6.
  Fit metric_fit(double size, const std::vector<std::string_view>& classes) {
    const std::string_view wanted = one_of(random_, classes);
    for (const MetricZone& z : kMetricZones) {
      if (size <= z.over_mm || size > z.to_mm) continue;
      const auto um = [&](double low, double high) { return random_.between(low, high) / 1000.0; };
      if (wanted == "RC2" || wanted == "LC5") return {um(0.0, z.h7_high), um(z.g6_low, z.g6_high), true};
      if (wanted.starts_with("RC")) return {um(0.0, z.h8_high), um(z.f7_low, z.f7_high), true};
      if (wanted == "LC3") return {um(0.0, z.h9_high), um(z.h9_low, 0.0), false};
      if (wanted == "LC2") return {um(0.0, z.h7_high), um(z.h6_low, 0.0), false};
      if (wanted == "LT2") return {um(0.0, z.h7_high), um(z.k6_low, z.k6_high), false};
      return {um(0.0, z.h7_high), um(z.p6_low, z.p6_high), false};
    }
    return {};
  }

  // What an instrument is good to, 19 times in 20, in mm: micrometer, calipers; bore gauge, telescoping gauge, inside jaws.
  double good_to(Role role, double size_mm) {
    const std::size_t draw = random_.below(100);
    const double length = size_mm > 100.0 ? 1.5 : 1.0;
    if (role == Role::kShaft) return length * (draw < 60 ? 0.008 : draw < 70 ? 0.02 : 0.04);
    if (role == Role::kHole) return length * (draw < 25 ? 0.010 : draw < 65 ? 0.025 : 0.05);
    return length * (draw < 15 ? 0.010 : 0.05);
  }

  std::size_t add(Meant meant, double nominal_mm, double made_mm, Role role, Kind kind, bool runs = false) {
    PartSize size;
    size.meant = meant;
    size.nominal_mm = nominal_mm;
    size.measured.kind = kind;
    size.measured.role = role;
    size.measured.unknown_mm = good_to(role, nominal_mm);
    if (runs && random_.below(100) < 35) wear(size, made_mm);
    size.measured.size_mm = made_mm + normal(random_) * size.measured.unknown_mm / 1.96;
    part_.sizes.push_back(size);
    return part_.sizes.size() - 1;
  }

  // Small wear is not always seen.
  void wear(PartSize& size, double& made_mm) {
    const double amount = std::exp(random_.between(std::log(0.0005), std::log(0.012))) * kInch_mm;
    const bool is_hole = size.measured.role == Role::kHole;
    made_mm += is_hole ? amount : -amount;
    size.is_worn = true;
    const bool is_seen = amount > 0.05 || random_.below(100) < 60;
    if (is_seen) size.measured.bound = is_hole ? Bound::kAtMost : Bound::kAtLeast;
  }

  void pair_up(std::size_t a, std::size_t b) {
    if (random_.one_in(5)) return;  // not said
    part_.sizes[a].mate = b;
    part_.sizes[b].mate = a;
  }

  // A length or a place: by fractions, whole millimetres, now and then decimals, or to suit what was there.
  void length(double least_mm, double most_mm) {
    const std::size_t draw = random_.below(100);
    double step = part_.is_inch ? kInch_mm / 16.0 : 1.0;
    Meant meant = part_.is_inch ? Meant::kFraction : Meant::kMillimetre;
    if (draw < 55) step = part_.is_inch ? kInch_mm / 8.0 : (random_.one_in(2) ? 5.0 : 2.0);
    if (draw >= 85) step = part_.is_inch ? kInch_mm / 32.0 : 0.5;
    if (draw >= 90 && part_.is_inch) {
      step = 0.050 * kInch_mm;
      meant = Meant::kDecimal;
    }
    double nominal = std::max(1.0, std::round(random_.between(least_mm, most_mm) / step)) * step;
    if (draw >= 97) {
      nominal = random_.between(least_mm, most_mm);
      meant = Meant::kToSuit;
    }
    const double within = random_.one_in(3) ? 0.05 : 0.13;  // 0.002 and 0.005 in: common practice
    add(meant, nominal, nominal + random_.between(-within, within), Role::kOther, Kind::kLength);
  }

  void drilled() {
    double nominal = 0.0;
    Meant meant = Meant::kDrill;
    if (part_.is_inch) {
      const bool is_fraction = random_.one_in(2);
      nominal = kInch_mm * (is_fraction ? static_cast<double>(random_.below(27) + 6) / 64.0
                                        : one_of(random_, kNumberAndLetterDrills_in));
      if (is_fraction) meant = Meant::kFraction;
    } else {
      nominal = one_of(random_, kMetricDrills_mm);
      if (!random_.one_in(3)) nominal = std::round(nominal * 2.0) / 2.0;
    }
    add(meant, nominal, nominal + random_.between(0.0, 0.05 + 0.005 * nominal), Role::kHole, Kind::kDiameter);
  }

  void keyway(double shaft, Role role) {
    const auto write = [&](const auto& keys) {
      for (const Key& key : keys) {
        if (shaft <= key.over || shaft > key.to) continue;
        const double width = mm(key.width);
        const double off =
            part_.is_inch
                ? (role == Role::kHole ? random_.between(0.0, 2.0) : random_.between(-2.0, 1.0)) * kThou_mm
                : random_.between(-0.030, 0.0);
        add(Meant::kKey, width, width + off, role, Kind::kLength);
        return;
      }
    };
    if (part_.is_inch) write(kInchKeys);
    if (!part_.is_inch) write(kMetricKeys);
  }

  void seat(bool on_shaft) {
    const Seat& row = one_of(random_, kSeats);
    if (on_shaft) {
      add(Meant::kBearing, row.bore_mm, row.bore_mm + random_.between(row.shaft_low, row.shaft_high) / 1000.0,
          Role::kShaft, Kind::kDiameter, true);
    } else {
      add(Meant::kBearing, row.outside_mm, row.outside_mm + random_.between(0.0, row.housing_high) / 1000.0,
          Role::kHole, Kind::kDiameter, random_.one_in(2));
    }
  }

  void thread() {
    const Screw& row = part_.is_inch ? one_of(random_, kInchScrews) : one_of(random_, kMetricScrews);
    const double major = mm(row.major);
    add(Meant::kThread, major, mm(random_.between(row.least, row.most)), Role::kShaft, Kind::kDiameter);
    const double pitch = mm(row.pitch);
    add(Meant::kPitch, pitch, pitch, Role::kPitch, Kind::kLength);
    PartSize& last = part_.sizes.back();
    const auto over = static_cast<double>(random_.below(6) + 5);
    last.measured.unknown_mm = 0.05 / over;
    last.measured.size_mm = pitch + normal(random_) * last.measured.unknown_mm / 1.96;
  }

  void shaft_and_hole(const std::vector<std::string_view>& classes) {
    const double size = round_size();
    const Fit fit = fit_at(size, classes);
    const Meant meant = part_.is_inch ? Meant::kFraction : Meant::kMillimetre;
    const std::size_t a = add(meant, mm(size), mm(size) + fit.shaft, Role::kShaft, Kind::kDiameter, fit.runs);
    const std::size_t b = add(meant, mm(size), mm(size) + fit.hole, Role::kHole, Kind::kDiameter, fit.runs);
    pair_up(a, b);
  }

  void flat() {
    const double size = part_.is_inch ? one_of(random_, kInchFlats_in) : one_of(random_, kMetricFlats_mm);
    const double under = part_.is_inch ? 3 * kThou_mm : 0.09;
    add(Meant::kBar, mm(size), mm(size) - random_.between(0.0, under), Role::kShaft, Kind::kLength);
  }

  void pivot() {
    shaft_and_hole({"RC2", "RC4", "RC5", "RC6"});
    flat();
    drilled();
  }
  void shaft() {
    seat(true);
    const double size = round_size();
    const Fit fit = fit_at(size, {"LC2", "LC3", "LT2"});
    add(part_.is_inch ? Meant::kFraction : Meant::kMillimetre, mm(size), mm(size) + fit.shaft, Role::kShaft,
        Kind::kDiameter);
    keyway(size, Role::kHole);
    if (random_.one_in(2)) thread();
    length(20.0, 200.0);
  }
  void bush() {
    const double size = round_size();
    const Fit fit = fit_at(size, {"LN2", "FN2"});
    const Meant meant = part_.is_inch ? Meant::kFraction : Meant::kMillimetre;
    add(meant, mm(size), mm(size) + fit.shaft, Role::kShaft, Kind::kDiameter);
    shaft_and_hole({"RC3", "RC4", "RC5"});
    length(8.0, 60.0);
  }
  void hub() {
    shaft_and_hole({"LC2", "LC3", "LC5", "LT2"});
    keyway(round_size(), random_.one_in(2) ? Role::kHole : Role::kShaft);
    length(10.0, 60.0);
    drilled();
  }
  void bracket() {
    flat();
    length(10.0, 80.0);
    length(15.0, 120.0);
    drilled();
    drilled();
  }
  void housing() {
    seat(false);
    length(10.0, 40.0);
    length(30.0, 120.0);
    drilled();
  }
  void gear() {
    constexpr std::array kPitches{8.0,  10.0, 12.0, 14.0, 16.0,
                                  18.0, 20.0, 24.0, 32.0};              // usual diametral pitches
    constexpr std::array kModules{0.8, 1.0, 1.25, 1.5, 2.0, 2.5, 3.0};  // ISO 54, series I
    const double module = part_.is_inch ? kInch_mm / one_of(random_, kPitches) : one_of(random_, kModules);
    const auto teeth = static_cast<double>(random_.below(60) + 18);
    add(Meant::kModule, module, module, Role::kModule, Kind::kLength);
    PartSize& last = part_.sizes.back();
    last.measured.unknown_mm = 0.04 / (teeth + 2.0);
    const double under = random_.between(0.0, 0.1);  // of the outside diameter
    last.measured.size_mm =
        module - under / (teeth + 2.0) + normal(random_) * last.measured.unknown_mm / 1.96;
    shaft_and_hole({"LC2", "LC5", "RC2"});
    length(8.0, 40.0);
  }

  SplitMix& random_;
  GeneratedPart part_;
};

}  // namespace

std::string name_of(Meant meant) {
  constexpr std::array<const char*, static_cast<std::size_t>(Meant::kLast)> kNames{
      "fraction", "decimal", "millimetre", "drill", "bearing", "key",
      "thread",   "pitch",   "module",     "bar",   "to suit"};
  return kNames.at(static_cast<std::size_t>(meant));
}

GeneratedPart generate_part(SplitMix& random) {
  return Maker(random).make();
}

}  // namespace sparewright::tests
