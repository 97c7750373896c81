#include "core/part/part.hpp"

#include <algorithm>
#include <cmath>
#include <memory>

#include <fmt/format.h>

#include "core/part/writing.hpp"

namespace sparewright::part {
namespace {

// The last flat on that side, before a given place in the list, that takes the whole side, or the chucking piece on it.
const Feature* whole_flat(const Part& part, Face face, std::size_t before) {
  for (std::size_t i = std::min(before, part.features.size()); i-- > 0;) {
    const auto* flat = std::get_if<Flat>(&part.features[i].shape);
    if (flat != nullptr && flat->side == face && !flat->region) return &part.features[i];
    const auto* formed = std::get_if<Formed>(&part.features[i].shape);
    if (formed != nullptr && formed->form == Form::kChuckingPiece && formed->side == face)
      return &part.features[i];
  }
  return nullptr;
}

// Whether the whole of that side is cut by a feature listed after this one.
bool is_cut_after(const Part& part, const Feature& feature, Face face) {
  const Feature* last = whole_flat(part, face, part.features.size());
  if (last == nullptr || last->name == feature.name) return false;
  const auto at = [&](const std::string& name) {
    return std::find_if(part.features.begin(), part.features.end(),
                        [&](const Feature& f) { return f.name == name; });
  };
  return at(last->name) > at(feature.name);
}

}  // namespace

const Feature* find_feature(const Part& part, std::string_view name) {
  const auto found = std::find_if(part.features.begin(), part.features.end(),
                                  [&](const Feature& f) { return f.name == name; });
  return found == part.features.end() ? nullptr : &*found;
}

std::string feature_path(std::string_view name) {
  return fmt::format("feature/{}", name);
}

std::string blank_path(const Blank& blank, Axis axis) {
  if (axis == Axis::kX) return "blank/length";
  if (blank.shape == BlankShape::kSquareBar) return "blank/across";
  if (blank.shape == BlankShape::kHexBar)
    return axis == Axis::kY ? "blank/across corners" : "blank/across flats";
  if (is_one_across(blank.shape)) return "blank/diameter";
  return axis == Axis::kY ? "blank/width" : "blank/thickness";
}

std::string blank_side_path(Face face) {
  return fmt::format("blank/{}", name_of(face));
}

std::string side_path_before(const Part& part, Face face, std::size_t before) {
  const Feature* flat = whole_flat(part, face, before);
  return flat == nullptr ? blank_side_path(face) : at_path(flat->name, axis_of(face));
}

std::string side_path(const Part& part, Face face) {
  return side_path_before(part, face, part.features.size());
}

bool is_on_finished(const Part& part, const Feature& feature, std::string_view local) {
  if (local == "mate corner") return false;
  if (const auto* flat = std::get_if<Flat>(&feature.shape)) {
    if (local != "leaves") return true;
    const bool again = !flat->region && is_cut_after(part, feature, flat->side);
    return !again && !is_cut_after(part, feature, opposite(flat->side));
  }
  const auto* formed = std::get_if<Formed>(&feature.shape);
  if (formed == nullptr || formed->form != Form::kChuckingPiece) return true;
  if (local != "over all") return false;
  return !is_cut_after(part, feature, formed->side) && !is_cut_after(part, feature, opposite(formed->side));
}

std::string at_path(std::string_view feature, Axis axis) {
  return fmt::format("feature/{}/at {}", feature, name_of(axis));
}

std::vector<ledger::Stage> stages(const Part& part) {
  const auto shared = std::make_shared<const Part>(part);  // by the stages, however many there are
  std::vector<ledger::Stage> all;
  all.push_back({"blank", base::Hasher().add("blank").add(fingerprint(part.blank)).done(),
                 [blank = part.blank](ledger::Pen& pen) { write_blank(pen, blank); }});
  const base::Fingerprint whole = fingerprint(part);
  for (std::size_t i = 0; i < part.features.size(); ++i) {
    all.push_back({feature_path(part.features[i].name),
                   base::Hasher().add(whole).add(static_cast<int>(i)).done(),
                   [shared, i](ledger::Pen& pen) { write_feature(pen, *shared, i); }});
  }
  all.push_back({"part", base::Hasher().add("part").add(whole).done(),
                 [shared](ledger::Pen& pen) { write_geometry(pen, *shared); }});
  all.push_back({"part/least wall", base::Hasher().add("part/least wall").add(whole).done(),
                 [shared](ledger::Pen& pen) { write_least_wall(pen, *shared); }});
  return all;
}

base::Fingerprint fingerprint(const Part& part) {
  base::Hasher h;
  h.add(fingerprint(part.blank)).add(fingerprint(part.surroundings));
  for (const Feature& feature : part.features)
    h.add(fingerprint(feature));
  return h.done();
}

}  // namespace sparewright::part
