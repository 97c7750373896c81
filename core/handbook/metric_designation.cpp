// How a metric thread's designation is read and written.
#include <charconv>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/handbook/metric_threads.hpp"
#include "core/handbook/thread_formulas.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr StandardMetricThread kCoarsePitches[] = {
#include "generated/core/handbook/metric_coarse.inc"
};
constexpr StandardMetricThread kFinePitches[] = {
#include "generated/core/handbook/metric_fine.inc"
};

constexpr double kLargestMm = 300.0;

std::string pitch_name(const StandardMetricThread& row) {
  return fmt::format("M{}x{}", row.nominal.in(unit::millimetre), row.pitch.in(unit::millimetre));
}

// "M8x1.25, M8x1, M8x0.75": the threads of that size; the examples where there is none.
std::string threads_of_size(std::optional<double> major_mm) {
  std::string out;
  const auto add = [&](std::span<const StandardMetricThread> rows) {
    for (const StandardMetricThread& row : rows) {
      if (!major_mm || std::abs(row.nominal.in(unit::millimetre) - *major_mm) > kSizeSlackMm) continue;
      out += (out.empty() ? "" : ", ") + pitch_name(row);
    }
  };
  add(kCoarsePitches);
  add(kFinePitches);
  return out.empty() ? "a thread such as M8, M8x1.25, M10x1-6g or M8x1-LH" : out;
}

base::Result<MetricThread> no_such_metric_thread(std::string_view text, std::optional<double> major_mm = {}) {
  return unknown(text, "metric thread", names_of(kCoarsePitches, pitch_name), threads_of_size(major_mm));
}

// A decimal at the start of text, taken off it; none where there is none or it is 0 or over 300 mm.
std::optional<double> take_mm(std::string_view& text) {
  double mm = 0.0;
  const auto [rest, error] =
      std::from_chars(text.data(), text.data() + text.size(), mm, std::chars_format::fixed);
  if (error != std::errc{} || !quantity::is_digit(text.front()) || mm <= 0.0 || mm > kLargestMm)
    return std::nullopt;
  text.remove_prefix(static_cast<std::size_t>(rest - text.data()));
  return mm;
}

// Takes an x or the sign of multiplication, with the blanks around it.
bool take_times(std::string_view& text) {
  const std::string_view rest = quantity::trimmed(text);
  for (const std::string_view times : {"x", "X", "×", "*"}) {
    if (!rest.starts_with(times)) continue;
    text = quantity::trimmed(rest.substr(times.size()));
    return true;
  }
  return false;
}

// "6g" at the start of text.
std::optional<MetricZone> zone_at(std::string_view text) {
  if (text.size() < 2 || text[0] < '3' || text[0] > '9') return std::nullopt;
  if (std::string_view("efghGH").find(text[1]) == std::string_view::npos) return std::nullopt;
  return MetricZone{text[0] - '0', text[1]};
}

std::string to_string(const MetricZone& zone) {
  return fmt::format("{}{}", zone.grade, zone.position);
}

// The rest, words parted by dashes or blanks: class and hand, each once.
bool read_rest(std::string_view text, MetricThread& thread) {
  bool hand_written = false;
  while (!text.empty()) {
    if (const std::size_t gap = quantity::blanks_at(text) + quantity::minus_at(text); gap > 0) {
      text.remove_prefix(gap);
      continue;
    }
    const std::string_view word = text.substr(0, text.find_first_of("- \t"));
    if (const std::string hand = folded(word); hand == "lh" || hand == "rh") {
      if (hand_written) return false;
      hand_written = true;
      thread.left_hand = hand == "lh";
    } else if (read_metric_class(word) && thread.thread_class.empty()) {
      thread.thread_class = word;
    } else {
      return false;
    }
    text.remove_prefix(word.size());
  }
  return true;
}

base::Result<Length> coarse_pitch(Diameter major) {
  for (const StandardMetricThread& row : kCoarsePitches) {
    if (std::abs(row.nominal.base() - major.base()) < kSizeSlackMm) return row.pitch;
  }
  return not_tabled_among("the coarse pitch", fmt::format("M{}", major.in(unit::millimetre)),
                          names_of(kCoarsePitches, pitch_name));
}

}  // namespace

base::Result<MetricThread> read_metric_thread(std::string_view text) {
  const std::string_view typed = quantity::trimmed(text);
  if (!typed.starts_with('M') && !typed.starts_with('m')) return no_such_metric_thread(typed);
  std::string_view rest = quantity::trimmed(typed.substr(1));
  const auto major_mm = take_mm(rest);
  if (!major_mm) return no_such_metric_thread(typed);

  MetricThread thread;
  thread.major = Diameter::of(*major_mm, unit::millimetre);
  if (take_times(rest)) {
    const auto pitch_mm = take_mm(rest);
    if (!pitch_mm || internal_minor_mm(*major_mm, *pitch_mm) <= 0.0)
      return no_such_metric_thread(typed, major_mm);
    thread.pitch = Length::of(*pitch_mm, unit::millimetre);
  }
  if (!read_rest(rest, thread)) return no_such_metric_thread(typed, major_mm);
  if (thread.pitch == Length()) {
    const auto coarse = coarse_pitch(thread.major);
    if (!coarse) return tl::unexpected(coarse.error());
    thread.pitch = *coarse;
    thread.assumed.push_back(
        fmt::format("no pitch written: coarse, {} mm", thread.pitch.in(unit::millimetre)));
  }
  return thread;
}

std::span<const StandardMetricThread> coarse_metric_threads() {
  return kCoarsePitches;
}
std::span<const StandardMetricThread> fine_metric_threads() {
  return kFinePitches;
}

base::Result<MetricClass> read_metric_class(std::string_view text) {
  const std::string_view typed = quantity::trimmed(text);
  const auto first = zone_at(typed);
  const auto second = typed.size() == 4 ? zone_at(typed.substr(2)) : first;
  if (first && second && (typed.size() == 2 || typed.size() == 4)) {
    const MetricClass both{*first, *second};
    if (both.is_screw() == MetricClass{*second, *first}.is_screw()) return both;
  }
  return unknown(typed, "class of a metric thread", {}, "6g, 4h, 5g6g for a screw; 6H, 5H, 6G for a hole");
}

std::string to_string(const MetricClass& thread_class) {
  std::string out = to_string(thread_class.pitch);
  if (thread_class.crest != thread_class.pitch) out += to_string(thread_class.crest);
  return out;
}

ChosenMetricClass screw_class(const MetricThread& thread) {
  const auto written = read_metric_class(thread.thread_class);
  if (written && written->is_screw()) return {*written, {}};
  return {kClass6g, "no class of a screw written: 6g, the usual one"};
}

ChosenMetricClass hole_class(const MetricThread& thread) {
  const auto written = read_metric_class(thread.thread_class);
  if (written && !written->is_screw()) return {*written, {}};
  return {kClass6h, "no class of a hole written: 6H, the usual one"};
}

std::string to_string(const MetricThread& thread) {
  std::string out =
      fmt::format("M{}x{}", thread.major.in(unit::millimetre), thread.pitch.in(unit::millimetre));
  if (!thread.thread_class.empty()) out += "-" + thread.thread_class;
  if (thread.left_hand) out += "-LH";
  return out;
}

}  // namespace sparewright::handbook
