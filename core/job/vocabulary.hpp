// The words of job and shop texts and what they stand for. Used inside this room only.
#pragma once

#include "core/base/words.hpp"
#include "core/intent/machine.hpp"
#include "core/part/blank.hpp"
#include "core/part/face.hpp"
#include "core/part/feature.hpp"
#include "core/route/plan.hpp"
#include "core/shop/shop.hpp"
#include "core/survey/reading.hpp"
#include "core/survey/ways.hpp"
#include "core/text/words.hpp"

namespace sparewright::job {

using text::Meaning;

inline constexpr std::array kUnits{Meaning{"in", quantity::UnitSystem::kInch, "inches"},
                                   Meaning{"mm", quantity::UnitSystem::kMetric, "millimetres"}};

inline constexpr std::array kDialects{
    Meaning{"American", base::Dialect::kAmerican, "vise, bushing, compound"},
    Meaning{"British", base::Dialect::kBritish, "vice, bush, top slide"}};

inline constexpr std::array kProjections{Meaning{"third angle", false, "the view from above stands above"},
                                         Meaning{"first angle", true, "the view from above stands below"}};

inline constexpr std::array kCountries{
    Meaning{"America", intent::Country::kAmerica, "inch sizes"},
    Meaning{"Britain", intent::Country::kBritain, "inch sizes up to about 1968"},
    Meaning{"the Continent", intent::Country::kContinent, "of Europe: metric sizes"},
    Meaning{"Asia", intent::Country::kAsia, "metric sizes, inch for export"}};

inline constexpr std::array kFaces{Meaning{"left end", part::Face::kLeftEnd, "where x starts"},
                                   Meaning{"right end", part::Face::kRightEnd, ""},
                                   Meaning{"front", part::Face::kFront, "where y starts"},
                                   Meaning{"back", part::Face::kBack, ""},
                                   Meaning{"underside", part::Face::kUnderside, "where z starts"},
                                   Meaning{"top", part::Face::kTop, ""}};

inline constexpr std::array kAxes{Meaning{"x", part::Axis::kX, "left end to right end"},
                                  Meaning{"y", part::Axis::kY, "front to back"},
                                  Meaning{"z", part::Axis::kZ, "underside to top"}};

inline constexpr std::array kDuties{Meaning{"fits", part::Duty::kFits, "goes on or in something"},
                                    Meaning{"locates", part::Duty::kLocates, "puts something in its place"},
                                    Meaning{"clears", part::Duty::kClears, "must only not touch"},
                                    Meaning{"free", part::Duty::kFree, "takes the general tolerance"}};

inline constexpr std::array kBlanks{
    Meaning{"flat bar", part::BlankShape::kFlatBar, "sold by thickness and width"},
    Meaning{"block", part::BlankShape::kBlock, "cut to size, no mill limits"},
    Meaning{"plate", part::BlankShape::kPlate, "cut from plate, no mill limits known"},
    Meaning{"square bar", part::BlankShape::kSquareBar, "lies along x"},
    Meaning{"round bar", part::BlankShape::kRoundBar, "lies along x"},
    Meaning{"hex bar", part::BlankShape::kHexBar, "lies along x, a flat up"},
    Meaning{"tube", part::BlankShape::kTube, "lies along x"},
    Meaning{"casting", part::BlankShape::kCasting,
            "by its overall sizes, with its rough faces and cored holes"}};

inline constexpr std::array kMakes{
    Meaning{"drilled", part::HoleMake::kDrilled, "with a twist drill"},
    Meaning{"bored", part::HoleMake::kBored, "with a boring head"},
    Meaning{"reamed", part::HoleMake::kReamed, "drilled, then reamed"},
    Meaning{"tapped", part::HoleMake::kTapped, "drilled, then tapped"},
    Meaning{"counterbored", part::HoleMake::kCounterbored, "for a screw's head"},
    Meaning{"spotfaced", part::HoleMake::kSpotfaced, "drilled, with a flat seat for a head or a nut"},
    Meaning{"countersunk", part::HoleMake::kCountersunk, "drilled, with a cone for a screw's head"},
    Meaning{"screw through and tapped", part::HoleMake::kThroughAndTapped,
            "clearance for the screw up to a slit or a split, tapped beyond it"}};

inline constexpr std::array kPlacedBy{
    Meaning{"coordinates", part::PlacedBy::kCoordinates, "dialled"},
    Meaning{"the mate", part::PlacedBy::kMate, "spotted through the holes of the mate"},
    Meaning{"drilled together", part::PlacedBy::kDrilledTogether, "with the mate, clamped as they go"},
    Meaning{"dowelled after lining up", part::PlacedBy::kDowelled,
            "drilled and reamed when all else is in place"}};

inline constexpr std::array kHeads{
    Meaning{"flush or below", part::HeadStands::kFlushOrBelow, "nothing stands out"},
    Meaning{"proud", part::HeadStands::kProud, "the head may stand out"}};

inline constexpr auto kWays = [] {
  std::array<Meaning<survey::Way>, survey::kWayRows.size()> words{};
  for (std::size_t i = 0; i < words.size(); ++i)
    words.at(i) = {survey::kWayRows.at(i).key, survey::kWayRows.at(i).way, survey::kWayRows.at(i).of};
  return words;
}();

inline constexpr std::array kTrials{Meaning{"goes", survey::Trial::kGoes, "freely"},
                                    Meaning{"goes with a push", survey::Trial::kGoesWithAPush,
                                            "the size itself, as near as the plug is known"},
                                    Meaning{"will not go", survey::Trial::kWillNotGo, ""}};

inline constexpr std::array kConditions{Meaning{"sound", survey::Condition::kSound, ""},
                                        Meaning{"worn", survey::Condition::kWorn, "a bound, not a size"},
                                        Meaning{"bent", survey::Condition::kBent, ""},
                                        Meaning{"across a break", survey::Condition::kAcrossABreak, ""}};

inline constexpr std::array kJaws{Meaning{"outside", survey::Jaws::kOutside, ""},
                                  Meaning{"inside", survey::Jaws::kInside, ""},
                                  Meaning{"depth", survey::Jaws::kDepth, ""}};

inline constexpr std::array kKinds{
    Meaning{"length", quantity::Kind::kLength, ""}, Meaning{"diameter", quantity::Kind::kDiameter, ""},
    Meaning{"radius", quantity::Kind::kRadius, ""}, Meaning{"angle", quantity::Kind::kAngle, ""}};

inline constexpr std::array kMachines{
    Meaning{"vertical mill", shop::MachineKind::kVerticalMill, "its table or its knee rises"},
    Meaning{"mill-drill", shop::MachineKind::kMillDrill,
            "a round column: its head loses its place when it is raised"},
    Meaning{"lathe", shop::MachineKind::kLathe, ""},
    Meaning{"drill press", shop::MachineKind::kDrillPress, ""},
    Meaning{"saw", shop::MachineKind::kSaw, "a bandsaw or a power hacksaw"},
    Meaning{"bench", shop::MachineKind::kBench, "files, hand taps, a press"}};

inline constexpr std::array kHolders{Meaning{"three-jaw chuck", shop::HolderKind::kThreeJawChuck, ""},
                                     Meaning{"four-jaw chuck", shop::HolderKind::kFourJawChuck, ""},
                                     Meaning{"collet", shop::HolderKind::kCollet, ""},
                                     Meaning{"centres", shop::HolderKind::kCentres, ""},
                                     Meaning{"mandrel", shop::HolderKind::kMandrel, ""},
                                     Meaning{"faceplate", shop::HolderKind::kFaceplate, ""},
                                     Meaning{"bench vise", shop::HolderKind::kBenchVise, ""},
                                     Meaning{"clamps", shop::HolderKind::kClamps, ""},
                                     Meaning{"V-blocks", shop::HolderKind::kVBlocks, ""}};

inline constexpr std::array kTails{
    Meaning{"live centre", route::TailSupport::kLiveCentre, "turns with the work"},
    Meaning{"dead centre", route::TailSupport::kDeadCentre, "stands still: grease it"},
    Meaning{"steady", route::TailSupport::kSteady, "on a turned place near the free end"}};

inline constexpr std::array kToolMoves{Meaning{"in", shop::ToolMoves::kIn, "towards the axis of the work"},
                                       Meaning{"out", shop::ToolMoves::kOut, ""},
                                       Meaning{"to headstock", shop::ToolMoves::kToHeadstock, ""},
                                       Meaning{"from headstock", shop::ToolMoves::kFromHeadstock, ""},
                                       Meaning{"down", shop::ToolMoves::kDown, ""},
                                       Meaning{"up", shop::ToolMoves::kUp, ""}};

inline constexpr std::array kReads{
    Meaning{"travel", shop::CollarReads::kTravel, "what the slide moves"},
    Meaning{"diameter", shop::CollarReads::kDiameter, "twice what the slide moves"}};

inline constexpr std::array kShows{Meaning{"the size", survey::Shows::kTheSize, ""},
                                   Meaning{"half of it", survey::Shows::kHalfOfIt, "a radius for a diameter"},
                                   Meaning{"twice it", survey::Shows::kTwiceIt, ""}};

inline constexpr std::array kTurnings{Meaning{"clockwise", shop::Turning::kClockwise, ""},
                                      Meaning{"counterclockwise", shop::Turning::kCounterclockwise, ""}};

inline constexpr std::array kMoves{Meaning{"left", shop::WorkMoves::kLeft, ""},
                                   Meaning{"right", shop::WorkMoves::kRight, ""},
                                   Meaning{"away", shop::WorkMoves::kAway, ""},
                                   Meaning{"towards", shop::WorkMoves::kTowards, "towards the operator"},
                                   Meaning{"up", shop::WorkMoves::kUp, ""},
                                   Meaning{"down", shop::WorkMoves::kDown, ""}};

inline constexpr std::array kTools{
    Meaning{"spot drill", shop::ToolKind::kSpotDrill, ""},
    Meaning{"twist drill", shop::ToolKind::kTwistDrill, ""},
    Meaning{"reamer", shop::ToolKind::kReamer, ""},
    Meaning{"tap", shop::ToolKind::kTap, ""},
    Meaning{"counterbore", shop::ToolKind::kCounterbore, ""},
    Meaning{"end mill", shop::ToolKind::kEndMill, ""},
    Meaning{"boring head", shop::ToolKind::kBoringHead, ""},
    Meaning{"edge finder", shop::ToolKind::kEdgeFinder, ""},
    Meaning{"turning tool", shop::ToolKind::kTurningTool, "turns and faces"},
    Meaning{"boring bar", shop::ToolKind::kBoringBar, "in the lathe"},
    Meaning{"parting tool", shop::ToolKind::kPartingTool, ""},
    Meaning{"grooving tool", shop::ToolKind::kGroovingTool, ""},
    Meaning{"threading tool", shop::ToolKind::kThreadingTool, "single point"},
    Meaning{"centre drill", shop::ToolKind::kCentreDrill, ""},
    Meaning{"knurling tool", shop::ToolKind::kKnurlingTool, ""},
    Meaning{"die", shop::ToolKind::kDie, ""},
    Meaning{"countersink", shop::ToolKind::kCountersink, "chamfers holes too"},
    Meaning{"slitting saw", shop::ToolKind::kSlittingSaw, "on an arbor in the mill"},
    Meaning{"saw blade", shop::ToolKind::kSawBlade, "of a bandsaw or a hacksaw"},
    Meaning{"file", shop::ToolKind::kFile, ""},
    Meaning{"press", shop::ToolKind::kPress, "an arbor press, or the vise used as one"},
    Meaning{"deburring tool", shop::ToolKind::kDeburringTool, "a scraper, a swivel blade"}};

inline constexpr std::array kToolMaterials{
    Meaning{"high-speed steel", handbook::ToolMaterial::kHighSpeedSteel, "also said HSS"},
    Meaning{"carbide", handbook::ToolMaterial::kCarbide, ""}};

}  // namespace sparewright::job
