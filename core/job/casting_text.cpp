#include "core/job/casting_text.hpp"

#include <algorithm>

#include "core/job/place_text.hpp"
#include "core/job/vocabulary.hpp"

namespace sparewright::job {
namespace {

using base::Code;
using quantity::Kind;
using text::TableReader;

void read_rough(const TableReader& in, part::Blank& blank) {
  part::RoughFace face;
  face.side = in.word("side", kFaces).value_or(part::Face::kTop);
  face.uneven = in.number("uneven", Kind::kLength).value_or(quantity::Typed{});
  if (face.uneven.base < 0.0)
    in.problems().add(text::failure_at(*in.node().find("uneven"), Code::kValueNotAccepted, face.uneven.typed,
                                       "0 or more: how far its lowest spot lies below the size"));
  const bool again = std::any_of(blank.rough.begin(), blank.rough.end(),
                                 [&](const part::RoughFace& other) { return other.side == face.side; });
  if (again) {
    auto failure = text::failure_at(*in.node().find("side"), Code::kNameTwice, part::name_of(face.side),
                                    "each side once");
    failure.subject = "rough face";
    in.problems().add(std::move(failure));
    return;
  }
  blank.rough.push_back(std::move(face));
}

void read_cored(const TableReader& in, const Names& names, part::Blank& blank) {
  part::CoredHole hole;
  hole.name = in.text("name").value_or("");
  hole.into = in.word("into", kFaces).value_or(part::Face::kTop);
  hole.finished_by = in.text("finished_by").value_or("");
  hole.diameter = in.number("diameter", Kind::kDiameter).value_or(quantity::Typed{});
  if (in.node().find("diameter") && !(hole.diameter.base > 0.0))
    in.problems().add(
        text::failure_at(*in.node().find("diameter"), Code::kSizeNotPositive, hole.diameter.typed));
  const auto at = in.table("at");
  for (const part::Axis axis : part::axes_in(hole.into)) {
    const auto place = at ? at->number(part::name_of(axis), Kind::kLength) : std::nullopt;
    if (place) hole.at[axis] = *place;
    if (at && !at->node().find(part::name_of(axis))) need_key(*at, part::name_of(axis));
  }
  const bool is_there =
      std::find(names.features.begin(), names.features.end(), hole.finished_by) != names.features.end();
  if (!is_there) {
    auto failure = text::failure_at(*in.node().find("finished_by"), Code::kNotInTheJob, hole.finished_by,
                                    base::known_words(hole.finished_by, names.features));
    failure.subject = "hole";
    in.problems().add(std::move(failure));
  }
  const bool again = std::any_of(blank.cored.begin(), blank.cored.end(),
                                 [&](const part::CoredHole& other) { return other.name == hole.name; });
  const bool is_feature =
      std::find(names.features.begin(), names.features.end(), hole.name) != names.features.end();
  if (again || is_feature || hole.name.empty() || hole.name.find('/') != std::string::npos)
    in.problems().add(text::failure_at(*in.node().find("name"), Code::kValueNotAccepted, hole.name,
                                       "a name of its own, without '/'"));
  blank.cored.push_back(std::move(hole));
}

}  // namespace

void read_casting(const TableReader& in, const Names& names, part::Blank& blank) {
  for (const char* key : {"rough", "cored"}) {
    const auto node = in.node().find(key);
    if (node && blank.shape != part::BlankShape::kCasting)
      in.problems().add(text::failure_at(*node, Code::kValueNotAccepted, key, "a casting as the blank"));
  }
  for (const TableReader& table : in.tables("rough"))
    read_rough(table, blank);
  for (const TableReader& table : in.tables("cored"))
    read_cored(table, names, blank);
}

}  // namespace sparewright::job
