#include "core/part/dimension_tree.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <string_view>

#include <fmt/format.h>

namespace sparewright::part {
namespace {

struct Place {
  Axis axis;
  const Position& position;
};

// Where the feature itself lies: what others can be measured from.
std::vector<Place> places_of(const Feature& feature) {
  std::vector<Place> places;
  const auto add = [&](const std::map<Axis, Position>& at) {
    for (const auto& [axis, position] : at)
      places.push_back({axis, position});
  };
  if (const auto* hole = std::get_if<Hole>(&feature.shape)) add(hole->at);
  if (const auto* formed = std::get_if<Formed>(&feature.shape)) add(formed->at);
  if (const auto* flat = std::get_if<Flat>(&feature.shape); flat != nullptr && flat->region)
    places.push_back({flat->region->along, flat->region->start});
  return places;
}

// These, and the corners of a profile.
std::vector<Place> positions_of(const Feature& feature) {
  std::vector<Place> all = places_of(feature);
  const auto* formed = std::get_if<Formed>(&feature.shape);
  if (formed == nullptr) return all;
  const auto axes = axes_in(formed->side);
  for (const ProfileCorner& corner : formed->corners) {
    all.push_back({axes[0], corner.first});
    all.push_back({axes[1], corner.second});
  }
  return all;
}

const std::string* feature_named(const Position& position) {
  return std::get_if<std::string>(&position.from);
}

// The first feature of a name counts, as in find_feature().
std::map<std::string_view, std::size_t> indices_of(std::span<const Feature> features) {
  std::map<std::string_view, std::size_t> all;
  for (std::size_t i = 0; i < features.size(); ++i)
    all.emplace(features[i].name, i);
  return all;
}

// --- circles -----------------------------------------------------------------------------------------------------

// One feature whose figures another one asks for.
struct Need {
  std::size_t other = 0;
  std::optional<Axis> axis;  // of the place that is measured from it; none where a hole starts on a flat
};

// What the stages of the features ask of each other.
class Needs {
 public:
  explicit Needs(std::span<const Feature> features) : features_(features), index_(indices_of(features)) {
    for (std::size_t i = 0; i < features.size(); ++i) {
      const auto* flat = std::get_if<Flat>(&features[i].shape);
      if (flat != nullptr && flat->region) part_flats_.push_back(i);
    }
  }

  [[nodiscard]] std::vector<Need> of(std::size_t feature) const {
    std::vector<Need> needs;
    for (const Place& place : positions_of(features_[feature])) {
      const std::string* name = feature_named(place.position);
      const auto other = name == nullptr ? index_.end() : index_.find(*name);
      if (other != index_.end()) needs.push_back({other->second, place.axis});
    }
    const auto* hole = std::get_if<Hole>(&features_[feature].shape);
    if (hole == nullptr) return needs;
    for (const std::size_t i : part_flats_) {  // it may start on one
      const auto& flat = std::get<Flat>(features_[i].shape);
      if (flat.side == hole->into && hole->at.contains(flat.region->along))
        needs.push_back({i, std::nullopt});
    }
    return needs;
  }

