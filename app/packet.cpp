#include "app/packet.hpp"

#include <algorithm>
#include <iterator>
#include <limits>
#include <span>

#include <fmt/format.h>

#include "app/not_cleared.hpp"
#include "app/printing.hpp"
#include "core/base/messages.hpp"
#include "core/base/once.hpp"
#include "core/handbook/materials.hpp"
#include "core/route/cautions.hpp"
#include "core/route/lists.hpp"
#include "core/route/printing.hpp"
#include "core/route/stock.hpp"

namespace sparewright::app {
namespace {

std::string hand_words(const job::Job& job) {
  std::string words = job.subject.hand.empty() ? "not said" : job.subject.hand;
  if (!job.subject.drawn_from.empty() && job.subject.drawn_from != job.subject.hand)
    words += "; drawn from " + job.subject.drawn_from;
  if (job.subject.side_seen)
    words += fmt::format(", which shows the {}", part::name_of(*job.subject.side_seen));
  if (job.faces_you) words += fmt::format("; in its place the {} faces you", part::name_of(*job.faces_you));
  if (job.subject.turn_over)
    words += *job.subject.turn_over ? "; may be turned over" : "; may NOT be turned over";
  return words;
}

// The readings of a dimension: those of it alone, or, where there are none, all it came from.
std::string how_measured(const job::Job& job, const ledger::Snapshot& figures, const std::string& dimension) {
  std::string alone;
  std::string all;
  const auto add = [](std::string& to, const std::string& source) {
    if (to.find(source) == std::string::npos) to += (to.empty() ? "" : "; ") + source;
  };
  for (const survey::Reading& reading : job.survey.readings) {
    const ledger::Figure* figure = figures.find("reading/" + reading.name);
    const bool of_it = std::find(reading.of.begin(), reading.of.end(), dimension) != reading.of.end();
    if (figure == nullptr || (!of_it && !reading.of.empty())) continue;
    add(all, figure->source);
    if (of_it && reading.of.size() == 1) add(alone, figure->source);
  }
  return alone.empty() ? all : alone;
}

// Every measured dimension that a feature of the new part is made to or checked against.
std::vector<sheets::Mate> mates_of(const job::Job& job, const ledger::Snapshot& figures) {
  std::vector<sheets::Mate> mates;
  base::Once names;
  for (const part::Feature& feature : job.subject.route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    if (hole == nullptr) continue;
    const auto* on = std::get_if<part::OnMate>(&hole->diameter.size);
    if (on != nullptr) names.add(on->mate);
    if (!hole->mate.empty()) names.add(hole->mate);
  }
  for (const std::string& name : names.texts()) {
    const ledger::Figure* figure = figures.find("survey/" + name);
    if (figure == nullptr) continue;
    const NumberRow row = row_of(*figure, job.system);
    mates.push_back({name, row.shown, row.good_to, how_measured(job, figures, name)});
  }
  return mates;
}

// Of one check those that are OK, as one line of the sheet.
struct AllOk {
  sheets::Check check;  // of the one that has the least to spare
  double margin = std::numeric_limits<double>::infinity();
  base::Once subjects;
};

constexpr std::size_t kMostSubjects = 4;  // named on one line

std::string subjects_words(const std::vector<std::string>& subjects) {
  const bool too_many = subjects.size() > kMostSubjects;
  const std::size_t named = too_many ? kMostSubjects - 1 : subjects.size();
  std::string words;
  for (std::size_t i = 0; i < named; ++i)
    words += (words.empty() ? "" : ", ") + subjects[i];
  return too_many ? fmt::format("{} and {} more", words, subjects.size() - named) : words;
}

void add_ok(std::vector<AllOk>& all, sheets::Check check, double margin) {
  auto same = std::find_if(all.begin(), all.end(),
                           [&](const AllOk& other) { return other.check.check == check.check; });
  if (same == all.end()) {
    all.push_back({check, margin, {}});
    same = std::prev(all.end());
    same->check.count = 0;
  }
  same->subjects.add(check.subject);
  ++same->check.count;
  if (margin >= same->margin) return;
  same->margin = margin;
  same->check.margin = std::move(check.margin);
  same->check.reason = std::move(check.reason);
}

std::vector<sheets::Check> checks_of(const ledger::Snapshot& figures, quantity::UnitSystem system) {
  std::vector<sheets::Check> checks;
  std::vector<AllOk> all_ok;
  for (const ledger::Verdict& verdict : figures.verdicts()) {
    const VerdictRow row = row_of(verdict, figures, system);
    sheets::Check check{verdict.check,    verdict.subject, verdict.state,
                        row.margin_shown, verdict.reason,  verdict.todo};
    if (verdict.state == ledger::State::kOk) {
      add_ok(all_ok, std::move(check), row.margin.value_or(std::numeric_limits<double>::infinity()));
    } else {
      checks.push_back(std::move(check));
    }
  }
  for (AllOk& ok : all_ok) {
    ok.check.subject = subjects_words(ok.subjects.texts());
    checks.push_back(std::move(ok.check));
  }
  return checks;
}

std::vector<sheets::Query> queries_of(const std::vector<ledger::Query>& all) {
  std::vector<sheets::Query> queries;
  for (const ledger::Query& query : all) {
    if (queries.size() == sheets::kMostQueries) break;
    queries.push_back({query.says, query.happens, query.todo, query.serious, query.reason});
  }
  return queries;
}

// "Op 10, 20: Chuck key out": once, however many setups say it.
std::string caution_in(const std::string& says, const std::vector<route::SetupSheet>& setups) {
  std::string ops;
  for (const route::SetupSheet& setup : setups) {
    if (std::find(setup.cautions.begin(), setup.cautions.end(), says) != setup.cautions.end())
      ops += fmt::format("{}{}", ops.empty() ? "" : ", ", setup.op);
  }
  const bool is_sentence = !says.empty() && says.front() >= 'A' && says.front() <= 'Z';
  return fmt::format("Op {}{} {}", ops, is_sentence ? ":" : ",", says);
}

// What every spindle asks, what the metal asks, then each danger with the ops it sits in.
std::vector<std::string> cautions_of(const part::Part& part, const std::vector<route::SetupSheet>& setups) {
  std::vector<std::string> all;
  if (!setups.empty()) all.push_back(route::spindle_caution());
  if (const auto found = handbook::find_material(part.blank.material)) {
    for (std::string& one : route::material_cautions(found->material.group, found->material.name))
      all.push_back(std::move(one));
  }
  base::Once dangers;
  for (const route::SetupSheet& setup : setups) {
    for (const std::string& caution : setup.cautions)
      dangers.add(caution);
  }
  for (const std::string& danger : dangers.texts())
    all.push_back(caution_in(danger, setups));
  return all;
}

sheets::FirstSheet first_sheet(const job::Job& job, ledger::Ledger& ledger, const ledger::Snapshot& figures,
                               const std::vector<route::SetupSheet>& setups) {
  const route::Printing print(job.system);
  const part::Part& part = job.subject.route.part;
  sheets::FirstSheet first;
  first.hand = hand_words(job);
  first.material = job.material_assumed.empty()
                       ? part.blank.material
                       : fmt::format("{} ({})", part.blank.material, job.material_assumed);
  first.blank = route::blank_words(part.blank, print);
  first.sizes_in = job.system == quantity::UnitSystem::kInch ? "inches" : "millimetres";
  first.mates = mates_of(job, figures);
  first.checks = checks_of(figures, job.system);
  first.queries = queries_of(job::queries(job, ledger.queries()));
  const auto& general = part.surroundings.general;
  first.the_rest = fmt::format("all others: two places and fractions {}, three places {}",
                               general.two_places.typed, general.three_places.typed);
  base::Once matters;
  for (const route::SetupSheet& setup : setups) {
    for (const std::string& size : setup.sizes_that_matter)
      matters.add(size);
  }
  first.sizes_that_matter = matters.texts();
  first.cautions = cautions_of(part, setups);
  return first;
}

// Those that have anything to say.
std::vector<route::ListSheet> lists_of(ledger::Ledger& ledger, std::span<const std::string_view> names) {
  std::vector<route::ListSheet> lists;
  for (const std::string_view name : names) {
    const auto sheet = ledger.value<route::ListSheet>(route::list_path(name));
    if (sheet && !sheet->sections.empty()) lists.push_back(*sheet);
  }
  return lists;
}

drawing::EdgesOf edges_from(solid::Shelf& solids) {
  return [&solids](const shape::Recipe& of) -> base::Result<std::vector<solid::Edge>> {
    const auto made = solids.solid(of).get();
    if (!made) return tl::unexpected(made.error());
    return solid::edges_of(*made);
  };
}

// The work in each setup, as the one before it left it and as it leaves it.
void add_held(const job::Job& job, ledger::Ledger& ledger, solid::Shelf& solids, sheets::Packet& packet) {
  std::size_t cuts_before = 0;
  for (const route::SetupSheet& setup : packet.setups) {
    packet.held.emplace_back();
    const auto path = route::recipe_path_after(job.subject.route.plan, setup.op);
    if (!path) continue;
    const auto after = ledger.value<shape::Recipe>(*path);
    if (!after) return;  // nor is there any later
    if (const auto* view = std::get_if<route::PlanView>(&setup.view)) {
      if (auto views = drawing::held_views(*view, *after, cuts_before, edges_from(solids)))
        packet.held.back() = std::move(*views);
    }
    cuts_before = after->cuts().size();
  }
}

// Asks for the solids that will be drawn, so that they are made while the rest is worked out.
void start_solids(const job::Job& job, ledger::Ledger& ledger, solid::Shelf& solids) {
  if (const auto part = ledger.value<shape::Recipe>(part::kRecipe)) (void)solids.solid(*part);
  for (const route::Setup& setup : job.subject.route.plan.setups) {
    const auto path = route::recipe_path_after(job.subject.route.plan, setup.op);
    const auto work = path ? ledger.value<shape::Recipe>(*path) : nullptr;
    if (work) (void)solids.solid(*work);
  }
}

void add_drawing(const job::Job& job, ledger::Ledger& ledger, const ledger::Snapshot& figures,
                 solid::Shelf& solids, sheets::Packet& packet) {
  const auto recipe = ledger.value<shape::Recipe>(part::kRecipe);
  if (!recipe) {
    packet.no_drawing = "No drawing: the part's geometry cannot be, or is not known; see the checks.";
    return;
  }
  const part::Part& part = job.subject.route.part;
  auto views = drawing::views_of(part, figures, *recipe, edges_from(solids));
  if (!views) {
    packet.no_drawing = "No drawing: " + base::sentence(views.error());
    return;
  }
  packet.drawing = drawing::PartContent{
      std::move(*views), drawing::marks_of(part, figures, job.system, job.both_units),
      job.first_angle ? drawing::Projection::kFirstAngle : drawing::Projection::kThirdAngle};
}

}  // namespace

sheets::Packet packet_of(const job::Job& job, ledger::Ledger& ledger, solid::Shelf& solids) {
  sheets::Packet packet;
  packet.title = job.title;
  packet.revision = job.revision;
  start_solids(job, ledger, solids);
  const ledger::Snapshot figures = ledger.keep();
  const route::Printing print(job.system);
  const std::vector<ledger::Verdict> verdicts = figures.verdicts();
  const std::vector<ledger::Query> queries = job::queries(job, ledger.queries());
  for (const route::Setup& setup : job.subject.route.plan.setups) {
    if (const auto sheet = ledger.value<route::SetupSheet>(route::sheet_path(setup))) {
      packet.setups.push_back(*sheet);
      packet.setups.back().stock = fmt::format("{}, {}", job.subject.route.part.blank.material,
                                               route::blank_words(job.subject.route.part.blank, print));
      packet.setups.back().not_cleared = not_cleared(setup, verdicts, queries);
    }
  }
  packet.before = lists_of(ledger, route::kListsBefore);
  packet.after = lists_of(ledger, route::kListsAfter);
  add_drawing(job, ledger, figures, solids, packet);
  add_held(job, ledger, solids, packet);
  packet.first = first_sheet(job, ledger, figures, packet.setups);
  return packet;
}

}  // namespace sparewright::app
