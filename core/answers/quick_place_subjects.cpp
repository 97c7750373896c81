#include "core/answers/groups.hpp"
#include "core/answers/quick.hpp"

namespace sparewright::answers {

namespace {

// What is said of distances between holes.
std::vector<Entry> distances() {
  return {{"distances", "LENGTHS", "between holes, any two each time: 1.250, 1.249, 2.166 in", true},
          {"measured", "HOW", "centres, over (outside to outside) or between; centres where left out"},
          {"hole", "SIZE", "diameter of the holes, where they were measured over or between"},
          {"good-to", "SIZE", "how far off a distance may be; 0.002 in where left out"},
          {"count", "COUNT", "of holes, where they can be counted"}};
}

std::vector<Subject> found_patterns() {
  return {{"bolt-circle", "holes found on a circle: how many, its diameter, whether equally spaced", "",
           "--distances \"1.250, 1.249, 2.166 in\"", distances(), found_bolt_circle},
          {"hole-row", "holes found in a row: the pitch, whether equal", "",
           "--distances \"1.500, 3.001, 4.500 in\"", distances(), found_hole_row},
          {"centre-line",
           "the centre line that holes are symmetric about, and which is off it",
           "",
           "--x \"0, 3, 0.5, 2.5 in\" --y \"0, 0, 2, 2.003 in\"",
           {{"x", "LENGTHS", "of the middles of the holes: 0, 3, 0.5, 2.5 in", true},
            {"y", "LENGTHS", "of the same, in the same order", true},
            {"good-to", "SIZE", "how far off a coordinate may be; 0.001 in where left out"}},
           centre_line}};
}

std::vector<Subject> laid_out() {
  return {
      {"holes",
       "holes on a circle: coordinates, and what to dial on a machine of yours",
       "",
       "--count 6 --circle \"2.5 in\" --x \"3 in\" --y \"2 in\"",
       {{"count", "COUNT", "how many holes, up to 360", true},
        {"circle", "SIZE", "diameter of the circle", true},
        {"start", "ANGLE", "of hole 1 from the right, counterclockwise: 30 deg"},
        {"x", "LENGTH", "of the centre, to the right of the zero"},
        {"y", "LENGTH", "of the centre, away from the operator"},
        {"on", "MACHINE", "a machine of the shop text: what its collars show"},
        {"step", "NUMBER", "the part of a division you can set: 0.5"}},
       holes},
      {"packing",
       "packing under one jaw of a three-jaw chuck for an eccentric",
       "",
       "--diameter \"2 in\" --throw \"1/8 in\"",
       {{"diameter", "SIZE", "of the work where the jaws hold it", true},
        {"throw", "SIZE", "how far the axes lie apart", true},
        {"jaw-width", "SIZE", "of flat jaw faces; left out: jaws that touch on a narrow line"}},
       packing},
      {"tailstock",
       "how far and which way to move the tailstock, to take a taper out or to cut one",
       "",
       "--large \"1.5030 in\" --small \"1.5000 in\" --over \"8 in\" --between \"10 in\" --thick-end "
       "tailstock",
       {{"between", "LENGTH", "of the work, between centres", true},
        {"thick-end", "END", "tailstock or headstock: the thick end, as it is or as it shall be", true},
        {"large", "SIZE", "diameter at the thick end, to take a taper out"},
        {"small", "SIZE", "diameter at the thin end"},
        {"over", "LENGTH", "between the places measured"},
        {"taper", "TAPER", "to cut one: 1:20, or 0.6 in/ft"}},
       tailstock},
      {"jaw",
       "how far to move a jaw from what an indicator shows",
       "",
       "--tir \"0.012 in\" --diameter \"2 in\"",
       {{"tir", "SIZE", "the whole swing of the indicator in one turn"},
        {"diameter", "SIZE", "of the work: also gives the shim for a three-jaw chuck"},
        {"jaw1", "READING", "or the reading at each jaw of a four-jaw chuck, in their order round it"},
        {"jaw2", "READING", "at jaw 2"},
        {"jaw3", "READING", "at jaw 3"},
        {"jaw4", "READING", "at jaw 4"},
        {"screw", "PITCH", "of the jaws' screws: 20 tpi, 3 mm; gives turns too"}},
       jaw},
      {"hole-centre",
       "centre and diameter of a hole or boss from three touches",
       "",
       "--x1 \"1.1 in\" --y1 \"0 in\" --x2 \"0 in\" --y2 \"1.1 in\" --x3 \"-1.1 in\" --y3 \"0 in\" --tip "
       "\"0.2 in\"",
       {{"x1", "LENGTH", "where the tip's centre stands at touch 1", true},
        {"y1", "LENGTH", "at touch 1", true},
        {"x2", "LENGTH", "at touch 2", true},
        {"y2", "LENGTH", "at touch 2", true},
        {"x3", "LENGTH", "at touch 3", true},
        {"y3", "LENGTH", "at touch 3", true},
        {"tip", "SIZE", "diameter of the tip", true},
        {"side", "SIDE", "hole or boss; hole where left out"}},
       hole_centre},
      {"chord",
       "radius of an arc from a chord and its height",
       "",
       "--chord \"24 in\" --height \"3 in\"",
       {{"chord", "LENGTH", "straight across", true},
        {"height", "LENGTH", "of the arc over its middle", true}},
       chord},
  };
}

}  // namespace

std::vector<Subject> quick_place_subjects() {
  std::vector<Subject> all = laid_out();
  for (Subject& subject : found_patterns())
    all.push_back(std::move(subject));
  return all;
}

}  // namespace sparewright::answers
