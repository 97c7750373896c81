#include "core/handbook/acme_threads.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/handbook/thread_text.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr StandardAcmeThread kSizes[] = {
#include "generated/core/handbook/acme_sizes.inc"
};

constexpr Source kB15{"ASME B1.5, general purpose Acme threads by formula", "", Basis::kFromMemory};
constexpr int kPlaces = 4;

std::string name_of(const StandardAcmeThread& row) {
  return fmt::format("{}-{} ACME", row.size, row.threads_per_inch);
}

base::Result<AcmeThread> no_such_thread(std::string_view typed) {
  return unknown(typed, "Acme thread", names_of(kSizes, name_of),
                 "a thread such as 1-5 ACME, 1/2-10 ACME-2G or 1-10 ACME 2 START");
}

const StandardAcmeThread* row_of(std::string_view size) {
  const auto* found =
      std::find_if(std::begin(kSizes), std::end(kSizes), [&](const auto& row) { return row.size == size; });
  return found == std::end(kSizes) ? nullptr : found;
}

// 2G, 3G, 4G; none written is 2G. False where two are.
bool take_class(InchThreadText& text, AcmeThread& thread) {
  int taken = 0;
  for (const int one : {2, 3, 4}) {
    if (!text.take(fmt::format("{}g", one))) continue;
    thread.thread_class = one;
    ++taken;
  }
  if (taken == 0) thread.assumed.emplace_back("no class written: 2G, the usual one");
  return taken <= 1;
}

// "2 start", "2-start", "2 starts".
bool take_starts(InchThreadText& text, AcmeThread& thread) {
  for (const std::string_view word : {"start", "starts"}) {
    const auto found = std::find(text.words.begin(), text.words.end(), word);
    if (found == text.words.end()) continue;
    if (found == text.words.begin()) return false;
    const auto count = digits_at(*(found - 1), 12);
    if (!count || count->taken != (found - 1)->size() || count->value < 1) return false;
    thread.starts = count->value;
    text.words.erase(found - 1, found + 1);
    return true;
  }
  return true;
}

// "0.1P", "0.2L": pitch and lead in inches, as the standard writes threads of several starts.
bool take_pitch_and_lead(InchThreadText& text, AcmeThread& thread) {
  double pitch = 0.0;
  double lead = 0.0;
  const auto take = [&](const std::string& word) {
    if (const auto p = number_before(word, 'p')) return (pitch = *p, true);
    if (const auto l = number_before(word, 'l')) return (lead = *l, true);
    return false;
  };
  std::erase_if(text.words, take);
  if (pitch > 0.0) thread.threads_per_inch = 1.0 / pitch;
  if (lead <= 0.0) return true;
  if (pitch <= 0.0) return false;
  const double starts = lead / pitch;
  thread.starts = static_cast<int>(std::lround(std::min(starts, 100.0)));
  return thread.starts >= 1 && thread.starts <= 12 && std::abs(starts - thread.starts) < 0.01;
}

bool is_possible(const AcmeThread& thread) {
  const double major = thread.major.in(unit::inch);
  if (!(thread.threads_per_inch >= 1.0 && thread.threads_per_inch <= 24.0) || major < 0.25 - 1e-9)
    return false;
  return major - 1.0 / thread.threads_per_inch > 0.5 * major;
}

double inch(Length length) {
  return length.in(unit::inch);
}

DiameterRange inch_range(double low, double high) {
  return {Diameter::of(quantity::rounded(low, kPlaces), unit::inch),
          Diameter::of(quantity::rounded(high, kPlaces), unit::inch)};
}

// By class, 2G first.
struct ClassRule {
  double allowance;      // of sqrt(D)
  double of_root_pitch;  // tolerance, of sqrt(P)
  double of_root_major;  // tolerance, of sqrt(D)
};
constexpr std::array kRules{ClassRule{0.008, 0.030, 0.006}, ClassRule{0.006, 0.014, 0.0028},
                            ClassRule{0.004, 0.010, 0.002}};

struct Inches {
  double major, pitch, allowance, pitch_tolerance, clearance;
};

