#include "core/part/face.hpp"

#include <cstddef>

namespace sparewright::part {
namespace {

struct Row {
  std::string_view name;
  Axis axis;
  bool greater;
};
constexpr std::array<Row, kFaces.size()> kRows{{{"left end", Axis::kX, false},
                                                {"right end", Axis::kX, true},
                                                {"front", Axis::kY, false},
                                                {"back", Axis::kY, true},
                                                {"underside", Axis::kZ, false},
                                                {"top", Axis::kZ, true}}};

const Row& row(Face face) {
  return kRows.at(static_cast<std::size_t>(face));
}

}  // namespace

std::string_view name_of(Axis axis) {
  return axis == Axis::kX ? "x" : axis == Axis::kY ? "y" : "z";
}
std::string_view name_of(Face face) {
  return row(face).name;
}

std::optional<Face> find_face(std::string_view name) {
  for (const Face face : kFaces) {
    if (name_of(face) == name) return face;
  }
  return std::nullopt;
}

std::optional<Face> find_blank_face(std::string_view name) {
  if (name == "start") return Face::kLeftEnd;
  if (name == "end") return Face::kRightEnd;
  constexpr std::array<std::string_view, kFaces.size()> kNames{"x low",  "x high", "y low",
                                                               "y high", "z low",  "z high"};
  for (const Face face : kFaces) {
    if (kNames.at(static_cast<std::size_t>(face)) == name) return face;
  }
  return std::nullopt;
}

Axis axis_of(Face face) {
  return row(face).axis;
}
bool at_greater_end(Face face) {
  return row(face).greater;
}
Face opposite(Face face) {
  return face_at(axis_of(face), !at_greater_end(face));
}

Face face_at(Axis axis, bool greater_end) {
  return kFaces.at(static_cast<std::size_t>(axis) * 2 + (greater_end ? 1 : 0));
}

std::array<Axis, 2> axes_in(Face face) {
  switch (axis_of(face)) {
    case Axis::kX:
      return {Axis::kY, Axis::kZ};
    case Axis::kY:
      return {Axis::kX, Axis::kZ};
    case Axis::kZ:
      break;
  }
  return {Axis::kX, Axis::kY};
}

shape::Open open_side(Face face) {
  switch (face) {
    case Face::kLeftEnd:
      return shape::Open::kXLow;
    case Face::kRightEnd:
      return shape::Open::kXHigh;
    case Face::kFront:
      return shape::Open::kYLow;
    case Face::kBack:
      return shape::Open::kYHigh;
    case Face::kUnderside:
      return shape::Open::kZLow;
    case Face::kTop:
      break;
  }
  return shape::Open::kZHigh;
}

shape::Vector outward(Face face) {
  shape::Vector v;
  component(v, axis_of(face)) = at_greater_end(face) ? 1.0 : -1.0;
  return v;
}

double& component(shape::Vector& v, Axis axis) {
  return axis == Axis::kX ? v.x : axis == Axis::kY ? v.y : v.z;
}
double component(const shape::Vector& v, Axis axis) {
  return axis == Axis::kX ? v.x : axis == Axis::kY ? v.y : v.z;
}

}  // namespace sparewright::part
