#include "core/job/part_text.hpp"

#include <algorithm>
#include <set>

#include <fmt/format.h>

#include "core/handbook/bar_stock.hpp"
#include "core/handbook/v_block.hpp"
#include "core/job/casting_text.hpp"
#include "core/job/form_text.hpp"
#include "core/job/hole_text.hpp"
#include "core/job/pattern_text.hpp"
#include "core/job/place_text.hpp"
#include "core/job/tree_text.hpp"
#include "core/job/vocabulary.hpp"

namespace sparewright::job {
namespace {

using base::Code;
using quantity::Kind;
using text::TableReader;

// --- the blank ----------------------------------------------------------------------------------------------------
struct SizeKey {
  const char* key;
  part::Axis axis;
};

std::vector<SizeKey> size_keys(part::BlankShape shape) {
  if (part::is_bar(shape)) {
    const char* across = part::is_round(shape) ? "diameter" : "across";
    return {{"length", part::Axis::kX}, {across, part::Axis::kY}, {across, part::Axis::kZ}};
  }
  return {{"length", part::Axis::kX}, {"width", part::Axis::kY}, {"thickness", part::Axis::kZ}};
}

// Drawn bar lies between what the mill may leave; nothing is known of a sawn length or a block.
void set_mill_limits(part::Blank& blank, const MaterialText& material) {
  const bool is_drawn = blank.shape == part::BlankShape::kFlatBar ||
                        (part::is_bar(blank.shape) && blank.shape != part::BlankShape::kTube);
  if (!is_drawn || !material.material) return;
  const part::BlankSize& governing = blank.sizes.at(1);
  const bool is_inch = governing.nominal.unit.symbol != quantity::unit::millimetre.symbol;
  if (!is_inch || !material.material->inch_bar) return;
  const auto form = blank.shape == part::BlankShape::kRoundBar    ? handbook::BarForm::kRound
                    : blank.shape == part::BlankShape::kHexBar    ? handbook::BarForm::kHexagon
                    : blank.shape == part::BlankShape::kSquareBar ? handbook::BarForm::kSquare
                                                                  : handbook::BarForm::kFlat;
  const auto tolerance =
      handbook::bar_tolerance(*material.material->inch_bar, form, governing.nominal.length());
  if (!tolerance) return;
  for (const std::size_t axis : {std::size_t{1}, std::size_t{2}}) {
    blank.sizes.at(axis).mill_lower_mm = -tolerance->minus.base();
    blank.sizes.at(axis).mill_upper_mm = tolerance->plus.base();
    blank.sizes.at(axis).mill_source = handbook::cite(tolerance->source);
  }
}

// Their mean, and how far the readings lie from it.
void set_found(part::BlankSize& size, const std::vector<quantity::Typed>& readings) {
  if (readings.empty()) return;
  quantity::Typed mean = readings.front();
  double least = mean.base;
  double most = mean.base;
  double sum = 0.0;
  for (const quantity::Typed& reading : readings) {
    least = std::min(least, reading.base);
    most = std::max(most, reading.base);
    sum += reading.base;
    if (&reading != &readings.front()) mean.typed += ", " + reading.typed;
  }
  mean.base = readings.size() == 1 ? mean.base : sum / static_cast<double>(readings.size());
  size.found_below_mm = mean.base - least;
  size.found_above_mm = most - mean.base;
  size.found = std::move(mean);
}

// An even number of lobes a micrometer sees, and a number that the V-block does not show cannot be found in it.
void read_lobing(const TableReader& in, const Names& names, part::Blank& blank) {
  const auto table = in.table("lobing");
  if (!table) return;
  const auto refuse = [&](std::string_view key, std::string_view accepted) {
    const text::Node node = *table->node().find(key);
    in.problems().add(text::failure_at(node, Code::kValueNotAccepted, node.typed(), accepted));
  };
  part::Lobing lobing;
  lobing.lobes = static_cast<int>(table->whole("lobes").value_or(3));
  const auto v_block = table->number("v_block", Kind::kAngle);
  const auto swing = table->number("swing", Kind::kLength);
  lobing.found_with = table->text("with").value_or("");
  if (!v_block || !swing) return;
  constexpr double kLeastShown = 0.1;  // of the swing; a choice made here
  const double degree = quantity::unit::degree.to_base(1.0);
  if (lobing.lobes != 3 && lobing.lobes != 5 && lobing.lobes != 7) return refuse("lobes", "3, 5 or 7");
  if (!(v_block->base > 30.0 * degree && v_block->base < 150.0 * degree))
    return refuse("v_block", "its included angle, more than 30 and less than 150 degrees");
  if (handbook::v_block_factor(lobing.lobes, v_block->base) < kLeastShown)
    return refuse("lobes", "a V-block of another angle: in this one so many lobes do not show");
  if (swing->base < 0.0) return refuse("swing", "0 or more");
  if (!part::is_round(blank.shape)) return refuse("lobes", "a round bar or tube as the blank");
  if (std::find(names.instruments.begin(), names.instruments.end(), lobing.found_with) ==
      names.instruments.end()) {
    auto failure = text::failure_at(*table->node().find("with"), Code::kNotInTheShop, lobing.found_with,
                                    base::known_words(lobing.found_with, names.instruments));
    failure.subject = "instrument";
    in.problems().add(std::move(failure));
  }
  lobing.v_block = *v_block;
  lobing.swing = *swing;
  blank.lobing = std::move(lobing);
}

void read_sizes(const TableReader& in, part::Blank& blank) {
  const auto nominal = in.table("size");
  const auto found = in.table("found");
  const auto keys = size_keys(blank.shape);
  for (const SizeKey& entry : keys) {
    part::BlankSize& size = blank.sizes.at(static_cast<std::size_t>(entry.axis));
    if (nominal) size.nominal = nominal->number(entry.key, Kind::kLength).value_or(quantity::Typed{});
    if (found) set_found(size, found->numbers(entry.key, Kind::kLength));
    const bool again = part::is_bar(blank.shape) && entry.axis == part::Axis::kZ;
    if (nominal && !again && !nominal->node().find(entry.key)) {
      base::Failure failure;
      failure.code = Code::kKeyMissing;
      failure.subject = nominal->node().label();
      failure.found = entry.key;
      failure.place = nominal->node().place();
      in.problems().add(std::move(failure));
    } else if (nominal && !again && nominal->node().find(entry.key) && size.nominal.base <= 0.0) {
      in.problems().add(
          text::failure_at(*nominal->node().find(entry.key), Code::kSizeNotPositive, size.nominal.typed));
    }
  }
  if (blank.shape == part::BlankShape::kTube && nominal) {
    blank.bore.emplace();
    blank.bore->nominal = nominal->number("bore", Kind::kLength).value_or(quantity::Typed{});
    if (found) set_found(*blank.bore, found->numbers("bore", Kind::kLength));
    if (!nominal->node().find("bore")) {
      need_key(*nominal, "bore");
    } else if (!(blank.bore->nominal.base > 0.0 && blank.bore->nominal.base < blank.sizes[1].nominal.base)) {
      in.problems().add(text::failure_at(*nominal->node().find("bore"), Code::kValueNotAccepted,
                                         blank.bore->nominal.typed,
                                         "more than 0 and less than the diameter"));
    }
  }
  for (const auto& table : {nominal, found}) {
    if (!table) continue;
    for (const text::Node& node : table->node()) {
      const bool known =
          std::any_of(keys.begin(), keys.end(), [&](const SizeKey& k) { return node.key() == k.key; }) ||
          (blank.bore && node.key() == "bore");
      if (known) continue;
      in.problems().add(text::failure_at(node, Code::kValueNotAccepted, node.key(),
                                         fmt::format("the sizes of a {}", part::name_of(blank.shape))));
    }
  }
}

// --- features -----------------------------------------------------------------------------------------------------
part::Flat read_flat(const TableReader& in, const Names& names) {
  part::Flat flat;
  flat.side = in.word("side", kFaces).value_or(part::Face::kTop);
  if (auto leaves = read_dimension(in, "leaves", Kind::kLength, "outside jaws", names))
    flat.leaves = std::move(*leaves);
  const auto region = in.table("region");
  if (!region) return flat;
  part::Flat::Region r;
  r.along = region->word("along", kAxes).value_or(part::Axis::kX);
  if (r.along == part::axis_of(flat.side)) {
    in.problems().add(text::failure_at(*region->node().find("along"), Code::kValueNotAccepted,
                                       part::name_of(r.along), "an axis that lies in the side"));
  }
  if (auto start = read_position(*region, "start", r.along, names)) r.start = std::move(*start);
  if (const auto towards = region->word("towards", kFaces)) {
    if (part::axis_of(*towards) != r.along) {
      in.problems().add(text::failure_at(*region->node().find("towards"), Code::kValueNotAccepted,
                                         part::name_of(*towards),
                                         fmt::format("{} or {}", part::name_of(part::face_at(r.along, false)),
                                                     part::name_of(part::face_at(r.along, true)))));
    }
    r.towards_greater = part::at_greater_end(*towards);
  }
  flat.region = std::move(r);
  return flat;
}

// Their numbers are called by their names. tables: of each feature.
void refuse_doubles(const TableReader& in, const std::vector<TableReader>& tables,
                    const std::vector<part::Feature>& features) {
  std::set<std::string_view> names;
  for (std::size_t i = 0; i < features.size(); ++i) {
    if (names.insert(features[i].name).second) continue;
    auto failure = text::failure_at(tables[i].node().find("name").value_or(tables[i].node()),
                                    Code::kNameTwice, features[i].name, "names of their own");
    failure.subject = "feature";
    in.problems().add(std::move(failure));
  }
}

}  // namespace

MaterialText read_material(const TableReader& blank) {
  MaterialText text;
  const auto name = blank.text("material");
  if (!name || *name == "not known") return text;
  auto found = handbook::find_material(*name);
  if (!found) {
    found.error().accepted += found.error().accepted.empty() ? "not known" : ", or not known";
    blank.problems().add(text::located(found.error(), *blank.node().find("material")));
    return text;
  }
  text.material = found->material;
  text.assumed = found->assumed;
  return text;
}

part::Blank read_blank(const TableReader& in, const MaterialText& material, const Names& names) {
  part::Blank blank;
  blank.shape = in.word("shape", kBlanks).value_or(part::BlankShape::kFlatBar);
  blank.material = in.text("material").value_or("");
  if (material.material) {
    blank.density_kg_per_mm3 = material.material->density.base();
    blank.density_source =
        handbook::cite(handbook::source_of(*material.material, handbook::MaterialProperty::kDensity));
  }
  read_sizes(in, blank);
  set_mill_limits(blank, material);
  const auto with = in.text("found_with");
  if (with &&
      std::find(names.instruments.begin(), names.instruments.end(), *with) == names.instruments.end()) {
    auto failure = text::failure_at(*in.node().find("found_with"), Code::kNotInTheShop, *with,
                                    base::known_words(*with, names.instruments));
    failure.subject = "instrument";
    in.problems().add(std::move(failure));
  }
  for (part::BlankSize& size : blank.sizes)
    size.found_with = with.value_or("");
  if (blank.bore) blank.bore->found_with = with.value_or("");
  read_casting(in, names, blank);
  read_lobing(in, names, blank);
  const bool has_found = in.node().find("found") || in.node().find("rough") || in.node().find("cored");
  if (has_found && !with) {
    base::Failure failure;
    failure.code = Code::kKeyMissing;
    failure.subject = "blank";
    failure.found = "found_with";
    failure.accepted = "the instrument the sizes were found with";
    failure.place = in.node().place();
    in.problems().add(std::move(failure));
  }
  return blank;
}

namespace {

// What a filed face has and what a lapped one has, with room to spare (common practice).
std::string read_surface(const TableReader& in) {
  constexpr double kLeast_mm = 0.01e-3;
  constexpr double kMost_mm = 50e-3;
  const auto roughness = in.number("surface", Kind::kLength);
  if (!roughness) return "";
  if (roughness->base < kLeast_mm || roughness->base > kMost_mm) {
    in.problems().add(text::failure_at(*in.node().find("surface"), Code::kValueNotAccepted, roughness->typed,
                                       "a roughness Ra of 0.01 to 50 um, such as \"1.6 um\" or \"63 uin\""));
  }
  return roughness->typed;
}

std::vector<part::Feature> read_feature(const TableReader& in, part::BlankShape blank, const Names& names) {
  const std::string name = in.text("name").value_or("");
  if (in.text("kind") == "flat") return {{name, read_flat(in, names)}};
  if (auto formed = read_form(in, blank, names)) return {{name, std::move(*formed)}};
  const std::vector<std::string> made = names_made_by(in);
  std::vector<part::Feature> features;
  for (part::Hole& hole : read_holes(in, blank, names))
    features.push_back({features.size() < made.size() ? made[features.size()] : name, std::move(hole)});
  return features;
}

}  // namespace

std::vector<part::Feature> read_features(const TableReader& job, part::BlankShape blank, const Names& names) {
  std::vector<part::Feature> features;
  std::vector<TableReader> tables;  // of each feature
  for (const TableReader& in : job.tables("feature")) {
    const std::string name = in.text("name").value_or("");
    if (const auto node = in.node().find("name");
        node && (name.empty() || name.find('/') != std::string::npos)) {
      in.problems().add(
          text::failure_at(*node, Code::kValueNotAccepted, name,
                           "a name of one letter or more, without '/': numbers are called by it"));
    }
    const std::string surface = read_surface(in);
    for (part::Feature& feature : read_feature(in, blank, names)) {
      feature.surface = surface;
      features.push_back(std::move(feature));
      tables.push_back(in);
    }
  }
  find_holes(tables, features);
  find_gaps(tables, features);
  find_chucking_pieces(features);
  refuse_doubles(job, tables, features);
  tell_tree_faults(tables, features);
  return features;
}

part::GeneralTolerances read_general_tolerances(const TableReader& job, quantity::UnitSystem system) {
  part::GeneralTolerances general = part::usual_general_tolerances(system);
  const auto table = job.table("general_tolerance");
  if (!table) return general;
  general.given = true;
  const auto band = [&](const char* key, part::GeneralTolerances::Band& into) {
    const auto tolerance = table->tolerance(key, Kind::kLength);
    if (!tolerance) return;
    const auto* d = std::get_if<quantity::Deviations>(&tolerance->form);
    if (d == nullptr) {
      job.problems().add(text::failure_at(*table->node().find(key), Code::kValueNotAccepted, tolerance->typed,
                                          "±0.010 or +0.010/-0.005"));
      return;
    }
    into = {d->lower.base, d->upper.base, tolerance->typed};
  };
  band("two_places", general.two_places);
  band("three_places", general.three_places);
  return general;
}

}  // namespace sparewright::job
