// Which pattern holes lie in, from distances between them: the inverse of laying them out.
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/survey/hole_pattern.hpp"
#include "core/survey/pattern_work.hpp"

namespace sparewright::answers {
namespace {

using quantity::Length;
using quantity::UnitSystem;
using survey::HoleLayout;
using survey::PatternGuess;

constexpr handbook::Source kChords{
    "D sin(180 deg k/n), least squares; odds by how often each count is met "
    "(common practice)",
    "", handbook::Basis::kDerived};
constexpr handbook::Source kPitches{
    "k pitches, least squares; odds by how often each count is met (common practice)", "",
    handbook::Basis::kDerived};
constexpr double kSure = 0.9;    // odds from which no rival is told
constexpr double kRival = 0.02;  // odds below which a pattern is no rival

struct Asked {
  std::vector<double> centres_mm;
  double u_mm = 0.0;
  std::optional<int> count;
  UnitSystem system = UnitSystem::kInch;
  std::vector<std::string> assumed;
};

// A distance as measured, brought to the middles of the holes.
Length to_centres(Length read, const std::string& measured, Length hole) {
  if (measured == "over") return read - hole;
  if (measured == "between") return read + hole;
  return read;
}

base::Result<Asked> asked_of(const Question& question) {
  EntryReader read(question);
  const std::vector<Length> distances = read.lengths("distances", 1, survey::kMostDistances);
  const std::string measured = read.word("measured", {"centres", "over", "between"});
  const auto hole = read.maybe_size("hole");
  const auto good_to = read.maybe_size("good-to");
  Asked asked;
  if (read.has("count")) asked.count = read.count("count", 2, survey::kMostPatternHoles);
  if (!hole && measured != "centres") read.refuse_unless(false, "measured", "centres, or give --hole too");
  if (read.failed()) return read.failure();
  for (const Length distance : distances)
    asked.centres_mm.push_back(to_centres(distance, measured, hole.value_or(Length())).base());
  const Length doubt = good_to.value_or(Length::of(2.0, quantity::unit::thou));
  asked.u_mm = doubt.base() / std::sqrt(3.0);  // JCGM 100:2008, 4.3.7
  asked.system = read.system();
  if (!good_to)
    asked.assumed.push_back(
        fmt::format("each distance is good to {}, either way", both_ways(doubt, asked.system)));
  if (measured == "centres") asked.assumed.emplace_back("the distances are from middle to middle");
  asked.assumed.emplace_back("each distance is between another two holes");
  return asked;
}

std::string name_of(const PatternGuess& guess, UnitSystem system) {
  const std::string size = both_ways(Length::from_base(guess.size), system);
  if (guess.layout == HoleLayout::kRow) return fmt::format("{} places {} apart", guess.holes, size);
  return fmt::format("{} holes on a circle of {}", guess.holes, size);
}

std::string percent(double odds) {
  return odds > 0.995 ? "over 99 in 100" : fmt::format("{:.0f} in 100", 100.0 * odds);
}

// Off by more than twice its doubt: 19 times in 20.
bool is_off(const PatternGuess& guess, std::size_t distance) {
  return std::abs(guess.off[distance]) > 2.0 * guess.off_u[distance];
}
bool is_checked(const PatternGuess& guess, const Asked& asked, std::size_t distance) {
  return guess.off_u[distance] > 0.01 * asked.u_mm;
}

std::size_t distances_off(const PatternGuess& guess) {
  std::size_t off = 0;
  for (std::size_t i = 0; i < guess.off.size(); ++i)
    off += is_off(guess, i) ? 1U : 0U;
  return off;
}

Table pattern_table(const PatternGuess& guess, const Asked& asked, const handbook::Source& source) {
  TableWriter writer("the pattern", asked.system);
  const bool row = guess.layout == HoleLayout::kRow;
  writer.number(row ? "places, at least" : "holes", guess.holes, quantity::Kind::kNumber, 0, source);
  writer.length(row ? "pitch" : "diameter of the circle", Length::from_base(guess.size), source,
                fmt::format("known to {}, 19 times in 20",
                            both_ways(Length::from_base(2.0 * guess.size_u), asked.system)));
  const std::size_t off = distances_off(guess);
  std::size_t checked = 0;
  double tells = 0.0;
  for (std::size_t i = 0; i < guess.off.size(); ++i) {
    if (!is_checked(guess, asked, i)) continue;
    ++checked;
    tells = std::max(tells, 2.0 * guess.off_u[i]);
  }
  const std::string limit = both_ways(Length::from_base(tells), asked.system);
  if (checked == 0) {
    writer.words("equally spaced", "NOT KNOWN", source, "no distance checks another: measure one more");
  } else {
    writer.words("equally spaced", off == 0 ? "as far as the distances tell" : "NO", source,
                 off == 0 ? fmt::format("a distance more than {} off would show", limit)
                          : fmt::format("{} of {} distances are off by more than the {} they can tell", off,
                                        guess.off.size(), limit));
  }
  return writer.take();
}

Table distance_table(const PatternGuess& guess, const Asked& asked, const handbook::Source& source) {
  TableWriter writer("each distance, middle to middle", asked.system);
  for (std::size_t i = 0; i < guess.off.size(); ++i) {
    const std::string off =
        is_checked(guess, asked, i)
            ? fmt::format("{}{}, {}", both_ways(Length::from_base(std::abs(guess.off[i])), asked.system),
                          guess.off[i] < 0.0 ? " short" : " long",
                          is_off(guess, i) ? "more than its doubt" : "within its doubt")
            : std::string("nothing checks it");
    writer.length(
        fmt::format("distance {}", i + 1), Length::from_base(asked.centres_mm[i]), source,
        fmt::format("{}: {}", survey::name_of_step(guess.layout, guess.holes, guess.steps[i]), off));
  }
  return writer.take();
}

Table rivals_table(const survey::PatternOdds& found, const Asked& asked, const handbook::Source& source) {
  TableWriter writer("odds", asked.system);
  for (std::size_t i = 0; i < found.guesses.size() && i < 4; ++i) {
    if (i > 0 && found.guesses[i].odds < kRival) break;
    writer.words(name_of(found.guesses[i], asked.system), percent(found.guesses[i].odds), source);
  }
  if (found.no_pattern > kRival) writer.words("no equal spacing", percent(found.no_pattern), source);
  return writer.take();
}

std::vector<std::string> cautions_of(const survey::PatternOdds& found, const Asked& asked) {
  const PatternGuess& best = found.guesses.front();
  std::vector<std::string> cautions;
  if (best.odds >= kSure || found.guesses.size() < 2) return cautions;
  const PatternGuess& next = found.guesses[1];
  const auto decides = survey::deciding(best, next, asked.u_mm);
  const auto length = [&](double mm) { return both_ways(Length::from_base(mm), asked.system); };
  if (decides) {
    cautions.push_back(fmt::format("What decides: measure {}. It is {} for {} holes, {} for {}.",
                                   decides->distance, length(decides->by_first), best.holes,
                                   length(decides->by_second), next.holes));
  } else {
    cautions.push_back(fmt::format("No distance tells {} holes from {}: count the holes and give --count.",
                                   best.holes, next.holes));
  }
  return cautions;
}

base::Result<Answer> found_holes(const Question& question, HoleLayout layout) {
  const auto asked = asked_of(question);
  if (!asked) return tl::unexpected(asked.error());
  const auto found =
      survey::pattern_of(layout, asked->centres_mm, asked->u_mm, survey::kHolesMade_mm, asked->count);
  if (!found) return tl::unexpected(found.error());
  const handbook::Source& source = layout == HoleLayout::kRow ? kPitches : kChords;
  Answer answer;
  answer.asked = fmt::format("{} by {} distance{} between its holes",
                             layout == HoleLayout::kRow ? "a row of holes" : "a bolt circle",
                             asked->centres_mm.size(), asked->centres_mm.size() == 1 ? "" : "s");
  answer.assumed = asked->assumed;
  if (found->guesses.empty() || found->no_pattern > found->guesses.front().odds) {
    answer.says = "no equal spacing explains these distances";
    if (!found->guesses.empty()) answer.tables.push_back(rivals_table(*found, *asked, source));
    answer.cautions.emplace_back("Measure them again, or leave out the hole that does not belong.");
    return answer;
  }
  const PatternGuess& best = found->guesses.front();
  answer.says = fmt::format("{}, odds {}{}", name_of(best, asked->system), percent(best.odds),
                            distances_off(best) > 0 ? "; NOT equally spaced by these distances" : "");
  answer.tables = {pattern_table(best, *asked, source), distance_table(best, *asked, source),
                   rivals_table(*found, *asked, source)};
  answer.cautions = cautions_of(*found, *asked);
  return answer;
}

}  // namespace

base::Result<Answer> found_bolt_circle(const Question& question) {
  return found_holes(question, HoleLayout::kCircle);
}

base::Result<Answer> found_hole_row(const Question& question) {
  return found_holes(question, HoleLayout::kRow);
}

}  // namespace sparewright::answers
