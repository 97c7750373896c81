#include "core/job/seat_text.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/handbook/bearings.hpp"
#include "core/job/place_text.hpp"
#include "core/job/vocabulary.hpp"

namespace sparewright::job {
namespace {

using base::Code;
using judge::Seat;
using judge::SeatFor;
using quantity::Kind;
using text::choice;
using text::field;
using text::free_text;
using text::measure;
using text::TableReader;
using text::word_of;

constexpr std::array kRingTurnings{
    Meaning{"inner ring", handbook::RingTurning::kInner, "against the load: gears, belts, most machines"},
    Meaning{"outer ring", handbook::RingTurning::kOuter, "wheels on fixed axles, idlers"},
    Meaning{"either", handbook::RingTurning::kEither, "in no fixed direction"}};
constexpr std::array kRingLoads{
    Meaning{"light", handbook::BearingLoad::kLight, "below 0.06 of its dynamic rating"},
    Meaning{"normal", handbook::BearingLoad::kNormal, "0.06 to 0.13 of it"},
    Meaning{"heavy", handbook::BearingLoad::kHeavy, "above"}};
constexpr std::array kDutiesOfSeals{
    Meaning{"reciprocating", handbook::SealDuty::kReciprocating, "goes to and fro"},
    Meaning{"static", handbook::SealDuty::kStaticRadial, "stands still"}};
constexpr std::array kTakes{Meaning{"bearing", SeatFor::kBearing, ""}, Meaning{"key", SeatFor::kKey, ""},
                            Meaning{"retaining ring", SeatFor::kRetainingRing, ""},
                            Meaning{"O-ring", SeatFor::kORing, ""}};

void refuse(const TableReader& in, std::string_view key, std::string_view found, std::string_view accepted) {
  in.problems().add(
      text::failure_at(in.node().find(key).value_or(in.node()), Code::kValueNotAccepted, found, accepted));
}

// A feature of one of some forms, or a hole, or the bar; what is none of them is told.
struct Wanted {
  std::vector<part::Form> forms;
  bool holes = false;
  bool bar = false;
  std::string_view accepted;
};

std::string read_on(const TableReader& in, std::string_view key, const part::Part& part,
                    const Wanted& wanted) {
  const std::string name = in.text(key).value_or("");
  if (!in.node().find(key)) {
    need_key(in, key);
    return name;
  }
  const part::Feature* feature = part::find_feature(part, name);
  if (name == judge::kBareBar && feature == nullptr) {
    if (!wanted.bar || !part::is_round(part.blank.shape)) refuse(in, key, name, wanted.accepted);
    return name;
  }
  if (feature == nullptr) {
    std::vector<std::string> names;
    for (const part::Feature& one : part.features)
      names.push_back(one.name);
    auto failure =
        text::failure_at(*in.node().find(key), Code::kNotInTheJob, name, base::known_words(name, names));
    failure.subject = "feature";
    in.problems().add(std::move(failure));
    return name;
  }
  const auto* formed = std::get_if<part::Formed>(&feature->shape);
  const bool is_wanted =
      formed != nullptr
          ? std::find(wanted.forms.begin(), wanted.forms.end(), formed->form) != wanted.forms.end()
          : wanted.holes && std::holds_alternative<part::Hole>(feature->shape);
  if (!is_wanted) refuse(in, key, name, wanted.accepted);
  return name;
}

// A bearing by its number, of ISO class normal; or the limits of its ring as they are printed.
void read_bearing(const TableReader& in, const part::Part& part, Seat& seat) {
  seat.on = read_on(
      in, "on", part,
      {{part::Form::kTurned}, true, true, "a turned diameter, a hole, or bar for a round bar as it is"});
  seat.turning = in.word("turning", kRingTurnings);
  seat.load = in.word("load", kRingLoads);
  const part::Feature* on = part::find_feature(part, seat.on);
  const bool in_hole = on != nullptr && std::holds_alternative<part::Hole>(on->shape);
  if (in.node().find("number").has_value() == in.node().find("ring").has_value())
    return refuse(in, "number", in.text("number").value_or("nothing"), "either number or ring");
  if (const auto number = in.text("number")) {
    const auto found =
        in.problems().keep(text::located(handbook::find_bearing(*number), *in.node().find("number")));
    if (!found) return;
    const auto size = in_hole ? found->bearing.outside : found->bearing.bore;
    const auto limits = in.problems().keep(text::located(
        handbook::bearing_ring_limits(in_hole ? handbook::FitSide::kShaft : handbook::FitSide::kHole, size),
        *in.node().find("number")));
    if (!limits) return;
    seat.bearing = *number;
    seat.ring_nominal_mm = size.base();
    seat.ring_least_mm = limits->limits.lower.base();
    seat.ring_most_mm = limits->limits.upper.base();
    seat.ring_source = handbook::cite(limits->source);
    return;
  }
  const auto ring = in.sized("ring", Kind::kDiameter);
  if (!ring) return;
  seat.bearing = "a bearing of " + ring->typed;
  seat.ring_nominal_mm = ring->nominal.base;
  seat.ring_source = "the bearing's maker, as the job gives it";
  if (const auto* off = std::get_if<quantity::Deviations>(&ring->tolerance.form)) {
    seat.ring_least_mm = ring->nominal.base + off->lower.base;
    seat.ring_most_mm = ring->nominal.base + off->upper.base;
  } else if (const auto* limits = std::get_if<quantity::WrittenLimits>(&ring->tolerance.form)) {
    seat.ring_least_mm = limits->low.base;
    seat.ring_most_mm = limits->high.base;
    seat.ring_nominal_mm = limits->high.base;
  } else {
    refuse(in, "ring", ring->typed, "the ring's size with its tolerance, such as 1.0000 +0/-0.0004");
  }
  if (!(seat.ring_least_mm > 0.0)) refuse(in, "ring", ring->typed, "more than 0");
}

void read_o_ring(const TableReader& in, const part::Part& part, Seat& seat) {
  seat.on = read_on(in, "on", part, {{part::Form::kGroove}, false, false, "a groove"});
  seat.section = in.number("section", Kind::kLength);
  seat.seals_in = in.number("seals_in", Kind::kDiameter);
  seat.duty = in.word("duty", kDutiesOfSeals).value_or(handbook::SealDuty::kReciprocating);
  if (!seat.section) return;
  (void)in.problems().keep(
      text::located(handbook::o_ring_gland(seat.duty, seat.section->length()), *in.node().find("section")));
}

Seat read_seat(const TableReader& in, const part::Part& part) {
  Seat seat;
  seat.name = in.text("name").value_or("");
  if (seat.name.empty() || seat.name.find('/') != std::string::npos)
    refuse(in, "name", seat.name, "a name of one letter or more, without '/': numbers are called by it");
  seat.takes = in.word("takes", kTakes).value_or(SeatFor::kBearing);
  const Wanted shafts{
      {part::Form::kTurned}, false, true, "a turned diameter, or bar for a round bar as it is"};
  switch (seat.takes) {
    case SeatFor::kBearing:
      read_bearing(in, part, seat);
      break;
    case SeatFor::kKey:
      seat.on = read_on(in, "on", part, {{part::Form::kKeyseat}, false, false, "a keyseat"});
      seat.shaft = read_on(in, "shaft", part, shafts);
      break;
    case SeatFor::kRetainingRing: {
      seat.on = read_on(in, "on", part,
                        {{part::Form::kGroove, part::Form::kRecess}, false, false, "a groove or a recess"});
      const part::Feature* on = part::find_feature(part, seat.on);
      const auto* formed = on == nullptr ? nullptr : std::get_if<part::Formed>(&on->shape);
      if (formed != nullptr && formed->form == part::Form::kRecess) {
        seat.shaft = formed->of;
      } else {
        seat.shaft = read_on(in, "shaft", part, shafts);
      }
      break;
    }
    case SeatFor::kORing:
      read_o_ring(in, part, seat);
      break;
  }
  return seat;
}

}  // namespace

text::Shape seat_shape() {
  const auto on = [](const char* says) { return field("on", free_text("a feature")).required().says(says); };
  const auto shaft = field("shaft", free_text("a turned diameter"))
                         .says("what it is cut in: a turned diameter, or bar for a round bar as it is");
  return text::table_by(
      "takes", "what sits there", {field("name", free_text()).required().says("what the checks call it")},
      {choice("bearing", "a rolling bearing",
              {on("a turned diameter, a hole, or bar for a round bar as it is"),
               field("number", free_text("a bearing")).says("6205, 6204-2RS"),
               field("ring", measure("a size with its tolerance"))
                   .says("of a bearing without a number, what comes on the seat: 1.0000 +0/-0.0004"),
               field("turning", word_of(kRingTurnings))
                   .says("which ring turns against the load; inner ring where left out"),
               field("load", word_of(kRingLoads)).says("normal where left out")}),
       choice("key", "a parallel key", {on("a keyseat"), shaft}),
       choice("retaining ring", "a ring that springs into a groove",
              {on("a groove, or a recess in a hole"), shaft}),
       choice(
           "O-ring", "an O-ring in a groove of a piston",
           {on("a groove"),
            field("section", measure(Kind::kLength)).required().says("of the cord: 0.070, 0.103, 0.139 in"),
            field("seals_in", measure(Kind::kDiameter)).required().says("the bore it seals in"),
            field("duty", word_of(kDutiesOfSeals)).says("reciprocating where left out")})});
}

std::vector<Seat> read_seats(const TableReader& job, const part::Part& part) {
  std::vector<Seat> seats;
  for (const TableReader& in : job.tables("seat")) {
    Seat seat = read_seat(in, part);
    const bool again =
        std::any_of(seats.begin(), seats.end(), [&](const Seat& one) { return one.name == seat.name; });
    if (again) {
      auto failure =
          text::failure_at(*in.node().find("name"), Code::kNameTwice, seat.name, "names of their own");
      failure.subject = "seat";
      in.problems().add(std::move(failure));
    }
    seats.push_back(std::move(seat));
  }
  return seats;
}

}  // namespace sparewright::job
