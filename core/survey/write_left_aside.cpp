#include "core/survey/write_left_aside.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include <fmt/format.h>

#include "core/quantity/display.hpp"

namespace sparewright::survey {
namespace {

using ledger::Figure;
using ledger::Pen;
using ledger::Term;

std::string names_of(const LeftAside& left, const Asked& asked) {
  std::string names;
  for (const std::size_t reading : left.readings)
    names += (names.empty() ? "" : " and ") + asked.equations[reading].reading;
  return names;
}

// Whether the dimension follows one of the readings left aside.
bool hangs_on(std::size_t dimension, const LeftAside& left, const MeasuredUp& measured) {
  if (!measured.adjustment.unknowns[dimension].fixed) return false;
  for (std::size_t i = 0; i < measured.used.size(); ++i) {
    const bool is_left =
        std::find(left.readings.begin(), left.readings.end(), measured.used[i]) != left.readings.end();
    if (is_left && measured.adjustment.slopes.at(dimension, i) != 0.0) return true;
  }
  return false;
}

const Figure& write_without(std::size_t dimension, const LeftAside& left, const Asked& asked,
                            const std::string& names, Pen& pen) {
  const Found& found = left.rest.adjustment.unknowns[dimension];
  const Dimension& unknown = asked.network.unknowns[dimension];
  std::vector<Term> terms;
  for (std::size_t i = 0; i < left.rest.used.size(); ++i) {
    const double slope = left.rest.adjustment.slopes.at(dimension, i);
    if (found.fixed && slope != 0.0) terms.push_back({asked.figures[left.rest.used[i]], slope});
  }
  const std::string words = found.fixed ? fmt::format("as it comes out without {}", names)
                                        : fmt::format("nothing but {} fixes it", names);
  return pen.linear(fmt::format("without/{}/{}", names, unknown.name), unknown.kind, words,
                    found.fixed ? found.value : std::numeric_limits<double>::quiet_NaN(), terms,
                    "W. Baarda, A Testing Procedure for Use in Geodetic Networks, 1968 (from memory)");
}

}  // namespace

void write_left_aside(const std::vector<LeftAside>& all, const Asked& asked, const MeasuredUp& measured,
                      const std::vector<const Figure*>& dimensions, Pen& pen) {
  for (const LeftAside& left : all) {
    const std::string names = names_of(left, asked);
    for (std::size_t j = 0; j < dimensions.size(); ++j) {
      if (!hangs_on(j, left, measured)) continue;
      const Figure& without = write_without(j, left, asked, names, pen);
      const std::array terms{Term{dimensions[j], 1.0}, Term{&without, -1.0}};
      pen.linear(fmt::format("hangs on/{}/{}", names, asked.network.unknowns[j].name), dimensions[j]->kind,
                 fmt::format("by how much it hangs on {}", names), dimensions[j]->value - without.value,
                 terms);
    }
  }
}

std::string moves_most(const std::vector<LeftAside>& all, const MeasuredUp& measured,
                       const std::vector<Dimension>& unknowns, quantity::UnitSystem system) {
  if (all.size() != 1) return "";
  const Adjustment& rest = all.front().rest.adjustment;
  double most = 0.0;
  std::string says;
  for (std::size_t j = 0; j < unknowns.size(); ++j) {
    const Found& with = measured.adjustment.unknowns[j];
    const Found& without = rest.unknowns[j];
    if (!with.fixed || !without.fixed || !(with.u > 0.0)) continue;
    const double moves = without.value - with.value;
    if (std::abs(moves) / with.u <= most || !hangs_on(j, all.front(), measured)) continue;
    most = std::abs(moves) / with.u;
    const quantity::Kind kind = unknowns[j].kind;
    const int places = quantity::usual_places(kind, system);
    says = fmt::format("Without {} {} is {}, {} {}.", all.front().readings.size() == 1 ? "it" : "them",
                       unknowns[j].name, quantity::shown(without.value, kind, system, places),
                       quantity::shown(std::abs(moves), kind, system, places), moves < 0.0 ? "less" : "more");
  }
  return says;
}

}  // namespace sparewright::survey
