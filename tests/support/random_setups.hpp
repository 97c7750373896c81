// Random plan views and setup sheets, the same for the same seed on every machine.
#pragma once

#include <algorithm>
#include <cstdint>
#include <random>
#include <string>
#include <vector>

#include "core/route/sheet.hpp"
#include "drawing/held_views.hpp"

namespace sparewright::tests {

class Dice {
 public:
  explicit Dice(std::uint32_t seed) : engine_(seed) {}

  int whole(int least, int most) {
    return least + static_cast<int>(engine_() % static_cast<std::uint32_t>(most - least + 1));
  }
  double real(double least, double most) { return least + (most - least) * whole(0, 1'000'000) / 1e6; }
  bool one_in(int n) { return whole(1, n) == 1; }
  template <typename Thing>
  const Thing& of(const std::vector<Thing>& things) {
    return things[static_cast<std::size_t>(whole(0, static_cast<int>(things.size()) - 1))];
  }

 private:
  std::mt19937 engine_;  // its numbers are fixed by the standard; the standard's distributions are not
};

inline std::string random_text(Dice& dice, int most_words) {
  static const std::vector<std::string> kWords{"bore",
                                               "hole 1",
                                               "the",
                                               "0.8750-0.8758",
                                               "3/8-16",
                                               "1-1/4",
                                               "touch",
                                               "Größe",
                                               "underside",
                                               "clockwise,",
                                               "jaw",
                                               "at",
                                               "±0.004",
                                               "[vise]",
                                               "ČÁST",
                                               "x",
                                               "STOP.",
                                               "hand",
                                               "ÅÄÖgjpqy",
                                               "counterbore",
                                               "1/64",
                                               "lift;",
                                               "deep",
                                               "0.003",
                                               "more",
                                               "than",
                                               "ƒ",
                                               "✓",
                                               "through-and-through"};
  std::string text;
  for (int i = dice.whole(1, most_words); i > 0; --i)
    text += (text.empty() ? "" : " ") + dice.of(kWords);
  return text;
}

inline std::vector<std::string> random_texts(Dice& dice, int most, int most_words) {
  std::vector<std::string> texts;
  for (int i = dice.whole(0, most); i > 0; --i)
    texts.push_back(random_text(dice, most_words));
  return texts;
}

inline std::string random_reading(Dice& dice) {
  if (dice.one_in(8)) return "";
  if (dice.one_in(20)) return "NOT KNOWN";
  const char* sign = dice.one_in(3) ? "-" : "";
  return sign + std::to_string(dice.whole(0, 30)) + (*sign == '-' ? "t - " : "t + ") +
         std::to_string(dice.whole(0, 199));
}

inline route::PlanView random_view(Dice& dice) {
  route::PlanView v;
  const double length = dice.real(8.0, 300.0);
  const double width = dice.real(6.0, 200.0);
  v.work.left_mm = dice.one_in(2) ? 0.0 : dice.one_in(2) ? -length : dice.real(-length, 0.0);
  v.work.near_mm = dice.one_in(2) ? 0.0 : dice.one_in(2) ? -width : dice.real(-width, 0.0);
  v.work.right_mm = v.work.left_mm + length;
  v.work.far_mm = v.work.near_mm + width;
  for (int i = dice.whole(0, dice.one_in(10) ? 40 : 8); i > 0; --i) {
    v.holes.push_back({random_text(dice, 2), dice.real(v.work.left_mm, v.work.right_mm),
                       dice.real(v.work.near_mm, v.work.far_mm), dice.real(0.5, 0.25 * width),
                       dice.one_in(2)});
    if (dice.one_in(5)) {  // a counterbore about it
      route::PlanView::Circle larger = v.holes.back();
      larger.name.clear();
      larger.radius_mm *= 1.6;
      v.holes.push_back(larger);
    }
  }
  for (int i = dice.whole(0, 2); i > 0; --i) {
    route::PlanView::Rectangle flat = v.work;
    flat.name = random_text(dice, 2);
    flat.cut_here = dice.one_in(2);
    (dice.one_in(2) ? flat.left_mm : flat.right_mm) = dice.real(v.work.left_mm, v.work.right_mm);
    v.flats.push_back(flat);
  }
  for (int i = dice.whole(0, 2); i > 0; --i) {
    route::PlanView::Rectangle form{random_text(dice, 2), 0.0, 0.0, 0.0, 0.0, dice.one_in(2)};
    form.left_mm = dice.real(v.work.left_mm, v.work.right_mm);
    form.right_mm = dice.real(form.left_mm, v.work.right_mm);
    form.near_mm = dice.real(v.work.near_mm, v.work.far_mm);
    form.far_mm = dice.real(form.near_mm, v.work.far_mm);
    v.forms.push_back(form);
  }
  const double jaw = dice.real(50.0, 200.0);
  const double middle = (v.work.left_mm + v.work.right_mm) / 2.0;
  v.jaw_left_mm = middle - jaw / 2.0;
  v.jaw_right_mm = middle + jaw / 2.0;
  v.parallel_mm = dice.real(0.0, 12.0);
  v.parallel_high_mm = dice.real(0.0, 40.0);
  v.jaw_high_mm = dice.one_in(6) ? 0.0 : dice.real(10.0, 60.0);
  v.x_rises_right = dice.one_in(2);
  v.y_rises_away = dice.one_in(2);
  v.left_side = "left end";
  v.right_side = dice.one_in(3) ? random_text(dice, 3) : "right end";
  v.near_side = "front";
  v.far_side = dice.one_in(3) ? random_text(dice, 6) : "back";
  return v;
}

// The work as a block with a step, its holes as circles; from the right as high as a step and a block.
inline drawing::HeldViews random_held(Dice& dice, const route::PlanView& view) {
  using drawing::Seen;
  const route::PlanView::Rectangle& w = view.work;
  const auto add_box = [&](drawing::View& to, double left, double low, double right, double high, bool here) {
    to.lines.push_back({{left, low}, {right, low}, Seen::kVisible, here});
    to.lines.push_back({{right, low}, {right, high}, Seen::kVisible, here});
    to.lines.push_back({{right, high}, {left, high}, Seen::kVisible, here});
    to.lines.push_back({{left, high}, {left, low}, Seen::kHidden, here});
    to.low = {std::min(to.low.u, left), std::min(to.low.v, low)};
    to.high = {std::max(to.high.u, right), std::max(to.high.v, high)};
  };
  drawing::HeldViews held;
  held.above.low = held.above.high = {w.left_mm, w.near_mm};
  held.from_right.low = held.from_right.high = {w.near_mm, view.parallel_high_mm};
  add_box(held.above, w.left_mm, w.near_mm, w.right_mm, w.far_mm, false);
  add_box(held.above, dice.real(w.left_mm, w.right_mm), w.near_mm, w.right_mm, w.far_mm, true);
  for (const auto& hole : view.holes) {
    const bool runs_out = hole.x_mm - hole.radius_mm < w.left_mm || hole.x_mm + hole.radius_mm > w.right_mm ||
                          hole.y_mm - hole.radius_mm < w.near_mm || hole.y_mm + hole.radius_mm > w.far_mm;
    if (runs_out) continue;  // what is seen lies within the work
    held.above.arcs.push_back(
        {{hole.x_mm, hole.y_mm}, hole.radius_mm, 0.0, 6.283185307179586, Seen::kVisible, hole.cut_here});
  }
  const double top = view.parallel_high_mm + dice.real(3.0, 120.0);
  add_box(held.from_right, w.near_mm, view.parallel_high_mm, w.far_mm, top, false);
  add_box(held.from_right, dice.real(w.near_mm, w.far_mm), view.parallel_high_mm, w.far_mm, top, true);
  return held;
}

inline route::SetupSheet random_setup(Dice& dice) {
  route::SetupSheet s;
  s.op = dice.whole(1, 999);
  s.name = random_text(dice, dice.one_in(10) ? 40 : 8);
  if (dice.one_in(2)) s.done_before = random_text(dice, 5);
  if (dice.one_in(2)) s.stock = random_text(dice, 14);
  s.sizes_that_matter = random_texts(dice, 6, 5);
  s.the_rest = random_text(dice, 12);
  s.machine = random_texts(dice, 6, 14);
  s.check = random_texts(dice, 5, 8);
  s.hold = random_texts(dice, 5, 16);
  s.pick_up = random_texts(dice, 4, 18);
  const int items = dice.whole(0, dice.one_in(10) ? 120 : 16);
  const bool with_z = dice.one_in(3);
  for (int i = 0; i < items; ++i) {
    if (dice.one_in(7)) {
      route::Stop stop{"STOP. " + random_text(dice, 10), {}, random_text(dice, 14)};
      for (int r = dice.whole(0, 5); r > 0; --r)
        stop.readings.push_back({random_text(dice, 4), "2.305"});
      s.items.emplace_back(std::move(stop));
    } else if (dice.one_in(8)) {
      s.items.emplace_back(route::Note{random_text(dice, 24)});
    } else {
      s.items.emplace_back(route::Line{i + 1, random_text(dice, 7), random_reading(dice),
                                       random_reading(dice), with_z ? random_reading(dice) : "",
                                       std::to_string(dice.whole(60, 3000)), random_text(dice, 3),
                                       random_text(dice, 3), dice.one_in(2)});
    }
  }
  s.before_unclamp = random_texts(dice, 9, 10);
  s.if_wrong = random_texts(dice, 4, 20);
  s.cautions = random_texts(dice, 2, 14);
  s.view = random_view(dice);
  return s;
}

}  // namespace sparewright::tests
