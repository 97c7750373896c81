// What a cut asks and what a grip has: force, torque and power as ranges. It may say NO, never OK.
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/base/nearest.hpp"
#include "core/handbook/cutting_forces.hpp"
#include "core/handbook/friction.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using quantity::Force;
using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr handbook::Source kForceOfCut{"specific cutting force x depth x feed", "",
                                       handbook::Basis::kDerived};
constexpr handbook::Source kTorqueOfCut{"force x half the diameter; power = torque x turns", "",
                                        handbook::Basis::kDerived};
constexpr handbook::Source kFrictionGrip{"friction x pressing force x faces", "", handbook::Basis::kDerived};

void add_power(TableWriter& writer, double low_torque, double high_torque, double turns) {
  const double speed = unit::rpm.to_base(turns);
  writer.numbers("power at the tool", low_torque * speed, high_torque * speed, Kind::kPower, 2, kTorqueOfCut,
                 "a worn tool and the drive take as much again, at worst");
}

void assume_material(const EntryReader& read, const handbook::FoundMaterial& found, Answer& answer) {
  if (!read.has("material")) answer.assumed.push_back("work of " + to_string(found.material));
  if (!found.assumed.empty()) answer.assumed.push_back(found.assumed);
}

struct Pressing {
  Force low;
  Force high;
  handbook::Source source;
};

// Every row of the holder, or the one tightened so.
base::Result<Pressing> pressing_of(const std::string& holder, const std::string* tightened) {
  std::vector<std::string> known;
  std::optional<Pressing> found;
  for (const handbook::ClampingForce& one : handbook::clamping_forces()) {
    if (known.empty() || known.back() != one.holder) known.emplace_back(one.holder);
    if (one.holder != holder || (tightened != nullptr && one.tightened != *tightened)) continue;
    if (!found) found = Pressing{one.low, one.high, one.source};
    found->low = std::min(found->low, one.low);
    found->high = std::max(found->high, one.high);
  }
  if (found) return *found;
  if (tightened != nullptr && std::find(known.begin(), known.end(), holder) != known.end()) {
    std::vector<std::string> ways;
    for (const handbook::ClampingForce& one : handbook::clamping_forces()) {
      if (one.holder == holder) ways.emplace_back(one.tightened);
    }
    return base::fail(base::Code::kNameUnknown, *tightened, base::known_words(*tightened, ways),
                      "--tightened");
  }
  return base::fail(base::Code::kNameUnknown, holder, base::known_words(holder, known), "--holder");
}

constexpr std::array<std::pair<std::string_view, handbook::JawFace>, 3> kJawFaces{
    {{"smooth", handbook::JawFace::kSmoothJaw},
     {"diamond", handbook::JawFace::kDiamondSerratedJaw},
     {"serrated", handbook::JawFace::kSerratedJaw}}};
constexpr std::array<std::pair<std::string_view, handbook::GrippedSurface>, 3> kSurfaces{
    {{"machined", handbook::GrippedSurface::kMachined},
     {"smooth", handbook::GrippedSurface::kSmooth},
     {"rough", handbook::GrippedSurface::kRough}}};

template <class Value, std::size_t kCount>
Value named(const std::array<std::pair<std::string_view, Value>, kCount>& list, const std::string& word) {
  for (const auto& [name, value] : list) {
    if (name == word) return value;
  }
  return list.front().second;
}

base::Result<handbook::FrictionRange> friction_of(EntryReader& read, const Question& question) {
  if (const std::string* pair = find_entry(question, "pair")) return handbook::clamp_friction(*pair);
  const std::string face = read.word("jaw", {"smooth", "diamond", "serrated"});
  const std::string surface = read.word("surface", {"machined", "smooth", "rough"});
  const auto found = read.material("material", "steel 1018");
  if (read.failed()) return read.failure();
  return handbook::jaw_friction(named(kJawFaces, face), named(kSurfaces, surface), found.material.group);
}

// A scroll chuck is tabled by all its jaws together, everything else by what both faces are pressed with.
int faces_of(const std::string& holder) {
  return holder.find("scroll") == std::string::npos ? 2 : 1;
}

}  // namespace

base::Result<Answer> cut_force(const Question& question) {
  EntryReader read(question);
  const Length depth = read.size("depth");
  const Length feed = read.size("feed");
  const auto diameter = read.maybe_size("diameter");
  const auto turns = read.maybe_positive("rpm", Kind::kNumber);
  const auto found = read.material("material", "steel 1018");
  if (!read.failed())
    read.refuse_unless(!turns || diameter.has_value(), "rpm", "the diameter as well, --diameter");
  if (read.failed()) return read.failure();
  const auto specific = handbook::turning_force(work_of(found.material), handbook::Chip{feed, std::nullopt});
  if (!specific) return tl::unexpected(specific.error());
  const UnitSystem system = read.system();
  const double area = depth.base() * feed.base();
  const double low = specific->figures.low.base() * area;
  const double high = specific->figures.high.base() * area;
  Answer answer;
  answer.asked = fmt::format("turn {}, {} deep, {} a turn", to_string(found.material),
                             both_ways(depth, system), both_ways(feed, system));
  answer.says = fmt::format("up to {} along the cut", quantity::shown(high, Kind::kForce, system, 0));
  assume_material(read, found, answer);
  answer.assumed.emplace_back(
      "a sharp tool square to the work; what pushes the work away is a third to a half of "
      "it (common practice)");
  TableWriter writer("at the tool", system);
  writer.numbers("force, down on the tool", low, high, Kind::kForce, 0, kForceOfCut);
  for (const auto& one : specific->figures.printed)
    writer.numbers("specific force, " + std::string(one.material), one.low.base(), one.high.base(),
                   Kind::kPressure, 0, one.source, std::string(one.note));
  if (diameter) {
    const double arm = diameter->base() / 2.0;
    writer.numbers("torque on the work", low * arm, high * arm, Kind::kTorque, 1, kTorqueOfCut);
    if (turns) add_power(writer, low * arm, high * arm, *turns);
  }
  answer.tables.push_back(writer.take());
  if (specific->beyond_tables)
    answer.cautions.emplace_back(
        "So thin or thick a chip is outside the tables: the force is carried on from them.");
  answer.cautions.emplace_back("Sources differ by 30 to 40 %: size a grip by the high figure.");
  return answer;
}

