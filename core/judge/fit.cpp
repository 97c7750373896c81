#include <fmt/format.h>

#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Pen;
using part::Duty;
using quantity::Kind;

constexpr std::string_view kSource = "the mate in hand; clearance is hole less mate";

struct Asked {
  const Figure* least = nullptr;
  const Figure* most = nullptr;
};

Asked asked_of(Pen& pen, const part::Feature& feature, const part::Hole& hole) {
  const std::string path = part::feature_path(feature.name);
  if (std::holds_alternative<part::OnMate>(hole.diameter.size)) {
    return {&pen.ask(path + "/diameter/least clearance"), &pen.ask(path + "/diameter/most clearance")};
  }
  return {&pen.ask(path + "/clearance asked/least"), &pen.ask(path + "/clearance asked/most")};
}

// The name of the reamer's own size, where one makes the hole: it cannot be set to an aim.
std::string reamer_of(const Subject& subject, const part::Feature& feature) {
  if (std::get<part::Hole>(feature.shape).make != part::HoleMake::kReamed) return {};
  for (const route::Setup& setup : subject.route.plan.setups) {
    for (const route::Work& work : setup.works) {
      if (work.feature != feature.name) continue;
      for (const shop::Tool& tool : work.tools) {
        if (tool.kind == shop::ToolKind::kReamer)
          return fmt::format("{}/{}/{} diameter", route::setup_path(setup), feature.name, tool.name);
      }
    }
  }
  return {};
}

// The size the hole comes to, as it will be known once it has been measured: a wrong reading of it is a wrong size.
const Figure& measured_size(Pen& pen, const Subject& subject, const part::Feature& feature,
                            const part::Hole& hole) {
  const std::string reamer = reamer_of(subject, feature);
  return pen.work(
      "hole as measured", Kind::kDiameter,
      reamer.empty() ? "aim, and what a reading of it does not know"
                     : "reamer, and what a reading of it does not know",
      [](auto size, auto error) { return size + error; },
      pen.ask(reamer.empty() ? part::feature_path(feature.name) + "/diameter/aim" : reamer),
      pen.ask(part::good_to_path(hole.diameter) + "/one reading"));
}

// What the sentences of one fit share.
struct Words {
  std::string path;
  std::string feature;
  std::string mate_name;
  std::string asked;
};

void judge_ends(Pen& pen, const Words& words, const Asked& asked, const Figure& mate,
                const route::Printing& print) {
  const auto less = [](auto hole_size, auto mate_size) { return hole_size - mate_size; };
  const Figure& least = pen.work("least clearance", Kind::kLength, "least hole less the mate as measured",
                                 less, pen.ask(words.path + "/diameter/least"), mate);
  const Figure& most = pen.work("most clearance", Kind::kLength, "most hole less the mate as measured", less,
                                pen.ask(words.path + "/diameter/most"), mate);
  const std::string mate_text = route::or_not_known(mate, print.fine(mate.value));
  pen.judge({.check = "fit, tight end",
             .subject = words.feature,
             .figure = &least,
             .low = asked.least,
             .reason = fmt::format("smallest hole leaves {} on the mate ({} {}); {}",
                                   route::or_not_known(least, print.fine(least.value)), words.mate_name,
                                   mate_text, words.asked),
             .source = std::string(kSource),
             .todo = fmt::format("make the hole's lower limit {}",
                                 route::or_not_known(mate, print.fine(mate.value + asked.least->value))),
             .margin = "tight margin"});
  pen.judge({.check = "fit, loose end",
             .subject = words.feature,
             .figure = &most,
             .high = asked.most,
             .reason = fmt::format("largest hole leaves {} on the mate ({} {}); {}",
                                   route::or_not_known(most, print.fine(most.value)), words.mate_name,
                                   mate_text, words.asked),
             .source = std::string(kSource),
             .todo = fmt::format("make the hole's upper limit {}",
                                 route::or_not_known(mate, print.fine(mate.value + asked.most->value))),
             .margin = "loose margin"});
}

void judge_fit(Pen& pen, const Subject& subject, const part::Feature& feature, const part::Hole& hole,
               const std::string& mate_name) {
  const route::Printing print(subject.route.system);
  const std::string path = part::feature_path(feature.name);
  const auto& named = subject.route.part.surroundings.dimension_figures;
  const auto mate_path = named.find(mate_name);
  const Figure& mate = pen.ask(mate_path == named.end() ? mate_name : mate_path->second);
  const auto less = [](auto hole_size, auto mate_size) { return hole_size - mate_size; };
  const Asked asked = asked_of(pen, feature, hole);
  const std::string wanted =
      fmt::format("{} to {} asked", route::or_not_known(*asked.least, print.fine(asked.least->value)),
                  route::or_not_known(*asked.most, print.fine(asked.most->value)));
  // A hole made to the mate has its limits from it: nothing could come out of comparing the two.
  if (!std::holds_alternative<part::OnMate>(hole.diameter.size))
    judge_ends(pen, {path, feature.name, mate_name, wanted}, asked, mate, print);
  if (hole.diameter.duty != Duty::kFits && hole.diameter.duty != Duty::kLocates) return;
  const bool reamed = !reamer_of(subject, feature).empty();
  const Figure& at_aim = pen.work("clearance as made", Kind::kLength, "hole as measured less the mate", less,
                                  measured_size(pen, subject, feature, hole), mate);
  pen.judge(
      {.check = "fit as it can be measured",
       .subject = feature.name,
       .figure = &at_aim,
       .low = asked.least,
       .high = asked.most,
       .reason =
           fmt::format("{} the clearance is {}, good to {}; {}", reamed ? "with this reamer" : "at the aim",
                       route::or_not_known(at_aim, print.fine(at_aim.value)),
                       route::or_not_known(at_aim, print.fine(at_aim.expanded())), wanted),
       .source = "JCGM 100:2008, 6.2: expanded uncertainty, 19 times in 20",
       .todo =
           reamed ? "use a reamer of another size, or bore the hole"
                  : "try the mate itself in the hole while the work is still held, or use a finer instrument",
       .margin = "margin as made"});
}

}  // namespace

void add_fit_checks(const Subject& subject, Stages& stages) {
  for (const part::Feature& feature : subject.route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    if (hole == nullptr) continue;
    const auto* on = std::get_if<part::OnMate>(&hole->diameter.size);
    const std::string mate = on != nullptr ? on->mate : hole->mate;
    if (mate.empty()) continue;
    stages.push_back(check_stage(subject, "fit", feature.name, [subject, feature, mate](Pen& pen) {
      judge_fit(pen, subject, feature, std::get<part::Hole>(feature.shape), mate);
    }));
  }
}

}  // namespace sparewright::judge
