#include "core/job/route_text.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/job/parallels.hpp"
#include "core/job/vocabulary.hpp"
#include "core/job/works_text.hpp"
#include "core/route/orientation.hpp"

namespace sparewright::job {
namespace {

using base::Code;
using text::TableReader;

// The thing of the shop that a key names.
template <typename Thing>
std::optional<Thing> from_shop(const TableReader& in, std::string_view key, std::string_view subject,
                               const std::vector<Thing>& things) {
  const auto name = in.text(key);
  if (!name) return std::nullopt;
  const auto found =
      std::find_if(things.begin(), things.end(), [&](const Thing& t) { return t.name == *name; });
  if (found != things.end()) return *found;
  refuse(in, *in.node().find(key), Code::kNotInTheShop, subject, names_of(things));
  return std::nullopt;
}

void read_parallels(const TableReader& in, const shop::Vise& vise, route::Holding& holding) {
  const auto node = in.node().find("parallels");
  if (!node) return;
  const auto wanted = in.problems().keep(read_parallel(*node, in.system()));
  if (!wanted) return;
  constexpr double kSame_mm = 1e-6;
  std::vector<std::string> known;
  for (const shop::Parallel& pair : vise.parallels) {
    known.push_back(pair.typed);
    const bool same = std::abs((pair.height - wanted->height).base()) < kSame_mm &&
                      std::abs((pair.thickness - wanted->thickness).base()) < kSame_mm;
    if (same) {
      holding.under = pair;
      return;
    }
  }
  refuse(in, *node, Code::kNotInTheShop, fmt::format("parallels of the {}", vise.name), known);
}

// A key that a setup on a machine of this kind needs.
void need(const TableReader& in, const shop::Machine& machine, const char* key) {
  if (in.node().find(key)) return;
  in.problems().add(text::failure_at(in.node(), Code::kKeyMissing, key,
                                     fmt::format("a setup on a {} has it", shop::name_of(machine.kind))));
}

// And one that says nothing there.
void refuse_key(const TableReader& in, const shop::Machine& machine, const char* key) {
  const auto node = in.node().find(key);
  if (!node) return;
  in.problems().add(text::failure_at(*node, Code::kValueNotAccepted, key,
                                     fmt::format("keys of a setup on a {}", shop::name_of(machine.kind))));
}

void read_pick_up(const TableReader& in, const shop::Shop& shop, route::OnMill& on) {
  const auto pick_up = in.table("pick_up");
  if (!pick_up) return;
  const auto finder = from_shop(*pick_up, "with", "tool", shop.tools);
  if (finder && finder->kind != shop::ToolKind::kEdgeFinder) {
    in.problems().add(text::failure_at(*pick_up->node().find("with"), Code::kValueNotAccepted, finder->name,
                                       "an edge finder"));
  }
  const auto orientation = route::orientation_of(on.holding);
  for (const char* key : {"x", "y"}) {
    route::EdgePickUp& edge = *key == 'x' ? on.x : on.y;
    if (finder) edge.edge_finder = *finder;
    const auto side = pick_up->word(key, kFaces);
    if (!side || !orientation) continue;
    edge.side = *side;
    const part::Axis along = *key == 'x' ? orientation->along_x().axis : orientation->along_y().axis;
    if (part::axis_of(*side) == along) continue;
    in.problems().add(
        text::failure_at(*pick_up->node().find(key), Code::kValueNotAccepted, part::name_of(*side),
                         fmt::format("as it is held, {} or {}", part::name_of(part::face_at(along, false)),
                                     part::name_of(part::face_at(along, true)))));
  }
}

const shop::Holder* find_clamps(const shop::Shop& shop, const std::string& name) {
  const auto found = std::find_if(shop.holders.begin(), shop.holders.end(), [&](const shop::Holder& holder) {
    return holder.name == name && holder.kind == shop::HolderKind::kClamps;
  });
  return found != shop.holders.end() ? &*found : nullptr;
}

void read_on_table(const TableReader& hold, const shop::Machine& machine, const shop::Holder& clamps,
                   route::Holding& holding) {
  for (const char* key : {"fixed_jaw", "parallels"})
    refuse_key(hold, machine, key);
  need(hold, machine, "away");
  holding.in = clamps;
  holding.away = hold.word("away", kFaces).value_or(part::Face::kBack);
  const auto packing = hold.number("packing", quantity::Kind::kLength);
  if (!packing) return;
  if (packing->base < 0.0)
    hold.problems().add(text::failure_at(*hold.node().find("packing"), Code::kValueNotAccepted,
                                         packing->typed,
                                         "how high the work lies above the table: 0 or more"));
  holding.under = {packing->length(), {}, packing->typed};
}

void read_in_vise(const TableReader& hold, const shop::Machine& machine, const shop::Shop& shop,
                  route::Holding& holding) {
  for (const char* key : {"fixed_jaw", "parallels"})
    need(hold, machine, key);
  for (const char* key : {"away", "packing"})
    refuse_key(hold, machine, key);
  holding.away = hold.word("fixed_jaw", kFaces).value_or(part::Face::kBack);
  const auto name = hold.text("in");
  if (!name) return;
  if (const shop::Vise* vise = shop::find_vise(shop, *name)) {
    holding.in = *vise;
    return read_parallels(hold, *vise, holding);
  }
  std::vector<std::string> known = names_of(shop.vises);
  for (const shop::Holder& holder : shop.holders) {
    if (holder.kind == shop::HolderKind::kClamps) known.push_back(holder.name);
  }
  refuse(hold, *hold.node().find("in"), Code::kNotInTheShop, "vise or clamps", known);
}

route::OnMill read_on_mill(const TableReader& in, const TableReader& hold, const shop::Shop& shop,
                           const shop::Machine& machine) {
  route::OnMill on;
  need(hold, machine, "sits_on");
  for (const char* key : {"free_end", "on", "gripped", "tail", "up"})
    refuse_key(hold, machine, key);
  refuse_key(in, machine, "compound");
  need(in, machine, "pick_up");
  on.holding.sits_on = hold.word("sits_on", kFaces).value_or(part::Face::kUnderside);
  const auto name = hold.text("in");
  const shop::Holder* clamps = name ? find_clamps(shop, *name) : nullptr;
  if (clamps != nullptr)
    read_on_table(hold, machine, *clamps, on.holding);
  else
    read_in_vise(hold, machine, shop, on.holding);
  const auto orientation = route::orientation_of(on.holding);
  if (!orientation) {
    const auto away = hold.node().find(clamps != nullptr ? "away" : "fixed_jaw");
    in.problems().add(text::located(orientation.error(), away ? *away : hold.node()));
  }
  read_pick_up(in, shop, on);
  return on;
}

route::OnLathe read_on_lathe(const TableReader& in, const TableReader& hold, const shop::Shop& shop,
                             const shop::Machine& machine, const Names& names) {
  route::OnLathe on;
  need(hold, machine, "free_end");
  for (const char* key : {"sits_on", "fixed_jaw", "parallels", "away", "packing", "up"})
    refuse_key(hold, machine, key);
  refuse_key(in, machine, "pick_up");
  if (const auto holder = from_shop(hold, "in", "holding device", shop.holders)) {
    on.holder = *holder;
    if (!shop::turns_work(holder->kind))
      in.problems().add(text::failure_at(*hold.node().find("in"), Code::kValueNotAccepted, holder->name,
                                         "a chuck, a collet, centres, a mandrel or a faceplate"));
  }
  on.free_end = hold.word("free_end", kFaces).value_or(part::Face::kRightEnd);
  if (part::axis_of(on.free_end) != part::Axis::kX)
    in.problems().add(text::failure_at(*hold.node().find("free_end"), Code::kValueNotAccepted,
                                       part::name_of(on.free_end), "left end or right end"));
  on.on = hold.text("on").value_or("");
  if (!on.on.empty() &&
      std::find(names.features.begin(), names.features.end(), on.on) == names.features.end())
    refuse(in, *hold.node().find("on"), Code::kNotInTheJob, "feature", names.features);
  if (const auto gripped = hold.number("gripped", quantity::Kind::kLength)) on.gripped = gripped->length();
  on.tail = hold.word("tail", kTails).value_or(route::TailSupport::kNone);
  if (const auto angle = in.number("compound", quantity::Kind::kAngle))
    on.compound = quantity::Angle::from_base(angle->base);
  return on;
}

route::ByMarks read_by_marks(const TableReader& in, const TableReader& hold, const shop::Shop& shop,
                             const shop::Machine& machine) {
  route::ByMarks by;
  need(hold, machine, "up");
  for (const char* key :
       {"sits_on", "fixed_jaw", "parallels", "away", "packing", "free_end", "on", "gripped", "tail"})
    refuse_key(hold, machine, key);
  for (const char* key : {"pick_up", "compound"})
    refuse_key(in, machine, key);
  by.up = hold.word("up", kFaces).value_or(part::Face::kTop);
  const auto name = hold.text("in");
  if (const shop::Vise* vise = name ? shop::find_vise(shop, *name) : nullptr) {
    by.in = *vise;
  } else if (const auto holder = from_shop(hold, "in", "holding device", shop.holders)) {
    by.in = *holder;
    if (shop::turns_work(holder->kind))
      in.problems().add(text::failure_at(*hold.node().find("in"), Code::kValueNotAccepted, holder->name,
                                         "a vise, clamps or V-blocks"));
  }
  return by;
}

route::Held read_held(const TableReader& in, const shop::Shop& shop, const shop::Machine& machine,
                      const Names& names) {
  const auto hold = in.table("hold");
  if (!hold) return {};
  if (shop::is_mill(machine.kind)) return read_on_mill(in, *hold, shop, machine);
  if (machine.kind == shop::MachineKind::kLathe) return read_on_lathe(in, *hold, shop, machine, names);
  return read_by_marks(in, *hold, shop, machine);
}

}  // namespace

route::Plan read_plan(const TableReader& job, const shop::Shop& shop, const Names& names) {
  route::Plan plan;
  for (const TableReader& in : job.tables("setup")) {
    route::Setup setup;
    setup.op = static_cast<int>(std::clamp<std::int64_t>(in.whole("op").value_or(0), 0, 100000));
    setup.name = in.text("name").value_or("");
    setup.done_before = in.text("done_before").value_or("");
    if (const auto machine = from_shop(in, "machine", "machine", shop.machines)) {
      setup.machine = *machine;
      if (!machine->out_of_use.empty()) {
        in.problems().add(
            text::failure_at(*in.node().find("machine"), Code::kValueNotAccepted, machine->name,
                             fmt::format("a machine in use; this one is not: {}", machine->out_of_use)));
      }
    }
    setup.held = read_held(in, shop, setup.machine, names);
    read_works(in, shop, names, setup);
    for (const TableReader& made : in.tables("do")) {
      const auto feature = made.node().find("make");
      const bool earlier =
          feature && std::any_of(plan.setups.begin(), plan.setups.end(), [&](const route::Setup& other) {
            return makes(other, features_made(std::string(feature->typed()), names).front());
          });
      if (earlier) refuse_twice(in, *feature, "feature made", "each feature once, in one setup");
    }
    const bool twice = std::any_of(plan.setups.begin(), plan.setups.end(),
                                   [&](const route::Setup& other) { return other.op == setup.op; });
    if (twice) {
      auto failure = text::failure_at(*in.node().find("op"), Code::kNameTwice, fmt::format("{}", setup.op),
                                      "numbers of their own: 10, 20, 30");
      failure.subject = "op";
      job.problems().add(std::move(failure));
    }
    plan.setups.push_back(std::move(setup));
  }
  return plan;
}

}  // namespace sparewright::job
