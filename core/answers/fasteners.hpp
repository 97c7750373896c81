// The questions of screws, keys, rings and pins. Used inside this room only.
#pragma once

#include "core/answers/question.hpp"
#include "core/handbook/parallel_keys.hpp"
#include "core/handbook/woodruff_keys.hpp"

namespace sparewright::answers {

// Words: a screw and its head ("5/16-18 socket head"); entry grade. Its sizes, the holes it wants, its strength and
// the torque with its spread.
[[nodiscard]] base::Result<Answer> screw(const Question& question);

// Words: a shaft ("30 mm", "1-1/4 in"); entry woodruff, the number of a key. Its keyseats, parallel and Woodruff.
[[nodiscard]] base::Result<Answer> key(const Question& question);

// All of one keyseat: depths, over the back, the hub, widths.
[[nodiscard]] Table keyseat_table(const handbook::ParallelKeyseat& seat, quantity::UnitSystem system);
[[nodiscard]] Table keyseat_table(const handbook::WoodruffKeyseat& seat, quantity::UnitSystem system);

// Words: a shaft or bore ("25 mm shaft", "1 in bore"); with neither word both are given.
[[nodiscard]] base::Result<Answer> ring(const Question& question);

// Words: a dash number (214) or a section (0.139 in). The gland for each duty.
[[nodiscard]] base::Result<Answer> o_ring(const Question& question);

// Words: a pin and its size ("taper pin 4", "dowel 1/4 in", "spring pin 6 mm"); entry length of a taper pin.
[[nodiscard]] base::Result<Answer> pin(const Question& question);

}  // namespace sparewright::answers