Inches inches_of(const AcmeThread& thread) {
  const ClassRule& rule = kRules.at(static_cast<std::size_t>(thread.thread_class - 2));
  const double major = thread.major.in(unit::inch);
  const double pitch = inch(thread.pitch());
  return {major, pitch, rule.allowance * std::sqrt(major),
          rule.of_root_pitch * std::sqrt(pitch) + rule.of_root_major * std::sqrt(major),
          inch(root_clearance(thread))};
}

constexpr double kLeastCrestTolerance = 0.005;  // inch; else 0.05 P

}  // namespace

Length AcmeThread::pitch() const {
  return Length::of(1.0 / threads_per_inch, unit::inch);
}

base::Result<AcmeThread> read_acme_thread(std::string_view typed) {
  auto text = read_inch_thread_text(typed);
  if (!text || !text->take("acme")) return no_such_thread(typed);
  if (text->take("stub"))
    return not_tabled("the stub Acme thread", typed, "general purpose Acme threads, such as 1-5 ACME-2G");
  AcmeThread thread;
  thread.size = text->size.name;
  thread.major = text->size.nominal;
  thread.threads_per_inch = text->threads_per_inch;
  if (!take_class(*text, thread) || !take_starts(*text, thread) || !take_pitch_and_lead(*text, thread))
    return no_such_thread(typed);
  const StandardAcmeThread* row = row_of(thread.size);
  if (thread.threads_per_inch == 0.0 && row != nullptr) {
    thread.threads_per_inch = row->threads_per_inch;
    thread.assumed.push_back(
        fmt::format("no pitch written: {} per inch, the standard one", row->threads_per_inch));
  }
  thread.left_hand = text->take("lh");
  if (!thread.left_hand) text->take("rh");
  if (!text->words.empty() || !is_possible(thread)) return no_such_thread(typed);
  if (row == nullptr || row->threads_per_inch != thread.threads_per_inch) {
    thread.assumed.push_back(row == nullptr ? "no standard Acme thread has this size"
                                            : "the standard thread of this size is " + name_of(*row));
  }
  return thread;
}

std::string to_string(const AcmeThread& thread) {
  std::string out = fmt::format("{}-{} ACME-{}G", thread.size, thread.threads_per_inch, thread.thread_class);
  if (thread.starts > 1) out += fmt::format(" {} START", thread.starts);
  if (thread.left_hand) out += "-LH";
  return out;
}

BasicThread basic_sizes(const AcmeThread& thread) {
  const Length pitch = thread.pitch();
  return {thread.major, as_diameter(across(thread.major) - 0.5 * pitch),
          as_diameter(across(thread.major) - pitch), kB15};
}

ThreadShape shape_of(const AcmeThread& thread) {
  const BasicThread basic = basic_sizes(thread);
  return {to_string(thread), ThreadForm::kAcme, basic.major,      basic.pitch, basic.minor,
          thread.pitch(),    thread.starts,     thread.left_hand, false,       basic.source};
}

Length root_clearance(const AcmeThread& thread) {
  return Length::of(thread.threads_per_inch <= 10.0 ? 0.010 : 0.005, unit::inch);
}

PowerThreadLimits screw_limits(const AcmeThread& thread) {
  const Inches t = inches_of(thread);
  const double pitch = t.major - 0.5 * t.pitch - t.allowance;
  const double minor = t.major - t.pitch - 2.0 * t.clearance;
  return {fmt::format("{}G", thread.thread_class),
          inch_range(t.major - std::max(0.05 * t.pitch, kLeastCrestTolerance), t.major),
          inch_range(pitch - t.pitch_tolerance, pitch), inch_range(minor - 1.5 * t.pitch_tolerance, minor),
          kB15};
}

PowerThreadLimits hole_limits(const AcmeThread& thread) {
  const Inches t = inches_of(thread);
  const double major = t.major + 2.0 * t.clearance;
  const double pitch = t.major - 0.5 * t.pitch;
  const double minor = t.major - t.pitch;
  return {fmt::format("{}G", thread.thread_class), inch_range(major, major + 2.0 * t.clearance),
          inch_range(pitch, pitch + t.pitch_tolerance),
          inch_range(minor, minor + std::max(0.05 * t.pitch, kLeastCrestTolerance)), kB15};
}

std::span<const StandardAcmeThread> standard_acme_threads() {
  return kSizes;
}

}  // namespace sparewright::handbook
