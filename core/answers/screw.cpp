#include <array>

#include <fmt/format.h>

#include "core/answers/fasteners.hpp"
#include "core/handbook/screw_card.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using handbook::ScrewCard;
using quantity::Kind;
using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr handbook::Source kWholeLoad{"strength of the grade times the stress area of the thread", "",
                                      handbook::Basis::kDerived};
constexpr handbook::Source kStrongArea{
    "tensile strength times the stress area of screws over 100 ksi, from the least pitch diameter, "
    "FED-STD-H28/2",
    "", handbook::Basis::kDerived};
constexpr handbook::Source kTorque{
    "torque = K x preload x diameter, Mechanical Engineering Design; K of the sources below", "",
    handbook::Basis::kFromMemory};

// The dimensions of the head, row by row.
struct HeadRows {
  TableWriter& writer;

  void key_row(const auto& screw) const {
    writer.length("key", screw.key, screw.source, std::string(screw.key_name));
  }
  void operator()(const handbook::SocketHeadScrew& screw) const {
    writer.range("body", screw.body_min, screw.body_max, screw.source);
    writer.range("head diameter", screw.head_min, screw.head_max, screw.source);
    if (screw.knurled_head_max)
      writer.length("head diameter, knurled", *screw.knurled_head_max, screw.source, "greatest");
    writer.range("head height", screw.head_height_min, screw.head_height_max, screw.source);
    key_row(screw);
  }
  void operator()(const handbook::ButtonHeadScrew& screw) const {
    writer.length("head diameter", screw.head_max, screw.source, "greatest");
    writer.length("head height", screw.head_height_max, screw.source, "greatest");
    key_row(screw);
  }
  void operator()(const handbook::FlatHeadScrew& screw) const {
    writer.number("angle of the head", screw.angle.base(), Kind::kAngle, 0, screw.source);
    writer.length("head diameter", screw.sharp, screw.source, "greatest, to a sharp edge");
    writer.length("head height", screw.head_height_max, screw.source, "greatest");
    if (screw.key) writer.length("key", *screw.key, screw.source, std::string(screw.key_name));
  }
  void operator()(const handbook::HexFastener& head) const {
    writer.range("across the flats", head.flats_min.value_or(head.flats_max), head.flats_max, head.source,
                 std::string(name_of(head.kind)));
    writer.length("across the corners", head.corners_max(), head.source, "greatest");
    writer.range("head height", head.height_min.value_or(head.height_max), head.height_max, head.source);
  }
  void operator()(const handbook::SetScrew& screw) const {
    key_row(screw);
    writer.length("cup point", screw.cup_max, screw.source, "greatest");
    writer.length("dog point", screw.dog_max, screw.source, "greatest: the hole it must pass");
  }
};

Table screw_table(const ScrewCard& card, UnitSystem system) {
  const handbook::ScrewThread& thread = card.screw.thread;
  TableWriter writer("screw", system);
  writer.length("diameter", thread.major, thread.area_source);
  writer.length("pitch", thread.pitch, thread.area_source);
  std::visit(HeadRows{writer}, card.head);
  writer.number("stress area", thread.stress_area.base(), Kind::kArea, system == UnitSystem::kInch ? 5 : 2,
                thread.area_source);
  return writer.take();
}

Table holes_table(const ScrewCard& card, UnitSystem system) {
  constexpr std::array<std::string_view, 3> kInch{"close", "normal", "loose"};
  constexpr std::array<std::string_view, 3> kMetric{"fine", "medium", "coarse"};
  TableWriter writer("holes", system);
  const auto add_tap_drill = [&](const handbook::ChartedTapDrill& tap, std::string_view work) {
    writer.length(fmt::format("tap drill, {}", tap.choice.drill.name), tap.choice.drill.diameter, tap.source,
                  fmt::format("{:.0f} % of thread, what charts give for {}", tap.choice.percent, work));
  };
  if (card.tap_drill) add_tap_drill(*card.tap_drill, "aluminium, brass, plastics");
  if (const auto steel =
          handbook::charted_tap_drill(card.screw.thread.name, handbook::TapChartColumn::kNominal50))
    add_tap_drill(*steel, "steel, stainless, iron");
  for (const handbook::ClearanceHole& hole : card.clearance_holes) {
    const auto& names = system == UnitSystem::kInch ? kInch : kMetric;
    writer.range(fmt::format("clearance, {}", names.at(static_cast<std::size_t>(hole.fit))), hole.hole,
                 hole.hole_max.value_or(hole.hole), hole.source,
                 fmt::format("drill {}{}{}{}{}", hole.drill, hole.zone.empty() ? "" : ", ", hole.zone,
                             hole.note.empty() ? "" : "; ", hole.note));
  }
  for (const handbook::Counterbore& bore : card.counterbores) {
    const std::string set(name_of(bore.set));
    writer.length("counterbore, " + set, bore.diameter, bore.source, std::string(bore.note));
    if (bore.depth) writer.length("its depth, " + set, *bore.depth, bore.source);
  }
  if (const auto& sink = card.sink) {
    writer.length("countersink", sink->diameter, sink->screw.source, "at the surface: no head stands proud");
    writer.length("fed from the edge of the hole", sink->feed, sink->screw.source,
                  "over the normal clearance hole");
  }
  if (const auto& face = card.face)
    writer.length("spotface under the head", face->diameter, face->rule, "the least");
  return writer.take();
}

