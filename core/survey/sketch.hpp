// What was measured, as pictures along a line: round things and edges where the readings put them, and between which of
// them each reading was taken.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/survey/reading.hpp"

namespace sparewright::survey {

// Of one dimension. Millimetres along the line, from the edge or the first hole.
struct Sketch {
  // What lies between the two ends where nothing is round.
  enum class Between { kNothing, kMetal, kAir, kStep };

  // A hole, a pin, or, without a diameter, a place.
  struct Round {
    std::string name;  // of its diameter; empty for a place
    double middle_mm = 0.0;
    double diameter_mm = 0.0;
  };
  struct Span {
    std::string reading;
    double from_mm = 0.0;  // the lesser
    double to_mm = 0.0;
  };

  std::string dimension;
  Between between = Between::kNothing;
  std::vector<Round> rounds;
  std::vector<double> edges_mm;
  std::vector<Span> spans;  // in the order of the text
};

// A picture for each dimension that a reading along a line is of first: outside, inside, depth, step, thickness, centres,
// and what is read from edges and holes over, between and to pins. None for the rest: arcs, threads, angles, tapers,
// dovetails, expressions; nor where a dimension is not known.
// value_of  a dimension as found, mm; nothing where it is not known or not a length
[[nodiscard]] std::vector<Sketch> sketches_of(
    const Survey& survey, const std::function<std::optional<double>(const std::string&)>& value_of);

}  // namespace sparewright::survey
