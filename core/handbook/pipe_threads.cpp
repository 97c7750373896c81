#include "core/handbook/pipe_threads.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <stdexcept>

#include <fmt/format.h>

#include "core/handbook/drills.hpp"
#include "core/handbook/lookup.hpp"
#include "core/handbook/thread_text.hpp"
#include "core/quantity/display.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
using quantity::rounded;
namespace unit = quantity::unit;

struct NptRow {
  std::string_view size;
  double threads_per_inch;
  Diameter outside;
  Length hand_tight;
  std::string_view drill;
  std::string_view other_drill;
  Source source;
};
constexpr NptRow kNpt[] = {
#include "generated/core/handbook/npt_threads.inc"
};

struct BspRow {
  std::string_view size;
  double threads_per_inch;
  Length pitch;
  Diameter major;
  std::optional<Length> gauge_length;
  std::string_view drill;
  std::string_view taper_drill;
  Source source;
};
constexpr BspRow kBsp[] = {
#include "generated/core/handbook/bsp_threads.inc"
};

struct BspToleranceRow {
  double threads_per_inch;
  std::optional<Diameter> over;
  std::optional<Diameter> up_to;
  Length pitch;
  Length major;
  Length minor;
  Source source;
};
constexpr BspToleranceRow kBspTolerances[] = {
#include "generated/core/handbook/bsp_tolerances.inc"
};

template <class Rows>
const auto* row_of(const Rows& rows, std::string_view size) {
  const auto* found =
      std::find_if(std::begin(rows), std::end(rows), [&](const auto& row) { return row.size == size; });
  return found == std::end(rows) ? nullptr : found;
}

// The row of a thread that was read or listed. A size put together by hand that there is not has no numbers;
// none may be made up for it.
template <class Rows>
const auto& row_needed(const Rows& rows, std::string_view size) {
  const auto* row = row_of(rows, size);
  if (row == nullptr) throw std::logic_error("no pipe thread has the size " + std::string(size));
  return *row;
}

bool is_american(PipeSystem system) {
  return system == PipeSystem::kNpt || system == PipeSystem::kNptf;
}

// 0 where the system has no such size.
double threads_per_inch_of(PipeSystem system, std::string_view size) {
  if (is_american(system)) {
    const NptRow* row = row_of(kNpt, size);
    return row == nullptr ? 0.0 : row->threads_per_inch;
  }
  const BspRow* row = row_of(kBsp, size);
  if (row == nullptr || (system != PipeSystem::kG && !row->gauge_length)) return 0.0;
  return row->threads_per_inch;
}

base::Result<PipeThread> no_such_pipe_thread(std::string_view typed, std::optional<PipeSystem> system = {}) {
  if (!system)
    return unknown(typed, "pipe thread", {}, "a pipe thread such as 1/2-14 NPT, G1/2, R1/2 or Rc1/2");
  return unknown(typed, "pipe thread",
                 names_of(pipe_threads(*system), [](const PipeThread& thread) { return to_string(thread); }));
}

struct SystemWord {
  std::string_view word;
  PipeSystem system;
  std::string_view assumed;
};
constexpr std::array kSystemWords{
    SystemWord{"npt", PipeSystem::kNpt, ""},
    SystemWord{"nptf", PipeSystem::kNptf, ""},
    SystemWord{"g", PipeSystem::kG, ""},
    SystemWord{"bspp", PipeSystem::kG, ""},
    SystemWord{"rc", PipeSystem::kRc, ""},
    SystemWord{"rp", PipeSystem::kRp, ""},
    SystemWord{"r", PipeSystem::kR, ""},
    SystemWord{"bspt", PipeSystem::kR, "BSPT read as R, the taper outside thread; a taper hole is Rc"},
    SystemWord{"bsp", PipeSystem::kG, "BSP read as the parallel thread G; the taper one is R or BSPT"},
};

const SystemWord* take_system(InchThreadText& text) {
  for (const SystemWord& one : kSystemWords) {
    if (text.take(one.word)) return &one;
  }
  return nullptr;
}

