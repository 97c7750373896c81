#include "core/shop/shop.hpp"

#include <algorithm>
#include <array>

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
      .add(static_cast<int>(c.clockwise_moves_tool))
      .add(c.slack.base())
      .add(c.repeats.base())
      .add(c.repeats_given);
}

}  // namespace

std::string_view name_of(MachineKind kind) {
  constexpr std::array kNames{"vertical mill", "mill-drill", "lathe", "drill press", "saw", "bench"};
  return kNames.at(static_cast<std::size_t>(kind));
}

bool is_mill(MachineKind kind) {
  return kind == MachineKind::kVerticalMill || kind == MachineKind::kMillDrill;
}

bool is_by_hand(MachineKind kind) {
  return !is_mill(kind) && kind != MachineKind::kLathe;
}

std::string_view name_of(HolderKind kind) {
  constexpr std::array kNames{"three-jaw chuck", "four-jaw chuck", "collet", "centres", "mandrel",
                              "faceplate",       "bench vise",     "clamps", "V-blocks"};
  return kNames.at(static_cast<std::size_t>(kind));
}

bool turns_work(HolderKind kind) {
  return kind != HolderKind::kBenchVise && kind != HolderKind::kClamps && kind != HolderKind::kVBlocks;
}

std::string_view name_of(ToolKind kind) {
  constexpr std::array kNames{
      "spot drill",     "twist drill",  "reamer",        "tap",           "counterbore",  "end mill",
      "boring head",    "edge finder",  "turning tool",  "boring bar",    "parting tool", "grooving tool",
      "threading tool", "centre drill", "knurling tool", "die",           "countersink",  "slitting saw",
      "saw blade",      "file",         "press",         "deburring tool"};
  return kNames.at(static_cast<std::size_t>(kind));
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
  for (const auto& size :
       {m.head_tram, m.tram_sweep, m.jaw_lift, m.throat, m.lathe.swing, m.lathe.swing_over_slide,
        m.lathe.between_centres, m.lathe.spindle_bore, m.lathe.tapers, m.lathe.tapers_over})
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

base::Fingerprint fingerprint(const Holder& o) {
  base::Hasher h;
  h.add(o.name).add(static_cast<int>(o.kind));
  for (const auto& size : {o.grips_from, o.grips_to, o.jaws, o.runs_out})
    add(h, size);
  h.add(o.most_rpm.has_value());
  if (o.most_rpm) h.add(*o.most_rpm);
  return h.done();
}

base::Fingerprint fingerprint(const Tool& t) {
  base::Hasher h;
  h.add(t.name).add(static_cast<int>(t.kind)).add(static_cast<int>(t.material)).add(t.diameter.has_value());
  if (t.diameter) h.add(t.diameter->base).add(t.diameter->typed);
  h.add(t.diameter_measured);
  for (const auto& size :
       {t.reach, t.pilot, t.bar, t.least_bore, t.division, t.good_to, t.nose_radius, t.width, t.pitch})
    add(h, size);
  h.add(t.angle.has_value()).add(t.angle ? t.angle->base() : 0.0);
  return h.add(t.reads_diameter).add(t.thread).add(t.flutes).done();
}

}  // namespace sparewright::shop
