// Gears by their span, tapers by two depths, and the humble ways. ways.hpp joins them with the rest.
#pragma once

#include <array>

#include "core/survey/way_row.hpp"

namespace sparewright::survey {

// Equations by plane geometry of lines and circles that touch, unless a line says otherwise.
inline constexpr std::array kMoreWayRows{
    // W = m cos(a) (pi (k - 1/2) + z (tan(a) - a)), standard teeth: geometry of the involute (ISO 21771, from memory). 20 and
    // 14-1/2 degrees of pressure angle a.
    WayRow{Way::kSpan20,
           "gear span, 20 deg",
           "gear span, 20 deg",
           "{1}*cos(20 deg)*(pi*({k} - 0.5) + {n}*(tan(20 deg) - pi*20/180))",
           "the module of a gear with standard teeth of 20 degrees; count: its teeth; spanned: those between "
           "the jaws",
           {quantity::Kind::kLength},
           1,
           Jaws::kOutside,
           true,
           quantity::Kind::kLength,
           false,
           true},
    WayRow{Way::kSpan14,
           "gear span, 14-1/2 deg",
           "gear span, 14-1/2 deg",
           "{1}*cos(14.5 deg)*(pi*({k} - 0.5) + {n}*(tan(14.5 deg) - pi*14.5/180))",
           "the module, teeth of 14-1/2 degrees; count: its teeth; spanned: those between the jaws",
           {quantity::Kind::kLength},
           1,
           Jaws::kOutside,
           true,
           quantity::Kind::kLength,
           false,
           true},
    WayRow{Way::kTwoDiscs,
           "middles of two discs in a taper",
           "two discs",
           "({2} - {3})/(2*sin({1}/2))",
           "included angle, large disc, small disc: from middle to middle, both touching both sides",
           {quantity::Kind::kAngle, quantity::Kind::kDiameter, quantity::Kind::kDiameter},
           3},
    // A ball of radius r touches the side of a bore of d at its face, leaning a to the axis, at d/(2 tan a) - r/sin a below it.
    WayRow{Way::kBallInTaper,
           "down to a ball in a taper bore",
           "ball in a taper",
           "{1}/2/tan({2}) - {3}/2/sin({2}) - {3}/2",
           "diameter at the face, angle of its side to the axis, ball: from the face down to the top of the "
           "ball",
           {quantity::Kind::kDiameter, quantity::Kind::kAngle, quantity::Kind::kDiameter},
           3,
           Jaws::kDepth},
    WayRow{
        Way::kBallOverTaper,
        "ball proud of a taper bore",
        "ball proud of a taper",
        "{3}/2 + {3}/2/sin({2}) - {1}/2/tan({2})",
        "diameter at the face, angle of its side to the axis, ball: from the face up to the top of the ball",
        {quantity::Kind::kDiameter, quantity::Kind::kAngle, quantity::Kind::kDiameter},
        3,
        Jaws::kDepth},
    WayRow{Way::kDiscInTaper,
           "down to a disc in a taper bore",
           "disc in a taper",
           "({1} - {3})/2/tan({2})",
           "diameter at the face, angle of its side to the axis, disc: from the face down to the disc's "
           "sharp lower edge",
           {quantity::Kind::kDiameter, quantity::Kind::kAngle, quantity::Kind::kDiameter},
           3,
           Jaws::kDepth},
    WayRow{Way::kTaperBoreAt,
           "taper bore at a depth",
           "taper bore at",
           "{1} - 2*{3}*tan({2})",
           "diameter at the large end, angle of its side to the axis, depth from there",
           {quantity::Kind::kDiameter, quantity::Kind::kAngle, quantity::Kind::kLength},
           3,
           Jaws::kInside},
    WayRow{Way::kTaperShaftAt,
           "taper shaft at a distance",
           "taper shaft at",
           "{1} - 2*{3}*tan({2})",
           "diameter at the large end, angle of its side to the axis, distance from there",
           {quantity::Kind::kDiameter, quantity::Kind::kAngle, quantity::Kind::kLength},
           3},
    // What the humble ways add, half-widths, common practice: an edge rubbed through paper is true to about 1/64 in; solder
    // springs back and its ends are uneven by some 0.0005 in; a pack of slips goes in by feel to some 0.0002 in.
    WayRow{
        .way = Way::kRubbing,
        .name = "paper rubbing",
        .key = "rubbing",
        .reads = "{1}",
        .of = "the size, read off paper rubbed over the work; good to 1/64 in by itself where no transfer is "
              "stated",
        .kinds = {quantity::Kind::kLength},
        .own_mm = 25.4 / 64.0},
    WayRow{.way = Way::kCrushedSolder,
           .name = "crushed solder",
           .key = "crushed solder",
           .reads = "{1}",
           .of = "the gap that crushed it; good to 0.0005 in by itself where no transfer is stated",
           .kinds = {quantity::Kind::kLength},
           .own_mm = 0.0005 * 25.4},
    WayRow{
        .way = Way::kSlipPack,
        .name = "pack of slips",
        .key = "slip pack",
        .reads = "{1}",
        .of =
            "the gap the pack of slips or feelers just fills; good to 0.0002 in by itself where no transfer "
            "is stated",
        .kinds = {quantity::Kind::kLength},
        .own_mm = 0.0002 * 25.4}};

}  // namespace sparewright::survey