// Class and hand of what is left; false where a word stays over.
bool take_rest(InchThreadText& text, PipeThread& thread) {
  if (thread.system == PipeSystem::kG) {
    const bool class_a = text.take("a");
    thread.class_b = text.take("b");
    if (class_a && thread.class_b) return false;
    if (!class_a && !thread.class_b)
      thread.assumed.emplace_back("no class written: A, if it is the outside thread");
  }
  thread.left_hand = text.take("lh");
  if (!thread.left_hand) text.take("rh");
  return text.words.empty();
}

PipeDrill drill_named(std::string_view name) {
  if (const auto drill = find_drill(name)) return {name, drill->diameter};
  const auto size = quantity::read_number(name, quantity::Kind::kDiameter, std::nullopt);
  assert(size && "the tables name drills that can be read");
  return {name, size->diameter()};
}

std::optional<PipeDrill> optional_drill(std::string_view name) {
  return name.empty() ? std::nullopt : std::optional(drill_named(name));
}

const BspToleranceRow& tolerances_of(const BspRow& row) {
  for (const BspToleranceRow& one : kBspTolerances) {
    if (one.threads_per_inch == row.threads_per_inch && in_range(row.major, one.over, one.up_to)) return one;
  }
  assert(false && "every size has tolerances");
  return kBspTolerances[0];
}

Diameter mm(double count) {
  return Diameter::of(rounded(count, 3), unit::millimetre);
}

}  // namespace

std::string_view name_of(PipeSystem system) {
  constexpr std::array<std::string_view, 6> kNames{"NPT", "NPTF", "G", "R", "Rc", "Rp"};
  return kNames.at(static_cast<std::size_t>(system));
}

base::Result<PipeThread> read_pipe_thread(std::string_view typed) {
  auto text = read_inch_thread_text(typed);
  if (!text) return no_such_pipe_thread(typed);
  const SystemWord* word = take_system(*text);
  if (word == nullptr) return no_such_pipe_thread(typed);
  PipeThread thread;
  thread.system = word->system;
  thread.size = text->size.name;
  if (!word->assumed.empty()) thread.assumed.emplace_back(word->assumed);
  thread.threads_per_inch = threads_per_inch_of(thread.system, thread.size);
  if (thread.threads_per_inch == 0.0) return no_such_pipe_thread(typed, thread.system);
  const double written = text->threads_per_inch;
  if (written != 0.0 && written != thread.threads_per_inch)
    return unknown(typed, "pipe thread", {},
                   to_string(thread) + fmt::format(", {} per inch", thread.threads_per_inch));
  if (!take_rest(*text, thread)) return no_such_pipe_thread(typed, thread.system);
  return thread;
}

std::string to_string(const PipeThread& thread) {
  std::string out = thread.is_american() ? fmt::format("{}-{} {}", thread.size, thread.threads_per_inch,
                                                       name_of(thread.system))
                                         : fmt::format("{}{}", name_of(thread.system), thread.size);
  if (thread.class_b) out += "B";
  if (thread.left_hand) out += "-LH";
  return out;
}

NptSizes npt_sizes(const PipeThread& thread) {
  assert(thread.is_american());
  const NptRow& row = row_needed(kNpt, thread.size);
  const double pitch = 1.0 / row.threads_per_inch;
  const double outside = row.outside.in(unit::inch);
  const double at_end = outside - (0.05 * outside + 1.1) * pitch;
  const double hand_tight = row.hand_tight.in(unit::inch);
  const double effective = (0.80 * outside + 6.8) * pitch;
  const auto at = [&](double along) { return Diameter::of(at_end + kPipeTaper * along, unit::inch); };
  return {row.outside,
          at(0.0),
          at(hand_tight),
          at(effective),
          row.hand_tight,
          Length::of(effective, unit::inch),
          Length::of(0.8 * pitch, unit::inch),
          drill_named(row.drill),
          optional_drill(row.other_drill),
          row.source};
}

