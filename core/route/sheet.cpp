#include "core/route/sheet.hpp"

namespace sparewright::route {
namespace {

void add(base::Hasher& h, const std::vector<std::string>& lines) {
  h.add(static_cast<std::uint64_t>(lines.size()));
  for (const std::string& line : lines)
    h.add(line);
}

void add(base::Hasher& h, const Line& l) {
  h.add(l.number).add(l.says).add(l.x_reads).add(l.y_reads).add(l.z_reads).add(l.rpm).add(l.feed).add(
      l.expect);
  h.add(l.to_fill);
}

void add(base::Hasher& h, const Stop& s) {
  h.add(s.says).add(s.rule).add(static_cast<std::uint64_t>(s.readings.size()));
  for (const ProofReading& reading : s.readings)
    h.add(reading.what).add(reading.expect);
}

void add(base::Hasher& h, const Note& n) {
  h.add(n.says);
}

void add(base::Hasher& h, const PlanView::Rectangle& r) {
  h.add(r.name).add(r.left_mm).add(r.near_mm).add(r.right_mm).add(r.far_mm).add(r.cut_here);
}

void add(base::Hasher& h, const PlanView& v) {
  add(h, v.work);
  for (const auto& c : v.holes)
    h.add(c.name).add(c.x_mm).add(c.y_mm).add(c.radius_mm).add(c.cut_here);
  for (const auto* cut : {&v.flats, &v.forms}) {
    h.add(static_cast<std::uint64_t>(cut->size()));
    for (const auto& one : *cut)
      add(h, one);
  }
  h.add(v.x_rises_right).add(v.y_rises_away).add(v.jaw_left_mm).add(v.jaw_right_mm).add(v.parallel_mm);
  h.add(v.parallels_in_middle).add(v.parallel_high_mm).add(v.jaw_high_mm);
  for (const part::Face side : {v.stance.right, v.stance.away, v.stance.up})
    h.add(static_cast<int>(side));
  h.add(v.stance.zero_right_mm).add(v.stance.zero_away_mm).add(v.stance.sits_at_mm);
  h.add(v.left_side).add(v.right_side).add(v.near_side).add(v.far_side);
}

void add(base::Hasher& h, const TurnedView& v) {
  h.add(static_cast<std::uint64_t>(v.steps.size()));
  for (const TurnedView::Step& step : v.steps) {
    h.add(step.name).add(step.from_mm).add(step.to_mm).add(step.from_diameter_mm).add(step.to_diameter_mm);
    h.add(step.cut_here).add(step.is_bore);
  }
  h.add(v.work_from_mm).add(v.work_to_mm).add(v.jaws_from_mm).add(v.jaws_grip_diameter_mm);
  h.add(v.holder).add(v.tail).add(v.tail_is_centre).add(v.free_end);
}

void add(base::Hasher& h, const std::monostate& nothing) {
  static_cast<void>(h);
  static_cast<void>(nothing);
}

}  // namespace

base::Fingerprint fingerprint(const SetupSheet& s) {
  base::Hasher h;
  h.add(s.op).add(s.name).add(s.done_before).add(s.stock).add(s.the_rest);
  for (const auto* lines : {&s.sizes_that_matter, &s.machine, &s.check, &s.hold, &s.pick_up,
                            &s.before_unclamp, &s.if_wrong, &s.cautions, &s.not_cleared}) {
    add(h, *lines);
  }
  for (const Item& item : s.items) {
    h.add(static_cast<std::uint64_t>(item.index()));
    std::visit([&](const auto& what) { add(h, what); }, item);
  }
  for (const std::string& dial : s.dials)
    h.add(dial);
  h.add(static_cast<std::uint64_t>(s.view.index()));
  std::visit([&](const auto& view) { add(h, view); }, s.view);
  return h.done();
}

}  // namespace sparewright::route
