// How a Unified thread's designation is read and written.
#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/handbook/inch_size.hpp"
#include "core/handbook/lookup.hpp"
#include "core/handbook/thread_formulas.hpp"
#include "core/handbook/thread_text.hpp"
#include "core/handbook/unified_threads.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
namespace unit = quantity::unit;

constexpr StandardThread kStandardThreads[] = {
#include "generated/core/handbook/unified_series.inc"
};

constexpr std::string_view kThreadExamples =
    "a thread such as 1/4-20, 1/4-20 UNC-2B, #10-24 or 1-1/8-7 UNC-2A-LH";

std::string thread_name(const StandardThread& thread) {
  return fmt::format("{}-{} {}", thread.size, thread.threads_per_inch, name_of(thread.series));
}

base::Result<UnifiedThread> no_such_thread(std::string_view text,
                                           std::string_view accepted = kThreadExamples) {
  return unknown(text, "Unified thread", names_of(kStandardThreads, thread_name), accepted);
}

const StandardThread* standard_thread(std::string_view size, double threads_per_inch) {
  for (const StandardThread& thread : kStandardThreads) {
    if (thread.size == size && thread.threads_per_inch == threads_per_inch) return &thread;
  }
  return nullptr;
}

// "1/4-20 UNC, 1/4-28 UNF": for the accepted line.
std::string standard_threads_of(std::string_view size) {
  std::string out;
  for (const StandardThread& thread : kStandardThreads) {
    if (thread.size == size) out += (out.empty() ? "" : ", ") + thread_name(thread);
  }
  return out;
}

// What follows the size and the threads per inch: series, class, hand, in that order or any other, each once.
struct Tail {
  std::optional<UnifiedSeries> series;
  std::optional<UnifiedClass> thread_class;
  std::optional<bool> left_hand;
};

bool take_series(std::string_view word, Tail& tail) {
  constexpr std::array<std::pair<std::string_view, UnifiedSeries>, 7> kWords{{{"unc", UnifiedSeries::kUnc},
                                                                              {"unf", UnifiedSeries::kUnf},
                                                                              {"unef", UnifiedSeries::kUnef},
                                                                              {"un", UnifiedSeries::kUn},
                                                                              {"uns", UnifiedSeries::kUns},
                                                                              {"nc", UnifiedSeries::kUnc},
                                                                              {"nf", UnifiedSeries::kUnf}}};
  for (const auto& [spelling, series] : kWords) {
    if (word != spelling) continue;
    if (tail.series) return false;
    tail.series = series;
    return true;
  }
  return false;
}

bool take_class(std::string_view word, Tail& tail) {
  for (const UnifiedClass one : {UnifiedClass::k1A, UnifiedClass::k2A, UnifiedClass::k3A, UnifiedClass::k1B,
                                 UnifiedClass::k2B, UnifiedClass::k3B}) {
    if (word != folded(name_of(one))) continue;
    if (tail.thread_class) return false;
    tail.thread_class = one;
    return true;
  }
  return false;
}

bool take_hand(std::string_view word, Tail& tail) {
  if ((word != "lh" && word != "rh") || tail.left_hand) return false;
  tail.left_hand = word == "lh";
  return true;
}

std::size_t separator_at(std::string_view text) {
  const std::size_t blanks = quantity::blanks_at(text);
  return blanks > 0 ? blanks : quantity::minus_at(text);
}

std::optional<Tail> read_tail(std::string_view text) {
  Tail tail;
  while (!text.empty()) {
    if (const std::size_t gap = separator_at(text); gap > 0) {
      text.remove_prefix(gap);
      continue;
    }
    std::size_t end = 0;
    while (end < text.size() && separator_at(text.substr(end)) == 0)
      ++end;
    const std::string word = folded(text.substr(0, end));
    if (!take_series(word, tail) && !take_class(word, tail) && !take_hand(word, tail)) return std::nullopt;
    text.remove_prefix(end);
  }
  return tail;
}

bool is_possible(Diameter major, double threads_per_inch) {
  constexpr double kFinest = 120.0;
  constexpr double kCoarsest = 2.0;
  if (!(threads_per_inch >= kCoarsest && threads_per_inch <= kFinest)) return false;
  constexpr double kThinnestCore = 0.5;  // of the major diameter; standard threads leave 0.75 and more
  return internal_minor_mm(major.in(unit::inch), 1.0 / threads_per_inch) >
         kThinnestCore * major.in(unit::inch);
}

// 10 may be #10 or 10 in: the one that is a standard thread; where neither is, #10 unless the thread is much coarser
// than its coarse one (1-32 is 1 in, since #1 has 64 at least).
bool is_numbered_thread(const InchSize& size, double threads_per_inch) {
  constexpr double kMuchCoarser = 0.75;
  if (!is_numbered_size(*size.bare)) return false;
  const InchSize numbered = as_numbered(*size.bare, size.taken);
  if (standard_thread(numbered.name, threads_per_inch) != nullptr) return true;
  if (standard_thread(size.name, threads_per_inch) != nullptr) return false;
  if (*size.bare > kLargestInches) return true;
  for (const StandardThread& coarsest : kStandardThreads) {
    if (coarsest.size == numbered.name) return threads_per_inch >= kMuchCoarser * coarsest.threads_per_inch;
  }
  return false;
}