BspSizes bsp_sizes(const PipeThread& thread) {
  assert(!thread.is_american());
  const BspRow& row = row_needed(kBsp, thread.size);
  const double height =
      rounded(profile_of(ThreadForm::kWhitworth).screw.depth * row.pitch.in(unit::millimetre), 3);
  const double major = row.major.in(unit::millimetre);
  const bool taper = thread.system == PipeSystem::kR || thread.system == PipeSystem::kRc;
  return {row.major,
          mm(major - height),
          mm(major - 2.0 * height),
          Length::of(height, unit::millimetre),
          row.gauge_length,
          optional_drill(taper ? row.taper_drill : row.drill),
          row.source};
}

InternalThreadLimits g_hole_limits(const PipeThread& thread) {
  assert(thread.system == PipeSystem::kG);
  const BspToleranceRow& tolerances = tolerances_of(row_needed(kBsp, thread.size));
  const BspSizes sizes = bsp_sizes(thread);
  const double pitch = sizes.pitch_diameter.in(unit::millimetre);
  const double minor = sizes.minor.in(unit::millimetre);
  InternalThreadLimits limits;
  limits.thread_class = "G";
  limits.major_min = sizes.major;
  limits.pitch = {sizes.pitch_diameter, mm(pitch + tolerances.pitch.in(unit::millimetre))};
  limits.minor = {sizes.minor, mm(minor + tolerances.minor.in(unit::millimetre))};
  limits.source = tolerances.source;
  return limits;
}

ExternalThreadLimits g_screw_limits(const PipeThread& thread) {
  assert(thread.system == PipeSystem::kG);
  const BspToleranceRow& tolerances = tolerances_of(row_needed(kBsp, thread.size));
  const BspSizes sizes = bsp_sizes(thread);
  const double pitch_tolerance = (thread.class_b ? 2.0 : 1.0) * tolerances.pitch.in(unit::millimetre);
  ExternalThreadLimits limits;
  limits.thread_class = thread.class_b ? "G B" : "G A";
  limits.major = {mm(sizes.major.in(unit::millimetre)-tolerances.major.in(unit::millimetre)), sizes.major};
  limits.pitch = {mm(sizes.pitch_diameter.in(unit::millimetre)-pitch_tolerance), sizes.pitch_diameter};
  limits.flat_root_max = sizes.minor;
  limits.source = tolerances.source;
  return limits;
}

ThreadShape shape_of(const PipeThread& thread) {
  ThreadShape shape;
  shape.name = to_string(thread);
  shape.left_hand = thread.left_hand;
  shape.tapered = thread.is_tapered();
  shape.pitch = Length::of(1.0 / thread.threads_per_inch, unit::inch);
  if (thread.is_american()) {
    const NptSizes sizes = npt_sizes(thread);
    shape.form = ThreadForm::kAmericanPipe;
    shape.pitch_diameter = sizes.pitch_at_gauge;
    shape.major = as_diameter(across(sizes.pitch_at_gauge) + sizes.height);
    shape.minor = as_diameter(across(sizes.pitch_at_gauge) - sizes.height);
    shape.source = sizes.source;
    return shape;
  }
  const BspSizes sizes = bsp_sizes(thread);
  shape.form = ThreadForm::kWhitworth;
  shape.major = sizes.major;
  shape.pitch_diameter = sizes.pitch_diameter;
  shape.minor = sizes.minor;
  shape.source = sizes.source;
  return shape;
}

std::vector<PipeThread> pipe_threads(PipeSystem system) {
  std::vector<PipeThread> out;
  const auto add = [&](std::string_view size) {
    const double per_inch = threads_per_inch_of(system, size);
    if (per_inch == 0.0) return;
    PipeThread thread;
    thread.system = system;
    thread.size = size;
    thread.threads_per_inch = per_inch;
    out.push_back(std::move(thread));
  };
  if (is_american(system)) {
    for (const NptRow& row : kNpt)
      add(row.size);
  } else {
    for (const BspRow& row : kBsp)
      add(row.size);
  }
  return out;
}

}  // namespace sparewright::handbook
