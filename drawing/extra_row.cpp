#include "drawing/extra_row.hpp"

#include <algorithm>

#include "drawing/view_lines.hpp"
#include "drawing/wrap.hpp"

namespace sparewright::drawing {
namespace {

constexpr TextStyle kCaption{2.8, Face::kBold};
constexpr double kColumn_mm = 44.0;  // four of them on the narrowest paper
constexpr double kAround_mm = 1.5;   // over and under a circle

}  // namespace

ExtraRow extra_row(const std::vector<ExtraView>& views, double width_mm, const Ruler& ruler) {
  ExtraRow row;
  if (views.empty()) return row;
  const double column = std::min(kColumn_mm, width_mm / static_cast<double>(views.size()));
  double x = (width_mm - column * static_cast<double>(views.size())) / 2.0 + column / 2.0;
  for (const ExtraView& extra : views) {
    const Point middle{x, kAround_mm + kExtraRadius_mm};
    const shape::FlatPoint centre{(extra.view.low.u + extra.view.high.u) / 2.0,
                                  (extra.view.low.v + extra.view.high.v) / 2.0};
    const ViewPlace place{{middle.x_mm - extra.scale * centre.u, middle.y_mm + extra.scale * centre.v},
                          extra.scale};
    std::vector<Segment> ground;
    add_view(row.list, ground, extra.view, place,
             [](Seen seen, bool) { return seen == Seen::kVisible ? Weight::kBold : Weight::kHidden; });
    row.list.emplace_back(
        Circle{middle, extra.scale * (extra.view.high.u - extra.view.low.u) / 2.0, Weight::kThin});
    double y = middle.y_mm + kExtraRadius_mm + kAround_mm;
    for (const std::string& says : extra.caption) {
      for (const std::string& line : wrap(ruler, says, kCaption, column - 2.0)) {
        const TextSize size = ruler.measure(line, kCaption);
        row.list.emplace_back(text(ruler, line, {x, y + size.above_mm}, kCaption, Anchor::kMiddle));
        y += size.height();
      }
    }
    row.height_mm = std::max(row.height_mm, y);
    x += column;
  }
  return row;
}

}  // namespace sparewright::drawing
