#include "core/handbook/thread_designation.hpp"

#include <algorithm>
#include <array>
#include <charconv>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/handbook/thread_text.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

enum class Family { kUnified, kMetric, kPipe, kAcme, kTrapezoidal, kWhitworth, kAssociation };

struct FamilyWord {
  std::string_view word;
  Family family;
};
constexpr std::array kFamilyWords{
    FamilyWord{"m", Family::kMetric},        FamilyWord{"tr", Family::kTrapezoidal},
    FamilyWord{"npt", Family::kPipe},        FamilyWord{"nptf", Family::kPipe},
    FamilyWord{"bspp", Family::kPipe},       FamilyWord{"bspt", Family::kPipe},
    FamilyWord{"bsp", Family::kPipe},        FamilyWord{"g", Family::kPipe},
    FamilyWord{"r", Family::kPipe},          FamilyWord{"rc", Family::kPipe},
    FamilyWord{"rp", Family::kPipe},         FamilyWord{"acme", Family::kAcme},
    FamilyWord{"bsw", Family::kWhitworth},   FamilyWord{"bsf", Family::kWhitworth},
    FamilyWord{"bsc", Family::kWhitworth},   FamilyWord{"cei", Family::kWhitworth},
    FamilyWord{"cycle", Family::kWhitworth}, FamilyWord{"whit", Family::kWhitworth},
    FamilyWord{"w", Family::kWhitworth},     FamilyWord{"whitworth", Family::kWhitworth},
    FamilyWord{"ba", Family::kAssociation},
};

// The first run of letters that names a family; the letters of 2G or 20P stand behind a digit and are a class
// or a pitch, those of 2BA are not.
Family family_of(std::string_view typed) {
  const std::string text = folded(typed);
  for (std::size_t at = 0; at < text.size();) {
    if (!quantity::is_lower(text[at])) {
      ++at;
      continue;
    }
    std::size_t end = at;
    while (end < text.size() && quantity::is_lower(text[end]))
      ++end;
    const std::string_view word = std::string_view(text).substr(at, end - at);
    const bool sticks = at > 0 && quantity::is_digit(text[at - 1]) && word.size() == 1;
    for (const FamilyWord& one : kFamilyWords) {
      if (!sticks && one.word == word) return one.family;
    }
    at = end;
  }
  return Family::kUnified;
}

// 8x1.25 and 8 x 1.25 mm: a metric thread without its M. Inch threads have a dash.
bool is_metric_without_letter(std::string_view typed) {
  constexpr double kCoarsestMm = 8.0;
  const std::string text = folded(typed);
  double major = 0.0;
  double pitch = 0.0;
  const char* end = text.data() + text.size();
  if (text.empty() || !quantity::is_digit(text.front())) return false;
  const auto [behind, error] = std::from_chars(text.data(), end, major, std::chars_format::fixed);
  if (error != std::errc{}) return false;
  std::string_view rest = quantity::trimmed({behind, static_cast<std::size_t>(end - behind)});
  if (!rest.starts_with('x')) return false;
  rest = quantity::trimmed(rest.substr(1));
  if (rest.empty() || !quantity::is_digit(rest.front())) return false;
  const auto second = std::from_chars(rest.data(), end, pitch, std::chars_format::fixed);
  return second.ec == std::errc{} && pitch > 0.0 && pitch <= kCoarsestMm && pitch < major;
}

template <class Thread>
base::Result<AnyThread> any(const base::Result<Thread>& thread) {
  if (!thread) return tl::unexpected(thread.error());
  return AnyThread(*thread);
}

base::Result<AnyThread> read_without_letter(std::string_view typed) {
  std::string text = "M" + std::string(quantity::trimmed(typed));
  if (const std::string end = folded(text); end.ends_with("mm")) text.resize(text.size() - 2);
  auto thread = read_metric_thread(text);
  if (!thread) return tl::unexpected(thread.error());
  thread->assumed.emplace_back("no M written: taken as a metric thread");
  std::rotate(thread->assumed.rbegin(), thread->assumed.rbegin() + 1, thread->assumed.rend());  // said first
  return AnyThread(*thread);
}

// Without its series an inch thread of an old machine may as well be British; only its flanks would tell.
base::Result<AnyThread> read_unified(std::string_view typed) {
  auto thread = read_unified_thread(typed);
  if (!thread) return tl::unexpected(thread.error());
  const std::string text = folded(typed);
  const bool series_written = text.find("un") != std::string::npos || text.find("nc") != std::string::npos ||
                              text.find("nf") != std::string::npos;
  for (const StandardWhitworthThread& row : standard_whitworth_threads()) {
    if (series_written || row.size != thread->size || row.threads_per_inch != thread->threads_per_inch)
      continue;
    thread->assumed.push_back(
        fmt::format("taken as Unified, 60 degrees; {}-{} {} has the same size and pitch", row.size,
                    row.threads_per_inch, name_of(row.series)));
  }
  return AnyThread(*thread);
}

bool has_digit(std::string_view text) {
  for (const char c : text) {
    if (quantity::is_digit(c)) return true;
  }
  return false;
}

}  // namespace

base::Result<AnyThread> read_thread(std::string_view text) {
  if (!has_digit(text))
    return unknown(text, "thread", {},
                   "a thread such as 3/8-16 UNC-2A, #10-32, M8x1, 1/2-14 NPT, G1/2, R1/2, 1-5 ACME, Tr 20x4, "
                   "1/4-20 BSW or "
                   "2 BA");
  switch (family_of(text)) {
    case Family::kMetric:
      return any(read_metric_thread(text));
    case Family::kPipe:
      return any(read_pipe_thread(text));
    case Family::kAcme:
      return any(read_acme_thread(text));
    case Family::kTrapezoidal:
      return any(read_trapezoidal_thread(text));
    case Family::kWhitworth:
      return any(read_whitworth_thread(text));
    case Family::kAssociation:
      return any(read_association_thread(text));
    case Family::kUnified:
      break;
  }
  return is_metric_without_letter(text) ? read_without_letter(text) : read_unified(text);
}

std::string to_string(const AnyThread& thread) {
  return std::visit([](const auto& one) { return to_string(one); }, thread);
}

const std::vector<std::string>& assumed_of(const AnyThread& thread) {
  return std::visit([](const auto& one) -> const std::vector<std::string>& { return one.assumed; }, thread);
}

ThreadShape shape_of(const UnifiedThread& thread) {
  const BasicThread basic = basic_sizes(thread);
  return {to_string(thread),
          ThreadForm::kUnified,
          basic.major,
          basic.pitch,
          basic.minor,
          thread.pitch(),
          1,
          thread.left_hand,
          false,
          basic.source};
}

ThreadShape shape_of(const MetricThread& thread) {
  const BasicThread basic = basic_sizes(thread);
  return {to_string(thread),
          ThreadForm::kMetric,
          basic.major,
          basic.pitch,
          basic.minor,
          thread.pitch,
          1,
          thread.left_hand,
          false,
          basic.source};
}

ThreadShape shape_of(const AnyThread& thread) {
  return std::visit([](const auto& one) { return shape_of(one); }, thread);
}

}  // namespace sparewright::handbook
