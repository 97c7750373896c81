#include "drawing/label.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

#include "drawing/line_grid.hpp"
#include "drawing/wrap.hpp"

namespace sparewright::drawing {
namespace {

constexpr double kRoom_mm = 0.5;            // left free round a label
constexpr double kClose_mm = 0.9;           // from a round to its own label without a leader
constexpr double kPastCentreLine_mm = 2.8;  // the same where centre lines run out of the round
constexpr double kUnmistaken = 2.0;         // so many times farther from any other round
constexpr double kShortestLeader_mm = 3.0;
constexpr double kLongestLeader_mm = 45.0;
constexpr double kFromText_mm = 0.6;  // from the label to the start of its leader
constexpr double kGrid_mm = 1.8;
constexpr double kCrossingCosts_mm = 4.0;  // a crossed line is as bad as so much more leader
constexpr int kDirections = 16;
constexpr double kArrow_mm = 2.2;
constexpr double kDot_mm = 0.5;
constexpr std::size_t kTries = 6;

struct Extent {
  double width_mm = 0.0;
  double height_mm = 0.0;
};

Extent extent(const Ruler& ruler, const Label& label) {
  Extent size{widest(ruler, label.lines, label.style), 0.0};
  for (const std::string& line : label.lines)
    size.height_mm += ruler.measure(line, label.style).height();
  return size;
}

Box box_at(Point middle, Extent size) {
  return {middle.x_mm - size.width_mm / 2.0, middle.y_mm - size.height_mm / 2.0,
          middle.x_mm + size.width_mm / 2.0, middle.y_mm + size.height_mm / 2.0};
}

bool same_round(const Disc& a, const Disc& b) {
  return distance(a.centre, b.centre) < kTouch_mm;
}

// One try: the ground, filled up label by label.
class Placing {
 public:
  explicit Placing(Ground ground) : ground_(std::move(ground)), lines_(ground_.area, ground_.lines) {}

  std::optional<Standing> place(const Label& label, Extent size) {
    auto standing = label.within ? inside(*label.within, size) : close_by(label, size);
    if (!standing && label.may_lead) standing = with_leader(label, size);
    if (!standing) return std::nullopt;
    ground_.taken.push_back(grown(standing->box, kRoom_mm));
    if (standing->leader) leaders_.push_back(*standing->leader);
    return standing;
  }

 private:
  [[nodiscard]] bool is_free_of_hatching(const Box& box) const {
    return std::none_of(ground_.hatched.begin(), ground_.hatched.end(),
                        [&](const Box& h) { return overlap(h, box); });
  }

  [[nodiscard]] bool is_free(const Box& box) const {
    const Box room = grown(box, kRoom_mm);
    return holds(ground_.area, box) &&
           std::none_of(ground_.taken.begin(), ground_.taken.end(),
                        [&](const Box& t) { return overlap(t, box); }) &&
           std::none_of(ground_.rounds.begin(), ground_.rounds.end(),
                        [&](const Disc& d) { return distance(room, d.centre) < d.radius_mm; }) &&
           !lines_.any_crosses(room) &&
           std::none_of(leaders_.begin(), leaders_.end(), [&](const Segment& l) { return crosses(l, room); });
  }

  // The free place nearest to the middle of a box.
  [[nodiscard]] std::optional<Standing> inside(const Box& within, Extent size) const {
    std::optional<Standing> best;
    double nearest = std::numeric_limits<double>::infinity();
    for (const Point& middle : grid(within, size)) {
      const double away = distance(middle, within.middle());
      const Box box = box_at(middle, size);
      if (away < nearest && is_free(box)) {
        nearest = away;
        best = Standing{box, std::nullopt};
      }
    }
    return best;
  }

