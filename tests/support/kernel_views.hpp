// What the kernel's own hidden-line removal shows of a solid, for tests that judge views by it.
#pragma once

#include <algorithm>
#include <vector>

#include <BRepAdaptor_Curve.hxx>
#include <BRepBuilderAPI_Copy.hxx>
#include <BRepLib.hxx>
#include <BRepMesh_IncrementalMesh.hxx>
#include <GCPnts_QuasiUniformDeflection.hxx>
#include <HLRAlgo_Projector.hxx>
#include <HLRBRep_Algo.hxx>
#include <HLRBRep_HLRToShape.hxx>
#include <HLRBRep_PolyAlgo.hxx>
#include <HLRBRep_PolyHLRToShape.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Edge.hxx>
#include <TopoDS_Shape.hxx>
#include <gp_Ax2.hxx>

#include "drawing/sight.hpp"
#include "solid/kernel_shape.hpp"

namespace sparewright::tests {

using Polyline = std::vector<shape::FlatPoint>;

// Smooth edges, across which the surface does not bend, apart: a drawing leaves most of them out.
struct KernelView {
  std::vector<Polyline> visible;
  std::vector<Polyline> hidden;
  std::vector<Polyline> smooth_visible;
  std::vector<Polyline> smooth_hidden;
};

inline HLRAlgo_Projector projector_of(const drawing::Sight& sight) {
  return HLRAlgo_Projector(gp_Ax2(gp_Pnt(0.0, 0.0, 0.0),
                                  gp_Dir(sight.towards.x, sight.towards.y, sight.towards.z),
                                  gp_Dir(sight.right.x, sight.right.y, sight.right.z)));
}

inline void add_polylines(const TopoDS_Shape& compound, std::vector<Polyline>& to) {
  if (compound.IsNull()) return;
  BRepLib::BuildCurves3d(compound);
  constexpr double kSag_mm = 0.002;
  for (TopExp_Explorer edges(compound, TopAbs_EDGE); edges.More(); edges.Next()) {
    const BRepAdaptor_Curve curve(TopoDS::Edge(edges.Current()));
    const auto at = [](const gp_Pnt& p) { return shape::FlatPoint{p.X(), p.Y()}; };
    Polyline line;
    const GCPnts_QuasiUniformDeflection points(curve, kSag_mm);
    if (curve.GetType() == GeomAbs_Line || !points.IsDone()) {
      line = {at(curve.Value(curve.FirstParameter())), at(curve.Value(curve.LastParameter()))};
    } else {
      for (int i = 1; i <= points.NbPoints(); ++i)
        line.push_back(at(points.Value(i)));
    }
    to.push_back(std::move(line));
  }
}

template <typename ToShape>
KernelView kernel_lines(ToShape& all) {
  KernelView view;
  add_polylines(all.VCompound(), view.visible);
  add_polylines(all.OutLineVCompound(), view.visible);
  add_polylines(all.HCompound(), view.hidden);
  add_polylines(all.OutLineHCompound(), view.hidden);
  add_polylines(all.Rg1LineVCompound(), view.smooth_visible);
  add_polylines(all.RgNLineVCompound(), view.smooth_visible);
  add_polylines(all.Rg1LineHCompound(), view.smooth_hidden);
  add_polylines(all.RgNLineHCompound(), view.smooth_hidden);
  return view;
}

// A copy that knows which of its edges are smooth: what comes of cutting does not.
inline TopoDS_Shape copy_for_lines(const solid::Solid& solid) {
  const TopoDS_Shape copy = BRepBuilderAPI_Copy(solid::to_kernel(solid)).Shape();
  BRepLib::EncodeRegularity(copy);
  return copy;
}

// By triangles that stray no more than chord_mm from the surface.
inline KernelView polygonal_view(const solid::Solid& solid, const drawing::Sight& sight, double chord_mm) {
  const TopoDS_Shape copy = copy_for_lines(solid);
  constexpr double kAngle_rad = 0.2;
  const BRepMesh_IncrementalMesh mesh(copy, chord_mm, Standard_False, kAngle_rad);
  const Handle(HLRBRep_PolyAlgo) algorithm = new HLRBRep_PolyAlgo(copy);
  algorithm->Projector(projector_of(sight));
  algorithm->Update();
  HLRBRep_PolyHLRToShape lines;
  lines.Update(algorithm);
  return kernel_lines(lines);
}

// By the surfaces themselves: slow.
inline KernelView exact_view(const solid::Solid& solid, const drawing::Sight& sight) {
  const Handle(HLRBRep_Algo) algorithm = new HLRBRep_Algo;
  algorithm->Add(copy_for_lines(solid));
  algorithm->Projector(projector_of(sight));
  algorithm->Update();
  algorithm->Hide();
  HLRBRep_HLRToShape lines(algorithm);
  return kernel_lines(lines);
}

}  // namespace sparewright::tests
