// What is wrong with a display list, however it was made: texts that overlap, that a line runs through, that lie outside,
// or that are not where their box says; white text that does not lie on black.
#pragma once

#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "drawing/display_list.hpp"

namespace sparewright::tests {

class DrawingFaults {
 public:
  DrawingFaults(const drawing::DisplayList& list, const drawing::Box& page) : list_(list), page_(page) {}

  [[nodiscard]] std::vector<std::string> find() {
    for (const drawing::Element& element : list_) {
      if (const auto* text = std::get_if<drawing::Text>(&element)) texts_.push_back(text);
    }
    for (std::size_t i = 0; i < texts_.size(); ++i) {
      check(*texts_[i]);
      for (std::size_t j = 0; j < i; ++j) {
        if (drawing::overlap(texts_[i]->box, texts_[j]->box))
          add(*texts_[i], "overlaps '" + texts_[j]->says + "'");
      }
    }
    for (const drawing::Element& element : list_) {
      std::visit([this](const auto& e) { this->check_lines(e); }, element);
    }
    return std::move(faults_);
  }

 private:
  void add(const drawing::Text& text, const std::string& what) {
    faults_.push_back(fmt::format("'{}' at {:.1f}, {:.1f} {}", text.says, text.at.x_mm, text.at.y_mm, what));
  }

  void check(const drawing::Text& text) {
    if (!drawing::holds(page_, text.box)) add(text, "lies outside");
    const double expected = text.anchor == drawing::Anchor::kLeft     ? text.box.left_mm
                            : text.anchor == drawing::Anchor::kMiddle ? text.box.middle().x_mm
                                                                      : text.box.right_mm;
    if (std::abs(expected - text.at.x_mm) > 1e-6) add(text, "is not at its anchor");
    if (text.ink == drawing::Ink::kWhite && !on_black(text)) add(text, "is white on white");
  }

  [[nodiscard]] bool on_black(const drawing::Text& text) const {
    for (const drawing::Element& element : list_) {
      const auto* filled = std::get_if<drawing::Filled>(&element);
      if (filled == nullptr || filled->corners.size() != 4 || filled->ink != drawing::Ink::kBlack) continue;
      const drawing::Box box{filled->corners[0].x_mm, filled->corners[0].y_mm, filled->corners[2].x_mm,
                             filled->corners[2].y_mm};
      if (drawing::holds(box, text.box)) return true;
    }
    return false;
  }

  void segment(drawing::Point from, drawing::Point to, double width_mm) {
    for (const drawing::Text* text : texts_) {
      if (drawing::crosses(drawing::Segment{from, to}, drawing::grown(text->box, width_mm / 2.0))) {
        add(*text, fmt::format("is crossed by a line from {:.1f}, {:.1f} to {:.1f}, {:.1f}", from.x_mm,
                               from.y_mm, to.x_mm, to.y_mm));
      }
    }
    if (!drawing::holds(page_, {std::min(from.x_mm, to.x_mm), std::min(from.y_mm, to.y_mm),
                                std::max(from.x_mm, to.x_mm), std::max(from.y_mm, to.y_mm)})) {
      faults_.push_back(fmt::format("a line at {:.1f}, {:.1f} runs outside", from.x_mm, from.y_mm));
    }
  }

  void check_lines(const drawing::Line& l) { segment(l.from, l.to, drawing::stroke_of(l.weight).width_mm); }
  void check_lines(const drawing::Circle& c) {
    check_lines(drawing::Arc{c.centre, c.radius_mm, 0.0, 2.0 * std::numbers::pi, c.weight});
  }
  void check_lines(const drawing::Arc& a) {
    constexpr int kChords = 48;
    const auto at = [&](int i) {
      const double angle = a.from_rad + (a.to_rad - a.from_rad) * i / kChords;
      return drawing::Point{a.centre.x_mm + a.radius_mm * std::cos(angle),
                            a.centre.y_mm + a.radius_mm * std::sin(angle)};
    };
    for (int i = 0; i < kChords; ++i)
      segment(at(i), at(i + 1), drawing::stroke_of(a.weight).width_mm);
  }
  void check_lines(const drawing::Filled& f) {
    for (std::size_t i = 0; i < f.corners.size(); ++i)
      segment(f.corners[i], f.corners[(i + 1) % f.corners.size()], 0.0);
  }
  void check_lines(const drawing::Text& /*text*/) {}

  const drawing::DisplayList& list_;
  drawing::Box page_;
  std::vector<const drawing::Text*> texts_;
  std::vector<std::string> faults_;
};

inline std::vector<std::string> drawing_faults(const drawing::DisplayList& list, const drawing::Box& page) {
  return DrawingFaults(list, page).find();
}

}  // namespace sparewright::tests
