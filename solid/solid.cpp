#include "solid/solid.hpp"

#include <utility>

#include <BRepBndLib.hxx>
#include <BRepCheck_Analyzer.hxx>
#include <BRepGProp.hxx>
#include <Bnd_Box.hxx>
#include <GProp_GProps.hxx>
#include <TopExp.hxx>
#include <TopTools_IndexedMapOfShape.hxx>
#include <TopoDS_Shape.hxx>

#include "solid/kernel_shape.hpp"

namespace sparewright::solid {

struct Solid::Body {
  TopoDS_Shape shape;
};

namespace {

GProp_GProps volume_properties(const TopoDS_Shape& shape) {
  GProp_GProps properties;
  BRepGProp::VolumeProperties(shape, properties);
  return properties;
}

int count(const TopoDS_Shape& shape, TopAbs_ShapeEnum kind) {
  TopTools_IndexedMapOfShape found;
  TopExp::MapShapes(shape, kind, found);
  return found.Extent();
}

}  // namespace

Solid::Solid(std::shared_ptr<const Body> body) : body_(std::move(body)) {}

double Solid::volume_mm3() const {
  return kernel_volume_mm3(body_->shape);
}

double Solid::area_mm2() const {
  GProp_GProps properties;
  BRepGProp::SurfaceProperties(body_->shape, properties);
  return properties.Mass();
}

shape::Point Solid::centre_of_gravity() const {
  const gp_Pnt centre = volume_properties(body_->shape).CentreOfMass();
  return {centre.X(), centre.Y(), centre.Z()};
}

shape::Bounds Solid::bounds() const {
  Bnd_Box box;
  box.SetGap(0.0);
  BRepBndLib::AddOptimal(body_->shape, box, false, false);
  shape::Bounds bounds;
  box.Get(bounds.low.x, bounds.low.y, bounds.low.z, bounds.high.x, bounds.high.y, bounds.high.z);
  return bounds;
}

int Solid::pieces() const {
  return count(body_->shape, TopAbs_SOLID);
}
int Solid::faces() const {
  return count(body_->shape, TopAbs_FACE);
}
int Solid::edges() const {
  return count(body_->shape, TopAbs_EDGE);
}

bool Solid::valid() const {
  return BRepCheck_Analyzer(body_->shape).IsValid();
}

Solid from_kernel(const TopoDS_Shape& shape) {
  return Solid(std::make_shared<const Solid::Body>(Solid::Body{shape}));
}

const TopoDS_Shape& to_kernel(const Solid& solid) {
  return solid.body_->shape;
}

double kernel_volume_mm3(const TopoDS_Shape& shape) {
  return volume_properties(shape).Mass();
}

double kernel_volume_closely_mm3(const TopoDS_Shape& shape) {
  constexpr double kRelative = 1e-9;
  GProp_GProps properties;
  BRepGProp::VolumeProperties(shape, properties, kRelative);
  return properties.Mass();
}

}  // namespace sparewright::solid
