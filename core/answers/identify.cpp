#include <cmath>

#include <fmt/format.h>

#include "core/answers/threads.hpp"
#include "core/handbook/identify_threads.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using quantity::Kind;
using quantity::Length;
namespace unit = quantity::unit;

std::string off_words(Length off, std::string_view what, quantity::UnitSystem system) {
  if (off.base() == 0.0) return fmt::format("{} exactly", what);
  return fmt::format("{} measured {} {}", what, both_ways(off.base() < 0.0 ? -off : off, system),
                     off.base() < 0.0 ? "under" : "over");
}

// Whether the second of two words is there; none where neither is.
Maybe<bool> second_of(const Question& question, const char* name, std::string_view first,
                      std::string_view second) {
  const std::string* text = find_entry(question, name);
  if (text == nullptr) return std::optional<bool>();
  if (*text == first || *text == second) return std::optional<bool>(*text == second);
  return base::fail(base::Code::kValueNotAccepted, *text, fmt::format("{} or {}", first, second),
                    fmt::format("--{}", name));
}

base::Result<handbook::MeasuredThread> measured_of(const Question& question, const quantity::Typed& major) {
  handbook::MeasuredThread measured;
  measured.major = major.diameter();
  const auto pitch = pitch_entry(question, "pitch");
  if (!pitch) return tl::unexpected(pitch.error());
  measured.pitch = pitch->pitch;
  const auto angle = maybe_number(question, "flanks", Kind::kAngle);
  if (!angle) return tl::unexpected(angle.error());
  if (*angle) measured.flank_angle = (*angle)->angle();
  constexpr int kUsual = 10;  // what the pitch is good to by default is over so many
  constexpr int kMost = 100;
  const auto over = count_or(question, "over", 1, kMost, kUsual);
  if (!over) return tl::unexpected(over.error());
  measured.pitch_good_to = (static_cast<double>(kUsual) / *over) * measured.pitch_good_to;
  const auto tapered = second_of(question, "taper", "straight", "tapered");
  if (!tapered) return tl::unexpected(tapered.error());
  measured.tapered = *tapered;
  const auto rounded = second_of(question, "crests", "flat", "rounded");
  if (!rounded) return tl::unexpected(rounded.error());
  measured.rounded = *rounded;
  const auto good_to = maybe_size(question, "good-to");
  if (!good_to) return tl::unexpected(good_to.error());
  if (*good_to) measured.major_good_to = (*good_to)->length();
  return measured;
}

// The one thread, or those that may be it and what would decide between the first and each other.
void say(Answer& answer, const handbook::MeasuredThread& measured,
         const std::vector<handbook::ThreadCandidate>& found) {
  constexpr double kHardly = 3.0;
  constexpr std::size_t kMostNamed = 4;
  const auto left = handbook::not_ruled_out(found);
  if (left.empty()) return;
  std::string names = to_string(left.front().thread);
  if (left.front().misfit > kHardly)
    answer.cautions.push_back(
        "no standard thread fits what was measured: measure again, or the thread is a special one");
  if (left.size() == 1) {
    answer.says = std::move(names);
    return;
  }
  for (std::size_t i = 1; i < std::min(left.size(), kMostNamed); ++i) {
    const auto decides = what_decides(measured, left.front(), left[i]);
    names += " or " + to_string(left[i].thread);
    answer.cautions.push_back(fmt::format("{} or {}: NOT KNOWN; decided by {}",
                                          to_string(left.front().thread), to_string(left[i].thread),
                                          words_of(decides, left.front(), left[i])));
  }
  if (left.size() > kMostNamed) names += fmt::format(" or {} more", left.size() - kMostNamed);
  answer.says = std::move(names);
}

}  // namespace

base::Result<Answer> identify(const Question& question) {
  const auto major = size_entry(question, "major");
  if (!major) return tl::unexpected(major.error());
  const auto measured = measured_of(question, *major);
  if (!measured) return tl::unexpected(measured.error());
  const auto found = handbook::identify_thread(*measured);
  if (!found) return tl::unexpected(found.error());

  const quantity::UnitSystem system = system_of(*major);
  Answer answer;
  answer.asked = fmt::format("{} over the crests, pitch {}", both_ways(across(measured->major), system),
                             both_ways(measured->pitch, system));
  TableWriter writer("nearest threads, best first", system);
  for (const handbook::ThreadCandidate& one : *found) {
    std::string note = fmt::format("{}; {}; misfit {:.1f}", off_words(one.major_off, "diameter", system),
                                   off_words(one.pitch_off, "pitch", system), one.misfit);
    if (&one != &found->front())
      note += fmt::format("; told from the first by {}", to_string(one.from_first));
    writer.length(to_string(one.thread), one.major, shape_of(one.thread).source, std::move(note));
  }
  say(answer, *measured, *found);
  answer.assumed.emplace_back(
      "misfit 0 fits what was measured, 1 just so, 3 hardly; a worn screw measures under");
  answer.tables.push_back(writer.take());
  return answer;
}

}  // namespace sparewright::answers
