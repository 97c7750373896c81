// The part as a whole: the stages that write its figures, and the geometry that comes of them.
//
//   blank/length, width, thickness     sizes of the blank, with /least and /most (a round bar: length, diameter)
//   blank/lobing                       out of round of a bar as a V-block shows it, where it was tried
//   blank/left end, ... top            where its sides lie, as coordinates
//   feature/<name>/...                 the figures of one feature (dimension.hpp), and
//   feature/<name>/at x, at y, at z    its place as coordinates of the part frame
//   feature/<name>/starts at           the surface a hole starts from
//   part/recipe (a shape::Recipe)      blank and cutters at nominal size: flats first, then holes, each as in the text
//   part/volume, part/weight           by rays
//   part/least wall/thickness          the thinnest metal of the finished part, its ends named in the source, and
//   part/least wall/from x ... to z    where they lie: from the left end, the front and the underside of the finished part
#pragma once

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/ledger/ledger.hpp"
#include "core/part/blank.hpp"
#include "core/part/dimension.hpp"
#include "core/part/feature.hpp"
#include "core/shape/recipe.hpp"

namespace sparewright::part {

struct Part {
  Blank blank;
  std::vector<Feature> features;  // names unique
  Surroundings surroundings;
};

[[nodiscard]] const Feature* find_feature(const Part& part, std::string_view name);

// "feature/pivot bore"
[[nodiscard]] std::string feature_path(std::string_view name);
// "blank/length"
[[nodiscard]] std::string blank_path(const Blank& blank, Axis axis);
// The figure that says where a side lies once all its flats are cut: "blank/top" or "feature/relief/at z".
[[nodiscard]] std::string side_path(const Part& part, Face face);
// The side as the features listed before a place leave it.
[[nodiscard]] std::string side_path_before(const Part& part, Face face, std::size_t before);
// Whether a size can still be found on the finished part: not the length of a chucking piece, nor how thick a flat left the
// work where a side it was measured between is cut again after it, nor the corner of a mate.
// local: as part::dimensions_of() names it; "over all" of a chucking piece is the finished length.
[[nodiscard]] bool is_on_finished(const Part& part, const Feature& feature, std::string_view local);
// "feature/pivot bore/at x"
[[nodiscard]] std::string at_path(std::string_view feature, Axis axis);

// One stage for the blank, one for each feature, one for the geometry, one for the least wall.
[[nodiscard]] std::vector<ledger::Stage> stages(const Part& part);

// The cutters of a feature at the figures' nominal values, from the blank's outside inwards so that they take the
// same metal in any order of work. ask gives a figure's value in mm by its name.
[[nodiscard]] std::vector<shape::Cutter> cutters_of(const Feature& feature,
                                                    const std::function<double(const std::string&)>& ask);
[[nodiscard]] shape::Blank blank_body(const Blank& blank,
                                      const std::function<double(const std::string&)>& ask);

// The blank with these features made, in this order. Fails as Recipe::make() does, naming blank or feature.
[[nodiscard]] base::Result<shape::Recipe> recipe_of(const Blank& blank, std::span<const Feature* const> made,
                                                    const std::function<double(const std::string&)>& ask);

inline constexpr std::string_view kRecipe = "part/recipe";

[[nodiscard]] base::Fingerprint fingerprint(const Part& part);

}  // namespace sparewright::part
