// What this shop has: machines as they stand, tools as measured, holding devices, instruments.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/hash.hpp"
#include "core/handbook/change_gears.hpp"
#include "core/handbook/index_plates.hpp"
#include "core/handbook/work.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/typed.hpp"
#include "core/shop/collar.hpp"
#include "core/shop/stock.hpp"

namespace sparewright::shop {

enum class MachineKind { kVerticalMill, kMillDrill, kLathe, kDrillPress, kSaw, kBench };
[[nodiscard]] std::string_view name_of(MachineKind kind);
[[nodiscard]] bool is_mill(MachineKind kind);     // places are dialled in x and y
[[nodiscard]] bool is_by_hand(MachineKind kind);  // places are marked, not dialled: drill press, saw, bench

struct Travel {
  std::optional<quantity::Length> x;
  std::optional<quantity::Length> y;
  std::optional<quantity::Length> z;
  std::optional<quantity::Length> quill;
};

// What fits on a lathe, and how far its headstock is out.
struct LatheSizes {
  std::optional<quantity::Length> swing;             // diameter over the bed
  std::optional<quantity::Length> swing_over_slide;  // diameter over the cross slide
  std::optional<quantity::Length> between_centres;
  std::optional<quantity::Length> spindle_bore;  // diameter
  std::optional<quantity::Length>
      tapers;  // on diameter, over tapers_over: it turns larger towards the headstock
  std::optional<quantity::Length> tapers_over;
};

// A machine as it stands.
struct Machine {
  std::string name;
  MachineKind kind = MachineKind::kVerticalMill;
  std::vector<double> speeds_rpm;  // rising, more than 0
  std::optional<quantity::Power> power;
  std::optional<quantity::Length> quiet_cut;  // heaviest depth it takes without complaint
  Travel travel;
  // "x", "y", "z" of a mill; "cross slide", "compound", "carriage", "tailstock" of a lathe; "quill" of a drill press
  std::map<std::string, Collar> collars;
  LatheSizes lathe;
  std::optional<quantity::Length> throat;     // of a drill press or a saw: spindle or blade to column
  std::optional<quantity::Length> head_tram;  // out of square, over tram_sweep
  std::optional<quantity::Length> tram_sweep;
  std::optional<quantity::Length> jaw_lift;
  std::string out_of_use;  // why, or empty
};

struct Parallel {
  quantity::Length height;
  quantity::Length thickness;
  std::string typed;
};

struct Vise {
  std::string name;
  quantity::Length jaw_width;
  quantity::Length jaw_depth;
  quantity::Length opens;
  std::vector<Parallel> parallels;
};

// What holds round work, and what holds work on a table or a bench without being dialled.
enum class HolderKind {
  kThreeJawChuck,
  kFourJawChuck,
  kCollet,
  kCentres,  // a centre in the spindle and a dog
  kMandrel,
  kFaceplate,
  kBenchVise,
  kClamps,
  kVBlocks,
};
[[nodiscard]] std::string_view name_of(HolderKind kind);
[[nodiscard]] bool turns_work(HolderKind kind);  // goes on a lathe

struct Holder {
  std::string name;
  HolderKind kind = HolderKind::kThreeJawChuck;
  std::optional<quantity::Length> grips_from;  // least and greatest diameter or thickness it takes
  std::optional<quantity::Length> grips_to;
  std::optional<quantity::Length> jaws;      // how far they reach along the work
  std::optional<quantity::Length> runs_out;  // swing of the indicator on work gripped in it
  std::optional<double> most_rpm;
};

enum class ToolKind {
  kSpotDrill,
  kTwistDrill,
  kReamer,
  kTap,
  kCounterbore,
  kEndMill,
  kBoringHead,
  kEdgeFinder,
  kTurningTool,
  kBoringBar,
  kPartingTool,
  kGroovingTool,
  kThreadingTool,
  kCentreDrill,
  kKnurlingTool,
  kDie,
  kCountersink,
  kSlittingSaw,
  kSawBlade,
  kFile,
  kPress,
  kDeburringTool,
};
[[nodiscard]] std::string_view name_of(ToolKind kind);

// A tool as measured: a reground cutter is not its nominal.
struct Tool {
  std::string name;
  ToolKind kind = ToolKind::kTwistDrill;
  handbook::ToolMaterial material = handbook::ToolMaterial::kHighSpeedSteel;
  std::optional<quantity::Typed> diameter;  // as measured where it was; the tip for an edge finder
  bool diameter_measured = false;
  std::optional<quantity::Length> reach;        // how deep it can go: flutes, bar
  std::optional<quantity::Length> pilot;        // of a counterbore
  std::optional<quantity::Length> bar;          // of a boring head
  std::optional<quantity::Length> least_bore;   // of a boring head
  std::optional<quantity::Length> division;     // of a boring head's screw
  bool reads_diameter = true;                   // of a boring head's screw
  std::string thread;                           // of a tap
  int flutes = 0;                               // of an end mill; 0 where not said
  std::optional<quantity::Length> good_to;      // of an edge finder
  std::optional<quantity::Length> nose_radius;  // of a turning tool or a boring bar
  std::optional<quantity::Length>
      width;  // of a parting or grooving tool, of a slitting saw, of a blade's cut
  std::optional<quantity::Length> pitch;  // of a knurling tool's wheels
  std::optional<quantity::Angle>
      angle;  // included, of the point of a countersink, a spot drill or a twist drill
};

// The change gears of a lathe, as they are in the box.
struct ChangeGearBox {
  std::string name;  // of the lathe
  handbook::LatheGearing gearing;
};

// A dividing head or rotary table with its plates.
struct IndexingHead {
  std::string name;
  handbook::DividingHead head;
};

// The shop. Names are unique within each list; the job room sees to it.
struct Shop {
  std::string title;
  quantity::UnitSystem units = quantity::UnitSystem::kInch;
  std::vector<Machine> machines;
  std::vector<Vise> vises;
  std::vector<Holder> holders;
  std::vector<Tool> tools;
  std::vector<ChangeGearBox> change_gears;
  std::vector<IndexingHead> indexing_heads;
  std::vector<Stock> stock;
  std::string gauge_blocks;  // the set, as the handbook names it; empty where none is said
};

[[nodiscard]] const Machine* find_machine(const Shop& shop, std::string_view name);
[[nodiscard]] const Vise* find_vise(const Shop& shop, std::string_view name);
[[nodiscard]] const Tool* find_tool(const Shop& shop, std::string_view name);

[[nodiscard]] base::Fingerprint fingerprint(const Machine& machine);
[[nodiscard]] base::Fingerprint fingerprint(const Vise& vise);
[[nodiscard]] base::Fingerprint fingerprint(const Holder& holder);
[[nodiscard]] base::Fingerprint fingerprint(const Tool& tool);

}  // namespace sparewright::shop
