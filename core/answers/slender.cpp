// Long thin work and long thin drills: how far they give, how deep is deep, where a drill comes out.
#include <array>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/handbook/slender_work.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr handbook::Source kOver{"length over diameter", "", handbook::Basis::kDerived};
constexpr handbook::Source kTilt{"depth x tangent of the tilt; what the start is off stays", "",
                                 handbook::Basis::kDerived};
constexpr handbook::Source kSlope{"slope of a round where it is touched off its crest: arcsin(off / radius)",
                                  "", handbook::Basis::kDerived};
// Pecks: deep from about 4 diameters on, very deep from 8. Common practice.
constexpr handbook::Source kPecks{"pecks of one diameter, of half of one in holes over 8 diameters deep", "",
                                  handbook::Basis::kCommonPractice};
constexpr double kPeckFrom = 4.0;
constexpr double kVeryDeep = 8.0;
// A drill that starts on more of a slope skids. Common practice.
constexpr double kSkids_deg = 5.0;

struct Held {
  std::string_view word;
  std::string_view where;
  double (*bend)(const double&, const double&, const double&, const double&);
  double most_diameters;
};
constexpr std::array kHeld{
    Held{"centres", "in the middle, between centres", handbook::bend_between_centres<double>,
         handbook::kMostDiametersWithCentre},
    Held{"free", "at the free end, held in the chuck alone", handbook::bend_free<double>,
         handbook::kMostDiametersFree},
    Held{"chuck-and-centre", "in the middle, chuck and centre", handbook::bend_chuck_and_centre<double>,
         handbook::kMostDiametersWithCentre},
};

const Held& held_of(const std::string& word) {
  for (const Held& one : kHeld) {
    if (one.word == word) return one;
  }
  return kHeld.front();
}

}  // namespace

base::Result<Answer> bend(const Question& question) {
  EntryReader read(question);
  const Length diameter = read.size("diameter");
  const Length length = read.size("length");
  const double force = read.positive("force", Kind::kForce);
  const Held& held = held_of(read.word("held", {"centres", "free", "chuck-and-centre"}));
  const auto found = read.material("material", "steel 1018");
  const auto limit = read.maybe_size("limit");
  if (!read.failed()) {
    read.refuse_unless(found.material.modulus.has_value(), "material", "a material whose stiffness is known");
    read.refuse_unless(length > diameter, "length", "more than the diameter");
  }
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const double modulus = found.material.modulus->base();
  const auto bends = [&](Length across) {
    return Length::from_base(
        held.bend(force, length.base(), modulus, handbook::second_moment_of_round(across.base())));
  };
  const double slender = length / diameter;
  const Length bent = bends(diameter);
  Answer answer;
  answer.asked = fmt::format("{} by {}, {}", both_ways(diameter, system), both_ways(length, system),
                             quantity::shown(force, Kind::kForce, system, 0) + " " + std::string(held.where));
  answer.says = fmt::format("{:.1f} diameters long; gives {}", slender, both_ways(bent, system));
  if (limit && bent > *limit)
    answer.says = fmt::format("NO: {}, {} allowed", answer.says, both_ways(*limit, system));
  TableWriter writer("under that force", system);
  writer.length("it gives", bent, handbook::kBeams, "chuck, centre and tool give more");
  writer.length("cut in the same way, too thick by", bent * 2.0, handbook::kBeams, "on the diameter");
  writer.length("twice as thick a bar", bends(diameter * 2.0), handbook::kBeams, "a sixteenth");
  writer.number("length over diameter", slender, Kind::kNumber, 1, kOver);
  writer.number("without a rest, up to", held.most_diameters, Kind::kNumber, 0, handbook::kSlenderRule);
  if (limit) {
    // The deflection goes with the fourth power of the diameter.
    writer.length("thinnest that keeps to the limit", diameter * std::pow(bent / *limit, 0.25),
                  handbook::kBeams);
  }
  answer.tables.push_back(writer.take());
  if (!read.has("material")) answer.assumed.push_back("work of " + to_string(found.material));
  if (!found.assumed.empty()) answer.assumed.push_back(found.assumed);
  if (!read.has("held")) answer.assumed.emplace_back("between centres");
  answer.assumed.emplace_back("the force is the one that pushes the work away from the tool");
  if (slender > held.most_diameters)
    answer.cautions.push_back(fmt::format(
        "Over {:g} diameters it chatters and climbs: a follow [travelling] rest or a steady, or a "
        "thicker bar.",
        held.most_diameters));
  return answer;
}

base::Result<Answer> deep_hole(const Question& question) {
  EntryReader read(question);
  const Length drill = read.size("drill");
  const Length depth = read.size("depth");
  const auto shaft = read.maybe_size("shaft");
  const Length off = read.place_or_zero("off-centre");
  const double tilt = read.maybe_number("tilt", Kind::kAngle).value_or(unit::degree.to_base(1.0));
  if (!read.failed()) {
    read.refuse_unless(tilt >= 0.0 && tilt <= unit::degree.to_base(20.0), "tilt", "from 0 to 20 deg");
    read.refuse_unless(off >= Length(), "off-centre", "zero or more");
    read.refuse_unless(!shaft || off * 2.0 < *shaft, "off-centre", "less than half the shaft");
    read.refuse_unless(!shaft || drill < *shaft, "drill", "less than the shaft");
  }
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const double slender = depth / drill;
  const Length leaves = depth * std::tan(tilt);
  Answer answer;
  answer.asked = fmt::format("drill {}, {} deep", both_ways(drill, system), both_ways(depth, system));
  answer.says = fmt::format("{:.1f} diameters deep", slender);
  if (slender > kPeckFrom) answer.says += ": peck";
  TableWriter writer("how deep", system);
  writer.number("depth over diameter", slender, Kind::kNumber, 1, kOver);
  if (slender > kPeckFrom)
    writer.length("pecks of, at most", slender > kVeryDeep ? drill / 2.0 : drill, kPecks,
                  "all the way out each time");
  writer.length("comes out further off by", leaves, kTilt,
                fmt::format("for {:g} deg of tilt", tilt / unit::degree.to_base(1.0)));
  writer.length("comes out off by, all told", off + leaves, kTilt, "at worst; that it wanders is not in it");
  if (shaft) {
    writer.percent("drill over the shaft", drill / *shaft * 100.0, kOver);
    const double slope = std::asin(off * 2.0 / *shaft) / unit::degree.to_base(1.0);
    writer.number("slope it starts on", unit::degree.to_base(slope), Kind::kAngle, 1, kSlope);
    if (slope > kSkids_deg)
      answer.cautions.push_back(fmt::format(
          "A slope of {:.0f} deg throws a drill off: start with an end mill or through a bush.", slope));
  }
  answer.tables.push_back(writer.take());
  if (!read.has("tilt")) answer.assumed.emplace_back("1 deg of tilt, to compare");
  answer.cautions.emplace_back(
      "How far a drill wanders in the metal: NOT KNOWN. It is more the deeper it goes.");
  if (slender > kVeryDeep)
    answer.cautions.emplace_back(
        "So deep a hole may scrap the part: drill it before the difficult work, not after.");
  return answer;
}

}  // namespace sparewright::answers
