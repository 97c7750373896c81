// The subjects of the lists in subjects.hpp, a file for each group. Used inside this room only.
#pragma once

#include <vector>

#include "core/answers/question.hpp"

namespace sparewright::answers {

// --- handbook
[[nodiscard]] std::vector<Subject> thread_subjects();    // thread, tap, identify
[[nodiscard]] std::vector<Subject> size_subjects();      // fit, drill, convert, size
[[nodiscard]] std::vector<Subject> fastener_subjects();  // screw, key, ring, oring, pin
[[nodiscard]] std::vector<Subject> machine_subjects();   // bearing, taper, wires
[[nodiscard]] std::vector<Subject> dividing_subjects();  // index, gears, stack, gear
[[nodiscard]] std::vector<Subject> cutting_subjects();   // speed

// --- quick
[[nodiscard]] std::vector<Subject> quick_place_subjects();      // holes, packing, tailstock, jaw
[[nodiscard]] std::vector<Subject> quick_part_subjects();       // bush, tap, keyseat, pitch, divide
[[nodiscard]] std::vector<Subject> quick_measuring_subjects();  // micrometer, round, sum, taper
[[nodiscard]] std::vector<Subject> quick_fit_subjects();        // play, press, heat, wall
[[nodiscard]] std::vector<Subject> quick_machine_subjects();    // bend, deep-hole, pulley, steps
[[nodiscard]] std::vector<Subject> quick_thread_subjects();     // chase, stub, backlash, gear-pitch

}  // namespace sparewright::answers
