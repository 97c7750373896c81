#include "core/measuring/plug_gauge.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/measuring/room.hpp"
#include "core/route/list_sheet.hpp"
#include "core/survey/good_to.hpp"

namespace sparewright::measuring {
namespace {

using ledger::Figure;
using ledger::Pen;
using quantity::Kind;
using survey::Jaws;
using survey::Reaches;

constexpr int kMostBetween = 3;  // more steps are more than anybody turns (a choice made here)
constexpr std::string_view kSource =
    "a hole is no smaller than the plug that goes in and no larger than the one that does not; "
    "each as far as the micrometer knows it, 19 times in 20 (JCGM 100:2008, 6.2)";

// What is worked out before anything is written.
struct Limits {
  const Figure* least = nullptr;
  const Figure* most = nullptr;
  [[nodiscard]] double width() const { return most->value - least->value; }
};

// The finest instrument of the shop that takes that size with these jaws; none where none does.
std::optional<survey::Reach> finest(const Subject& subject, Jaws jaws, double size, double tolerance) {
  const auto all = survey::reaches(subject.survey.instruments, {jaws, size, tolerance, Kind::kLength});
  if (all.empty() || all.front().reaches == Reaches::kDoesNotGo) return std::nullopt;
  return all.front();
}

// What a plug read off that instrument leaves open against the hole's limit. A limit taken from a mate that was read with it
// shares its zero, which then counts once.
double open_with(Pen& pen, const survey::Reach& outside, const Figure& limit, std::string_view local) {
  const Figure& held = pen.work(
      local, Kind::kLength, "what a reading of the plug does not know, against the limit",
      [](auto reading, auto size) { return reading - size; },
      pen.ask(survey::good_to_path(outside.instrument, outside.jaws) + "/one reading"), limit);
  return held.expanded();
}

const Figure& write_step(Pen& pen, const std::string& local, double size, std::string words,
                         const Limits& limits) {
  ledger::Decision step;
  step.kind = Kind::kDiameter;
  step.value = size;
  step.words = std::move(words);
  step.inputs = {limits.least, limits.most};
  step.source = std::string(kSource);
  return pen.decide(local, step);
}

// Sizes as they are turned: to the next printed place, inwards.
class Steps {
 public:
  Steps(const Subject& subject, double go, double will_not_go, double open) {
    const bool inch = subject.survey.system == quantity::UnitSystem::kInch;
    const double place = inch ? quantity::unit::thou.to_base(0.1) : 0.001;
    go_ = std::ceil(go / place - kSlack) * place;
    will_not_go_ = std::floor(will_not_go / place + kSlack) * place;
    // Common practice: a step that warns some cuts before.
    before_ = go_ - (inch ? quantity::unit::thou.to_base(2.0) : 0.05);
    const double apart = will_not_go_ - go_;
    // No closer than what the micrometer leaves open of each.
    between_ =
        std::clamp(static_cast<int>(std::floor(apart / std::max(open, place) + kSlack)) - 1, 0, kMostBetween);
    for (int i = 1; i <= between_; ++i)
      sizes_.push_back(std::round((go_ + apart * i / (between_ + 1)) / place) * place);
  }
  [[nodiscard]] bool there_are() const { return will_not_go_ >= go_; }
  [[nodiscard]] double go() const { return go_; }
  [[nodiscard]] double will_not_go() const { return will_not_go_; }
  [[nodiscard]] double before() const { return before_; }
  [[nodiscard]] const std::vector<double>& between() const { return sizes_; }

