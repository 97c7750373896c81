// Plane geometry on paper: millimetres, x to the right, y DOWN, from the upper left corner of the page or picture.
#pragma once

namespace sparewright::drawing {

struct Point {
  double x_mm = 0.0;
  double y_mm = 0.0;

  friend bool operator==(const Point&, const Point&) = default;
};

struct Segment {
  Point from;
  Point to;

  friend bool operator==(const Segment&, const Segment&) = default;
};

struct Disc {
  Point centre;
  double radius_mm = 0.0;
};

// left <= right and top <= bottom.
struct Box {
  double left_mm = 0.0;
  double top_mm = 0.0;
  double right_mm = 0.0;
  double bottom_mm = 0.0;

  [[nodiscard]] double width() const { return right_mm - left_mm; }
  [[nodiscard]] double height() const { return bottom_mm - top_mm; }
  [[nodiscard]] Point middle() const { return {(left_mm + right_mm) / 2.0, (top_mm + bottom_mm) / 2.0}; }
  friend bool operator==(const Box&, const Box&) = default;
};

[[nodiscard]] double distance(Point a, Point b);
[[nodiscard]] double distance(const Segment& segment, Point point);
[[nodiscard]] double distance(const Box& box, Point point);  // 0 inside

[[nodiscard]] Point moved(Point point, Point by);
[[nodiscard]] Box moved(const Box& box, Point by);
[[nodiscard]] Box grown(const Box& box, double by_mm);
[[nodiscard]] bool holds(const Box& outer, const Box& inner);  // edges may meet

// Whether they share more than kTouch_mm; edges that only meet do not overlap.
inline constexpr double kTouch_mm = 1e-6;
[[nodiscard]] bool overlap(const Box& a, const Box& b);
[[nodiscard]] bool crosses(const Segment& segment, const Box& box);  // runs through its inside
[[nodiscard]] bool cross(const Segment& a, const Segment& b);        // meet, ends included
[[nodiscard]] bool crosses(const Segment& segment, const Disc& disc);

}  // namespace sparewright::drawing