void settle_bare_number(InchSize& size, double threads_per_inch, UnifiedThread& thread) {
  if (!size.bare) return;
  const bool take_number = is_numbered_thread(size, threads_per_inch);
  if (take_number) size = as_numbered(*size.bare, size.taken);
  thread.assumed.push_back(
      take_number ? fmt::format("{} read as the numbered size {} ({:.4f} in)", size.name.substr(1), size.name,
                                size.nominal.in(unit::inch))
                  : fmt::format("{} read as {} in, not as a numbered size", size.name, size.name));
  size.bare.reset();
}

UnifiedSeries constant_pitch_series(double threads_per_inch) {
  for (const double constant : {4.0, 6.0, 8.0, 12.0, 16.0, 20.0, 28.0, 32.0}) {
    if (threads_per_inch == constant) return UnifiedSeries::kUn;
  }
  return UnifiedSeries::kUns;
}

// The series written, or the one that follows; none where the written one contradicts the standard.
std::optional<UnifiedSeries> settle_series(const Tail& tail, UnifiedThread& thread) {
  const StandardThread* standard = standard_thread(thread.size, thread.threads_per_inch);
  const UnifiedSeries follows = standard ? standard->series : constant_pitch_series(thread.threads_per_inch);
  if (!tail.series) {
    thread.assumed.push_back(fmt::format("no series written: {}, {}", name_of(follows),
                                         standard
                                             ? "the standard thread of this size and pitch"
                                             : "as no coarse, fine or extra-fine thread has this pitch"));
    return follows;
  }
  const bool special = *tail.series == UnifiedSeries::kUn || *tail.series == UnifiedSeries::kUns;
  if (*tail.series != follows && (standard || !special)) return std::nullopt;
  return *tail.series;
}

// Classes 1A and 1B are for UNC and UNF of 1/4 in and larger.
bool has_its_class(const UnifiedThread& thread) {
  if (thread.thread_class != UnifiedClass::k1A && thread.thread_class != UnifiedClass::k1B) return true;
  const bool standard = thread.series == UnifiedSeries::kUnc || thread.series == UnifiedSeries::kUnf;
  return standard && thread.major >= Diameter::of(0.25, unit::inch);
}

// "1/4 UNC": the threads per inch follow from the series.
double threads_per_inch_of_series(InchSize& size, const Tail& tail) {
  if (!tail.series) return 0.0;
  if (size.bare && *size.bare > 0 && is_numbered_size(*size.bare)) return 0.0;  // #4 or 4 in: not told
  for (const StandardThread& standard : kStandardThreads) {
    if (standard.size == size.name && standard.series == *tail.series) return standard.threads_per_inch;
  }
  return 0.0;
}

}  // namespace

std::span<const StandardThread> standard_unified_threads() {
  return kStandardThreads;
}

base::Result<UnifiedThread> read_unified_thread(std::string_view text) {
  const std::string_view typed = quantity::trimmed(text);
  auto size = inch_size_at(typed);
  if (!size) return no_such_thread(typed);
  const auto no_such_one = [&] {
    const std::string standard = standard_threads_of(size->name);
    return no_such_thread(typed, standard.empty() ? kThreadExamples : standard);
  };
  std::string_view rest = quantity::trimmed(typed.substr(size->taken));
  const std::size_t dash = quantity::minus_at(rest);
  PerInch per_inch;
  if (dash > 0) {
    rest = quantity::trimmed(rest.substr(dash));
    per_inch = threads_per_inch_at(rest);
    if (per_inch.taken == 0) return no_such_one();
    rest = rest.substr(per_inch.taken);
  }
  const auto tail = read_tail(rest);
  if (!tail) return no_such_one();
  if (dash == 0) per_inch.value = threads_per_inch_of_series(*size, *tail);
  UnifiedThread thread;
  settle_bare_number(*size, per_inch.value, thread);
  if (!is_possible(size->nominal, per_inch.value)) return no_such_one();
  thread.size = size->name;
  thread.major = size->nominal;
  thread.threads_per_inch = per_inch.value;
  thread.thread_class = tail->thread_class;
  thread.left_hand = tail->left_hand.value_or(false);
  const auto series = settle_series(*tail, thread);
  if (!series) {
    const std::string standard = standard_threads_of(thread.size);
    return no_such_thread(typed, standard.empty() ? "UN or UNS: no standard thread has this size" : standard);
  }
  thread.series = *series;
  if (!has_its_class(thread)) {
    return not_tabled("class " + std::string(name_of(*thread.thread_class)), typed,
                      "1A and 1B for UNC and UNF of 1/4 in and larger; 2A, 3A, 2B and 3B for all");
  }
  return thread;
}

std::string to_string(const UnifiedThread& thread) {
  std::string out = fmt::format("{}-{} {}", thread.size, thread.threads_per_inch, name_of(thread.series));
  if (thread.thread_class) out += fmt::format("-{}", name_of(*thread.thread_class));
  if (thread.left_hand) out += "-LH";
  return out;
}

}  // namespace sparewright::handbook
