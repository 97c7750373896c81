#include "core/answers/groups.hpp"
#include "core/answers/quick.hpp"

namespace sparewright::answers {

namespace {

std::vector<Subject> readings() {
  return {
      {"micrometer",
       "a micrometer's reading, added up from its marks",
       "",
       "--numbers 4 --lines 1 --thimble 8",
       {{"numbers", "COUNT", "the last numbered line of the sleeve that shows"},
        {"lines", "COUNT", "lines that show behind it: up to 3, metric up to 1"},
        {"thimble", "COUNT", "division of the thimble at the line: 0 to 24, metric 0 to 49", true},
        {"vernier", "COUNT", "0 to 9: ten-thousandths, metric thousandths"},
        {"from", "LENGTH", "where the micrometer starts: 1 in of one from 1 to 2"},
        {"scale", "SCALE", "inch or metric; inch where left out"}},
       micrometer},
      {"reading",
       "a reading that is not what it should be: the slip that would explain it",
       "",
       "--read \"2.025 in\" --expected \"2.000 in\" --can-only smaller",
       {{"read", "SIZE", "what was read", true},
        {"expected", "SIZE", "what it should be about: nominal, the mate, or before the cut", true},
        {"can-only", "WAY",
         "smaller or larger than that: as it wears, or after a cut; either where left out"},
        {"good-to", "SIZE", "how far off a reading may be; 0.0015 in where left out"}},
       reading},
      {"warm",
       "warm or cold work: how much it reads large, and its size at 20 degC",
       "",
       "--size \"4 in\" --at \"95 degF\"",
       {{"size", "SIZE", "as it reads", true},
        {"at", "TEMPERATURE", "of the work: 35 degC, 95 degF", true},
        {"material", "MATERIAL", "of the work; steel where left out"},
        {"gauge", "MATERIAL", "of the micrometer or gauge; steel where left out"},
        {"gauge-at", "TEMPERATURE", "of the gauge; 20 degC where left out"}},
       warm},
      {"density",
       "what something is made of, by weight and the water it displaces",
       "",
       "--weight \"786 g\" --volume \"100 cm3\" --volume-good-to \"1 cm3\"",
       {{"weight", "WEIGHT", "in air: 786 g, 1.73 lb", true},
        {"volume", "VOLUME", "of the water it displaces: 100 cm3, 6.1 in3"},
        {"in-water", "WEIGHT", "instead: what it weighs hung in water"},
        {"weight-good-to", "WEIGHT", "how far off the scale may be; half of the last figure where left out"},
        {"volume-good-to", "VOLUME",
         "how far off the volume may be; half of the last figure where left out"}},
       density},
  };
}

std::vector<Subject> forms() {
  return {
      {"round",
       "out of round and taper, from diameters read several ways",
       "",
       "--front \"2.0003, 2.0011 in\" --back \"2.0005, 2.0008 in\" --limit \"0.0005 in\" --good-to \"0.0001 "
       "in\"",
       {{"front", "SIZES", "diameters at the front, two or more ways: 2.0003, 2.0011 in", true},
        {"middle", "SIZES", "half way in, in the same order"},
        {"back", "SIZES", "at the back, in the same order"},
        {"limit", "SIZE", "out of round that may be, on the diameter"},
        {"good-to", "SIZE", "how far off a reading may be"}},
       roundness},
      {"lobes",
       "how far out of round lobed work is, from its swing in a vee block",
       "",
       "--swing \"0.0012 in\"",
       {{"swing", "SIZE", "of the indicator in one turn", true},
        {"lobes", "COUNT", "how many; 3 where left out"},
        {"vee", "ANGLE", "of the block; 90 deg where left out"}},
       lobes},
      {"sum",
       "lengths added up: the gap, shim, packing or cut that is left, with tolerances",
       "",
       "--plus \"2.500 +- 0.005, 0.375 in\" --minus \"2.850 +- 0.003 in\" --least \"0.010 in\"",
       {{"plus", "LENGTHS", "added, each with its tolerance where it has one", true},
        {"minus", "LENGTHS", "taken off"},
        {"least", "LENGTH", "it has to be: the thinnest shim, the least gap"},
        {"most", "LENGTH", "it may be"}},
       sum},
      {"taper",
       "any taper: ratio, per foot, angles, and how to prove the setting",
       "",
       "--large \"1.250 in\" --small \"1.125 in\" --over \"2 in\"",
       {{"large", "SIZE", "diameter at the thick place"},
        {"small", "SIZE", "diameter at the thin place"},
        {"over", "LENGTH", "from one to the other, along the axis"},
        {"taper", "TAPER", "instead: 7:24, 1:20, 0.6 in/ft, on the diameter"},
        {"angle", "ANGLE", "instead: of the side to the axis"},
        {"called", "TAPER", "what it is said to be: compared"}},
       any_taper},
      {"taper-pair",
       "a hub of one taper on a shaft of another: where it bears, what boring takes",
       "",
       "--shaft 1:20 --hole 1:16 --length \"3 in\"",
       {{"shaft", "TAPER", "on the diameter: 1:16, 0.75 in/ft", true},
        {"hole", "TAPER", "of the hub, the same way", true},
        {"length", "LENGTH", "of the hole", true}},
       taper_pair},
  };
}

}  // namespace

std::vector<Subject> quick_measuring_subjects() {
  std::vector<Subject> all = readings();
  for (Subject& subject : forms())
    all.push_back(std::move(subject));
  return all;
}

}  // namespace sparewright::answers
