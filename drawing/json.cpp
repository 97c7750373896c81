#include "drawing/json.hpp"

#include <string_view>

#include <fmt/format.h>

namespace sparewright::drawing {
namespace {

std::string_view name_of(Weight weight) {
  switch (weight) {
    case Weight::kFrame:
      return "frame";
    case Weight::kBold:
      return "bold";
    case Weight::kVisible:
      return "visible";
    case Weight::kThin:
      return "thin";
    case Weight::kHidden:
      return "hidden";
    case Weight::kCentre:
      return "centre";
    case Weight::kHatch:
      return "hatch";
  }
  return "";
}

std::string_view name_of(Ink ink) {
  return ink == Ink::kBlack ? "black" : "white";
}

std::string_view name_of(Anchor anchor) {
  return anchor == Anchor::kLeft ? "left" : anchor == Anchor::kMiddle ? "middle" : "right";
}

std::string number(double value, int places) {
  const std::string text = fmt::format("{:.{}f}", value, places);
  return text.find_first_of("123456789") == std::string::npos && text.front() == '-' ? text.substr(1) : text;
}

std::string mm(double value) {
  return number(value, 2);
}

std::string mm(Point p) {
  return mm(p.x_mm) + "," + mm(p.y_mm);
}

// RFC 8259, section 7.
std::string quoted(std::string_view text) {
  std::string out = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\') {
      out += '\\';
      out += c;
    } else if (static_cast<unsigned char>(c) < 0x20U) {
      out += fmt::format("\\u{:04x}", static_cast<unsigned>(c));
    } else {
      out += c;
    }
  }
  return out + "\"";
}

std::string json(const Line& l) {
  return fmt::format(R"({{"line":[{},{}],"weight":"{}"}})", mm(l.from), mm(l.to), name_of(l.weight));
}

std::string json(const Circle& c) {
  return fmt::format(R"({{"circle":[{},{}],"weight":"{}"}})", mm(c.centre), mm(c.radius_mm),
                     name_of(c.weight));
}

std::string json(const Arc& a) {
  return fmt::format(R"({{"arc":[{},{}],"angles":[{},{}],"weight":"{}"}})", mm(a.centre), mm(a.radius_mm),
                     number(a.from_rad, 4), number(a.to_rad, 4), name_of(a.weight));
}

std::string json(const Filled& f) {
  std::string corners;
  for (const Point& corner : f.corners)
    corners += (corners.empty() ? "" : ",") + mm(corner);
  return fmt::format(R"({{"filled":[{}],"ink":"{}"}})", corners, name_of(f.ink));
}

std::string json(const Text& t) {
  return fmt::format(
      R"({{"text":{},"at":[{}],"anchor":"{}","cap":{},"face":"{}","ink":"{}","box":[{},{},{},{}]}})",
      quoted(t.says), mm(t.at), name_of(t.anchor), mm(t.style.cap_mm),
      t.style.face == Face::kBold ? "bold" : "regular", name_of(t.ink), mm(t.box.left_mm), mm(t.box.top_mm),
      mm(t.box.right_mm), mm(t.box.bottom_mm));
}

}  // namespace

std::string to_json(const DisplayList& list) {
  std::string out = "[";
  for (const Element& element : list) {
    out += out.size() == 1 ? "\n" : ",\n";
    out += std::visit([](const auto& e) { return json(e); }, element);
  }
  return out + "\n]\n";
}

}  // namespace sparewright::drawing
