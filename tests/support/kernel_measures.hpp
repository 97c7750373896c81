// What the kernel itself says of a solid and of primitives, asked for directly, for tests that judge by it.
#pragma once

#include <stdexcept>

#include <BRepAdaptor_Surface.hxx>
#include <BRepExtrema_DistShapeShape.hxx>
#include <BRepGProp.hxx>
#include <GProp_GProps.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Shape.hxx>
#include <gp_Pln.hxx>

#include "core/shape/primitive.hpp"
#include "solid/kernel_shape.hpp"

namespace sparewright::tests {

// Of all flat faces of the solid that lie in the plane through a point, within a millionth of a millimetre, and face out.
inline double kernel_area_mm2(const solid::Solid& solid, const shape::Point& on, const shape::Vector& out) {
  constexpr double kIn_mm = 1e-6;
  constexpr double kAlong = 1e-9;
  const shape::Vector n = direction(out);
  double sum = 0.0;
  for (TopExp_Explorer faces(to_kernel(solid), TopAbs_FACE); faces.More(); faces.Next()) {
    const TopoDS_Face& face = TopoDS::Face(faces.Current());
    const BRepAdaptor_Surface surface(face);
    if (surface.GetType() != GeomAbs_Plane) continue;
    const gp_Dir axis = surface.Plane().Axis().Direction();
    const bool turned_over = (face.Orientation() == TopAbs_REVERSED) == surface.Plane().Position().Direct();
    const double way = turned_over ? -1.0 : 1.0;
    const gp_Pnt at = surface.Plane().Location();
    if (length_mm(way * shape::Vector{axis.X(), axis.Y(), axis.Z()} - n) > kAlong) continue;
    if (std::abs(dot(shape::Point{at.X(), at.Y(), at.Z()} - on, n)) > kIn_mm) continue;
    GProp_GProps properties;
    BRepGProp::SurfaceProperties(face, properties);
    sum += properties.Mass();
  }
  return sum;
}

// The least distance of two primitives as bodies of the kernel. Throws where the kernel finds none.
inline double kernel_distance_mm(const shape::Primitive& a, const shape::Primitive& b) {
  constexpr double kSeam_rad = 0.6;
  const BRepExtrema_DistShapeShape found(solid::kernel_body(a, kSeam_rad, a),
                                         solid::kernel_body(b, kSeam_rad, b));
  if (!found.IsDone()) throw std::runtime_error("the kernel finds no distance");
  return found.InnerSolution() ? 0.0 : found.Value();
}

}  // namespace sparewright::tests
