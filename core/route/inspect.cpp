// The finished part, size by size, in what an instrument can touch.
#include <algorithm>
#include <map>

#include <fmt/format.h>

#include "core/route/desk.hpp"
#include "core/route/touched.hpp"

namespace sparewright::route {
namespace {

std::string aim_of(Desk& desk, const part::Feature& feature, const part::NamedDimension& d) {
  if (d.dimension->duty != part::Duty::kFits) return "";
  const ledger::Figure& aim =
      desk.pen.ask(fmt::format("{}/{}/aim", part::feature_path(feature.name), d.local));
  return or_not_known(aim, desk.print.fine(aim.value));
}

// The holes that a setup has put a bush in, with its name. Where none does, it goes in when the part is fitted.
std::map<std::string, std::string> bushed(const Desk& desk) {
  std::map<std::string, std::string> all;
  for (const auto& [feature, bush] : bushes_of(desk.route.part)) {
    for (const Setup& setup : desk.route.plan.setups) {
      const bool here =
          std::any_of(setup.works.begin(), setup.works.end(),
                      [&name = feature.name](const Work& work) { return work.feature == name; });
      if (here) all[bush.of] = feature.name;
    }
  }
  return all;
}

ListTable sizes(Desk& desk) {
  ListTable table;
  table.headings = {"", "MEASURE", "MUST SHOW", "AIM WAS", "WITH"};
  table.figures = 2;
  table.to_fill = true;
  Touch touch(desk.pen, desk.route.part, desk.print, bushed(desk));
  for (const part::Feature& feature : desk.route.part.features) {
    for (const part::NamedDimension& d : part::dimensions_of(feature)) {
      if (!part::has_aim(*d.dimension) || !part::is_on_finished(desk.route.part, feature, d.local)) continue;
      const auto reading = touch.reading(feature, d);
      if (!reading) continue;
      table.rows.push_back({fmt::format("{}", table.rows.size() + 1), reading->what, reading->expect,
                            aim_of(desk, feature, d),
                            d.dimension->instrument.empty() ? "not said" : d.dimension->instrument});
    }
  }
  return table;
}

// What is held to the general limits or only clears: measured too, as far as a page of lines goes.
ListSection other_sizes(Desk& desk) {
  constexpr std::size_t kMostLines = 24;
  ListSection section;
  section.heading = "ALSO";
  section.table.headings = {"", "MEASURE", "MUST SHOW"};
  section.table.figures = 2;
  section.table.to_fill = true;
  Touch touch(desk.pen, desk.route.part, desk.print, bushed(desk));
  std::size_t left_out = 0;
  for (const part::Feature& feature : desk.route.part.features) {
    for (const part::NamedDimension& d : part::dimensions_of(feature)) {
      if (part::has_aim(*d.dimension) || !part::is_on_finished(desk.route.part, feature, d.local)) continue;
      const auto reading = touch.reading(feature, d);
      if (!reading) continue;
      if (section.table.rows.size() == kMostLines) {
        ++left_out;
        continue;
      }
      section.table.rows.push_back(
          {fmt::format("{}", section.table.rows.size() + 1), reading->what, reading->expect});
    }
  }
  if (left_out > 0)
    section.says.push_back(fmt::format("And {} more sizes, as the drawing has them.", left_out));
  return section;
}

// Where no instrument of the shop tells a hole's limits: the plug gauge that does (core/measuring/plug_gauge.hpp).
void add_plug_gauges(Desk& desk) {
  for (const part::Feature& feature : desk.route.part.features) {
    const auto* section = desk.pen.value<ListSection>(fmt::format("plug gauge/{}/section", feature.name));
    if (section != nullptr) desk.sheet.sections.push_back(*section);
  }
}

}  // namespace

void write_inspect(Desk& desk) {
  desk.sheet.tab = "INSPECT";
  desk.sheet.name = "the finished part, cold and clean";
  desk.sheet.is_signed = true;
  ListSection section;
  section.says = {
      "Prove the zero of each instrument first. Write down what it shows, not what it should show."};
  section.table = sizes(desk);
  if (section.table.rows.empty()) return;
  desk.sheet.sections.push_back(std::move(section));
  add_plug_gauges(desk);
  if (ListSection others = other_sizes(desk); !others.table.rows.empty())
    desk.sheet.sections.push_back(std::move(others));
  const auto& general = desk.route.part.surroundings.general;
  desk.sheet.sections.push_back({"",
                                 {fmt::format("All others: two places and fractions {}, three places {}.",
                                              general.two_places.typed, general.three_places.typed)},
                                 {},
                                 {},
                                 {"Out of limits, and what was decided"}});
}

}  // namespace sparewright::route
