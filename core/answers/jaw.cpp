#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/answers/quick.hpp"
#include "core/handbook/eccentric_packing.hpp"

namespace sparewright::answers {
namespace {

using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;

constexpr std::array<std::string_view, 4> kJaws{"jaw1", "jaw2", "jaw3", "jaw4"};

constexpr handbook::Source kHalfRunOut{"the axis is half the run-out from where it should be, geometry", "",
                                       handbook::Basis::kDerived};

constexpr handbook::Source kScrewTurns{"move over the pitch of the jaw's screw", "",
                                       handbook::Basis::kDerived};

// "0.30 of a turn" of the jaw's screw, where its pitch is given; zero where it is not.
base::Result<Length> screw_of(const Question& question) {
  if (find_entry(question, "screw") == nullptr) return Length();
  const auto screw = pitch_entry(question, "screw");
  if (!screw) return tl::unexpected(screw.error());
  return screw->pitch;
}

void add_turns(TableWriter& writer, std::string what, Length move, Length screw) {
  if (screw > Length())
    writer.number(std::move(what), move / screw, Kind::kNumber, 2, kScrewTurns, "turns of its screw");
}

// A pair of jaws opposite each other: which one shows high, and half of how much.
void add_pair(TableWriter& writer, int jaw, Length reading, Length opposite, Length screw) {
  const bool first_high = reading > opposite;
  const int high = first_high ? jaw : jaw + 2;
  const int low = first_high ? jaw + 2 : jaw;
  const Length move = magnitude(reading - opposite) / 2.0;
  const std::string what = fmt::format("jaws {} and {}", jaw, jaw + 2);
  if (move < Length::of(1e-6, quantity::unit::millimetre))
    writer.words(what, "leave them", kHalfRunOut);
  else
    writer.length(what, move, kHalfRunOut, fmt::format("slacken jaw {}, then push in jaw {}", low, high));
  add_turns(writer, what + ", screw", move, screw);
}

base::Result<Answer> by_four_readings(const Question& question) {
  std::array<Length, 4> reading;
  UnitSystem system = question.system;
  for (std::size_t i = 0; i < reading.size(); ++i) {
    const auto read = number_entry(question, kJaws.at(i), Kind::kLength);
    if (!read) return tl::unexpected(read.error());
    reading.at(i) = read->length();
    system = system_of(*read);
  }
  const Length across = reading[0] - reading[2];
  const Length along = reading[1] - reading[3];
  const Length off = Length::from_base(std::hypot(across.base(), along.base()) / 2.0);
  const auto screw = screw_of(question);
  if (!screw) return tl::unexpected(screw.error());
  Answer answer;
  answer.asked = "four-jaw chuck, read at each jaw";
  TableWriter writer("push in by", system);
  add_pair(writer, 1, reading[0], reading[2], *screw);
  add_pair(writer, 2, reading[1], reading[3], *screw);
  TableWriter as_found("as it stands", system);
  as_found.length("axis of the work off the spindle's", off, kHalfRunOut, "runs out twice that");
  as_found.length("out of round", magnitude((reading[0] + reading[2]) - (reading[1] + reading[3])) / 2.0,
                  kHalfRunOut, "one pair against the other: no jaw takes that out");
  answer.says = off.base() == 0.0 ? "it runs true" : "one pair at a time, the larger first";
  answer.tables = {writer.take(), as_found.take()};
  return answer;
}

base::Result<Answer> by_run_out(const Question& question) {
  const auto run_out = size_entry(question, "tir");
  if (!run_out) return tl::unexpected(run_out.error());
  const auto diameter = maybe_size(question, "diameter");
  if (!diameter) return tl::unexpected(diameter.error());
  const auto screw = screw_of(question);
  if (!screw) return tl::unexpected(screw.error());
  const UnitSystem system = system_of(*run_out);
  const Length move = run_out->length() / 2.0;
  Answer answer;
  answer.asked = fmt::format("run-out of {} in one turn", both_ways(run_out->length(), system));
  answer.says = fmt::format("push in the jaw at the high reading {}", both_ways(move, system));
  TableWriter writer("move", system);
  writer.length("four-jaw chuck", move, kHalfRunOut,
                "slacken the jaw at the low reading, then push in the one at the high reading");
  add_turns(writer, "four-jaw chuck, screw", move, *screw);
  if (*diameter) {
    const auto shim = handbook::eccentric_packing(move, (*diameter)->diameter(), Length());
    if (!shim) return tl::unexpected(shim.error());
    writer.length("three-jaw chuck, shim", shim->by_the_rule, handbook::kOneAndAHalfThrow,
                  "under the jaw at the high reading, jaw faces wide");
    writer.length("the same, narrow jaws", shim->narrow, handbook::kPackingGeometry);
  }
  answer.assumed.emplace_back("high and low lie at two jaws opposite each other, and the work is round");
  answer.tables.push_back(writer.take());
  return answer;
}

}  // namespace

base::Result<Answer> jaw(const Question& question) {
  const bool at_each = find_entry(question, kJaws.front()) != nullptr;
  auto answer = at_each ? by_four_readings(question) : by_run_out(question);
  if (!answer) return answer;
  answer->assumed.emplace_back(
      "the reading rises as the work pushes the plunger in, at the same height for every jaw");
  answer->cautions.emplace_back(
      "Turn the chuck by hand to read it; every jaw tight before the power goes on.");
  answer->cautions.emplace_back(kKeyOut);
  return answer;
}

}  // namespace sparewright::answers
