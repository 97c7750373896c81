// What a page says, and every text a packet holds, both with spaces, dashes and fractions levelled so that they compare.
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "sheets/pages.hpp"

namespace sparewright::tests {

inline std::string levelled(std::string_view text) {
  static constexpr std::pair<std::string_view, std::string_view> kSame[] = {
      {"\u00A0", ""},  {"\u2009", ""},  {"\u2007", ""}, {"\u2044", "/"},
      {"\u2013", "-"}, {"\u2212", "-"}, {"\u00D7", "x"}};
  std::string out;
  while (!text.empty()) {
    std::size_t taken = 1;
    std::string_view as = text.substr(0, 1);
    for (const auto& [sign, plain] : kSame) {
      if (text.substr(0, sign.size()) == sign) {
        taken = sign.size();
        as = plain;
      }
    }
    if (as != " " && as != "\n" && as != "\t" && as != "\f" && as != "-") out += as;
    text.remove_prefix(taken);
  }
  return out;
}

// The texts of the pages in the order they are laid down; first what stands at the same place on two pages running (head
// and foot), so that a text that goes on to the next page is not broken by them.
inline std::string said(const std::vector<sheets::Page>& pages) {
  const auto stands_on = [&](std::size_t page, const drawing::Element& element) {
    return page < pages.size() &&
           std::find(pages[page].list.begin(), pages[page].list.end(), element) != pages[page].list.end();
  };
  std::string repeated;
  std::string rest;
  std::string all;  // a line may stand by chance where one like it stands on the next page
  for (std::size_t page = 0; page < pages.size(); ++page) {
    for (const drawing::Element& element : pages[page].list) {
      const auto* text = std::get_if<drawing::Text>(&element);
      if (text == nullptr) continue;
      const bool is_count = text->says.find("one off") != std::string::npos;
      const bool is_repeated =
          is_count || stands_on(page + 1, element) || (page > 0 && stands_on(page - 1, element));
      (is_repeated ? repeated : rest) += text->says + " ";
      all += text->says + " ";
    }
  }
  return levelled(repeated + "| " + rest + "| " + all);
}

// STOP itself stands in the tab.
inline std::string without_stop(std::string says) {
  return says.rfind("STOP. ", 0) == 0 ? says.substr(6) : says;
}

inline std::vector<std::string> texts_of(const route::SetupSheet& s) {
  std::vector<std::string> all{s.name, s.done_before, s.stock, s.the_rest};
  for (const auto* list : {&s.sizes_that_matter, &s.machine, &s.check, &s.hold, &s.pick_up, &s.before_unclamp,
                           &s.if_wrong, &s.cautions}) {
    all.insert(all.end(), list->begin(), list->end());
  }
  for (const route::Item& item : s.items) {
    if (const auto* l = std::get_if<route::Line>(&item)) {
      all.insert(all.end(), {l->says, l->x_reads, l->y_reads, l->z_reads, l->rpm, l->feed, l->expect});
    } else if (const auto* n = std::get_if<route::Note>(&item)) {
      all.push_back(n->says);
    } else {
      const auto& stop = std::get<route::Stop>(item);
      all.insert(all.end(), {without_stop(stop.says), stop.rule});
      for (const auto& reading : stop.readings)
        all.insert(all.end(), {reading.what, reading.expect});
    }
  }
  if (const auto* view = std::get_if<route::PlanView>(&s.view)) {
    for (const auto& hole : view->holes)
      all.push_back(hole.name);
    for (const auto* cut : {&view->flats, &view->forms}) {
      for (const auto& one : *cut)
        all.push_back(one.name);
    }
    all.insert(all.end(), {view->left_side, view->right_side, view->near_side, view->far_side});
  }
  return all;
}

inline std::vector<std::string> texts_of(const sheets::FirstSheet& f) {
  std::vector<std::string> all{f.hand, f.material, f.blank, f.sizes_in, f.the_rest};
  for (const auto* list : {&f.sizes_that_matter, &f.cautions}) {
    all.insert(all.end(), list->begin(), list->end());
  }
  for (const auto& m : f.mates)
    all.insert(all.end(), {m.name, m.measured, m.good_to, m.how});
  for (const auto& c : f.checks) {
    all.insert(all.end(), {c.check, c.subject, c.margin});
    if (c.state != ledger::State::kOk) all.insert(all.end(), {c.reason, c.todo});  // what is OK is set short
  }
  for (const auto& q : f.queries)
    all.insert(all.end(), {q.says, q.happens, q.todo, q.overruled});
  return all;
}

inline std::vector<std::string> texts_of(const route::ListSheet& sheet) {
  std::vector<std::string> all{sheet.tab, sheet.name};
  const auto add = [&](const std::vector<std::string>& more) {
    all.insert(all.end(), more.begin(), more.end());
  };
  add(sheet.cautions);
  for (const route::ListSection& section : sheet.sections) {
    all.push_back(section.heading);
    for (const auto* list : {&section.says, &section.ticks, &section.blanks})
      add(*list);
    if (!section.table.rows.empty()) add(section.table.headings);
    for (const auto& row : section.table.rows)
      add(row);
  }
  return all;
}

inline std::vector<std::string> texts_of(const sheets::Packet& packet) {
  std::vector<std::string> all = texts_of(packet.first);
  all.push_back(packet.title);
  for (const auto& setup : packet.setups) {
    const auto more = texts_of(setup);
    all.insert(all.end(), more.begin(), more.end());
  }
  for (const auto* lists : {&packet.before, &packet.after}) {
    for (const route::ListSheet& list : *lists) {
      const auto more = texts_of(list);
      all.insert(all.end(), more.begin(), more.end());
    }
  }
  return all;
}

}  // namespace sparewright::tests
