// Strength of screws by grade and property class: SAE J429, ASTM A574, ISO 898-1, ISO 3506-1.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/screw_thread.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// Least strengths of a grade over a range of nominal sizes.
struct ScrewGrade {
  std::string_view grade;     // "grade 5", "class 8.8", "A574", "A2-70"
  std::string_view standard;  // "SAE J429"
  quantity::Diameter over;
  quantity::Diameter up_to;
  quantity::Pressure proof;
  quantity::Pressure yield;
  quantity::Pressure tensile;
  Source source;

  [[nodiscard]] bool is_metric() const { return standard.starts_with("ISO"); }
};

[[nodiscard]] std::span<const ScrewGrade> screw_grades();

// The row for a thread: "grade 5", "SAE grade 5", "8.8", "class 8.8", "A574", in capitals or small letters.
// Fails with kNameUnknown, or kNotTabled where the grade is of the other system (grade 5 of a metric screw)
// or not for that size.
[[nodiscard]] base::Result<ScrewGrade> screw_grade(std::string_view grade, const ScrewThread& thread);

// What one screw carries along its axis: strength by stress area. No allowance for bending or shock.
struct ScrewLoads {
  quantity::Force proof;  // no lasting stretch
  quantity::Force yield;
  quantity::Force tensile;  // the least that breaks it, by the stress area of the grade's load tables
  std::optional<quantity::Force> tensile_h28;  // inch, over 100 ksi: the same by FED-STD-H28/2, which is less
};
[[nodiscard]] ScrewLoads screw_loads(const ScrewThread& thread, const ScrewGrade& grade);

}  // namespace sparewright::handbook
