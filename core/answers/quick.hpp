// The questions of `quick`, and what they share. Used inside this room only.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/answers/question.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::answers {

// --- where things are
[[nodiscard]] base::Result<Answer> holes(const Question& question);
[[nodiscard]] base::Result<Answer> found_bolt_circle(const Question& question);
[[nodiscard]] base::Result<Answer> found_hole_row(const Question& question);
[[nodiscard]] base::Result<Answer> centre_line(const Question& question);
[[nodiscard]] base::Result<Answer> packing(const Question& question);
[[nodiscard]] base::Result<Answer> tailstock(const Question& question);
[[nodiscard]] base::Result<Answer> jaw(const Question& question);
[[nodiscard]] base::Result<Answer> hole_centre(const Question& question);
[[nodiscard]] base::Result<Answer> chord(const Question& question);

// --- parts to make
[[nodiscard]] base::Result<Answer> bush(const Question& question);
[[nodiscard]] base::Result<Answer> keyseat(const Question& question);
[[nodiscard]] base::Result<Answer> sink(const Question& question);

// --- measuring
[[nodiscard]] base::Result<Answer> density(const Question& question);
[[nodiscard]] base::Result<Answer> micrometer(const Question& question);
[[nodiscard]] base::Result<Answer> reading(const Question& question);
[[nodiscard]] base::Result<Answer> warm(const Question& question);
[[nodiscard]] base::Result<Answer> roundness(const Question& question);
[[nodiscard]] base::Result<Answer> lobes(const Question& question);
[[nodiscard]] base::Result<Answer> sum(const Question& question);
[[nodiscard]] base::Result<Answer> any_taper(const Question& question);
[[nodiscard]] base::Result<Answer> taper_pair(const Question& question);

// --- what fits
[[nodiscard]] base::Result<Answer> play(const Question& question);
[[nodiscard]] base::Result<Answer> press(const Question& question);
[[nodiscard]] base::Result<Answer> heat(const Question& question);
[[nodiscard]] base::Result<Answer> clean_up(const Question& question);
[[nodiscard]] base::Result<Answer> sleeve(const Question& question);
[[nodiscard]] base::Result<Answer> wall(const Question& question);
[[nodiscard]] base::Result<Answer> webs(const Question& question);
[[nodiscard]] base::Result<Answer> pattern(const Question& question);
[[nodiscard]] base::Result<Answer> key_room(const Question& question);
[[nodiscard]] base::Result<Answer> plating(const Question& question);
[[nodiscard]] base::Result<Answer> slit(const Question& question);

[[nodiscard]] base::Result<Answer> bar(const Question& question);
[[nodiscard]] base::Result<Answer> ream(const Question& question);

// --- at the machine
[[nodiscard]] base::Result<Answer> bend(const Question& question);
[[nodiscard]] base::Result<Answer> deep_hole(const Question& question);
[[nodiscard]] base::Result<Answer> surface_speed(const Question& question);
[[nodiscard]] base::Result<Answer> pulley(const Question& question);
[[nodiscard]] base::Result<Answer> edge_find(const Question& question);
[[nodiscard]] base::Result<Answer> steps(const Question& question);
[[nodiscard]] base::Result<Answer> gib(const Question& question);
[[nodiscard]] base::Result<Answer> cut_force(const Question& question);
[[nodiscard]] base::Result<Answer> drill_load(const Question& question);
[[nodiscard]] base::Result<Answer> grip(const Question& question);
[[nodiscard]] base::Result<Answer> polygon(const Question& question);
[[nodiscard]] base::Result<Answer> dovetail(const Question& question);

// --- threads and gears
[[nodiscard]] base::Result<Answer> chase(const Question& question);
[[nodiscard]] base::Result<Answer> stub(const Question& question);
[[nodiscard]] base::Result<Answer> engage(const Question& question);
[[nodiscard]] base::Result<Answer> backlash(const Question& question);
[[nodiscard]] base::Result<Answer> pitches(const Question& question);
[[nodiscard]] base::Result<Answer> odd_nut(const Question& question);
[[nodiscard]] base::Result<Answer> gear_pitch(const Question& question);

// --- reading

// A length that may be zero or less; zero where the entry is not there.
[[nodiscard]] base::Result<quantity::Length> place_entry(const Question& question, std::string_view name);

// "20, 24, 28": whole numbers from least to most, at least one. The failure names the entry.
[[nodiscard]] base::Result<std::vector<int>> read_counts(std::string_view text, std::string_view entry,
                                                         int least, int most);

// --- a machine's collars

// What a collar is dialled to, and where its nearest division puts the tool.
struct Dialled {
  std::string says;      // "5 turns, to 62"
  std::string finish;    // "clockwise": how every move ends
  quantity::Length off;  // where it lands less where it was wanted
};

// axis "x": the tool goes to the right over the work, "y": away from the operator, "z": down into the work. The collar
// stands at 0 with the tool at the zero. step: the part of a division that can be set. Fails with kNotInTheShop.
[[nodiscard]] base::Result<Dialled> dial(const shop::Machine& machine, std::string_view axis,
                                         quantity::Length travel, double step = 1.0);

// The row of a depth on that machine's z collar, behind it where it lands.
[[nodiscard]] base::Result<Table> depth_on(const shop::Machine& machine, quantity::Length depth,
                                           quantity::UnitSystem system);

// "0.0003 in (0.008 mm) too far right"; "exactly" where nothing is off.
[[nodiscard]] std::string off_words(quantity::Length off, std::string_view more, std::string_view less,
                                    quantity::UnitSystem system);

[[nodiscard]] inline quantity::Length magnitude(quantity::Length length) {
  return length < quantity::Length() ? -length : length;
}

inline constexpr std::string_view kKeyOut =
    "Chuck key out, jaws within the chuck's body; turn the work round once by hand before the power goes on.";

inline constexpr handbook::Source kCollar{"the machine's collars, as the shop text has them", "",
                                          handbook::Basis::kDerived};
inline constexpr handbook::Source kShopText{"the shop text", "", handbook::Basis::kDerived};

}  // namespace sparewright::answers
