#include "solid/memory.hpp"

#include <unordered_set>

#include <BRep_Curve3D.hxx>
#include <BRep_CurveOnClosedSurface.hxx>
#include <BRep_CurveOnSurface.hxx>
#include <BRep_CurveRepresentation.hxx>
#include <BRep_GCurve.hxx>
#include <BRep_TEdge.hxx>
#include <BRep_TFace.hxx>
#include <BRep_TVertex.hxx>
#include <Geom2d_BSplineCurve.hxx>
#include <Geom2d_Circle.hxx>
#include <Geom2d_TrimmedCurve.hxx>
#include <Geom_BSplineCurve.hxx>
#include <Geom_BSplineSurface.hxx>
#include <Geom_Circle.hxx>
#include <Geom_ConicalSurface.hxx>
#include <Geom_TrimmedCurve.hxx>
#include <TopoDS_Iterator.hxx>
#include <TopoDS_TWire.hxx>

#include "solid/kernel_shape.hpp"

namespace sparewright::solid {
namespace {

// A place in one of the kernel's lists of shapes, and of curves.
constexpr std::size_t kChild_bytes = sizeof(TopoDS_Shape) + sizeof(void*) + kBlock_bytes;
constexpr std::size_t kListed_bytes = 2 * sizeof(void*) + kBlock_bytes;
// A wire, shell, solid or compound has nothing of its own but its list. Plain curves and surfaces are those without poles:
// lines, circles, planes, cylinders and the like; the kernel's largest of each is no more than these.
constexpr std::size_t kContainer_bytes = sizeof(TopoDS_TWire) + kBlock_bytes;
constexpr std::size_t kPlainCurve_bytes = sizeof(Geom_Circle) + kBlock_bytes;
constexpr std::size_t kPlainFlatCurve_bytes = sizeof(Geom2d_Circle) + kBlock_bytes;
constexpr std::size_t kPlainSurface_bytes = sizeof(Geom_ConicalSurface) + kBlock_bytes;
// A knot with its multiplicity, and as often as it counts in the flat list of them.
constexpr std::size_t kKnot_bytes = 3 * sizeof(double);

class Count {
 public:
  void add(const TopoDS_Shape& shape) {
    if (!is_new(shape.TShape().get())) return;
    bytes_ += own_bytes(shape);
    for (TopoDS_Iterator it(shape, false, false); it.More(); it.Next()) {
      bytes_ += kChild_bytes;
      add(it.Value());
    }
  }
  [[nodiscard]] std::size_t bytes() const { return bytes_; }

 private:
  bool is_new(const void* thing) { return thing != nullptr && seen_.insert(thing).second; }

  std::size_t own_bytes(const TopoDS_Shape& shape) {
    switch (shape.ShapeType()) {
      case TopAbs_VERTEX:
        return sizeof(BRep_TVertex) + kBlock_bytes;
      case TopAbs_EDGE:
        return sizeof(BRep_TEdge) + kBlock_bytes +
               curves(*static_cast<const BRep_TEdge*>(shape.TShape().get()));
      case TopAbs_FACE:
        return sizeof(BRep_TFace) + kBlock_bytes +
               surface(static_cast<const BRep_TFace*>(shape.TShape().get())->Surface());
      default:
        return kContainer_bytes;
    }
  }

  std::size_t curves(const BRep_TEdge& edge) {
    std::size_t bytes = 0;
    for (const Handle(BRep_CurveRepresentation) & held : edge.Curves()) {
      bytes += kListed_bytes + kBlock_bytes;
      if (held->IsCurve3D()) bytes += sizeof(BRep_Curve3D) + curve(held->Curve3D());
      if (held->IsCurveOnSurface())
        bytes += sizeof(BRep_CurveOnSurface) + flat_curve(held->PCurve()) + surface(held->Surface());
      if (held->IsCurveOnClosedSurface())
        bytes +=
            sizeof(BRep_CurveOnClosedSurface) - sizeof(BRep_CurveOnSurface) + flat_curve(held->PCurve2());
    }
    return bytes;
  }

  std::size_t curve(const Handle(Geom_Curve) & curve) {
    if (!is_new(curve.get())) return 0;
    if (const auto part = Handle(Geom_TrimmedCurve)::DownCast(curve); !part.IsNull())
      return kPlainCurve_bytes + this->curve(part->BasisCurve());
    const auto spline = Handle(Geom_BSplineCurve)::DownCast(curve);
    if (spline.IsNull()) return kPlainCurve_bytes;
    return sizeof(Geom_BSplineCurve) + poles(spline->NbPoles(), 3 + (spline->IsRational() ? 1 : 0)) +
           knots(spline->NbKnots());
  }

  std::size_t flat_curve(const Handle(Geom2d_Curve) & curve) {
    if (!is_new(curve.get())) return 0;
    if (const auto part = Handle(Geom2d_TrimmedCurve)::DownCast(curve); !part.IsNull())
      return kPlainFlatCurve_bytes + flat_curve(part->BasisCurve());
    const auto spline = Handle(Geom2d_BSplineCurve)::DownCast(curve);
    if (spline.IsNull()) return kPlainFlatCurve_bytes;
    return sizeof(Geom2d_BSplineCurve) + poles(spline->NbPoles(), 2 + (spline->IsRational() ? 1 : 0)) +
           knots(spline->NbKnots());
  }

  std::size_t surface(const Handle(Geom_Surface) & surface) {
    if (!is_new(surface.get())) return 0;
    const auto spline = Handle(Geom_BSplineSurface)::DownCast(surface);
    if (spline.IsNull()) return kPlainSurface_bytes;
    return sizeof(Geom_BSplineSurface) + poles(spline->NbUPoles() * spline->NbVPoles(), 4) +
           knots(spline->NbUKnots()) + knots(spline->NbVKnots());
  }

  static std::size_t poles(int count, int numbers) {
    return static_cast<std::size_t>(count * numbers) * sizeof(double) + 2 * kBlock_bytes;
  }
  static std::size_t knots(int count) {
    return static_cast<std::size_t>(count) * kKnot_bytes + 3 * kBlock_bytes;
  }

  std::unordered_set<const void*> seen_;  // asked only whether it holds something, never gone through
  std::size_t bytes_ = 0;
};

}  // namespace

std::size_t memory_bytes(const Solid& solid) {
  Count count;
  count.add(to_kernel(solid));
  return count.bytes();
}

}  // namespace sparewright::solid
