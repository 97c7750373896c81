#include "solid/kernel_mesh.hpp"

#include <limits>
#include <numeric>

#include <BRepAdaptor_Surface.hxx>
#include <BRepBuilderAPI_Copy.hxx>
#include <BRepMesh_IncrementalMesh.hxx>
#include <BRep_Tool.hxx>
#include <IMeshTools_Parameters.hxx>
#include <Poly_PolygonOnTriangulation.hxx>
#include <Poly_Triangulation.hxx>
#include <TopExp.hxx>
#include <TopExp_Explorer.hxx>
#include <TopTools_IndexedMapOfShape.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Edge.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Vertex.hxx>
#include <gp_Pnt.hxx>
#include <gp_Vec.hxx>

namespace sparewright::solid {
namespace {

constexpr std::uint32_t kNone = std::numeric_limits<std::uint32_t>::max();

// Sets of things that are one, each named by one of its members.
class Sets {
 public:
  // `count` new things, each a set of its own; returns the first.
  std::size_t add(std::size_t count) {
    const std::size_t first = parent_.size();
    parent_.resize(first + count);
    std::iota(parent_.begin() + static_cast<std::ptrdiff_t>(first), parent_.end(), first);
    return first;
  }
  std::size_t of(std::size_t thing) {
    while (parent_[thing] != thing)
      thing = parent_[thing] = parent_[parent_[thing]];
    return thing;
  }
  void join(std::size_t a, std::size_t b) {
    a = of(a);
    b = of(b);
    parent_[std::max(a, b)] = std::min(a, b);
  }
  [[nodiscard]] std::size_t size() const { return parent_.size(); }

 private:
  std::vector<std::size_t> parent_;
};

struct MeshedFace {
  TopoDS_Face face;
  Handle(Poly_Triangulation) triangulation;  // null: the kernel could not mesh it
  TopLoc_Location location;
  std::size_t first_node = 0;  // its node 1 among the sets
};

gp_Vec normal_or_zero(const BRepAdaptor_Surface& surface, const gp_Pnt2d& at) {
  constexpr double kAlmostParallel = 1e-9;
  constexpr double kAlmostStill = 1e-9;  // mm for a full turn of the parameter: the point of a cone
  gp_Pnt point;
  gp_Vec along_u;
  gp_Vec along_v;
  surface.D1(at.X(), at.Y(), point, along_u, along_v);
  const double u = along_u.Magnitude();
  const double v = along_v.Magnitude();
  const gp_Vec normal = along_u.Crossed(along_v);
  if (u < kAlmostStill || v < kAlmostStill || normal.Magnitude() < kAlmostParallel * u * v) return {0, 0, 0};
  return normal.Normalized();
}

shape::Vector vector(const gp_Vec& v) {
  return {v.X(), v.Y(), v.Z()};
}

// One lump of metal. Points are shared within it, never with another lump.
class LumpMesher {
 public:
  LumpMesher(const TopoDS_Shape& lump, Mesh& mesh) : mesh_(mesh) {
    TopExp::MapShapes(lump, TopAbs_VERTEX, vertices_);
    TopExp::MapShapes(lump, TopAbs_EDGE, edges_);
    sets_.add(static_cast<std::size_t>(vertices_.Extent()));
    first_on_edge_.assign(static_cast<std::size_t>(edges_.Extent()), 0);
    on_edge_.assign(first_on_edge_.size(), 0);
    for (TopExp_Explorer it(lump, TopAbs_FACE); it.More(); it.Next())
      add_face(TopoDS::Face(it.Current()));
  }

  void write() {
    point_of_set_.assign(sets_.size(), kNone);
    for (const MeshedFace& face : faces_)
      write_face(face);
  }

 private:
  void add_face(const TopoDS_Face& face) {
    MeshedFace meshed{face, {}, {}, 0};
    meshed.triangulation = BRep_Tool::Triangulation(face, meshed.location);
    if (!meshed.triangulation.IsNull()) {
      meshed.first_node = sets_.add(static_cast<std::size_t>(meshed.triangulation->NbNodes()));
      for (TopExp_Explorer it(face, TopAbs_EDGE); it.More(); it.Next())
        join_edge(meshed, TopoDS::Edge(it.Current()));
    }
    faces_.push_back(meshed);
  }

  // Nodes along an edge stand in the edge's own direction, whichever way a face runs along it; a seam is met twice,
  // once in each orientation, with other nodes.
  void join_edge(const MeshedFace& face, const TopoDS_Edge& edge) {
    const Handle(Poly_PolygonOnTriangulation) nodes =
        BRep_Tool::PolygonOnTriangulation(edge, face.triangulation, face.location);
    if (nodes.IsNull()) return;
    const auto count = static_cast<std::size_t>(nodes->NbNodes());
    const auto place = static_cast<std::size_t>(edges_.FindIndex(edge)) - 1;
    if (on_edge_[place] == 0) add_edge(edge, place, count);
    const bool to_a_point = BRep_Tool::Degenerated(edge);
    for (std::size_t i = 0; i < count && (to_a_point || i < on_edge_[place]); ++i) {
      const std::size_t node =
          face.first_node + static_cast<std::size_t>(nodes->Node(static_cast<int>(i) + 1)) - 1;
      sets_.join(node, first_on_edge_[place] + (to_a_point ? 0 : i));
    }
  }

