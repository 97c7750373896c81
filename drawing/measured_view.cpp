#include "drawing/measured_view.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "drawing/hatch.hpp"
#include "drawing/scale.hpp"

namespace sparewright::drawing {
namespace {

using survey::Sketch;

constexpr TextStyle kReadStyle{2.2, Face::kRegular};
constexpr double kRowPitch_mm = 5.6;
constexpr double kFirstRow_mm = 6.0;
constexpr double kArrow_mm = 2.2;
constexpr double kMetal_mm = 5.0;       // of metal drawn behind an edge
constexpr double kPlainHigh_mm = 14.0;  // of an edge where nothing is round
constexpr double kCentreOver_mm = 2.0;  // a centre line stands out of its circle
constexpr double kPlace_mm = 2.0;       // half of the cross of a place
constexpr double kExtensionGap_mm = 0.8;
constexpr double kExtensionOver_mm = 1.2;
constexpr double kOverLine_mm = 0.9;    // words over their line
constexpr double kRoundWords_mm = 0.3;  // kept free round them
constexpr Hatching kMetalHatching{Slant::kRising, 1.8};

struct Extent {
  double low_mm = 0.0;
  double high_mm = 0.0;
  double tallest_mm = 0.0;  // largest diameter
};

Extent extent_of(const Sketch& sketch) {
  Extent extent{sketch.spans.front().from_mm, sketch.spans.front().to_mm, 0.0};
  const auto take_in = [&](double low, double high) {
    extent.low_mm = std::min(extent.low_mm, low);
    extent.high_mm = std::max(extent.high_mm, high);
  };
  for (const Sketch::Span& span : sketch.spans)
    take_in(span.from_mm, span.to_mm);
  for (const double edge : sketch.edges_mm)
    take_in(edge, edge);
  for (const Sketch::Round& round : sketch.rounds) {
    take_in(round.middle_mm - round.diameter_mm / 2.0, round.middle_mm + round.diameter_mm / 2.0);
    extent.tallest_mm = std::max(extent.tallest_mm, round.diameter_mm);
  }
  return extent;
}

Scale scale_for(const Extent& extent, double width_mm) {
  for (const Scale& scale : kScales) {
    if (scale.factor * (extent.high_mm - extent.low_mm) <= width_mm &&
        scale.factor * extent.tallest_mm <= kMeasuredHigh_mm - 2.0 * kCentreOver_mm)
      return scale;
  }
  return kScales.back();
}

class Painter {
 public:
  Painter(const Sketch& sketch, double width_mm, const Ruler& ruler)
      : sketch_(sketch), ruler_(ruler), width_(width_mm), extent_(extent_of(sketch)) {
    const Scale scale = scale_for(extent_, width_mm - 2.0 * kMetal_mm);
    scale_ = scale.factor;
    picture_.scale = scale.says;
    left_ = (width_mm - scale_ * (extent_.high_mm - extent_.low_mm)) / 2.0;
    const double tall = scale_ * extent_.tallest_mm;
    half_ = std::max(kPlainHigh_mm / 2.0, tall / 2.0 + kCentreOver_mm);
  }

  MeasuredPicture paint(const std::vector<std::string>& says) {
    paint_edges();
    for (const Sketch::Round& round : sketch_.rounds)
      paint_round(round);
    const std::vector<std::size_t> order = shorter_first();
    for (std::size_t row = 0; row < order.size(); ++row)
      words_.push_back(words_of(sketch_.spans[order[row]], row_y(row), says.at(order[row])));
    for (std::size_t row = 0; row < order.size(); ++row) {
      paint_extensions(sketch_.spans[order[row]], row_y(row));
      paint_span(sketch_.spans[order[row]], row_y(row));
    }
    for (const Text& words : words_)
      picture_.list.emplace_back(words);
    picture_.height_mm = row_y(order.size() - 1) + kExtensionOver_mm + 1.0;
    return std::move(picture_);
  }

 private:
  [[nodiscard]] double x_of(double at_mm) const { return left_ + scale_ * (at_mm - extent_.low_mm); }
  [[nodiscard]] double row_y(std::size_t row) const {
    return 2.0 * half_ + kFirstRow_mm + static_cast<double>(row) * kRowPitch_mm;
  }
  void line(Point from, Point to, Weight weight) { picture_.list.emplace_back(Line{from, to, weight}); }

  [[nodiscard]] std::vector<std::size_t> shorter_first() const {
    std::vector<std::size_t> order(sketch_.spans.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
      const auto length = [&](std::size_t i) { return sketch_.spans[i].to_mm - sketch_.spans[i].from_mm; };
      return length(a) < length(b);
    });
    return order;
  }

