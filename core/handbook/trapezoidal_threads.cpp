#include "core/handbook/trapezoidal_threads.hpp"

#include <charconv>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/quantity/display.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr StandardTrapezoidalThread kSizes[] = {
#include "generated/core/handbook/trapezoidal_sizes.inc"
};

struct ByPitch {
  Length pitch;
  Length clearance;
  Length e;
  Length major;
  Length minor;
  Source source;
};
constexpr ByPitch kByPitch[] = {
#include "generated/core/handbook/trapezoidal_clearances.inc"
};

struct PitchTolerance {
  Length pitch;
  Diameter over;
  Diameter up_to;
  Length screw;
  Length hole;
  Source source;
};
constexpr PitchTolerance kPitchTolerances[] = {
#include "generated/core/handbook/trapezoidal_tolerances.inc"
};

constexpr Source kBasic{"ISO 2904 (DIN 103), trapezoidal threads, basic sizes", "", Basis::kFromMemory};

double mm(Length length) {
  return length.in(unit::millimetre);
}

std::string name_of(const StandardTrapezoidalThread& row) {
  return fmt::format("Tr{}x{}", row.nominal.in(unit::millimetre), mm(row.pitch));
}

base::Result<TrapezoidalThread> no_such_thread(std::string_view typed) {
  return unknown(typed, "trapezoidal thread", names_of(kSizes, name_of),
                 "a thread such as Tr 20x4, Tr20x4-7e or Tr 20x8P4");
}

bool same(double a, double b) {
  return std::abs(a - b) < kSizeSlackMm;
}

std::optional<double> take_number(std::string_view& text) {
  text = quantity::trimmed(text);
  double value = 0.0;
  const auto [rest, error] =
      std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
  if (error != std::errc{} || !quantity::is_digit(text.front())) return std::nullopt;
  text.remove_prefix(static_cast<std::size_t>(rest - text.data()));
  return value;
}

bool take(std::string_view& text, std::string_view what) {
  const std::string_view rest = quantity::trimmed(text);
  if (folded(rest.substr(0, what.size())) != what) return false;
  text = rest.substr(what.size());
  return true;
}

bool take_times(std::string_view& text) {
  for (const std::string_view times : {"x", "×", "*"}) {
    if (take(text, times)) return true;
  }
  return false;
}

// (P4), P4: the pitch of a thread of several starts, whose lead stands before it.
bool take_starts(std::string_view& text, TrapezoidalThread& thread) {
  std::string_view rest = text;
  const bool bracket = take(rest, "(");
  if (!take(rest, "p")) return true;
  const auto pitch = take_number(rest);
  if (!pitch || *pitch <= 0.0 || (bracket && !take(rest, ")"))) return false;
  const double starts = mm(thread.pitch) / *pitch;
  if (!(starts <= 12.0) || !same(starts, std::round(starts)) || starts < 1.0) return false;
  thread.starts = static_cast<int>(std::lround(starts));
  thread.pitch = Length::of(*pitch, unit::millimetre);
  text = rest;
  return true;
}

// Class and hand behind dashes or blanks, each once.
bool take_rest(std::string_view text, TrapezoidalThread& thread) {
  bool hand_written = false;
  for (text = quantity::trimmed(text); !text.empty(); text = quantity::trimmed(text)) {
    if (const std::size_t dash = quantity::minus_at(text); dash > 0) {
      text.remove_prefix(dash);
      continue;
    }
    const std::string_view word = text.substr(0, text.find_first_of("- \t"));
    const std::string hand = folded(word);
    const bool is_class = word.size() == 2 && quantity::is_digit(word[0]) &&
                          std::string_view("ceH").find(word[1]) != std::string_view::npos;
    if ((hand == "lh" || hand == "rh") && !hand_written) {
      hand_written = true;
      thread.left_hand = hand == "lh";
    } else if (is_class && thread.thread_class.empty()) {
      thread.thread_class = word;
    } else {
      return false;
    }
    text.remove_prefix(word.size());
  }
  return true;
}

bool is_possible(const TrapezoidalThread& thread) {
  const double major = thread.major.in(unit::millimetre);
  const double pitch = mm(thread.pitch);
  return major >= 6.0 && major <= 300.0 && pitch >= 1.5 && pitch <= 16.0 && major - pitch > 0.5 * major;
}

const StandardTrapezoidalThread* preferred_of(Diameter major) {
  for (const StandardTrapezoidalThread& row : kSizes) {
    if (same(row.nominal.base(), major.base())) return &row;
  }
  return nullptr;
}

bool is_standard(const TrapezoidalThread& thread) {
  for (const StandardTrapezoidalThread& row : kSizes) {
    if (same(row.nominal.base(), thread.major.base()) && same(mm(row.pitch), mm(thread.pitch))) return true;
  }
  return false;
}