 private:
  std::span<const Feature> features_;
  std::map<std::string_view, std::size_t> index_;
  std::vector<std::size_t> part_flats_;
};

// A step of the walk along needs: the feature, and which of its needs is followed.
struct Step {
  std::size_t feature = 0;
  std::vector<Need> needs;
  std::size_t next = 0;
};

Axis axis_of_first(const std::vector<Need>& needs) {
  for (const Need& need : needs) {
    if (need.axis) return *need.axis;
  }
  return Axis::kX;
}

// The circle that the end of the trail closes, told from a place that is measured from a feature.
TreeFault circle_fault(std::span<const Feature> features, std::span<const Step> circle) {
  const auto followed = [](const Step& step) -> const Need& { return step.needs[step.next - 1]; };
  std::size_t start = 0;
  while (start + 1 < circle.size() && !followed(circle[start]).axis)
    ++start;
  TreeFault fault;
  fault.what = TreeFault::What::kCircle;
  fault.feature = circle[start].feature;
  fault.axis = followed(circle[start]).axis.value_or(Axis::kX);
  for (std::size_t i = 0; i <= circle.size(); ++i)
    fault.found += (i == 0 ? "" : " -> ") + features[circle[(start + i) % circle.size()].feature].name;
  return fault;
}

// Follows every need once, depth first; without recursion, so that a chain may be as long as it likes.
void find_circles(std::span<const Feature> features, std::vector<TreeFault>& faults) {
  enum class Seen { kNot, kOnTrail, kDone };
  const Needs needs(features);
  std::vector<Seen> seen(features.size(), Seen::kNot);
  std::vector<int> links(features.size(), 0);
  std::vector<Step> trail;
  const auto leave = [&](const Step& step) {
    seen[step.feature] = Seen::kDone;
    for (const Need& need : step.needs)
      links[step.feature] = std::max(links[step.feature], 1 + links[need.other]);
    if (links[step.feature] == kLongestChain + 1)
      faults.push_back({TreeFault::What::kTooLong,
                        step.feature,
                        axis_of_first(step.needs),
                        fmt::format("{} features, each measured from the next", links[step.feature]),
                        {}});
  };
  const auto enter = [&](std::size_t feature) {
    seen[feature] = Seen::kOnTrail;
    trail.push_back({feature, needs.of(feature), 0});
  };
  for (std::size_t first = 0; first < features.size(); ++first) {
    if (seen[first] == Seen::kNot) enter(first);
    while (!trail.empty()) {
      Step& step = trail.back();
      if (step.next == step.needs.size()) {
        leave(step);
        trail.pop_back();
        continue;
      }
      const std::size_t other = step.needs[step.next++].other;
      if (seen[other] == Seen::kNot) {
        enter(other);
      } else if (seen[other] == Seen::kOnTrail) {
        const auto from =
            std::find_if(trail.begin(), trail.end(), [&](const Step& s) { return s.feature == other; });
        faults.push_back(circle_fault(features, {from, trail.end()}));
      }
    }
  }
}

// --- rows --------------------------------------------------------------------------------------------------------

bool is_measured_from_its_side(const Formed& formed, std::string_view size) {
  const bool turned_length = size == "length" && row_of(formed.form).round_work;
  return size == "depth" || size == "from end" || turned_length;
}

std::string_view end_of(std::string_view size) {
  if (size.ends_with("depth")) return "its bottom";
  return size == "from end" ? "its near side" : "its far end";
}

class Rows {
 public:
  explicit Rows(const Part& part) : part_(part), index_(indices_of(part.features)) {}

  std::vector<TreeDimension> all() && {
    add_blank();
    for (const Feature& feature : part_.features)
      add(feature);
    return std::move(rows_);
  }

 private:
  void add_blank() {
    const auto row = [&](Axis axis, bool between_sides) {
      const std::string figure = blank_path(part_.blank, axis);
      const std::string name = figure.substr(std::string_view("blank/").size());
      if (between_sides) {
        rows_.push_back({"blank", name, figure, std::string(name_of(face_at(axis, false))),
                         std::string(name_of(face_at(axis, true)))});
      } else {
        rows_.push_back({"blank", name, figure, "", ""});
      }
    };
    const bool one_across = is_bar(part_.blank.shape);
    row(Axis::kX, true);
    if (!one_across) row(Axis::kY, true);
    row(Axis::kZ, !one_across);
    if (part_.blank.bore) rows_.push_back({"blank", "bore", "blank/bore", "", ""});
  }

  void add(const Feature& feature) {
    const std::vector<Place> positions = positions_of(feature);
    for (const NamedDimension& d : dimensions_of(feature)) {
      TreeDimension row{feature.name, d.local, feature_path(feature.name) + "/" + d.local,
                        "",           "",      d.dimension};
      const auto place = std::find_if(positions.begin(), positions.end(),
                                      [&](const Place& p) { return &p.position.distance == d.dimension; });
      if (place != positions.end()) {
        add_place(row, feature, *place);
      } else {
        add_size(row, feature, d);
      }
      rows_.push_back(std::move(row));
    }
  }

  void add_place(TreeDimension& row, const Feature& feature, const Place& place) const {
    const auto* formed = std::get_if<Formed>(&feature.shape);
    row.from = from_words(place.position);
    row.to = std::holds_alternative<Flat>(feature.shape)     ? "its wall"
             : formed != nullptr && !formed->corners.empty() ? "its corner"
                                                             : "its middle";
    row.links = links_of(place.position, place.axis);
  }

