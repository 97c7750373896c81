#include "core/job/gearing_text.hpp"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/handbook/gauge_blocks.hpp"
#include "core/handbook/gear_trains.hpp"
#include "core/handbook/pitch_text.hpp"

namespace sparewright::job {
namespace {

using quantity::Kind;
using quantity::Length;
using text::TableReader;

void refuse(const TableReader& in, std::string_view key, const base::Failure& failure) {
  const auto node = in.node().find(key);
  in.problems().add(text::located(failure, node ? *node : in.node()));
}

std::vector<int> read_counts(const TableReader& in, std::string_view key) {
  std::vector<int> counts;
  for (const std::int64_t count :
       in.values(key, [](const text::Node& node) { return text::read_whole(node); }))
    counts.push_back(static_cast<int>(std::clamp<std::int64_t>(count, -1, 1'000'000)));
  return counts;
}

Length length(const TableReader& in, std::string_view key) {
  const auto typed = in.number(key, Kind::kLength);
  return typed ? typed->length() : Length();
}

std::optional<handbook::Banjo> read_banjo(const TableReader& in) {
  const auto table = in.table("banjo");
  if (!table) return std::nullopt;
  handbook::Banjo banjo;
  banjo.module = length(*table, "module");
  banjo.centres = length(*table, "centres");
  for (const TableReader& slot : table->tables("slots")) {
    const auto turned = slot.number("turned", Kind::kAngle);
    banjo.slots.push_back(
        {length(slot, "nearest"), length(slot, "farthest"), turned ? turned->angle() : quantity::Angle()});
  }
  banjo.fixed_collar = as_diameter(length(*table, "fixed_collar"));
  banjo.screw_collar = as_diameter(length(*table, "screw_collar"));
  banjo.stud_collar = as_diameter(length(*table, "stud_collar"));
  const auto sound = handbook::checked(banjo);
  if (!sound) refuse(in, "banjo", sound.error());
  return banjo;
}

}  // namespace

shop::ChangeGearBox read_change_gears(const TableReader& in) {
  shop::ChangeGearBox box;
  box.name = in.text("name").value_or("");
  if (const auto node = in.node().find("lead_screw")) {
    const auto pitch = handbook::read_pitch(node->typed(), in.system());
    if (pitch) {
      box.gearing.screw_lead = pitch->pitch;
    } else {
      base::Failure failure = pitch.error();
      failure.subject = "lead_screw: " + failure.subject;
      in.problems().add(text::located(std::move(failure), *node));
    }
  }
  box.gearing.gears = read_counts(in, "gears");
  const auto finder = handbook::TrainFinder::of(box.gearing.gears);
  if (!finder) refuse(in, "gears", finder.error());
  box.gearing.banjo = read_banjo(in);
  return box;
}

shop::IndexingHead read_dividing_head(const TableReader& in) {
  shop::IndexingHead head;
  head.name = in.text("name").value_or("");
  head.head.worm = static_cast<int>(std::clamp<std::int64_t>(in.whole("worm").value_or(0), 0, 1'000'000));
  const auto plates = in.node().find("plates");
  if (plates) {
    for (std::size_t i = 0; i < plates->size(); ++i) {
      handbook::IndexPlate plate{"plate " + std::to_string(i + 1), {}};
      const text::Node circles = (*plates)[i];
      for (std::size_t k = 0; k < circles.size(); ++k) {
        if (const auto holes = circles[k].whole())
          plate.circles.push_back(static_cast<int>(std::clamp<std::int64_t>(*holes, 0, 1'000'000)));
      }
      head.head.plates.push_back(std::move(plate));
    }
  }
  const auto sound = handbook::checked(head.head);
  if (!sound) refuse(in, plates ? "plates" : "worm", sound.error());
  return head;
}

std::string read_gauge_blocks(const TableReader& in) {
  const auto name = in.text("gauge_blocks");
  if (!name) return "";
  if (const auto set = handbook::find_gauge_blocks(*name); !set) {
    refuse(in, "gauge_blocks", set.error());
    return "";
  }
  return *name;
}

}  // namespace sparewright::job
