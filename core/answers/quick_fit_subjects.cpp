#include "core/answers/groups.hpp"
#include "core/answers/quick.hpp"

namespace sparewright::answers {
namespace {

std::vector<Subject> between_two_parts() {
  return {
      {"play",
       "play or interference of two sizes, and a shim between them",
       "",
       "--hole \"0.750 in\" --shaft \"0.735 +- 0.001 in\" --shim \"0.006 in\"",
       {{"hole", "SIZE", "as measured, or with limits: 5.996 to 6.000 mm, 6 +- 0.01 mm", true},
        {"shaft", "SIZE", "the same way", true},
        {"shim", "SIZE", "thickness of a shim all round: what it leaves"},
        {"leave", "SIZE", "clearance to leave: the shim for it"}},
       play},
      {"press",
       "a bush or pin as it is in a hole as it is: how tight, and what it does to the bore",
       "",
       "--outside \"0.627 in\" --hole \"0.625 in\" --bore \"0.500 in\" --length \"0.75 in\"",
       {{"outside", "SIZE", "of what is pressed in", true},
        {"hole", "SIZE", "it goes into", true},
        {"bore", "SIZE", "of the bush before; left out: solid"},
        {"finish", "SIZE", "the bore wanted: what to take out once it is in"},
        {"boss", "SIZE", "outside of the metal round the hole"},
        {"length", "SIZE", "in the hole: gives the force too"},
        {"material", "MATERIAL", "of what is pressed in; bronze C932 where left out"},
        {"into", "MATERIAL", "of the part with the hole; steel where left out"}},
       press},
      {"heat",
       "how hot to make a hub so that it slides on",
       "",
       "--size \"2.5 in\" --interference \"0.003 in\"",
       {{"size", "SIZE", "diameter of the joint", true},
        {"interference", "SIZE", "on the diameter", true},
        {"slip", "SIZE", "room to slide on; 0.001 for each 1 of diameter where left out"},
        {"material", "MATERIAL", "of the hub; steel where left out"}},
       heat},
      {"pattern",
       "several posts into several holes at once: the play it takes",
       "",
       "--hole-place \"0.010 in\" --post-place \"0.010 in\" --hole \"2.060 in\" --post \"2.010 in\"",
       {{"hole-place", "SIZE", "how far a hole's centre may lie from where it should", true},
        {"post-place", "SIZE", "the same of a post, pin or stud", true},
        {"hole", "SIZE", "size of the holes, or limits: whether it is enough"},
        {"post", "SIZE", "size of the posts or screws, or limits"},
        {"second-hole", "SIZE", "holes of the other part, where screws go through both"}},
       pattern},
      {"key-room",
       "room over a key in its hub, from what was measured over both",
       "",
       "--hub \"1.114 in\" --back \"0.859 in\" --key \"0.250 in\"",
       {{"hub", "SIZE", "far side of the bore to the top of the keyway", true},
        {"back", "SIZE", "bottom of the keyseat to the far side of the shaft", true},
        {"key", "SIZE", "height of the key", true}},
       key_room},
  };
}

std::vector<Subject> from_stock() {
  return {
      {"bar",
       "what a bar as it is sold may measure, and whether it is a seat as it is",
       "",
       "--size \"1 in\" --seat \"0.9995 to 1.0000 in\"",
       {{"size", "SIZE", "it is sold as", true},
        {"material", "MATERIAL", "of it; cold drawn 1018 where left out"},
        {"form", "FORM", "round, hexagon or square; round where left out"},
        {"finish", "FINISH", "of metric steel: drawn or turned; drawn where left out"},
        {"seat", "SIZES", "what it has to be: 24.998 to 25.004 mm"},
        {"hole", "SIZES", "what it goes into, or a bearing's bore: how it fits"}},
       bar},
      {"ream",
       "what to leave for a reamer, and whether a drill would do",
       "",
       "--size \"1/2 in\" --tolerance \"0.001 in\"",
       {{"size", "SIZE", "of the hole", true},
        {"tolerance", "SIZE", "from its least to its greatest: whether a drill keeps it"}},
       ream},
  };
}

std::vector<Subject> what_is_left() {
  return {
      {"clean-up",
       "the size at which a worn or scored shaft or hole comes clean",
       "",
       "--size \"2.000 in\" --deep \"0.008 in\" --side hole --steps \"0.010, 0.020, 0.030 in\"",
       {{"size", "SIZE", "as it was made, unworn", true},
        {"deep", "SIZE", "the worst place, from the unworn surface in", true},
        {"off-centre", "SIZE", "how far off its old axis it will be cut"},
        {"side", "SIDE", "shaft or hole; shaft where left out"},
        {"steps", "SIZES", "oversizes or undersizes there are parts for, small first"}},
       clean_up},
      {"sleeve",
       "a sleeve or ring that brings a worn or undersize shaft or spigot back to size",
       "",
       "--size \"2.000 in\" --clean \"1.960 in\"",
       {{"size", "SIZE", "wanted", true},
        {"wall", "SIZE", "of the sleeve at least; 1/16 in where left out"},
        {"clean", "SIZE", "the shaft comes clean at, from `clean-up`"}},
       sleeve},
      {"wall",
       "the wall between two rounds or threads, at its thinnest",
       "",
       "--outside 1-12 --inside \"3/4 in\" --off-centre \"0.005 in\"",
       {{"outside", "SIZE", "or a thread: its root counts", true},
        {"inside", "SIZE", "or a thread: what it is cut out to counts", true},
        {"off-centre", "SIZE", "one axis off the other"},
        {"least", "SIZE", "wall that is wanted"},
        {"cross-thread", "THREAD", "tapped through the wall: how many threads"}},
       wall},
      {"webs",
       "metal left between holes on a circle, and to the edges",
       "",
       "--count 6 --circle \"3 in\" --hole \"3/8 in\" --outside \"4 in\" --inside \"2 in\"",
       {{"count", "COUNT", "how many holes", true},
        {"circle", "SIZE", "diameter of the circle", true},
        {"hole", "SIZE", "diameter of the holes", true},
        {"outside", "SIZE", "diameter of the part"},
        {"inside", "SIZE", "of a bore or register, inside the circle or round it"},
        {"least", "SIZE", "metal that is wanted"}},
       webs},
      {"plating",
       "the size before plating, from the size after",
       "",
       "--mate \"1.000 in\" --leave \"0.001 in\" --thickness \"0.001 in\"",
       {{"thickness", "SIZE", "of the plating", true},
        {"finish", "SIZE", "size after plating"},
        {"mate", "SIZE", "instead: what it goes into, or what goes into it"},
        {"leave", "SIZE", "clearance on the diameter"},
        {"side", "SIDE", "shaft or hole; shaft where left out"},
        {"measured", "SIZE", "as it is now: how far to go"}},
       plating},
      {"slit",
       "a slit that closes: what it takes off a bore",
       "",
       "--bore \"1.000 in\" --slit \"1/16 in\"",
       {{"bore", "SIZE", "before it closes, or as it shall be closed", true},
        {"slit", "SIZE", "width of the saw", true},
        {"kind", "KIND", "one slit, or halves; one where left out"},
        {"closes", "SIZE", "how far it closes; all the way where left out"}},
       slit},
  };
}

}  // namespace

std::vector<Subject> quick_fit_subjects() {
  std::vector<Subject> all = between_two_parts();
  for (std::vector<Subject> more : {from_stock(), what_is_left()}) {
    for (Subject& subject : more)
      all.push_back(std::move(subject));
  }
  return all;
}

}  // namespace sparewright::answers
