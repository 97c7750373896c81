#include "drawing/section.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "core/shape/cutters.hpp"
#include "drawing/part_views.hpp"

namespace sparewright::drawing {
namespace {

using part::Axis;
using part::Face;
using shape::FlatPoint;

// --- where ----------------------------------------------------------------------------------------------------------
bool along_z(const part::Hole& hole) {
  return part::axis_of(hole.into) == Axis::kZ && !hole.lean;
}

// How much a section through this hole shows that its own view does not.
int worth_of(const part::Part& part, const part::Feature& feature) {
  const auto* hole = std::get_if<part::Hole>(&feature.shape);
  if (hole == nullptr || !along_z(*hole)) return 0;
  int worth = (hole->counterbore ? 2 : 0) + (hole->countersink ? 2 : 0);
  for (const part::Feature& other : part.features) {
    const auto* formed = std::get_if<part::Formed>(&other.shape);
    const bool grooved = formed != nullptr && formed->of == feature.name &&
                         (formed->form == part::Form::kRecess || formed->form == part::Form::kOilGroove);
    worth += grooved ? 3 : 0;
  }
  return worth;
}

bool lies_on_front_or_back(const part::Feature& feature) {
  if (const auto* hole = std::get_if<part::Hole>(&feature.shape))
    return part::axis_of(hole->into) == Axis::kY;
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  return formed != nullptr && part::axis_of(formed->side) == Axis::kY && !formed->edge && formed->of.empty();
}

// --- the cut metal --------------------------------------------------------------------------------------------------
FlatPoint in_plane(const shape::Point& p) {
  return sight_of(ViewOf::kFront).seen(p);
}

// The edges that lie in the plane, straight piece by straight piece.
class Outline {
 public:
  explicit Outline(double y_mm) : y_(y_mm) {}

  void add(const solid::Edge& edge) {
    std::visit([this](const auto& curve) { this->add_curve(curve); }, edge.curve);
  }
  [[nodiscard]] std::vector<ViewLine> done() && { return std::move(pieces_); }

 private:
  [[nodiscard]] bool lies_in(const shape::Point& p) const {
    constexpr double kIn_mm = 1e-5;
    return std::abs(p.y - y_) < kIn_mm;
  }
  void piece(const shape::Point& a, const shape::Point& b) {
    if (lies_in(a) && lies_in(b)) pieces_.push_back({in_plane(a), in_plane(b), Seen::kVisible});
  }
  void add_curve(const solid::EdgeLine& line) { piece(line.from, line.to); }
  void add_curve(const solid::EdgePath& path) {
    for (std::size_t i = 1; i < path.points.size(); ++i)
      piece(path.points[i - 1], path.points[i]);
  }
  void add_curve(const solid::EdgeArc& arc) {
    if (std::abs(arc.axis.y) < 1.0 - 1e-9) return;
    constexpr int kPieces = 48;
    const shape::Vector side = shape::cross(arc.axis, arc.start);
    const auto at = [&](int i) {
      const double angle = arc.sweep_rad * i / kPieces;
      return arc.centre + arc.radius_mm * (std::cos(angle) * arc.start + std::sin(angle) * side);
    };
    for (int i = 0; i < kPieces; ++i)
      piece(at(i), at(i + 1));
  }

  double y_;
  std::vector<ViewLine> pieces_;
};

// Along lines u - v = c: where the outline crosses one, as the places u + v.
std::vector<double> crossings(const std::vector<ViewLine>& outline, double c) {
  std::vector<double> places;
  for (const ViewLine& piece : outline) {
    const double a = piece.from.u - piece.from.v - c;
    const double b = piece.to.u - piece.to.v - c;
    if ((a <= 0.0) == (b <= 0.0)) continue;
    const double t = a / (a - b);
    places.push_back(piece.from.u + t * (piece.to.u - piece.from.u) + piece.from.v +
                     t * (piece.to.v - piece.from.v));
  }
  std::sort(places.begin(), places.end());
  return places;
}

}  // namespace

std::optional<double> section_wanted(const part::Part& part, const ledger::Snapshot& figures) {
  if (part::is_bar(part.blank.shape)) return std::nullopt;  // shafts are drawn whole
  if (std::any_of(part.features.begin(), part.features.end(), lies_on_front_or_back)) return std::nullopt;
  const part::Feature* best = nullptr;
  int most = 0;
  for (const part::Feature& feature : part.features) {
    const int worth = worth_of(part, feature);
    if (worth <= most) continue;
    most = worth;
    best = &feature;
  }
  if (best == nullptr) return std::nullopt;
  const ledger::Figure* at = figures.find(part::at_path(best->name, Axis::kY));
  if (at == nullptr || !at->known()) return std::nullopt;
  return at->value;
}

std::vector<ViewLine> hatched(const std::vector<ViewLine>& outline, double apart_mm) {
  if (outline.empty()) return {};
  double low = std::numeric_limits<double>::infinity();
  double high = -std::numeric_limits<double>::infinity();
  for (const ViewLine& piece : outline) {
    for (const FlatPoint& p : {piece.from, piece.to}) {
      low = std::min(low, p.u - p.v);
      high = std::max(high, p.u - p.v);
    }
  }
  std::vector<ViewLine> lines;
  const double step = apart_mm * std::numbers::sqrt2;
  // Off the corners by an odd share of a step: sizes of a part are round.
  for (double c = low + 0.437 * step; c < high; c += step) {
    const std::vector<double> places = crossings(outline, c);
    for (std::size_t i = 1; i < places.size(); i += 2)
      lines.push_back({{(places[i - 1] + c) / 2.0, (places[i - 1] - c) / 2.0},
                       {(places[i] + c) / 2.0, (places[i] - c) / 2.0},
                       Seen::kVisible});
  }
  return lines;
}

base::Result<Section> section_at(const shape::Recipe& recipe, double y_mm, double apart_mm,
                                 const EdgesOf& edges_of) {
  // What stands before the plane is taken away like any other cut.
  std::vector<shape::Cutter> cutters;
  for (const shape::Cut& cut : recipe.cuts())
    cutters.push_back({cut.feature, cut.nominal, cut.open});
  cutters.push_back({"section", shape::HalfSpace{shape::Frame::along({0.0, y_mm, 0.0}, {0.0, 1.0, 0.0})}});
  const auto cut = shape::Recipe::make(recipe.blank(), cutters);
  if (!cut) return tl::unexpected(cut.error());
  const auto edges = edges_of(*cut);
  if (!edges) return tl::unexpected(edges.error());
  Outline outline(y_mm);
  for (const solid::Edge& edge : *edges)
    outline.add(edge);
  const std::vector<ViewLine> pieces = std::move(outline).done();
  Section section;
  section.view = view_of(cut->work(), *edges, sight_of(ViewOf::kFront));
  keep_seen(section.view);
  section.hatched = hatched(pieces, apart_mm);
  // By the hatching itself, made fine: the area between its lines.
  constexpr double kFine_mm = 0.05;
  for (const ViewLine& line : hatched(pieces, kFine_mm))
    section.area_mm2 += kFine_mm * std::hypot(line.to.u - line.from.u, line.to.v - line.from.v);
  return section;
}

}  // namespace sparewright::drawing
