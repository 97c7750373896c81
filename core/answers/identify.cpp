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

}  // namespace

base::Result<Answer> identify(const Question& question) {
  const auto major = size_entry(question, "major");
  if (!major) return tl::unexpected(major.error());
  const auto pitch = pitch_entry(question, "pitch");
  if (!pitch) return tl::unexpected(pitch.error());
  handbook::MeasuredThread measured;
  measured.major = major->diameter();
  measured.pitch = pitch->pitch;
  const auto angle = maybe_number(question, "flanks", Kind::kAngle);
  if (!angle) return tl::unexpected(angle.error());
  if (*angle) measured.flank_angle = (*angle)->angle();
  const auto good_to = maybe_size(question, "good-to");
  if (!good_to) return tl::unexpected(good_to.error());
  if (*good_to) measured.major_good_to = (*good_to)->length();
  const auto found = handbook::identify_thread(measured);
  if (!found) return tl::unexpected(found.error());

  const quantity::UnitSystem system = system_of(*major);
  Answer answer;
  answer.asked = fmt::format("{} over the crests, pitch {}", both_ways(across(measured.major), system),
                             both_ways(measured.pitch, system));
  TableWriter writer("nearest threads, best first", system);
  for (const handbook::ThreadCandidate& one : *found) {
    std::string note = fmt::format("{}; {}; misfit {:.1f}", off_words(one.major_off, "diameter", system),
                                   off_words(one.pitch_off, "pitch", system), one.misfit);
    if (&one != &found->front())
      note += fmt::format("; told from the first by {}", to_string(one.from_first));
    writer.length(to_string(one.thread), one.major, shape_of(one.thread).source, std::move(note));
  }
  if (!found->empty()) answer.says = to_string(found->front().thread);
  answer.assumed.emplace_back(
      "misfit 0 fits what was measured, 1 just so, 3 hardly; a worn screw measures under");
  answer.tables.push_back(writer.take());
  return answer;
}

}  // namespace sparewright::answers
