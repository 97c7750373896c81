#include "core/answers/groups.hpp"
#include "core/answers/quick.hpp"

namespace sparewright::answers {

namespace {

std::vector<Subject> settings() {
  return {
      {"bend",
       "how far slender work gives under the tool, and whether it wants a rest",
       "",
       "--diameter \"3/4 in\" --length \"12 in\" --force \"20 lbf\"",
       {{"diameter", "SIZE", "of the bar", true},
        {"length", "LENGTH", "free of the chuck, or between centres", true},
        {"force", "FORCE", "that pushes it away from the tool: 20 lbf, 100 N", true},
        {"held", "WAY", "centres, free or chuck-and-centre; centres where left out"},
        {"material", "MATERIAL", "of the work; steel where left out"},
        {"limit", "SIZE", "it may give"}},
       bend},
      {"deep-hole",
       "a deep or cross hole: diameters deep, pecks, where it comes out",
       "",
       "--drill \"1/8 in\" --depth \"1.5 in\"",
       {{"drill", "SIZE", "diameter", true},
        {"depth", "LENGTH", "of the hole", true},
        {"shaft", "SIZE", "a round it goes across: slope of the start"},
        {"off-centre", "SIZE", "how far off the middle it starts"},
        {"tilt", "ANGLE", "of the drill to the hole wanted; 1 deg where left out"}},
       deep_hole},
      {"surface-speed",
       "surface speed from diameter and turns",
       "",
       "--diameter \"1.25 in\" --rpm 400",
       {{"diameter", "SIZE", "of the work, or of the cutter", true},
        {"rpm", "NUMBER", "turns a minute", true}},
       surface_speed},
      {"pulley",
       "speed by pulleys or toothed wheels, and what another number of teeth changes",
       "",
       "--driver \"2.5 in\" --driven \"5 in\" --rpm 1725",
       {{"driver", "SIZE", "diameter of the driving pulley, where the belt runs"},
        {"driven", "SIZE", "diameter of the driven one"},
        {"driver-teeth", "COUNT", "instead: of the driving wheel"},
        {"driven-teeth", "COUNT", "of the driven wheel"},
        {"rpm", "NUMBER", "turns of the driver"},
        {"pitch", "SIZE", "of a toothed belt: pitch diameters too"},
        {"driver-was", "COUNT", "teeth the driver had before"}},
       pulley},
      {"edge-find",
       "the middle of a round by touching it: how far to move, how often",
       "",
       "--diameter \"1.5 in\" --finder \"0.2 in\" --off \"0.05 in\"",
       {{"diameter", "SIZE", "of the round", true},
        {"finder", "SIZE", "diameter of the finder's tip", true},
        {"off", "SIZE", "how far off the middle the first touch may be", true}},
       edge_find},
      {"steps",
       "equal places on an indexer that only has whole steps",
       "",
       "--divisions 7 --step \"1 deg\" --radius \"1 in\"",
       {{"divisions", "COUNT", "places round a circle", true},
        {"step", "ANGLE", "it can be set to: 1 deg, 0.5 deg", true},
        {"radius", "SIZE", "where it shows: gives the error in length"}},
       steps},
      {"gib",
       "a tapered gib: its taper, what scraping moves it, what to leave on",
       "",
       "--thick \"0.300 in\" --thin \"0.200 in\" --length \"10 in\" --allowance \"0.010 in\"",
       {{"thick", "SIZE", "at the thick end", true},
        {"thin", "SIZE", "at the thin end", true},
        {"length", "LENGTH", "of it", true},
        {"allowance", "SIZE", "of thickness left on for fitting"},
        {"longer", "LENGTH", "left on at the thick end"}},
       gib},
  };
}

std::vector<Subject> shapes() {
  return {
      {"polygon",
       "flats milled on a round: across flats, across corners, how deep",
       "",
       "--sides 6 --flats \"3/4 in\" --round \"0.850 in\"",
       {{"sides", "COUNT", "3 or more", true},
        {"flats", "SIZE", "across flats"},
        {"corners", "SIZE", "instead: across corners"},
        {"round", "SIZE", "diameter it is milled from; across corners where left out"}},
       polygon},
      {"dovetail",
       "a dovetail over or between two pins, and back to its width",
       "",
       "--pin \"1/2 in\" --width \"2 in\" --height \"3/4 in\"",
       {{"pin", "SIZE", "diameter of the two pins", true},
        {"width", "SIZE", "of a slide where it is narrow, of a way where it is wide"},
        {"measured", "SIZE", "instead: over the pins, or between them in a way"},
        {"side", "SIDE", "slide or way; slide where left out"},
        {"angle", "ANGLE", "of the flank to the base; 60 deg where left out"},
        {"height", "SIZE", "of the dovetail: its other width too"}},
       dovetail},
  };
}

std::vector<Subject> loads() {
  return {
      {"cut-force",
       "force, torque and power of a turning cut, as sources differ",
       "",
       "--material 1018 --depth \"0.050 in\" --feed \"0.005 in\" --diameter \"2 in\" --rpm 200",
       {{"depth", "SIZE", "of the cut, on the radius", true},
        {"feed", "SIZE", "a turn", true},
        {"material", "MATERIAL", "of the work; steel where left out"},
        {"diameter", "SIZE", "of the work: gives the torque"},
        {"rpm", "NUMBER", "turns a minute: gives the power"}},
       cut_force},
      {"drill-load",
       "thrust, torque and power of a drill",
       "",
       "--material \"mild steel\" --drill \"1/2 in\" --feed \"0.006 in\" --rpm 500",
       {{"drill", "SIZE", "diameter", true},
        {"feed", "SIZE", "a turn", true},
        {"material", "MATERIAL", "of the work; steel where left out"},
        {"point", "POINT", "standard or split; standard where left out"},
        {"rpm", "NUMBER", "turns a minute: gives the power"}},
       drill_load},
      {"grip",
       "whether a vise or chuck slips under a force; it may say no, never yes",
       "",
       "--holder \"6 in machine vise\" --pair \"ground steel on steel, oily\" --force \"900 lbf\"",
       {{"holder", "HOLDER", "6 in machine vise, 3-jaw scroll chuck 160 mm", true},
        {"tightened", "HOW", "as the handbook has it: handle 80 N m; every way where left out"},
        {"force", "FORCE", "of the cut where it is held", true},
        {"pair", "PAIR", "of vise jaws and work: ground steel on steel, oily"},
        {"jaw", "JAW", "of a chuck: smooth, diamond or serrated"},
        {"surface", "SURFACE", "it grips: machined, smooth or rough"},
        {"material", "MATERIAL", "of the work in a chuck"}},
       grip},
  };
}

}  // namespace

std::vector<Subject> quick_machine_subjects() {
  std::vector<Subject> all = settings();
  for (std::vector<Subject> more : {shapes(), loads()}) {
    for (Subject& subject : more)
      all.push_back(std::move(subject));
  }
  return all;
}

}  // namespace sparewright::answers