// A class other than the one tabled.
base::Result<PitchTolerance> pitch_tolerance(const TrapezoidalThread& thread, std::string_view tabled) {
  const bool screw = tabled == "7e";
  const bool of_this_side = !thread.thread_class.empty() && (thread.thread_class[1] != 'H') == screw;
  if (of_this_side && thread.thread_class != tabled)
    return not_tabled("class " + thread.thread_class, to_string(thread), "7e for screws and 7H for holes");
  std::string pitches;
  for (const PitchTolerance& row : kPitchTolerances) {
    if (!in_range<Diameter>(thread.major, row.over, row.up_to)) continue;
    if (same(mm(row.pitch), mm(thread.pitch))) return row;
    pitches += fmt::format("{}{}", pitches.empty() ? "pitches " : ", ", mm(row.pitch));
  }
  return not_tabled(
      "the tolerance 7e/7H", to_string(thread),
      pitches.empty() ? "trapezoidal threads over 5.6 up to 180 mm" : pitches + " mm on this diameter");
}

// Of the pitch, or of the next one below that is tabled.
const ByPitch& by_pitch(Length pitch) {
  const ByPitch* found = &kByPitch[0];
  for (const ByPitch& row : kByPitch) {
    if (mm(row.pitch) <= mm(pitch) + kSizeSlackMm) found = &row;
  }
  return *found;
}

DiameterRange mm_range(double low, double high) {
  const auto at = [](double count) { return Diameter::of(quantity::rounded(count, 3), unit::millimetre); };
  return {at(low), at(high)};
}

}  // namespace

base::Result<TrapezoidalThread> read_trapezoidal_thread(std::string_view typed) {
  std::string_view text = quantity::trimmed(typed);
  if (!take(text, "tr")) return no_such_thread(typed);
  const auto major = take_number(text);
  if (!major || *major > 300.0) return no_such_thread(typed);
  TrapezoidalThread thread;
  thread.major = Diameter::of(*major, unit::millimetre);
  const StandardTrapezoidalThread* preferred = preferred_of(thread.major);
  if (take_times(text)) {
    const auto lead = take_number(text);
    if (!lead || *lead > 300.0) return no_such_thread(typed);
    thread.pitch = Length::of(*lead, unit::millimetre);
    if (!take_starts(text, thread)) return no_such_thread(typed);
  } else if (preferred != nullptr) {
    thread.pitch = preferred->pitch;
    thread.assumed.push_back(fmt::format("no pitch written: {} mm, the preferred one", mm(thread.pitch)));
  }
  if (!take_rest(text, thread) || !is_possible(thread)) return no_such_thread(typed);
  if (!is_standard(thread))
    thread.assumed.push_back(preferred == nullptr
                                 ? "no standard trapezoidal thread has this size"
                                 : "the preferred thread of this size is " + name_of(*preferred));
  return thread;
}

std::string to_string(const TrapezoidalThread& thread) {
  std::string out =
      fmt::format("Tr{}x{}", thread.major.in(unit::millimetre), mm(thread.starts * thread.pitch));
  if (thread.starts > 1) out += fmt::format("P{}", mm(thread.pitch));
  if (!thread.thread_class.empty()) out += "-" + thread.thread_class;
  if (thread.left_hand) out += "-LH";
  return out;
}

BasicThread basic_sizes(const TrapezoidalThread& thread) {
  const Length major = across(thread.major);
  return {thread.major, as_diameter(major - 0.5 * thread.pitch), as_diameter(major - thread.pitch), kBasic};
}

ThreadShape shape_of(const TrapezoidalThread& thread) {
  const BasicThread basic = basic_sizes(thread);
  return {to_string(thread), ThreadForm::kTrapezoidal, basic.major, basic.pitch, basic.minor, thread.pitch,
          thread.starts,     thread.left_hand,         false,       basic.source};
}

Length root_clearance(const TrapezoidalThread& thread) {
  return by_pitch(thread.pitch).clearance;
}

base::Result<PowerThreadLimits> screw_limits(const TrapezoidalThread& thread) {
  const auto tolerance = pitch_tolerance(thread, "7e");
  if (!tolerance) return tl::unexpected(tolerance.error());
  const ByPitch& row = by_pitch(thread.pitch);
  const double major = thread.major.in(unit::millimetre);
  const double pitch = basic_sizes(thread).pitch.in(unit::millimetre)-mm(row.e);
  const double minor = major - mm(thread.pitch) - 2.0 * mm(row.clearance);
  const double minor_tolerance = 1.25 * mm(tolerance->screw) + mm(row.e);
  return PowerThreadLimits{"7e", mm_range(major - mm(row.major), major),
                           mm_range(pitch - mm(tolerance->screw), pitch),
                           mm_range(minor - minor_tolerance, minor), tolerance->source};
}

base::Result<PowerThreadLimits> hole_limits(const TrapezoidalThread& thread) {
  const auto tolerance = pitch_tolerance(thread, "7H");
  if (!tolerance) return tl::unexpected(tolerance.error());
  const ByPitch& row = by_pitch(thread.pitch);
  const BasicThread basic = basic_sizes(thread);
  const double major = thread.major.in(unit::millimetre) + 2.0 * mm(row.clearance);
  const double pitch = basic.pitch.in(unit::millimetre);
  const double minor = basic.minor.in(unit::millimetre);
  return PowerThreadLimits{"7H", mm_range(major, major), mm_range(pitch, pitch + mm(tolerance->hole)),
                           mm_range(minor, minor + mm(row.minor)), tolerance->source};
}

std::span<const StandardTrapezoidalThread> standard_trapezoidal_threads() {
  return kSizes;
}

}  // namespace sparewright::handbook
