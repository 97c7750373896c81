// Mutated texts through every reader of core/quantity, for every kind and system: nothing crashes, a failure
// points into the text and says something, and what is accepted is accepted again with the same value.
#include <array>
#include <cmath>
#include <cstdint>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/quantity/tolerance.hpp"

namespace sparewright::quantity {
namespace {

// Texts from which mutations start. What once broke a reader is added here and stays.
constexpr std::array kCorpus{
    "1.375 in",
    "1-3/8",
    "1 3/8\"",
    "3/8",
    ".0005",
    "34.9 mm",
    "5 thou",
    "2 ft 3-1/2 in",
    "3' 2\"",
    "30° 15' 30\"",
    "#7",
    "letter F",
    "H7",
    "RC4",
    "1/2-13 UNC",
    "M8x1.25",
    "±0.002",
    "+0.000/-0.001",
    "+0.0010 to +0.0020",
    "0.8750-0.8758",
    "0.8750 to 0.8758 in",
    "0.7500 -0.0002/-0.0004",
    "25 H7",
    "25 0/-0.1",
    "+0.2/0",
    "general",
    "68 degF",
    "36 ksi",
    "20 ft lbf",
    "660 rpm",
    "0.003 in/rev",
    "7850 kg/m³",
    "1,375",
    "1½",
    "5 mil",
    "1 - 3/8",
    "\u22120.5",
    "1\u00A03/8",
    "1e5",
    "12345678901234567890",
    "0/-1/64",
    "+0.5 in/0",
    "0.",
    "1.375in.",
    "/",
    "to",
    " to ",
    "+ / -",
    "± ±",
    "0/0",
    "-0",
    "1/0-1",
    "\xC2",
    "\xE2\x80",
    "1\xFF",
    "",
};

constexpr std::array kPieces{
    "0",      "1",      "9",      ".",    ",",    "/",    "-",
    "+",      " ",      "\t",     "\n",   "\"",   "'",    "''",
    "in",     "mm",     "ft",     "deg",  "°",    "±",    "to",
    " to ",   "#",      "M",      "x",    "H7",   "e",    "\u2212",
    "\u2013", "\u00A0", "\u2044", "½",    "²",    "_",    "(",
    "\\",     "%",      "\xC2",   "\xE2", "\x80", "\x01", "999999999999999",
    "1/64",   "0.000",
};

// SplitMix64 (Steele, Lea and Flood 2014), so that the texts are the same everywhere.
class Random {
 public:
  explicit Random(std::uint64_t seed) : state_(seed) {}
  std::size_t below(std::size_t n) {
    state_ += 0x9E3779B97F4A7C15U;
    std::uint64_t z = state_;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
    return static_cast<std::size_t>((z ^ (z >> 31U)) % n);
  }

 private:
  std::uint64_t state_;
};

// A number in some unit of the kind.
std::string sound(Random& random, Kind kind) {
  constexpr std::array kNumbers{"7.25", "1-3/8", "0", "-0.5", "24 3/4", ".003"};
  const auto units = units_of(kind);
  const auto& spellings = units[random.below(units.size())].spellings;
  return std::string(kNumbers.at(random.below(kNumbers.size()))) + " " +
         std::string(spellings[random.below(spellings.size())]);
}

std::string mutated(Random& random, Kind kind) {
  std::string text = random.below(3) == 0 ? sound(random, kind) : kCorpus.at(random.below(kCorpus.size()));
  for (std::size_t n = random.below(4); n > 0; --n) {
    const std::size_t at = random.below(text.size() + 1);
    switch (random.below(4)) {
      case 0:
        text.insert(at, kPieces.at(random.below(kPieces.size())));
        break;
      case 1:
        text.erase(at, 1 + random.below(3));
        break;
      case 2:
        text.insert(at, kCorpus.at(random.below(kCorpus.size())));
        break;
      default:
        if (at < text.size()) text[at] = static_cast<char>(random.below(256));
    }
  }
  return text;
}

struct Tally {
  int accepted = 0;
  int refused = 0;
};

void check_failure(const base::Failure& f, std::string_view text) {
  ASSERT_TRUE(f.span) << text;
  ASSERT_LE(f.span->offset, text.size()) << text;
  ASSERT_LE(f.span->end(), text.size()) << text;
  ASSERT_FALSE(base::report(f).empty());
  ASSERT_EQ(f.code == base::Code::kTwoReadings && f.accepted.empty(), false)
      << "both readings are named: " << text;
}

void check_typed(const Typed& t, std::string_view text) {
  ASSERT_TRUE(std::isfinite(t.base)) << text;
  ASSERT_FALSE(t.base == 0.0 && std::signbit(t.base)) << text;
  ASSERT_EQ(t.unit.dimension, dimension_of(t.kind)) << text;
}

class Reading : public testing::TestWithParam<int> {
 protected:
  static constexpr int kTexts = 500;
  static constexpr std::uint64_t kSeed = 25'400;