  void add_edge(const TopoDS_Edge& edge, std::size_t place, std::size_t count) {
    first_on_edge_[place] = sets_.add(count);
    on_edge_[place] = count;
    TopoDS_Vertex start;
    TopoDS_Vertex end;
    TopExp::Vertices(TopoDS::Edge(edge.Oriented(TopAbs_FORWARD)), start, end);
    if (!start.IsNull()) sets_.join(first_on_edge_[place], vertex(start));
    if (!end.IsNull()) sets_.join(first_on_edge_[place] + count - 1, vertex(end));
  }

  [[nodiscard]] std::size_t vertex(const TopoDS_Vertex& v) const {
    return static_cast<std::size_t>(vertices_.FindIndex(v)) - 1;
  }

  void write_face(const MeshedFace& face) {
    MeshFace written{mesh_.triangles.size(), 0};
    if (!face.triangulation.IsNull()) {
      corner_of_node_.assign(static_cast<std::size_t>(face.triangulation->NbNodes()), kNone);
      const std::size_t first_corner = mesh_.corners.size();
      write_triangles(face);
      written.count = mesh_.triangles.size() - written.first;
      fill_normals(first_corner, written);
    }
    mesh_.faces.push_back(written);
  }

  void write_triangles(const MeshedFace& face) {
    const BRepAdaptor_Surface surface(face.face, false);
    const bool turned = face.face.Orientation() == TopAbs_REVERSED;
    for (int i = 1; i <= face.triangulation->NbTriangles(); ++i) {
      std::array<int, 3> nodes{};
      face.triangulation->Triangle(i).Get(nodes[0], nodes[1], nodes[2]);
      if (turned) std::swap(nodes[1], nodes[2]);
      std::array<std::uint32_t, 3> triangle{};
      for (std::size_t k = 0; k < 3; ++k)
        triangle[k] = corner(face, surface, nodes[k], turned);
      const auto at = [&](std::size_t k) { return mesh_.corners[triangle[k]].point; };
      if (at(0) == at(1) || at(1) == at(2) || at(2) == at(0)) continue;  // along the point of a cone
      mesh_.triangles.push_back(triangle);
    }
  }

  std::uint32_t corner(const MeshedFace& face, const BRepAdaptor_Surface& surface, int node, bool turned) {
    std::uint32_t& known = corner_of_node_[static_cast<std::size_t>(node) - 1];
    if (known != kNone) return known;
    known = static_cast<std::uint32_t>(mesh_.corners.size());
    const gp_Vec normal = normal_or_zero(surface, face.triangulation->UVNode(node));
    mesh_.corners.push_back({point(face, node), vector(turned ? -normal : normal)});
    return known;
  }

  std::uint32_t point(const MeshedFace& face, int node) {
    std::uint32_t& known = point_of_set_[sets_.of(face.first_node + static_cast<std::size_t>(node) - 1)];
    if (known != kNone) return known;
    known = static_cast<std::uint32_t>(mesh_.points.size());
    const gp_Pnt at = face.triangulation->Node(node).Transformed(face.location.Transformation());
    mesh_.points.push_back({at.X(), at.Y(), at.Z()});
    return known;
  }

  // Where the surface has no normal, at the point of a cone, the corner takes that of its triangles.
  void fill_normals(std::size_t first_corner, const MeshFace& face) {
    std::vector<bool> empty;
    for (std::size_t i = first_corner; i < mesh_.corners.size(); ++i)
      empty.push_back(mesh_.corners[i].normal == shape::Vector{});
    for (std::size_t i = face.first; i < face.first + face.count; ++i) {
      const auto& t = mesh_.triangles[i];
      const shape::Vector across =
          cross(mesh_.point_of(t[1]) - mesh_.point_of(t[0]), mesh_.point_of(t[2]) - mesh_.point_of(t[0]));
      for (const std::uint32_t c : t) {
        shape::Vector& normal = mesh_.corners[c].normal;
        if (empty[c - first_corner]) normal = normal + across;
      }
    }
    for (std::size_t i = first_corner; i < mesh_.corners.size(); ++i) {
      shape::Vector& normal = mesh_.corners[i].normal;
      if (empty[i - first_corner] && normal != shape::Vector{}) normal = shape::direction(normal);
    }
  }

  Mesh& mesh_;
  TopTools_IndexedMapOfShape vertices_;
  TopTools_IndexedMapOfShape edges_;
  Sets sets_;  // first the vertices, then as met: nodes of faces, points on edges
  std::vector<std::size_t> first_on_edge_;
  std::vector<std::size_t> on_edge_;
  std::vector<MeshedFace> faces_;
  std::vector<std::uint32_t> point_of_set_;
  std::vector<std::uint32_t> corner_of_node_;  // of the face being written
};

}  // namespace

Mesh kernel_mesh(const TopoDS_Shape& shape, const Fineness& fineness) {
  const TopoDS_Shape copy = BRepBuilderAPI_Copy(shape, true, false).Shape();
  IMeshTools_Parameters parameters;
  parameters.Deflection = fineness.chord_mm;
  parameters.Angle = fineness.angle_rad;
  parameters.InParallel = false;
  const BRepMesh_IncrementalMesh meshed(copy, parameters);
  Mesh mesh;
  TopTools_IndexedMapOfShape lumps;
  TopExp::MapShapes(copy, TopAbs_SOLID, lumps);
  for (int i = 1; i <= lumps.Extent(); ++i)
    LumpMesher(lumps(i), mesh).write();
  return mesh;
}

}  // namespace sparewright::solid
