#include "core/shop/shop.hpp"

#include <algorithm>

namespace sparewright::shop {
namespace {

template <typename Thing>
const Thing* find_named(const std::vector<Thing>& things, std::string_view name) {
  const auto found =
      std::find_if(things.begin(), things.end(), [&](const Thing& t) { return t.name == name; });
  return found == things.end() ? nullptr : &*found;
}

template <typename Size>
void add(base::Hasher& h, const std::optional<Size>& size) {
  h.add(size.has_value());
  if (size) h.add(size->base());
}

void add(base::Hasher& h, const Collar& c) {
  h.add(c.per_turn.base())
      .add(c.divisions)
      .add(static_cast<int>(c.reads))
      .add(static_cast<int>(c.numbers_rise));
  h.add(static_cast<int>(c.clockwise_moves_work))
      .add(c.slack.base())
      .add(c.repeats.base())
      .add(c.repeats_given);
}

}  // namespace

std::string_view name_of(ToolKind kind) {
  switch (kind) {
    case ToolKind::kSpotDrill:
      return "spot drill";
    case ToolKind::kTwistDrill:
      return "twist drill";
    case ToolKind::kReamer:
      return "reamer";
    case ToolKind::kTap:
      return "tap";
    case ToolKind::kCounterbore:
      return "counterbore";
    case ToolKind::kEndMill:
      return "end mill";
    case ToolKind::kBoringHead:
      return "boring head";
    case ToolKind::kEdgeFinder:
      return "edge finder";
  }
  return "";
}

const Machine* find_machine(const Shop& shop, std::string_view name) {
  return find_named(shop.machines, name);
}
const Vise* find_vise(const Shop& shop, std::string_view name) {
  return find_named(shop.vises, name);
}
const Tool* find_tool(const Shop& shop, std::string_view name) {
  return find_named(shop.tools, name);
}

base::Fingerprint fingerprint(const Machine& m) {
  base::Hasher h;
  h.add(m.name).add(static_cast<int>(m.kind)).add(static_cast<std::uint64_t>(m.speeds_rpm.size()));
  for (const double speed : m.speeds_rpm)
    h.add(speed);
  add(h, m.power);
  add(h, m.quiet_cut);
  for (const auto& size : {m.travel.x, m.travel.y, m.travel.z, m.travel.quill})
    add(h, size);
  for (const auto& [axis, collar] : m.collars) {
    h.add(axis);
    add(h, collar);
  }
  for (const auto& size : {m.head_tram, m.tram_sweep, m.jaw_lift})
    add(h, size);
  return h.add(m.out_of_use).done();
}

base::Fingerprint fingerprint(const Vise& v) {
  base::Hasher h;
  h.add(v.name).add(v.jaw_width.base()).add(v.jaw_depth.base()).add(v.opens.base());
  for (const Parallel& p : v.parallels)
    h.add(p.height.base()).add(p.thickness.base()).add(p.typed);
  return h.done();
}

base::Fingerprint fingerprint(const Tool& t) {
  base::Hasher h;
  h.add(t.name).add(static_cast<int>(t.kind)).add(static_cast<int>(t.material)).add(t.diameter.has_value());
  if (t.diameter) h.add(t.diameter->base).add(t.diameter->typed);
  h.add(t.diameter_measured);
  for (const auto& size : {t.reach, t.pilot, t.bar, t.least_bore, t.division, t.good_to})
    add(h, size);
  return h.add(t.reads_diameter).add(t.thread).add(t.flutes).done();
}

}  // namespace sparewright::shop