  // What is no place: most sizes are measured across and from nothing.
  void add_size(TreeDimension& row, const Feature& feature, const NamedDimension& d) const {
    if (const auto* flat = std::get_if<Flat>(&feature.shape)) {
      const auto before = static_cast<std::size_t>(&feature - part_.features.data());
      row.from = side_words(opposite(flat->side), before);
      row.to = "its floor";
    } else if (const auto* hole = std::get_if<Hole>(&feature.shape)) {
      const bool by_angle =
          hole->by_angle && (d.dimension == &hole->by_angle->radius || d.dimension == &hole->by_angle->angle);
      if (d.local.ends_with("depth")) {
        row.from = side_words(hole->into);
        row.to = end_of(d.local);
      } else if (!d.from.empty()) {  // an angle, or a way from another hole
        row.from = d.from;
        row.to = by_angle ? "its middle" : "its middle line";
        row.links = by_angle ? 1 : 0;
      }
    } else {
      const auto& formed = std::get<Formed>(feature.shape);
      if (!is_measured_from_its_side(formed, d.local)) return;
      row.from = side_words(formed.side);
      row.to = end_of(d.local);
    }
  }

  [[nodiscard]] std::string side_words(Face face) const { return side_words(face, part_.features.size()); }

  [[nodiscard]] std::string side_words(Face face, std::size_t before) const {
    for (std::size_t i = before; i-- > 0;) {
      const auto* flat = std::get_if<Flat>(&part_.features[i].shape);
      if (flat != nullptr && flat->side == face && !flat->region)
        return fmt::format("{}, as {} leaves it", name_of(face), part_.features[i].name);
    }
    return std::string(name_of(face));
  }

  [[nodiscard]] std::string from_words(const Position& position) const {
    const std::string* feature = feature_named(position);
    return feature != nullptr ? *feature : side_words(std::get<Face>(position.from));
  }

  [[nodiscard]] int links_of(const Position& position, Axis axis) const {
    int links = 0;
    const Position* at = &position;
    while (at != nullptr && feature_named(*at) != nullptr) {
      ++links;
      const auto other = index_.find(*feature_named(*at));
      at = other == index_.end() ? nullptr : place_along(part_.features[other->second], axis);
    }
    return links;
  }

  // A flat's own surface has none: it is measured from a side.
  static const Position* place_along(const Feature& feature, Axis axis) {
    for (const Place& place : places_of(feature)) {
      if (place.axis == axis) return &place.position;
    }
    return nullptr;
  }

  const Part& part_;
  std::map<std::string_view, std::size_t> index_;
  std::vector<TreeDimension> rows_;
};

}  // namespace

bool has_place(const Feature& feature, Axis axis) {
  const auto* flat = std::get_if<Flat>(&feature.shape);
  if (flat != nullptr && axis_of(flat->side) == axis) return true;
  const auto* formed = std::get_if<Formed>(&feature.shape);
  if (formed != nullptr && formed->form == Form::kChuckingPiece && axis_of(formed->side) == axis) return true;
  const auto* hole = std::get_if<Hole>(&feature.shape);
  if (hole != nullptr && is_on_axis(*hole) && axis != Axis::kX) return true;
  const std::vector<Place> places = places_of(feature);
  return std::any_of(places.begin(), places.end(), [&](const Place& place) { return place.axis == axis; });
}

std::vector<TreeFault> tree_faults(std::span<const Feature> features) {
  std::vector<TreeFault> faults;
  const auto index = indices_of(features);
  for (std::size_t i = 0; i < features.size(); ++i) {
    for (const Place& place : positions_of(features[i])) {
      const std::string* name = feature_named(place.position);
      const auto other = name == nullptr ? index.end() : index.find(*name);
      if (other == index.end() || has_place(features[other->second], place.axis)) continue;
      TreeFault fault{TreeFault::What::kNoPlace, i, place.axis, *name, {}};
      for (std::size_t j = 0; j < features.size(); ++j) {
        if (j != i && has_place(features[j], place.axis)) fault.accepted.push_back(features[j].name);
      }
      faults.push_back(std::move(fault));
    }
  }
  find_circles(features, faults);
  return faults;
}

std::vector<TreeDimension> dimension_tree(const Part& part) {
  return Rows(part).all();
}

}  // namespace sparewright::part