  [[nodiscard]] static Kind kind() { return static_cast<Kind>(GetParam()); }

  // Calls each(text, system) for every text and system.
  template <typename Each>
  static void for_texts(Each each) {
    SCOPED_TRACE(testing::Message() << "seed " << kSeed << " + " << GetParam());
    Random random(kSeed + static_cast<std::uint64_t>(GetParam()));
    for (int i = 0; i < kTexts; ++i) {
      const std::string text = mutated(random, kind());
      for (const std::optional<UnitSystem> system :
           {std::optional<UnitSystem>{}, std::optional(UnitSystem::kInch),
            std::optional(UnitSystem::kMetric)}) {
        each(text, system);
        if (testing::Test::HasFatalFailure()) return;
      }
    }
  }

  static void expect_both(const Tally& tally) {
    EXPECT_GT(tally.accepted, kTexts / 100) << "too few texts were read";
    EXPECT_GT(tally.refused, kTexts / 100) << "too few texts were refused";
  }
};

TEST_P(Reading, Numbers) {
  Tally tally;
  for_texts([&](const std::string& text, std::optional<UnitSystem> system) {
    const auto read = read_number(text, kind(), system);
    if (!read) {
      ++tally.refused;
      return check_failure(read.error(), text);
    }
    ++tally.accepted;
    check_typed(*read, text);
    const auto again = read_number(read->typed, kind(), system);
    ASSERT_TRUE(again) << text;
    ASSERT_EQ(again->base, read->base) << text;
    ASSERT_EQ(again->typed, read->typed) << text;
    if (read->unit_given) {
      ASSERT_EQ(read_number(text, kind(), std::nullopt)->base, read->base) << text;
    }
  });
  expect_both(tally);
}

TEST_P(Reading, Prefixes) {
  Tally tally;
  for_texts([&](const std::string& text, std::optional<UnitSystem> system) {
    const auto read = read_number_prefix(text, kind(), system);
    if (!read) {
      ++tally.refused;
      return check_failure(read.error(), text);
    }
    ++tally.accepted;
    check_typed(read->number, text);
    ASSERT_LE(read->taken, text.size());
    ASSERT_GT(read->taken, 0U);
    const auto again = read_number(text.substr(0, read->taken), kind(), system);
    ASSERT_TRUE(again) << text;
    ASSERT_EQ(again->base, read->number.base) << text;
  });
  expect_both(tally);
}

TEST_P(Reading, Sizes) {
  Tally tally;
  for_texts([&](const std::string& text, std::optional<UnitSystem> system) {
    const auto read = read_size(text, kind(), system);
    if (!read) {
      ++tally.refused;
      return check_failure(read.error(), text);
    }
    ++tally.accepted;
    if (const auto* d = std::get_if<Designation>(&*read)) {
      ASSERT_FALSE(d->name.empty()) << text;
      ASSERT_EQ(std::get<Designation>(*read_size(d->typed, kind(), system)), *d) << text;
    } else {
      check_typed(std::get<Typed>(*read), text);
      ASSERT_EQ(read_number(text, kind(), system)->base, std::get<Typed>(*read).base) << text;
    }
  });
  expect_both(tally);
}

void check_tolerance(const Tolerance& tolerance, std::string_view text) {
  if (const auto* d = std::get_if<Deviations>(&tolerance.form)) {
    check_typed(d->lower, text);
    check_typed(d->upper, text);
    ASSERT_LE(d->lower.base, d->upper.base) << text;
  } else if (const auto* w = std::get_if<WrittenLimits>(&tolerance.form)) {
    check_typed(w->low, text);
    check_typed(w->high, text);
    ASSERT_LE(w->low.base, w->high.base) << text;
  }
}

// The numbers of two readings of a tolerance, to compare them.
std::vector<double> numbers(const Tolerance& tolerance) {
  if (const auto* d = std::get_if<Deviations>(&tolerance.form)) return {d->lower.base, d->upper.base};
  if (const auto* w = std::get_if<WrittenLimits>(&tolerance.form)) return {w->low.base, w->high.base};
  return {};
}

TEST_P(Reading, Tolerances) {
  Tally tally;
  for_texts([&](const std::string& text, std::optional<UnitSystem> system) {
    const auto read = read_tolerance(text, kind(), system);
    if (!read) {
      ++tally.refused;
      return check_failure(read.error(), text);
    }
    ++tally.accepted;
    check_tolerance(*read, text);
    const auto again = read_tolerance(read->typed, kind(), system);
    ASSERT_TRUE(again) << text;
    ASSERT_EQ(numbers(*again), numbers(*read)) << text;
    ASSERT_EQ(again->form.index(), read->form.index()) << text;
  });
  expect_both(tally);
}

TEST_P(Reading, ToleranedSizes) {
  Tally tally;
  for_texts([&](const std::string& text, std::optional<UnitSystem> system) {
    const auto read = read_sized(text, kind(), system);
    if (!read) {
      ++tally.refused;
      return check_failure(read.error(), text);
    }
    ++tally.accepted;
    check_typed(read->nominal, text);
    check_tolerance(read->tolerance, text);
    const auto again = read_sized(read->typed, kind(), system);
    ASSERT_TRUE(again) << text;
    ASSERT_EQ(again->nominal.base, read->nominal.base) << text;
    ASSERT_EQ(numbers(again->tolerance), numbers(read->tolerance)) << text;
  });
  expect_both(tally);
}

INSTANTIATE_TEST_SUITE_P(EveryKind, Reading, testing::Range(0, kKinds),
                         [](const testing::TestParamInfo<int>& tested) {
                           std::string name(code_name(static_cast<Kind>(tested.param)));
                           for (char& c : name) {
                             if (c == ' ') c = '_';
                           }
                           return name;
                         });

template <typename Read>
void expect_refused(const Read& read, std::string_view text) {
  ASSERT_FALSE(read.has_value()) << text.substr(0, 20);
  check_failure(read.error(), text);
}

// Long texts of one piece over and over: refused, and not in a time that grows with the square of their
// length (a reader that did would take minutes here, and the test program would be stopped).
TEST(ReadingLongTexts, RefusesThem) {
  constexpr std::size_t kLong = 100'000;
  for (const char* piece :
       {"+", "-", "1", " 1", "/", "1/2 ", "to ", " to ", "+0 ", "'", "3' ", "\u00A0+", "H7", "#"}) {
    std::string text = "1";
    while (text.size() < kLong)
      text += piece;
    for (const Kind kind : {Kind::kLength, Kind::kAngle}) {
      expect_refused(read_number(text, kind, UnitSystem::kInch), text);
      expect_refused(read_size(text, kind, UnitSystem::kInch), text);
      expect_refused(read_tolerance(text, kind, UnitSystem::kInch), text);
      expect_refused(read_sized(text, kind, UnitSystem::kInch), text);
    }
  }
}

}  // namespace
}  // namespace sparewright::quantity