  // Middles of boxes of that size within, the first one in the middle.
  [[nodiscard]] static std::vector<Point> grid(const Box& within, Extent size) {
    const double across = within.width() - size.width_mm;
    const double down = within.height() - size.height_mm;
    if (across < 0.0 || down < 0.0) return {};
    std::vector<Point> middles{within.middle()};
    for (double y = 0.0; y <= down; y += kGrid_mm) {
      for (double x = 0.0; x <= across; x += kGrid_mm) {
        middles.push_back(
            {within.left_mm + size.width_mm / 2.0 + x, within.top_mm + size.height_mm / 2.0 + y});
      }
    }
    return middles;
  }

  [[nodiscard]] std::optional<Standing> close_by(const Label& label, Extent size) const {
    for (const double gap : {kClose_mm, kPastCentreLine_mm}) {
      for (int i = 0; i < kDirections; ++i) {
        const int turn =
            i % 2 == 0 ? i / 2 : -(i + 1) / 2;  // to the right first, then further round both ways
        const double angle = 2.0 * std::numbers::pi * turn / kDirections;
        const double c = std::cos(angle);
        const double s = std::sin(angle);
        const double away = label.names.radius_mm + gap;
        const auto beyond = [](double way, double half) {
          return way > 0.1 ? half : way < -0.1 ? -half : 0.0;
        };
        const Box box = box_at({label.names.centre.x_mm + away * c + beyond(c, size.width_mm / 2.0),
                                label.names.centre.y_mm - away * s - beyond(s, size.height_mm / 2.0)},
                               size);
        if (is_free_of_hatching(box) && is_free(box) && unmistaken(box, label.names))
          return Standing{box, std::nullopt};
      }
    }
    return std::nullopt;
  }

  [[nodiscard]] bool unmistaken(const Box& box, const Disc& named) const {
    const double own = std::max(distance(box, named.centre) - named.radius_mm, kClose_mm);
    return std::all_of(ground_.rounds.begin(), ground_.rounds.end(), [&](const Disc& d) {
      return same_round(d, named) || distance(box, d.centre) - d.radius_mm > kUnmistaken * own;
    });
  }

  struct Candidate {
    double length_mm = 0.0;
    Box box;
    Segment leader;
  };

  [[nodiscard]] std::optional<Standing> with_leader(const Label& label, Extent size) const {
    std::vector<Candidate> by_length;
    for (const Point& middle : grid(ground_.area, size)) {
      const Box box = box_at(middle, size);
      const Segment leader = leader_from(box, label.names);
      const double length = distance(leader.from, leader.to);
      if (length >= kShortestLeader_mm && length <= kLongestLeader_mm)
        by_length.push_back({length, box, leader});
    }
    std::stable_sort(by_length.begin(), by_length.end(),
                     [](const Candidate& a, const Candidate& b) { return a.length_mm < b.length_mm; });
    std::optional<Standing> best;
    double least = std::numeric_limits<double>::infinity();
    for (const Candidate& c : by_length) {
      if (c.length_mm >= least) break;
      if (!is_free_of_hatching(c.box) || !is_free(c.box) || !may_run(c.leader, label.names, c.box)) continue;
      const double cost = c.length_mm + kCrossingCosts_mm * static_cast<double>(lines_.crossed_by(c.leader));
      if (cost >= least) continue;
      least = cost;
      best = Standing{c.box, c.leader};
    }
    return best;
  }

  // From the middle of the label's side that is nearest, to the rim.
  [[nodiscard]] static Segment leader_from(const Box& box, const Disc& named) {
    const Point m = box.middle();
    const std::array starts{
        Point{box.left_mm - kFromText_mm, m.y_mm}, Point{box.right_mm + kFromText_mm, m.y_mm},
        Point{m.x_mm, box.top_mm - kFromText_mm}, Point{m.x_mm, box.bottom_mm + kFromText_mm}};
    const Point start = *std::min_element(starts.begin(), starts.end(), [&](Point a, Point b) {
      return distance(a, named.centre) < distance(b, named.centre);
    });
    const double away = distance(start, named.centre);
    const double share = away > 0.0 ? std::min(named.radius_mm / away, 1.0) : 1.0;
    return {start,
            {named.centre.x_mm + share * (start.x_mm - named.centre.x_mm),
             named.centre.y_mm + share * (start.y_mm - named.centre.y_mm)}};
  }

