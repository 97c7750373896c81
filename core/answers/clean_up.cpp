// What is left after worn places are cut away, and the walls between what is cut.
#include <algorithm>
#include <optional>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/handbook/bolt_circle.hpp"
#include "core/handbook/single_point_threads.hpp"
#include "core/handbook/thread_designation.hpp"

namespace sparewright::answers {
namespace {

using quantity::Length;
using quantity::UnitSystem;

constexpr std::size_t kMostSteps = 12;
constexpr handbook::Source kDeepestBothSides{"twice the deepest place and the centre's own error", "",
                                             handbook::Basis::kDerived};
constexpr handbook::Source kNextStep{"the smallest of the steps given that is enough", "",
                                     handbook::Basis::kDerived};
constexpr handbook::Source kHalfDifference{"half of outside less inside, less what the axes are apart", "",
                                           handbook::Basis::kDerived};
constexpr handbook::Source kBetweenHoles{"chord from hole to hole less one hole", "",
                                         handbook::Basis::kDerived};
constexpr handbook::Source kToEdge{"half the difference of the circles less half a hole", "",
                                   handbook::Basis::kDerived};
constexpr handbook::Source kAsGiven{"as it was given", "", handbook::Basis::kDerived};
constexpr Length kBondLine = Length::of(0.001, quantity::unit::inch);
constexpr handbook::Source kBonded{"0.001 in (0.03 mm) larger than the shaft for a retaining adhesive", "",
                                   handbook::Basis::kCommonPractice};
constexpr double kShrinkPerDiameter = 0.001;
constexpr handbook::Source kShrunk{"0.001 for each 1 of diameter smaller than the shaft", "",
                                   handbook::Basis::kCommonPractice};
// Thinner sleeves are bonded rather than pressed: 1/16 in. Common practice.
constexpr Length kThinSleeve = Length::of(0.0625, quantity::unit::inch);

// One side of a wall: a size across, or the thread cut there.
struct Side {
  Length across;
  std::string name;
  handbook::Source source = kAsGiven;
  Length pitch;                      // none where it is no thread
  std::optional<UnitSystem> system;  // the thread's
};

// outside: the root of a screw's thread, else the major diameter a hole's thread is cut to.
std::optional<Side> thread_side(const std::string& text, bool outside) {
  const auto thread = handbook::read_thread(text);
  if (!thread) return std::nullopt;
  const handbook::ThreadShape shape = handbook::shape_of(*thread);
  const auto side = outside ? handbook::ThreadSide::kScrew : handbook::ThreadSide::kHole;
  const handbook::ThreadDepth depth = handbook::thread_depth(*thread, side);
  const bool metric = std::holds_alternative<handbook::MetricThread>(*thread) ||
                      std::holds_alternative<handbook::TrapezoidalThread>(*thread);
  const Length across = outside ? quantity::across(shape.major) - depth.depth * 2.0
                                : quantity::across(shape.minor) + depth.depth * 2.0;
  return Side{across, fmt::format("{}, {}", to_string(*thread), outside ? "its root" : "its major diameter"),
              depth.source, shape.pitch, metric ? UnitSystem::kMetric : UnitSystem::kInch};
}

// A size where the text is one, else a thread.
Side side_of(EntryReader& read, const Question& question, std::string_view name, bool outside) {
  const std::string* text = find_entry(question, name);
  if (text != nullptr) {
    const auto size = quantity::read_number(*text, quantity::Kind::kLength, std::nullopt);
    if (!size) {
      if (auto thread = thread_side(*text, outside)) return std::move(*thread);
    }
  }
  return {read.size(name), {}, kAsGiven, {}, {}};
}

}  // namespace

base::Result<Answer> clean_up(const Question& question) {
  EntryReader read(question);
  const Length size = read.size("size");
  const Length deep = read.size("deep");
  const Length off = read.place_or_zero("off-centre");
  const std::string side = read.word("side", {"shaft", "hole"});
  const auto steps = read.has("steps") ? read.lengths("steps", 1, kMostSteps) : std::vector<Length>();
  if (!read.failed()) {
    read.refuse_unless(off >= Length(), "off-centre", "zero or more");
    read.refuse_unless(deep * 2.0 < size, "deep", "less than half the size");
  }
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const bool hole = side == "hole";
  const Length takes = (deep + off) * 2.0;
  const Length clean = hole ? size + takes : size - takes;
  const auto enough = std::find_if(steps.begin(), steps.end(), [&](Length step) {
    return step - takes > Length::of(-1e-6, quantity::unit::millimetre);
  });
  Answer answer;
  answer.asked =
      fmt::format("{} of {}, {} deep at its worst", side, both_ways(size, system), both_ways(deep, system));
  answer.says = fmt::format("clean at {}", both_ways(clean, system));
  TableWriter writer(hole ? "to bore it clean" : "to turn it clean", system);
  writer.length(hole ? "oversize needed" : "undersize needed", takes, kDeepestBothSides,
                hole ? "" : "wear on one side alone takes twice its depth: the old centre stays");
  writer.length("comes clean at", clean, kDeepestBothSides);
  if (!steps.empty()) {
    if (enough != steps.end()) {
      const Length made = hole ? size + *enough : size - *enough;
      writer.length("step to take", *enough, kNextStep);
      writer.length("size it makes", made, kNextStep);
      answer.says += fmt::format("; take the step of {}", both_ways(*enough, system));
    } else {
      writer.words("step to take", "none of them is enough", kNextStep);
      answer.says += "; none of the steps is enough";
    }
  }
  answer.tables.push_back(writer.take());
  answer.assumed.emplace_back(
      "deep is counted from the surface as it was made, not from the worn one: add the wear that is there");
  if (off == Length())
    answer.assumed.emplace_back("it turns about its old centre: what it is off adds itself twice");
  answer.cautions.emplace_back(
      "Cut a trace off the worst place first and look, before parts for a step are bought.");
  return answer;
}

base::Result<Answer> sleeve(const Question& question) {
  EntryReader read(question);
  const Length size = read.size("size");
  const Length thick = read.maybe_size("wall").value_or(kThinSleeve);
  const auto clean = read.maybe_size("clean");
  if (!read.failed()) {
    read.refuse_unless(thick * 4.0 < size, "wall", "less than a quarter of the size");
    read.refuse_unless(!clean || *clean < size, "clean", "less than the size wanted");
  }
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const Length down_to = std::min(clean.value_or(size), size - thick * 2.0);
  const Length even = (size - down_to) / 2.0;
  Answer answer;
  answer.asked = fmt::format("a sleeve that brings a shaft back to {}", both_ways(size, system));
  answer.says = fmt::format("turn the shaft to {}", both_ways(down_to, system));
  TableWriter writer("shaft and sleeve", system);
  writer.length("shaft turned to", down_to, kHalfDifference,
                clean && down_to == *clean ? "where it comes clean" : "so that the wall is there");
  writer.length("wall of the sleeve, finished", even, kHalfDifference);
  writer.length("sleeve bored, to be bonded", down_to + kBondLine, kBonded, "room for the adhesive");
  writer.length("sleeve bored, to be shrunk on", down_to - down_to * kShrinkPerDiameter, kShrunk,
                "`quick heat` says how hot");
  writer.length("sleeve finished, in its place", size, kAsGiven, "turned after it is on");
  answer.tables.push_back(writer.take());
  if (!read.has("wall"))
    answer.assumed.push_back(fmt::format("a wall of {} at least", both_ways(thick, system)));
  answer.assumed.emplace_back(
      "the sleeve can be slipped on from one end: nothing on the way is larger than its bore");
  answer.cautions = {
      "Leave the work as it is held: what is still true costs nothing to put right.",
      "What a bonded or shrunk sleeve carries: NOT KNOWN here; `quick press` gives the grip of a shrunk "
      "one."};
  return answer;
}

base::Result<Answer> wall(const Question& question) {
  EntryReader read(question);
  const Side outside = side_of(read, question, "outside", true);
  const Side inside = side_of(read, question, "inside", false);
  const Length off = read.place_or_zero("off-centre");
  const auto least = read.maybe_size("least");
  const auto pitch = read.has("cross-thread") ? find_entry(question, "cross-thread") : nullptr;
  const auto crossing = pitch == nullptr ? std::nullopt : thread_side(*pitch, false);
  if (pitch != nullptr) read.refuse_unless(crossing.has_value(), "cross-thread", "a thread such as 10-32");
  if (!read.failed()) read.refuse_unless(off >= Length(), "off-centre", "zero or more");
  if (read.failed()) return read.failure();
  const UnitSystem system =
      outside.system && inside.system ? outside.system.value_or(read.system()) : read.system();
  const Length even = (outside.across - inside.across) / 2.0;
  const Length thin = even - off;
  Answer answer;
  answer.asked =
      fmt::format("wall from {} to {}", both_ways(outside.across, system), both_ways(inside.across, system));
  answer.says = thin > Length() ? both_ways(thin, system)
                                : fmt::format("NO: no wall is left, {} missing", both_ways(-thin, system));
  if (least && thin > Length())
    answer.says = fmt::format("{}: {}, {} wanted", thin >= *least ? "OK" : "NO", both_ways(thin, system),
                              both_ways(*least, system));
  TableWriter writer("the wall", system);
  writer.length("all round, where it is true", even, kHalfDifference);
  if (off > Length()) writer.length("at its thinnest", thin, kHalfDifference);
  writer.length("outside", outside.across, outside.source, outside.name);
  writer.length("inside", inside.across, inside.source, inside.name);
  if (crossing && thin > Length())
    writer.number(fmt::format("threads of {} through it", *pitch), thin / crossing->pitch,
                  quantity::Kind::kNumber, 1, kHalfDifference,
                  "under 4 it is for light duty (common practice)");
  answer.tables.push_back(writer.take());
  if (off == Length()) answer.assumed.emplace_back("both on one axis");
  if (thin > Length() && thin < kThinSleeve)
    answer.cautions.push_back(
        fmt::format("Under {} a sleeve is bonded rather than pressed (common practice).",
                    both_ways(kThinSleeve, system)));
  return answer;
}

base::Result<Answer> webs(const Question& question) {
  constexpr int kMostHoles = 360;
  EntryReader read(question);
  const int count = read.count("count", 1, kMostHoles);
  const Length circle = read.size("circle");
  const Length hole = read.size("hole");
  const auto outside = read.maybe_size("outside");
  const auto inside = read.maybe_size("inside");
  const auto least = read.maybe_size("least");
  if (!read.failed()) read.refuse_unless(hole < circle, "hole", "less than the circle");
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  Answer answer;
  answer.asked = fmt::format("{} hole{} of {} on a circle of {}", count, count == 1 ? "" : "s",
                             both_ways(hole, system), both_ways(circle, system));
  TableWriter writer("metal left, edge to edge", system);
  std::optional<Length> thinnest;
  const auto add = [&](std::string what, Length web, const handbook::Source& source) {
    writer.length(std::move(what), web, source, web <= Length() ? "they run into each other" : "");
    thinnest = thinnest ? std::min(*thinnest, web) : web;
  };
  if (count > 1)
    add("hole to hole", handbook::chord_between_holes(as_diameter(circle), count) - hole, kBetweenHoles);
  if (outside) add("hole to outside", (*outside - circle - hole) / 2.0, kToEdge);
  if (inside) {
    // A register or a bore within the circle, or a register the circle itself lies in.
    const bool within = *inside < circle;
    add("hole to the inner circle", (within ? circle - *inside - hole : *inside - circle - hole) / 2.0,
        kToEdge);
  }
  if (!thinnest)
    return base::fail(base::Code::kEmptyValue, "", "several holes, --outside or --inside", "--outside");
  answer.tables.push_back(writer.take());
  const Length thin = *thinnest;
  answer.says =
      thin <= Length() ? "NO: no metal is left" : fmt::format("thinnest {}", both_ways(thin, system));
  if (least && thin > Length())
    answer.says = fmt::format("{}: {}", thin >= *least ? "OK" : "NO", answer.says);
  answer.assumed.emplace_back("at nominal places and sizes: what a hole is off comes off the metal");
  return answer;
}

}  // namespace sparewright::answers
