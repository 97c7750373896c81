#include "solid/edges.hpp"

#include <cmath>
#include <numbers>
#include <optional>

#include <BRepAdaptor_Curve.hxx>
#include <BRepAdaptor_Surface.hxx>
#include <BRep_Tool.hxx>
#include <GCPnts_QuasiUniformDeflection.hxx>
#include <Geom2d_Curve.hxx>
#include <TopExp.hxx>
#include <TopTools_IndexedDataMapOfShapeListOfShape.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Edge.hxx>
#include <TopoDS_Face.hxx>
#include <gp_Circ.hxx>
#include <gp_Vec.hxx>

#include "solid/kernel_guard.hpp"
#include "solid/kernel_shape.hpp"

namespace sparewright::solid {
namespace {

shape::Point point(const gp_Pnt& p) {
  return {p.X(), p.Y(), p.Z()};
}
shape::Vector vector(const gp_Dir& d) {
  return {d.X(), d.Y(), d.Z()};
}

// Out of the metal, length 1; nothing where the surface has no direction there (the point of a cone).
std::optional<gp_Vec> outward(const TopoDS_Edge& edge, const TopoDS_Face& face, double fraction) {
  double first = 0.0;
  double last = 0.0;
  const Handle(Geom2d_Curve) in_face = BRep_Tool::CurveOnSurface(edge, face, first, last);
  if (in_face.IsNull()) return std::nullopt;
  const gp_Pnt2d uv = in_face->Value(first + fraction * (last - first));
  const BRepAdaptor_Surface surface(face);
  gp_Pnt at;
  gp_Vec along_u;
  gp_Vec along_v;
  surface.D1(uv.X(), uv.Y(), at, along_u, along_v);
  gp_Vec normal = along_u.Crossed(along_v);
  if (normal.Magnitude() < 1e-12) return std::nullopt;
  normal.Normalize();
  return face.Orientation() == TopAbs_REVERSED ? normal.Reversed() : normal;
}

enum class Bend { kSharp, kSmoothFlat, kUnseen };

// Smooth: the two faces' directions agree all along; flat: and stay the same. A seam is never seen.
struct Across {
  Bend bend = Bend::kSharp;
  shape::Vector out;
};

Across across(const TopoDS_Edge& edge, const TopTools_ListOfShape& faces) {
  constexpr double kSame_rad = 1e-4;
  if (faces.Extent() != 2) return {};
  const TopoDS_Face one = TopoDS::Face(faces.First());
  const TopoDS_Face other = TopoDS::Face(faces.Last());
  if (one.IsSame(other)) return {Bend::kUnseen, {}};
  std::optional<gp_Vec> first;
  bool is_flat = true;
  for (const double fraction : {0.2, 0.5, 0.8}) {
    const auto a = outward(edge, one, fraction);
    const auto b = outward(edge, other, fraction);
    if (!a || !b || a->Angle(*b) > kSame_rad) return {};
    if (!first) first = a;
    is_flat = is_flat && first->Angle(*a) < kSame_rad;
  }
  if (!is_flat) return {Bend::kUnseen, {}};
  return {Bend::kSmoothFlat, {first->X(), first->Y(), first->Z()}};
}

using Curve = decltype(Edge::curve);

Curve arc_of(const BRepAdaptor_Curve& curve) {
  const gp_Circ circle = curve.Circle();
  const double first = curve.FirstParameter();
  const double sweep = std::min(curve.LastParameter() - first, 2.0 * std::numbers::pi);
  const gp_Vec start = gp_Vec(circle.Location(), curve.Value(first)) / circle.Radius();
  return EdgeArc{point(circle.Location()),
                 vector(circle.Axis().Direction()),
                 {start.X(), start.Y(), start.Z()},
                 circle.Radius(),
                 sweep};
}

Curve path_of(const BRepAdaptor_Curve& curve) {
  EdgePath path;
  const GCPnts_QuasiUniformDeflection points(curve, kPathSag_mm);
  if (!points.IsDone() || points.NbPoints() < 2) {
    path.points = {point(curve.Value(curve.FirstParameter())), point(curve.Value(curve.LastParameter()))};
    return path;
  }
  for (int i = 1; i <= points.NbPoints(); ++i)
    path.points.push_back(point(points.Value(i)));
  return path;
}

Curve curve_of(const TopoDS_Edge& edge) {
  const BRepAdaptor_Curve curve(edge);
  switch (curve.GetType()) {
    case GeomAbs_Line:
      return EdgeLine{point(curve.Value(curve.FirstParameter())), point(curve.Value(curve.LastParameter()))};
    case GeomAbs_Circle:
      return arc_of(curve);
    default:
      return path_of(curve);
  }
}

}  // namespace

base::Result<std::vector<Edge>> edges_of(const Solid& solid) {
  return guarded("drawing", [&] {
    TopTools_IndexedDataMapOfShapeListOfShape faces_of_edges;
    TopExp::MapShapesAndAncestors(to_kernel(solid), TopAbs_EDGE, TopAbs_FACE, faces_of_edges);
    std::vector<Edge> edges;
    for (int i = 1; i <= faces_of_edges.Extent(); ++i) {
      const TopoDS_Edge edge = TopoDS::Edge(faces_of_edges.FindKey(i));
      if (BRep_Tool::Degenerated(edge)) continue;
      const Across bend = across(edge, faces_of_edges(i));
      if (bend.bend != Bend::kUnseen)
        edges.push_back({curve_of(edge), bend.bend == Bend::kSmoothFlat, bend.out});
    }
    return edges;
  });
}

}  // namespace sparewright::solid
