#include "solid/face_volumes.hpp"

#include <BRepGProp_Domain.hxx>
#include <BRepGProp_Face.hxx>
#include <BRepGProp_Vinert.hxx>
#include <NCollection_DataMap.hxx>
#include <TopExp_Explorer.hxx>
#include <TopTools_OrientedShapeMapHasher.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Iterator.hxx>

namespace sparewright::solid {
namespace {

double cone_mm3(const TopoDS_Face& face, const shape::Point& apex) {
  const gp_Pnt at(apex.x, apex.y, apex.z);
  BRepGProp_Face surface(face);
  if (!TopoDS_Iterator(face).More()) return BRepGProp_Vinert(surface, at).Mass();  // closed in itself
  BRepGProp_Domain edges(face);
  return BRepGProp_Vinert(surface, edges, at).Mass();
}

}  // namespace

// A face counts with its side: two that differ in it alone are two.
struct FaceVolumes::Cones {
  NCollection_DataMap<TopoDS_Shape, double, TopTools_OrientedShapeMapHasher> of_face;
};

FaceVolumes::FaceVolumes(const shape::Point& apex) : apex_(apex), cones_(std::make_unique<Cones>()) {}
FaceVolumes::~FaceVolumes() = default;

double FaceVolumes::volume_mm3(const TopoDS_Shape& shape) {
  double sum = 0.0;
  for (TopExp_Explorer faces(shape, TopAbs_FACE); faces.More(); faces.Next()) {
    const TopoDS_Face& face = TopoDS::Face(faces.Current());
    if (face.Orientation() != TopAbs_FORWARD && face.Orientation() != TopAbs_REVERSED) continue;
    const double* kept = cones_->of_face.Seek(face);
    if (kept == nullptr) kept = cones_->of_face.Bound(face, cone_mm3(face, apex_));
    sum += *kept;
  }
  return sum;
}

}  // namespace sparewright::solid
