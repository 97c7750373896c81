#include <cmath>

#include <fmt/format.h>

#include "core/route/bench.hpp"
#include "core/route/lathe_works.hpp"
#include "core/route/marks.hpp"
#include "core/route/work_after.hpp"

namespace sparewright::route {
namespace {

// What the job says is done by then, else the ops before.
std::string done_before(const Route& route, const Setup& setup) {
  if (!setup.done_before.empty()) return setup.done_before;
  std::string ops;
  for (const Setup& other : route.plan.setups) {
    if (other.op == setup.op) break;
    ops += fmt::format("{}{}", ops.empty() ? "op " : ", ", other.op);
  }
  return ops;
}

void write_setup(ledger::Pen& pen, const Route& route, const Setup& setup) {
  Bench start{pen, route, setup, Printing(route.system), {}};
  start.sheet.op = setup.op;
  start.sheet.name = setup.name;
  start.sheet.done_before = done_before(route, setup);
  const auto publish = [&](SetupSheet sheet) {
    const base::Fingerprint print = fingerprint(sheet);
    pen.publish("sheet", std::move(sheet), print);
  };
  if (const auto* on = std::get_if<OnMill>(&setup.held)) {
    const auto orientation = orientation_of(on->holding);
    if (!orientation) return;  // refused when the text was read
    MillBench bench{std::move(start), *on, *orientation};
    write_mill_setup(bench);
    publish(std::move(bench.sheet));
  } else if (const auto* lathe = std::get_if<OnLathe>(&setup.held)) {
    LatheBench bench{std::move(start), *lathe};
    write_lathe_setup(bench);
    publish(std::move(bench.sheet));
  } else {
    MarksBench bench{std::move(start), std::get<ByMarks>(setup.held)};
    write_marks_setup(bench);
    publish(std::move(bench.sheet));
  }
}

// What is made before it: on a lathe the outside it starts from, at the drill press the holes that hold it to its mate.
void add_before(base::Hasher& h, const Route& route, const Setup& setup) {
  for (const Setup& other : route.plan.setups) {
    if (other.op == setup.op) return;
    h.add(other.op).add(static_cast<std::uint64_t>(other.works.size()));
    for (const Work& work : other.works)
      h.add(work.feature).add(work.joins);
  }
}

base::Fingerprint definition(const Route& route, const Setup& setup) {
  base::Hasher h;
  h.add(fingerprint(setup)).add(part::fingerprint(route.part)).add(static_cast<int>(route.system));
  add_before(h, route, setup);
  h.add(route.work.has_value());
  if (route.work) {
    h.add(static_cast<int>(route.work->group)).add(route.work->hardness.has_value());
    if (route.work->hardness) h.add(route.work->hardness->low).add(route.work->hardness->high);
  }
  return h.done();
}

}  // namespace

std::vector<ledger::Stage> stages(const Route& route) {
  std::vector<ledger::Stage> all;
  for (const Setup& setup : route.plan.setups) {
    all.push_back({setup_path(setup), definition(route, setup),
                   [route, setup](ledger::Pen& pen) { write_setup(pen, route, setup); }});
  }
  for (ledger::Stage& work : work_stages(route))
    all.push_back(std::move(work));
  return all;
}

bool cuts_are_worked_out(const Setup& setup, const part::Feature& feature) {
  if (const auto* on = std::get_if<OnMill>(&setup.held)) return mill_works_out(*on, feature);
  if (const auto* on = std::get_if<OnLathe>(&setup.held)) return lathe_works_it_out(*on, feature);
  return is_worked_out_by_marks(setup.machine.kind, feature);
}

std::string sheet_path(const Setup& setup) {
  return setup_path(setup) + "/sheet";
}

const ledger::Figure& Bench::feature_figure(std::string_view feature, std::string_view local) const {
  return pen.ask(fmt::format("{}/{}", part::feature_path(feature), local));
}

const ledger::Figure& Bench::side(part::Face face) const {
  return pen.ask(part::side_path(route.part, face));
}

const ledger::Figure& Bench::error_root(const std::string& local, double standard_uncertainty_mm,
                                        std::string source) const {
  ledger::Root root;
  root.kind = quantity::Kind::kLength;
  root.value = 0.0;
  root.origin = ledger::Origin::kDefault;
  root.source = std::move(source);
  root.shares = {{fmt::format("{}/{}", pen.stage(), local), standard_uncertainty_mm}};
  return pen.root(local, root);
}

const ledger::Figure& Bench::choice(const std::string& local, quantity::Kind kind, double base,
                                    std::string words, std::vector<const ledger::Figure*> inputs) const {
  ledger::Decision decision;
  decision.kind = kind;
  decision.value = base;
  decision.words = std::move(words);
  decision.inputs = std::move(inputs);
  return pen.decide(local, decision);
}

void Bench::take(const shop::Tool& tool) {
  if (in_spindle == tool.name) return;
  in_spindle = tool.name;
  const bool tells = tool.diameter_measured && tool.diameter && tool.kind == shop::ToolKind::kEndMill;
  sheet.items.emplace_back(Note{tells ? fmt::format("TOOL: {}, measures {}", tool.name, tool.diameter->typed)
                                      : "TOOL: " + tool.name});
}

const ledger::Figure& to_make(Bench& bench, const std::string& feature, const std::string& local,
                              const part::Dimension& dimension) {
  if (part::has_aim(dimension)) return bench.feature_figure(feature, local + "/aim");
  const ledger::Figure& nominal = bench.feature_figure(feature, local);
  const auto middle = [](auto least, auto most) { return (least + most) / 2.0; };
  return bench.pen.work(fmt::format("{}/{} to make", feature, local), nominal.kind,
                        "the middle of its limits", middle, bench.feature_figure(feature, local + "/least"),
                        bench.feature_figure(feature, local + "/most"));
}

Line& Bench::add_line(std::string says) {
  int number = 1;
  for (const Item& item : sheet.items)
    number += std::holds_alternative<Line>(item) ? 1 : 0;
  Line line;
  line.number = number;
  line.says = std::move(says);
  sheet.items.emplace_back(std::move(line));
  return std::get<Line>(sheet.items.back());
}

void write_mill_setup(MillBench& bench) {
  write_machine(bench);
  say_round_column(bench);
  write_hold(bench);
  write_pick_up(bench);
  write_works(bench);
  write_rounding(bench);
  write_before_unclamp(bench);
  write_cautions(bench);
  write_view(bench);
}

void write_not_worked_out(Bench& bench, const part::Feature& feature) {
  bench
      .add_line(fmt::format("{}: {}; its cuts are not worked out here", feature.name, part::kind_of(feature)))
      .expect = "NOT KNOWN";
}

double from_half_width(double half_width_mm) {
  return half_width_mm / std::sqrt(3.0);
}

}  // namespace sparewright::route
