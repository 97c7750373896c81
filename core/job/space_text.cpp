#include "core/job/space_text.hpp"

#include "core/job/place_text.hpp"

namespace sparewright::job {
namespace {

using quantity::Kind;
using text::TableReader;

// A size of the room; told where it is nothing or less.
std::optional<quantity::Typed> read_room(const TableReader& in, std::string_view key) {
  auto size = in.number(key, Kind::kLength);
  if (size && !(size->base > 0.0))
    in.problems().add(
        text::failure_at(*in.node().find(key), base::Code::kSizeNotPositive, size->typed, "more than 0"));
  return size;
}

judge::Envelope read_envelope(const TableReader& in) {
  judge::Envelope envelope;
  envelope.length = read_room(in, "length").value_or(quantity::Typed{});
  envelope.width = read_room(in, "width").value_or(quantity::Typed{});
  envelope.height = read_room(in, "height").value_or(quantity::Typed{});
  envelope.any_way = in.truth("any_way").value_or(false);
  return envelope;
}

judge::Opening read_opening(const TableReader& in) {
  judge::Opening opening{read_room(in, "width"), read_room(in, "height"), read_room(in, "diameter")};
  const bool flat_sided = in.node().find("width") || in.node().find("height");
  if (in.node().find("diameter")) {
    if (flat_sided)
      in.problems().add(text::failure_at(*in.node().find("diameter"), base::Code::kValueNotAccepted,
                                         in.node().find("diameter")->typed(),
                                         "either a diameter, or width and height"));
    return opening;
  }
  for (const char* key : {"width", "height"}) {
    if (!in.node().find(key)) need_key(in, key);
  }
  return opening;
}

}  // namespace

judge::Space read_space(const TableReader& job) {
  judge::Space space;
  const auto in = job.table("space");
  if (!in) return space;
  if (const auto envelope = in->table("envelope")) space.envelope = read_envelope(*envelope);
  if (const auto opening = in->table("opening")) space.opening = read_opening(*opening);
  return space;
}

}  // namespace sparewright::job
