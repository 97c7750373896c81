// What to have on the bench before the first cut: stock, screws, tools, instruments.
#include <map>

#include <fmt/format.h>

#include "core/route/desk.hpp"
#include "core/route/stock.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using part::Form;

const part::Formed* bush_in(const part::Feature& feature) {
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  return formed != nullptr && formed->form == Form::kBush ? formed : nullptr;
}

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
  for (const part::Feature& feature : desk.route.part.features) {
    if (bush_in(feature) == nullptr) continue;
    section.table.rows.push_back(
        {feature.name, "not said",
         fmt::format("round bar over {} dia, bore {}", nominal_of(desk, feature, "diameter"),
                     nominal_of(desk, feature, "bore")),
         nominal_of(desk, feature, "length"), ""});
  }
  section.says.emplace_back(
      "Add the saw's cut and what the ends are faced by, unless they are in the length.");
  return section;
}

ListSection hardware(const Desk& desk) {
  ListSection section;
  section.heading = "HARDWARE";
  std::map<std::string, int> screws;
  for (const part::Feature& feature : desk.route.part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    if (hole != nullptr && hole->screw) ++screws[hole->screw->designation];
  }
  for (const auto& [designation, count] : screws)
    section.ticks.push_back(fmt::format("{} x {}, length not worked out", count, designation));
  return section;
}

ListSection tools(const Desk& desk) {
  Once names;
  for (const Setup& setup : desk.route.plan.setups) {
    names.add(setup.holding.vise.name + ", parallels " + setup.holding.parallels.typed);
    names.add(setup.x.edge_finder.name);
    names.add(setup.y.edge_finder.name);
    for (const Work& work : setup.works) {
      for (const shop::Tool& tool : work.tools)
        names.add(tool.name);
    }
  }
  return {"TOOLS", {}, {}, names.take(), {}};
}

ListSection instruments(const Desk& desk) {
  Once names;
  for (const part::Feature& feature : desk.route.part.features) {
    for (const part::NamedDimension& d : part::dimensions_of(feature)) {
      if (part::has_aim(*d.dimension) && !d.dimension->instrument.empty()) names.add(d.dimension->instrument);
    }
  }
  return {"TO MEASURE WITH, EACH WITH ITS ZERO PROVED", {}, {}, names.take(), {}};
}

}  // namespace

void write_lay_out(Desk& desk) {
  desk.sheet.tab = "LAY OUT";
  desk.sheet.name = "before the first cut";
  desk.sheet.sections.push_back(stock(desk));
  for (ListSection section : {hardware(desk), tools(desk), instruments(desk)}) {
    if (!section.ticks.empty()) desk.sheet.sections.push_back(std::move(section));
  }
}

}  // namespace sparewright::route
