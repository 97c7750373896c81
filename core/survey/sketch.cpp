#include "core/survey/sketch.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/survey/ways.hpp"

namespace sparewright::survey {
namespace {

// What the faces of a reading touched: the near or the far side of a round thing, its middle, or an edge. "Near" is the
// side towards the other end of the reading.
enum class Touches { kEdge, kMiddle, kNear, kFar };

// Along the line: what is touched at its start and at its end.
struct Ends {
  Way way = Way::kOutside;
  Touches first = Touches::kEdge;
  Touches last = Touches::kEdge;
};

// As the equations of ways.hpp say.
constexpr std::array kBetweenPlaces{
    Ends{Way::kEdgeToHoleNear, Touches::kEdge, Touches::kNear},
    Ends{Way::kEdgeToHoleFar, Touches::kEdge, Touches::kFar},
    Ends{Way::kFaceToPinNear, Touches::kEdge, Touches::kNear},
    Ends{Way::kFaceOverPin, Touches::kEdge, Touches::kFar},
    Ends{Way::kBetweenHoles, Touches::kNear, Touches::kNear},
    Ends{Way::kOverHoles, Touches::kFar, Touches::kFar},
    Ends{Way::kSameSides, Touches::kFar, Touches::kNear},
    Ends{Way::kBetweenPins, Touches::kNear, Touches::kNear},
    Ends{Way::kOverPins, Touches::kFar, Touches::kFar},
    Ends{Way::kCentres, Touches::kMiddle, Touches::kMiddle},
};

constexpr std::array kAcross{
    std::pair{Way::kOutside, Sketch::Between::kMetal}, std::pair{Way::kThickness, Sketch::Between::kMetal},
    std::pair{Way::kInside, Sketch::Between::kAir},    std::pair{Way::kDepth, Sketch::Between::kStep},
    std::pair{Way::kStep, Sketch::Between::kStep},
};

class Maker {
 public:
  Maker(const Survey& survey, const std::function<std::optional<double>(const std::string&)>& value_of)
      : survey_(survey), value_of_(value_of) {}

  std::vector<Sketch> make() {
    for (const Reading& reading : survey_.readings)
      add(reading);
    return std::move(sketches_);
  }

 private:
  void add(const Reading& reading) {
    if (reading.of.empty()) return;
    const auto ends = std::find_if(kBetweenPlaces.begin(), kBetweenPlaces.end(),
                                   [&](const Ends& one) { return one.way == reading.way; });
    if (ends != kBetweenPlaces.end()) return add_between(reading, *ends);
    const auto across = std::find_if(kAcross.begin(), kAcross.end(),
                                     [&](const auto& one) { return one.first == reading.way; });
    if (across != kAcross.end()) add_across(reading, across->second);
  }

  Sketch& sketch_of(const std::string& dimension) {
    const auto found = std::find_if(sketches_.begin(), sketches_.end(),
                                    [&](const Sketch& one) { return one.dimension == dimension; });
    if (found != sketches_.end()) return *found;
    sketches_.emplace_back();
    sketches_.back().dimension = dimension;
    return sketches_.back();
  }

  [[nodiscard]] quantity::Kind kind_of(const std::string& dimension) const {
    const auto found = std::find_if(survey_.dimensions.begin(), survey_.dimensions.end(),
                                    [&](const Dimension& one) { return one.name == dimension; });
    return found == survey_.dimensions.end() ? quantity::Kind::kLength : found->kind;
  }

  [[nodiscard]] std::optional<double> diameter_of(const std::string& dimension) const {
    const auto value = value_of_(dimension);
    if (value && kind_of(dimension) == quantity::Kind::kRadius) return 2.0 * *value;
    return value;
  }

  // A hole or a pin stands at a place once, however many readings touch it.
  static void put_round(Sketch& sketch, const Sketch::Round& round) {
    for (Sketch::Round& other : sketch.rounds) {
      if (other.middle_mm != round.middle_mm) continue;
      if (other.name.empty()) other = round;
      if (other.name == round.name || round.name.empty()) return;
    }
    sketch.rounds.push_back(round);
  }

  // side: where the reading's other end lies, +1 farther along the line, -1 before.
  static double touched(Touches what, double middle, double diameter, double side) {
    switch (what) {
      case Touches::kNear:
        return middle + side * diameter / 2.0;
      case Touches::kFar:
        return middle - side * diameter / 2.0;
      case Touches::kEdge:
      case Touches::kMiddle:
        break;
    }
    return middle;
  }

  void add_between(const Reading& reading, const Ends& ends) {
    const auto place = value_of_(reading.of.front());
    if (!place) return;
    const bool from_edge = ends.first == Touches::kEdge;
    std::vector<Sketch::Round> rounds;
    const std::array middles{0.0, *place};
    std::size_t name = 1;
    for (std::size_t end = from_edge ? 1 : 0; end < middles.size(); ++end) {
      Sketch::Round round{"", middles.at(end), 0.0};
      if (name < reading.of.size()) {
        const auto diameter = diameter_of(reading.of[name]);
        if (!diameter) return;
        round.name = reading.of[name++];
        round.diameter_mm = *diameter;
      }
      rounds.push_back(std::move(round));
    }
    Sketch& sketch = sketch_of(reading.of.front());
    for (const Sketch::Round& round : rounds)
      put_round(sketch, round);
    if (from_edge && sketch.edges_mm.empty()) sketch.edges_mm.push_back(0.0);
    const double first = from_edge ? 0.0 : touched(ends.first, 0.0, rounds.front().diameter_mm, 1.0);
    const double last = touched(ends.last, *place, rounds.back().diameter_mm, -1.0);
    sketch.spans.push_back({reading.name, std::min(first, last), std::max(first, last)});
  }

  void add_across(const Reading& reading, Sketch::Between between) {
    const auto size = diameter_of(reading.of.front());
    if (!size || *size <= 0.0) return;
    const quantity::Kind kind = kind_of(reading.of.front());
    const bool is_round = kind == quantity::Kind::kDiameter || kind == quantity::Kind::kRadius;
    Sketch& sketch = sketch_of(reading.of.front());
    if (is_round) {
      put_round(sketch, {reading.of.front(), *size / 2.0, *size});
    } else if (sketch.edges_mm.empty()) {
      sketch.edges_mm = {0.0, *size};
      sketch.between = between;
    }
    sketch.spans.push_back({reading.name, 0.0, *size});
  }

  const Survey& survey_;
  const std::function<std::optional<double>(const std::string&)>& value_of_;
  std::vector<Sketch> sketches_;
};

}  // namespace

std::vector<Sketch> sketches_of(const Survey& survey,
                                const std::function<std::optional<double>(const std::string&)>& value_of) {
  return Maker(survey, value_of).make();
}

}  // namespace sparewright::survey
