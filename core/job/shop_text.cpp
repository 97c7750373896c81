// Reading a shop text.
#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/job/gearing_text.hpp"
#include "core/job/instrument_text.hpp"
#include "core/job/job.hpp"
#include "core/job/parallels.hpp"
#include "core/job/shapes.hpp"
#include "core/job/stock_text.hpp"
#include "core/job/vocabulary.hpp"
#include "core/survey/check.hpp"
#include "core/text/reading.hpp"
#include "core/text/validate.hpp"

namespace sparewright::job {
namespace {

using quantity::Kind;
using quantity::Length;
using text::TableReader;

std::optional<Length> length(const TableReader& in, std::string_view key) {
  const auto typed = in.number(key, Kind::kLength);
  if (!typed) return std::nullopt;
  return typed->length();
}

// A size that has to be more than zero.
Length positive(const TableReader& in, std::string_view key) {
  const auto typed = in.number(key, Kind::kLength);
  if (!typed) return {};
  if (typed->base <= 0.0) {
    in.problems().add(text::failure_at(*in.node().find(key), base::Code::kSizeNotPositive, typed->typed));
  }
  return typed->length();
}

std::optional<shop::Collar> read_collar(const std::optional<TableReader>& in) {
  if (!in) return std::nullopt;
  shop::Collar collar;
  collar.per_turn = positive(*in, "turn");
  if (const auto divisions = in->whole("divisions")) {
    constexpr std::int64_t kMostDivisions = 10000;
    if (*divisions < 1 || *divisions > kMostDivisions) {
      in->problems().add(text::failure_at(*in->node().find("divisions"), base::Code::kValueNotAccepted,
                                          fmt::format("{}", *divisions), "a whole number from 1 to 10000"));
    } else {
      collar.divisions = static_cast<int>(*divisions);
    }
  }
  collar.reads = in->word("reads", kReads).value_or(shop::CollarReads::kTravel);
  collar.numbers_rise = in->word("numbers_rise", kTurnings).value_or(shop::Turning::kClockwise);
  collar.clockwise_moves_work = in->word("clockwise_moves_work", kMoves).value_or(shop::WorkMoves::kLeft);
  collar.clockwise_moves_tool = in->word("clockwise_moves_tool", kToolMoves).value_or(shop::ToolMoves::kIn);
  collar.slack = length(*in, "slack").value_or(Length{});
  const auto repeats = length(*in, "repeats");
  collar.repeats_given = repeats.has_value();
  collar.repeats = repeats.value_or(collar.divisions > 0 ? collar.division() : Length{});
  return collar;
}

// Which way the work can move along an axis.
bool suits(std::string_view axis, shop::WorkMoves moves) {
  switch (moves) {
    case shop::WorkMoves::kLeft:
    case shop::WorkMoves::kRight:
      return axis == "x";
    case shop::WorkMoves::kAway:
    case shop::WorkMoves::kTowards:
      return axis == "y";
    case shop::WorkMoves::kUp:
    case shop::WorkMoves::kDown:
      return axis == "z";
  }
  return false;
}

// Which way the tool can go on a wheel of a lathe or a drill press.
bool suits(std::string_view wheel, shop::ToolMoves moves) {
  const bool across = moves == shop::ToolMoves::kIn || moves == shop::ToolMoves::kOut;
  const bool down = moves == shop::ToolMoves::kDown || moves == shop::ToolMoves::kUp;
  if (wheel == "cross_slide") return across;
  if (wheel == "quill") return down;
  if (wheel == "compound") return !down;
  return !across && !down;
}

struct Wheel {
  const char* key;
  const char* name;
  bool on_mill;
  const char* moves;
};
constexpr std::array kWheels{Wheel{"x", "x", true, "left or right"},
                             Wheel{"y", "y", true, "away or towards"},
                             Wheel{"z", "z", true, "up or down"},
                             Wheel{"cross_slide", "cross slide", false, "in or out"},
                             Wheel{"compound", "compound", false, "in, out, to headstock or from headstock"},
                             Wheel{"carriage", "carriage", false, "to headstock or from headstock"},
                             Wheel{"tailstock", "tailstock", false, "to headstock or from headstock"},
                             Wheel{"quill", "quill", false, "down or up"}};

void read_collars(const TableReader& in, shop::Machine& machine) {
  const auto collars = in.table("collar");
  if (!collars) return;
  for (const Wheel& wheel : kWheels) {
    const auto table = collars->table(wheel.key);
    const auto collar = read_collar(table);
    if (!collar) continue;
    const char* key = wheel.on_mill ? "clockwise_moves_work" : "clockwise_moves_tool";
    const auto node = table->node().find(key);
    const bool suited = wheel.on_mill ? suits(wheel.key, collar->clockwise_moves_work)
                                      : suits(wheel.key, collar->clockwise_moves_tool);
    if (!node || !suited) {
      in.problems().add(text::failure_at(node ? *node : table->node(), base::Code::kValueNotAccepted,
                                         node ? node->typed() : "", fmt::format("{}: {}", key, wheel.moves)));
    }
    if (collar->divisions > 0) machine.collars[wheel.name] = *collar;
  }
}

// What a machine of that kind cannot do without.
void refuse_without(const TableReader& in, const shop::Machine& machine) {
  const auto want = [&](bool there, const char* what) {
    if (!there)
      in.problems().add(text::failure_at(in.node(), base::Code::kKeyMissing, what,
                                         fmt::format("a {} has it", shop::name_of(machine.kind))));
  };
  const bool has_spindle =
      machine.kind != shop::MachineKind::kSaw && machine.kind != shop::MachineKind::kBench;
  if (has_spindle) want(!machine.speeds_rpm.empty(), "speeds");
  if (shop::is_mill(machine.kind) || machine.kind == shop::MachineKind::kLathe)
    want(in.node().find("collar").has_value(), "collar");
}

shop::Machine read_machine(const TableReader& in) {
  shop::Machine machine;
  machine.name = in.text("name").value_or("");
  machine.kind = in.word("kind", kMachines).value_or(shop::MachineKind::kVerticalMill);
  for (const quantity::Typed& speed : in.numbers("speeds", Kind::kRotationalSpeed)) {
    const double rpm = quantity::unit::rpm.from_base(speed.base);
    if (rpm <= 0.0) {
      in.problems().add(
          text::failure_at(*in.node().find("speeds"), base::Code::kSizeNotPositive, speed.typed));
    }
    machine.speeds_rpm.push_back(rpm);
  }
  std::sort(machine.speeds_rpm.begin(), machine.speeds_rpm.end());
  if (const auto power = in.number("power", Kind::kPower))
    machine.power = quantity::Power::from_base(power->base);
  machine.quiet_cut = length(in, "quiet_cut");
  if (const auto travel = in.table("travel")) {
    machine.travel = {length(*travel, "x"), length(*travel, "y"), length(*travel, "z"),
                      length(*travel, "quill")};
  }
  read_collars(in, machine);
  if (const auto tram = in.table("head_tram")) {
    machine.head_tram = length(*tram, "out");
    machine.tram_sweep = length(*tram, "over");
  }
  machine.lathe = {length(in, "swing"),
                   length(in, "swing_over_slide"),
                   length(in, "between_centres"),
                   length(in, "spindle_bore"),
                   std::nullopt,
                   std::nullopt};
  if (const auto tapers = in.table("tapers")) {
    machine.lathe.tapers = length(*tapers, "by");
    machine.lathe.tapers_over = length(*tapers, "over");
  }
  machine.throat = length(in, "throat");
  refuse_without(in, machine);
  machine.jaw_lift = length(in, "jaw_lift");
  machine.out_of_use = in.text("out_of_use").value_or("");
  return machine;
}

shop::Vise read_vise(const TableReader& in) {
  shop::Vise vise;
  vise.name = in.text("name").value_or("");
  if (const auto jaws = in.table("jaws")) {
    vise.jaw_width = positive(*jaws, "width");
    vise.jaw_depth = positive(*jaws, "depth");
    vise.opens = positive(*jaws, "opens");
  }
  const auto system = in.system();
  vise.parallels =
      in.values("parallels", [system](const text::Node& node) { return read_parallel(node, system); });
  return vise;
}

shop::Holder read_holder(const TableReader& in) {
  shop::Holder holder;
  holder.name = in.text("name").value_or("");
  holder.kind = in.word("kind", kHolders).value_or(shop::HolderKind::kThreeJawChuck);
  if (const auto grips = in.table("grips")) {
    holder.grips_from = length(*grips, "from");
    holder.grips_to = length(*grips, "to");
  }
  holder.jaws = length(in, "jaws");
  holder.runs_out = length(in, "runs_out");
  if (const auto most = in.number("most_rpm", Kind::kRotationalSpeed))
    holder.most_rpm = quantity::unit::rpm.from_base(most->base);
  return holder;
}

// A tool's diameter may be a drill designation, which the handbook knows.
std::optional<quantity::Typed> tool_diameter(const TableReader& in, std::string_view key) {
  const auto size = in.size(key, Kind::kDiameter);
  if (!size) return std::nullopt;
  if (const auto* typed = std::get_if<quantity::Typed>(&*size)) return *typed;
  return drill_size(in, key, std::get<quantity::Designation>(*size));
}

shop::Tool read_tool(const TableReader& in) {
  shop::Tool tool;
  tool.name = in.text("name").value_or("");
  tool.kind = in.word("kind", kTools).value_or(shop::ToolKind::kTwistDrill);
  tool.material = in.word("material", kToolMaterials).value_or(handbook::ToolMaterial::kHighSpeedSteel);
  tool.diameter = tool_diameter(in, "diameter");
  if (const auto measured = in.number("measured", Kind::kDiameter)) {
    tool.diameter = measured;
    tool.diameter_measured = true;
  }
  if (tool.diameter && tool.diameter->base <= 0.0) {
    in.problems().add(text::failure_at(*in.node().find(tool.diameter_measured ? "measured" : "diameter"),
                                       base::Code::kSizeNotPositive, tool.diameter->typed));
  }
  tool.reach = length(in, "reach");
  tool.pilot = length(in, "pilot");
  tool.bar = length(in, "bar");
  tool.least_bore = length(in, "least_bore");
  if (in.node().find("division")) tool.division = positive(in, "division");
  tool.reads_diameter =
      in.word("reads", kReads).value_or(shop::CollarReads::kDiameter) == shop::CollarReads::kDiameter;
  tool.thread = in.text("thread").value_or("");
  tool.flutes = static_cast<int>(std::clamp<std::int64_t>(in.whole("flutes").value_or(0), 0, 100));
  tool.good_to = length(in, "good_to");
  tool.nose_radius = length(in, "nose_radius");
  if (in.node().find("width")) tool.width = positive(in, "width");
  if (in.node().find("pitch")) tool.pitch = positive(in, "pitch");
  if (const auto angle = in.number("angle", Kind::kAngle))
    tool.angle = quantity::Angle::from_base(angle->base);
  return tool;
}

void refuse_doubles(const TableReader& in, std::string_view list) {
  std::vector<std::string> seen;
  for (const TableReader& item : in.tables(list)) {
    const auto name = item.node().find("name");
    if (!name) continue;
    std::string typed(name->typed());
    if (std::find(seen.begin(), seen.end(), typed) != seen.end()) {
      base::Failure failure;
      failure.code = base::Code::kNameTwice;
      failure.subject = list;
      failure.found = typed;
      failure.accepted = "names of their own";
      failure.place = name->place();
      in.problems().add(std::move(failure));
    }
    seen.push_back(std::move(typed));
  }
}

// What measuring up asks of instruments, told at the place in the shop text. Names there twice are told already.
void refuse_unusable(const TableReader& in, const std::vector<survey::Instrument>& instruments) {
  survey::Survey alone;
  alone.instruments = instruments;
  const auto tables = in.tables("instrument");
  for (const survey::Trouble& trouble : survey::troubles(alone)) {
    if (trouble.in != survey::Trouble::In::kInstrument || trouble.failure.code == base::Code::kNameTwice)
      continue;
    const text::Node& table = tables[trouble.index].node();
    const auto value = table.find(trouble.field);
    in.problems().add(text::located(trouble.failure, value ? *value : table));
  }
}

}  // namespace

base::ResultOrAll<ShopText> read_shop(const text::Document& document) {
  text::Problems problems;
  problems.add(text::validate(document, shop_shape()));
  if (!problems.empty()) return tl::unexpected(problems.sorted());
  const auto units = TableReader(*document.root().find("shop"), std::nullopt, problems).word("units", kUnits);
  const TableReader in(document.root(), units, problems);
  ShopText shop;
  shop.shop.units = units.value_or(quantity::UnitSystem::kInch);
  shop.shop.title = in.table("shop")->text("title").value_or("");
  for (const TableReader& machine : in.tables("machine"))
    shop.shop.machines.push_back(read_machine(machine));
  for (const TableReader& holding : in.tables("holding")) {
    if (holding.text("kind") == "vise")
      shop.shop.vises.push_back(read_vise(holding));
    else
      shop.shop.holders.push_back(read_holder(holding));
  }
  const auto warmth = read_warmth(*in.table("shop"));
  for (const TableReader& instrument : in.tables("instrument"))
    shop.instruments.push_back(read_instrument(instrument, warmth));
  for (const TableReader& tool : in.tables("tool"))
    shop.shop.tools.push_back(read_tool(tool));
  for (const TableReader& gears : in.tables("change_gears"))
    shop.shop.change_gears.push_back(read_change_gears(gears));
  for (const TableReader& head : in.tables("dividing_head"))
    shop.shop.indexing_heads.push_back(read_dividing_head(head));
  shop.shop.stock = read_stock(in);
  shop.shop.gauge_blocks = read_gauge_blocks(*in.table("shop"));
  for (const char* list :
       {"machine", "holding", "instrument", "tool", "stock", "change_gears", "dividing_head"})
    refuse_doubles(in, list);
  if (problems.empty()) refuse_unusable(in, shop.instruments);
  return problems.unless_any(std::move(shop));
}

}  // namespace sparewright::job
