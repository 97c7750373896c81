// Primitives as the kernel's shapes.
#include <numbers>

#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakePolygon.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakeCone.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <BRepPrimAPI_MakeRevol.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Shape.hxx>
#include <gp_Ax2.hxx>
#include <gp_Circ.hxx>

#include "core/shape/profile.hpp"
#include "core/shape/support.hpp"
#include "solid/kernel_shape.hpp"

namespace sparewright::solid {
namespace {

gp_Pnt point(const shape::Point& p) {
  return {p.x, p.y, p.z};
}
gp_Dir dir(const shape::Vector& v) {
  return {v.x, v.y, v.z};
}
gp_Ax2 axes(const shape::Frame& f) {
  return {point(f.origin), dir(f.z), dir(f.x)};
}

// The edges of a contour, its plane spanned by local x and y, or by local x and z for a half section.
TopoDS_Face face(const shape::Contour& contour, const shape::Frame& frame, bool half_section) {
  const auto in_space = [&](const shape::FlatPoint& p) {
    return point(frame.to_world(half_section ? shape::Point{p.u, 0.0, p.v} : shape::Point{p.u, p.v, 0.0}));
  };
  BRepBuilderAPI_MakeWire wire;
  for (std::size_t i = 0; i < contour.size(); ++i) {
    const shape::ContourEdge e = shape::edge(contour, i);
    if (e.is_arc()) {
      // Counterclockwise about the plane's normal where it bulges outwards, else about the normal turned over.
      const shape::Vector normal = half_section ? -frame.y : frame.z;
      const gp_Ax2 about(in_space(e.centre), dir(e.bow > 0.0 ? normal : -normal));
      wire.Add(BRepBuilderAPI_MakeEdge(gp_Circ(about, e.radius_mm), in_space(e.from), in_space(e.to)).Edge());
    } else {
      wire.Add(BRepBuilderAPI_MakeEdge(in_space(e.from), in_space(e.to)).Edge());
    }
  }
  return BRepBuilderAPI_MakeFace(wire.Wire(), true).Face();
}

struct Maker {
  double seam_rad;
  const shape::Primitive& reach;

  TopoDS_Shape operator()(const shape::Box& b) const {
    return BRepPrimAPI_MakeBox(axes(b.frame), b.size.x, b.size.y, b.size.z).Shape();
  }

  // A box from its plane back over everything it can reach, and a margin.
  TopoDS_Shape operator()(const shape::HalfSpace& h) const {
    constexpr double kMargin_mm = 1.0;
    const shape::Bounds there = shape::bounds(reach, h.frame);
    const shape::Vector margin{kMargin_mm, kMargin_mm, kMargin_mm};
    const shape::Point low = there.low - margin;
    const shape::Point high = there.high + margin;
    const shape::Frame corner = h.frame.shifted({low.x, low.y, low.z});
    return (*this)(shape::Box{corner, {high.x - low.x, high.y - low.y, -low.z}});
  }

  TopoDS_Shape operator()(const shape::Prism& p) const {
    BRepBuilderAPI_MakePolygon outline;
    for (const shape::FlatPoint& c : p.section)
      outline.Add(point(p.frame.to_world(shape::Point{c.u, c.v, 0.0})));
    outline.Close();
    const shape::Vector up = p.height_mm * p.frame.z;
    return BRepPrimAPI_MakePrism(BRepBuilderAPI_MakeFace(outline.Wire(), true).Face(),
                                 gp_Vec(up.x, up.y, up.z))
        .Shape();
  }

  TopoDS_Shape operator()(const shape::ProfiledBody& p) const {
    const shape::Vector up = p.height_mm * p.frame.z;
    return BRepPrimAPI_MakePrism(face(p.contour, p.frame, false), gp_Vec(up.x, up.y, up.z)).Shape();
  }

  TopoDS_Shape operator()(const shape::TurnedBody& t) const {
    const shape::Frame frame = t.frame.turned(seam_rad);
    const gp_Ax1 axis(point(frame.origin), dir(frame.z));
    return BRepPrimAPI_MakeRevol(face(t.half_section, frame, true), axis).Shape();
  }

  TopoDS_Shape operator()(const shape::Cylinder& c) const {
    return BRepPrimAPI_MakeCylinder(axes(c.frame.turned(seam_rad)), c.radius_mm, c.height_mm).Shape();
  }

  TopoDS_Shape operator()(const shape::Cone& c) const {
    if (c.start_radius_mm == c.end_radius_mm) {
      return (*this)(shape::Cylinder{c.frame, c.start_radius_mm, c.height_mm});
    }
    return BRepPrimAPI_MakeCone(axes(c.frame.turned(seam_rad)), c.start_radius_mm, c.end_radius_mm,
                                c.height_mm)
        .Shape();
  }

  TopoDS_Shape operator()(const shape::DrilledHole& h) const {
    const shape::Frame frame = h.frame.turned(seam_rad);
    const shape::Profile profile(h);
    BRepBuilderAPI_MakePolygon half;
    for (const shape::FlatPoint& c : profile.corners())
      half.Add(point(frame.to_world(shape::Point{c.u, 0.0, c.v})));
    half.Close();
    const gp_Ax1 axis(point(frame.origin), dir(frame.z));
    return BRepPrimAPI_MakeRevol(BRepBuilderAPI_MakeFace(half.Wire(), true).Face(), axis).Shape();
  }
};

}  // namespace

TopoDS_Shape kernel_body(const shape::Primitive& primitive, double seam_rad, const shape::Primitive& reach) {
  return std::visit(Maker{seam_rad, reach}, primitive);
}

}  // namespace sparewright::solid
