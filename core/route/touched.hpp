// Sizes as an instrument can touch them: nobody can put a caliper on the middle of a hole, but on its edge.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>

#include "core/ledger/pen.hpp"
#include "core/part/part.hpp"
#include "core/route/printing.hpp"
#include "core/route/sheet.hpp"

namespace sparewright::route {

// "pivot bore", "relief, leaves", "back to pivot bore, along y:": what a dimension is the size of, in words.
[[nodiscard]] std::string what_of(const part::Feature& feature, const part::NamedDimension& dimension);

// Its limits, or size and room where it locates; NOT KNOWN where it is not.
[[nodiscard]] std::string room_of(ledger::Pen& pen, const Printing& print, const part::Feature& feature,
                                  const part::NamedDimension& dimension);

// Writes what must be worked out for it as figures of the stage: "<feature>/x near edge" with /least and /most,
// "<feature>/edge to <other>". Refers to what it is made from.
class Touch {
 public:
  // bushed: the holes a bush is in already, with its name: its bore is what can be touched then.
  Touch(ledger::Pen& pen, const part::Part& part, const Printing& print,
        std::map<std::string, std::string> bushed = {})
      : pen_(pen), part_(part), print_(print), bushed_(std::move(bushed)) {}

  // What to measure and what it must show: the place of a hole or a slot from a side to its near edge, of two holes their
  // nearest edges, at the size the hole is aimed at; a hole on a circle from the middle's hole and from its neighbour on
  // the circle; the depth of a keyseat in a bar over the back, for its crest is gone; everything else as it is dimensioned.
  // Nothing where two holes were given before: their distance is measured once, though it is located along two axes; and
  // nothing of a hole or the outside of a bush where the bush is in.
  [[nodiscard]] std::optional<ProofReading> reading(const part::Feature& feature,
                                                    const part::NamedDimension& dimension);

 private:
  [[nodiscard]] const ledger::Figure& figure(std::string_view feature, std::string_view local);
  [[nodiscard]] const ledger::Figure& touched_diameter(const std::string& hole);
  // "counterbore ", "bush "; empty where the hole itself is touched.
  [[nodiscard]] std::string_view hides_hole(const std::string& hole) const;
  [[nodiscard]] bool is_in_a_bush(const part::Feature& feature, const std::string& local) const;
  [[nodiscard]] ProofReading over_the_back(const part::Feature& feature, part::Axis axis);
  [[nodiscard]] double room_apart(const part::Feature& feature, const part::Hole& hole,
                                  const std::string& other);
  [[nodiscard]] std::optional<ProofReading> holes_apart(const part::Feature& feature, const part::Hole& hole,
                                                        const std::string& other);
  [[nodiscard]] std::optional<ProofReading> on_circle(const part::Feature& feature, const part::Hole& hole,
                                                      const part::NamedDimension& dimension);
  [[nodiscard]] std::optional<ProofReading> place(const part::Feature& feature,
                                                  const part::NamedDimension& dimension, part::Axis axis,
                                                  const part::Position& position);

  ledger::Pen& pen_;
  const part::Part& part_;
  const Printing& print_;
  std::map<std::string, std::string> bushed_;
  std::set<std::string> pairs_;
};

}  // namespace sparewright::route
