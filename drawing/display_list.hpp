// A drawing before it is drawn: lines, circles, arcs, filled corners and texts in the order they are laid down, later
// ones over earlier ones. Millimetres on paper, x to the right, y DOWN (geometry.hpp). Text is always horizontal.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "drawing/geometry.hpp"
#include "drawing/text.hpp"

namespace sparewright::drawing {

// Kinds of line. Visible, hidden and centre lines as in ISO 128-2 (types 01.2, 02.1, 04.1); the widths are our own,
// chosen to hold on a worn printer.
enum class Weight {
  kFrame,    // round what must not be overlooked
  kBold,     // cut in this setup
  kVisible,  // an edge one sees
  kThin,     // other edges, leaders, rules, blanks
  kHidden,   // dashed
  kCentre,   // chain
  kHatch,
};

struct Stroke {
  double width_mm = 0.0;
  std::vector<double> dashes_mm;  // line, gap, line, gap ...; empty for an unbroken line
};
[[nodiscard]] Stroke stroke_of(Weight weight);

struct Line {
  Point from;
  Point to;
  Weight weight = Weight::kThin;
  friend bool operator==(const Line&, const Line&) = default;
};

struct Circle {
  Point centre;
  double radius_mm = 0.0;
  Weight weight = Weight::kThin;
  friend bool operator==(const Circle&, const Circle&) = default;
};

// From one angle to a greater one, clockwise on paper, 0 to the right.
struct Arc {
  Point centre;
  double radius_mm = 0.0;
  double from_rad = 0.0;
  double to_rad = 0.0;
  Weight weight = Weight::kThin;
  friend bool operator==(const Arc&, const Arc&) = default;
};

enum class Ink { kBlack, kWhite };

// A filled polygon without an outline.
struct Filled {
  std::vector<Point> corners;
  Ink ink = Ink::kBlack;
  friend bool operator==(const Filled&, const Filled&) = default;
};

enum class Anchor { kLeft, kMiddle, kRight };  // which point of the line of text `at` is

struct Text {
  std::string says;  // one line
  Point at;          // on the baseline
  Anchor anchor = Anchor::kLeft;
  TextStyle style;
  Ink ink = Ink::kBlack;
  Box box;  // the room it takes, as measured
  friend bool operator==(const Text&, const Text&) = default;
};

using Element = std::variant<Line, Circle, Arc, Filled, Text>;
using DisplayList = std::vector<Element>;

// A measured text.
[[nodiscard]] Text text(const Ruler& ruler, std::string says, Point at, const TextStyle& style,
                        Anchor anchor = Anchor::kLeft, Ink ink = Ink::kBlack);

[[nodiscard]] Element moved(const Element& element, Point by);
void append(DisplayList& list, const DisplayList& more, Point moved_by = {});

void add_outline(DisplayList& list, const Box& box, Weight weight);
void add_filled(DisplayList& list, const Box& box, Ink ink = Ink::kBlack);

// The wave of a break, two arcs of 60 degrees from the top straight down. Returns how far it swings to either side, mm.
double add_wave(DisplayList& list, double x_mm, double top_mm, double bottom_mm);

// A filled arrowhead whose point is at `tip`, coming from `from`. Nothing where the two are the same.
void add_arrowhead(DisplayList& list, Point from, Point tip, double length_mm);

}  // namespace sparewright::drawing