// Nut and washer of a hex head.
Table with_it_table(const ScrewCard& card, UnitSystem system) {
  TableWriter writer("nut and washer", system);
  if (const auto& nut = card.nut) {
    writer.range("nut across the flats", nut->flats_min.value_or(nut->flats_max), nut->flats_max, nut->source,
                 std::string(name_of(nut->kind)));
    writer.range("nut thickness", nut->height_min.value_or(nut->height_max), nut->height_max, nut->source);
  }
  if (const auto& washer = card.washer) {
    writer.length("washer outside", washer->outside, washer->source, std::string(name_of(washer->series)));
    writer.length("washer inside", washer->inside, washer->source);
    writer.length("washer thickness", washer->thickness, washer->source);
  }
  return writer.take();
}

Table strength_table(const ScrewCard& card, UnitSystem system) {
  const handbook::ScrewGrade& grade = *card.grade;
  const bool named = grade.standard.ends_with(grade.grade);  // ASTM A574 is standard and grade
  TableWriter writer(
      fmt::format("strength, {}{}{}", grade.standard, named ? "" : ", ", named ? "" : grade.grade), system);
  writer.number("proof strength", grade.proof.base(), Kind::kPressure, 0, grade.source);
  writer.number("tensile strength", grade.tensile.base(), Kind::kPressure, 0, grade.source);
  writer.number("proof load", card.loads->proof.base(), Kind::kForce, 0, kWholeLoad, "no lasting stretch");
  writer.number("breaks at", card.loads->tensile.base(), Kind::kForce, 0, kWholeLoad, "the least");
  if (card.loads->tensile_h28)
    writer.number("breaks at, by FED-STD-H28/2", card.loads->tensile_h28->base(), Kind::kForce, 0,
                  kStrongArea, "the least");
  return writer.take();
}

void add_torque(TableWriter& writer, std::string what, quantity::Torque torque, UnitSystem system) {
  writer.number(std::move(what), torque.base(), Kind::kTorque, system == UnitSystem::kInch ? 0 : 1, kTorque,
                system == UnitSystem::kInch ? fmt::format("{:.1f} ft lbf", torque.in(unit::foot_pound)) : "");
}

Table torque_table(const handbook::Tightening& oiled, UnitSystem system) {
  TableWriter writer("tightening, machine oil", system);
  writer.number("preload wanted", oiled.preload.base(), Kind::kForce, 0, kTorque);
  add_torque(writer, "torque", oiled.torque, system);
  writer.numbers("preload that torque may leave", oiled.preload_low.base(), oiled.preload_high.base(),
                 Kind::kForce, 0, kTorque, "from the highest K in print to the lowest");
  add_torque(writer, "never past the proof load", oiled.most, system);
  for (const handbook::NutFactor& one : oiled.factors.printed)
    writer.numbers(fmt::format("K, {}", one.as_printed), one.low, one.high, Kind::kNumber, 2, one.source);
  return writer.take();
}

// What the torque may do to the screw where its threads are slipperier than the mean.
std::string overload_words(const handbook::Tightening& oiled, UnitSystem system) {
  const auto force = [&](quantity::Force one) {
    return quantity::shown(one.base(), Kind::kForce, system, 0);
  };
  const quantity::Force breaks = oiled.loads.tensile_h28.value_or(oiled.loads.tensile);
  return fmt::format(
      "slippery threads may load the screw to {} at this torque: past its proof load of {}{}. Where someone "
      "depends on it keep to the torque that is never past the proof load, or measure the stretch",
      force(oiled.preload_high), force(oiled.loads.proof),
      oiled.preload_high > breaks ? fmt::format(" and past the {} that break it", force(breaks)) : "");
}

void add_strength(const ScrewCard& card, UnitSystem system, Answer& answer) {
  using handbook::HeadKind;
  const HeadKind head = card.screw.head;
  if (head == HeadKind::kSetScrew) {
    answer.assumed.emplace_back("a set screw holds by its point: no strength and no torque is given");
    return;
  }
  if (!card.grade || !card.loads) {
    answer.assumed.emplace_back("no grade was named: no strength and no torque is given");
    return;
  }
  if (head != HeadKind::kSocketHead && head != HeadKind::kHexHead)
    answer.cautions.emplace_back(
        "loads and torque are those of the thread: a flat or button head and its small socket carry less");
  answer.tables.push_back(strength_table(card, system));
  if (!card.oiled) return;
  answer.assumed.push_back(
      fmt::format("threads oiled, preload {:.2f} of the proof load: a joint that is taken apart again",
                  handbook::kPreloadReused));
  answer.tables.push_back(torque_table(*card.oiled, system));
  if (card.oiled->may_pass_proof) answer.cautions.push_back(overload_words(*card.oiled, system));
}

std::string says_of(const ScrewCard& card) {
  std::string says;
  if (card.tap_drill) says = fmt::format("tap drill {}", card.tap_drill->choice.drill.name);
  for (const handbook::ClearanceHole& hole : card.clearance_holes) {
    if (hole.fit == handbook::ClearanceFit::kNormal)
      says += fmt::format("{}clearance drill {}", says.empty() ? "" : ", ", hole.drill);
  }
  return says;
}

}  // namespace

base::Result<Answer> screw(const Question& question) {
  const std::string* grade = find_entry(question, "grade");
  const auto card = handbook::screw_card(
      question.words, grade == nullptr ? std::nullopt : std::optional<std::string_view>(*grade));
  if (!card) return tl::unexpected(card.error());
  const UnitSystem system = card->screw.thread.is_metric() ? UnitSystem::kMetric : UnitSystem::kInch;
  Answer answer;
  answer.asked = fmt::format("{} {}", card->screw.thread.name, name_of(card->screw.head));
  answer.says = says_of(*card);
  answer.assumed = card->screw.assumed;
  for (Table table : {screw_table(*card, system), holes_table(*card, system), with_it_table(*card, system)}) {
    if (!table.rows.empty()) answer.tables.push_back(std::move(table));
  }
  add_strength(*card, system, answer);
  return answer;
}

}  // namespace sparewright::answers
