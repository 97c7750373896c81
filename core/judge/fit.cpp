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

// A tool that makes a hole its own size and cannot be set to an aim: a reamer, or the last drill where nothing follows.
struct SizedTool {
  std::string what;    // "reamer"; empty where the hole is made to its aim
  std::string figure;  // its diameter
};

SizedTool sized_tool(const Subject& subject, const part::Feature& feature) {
  const auto make = std::get<part::Hole>(feature.shape).make;
  if (make == part::HoleMake::kBored) return {};
  const bool reamed = make == part::HoleMake::kReamed;
  SizedTool last;
  for (const Made& made : all_made(subject)) {
    if (made.feature.name != feature.name) continue;
    for (const shop::Tool& tool : made.work.tools) {
      if (tool.kind != (reamed ? shop::ToolKind::kReamer : shop::ToolKind::kTwistDrill)) continue;
      last = {reamed ? "reamer" : "drill",
              fmt::format("{}/{}/{} diameter", route::setup_path(made.setup), feature.name, tool.name)};
    }
  }
  return last;
}

// The size the hole comes to, as it will be known once it has been measured: a wrong reading of it is a wrong size.
const Figure& measured_size(Pen& pen, const SizedTool& tool, const part::Feature& feature,
                            const part::Hole& hole) {
  const bool is_set = tool.what.empty();
  return pen.work(
      "hole as measured", Kind::kDiameter,
      fmt::format("{}, and what a reading of it does not know", is_set ? "aim" : tool.what),
      [](auto size, auto error) { return size + error; },
      pen.ask(is_set ? part::feature_path(feature.name) + "/diameter/aim" : tool.figure),
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

// Where no instrument of the shop tells the limits, there may be a plug gauge that does (core/measuring/plug_gauge.hpp).
std::string finer_than_a_reading(Pen& pen, const part::Feature& feature) {
  const bool by_plug = pen.ask(fmt::format("plug gauge/{}/go", feature.name)).known();
  return fmt::format("try the mate itself in the hole while the work is still held, or {}",
                     by_plug ? "the stepped plug gauge of the inspection sheet" : "use a finer instrument");
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
  const SizedTool tool = sized_tool(subject, feature);
  const Figure& at_aim = pen.work("clearance as made", Kind::kLength, "hole as measured less the mate", less,
                                  measured_size(pen, tool, feature, hole), mate);
  pen.judge({.check = "fit as it can be measured",
             .subject = feature.name,
             .figure = &at_aim,
             .low = asked.least,
             .high = asked.most,
             .reason = fmt::format("{} the clearance is {}, good to {}; {}",
                                   tool.what.empty() ? "at the aim" : "with this " + tool.what,
                                   route::or_not_known(at_aim, print.fine(at_aim.value)),
                                   route::or_not_known(at_aim, print.fine(at_aim.expanded())), wanted),
             .source = "JCGM 100:2008, 6.2: expanded uncertainty, 19 times in 20",
             .todo = tool.what.empty() ? finer_than_a_reading(pen, feature)
                                       : fmt::format("use a {} of another size, or bore the hole", tool.what),
             .margin = "margin as made"});
}

}  // namespace

void add_fit_checks(const Shared& subject, Stages& stages) {
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    if (hole == nullptr) continue;
    const std::string mate = part::mate_of(*hole);
    if (mate.empty()) continue;
    stages.push_back(check_stage(subject, "fit", feature.name, [subject, feature, mate](Pen& pen) {
      judge_fit(pen, *subject, feature, std::get<part::Hole>(feature.shape), mate);
    }));
  }
}

}  // namespace sparewright::judge
