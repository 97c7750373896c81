// What to write down, to mark and to photograph before the old part comes apart: put back as it was is half of a repair, and
// none of it can be measured afterwards. Common practice of the trade throughout; no book.
#include <algorithm>
#include <set>

#include <fmt/format.h>

#include "core/measuring/room.hpp"
#include "core/route/list_sheet.hpp"

namespace sparewright::measuring {
namespace {

using part::Form;
using route::ListSection;

// What the part has that decides what is worth writing down.
struct Has {
  std::set<Form> forms;
  std::set<judge::SeatFor> seats;
  std::vector<std::string> threads;  // as written
  std::vector<std::string> mates;    // named dimensions that go in its holes
  bool screws = false;
  bool gear = false;   // teeth were measured
  bool shaft = false;  // something is turned on it
  bool not_handed = false;

  [[nodiscard]] bool any(std::initializer_list<Form> some) const {
    return std::any_of(some.begin(), some.end(), [&](Form form) { return forms.count(form) > 0; });
  }
  [[nodiscard]] bool seat(judge::SeatFor what) const { return seats.count(what) > 0; }
};

bool is_of_teeth(const survey::Reading& reading) {
  return reading.way == survey::Way::kGearOutside;
}

Has look(const Subject& subject) {
  Has has;
  for (const part::Feature& feature : subject.judged.route.part.features) {
    if (const auto* formed = std::get_if<part::Formed>(&feature.shape)) {
      has.forms.insert(formed->form);
      if (!formed->thread.empty()) has.threads.push_back(formed->thread);
      if (!formed->mate.empty()) has.mates.push_back(formed->mate);
    }
    if (const auto* hole = std::get_if<part::Hole>(&feature.shape)) {
      if (const std::string mate = part::mate_of(*hole); !mate.empty()) has.mates.push_back(mate);
      has.screws = has.screws || hole->screw.has_value();
    }
  }
  for (const judge::Seat& seat : subject.judged.seats)
    has.seats.insert(seat.takes);
  const auto& readings = subject.survey.readings;
  has.gear = std::any_of(readings.begin(), readings.end(), is_of_teeth);
  has.shaft = has.any({Form::kTurned, Form::kTaper, Form::kEccentric});
  has.not_handed = subject.judged.hand == "not handed";
  return has;
}

ListSection look_and_mark(const Has& has, const Subject& subject) {
  ListSection section;
  section.heading = "BEFORE ANYTHING IS LOOSENED";
  section.ticks = {"photographs: the whole, each side square on, a rule in the picture",
                   "photographs: every joint, and which way up it stands",
                   "match marks across every joint, punched or scribed, not chalked"};
  if (has.any({Form::kEccentric, Form::kKeyseat, Form::kKeyway}) || has.seat(judge::SeatFor::kKey) ||
      has.gear)
    section.ticks.emplace_back("timing marked: both ends of the turn, tooth to tooth, key to mark");
  if (has.screws)
    section.ticks.emplace_back("each screw in a card, in the place it came from, with its washers");
  section.blanks = {"How it failed, and what it did before that",
                    "Would a stronger part only move the break? Where to?"};
  if (has.not_handed)
    section.blanks.emplace_back("Which end, or which side, faced you");
  else
    section.blanks.push_back(fmt::format("Hand, left or right{}, and which end faced you",
                                         subject.judged.hand.empty()
                                             ? std::string()
                                             : fmt::format(" (the job says: {})", subject.judged.hand)));
  return section;
}

// What can be measured only while it is together.
ListSection while_together(const Has& has) {
  ListSection section;
  section.heading = "MEASURE WHILE IT IS STILL TOGETHER";
  section.table.headings = {"", "WHAT", "HOW"};
  section.table.to_fill = true;
  const auto add = [&](std::string what, std::string how) {
    section.table.rows.push_back(
        {fmt::format("{}", section.table.rows.size() + 1), std::move(what), std::move(how)});
  };
  if (has.shaft || has.seat(judge::SeatFor::kBearing))
    add("end float of the shaft", "indicator on its end, pushed and pulled");
  if (has.seat(judge::SeatFor::kBearing))
    add("play at each bearing", "indicator beside it, lifted with a bar; up and down, then sideways");
  for (const std::string& mate : has.mates)
    add(fmt::format("play of {}", mate), "indicator at its end: up and down, then sideways, and how far out");
  if (has.gear) add("lash of the teeth", "indicator on a tooth, four places round; the least counts");
  if (has.seat(judge::SeatFor::kKey) || has.any({Form::kKeyseat, Form::kKeyway}))
    add("rock of the key", "both ways at a radius; then which side of key and seat is worn");
  if (has.any({Form::kTaper}))
    add("how far it is drawn up its taper", "depth gauge, face of the hub to the end of the shaft");
  if (has.any({Form::kSplit, Form::kSlit}))
    add("gap of the joint, tight and loosened", "feelers, both sides");
  if (has.seat(judge::SeatFor::kRetainingRing) || has.any({Form::kGroove}))
    add("side play against the ring", "feeler between the ring and what it holds");
  if (has.shaft) add("run-out as it stands", "indicator, turned by hand; mark the high side");
  return section;
}

// What is lost when it is apart.
ListSection as_it_comes_apart(const Has& has) {
  ListSection section;
  section.heading = "AS IT COMES APART";
  section.ticks = {"shims and washers: where each sat, its thickness, tied together and labelled"};
  section.blanks = {"Shims and washers, from which side, in which order",
                    "Witness marks: where it shone, where it rusted, where it fretted"};
  if (has.any({Form::kSplit}))
    section.blanks.emplace_back("Shims under the cap, left and right, and their thickness");
  if (has.seat(judge::SeatFor::kBearing))
    section.blanks.emplace_back(
        "Bearings: printing outwards or inwards, which ring was loose, where it had crept");
  if (has.seat(judge::SeatFor::kRetainingRing))
    section.blanks.emplace_back("Rings: which groove, sharp edge which way, where the gap stood");
  if (has.seat(judge::SeatFor::kORing))
    section.blanks.emplace_back(
        "Seals: which side the pressure came from, section of the old ring, cut or flattened");
  if (has.any({Form::kBush}))
    section.blanks.emplace_back("Bushes: where the oil hole stood, pinned or not, how far below the face");
  if (!has.threads.empty())
    section.blanks.emplace_back("Threads: right or left hand, how it was locked, turns until it was off");
  if (has.gear)
    section.blanks.emplace_back("Teeth: which flanks are worn, contact high or low, which way it drove");
  return section;
}

}  // namespace

void write_as_found(ledger::Pen& pen, const Subject& subject) {
  route::ListSheet sheet;
  sheet.tab = "AS FOUND";
  sheet.name = "before the old part comes apart";
  if (!subject.survey.readings.empty()) {  // without an old part nothing comes apart
    const Has has = look(subject);
    sheet.sections.push_back(look_and_mark(has, subject));
    if (ListSection together = while_together(has); !together.table.rows.empty())
      sheet.sections.push_back(std::move(together));
    sheet.sections.push_back(as_it_comes_apart(has));
    sheet.cautions = {"Isolate the machine, and let down springs, weights and pressure, before hands go in."};
  }
  const base::Fingerprint print = route::fingerprint(sheet);
  pen.publish("sheet", std::move(sheet), print);
}

}  // namespace sparewright::measuring
