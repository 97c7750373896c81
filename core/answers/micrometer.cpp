// Readings: a micrometer's parts added up, and the slip behind one that cannot be right.
#include <array>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"

namespace sparewright::answers {
namespace {

using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

// What the marks of a micrometer are worth. Inch: 40 threads per inch; metric: 0.5 mm. Common practice.
struct Marks {
  std::string_view scale;
  UnitSystem system;
  Length number;  // a numbered line of the sleeve
  Length line;    // a line between
  int lines;      // how many fit between two numbers
  Length division;
  int divisions;  // of the thimble
  Length vernier;
  int most_numbers;
};
constexpr std::array kMarks{
    Marks{"inch", UnitSystem::kInch, Length::of(0.1, unit::inch), Length::of(0.025, unit::inch), 3,
          Length::of(0.001, unit::inch), 25, Length::of(0.0001, unit::inch), 10},
    Marks{"metric", UnitSystem::kMetric, Length::of(1.0, unit::millimetre), Length::of(0.5, unit::millimetre),
          1, Length::of(0.01, unit::millimetre), 50, Length::of(0.001, unit::millimetre), 25},
};

constexpr handbook::Source kMicrometer{
    "a turn of the thimble is 0.025 in or 0.5 mm, a division 0.001 in or 0.01 mm", "",
    handbook::Basis::kCommonPractice};

// What is usually slipped by. Common practice.
struct Slip {
  Length by;
  std::string_view what;
};
constexpr std::array kSlips{
    Slip{Length::of(0.025, unit::inch), "one turn of an inch thimble, a line of its sleeve"},
    Slip{Length::of(0.050, unit::inch), "two turns of an inch thimble"},
    Slip{Length::of(0.075, unit::inch), "three turns of an inch thimble"},
    Slip{Length::of(0.100, unit::inch), "a number of the sleeve, or a turn of the caliper's dial"},
    Slip{Length::of(1.000, unit::inch), "the next larger or smaller micrometer"},
    Slip{Length::of(0.5, unit::millimetre), "one turn of a metric thimble, a half millimetre line"},
    Slip{Length::of(1.0, unit::millimetre), "a millimetre: two turns, or a turn of the caliper's dial"},
    Slip{Length::of(25.0, unit::millimetre), "the next larger or smaller micrometer"},
};
struct RatioSlip {
  double ratio;
  std::string_view what;
};
constexpr std::array kRatioSlips{RatioSlip{2.0, "a diameter for a radius"},
                                 RatioSlip{10.0, "a place of decimals"},
                                 RatioSlip{25.4, "millimetres for inches"}};
constexpr handbook::Source kSlipsMade{"slips that are made in reading instruments", "",
                                      handbook::Basis::kCommonPractice};
constexpr handbook::Source kDifference{"the reading less what was expected", "", handbook::Basis::kDerived};

// Within a graduation and a half of it. A choice made here, without a source.
constexpr Length kUsuallyGoodTo = Length::of(0.0015, unit::inch);

// The slips that would explain a reading.
std::vector<std::pair<std::string, Length>> slips_behind(Length read, Length expected, Length good_to) {
  std::vector<std::pair<std::string, Length>> found;
  const Length off = magnitude(read - expected);
  for (const Slip& slip : kSlips) {
    if (magnitude(off - slip.by) <= good_to) found.emplace_back(slip.what, slip.by);
  }
  for (const RatioSlip& slip : kRatioSlips) {
    for (const double ratio : {slip.ratio, 1.0 / slip.ratio}) {
      if (magnitude(read - expected * ratio) <= good_to) found.emplace_back(slip.what, off);
    }
  }
  return found;
}

}  // namespace

base::Result<Answer> micrometer(const Question& question) {
  EntryReader read(question);
  const std::string scale = read.word("scale", {"inch", "metric"});
  const Marks& marks = scale == "metric" ? kMarks[1] : kMarks[0];
  const int numbers = read.count_or("numbers", 0, marks.most_numbers, 0);
  const int lines = read.count_or("lines", 0, marks.lines, 0);
  const int thimble = read.count("thimble", 0, marks.divisions);
  if (!read.failed())
    read.refuse_unless(
        thimble < marks.divisions, "thimble",
        fmt::format("from 0 to {}: {} is another line of the sleeve", marks.divisions - 1, marks.divisions));
  const int vernier = read.count_or("vernier", 0, 9, 0);
  const Length from = read.place_or_zero("from");
  if (read.failed()) return read.failure();
  const Length sleeve_numbers = marks.number * numbers;
  const Length sleeve_lines = marks.line * lines;
  const Length on_thimble = marks.division * thimble;
  const Length on_vernier = marks.vernier * vernier;
  const Length total = from + sleeve_numbers + sleeve_lines + on_thimble + on_vernier;
  Answer answer;
  answer.asked = fmt::format("{} micrometer, its parts", marks.scale);
  answer.says = both_ways(total, marks.system);
  TableWriter writer("added up", marks.system);
  if (from > Length()) writer.length("where the micrometer starts", from, kMicrometer);
  writer.length(fmt::format("{} numbered lines of the sleeve", numbers), sleeve_numbers, kMicrometer);
  writer.length(fmt::format("{} lines behind it", lines), sleeve_lines, kMicrometer);
  writer.length(fmt::format("{} divisions of the thimble", thimble), on_thimble, kMicrometer);
  writer.length(fmt::format("{} of the vernier", vernier), on_vernier, kMicrometer);
  writer.length("it reads", total, kMicrometer);
  answer.tables.push_back(writer.take());
  answer.assumed.emplace_back("it reads nothing, closed: try that, or its setting piece, first");
  return answer;
}

base::Result<Answer> reading(const Question& question) {
  EntryReader read(question);
  const Length shown = read.size("read");
  const Length expected = read.size("expected");
  const std::string changes = read.word("can-only", {"either", "smaller", "larger"});
  const std::optional<Length> given = read.maybe_size("good-to");
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const Length good_to = given.value_or(kUsuallyGoodTo);
  const Length off = shown - expected;
  const auto slips = slips_behind(shown, expected, good_to);
  const bool impossible = (changes == "smaller" && off > good_to) || (changes == "larger" && off < -good_to);
  Answer answer;
  answer.asked = fmt::format("a reading of {} where {} was expected", both_ways(shown, system),
                             both_ways(expected, system));
  answer.says = magnitude(off) <= good_to ? "as expected" : off_words(off, "over", "under", system);
  if (impossible) answer.says += fmt::format(", and it can only be {}", changes);
  if (!slips.empty())
    answer.says += fmt::format("; likely {}: read it again", slips.front().first);
  else if (impossible)
    answer.says += ": read it again, with another instrument";
  if (!given) answer.assumed.push_back(fmt::format("a reading is good to {}", both_ways(good_to, system)));
  TableWriter writer("the difference", system);
  writer.length("reading less expected", off, kDifference);
  answer.tables.push_back(writer.take());
  TableWriter known("slips that make such a difference", system);
  for (const auto& [what, by] : slips)
    known.length(what, by, kSlipsMade, magnitude(off) == by ? "exactly" : "");
  if (slips.empty()) known.words("none of the usual ones", "the part may differ", kSlipsMade);
  answer.tables.push_back(known.take());
  if (!slips.empty())
    answer.cautions.emplace_back(
        "Settle it with an instrument that slips by another step: a rule for 0.1 in and more, a caliper for "
        "a turn of the thimble.");
  return answer;
}

}  // namespace sparewright::answers
