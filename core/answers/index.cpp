#include <charconv>
#include <cstdlib>

#include <fmt/format.h>

#include "core/answers/dividing.hpp"
#include "core/handbook/compound_indexing.hpp"
#include "core/handbook/differential_indexing.hpp"
#include "core/handbook/plain_indexing.hpp"
#include "core/handbook/rotary_table.hpp"
#include "core/quantity/display.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::answers {
namespace {

using handbook::CompoundIndexing;
using handbook::DifferentialIndexing;
using handbook::DividingHead;
using handbook::PlainIndexing;
using handbook::Ratio;
using quantity::Angle;
using quantity::UnitSystem;

constexpr std::size_t kShown = 3;  // settings of each way

// What is to be divided: a turn into so many, or an angle at a time.
struct Wanted {
  std::string text;  // "57 divisions"
  Ratio part;
  int divisions = 0;  // 0 for an angle
};

base::Result<Wanted> read(const std::string& words) {
  const std::string_view text = quantity::trimmed(words);
  int divisions = 0;
  const auto [stopped, error] = std::from_chars(text.data(), text.data() + text.size(), divisions);
  if (error == std::errc{} && stopped == text.data() + text.size()) {
    const auto part = handbook::part_for_divisions(divisions);
    if (!part) return tl::unexpected(part.error());
    return Wanted{fmt::format("{} divisions", divisions), *part, divisions};
  }
  const auto angle = quantity::read_number(text, quantity::Kind::kAngle, std::nullopt);
  if (!angle) return tl::unexpected(angle.error());
  const auto part = handbook::part_for_angle(angle->angle());
  if (!part) return tl::unexpected(part.error());
  return Wanted{to_string(handbook::in_degrees_minutes_seconds(angle->angle())), *part, 0};
}

// What is wrong after one move, and for divisions after the last.
std::string error_note(Angle error, int divisions) {
  if (error == Angle()) return "exact";
  const double seconds = error.in(quantity::unit::arc_second);
  const std::string off = quantity::signed_fixed(seconds, 1);
  if (divisions == 0) return fmt::format("off by {} sec", off);
  return fmt::format("off by {} sec a move, {} min in the last space", off,
                     quantity::signed_fixed(seconds * divisions / 60.0, 1));
}

std::string gears_words(const DifferentialIndexing& one) {
  return fmt::format("{}, {} idler{}", to_string(one.gears), one.idlers, one.idlers == 1 ? "" : "s");
}

std::string setting_words(const PlainIndexing& one) {
  return crank_words(one.turns, one.holes, one.circle) + (one.circle == 0 ? ", any circle" : "");
}

Table plain_table(const std::vector<PlainIndexing>& settings, int divisions) {
  TableWriter writer("plain", UnitSystem::kInch);
  for (const PlainIndexing& one : settings)
    writer.words(setting_words(one), one.plate.empty() ? "no plate needed" : one.plate, handbook::kIndexing,
                 error_note(one.error, divisions));
  return writer.take();
}

Table differential_table(const std::vector<DifferentialIndexing>& settings, int divisions) {
  TableWriter writer("differential, drivers from the spindle : drivens", UnitSystem::kInch);
  for (const DifferentialIndexing& one : settings)
    writer.words(fmt::format("{}, {}", crank_words(one.turns, one.holes, one.circle), one.plate),
                 gears_words(one), handbook::kDifferentialIndexing,
                 fmt::format("{}; the plate turns {} the crank", error_note(one.error, divisions),
                             one.with_crank() ? "with" : "against"));
  return writer.take();
}

Table compound_table(const std::vector<CompoundIndexing>& settings, int divisions) {
  TableWriter writer("compound, two circles of one plate", UnitSystem::kInch);
  for (const CompoundIndexing& one : settings)
    writer.words(move_words(one), one.plate, handbook::kCompoundIndexing, error_note(one.error, divisions));
  return writer.take();
}

// What is done where no plain setting is exact; `says` becomes the first exact one.
base::Result<void> add_other_ways(const DividingHead& head, const Wanted& wanted, Answer& answer) {
  if (wanted.divisions != 0) {
    const auto gears = handbook::dividing_head_gears();
    const auto differential = handbook::differential_indexing(head, wanted.divisions, gears, kShown);
    if (!differential) return tl::unexpected(differential.error());
    if (!differential->empty()) {
      const DifferentialIndexing& best = differential->front();
      if (best.exact())
        answer.says =
            fmt::format("differential: {}, {}; gears {}", crank_words(best.turns, best.holes, best.circle),
                        best.plate, gears_words(best));
      answer.tables.push_back(differential_table(*differential, wanted.divisions));
      answer.assumed.emplace_back("the twelve gears dividing heads usually come with");
    }
  }
  const auto compound = handbook::compound_indexing(head, wanted.part, kShown);
  if (!compound) return tl::unexpected(compound.error());
  if (compound->empty()) return {};
  if (answer.says.empty() && compound->front().exact())
    answer.says = fmt::format("compound: {}, {}", move_words(compound->front()), compound->front().plate);
  answer.tables.push_back(compound_table(*compound, wanted.divisions));
  return {};
}

}  // namespace

base::Result<Answer> index(const Question& question) {
  const auto wanted = read(question.words);
  if (!wanted) return tl::unexpected(wanted.error());
  Answer answer;
  const auto head = head_of(question, answer.assumed);
  if (!head) return tl::unexpected(head.error());
  const auto plain = handbook::plain_indexing(*head, wanted->part, kShown);
  if (!plain) return tl::unexpected(plain.error());
  const PlainIndexing& best = plain->front();
  const std::string crank = setting_words(best);
  answer.asked = fmt::format("{} on {}:1", wanted->text, head->worm);
  if (best.exact()) {
    answer.says = fmt::format("{}{}{}", crank, best.plate.empty() ? "" : ", ", best.plate);
  } else if (auto done = add_other_ways(*head, *wanted, answer); !done) {
    return tl::unexpected(done.error());
  }
  if (answer.says.empty())
    answer.says =
        fmt::format("nearest: {}, {}, {}", crank, best.plate, error_note(best.error, wanted->divisions));
  answer.tables.push_back(plain_table(*plain, wanted->divisions));
  answer.assumed.emplace_back(
      "holes are counted without the one the pin stands in: the sector arms enclose one more");
  return answer;
}

}  // namespace sparewright::answers
