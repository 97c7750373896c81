#include "core/handbook/screw_grades.hpp"

#include <algorithm>
#include <array>
#include <string>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Pressure;
namespace unit = quantity::unit;

constexpr ScrewGrade kScrewGrades[] = {
#include "generated/core/handbook/screw_grades.inc"
};

// Up to this the two stress areas of FED-STD-H28/2 are one.
constexpr Pressure kOrdinaryUpTo = Pressure::of(100000, unit::psi);

// "sae grade 5" and "class 8.8" to "5" and "8.8".
std::string bare(std::string_view grade) {
  std::string name = folded(grade);
  for (const std::string_view word :
       {"sae ", "astm ", "iso ", "grade ", "class ", "gr ", "property class "}) {
    if (name.starts_with(word)) name.erase(0, word.size());
  }
  return name;
}

std::string sizes(const ScrewGrade& row) {
  return row.is_metric()
             ? fmt::format("over {:g} up to {:g} mm", row.over.in(unit::millimetre),
                           row.up_to.in(unit::millimetre))
             : fmt::format("over {:g} up to {:g} in", row.over.in(unit::inch), row.up_to.in(unit::inch));
}

}  // namespace

std::span<const ScrewGrade> screw_grades() {
  return kScrewGrades;
}

base::Result<ScrewGrade> screw_grade(std::string_view grade, const ScrewThread& thread) {
  const std::string wanted = bare(grade);
  std::string accepted;
  std::string subject;
  for (const ScrewGrade& row : kScrewGrades) {
    if (bare(row.grade) != wanted) continue;
    if (row.is_metric() == thread.is_metric() && in_range(thread.major, {row.over}, {row.up_to})) return row;
    subject = fmt::format("{} of {}", row.grade, row.standard);
    accepted += fmt::format("{}{} threads {}", accepted.empty() ? "" : ", ",
                            row.is_metric() ? "metric" : "inch", sizes(row));
  }
  if (!accepted.empty()) return not_tabled(subject, thread.name, accepted);
  return unknown(grade, "grade of screw",
                 names_of(kScrewGrades, [](const ScrewGrade& row) { return row.grade; }));
}

ScrewLoads screw_loads(const ScrewThread& thread, const ScrewGrade& grade) {
  ScrewLoads loads{thread.stress_area * grade.proof, thread.stress_area * grade.yield,
                   thread.stress_area * grade.tensile, std::nullopt};
  if (thread.strong_stress_area && grade.tensile > kOrdinaryUpTo)
    loads.tensile_h28 = *thread.strong_stress_area * grade.tensile;
  return loads;
}

}  // namespace sparewright::handbook