  // Where the arrowhead at its end is widest.
  [[nodiscard]] static Point arrow_back(const Segment& leader) {
    const double share = std::min(kArrow_mm / distance(leader.from, leader.to), 1.0);
    return {leader.to.x_mm + share * (leader.from.x_mm - leader.to.x_mm),
            leader.to.y_mm + share * (leader.from.y_mm - leader.to.y_mm)};
  }

  [[nodiscard]] bool may_run(const Segment& leader, const Disc& named, const Box& own) const {
    return !crosses(leader, grown(own, kFromText_mm / 2.0)) &&
           distance(own, arrow_back(leader)) >= kFromText_mm &&
           std::none_of(ground_.taken.begin(), ground_.taken.end(),
                        [&](const Box& t) { return crosses(leader, t); }) &&
           std::none_of(leaders_.begin(), leaders_.end(),
                        [&](const Segment& l) { return cross(l, leader); }) &&
           std::none_of(ground_.rounds.begin(), ground_.rounds.end(), [&](const Disc& d) {
             return !same_round(d, named) && crosses(leader, {d.centre, d.radius_mm + kRoom_mm});
           });
  }

  Ground ground_;
  LineGrid lines_;
  std::vector<Segment> leaders_;
};

}  // namespace

std::vector<std::optional<Standing>> place_labels(const Ruler& ruler, const std::vector<Label>& labels,
                                                  const Ground& ground) {
  std::vector<Extent> sizes;
  std::vector<std::size_t> order;
  for (const Label& label : labels) {
    order.push_back(sizes.size());
    sizes.push_back(extent(ruler, label));
  }
  std::vector<std::optional<Standing>> best(labels.size());
  std::size_t most = 0;
  for (std::size_t attempt = 0; attempt < kTries; ++attempt) {
    Placing placing(ground);
    std::vector<std::optional<Standing>> standing(labels.size());
    std::vector<std::size_t> failed;
    std::vector<std::size_t> placed;
    for (const std::size_t i : order) {
      standing[i] = placing.place(labels[i], sizes[i]);
      (standing[i] ? placed : failed).push_back(i);
    }
    const bool is_better = attempt == 0 || placed.size() > most;
    if (!is_better) break;
    most = placed.size();
    best = std::move(standing);
    if (failed.empty()) break;
    order = std::move(failed);
    order.insert(order.end(), placed.begin(), placed.end());
  }
  return best;
}

void add_label(DisplayList& list, const Ruler& ruler, const Label& label, const Standing& standing) {
  const Point named = label.names.centre;
  const bool to_the_left = standing.box.right_mm <= named.x_mm;
  const bool to_the_right = standing.box.left_mm >= named.x_mm;
  const Anchor anchor = to_the_left ? Anchor::kRight : to_the_right ? Anchor::kLeft : Anchor::kMiddle;
  const double x = to_the_left    ? standing.box.right_mm
                   : to_the_right ? standing.box.left_mm
                                  : standing.box.middle().x_mm;
  double y = standing.box.top_mm;
  for (const std::string& line : label.lines) {
    const TextSize size = ruler.measure(line, label.style);
    list.emplace_back(text(ruler, line, {x, y + size.above_mm}, label.style, anchor));
    y += size.height();
  }
  if (!standing.leader) return;
  list.emplace_back(Line{standing.leader->from, standing.leader->to, Weight::kThin});
  if (label.names.radius_mm > 0.0) {
    add_arrowhead(list, standing.leader->from, standing.leader->to, kArrow_mm);
  } else {
    add_filled(list, grown({named.x_mm, named.y_mm, named.x_mm, named.y_mm}, kDot_mm));
  }
}

}  // namespace sparewright::drawing
