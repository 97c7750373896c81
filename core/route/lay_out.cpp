// What to have on the bench before the first cut: stock, screws, tools, instruments.
#include <fmt/format.h>

#include "core/base/once.hpp"
#include "core/handbook/socket_head_screws.hpp"
#include "core/route/desk.hpp"
#include "core/route/joint_words.hpp"
#include "core/route/on_hand.hpp"
#include "core/route/stock.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;

std::string nominal_of(Desk& desk, const part::Feature& feature, const char* local) {
  const Figure& figure = desk.pen.ask(fmt::format("{}/{}", part::feature_path(feature.name), local));
  return or_not_known(figure, desk.print.plain(figure.value));
}

ListSection stock(Desk& desk) {
  const part::Blank& blank = desk.route.part.blank;
  ListSection section;
  section.heading = "STOCK TO TAKE";
  section.table.headings = {"FOR", "MATERIAL", "TAKE", "LONG", "FOUND"};
  section.table.figures = 3;
  section.table.ticks = true;
  section.table.rows.push_back({"the part", blank.material, section_words(blank),
                                blank.sizes[0].nominal.typed, found_words(blank, desk.print)});
  if (const auto there = on_hand(blank, desk.route.on_hand); there && !is_in_hand(blank))
    section.says.push_back(fmt::format("From stock: {}{}.", there->piece->name,
                                       there->to_spare_mm < 0.0 ? ", which is too short" : ""));
  for (const auto& [feature, formed] : bushes_of(desk.route.part)) {
    section.table.rows.push_back(
        {feature.name, "not said",
         fmt::format("round bar over {} dia, solid or bored under {}", nominal_of(desk, feature, "diameter"),
                     nominal_of(desk, feature, "bore")),
         nominal_of(desk, feature, "length"), ""});
  }
  section.says.emplace_back(
      found_words(blank, desk.print).empty()
          ? "Add the saw's cut and what the ends are faced by, unless they are in the length."
          : "The blank is there as found: nothing is added for the saw.");
  return section;
}

// The length is in the designation, or what the checks say is to be bought, or it hangs on what the screw goes into.
std::string screw_length_words(const Desk& desk, const Screws& screws) {
  const part::Feature* first = part::find_feature(desk.route.part, screws.holes.front());
  const auto& screw = std::get<part::Hole>(first->shape).screw;
  if (screw->length_mm) return "";
  const std::string length = length_to_buy_words(desk.pen, desk.print.system(), screws.holes.front());
  return length.empty() ? ", its length by the mate's thread: measure there" : ", " + length;
}

ListSection hardware(const Desk& desk) {
  ListSection section;
  section.heading = "HARDWARE";
  for (const Screws& screws : screws_of(desk.route.part)) {
    section.ticks.push_back(
        fmt::format("{} x {}{}", screws.holes.size(), screws.designation, screw_length_words(desk, screws)));
  }
  return section;
}

void add_holder(base::Once& names, const Setup& setup) {
  if (const auto* on = std::get_if<OnMill>(&setup.held)) {
    const Holding& holding = on->holding;
    const std::string what = holding.vise() != nullptr ? "parallels" : "packing";
    names.add(holding.under.height.base() > 0.0
                  ? fmt::format("{}, {} {}", holding.name(), what, holding.under.typed)
                  : holding.name());
    names.add(on->x.edge_finder.name);
    names.add(on->y.edge_finder.name);
  } else if (const auto* lathe = std::get_if<OnLathe>(&setup.held)) {
    names.add(lathe->holder.name);
    if (lathe->tail != TailSupport::kNone) names.add(std::string(name_of(lathe->tail)));
  } else {
    names.add(std::string(name_of_holder(std::get<ByMarks>(setup.held))));
  }
}

ListSection tools(const Desk& desk) {
  base::Once names;
  for (const Setup& setup : desk.route.plan.setups) {
    add_holder(names, setup);
    for (const Work& work : setup.works) {
      for (const shop::Tool& tool : work.tools)
        names.add(tool.name);
    }
    for (const Deburring& burrs : setup.deburrings) {
      for (const shop::Tool& tool : burrs.tools)
        names.add(tool.name);
    }
  }
  return {"TOOLS", {}, {}, names.texts(), {}};
}

ListSection instruments(const Desk& desk) {
  base::Once names;
  for (const part::Feature& feature : desk.route.part.features) {
    for (const part::NamedDimension& d : part::dimensions_of(feature)) {
      if (part::has_aim(*d.dimension) && !d.dimension->instrument.empty()) names.add(d.dimension->instrument);
    }
  }
  return {"TO MEASURE WITH, EACH WITH ITS ZERO PROVED", {}, {}, names.texts(), {}};
}

// What marking out, trueing and cleaning up want beside the tools of the setups. Common practice.
ListSection at_the_bench(const Desk& desk) {
  base::Once names;
  if (!desk.route.plan.setups.empty()) {
    for (const char* one : {"dial indicator and its stand", "height gauge, scriber, marking blue", "square",
                            "soft hammer", "cutting oil, chip brush", "file, deburring tool"})
      names.add(one);
  }
  for (const Screws& screws : screws_of(desk.route.part)) {
    if (const auto screw =
            handbook::socket_head_screw(screws.designation.substr(0, screws.designation.find(char(32)))))
      names.add(fmt::format("hexagon key {}", screw->key_name));
  }
  return {"AT THE BENCH", {}, {}, names.texts(), {}};
}

}  // namespace

void write_lay_out(Desk& desk) {
  desk.sheet.tab = "LAY OUT";
  desk.sheet.name = "before the first cut";
  desk.sheet.sections.push_back(stock(desk));
  for (ListSection section : {hardware(desk), tools(desk), at_the_bench(desk), instruments(desk)}) {
    if (!section.ticks.empty()) desk.sheet.sections.push_back(std::move(section));
  }
}

}  // namespace sparewright::route