 private:
  static constexpr double kSlack = 1e-6;
  double go_ = 0.0;
  double will_not_go_ = 0.0;
  double before_ = 0.0;
  int between_ = 0;
  std::vector<double> sizes_;
};

route::ListSection section_for(const part::Feature& feature) {
  route::ListSection section;
  section.heading = fmt::format("NO INSTRUMENT HERE TELLS THE LIMITS OF {}", feature.name);
  return section;
}

// The mate itself, where there is one.
void offer_up(route::ListSection& section, const part::Feature& feature) {
  const std::string mate = part::mate_of(std::get<part::Hole>(feature.shape));
  if (mate.empty()) return;
  section.says.push_back(
      fmt::format("Offer up {} while the work is still held: clean, both cold, no force. It must go in by "
                  "hand; then leave it.",
                  mate));
}

void publish(Pen& pen, route::ListSection section) {
  route::ListSheet alone;
  alone.sections = {section};
  const base::Fingerprint print = route::fingerprint(alone);
  pen.publish("section", std::move(section), print);
}

void write_steps(Pen& pen, const Subject& subject, const part::Feature& feature, const Steps& steps,
                 const Limits& limits, const survey::Reach& outside) {
  const route::Printing print(subject.survey.system);
  route::ListSection section = section_for(feature);
  section.says.push_back(
      fmt::format("{} a stepped plug, each step long enough to enter and be felt; polish and measure each "
                  "with {}. Try it in the hole, "
                  "both cold and clean, while the work is still held.",
                  subject.has_lathe ? "Turn" : "There is no lathe to turn one on: have someone turn",
                  outside.instrument));
  section.table.headings = {"STEP", "MUST READ", "IN THE HOLE"};
  section.table.figures = 1;
  section.table.to_fill = true;
  const auto add = [&](const std::string& name, double size, const std::string& words,
                       const std::string& says) {
    const Figure& step = write_step(pen, name, size, words, limits);
    section.table.rows.push_back({name, print.fine(step.value), says});
  };
  add("comes before", steps.before(), "the step that goes, less what warns in time",
      fmt::format("goes: {} to cut until the next", print.fine(steps.go() - steps.before())));
  add("go", steps.go(),
      "the least hole, and what a reading of the plug leaves open, up to the next printed size", "MUST GO");
  int number = 0;
  for (const double size : steps.between())
    add(fmt::format("step {}", ++number), size, "between the two", "try: the last that goes is the size");
  add("will not go", steps.will_not_go(),
      "the greatest hole, less what a reading of the plug leaves open, down to the next printed size",
      "MUST NOT GO");
  const double apart = (steps.will_not_go() - steps.go()) / static_cast<double>(steps.between().size() + 1);
  write_step(pen, "tells to", apart / 2.0, "half of what lies between two steps", limits);
  offer_up(section, feature);
  publish(pen, std::move(section));
}

}  // namespace

bool is_fine_hole(const part::Feature& feature) {
  const auto* hole = std::get_if<part::Hole>(&feature.shape);
  return hole != nullptr && part::has_aim(hole->diameter);
}

std::string plug_gauge_path(std::string_view hole) {
  return fmt::format("plug gauge/{}", hole);
}

void write_plug_gauge(Pen& pen, const Subject& subject, const part::Feature& feature) {
  const std::string path = part::feature_path(feature.name) + "/diameter";
  const Limits limits{&pen.need(path + "/least"), &pen.need(path + "/most")};
  const double width = limits.width();
  const auto inside = finest(subject, Jaws::kInside, limits.most->value, width);
  if (inside && inside->reaches != Reaches::kTooCoarse) return;  // an instrument does it
  const auto outside = finest(subject, Jaws::kOutside, limits.most->value, width);
  route::ListSection section = section_for(feature);
  if (!outside) {
    section.says.emplace_back(
        "A plug gauge could not be measured either: no instrument here takes its size.");
    offer_up(section, feature);
    return publish(pen, std::move(section));
  }
  const double open_least = open_with(pen, *outside, *limits.least, "left open at the least");
  const double open_most = open_with(pen, *outside, *limits.most, "left open at the most");
  const Steps steps(subject, limits.least->value + open_least, limits.most->value - open_most,
                    std::max(open_least, open_most));
  if (steps.there_are()) return write_steps(pen, subject, feature, steps, limits, *outside);
  const route::Printing print(subject.survey.system);
  section.says.push_back(fmt::format(
      "A plug gauge does not tell them either: {} leaves {} of it open and {} lie between the limits.",
      outside->instrument, print.fine(std::max(open_least, open_most)), print.fine(width)));
  offer_up(section, feature);
  publish(pen, std::move(section));
}

}  // namespace sparewright::measuring
