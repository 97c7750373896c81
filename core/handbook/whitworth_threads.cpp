#include "core/handbook/whitworth_threads.hpp"

#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/handbook/thread_text.hpp"
#include "core/quantity/display.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr StandardWhitworthThread kSizes[] = {
#include "generated/core/handbook/whitworth_sizes.inc"
};

constexpr Source kBa{"BS 93, British Association threads: pitch 0.9^n mm, diameter 6 P^(6/5) mm", "",
                     Basis::kFromMemory};

std::string thread_name(const StandardWhitworthThread& row) {
  return fmt::format("{}-{} {}", row.size, row.threads_per_inch, name_of(row.series));
}

std::string threads_of_size(std::string_view size) {
  std::string out;
  for (const StandardWhitworthThread& row : kSizes) {
    if (row.size == size) out += (out.empty() ? "" : ", ") + thread_name(row);
  }
  return out;
}

base::Result<WhitworthThread> no_such_thread(std::string_view typed, std::string_view size = {}) {
  std::string accepted = threads_of_size(size);
  if (accepted.empty()) accepted = "a thread such as 1/4-20 BSW, 1/4-26 BSF, 1/4-26 BSC or 3/8-24 WHIT";
  return unknown(typed, "British thread", names_of(kSizes, thread_name), accepted);
}

std::optional<WhitworthSeries> take_series(InchThreadText& text) {
  constexpr std::array<std::pair<std::string_view, WhitworthSeries>, 9> kWords{
      {{"bsw", WhitworthSeries::kBsw},
       {"bsf", WhitworthSeries::kBsf},
       {"bsc", WhitworthSeries::kBsc},
       {"cei", WhitworthSeries::kBsc},
       {"cycle", WhitworthSeries::kBsc},
       {"whitworth", WhitworthSeries::kWhit},
       {"whit", WhitworthSeries::kWhit},
       {"whit.", WhitworthSeries::kWhit},
       {"w", WhitworthSeries::kWhit}}};
  for (const auto& [word, series] : kWords) {
    if (text.take(word)) return series;
  }
  return std::nullopt;
}

const StandardWhitworthThread* row_of(std::string_view size, WhitworthSeries series,
                                      double threads_per_inch) {
  for (const StandardWhitworthThread& row : kSizes) {
    if (row.size == size && row.series == series &&
        (threads_per_inch == 0.0 || row.threads_per_inch == threads_per_inch))
      return &row;
  }
  return nullptr;
}

// The series and the threads per inch; false where there is no such thread.
bool settle(WhitworthThread& thread) {
  const bool any = thread.series == WhitworthSeries::kWhit;
  const auto* row = row_of(thread.size, any ? WhitworthSeries::kBsw : thread.series, thread.threads_per_inch);
  if (row != nullptr) {
    if (any) thread.assumed.emplace_back("Whitworth read as BSW, the coarse series");
    thread.series = row->series;
    if (thread.threads_per_inch == 0.0)
      thread.assumed.push_back(fmt::format("no pitch written: {} per inch, that of {}", row->threads_per_inch,
                                           name_of(row->series)));
    thread.threads_per_inch = row->threads_per_inch;
    return true;
  }
  constexpr double kCoarsest = 2.0;
  constexpr double kFinest = 80.0;
  const double major = thread.major.in(unit::inch);
  return any && thread.threads_per_inch >= kCoarsest && thread.threads_per_inch <= kFinest &&
         1.280654 / thread.threads_per_inch < 0.5 * major;
}

// Two figures: 0.81, 4.7, 0.28, 1.3.
double two_figures(double value) {
  const int places = 1 - static_cast<int>(std::floor(std::log10(value)));
  return quantity::rounded(value, places);
}

ThreadShape rounded_shape(std::string name, ThreadForm form, Diameter major, Length pitch, bool left_hand,
                          const Source& source) {
  const Length depth = profile_of(form).screw.depth * pitch;
  return {std::move(name),
          form,
          major,
          as_diameter(across(major) - depth),
          as_diameter(across(major) - 2.0 * depth),
          pitch,
          1,
          left_hand,
          false,
          source};
}

}  // namespace

std::string_view name_of(WhitworthSeries series) {
  constexpr std::array<std::string_view, 4> kNames{"BSW", "BSF", "BSC", "WHIT"};
  return kNames.at(static_cast<std::size_t>(series));
}

Length WhitworthThread::pitch() const {
  return Length::of(1.0 / threads_per_inch, unit::inch);
}

base::Result<WhitworthThread> read_whitworth_thread(std::string_view typed) {
  auto text = read_inch_thread_text(typed);
  if (!text) return no_such_thread(typed);
  const auto series = take_series(*text);
  if (!series) return no_such_thread(typed, text->size.name);
  WhitworthThread thread;
  thread.size = text->size.name;
  thread.major = text->size.nominal;
  thread.threads_per_inch = text->threads_per_inch;
  thread.series = *series;
  thread.left_hand = text->take("lh");
  if (!thread.left_hand) text->take("rh");
  if (!text->words.empty() || !settle(thread)) return no_such_thread(typed, thread.size);
  return thread;
}

std::string to_string(const WhitworthThread& thread) {
  return fmt::format("{}-{} {}{}", thread.size, thread.threads_per_inch, name_of(thread.series),
                     thread.left_hand ? "-LH" : "");
}

ThreadShape shape_of(const WhitworthThread& thread) {
  const bool cycle = thread.series == WhitworthSeries::kBsc;
  const ThreadForm form = cycle ? ThreadForm::kBritishCycle : ThreadForm::kWhitworth;
  return rounded_shape(to_string(thread), form, thread.major, thread.pitch(), thread.left_hand,
                       profile_of(form).source);
}

std::span<const StandardWhitworthThread> standard_whitworth_threads() {
  return kSizes;
}

Diameter AssociationThread::major() const {
  return Diameter::of(two_figures(6.0 * std::pow(0.9, 1.2 * number)), unit::millimetre);
}

Length AssociationThread::pitch() const {
  return Length::of(two_figures(std::pow(0.9, number)), unit::millimetre);
}

base::Result<AssociationThread> read_association_thread(std::string_view typed) {
  std::string text;
  for (const char c : folded(typed)) {
    if (c == '-' && text.empty()) break;
    if (c != ' ' && c != '.' && c != '#' && c != '-') text += c;
  }
  AssociationThread thread;
  if (text.ends_with("lh")) {
    thread.left_hand = true;
    text.resize(text.size() - 2);
  }
  std::string_view rest = text;
  if (rest.starts_with("no")) rest.remove_prefix(2);
  const bool before = rest.starts_with("ba");
  if (before) rest.remove_prefix(2);
  const auto number = digits_at(rest, kFinestAssociation);
  if (number) rest.remove_prefix(number->taken);
  if (!number || rest != (before ? "" : "ba"))
    return unknown(typed, "British Association thread", {}, "0 BA to 25 BA, such as 2 BA");
  thread.number = number->value;
  return thread;
}

std::string to_string(const AssociationThread& thread) {
  return fmt::format("{} BA{}", thread.number, thread.left_hand ? "-LH" : "");
}

ThreadShape shape_of(const AssociationThread& thread) {
  return rounded_shape(to_string(thread), ThreadForm::kBritishAssociation, thread.major(), thread.pitch(),
                       thread.left_hand, kBa);
}

}  // namespace sparewright::handbook