  void metal(double left, double right, double top, double bottom) {
    for (const Segment& one : hatch({left, top, right, bottom}, kMetalHatching, {}))
      line(one.from, one.to, Weight::kHatch);
  }

  // Metal between two edges, or behind each; a single edge has it on this side, where the hole is.
  void paint_edges() {
    if (sketch_.edges_mm.empty()) return;
    const double bottom = 2.0 * half_;
    const double first = x_of(sketch_.edges_mm.front());
    const double last = x_of(sketch_.edges_mm.back());
    for (const double edge : sketch_.edges_mm)
      line({x_of(edge), 0.0}, {x_of(edge), bottom}, Weight::kVisible);
    switch (sketch_.between) {
      case Sketch::Between::kMetal:
        metal(first, last, 0.0, bottom);
        break;
      case Sketch::Between::kAir:
        metal(first - kMetal_mm, first, 0.0, bottom);
        metal(last, last + kMetal_mm, 0.0, bottom);
        break;
      case Sketch::Between::kStep:  // from the floor, at the start, up to the rim
        metal(first - kMetal_mm, first, 0.0, bottom);
        metal(first, last, half_, bottom);
        line({first, half_}, {last, half_}, Weight::kVisible);
        break;
      case Sketch::Between::kNothing:
        break;
    }
  }

  void paint_round(const Sketch::Round& round) {
    const Point middle{x_of(round.middle_mm), half_};
    const double radius = scale_ * round.diameter_mm / 2.0;
    if (radius > 0.0) picture_.list.emplace_back(Circle{middle, radius, Weight::kVisible});
    const double arm = radius > 0.0 ? radius + kCentreOver_mm : kPlace_mm;
    const Weight weight = radius > 0.0 ? Weight::kCentre : Weight::kThin;
    line({middle.x_mm - arm, middle.y_mm}, {middle.x_mm + arm, middle.y_mm}, weight);
    line({middle.x_mm, middle.y_mm - arm}, {middle.x_mm, middle.y_mm + arm}, weight);
  }

  // The words over the line of a span, within the width of the picture.
  [[nodiscard]] Text words_of(const Sketch::Span& span, double y, const std::string& says) const {
    const TextSize size = ruler_.measure(says, kReadStyle);
    const double half = std::min(size.width_mm, width_) / 2.0;
    const double middle =
        std::clamp((x_of(span.from_mm) + x_of(span.to_mm)) / 2.0, half, std::max(half, width_ - half));
    return text(ruler_, says, {middle, y - size.below_mm - kOverLine_mm}, kReadStyle, Anchor::kMiddle);
  }

  // From the middle of what is round, or from the foot of an edge; interrupted where words stand.
  void paint_extensions(const Sketch::Span& span, double y) {
    for (const double at : {span.from_mm, span.to_mm}) {
      const bool is_edge =
          std::find(sketch_.edges_mm.begin(), sketch_.edges_mm.end(), at) != sketch_.edges_mm.end();
      paint_interrupted(x_of(at), is_edge ? 2.0 * half_ + kExtensionGap_mm : half_, y + kExtensionOver_mm);
    }
  }

  void paint_interrupted(double x, double top, double bottom) {
    double from = top;
    for (const Text& words : words_) {  // row by row downwards
      const Box box = grown(words.box, kRoundWords_mm);
      if (x < box.left_mm || x > box.right_mm || box.top_mm > bottom) continue;
      if (box.top_mm > from) line({x, from}, {x, box.top_mm}, Weight::kThin);
      from = std::max(from, box.bottom_mm);
    }
    if (from < bottom) line({x, from}, {x, bottom}, Weight::kThin);
  }

  void paint_span(const Sketch::Span& span, double y) {
    const double from = x_of(span.from_mm);
    const double to = x_of(span.to_mm);
    const bool room_between = to - from > 2.5 * kArrow_mm;
    const double beyond = room_between ? 0.0 : 2.0 * kArrow_mm;
    line({from - beyond, y}, {to + beyond, y}, Weight::kThin);
    add_arrowhead(picture_.list, {room_between ? to : from - beyond, y}, {from, y}, kArrow_mm);
    add_arrowhead(picture_.list, {room_between ? from : to + beyond, y}, {to, y}, kArrow_mm);
  }

  const Sketch& sketch_;
  const Ruler& ruler_;
  double width_ = 0.0;
  Extent extent_;
  double scale_ = 1.0;
  double left_ = 0.0;        // of what is drawn
  double half_ = 0.0;        // of its height
  std::vector<Text> words_;  // one a row
  MeasuredPicture picture_;
};

}  // namespace

MeasuredPicture measured_view(const Sketch& sketch, const std::vector<std::string>& says, double width_mm,
                              const Ruler& ruler) {
  return Painter(sketch, width_mm, ruler).paint(says);
}

}  // namespace sparewright::drawing