base::Result<Answer> drill_load(const Question& question) {
  EntryReader read(question);
  const Length drill = read.size("drill");
  const Length feed = read.size("feed");
  const auto turns = read.maybe_positive("rpm", Kind::kNumber);
  const bool split = read.word("point", {"standard", "split"}) == "split";
  const auto found = read.material("material", "steel 1018");
  if (read.failed()) return read.failure();
  constexpr double kUsualWear = 1.3;
  const auto load =
      handbook::drilling_load(work_of(found.material), as_diameter(drill), feed, kUsualWear,
                              split ? handbook::DrillPoint::kSplit : handbook::DrillPoint::kStandard);
  if (!load) return tl::unexpected(load.error());
  const UnitSystem system = read.system();
  Answer answer;
  answer.asked = fmt::format("drill {} in {}, {} a turn", both_ways(drill, system), to_string(found.material),
                             both_ways(feed, system));
  answer.says = fmt::format("thrust up to {}, torque up to {}",
                            quantity::shown(load->thrust.high.base(), Kind::kForce, system, 0),
                            quantity::shown(load->torque.high.base(), Kind::kTorque, system, 1));
  assume_material(read, found, answer);
  answer.assumed.emplace_back("a drill worn as usual: 1.3 times a sharp one");
  TableWriter writer("on the drill", system);
  writer.numbers("thrust", load->thrust.low.base(), load->thrust.high.base(), Kind::kForce, 0,
                 load->thrust.printed.front().source);
  writer.numbers("torque", load->torque.low.base(), load->torque.high.base(), Kind::kTorque, 1,
                 load->torque.printed.front().source);
  if (turns) add_power(writer, load->torque.low.base(), load->torque.high.base(), *turns);
  answer.tables.push_back(writer.take());
  answer.cautions.emplace_back(
      "As it breaks through it screws itself in: work bolted down or against a stop, never held by hand.");
  return answer;
}

base::Result<Answer> grip(const Question& question) {
  EntryReader read(question);
  const auto holder = text_entry(question, "holder");
  if (!holder) return tl::unexpected(holder.error());
  const double needed = read.positive("force", Kind::kForce);
  if (read.failed()) return read.failure();
  const auto pressing = pressing_of(*holder, find_entry(question, "tightened"));
  if (!pressing) return tl::unexpected(pressing.error());
  const auto friction = friction_of(read, question);
  if (!friction) return tl::unexpected(friction.error());
  const int faces = faces_of(*holder);
  const auto hold =
      handbook::friction_hold(pressing->low, pressing->high, faces, *friction, Force::from_base(needed));
  if (!hold) return tl::unexpected(hold.error());
  const auto typed = number_entry(question, "force", Kind::kForce);
  const UnitSystem system =
      typed && typed->unit == unit::pound_force ? UnitSystem::kInch : UnitSystem::kMetric;
  Answer answer;
  answer.asked = fmt::format("{} against {}", *holder, quantity::shown(needed, Kind::kForce, system, 0));
  answer.says = hold->answer == handbook::FrictionAnswer::kSlips ? "NO: it slips"
                : hold->answer == handbook::FrictionAnswer::kMaySlip
                    ? "NOT KNOWN: it may slip, at the lowest friction there is less than twice what is needed"
                    : "NOT KNOWN: nothing against it, which shows nothing";
  TableWriter writer("held by friction", system);
  writer.numbers("pressed with", pressing->low.base(), pressing->high.base(), Kind::kForce, 0,
                 pressing->source);
  writer.numbers("friction", friction->low, friction->high, Kind::kNumber, 2, friction->source);
  writer.numbers("it holds", hold->low.base(), hold->high.base(), Kind::kForce, 0, kFrictionGrip,
                 faces == 2 ? "both faces" : "all jaws");
  writer.number("needed", needed, Kind::kForce, 0, kFrictionGrip);
  answer.tables.push_back(writer.take());
  answer.assumed.emplace_back("force and friction of the holder as usual: yours may have less");
  if (!read.has("pair") && !read.has("jaw")) answer.assumed.emplace_back("smooth jaws on a machined surface");
  answer.cautions.emplace_back(
      "Friction alone holds nothing that may hurt: a stop where the cut pushes, a tailstock where it can be, "
      "and a test cut.");
  return answer;
}

}  // namespace sparewright::answers
